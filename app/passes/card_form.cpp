#include "app/passes/card_form.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/passes/card_words.h"
#include "app/passes/shown_plan.h"
#include "app/words/length_words.h"

namespace wm::app {
namespace {

struct Cards {
  Q_DECLARE_TR_FUNCTIONS(Passes)
};

constexpr int planer_kind = 0;

QString depths_text(const std::vector<DepthForWidth>& depths) {
  QStringList out;
  for (const DepthForWidth& step : depths)
    out << length_words(step.width) + QStringLiteral(": ") + length_words(step.deepest);
  return out.join(QStringLiteral("; "));
}

void fill(const CardFields& fields, const AnyCard& card) {
  const LimitsCard& limits = limits_of(card);
  fields.depths->setText(depths_text(limits.depths));
  if (limits.shortest) fields.shortest->setText(length_words(*limits.shortest));
  fields.thinnest->setText(length_words(limits.thinnest));
  fields.light->setText(length_words(limits.light));
  fields.scale_marks->setText(length_words(limits.scale_marks));
  fields.scale_error->setText(length_words(limits.scale_error));
  if (const auto* jointer = std::get_if<JointerCard>(&card); jointer && jointer->narrowest)
    fields.narrowest->setText(length_words(*jointer->narrowest));
  const auto* planer = std::get_if<PlanerCard>(&card);
  fields.kind->setCurrentIndex(planer ? planer_kind : planer_kind + 1);
  if (!planer) return;
  fields.turn->setText(length_words(planer->wheel.turn));
  fields.divisions->setText(QString::number(planer->wheel.divisions));
}

Problem in_field(const QLineEdit* field, const Problem& problem) {
  const QString name = field->accessibleName();
  return {name.toStdString(),
          Cards::tr("%1: %2", "a field, what is wrong")
              .arg(name, QString::fromStdString(problem.what))
              .toStdString(),
          problem.remedy};
}

/// Reads field after field; the first mistake stays.
class CardReader {
 public:
  std::optional<Problem> problem;

  Inches length(const QLineEdit* field) { return length(field, field->text()); }
  Inches length(const QLineEdit* field, const QString& typed) {
    const auto read = read_length(typed.trimmed().toStdString(), plain_unit(), decimal_mark());
    if (!read) refuse(in_field(field, read.error()));
    return read ? in_inches(*read) : Inches();
  }
  std::optional<Inches> maybe_length(const QLineEdit* field) {
    if (field->text().trimmed().isEmpty()) return std::nullopt;
    return length(field);
  }
  /// "6 in: 1/8 in; 12 in: 1/16 in"
  std::vector<DepthForWidth> depths(const QLineEdit* field) {
    std::vector<DepthForWidth> out;
    for (const QString& part : field->text().split(';', Qt::SkipEmptyParts)) {
      const QStringList pair = part.split(':');
      if (pair.size() != 2) {
        refuse(in_field(field,
                        {"", Cards::tr("It needs a width and a depth, with a colon between").toStdString(),
                         Cards::tr("Type them as 6 in: 1/8 in; 12 in: 1/16 in").toStdString()}));
        return out;
      }
      out.push_back({length(field, pair[0]), length(field, pair[1])});
    }
    return out;
  }
  int whole(const QLineEdit* field) {
    bool number = false;
    const int read = field->text().trimmed().toInt(&number);
    if (!number || read < 1)
      refuse(in_field(field, {"", Cards::tr("That is no number of marks").toStdString(),
                              Cards::tr("Count the marks around the wheel").toStdString()}));
    return read;
  }
  void refuse(Problem found) {
    if (!problem) problem = std::move(found);
  }
};

/// A card may lack its shortest stock; no other mistake is let through.
std::optional<Problem> mistake_in(const AnyCard& card) {
  const auto mistakes = std::visit([](const auto& any) { return mistakes_in(any); }, card);
  const bool lacks_shortest = !limits_of(card).shortest;
  for (const Problem& each : mistakes)
    if (!(lacks_shortest && each.where == "shortest")) return each;
  return std::nullopt;
}

}  // namespace

CardFields add_card_fields(Form& form, const std::optional<AnyCard>& card) {
  CardFields f{};
  f.kind = form.choice(
      Cards::tr("What it is"), "card_kind",
      {{"planer", Cards::tr("planer: set by a wheel")}, {"jointer", Cards::tr("jointer: set by its scale")}});
  f.depths = form.line(Cards::tr("Deepest pass up to each width"), "card_depths");
  f.depths->setPlaceholderText(Cards::tr("6 in: 1/8 in; 12 in: 1/16 in"));
  std::tie(f.shortest, f.thinnest) = form.two_lines(Cards::tr("Shortest stock"), "card_shortest",
                                                    Cards::tr("Thinnest left"), "card_thinnest");
  std::tie(f.light, f.scale_marks) =
      form.two_lines(Cards::tr("Light pass"), "card_light", Cards::tr("Scale marks apart"), "card_marks");
  std::tie(f.scale_error, f.turn) =
      form.two_lines(Cards::tr("Scale is within"), "card_error", Cards::tr("Wheel: one turn"), "card_turn");
  std::tie(f.divisions, f.narrowest) =
      form.two_lines(Cards::tr("Wheel: divisions"), "card_divisions", Cards::tr("Narrowest left by an edge"),
                     "card_narrowest");
  f.narrowest->setPlaceholderText(Cards::tr("as the thinnest"));
  f.changed = form.line(Cards::tr("What is new, and where the manual says it"), "card_changed");
  form.say(card_caution());
  if (card) fill(f, *card);
  const auto by_kind = [f] {
    const bool planer = f.kind->currentIndex() == planer_kind;
    for (QLineEdit* field : {f.turn, f.divisions}) field->setEnabled(planer);
    f.narrowest->setEnabled(!planer);
  };
  QObject::connect(f.kind, &QComboBox::currentIndexChanged, &form, by_kind);
  by_kind();
  return f;
}

Expected<AnyCard> read_card_fields(const CardFields& f) {
  CardReader read;
  const LimitsCard limits{read.depths(f.depths), read.maybe_length(f.shortest), read.length(f.thinnest),
                          read.length(f.light),  read.length(f.scale_marks),    read.length(f.scale_error)};
  AnyCard card;
  if (f.kind->currentIndex() == planer_kind)
    card = PlanerCard{limits, {read.length(f.turn), read.whole(f.divisions)}};
  else
    card = JointerCard{limits, read.maybe_length(f.narrowest)};
  if (read.problem) return tl::make_unexpected(*read.problem);
  if (const auto mistake = mistake_in(card)) return tl::make_unexpected(*mistake);
  return card;
}

}  // namespace wm::app
