#include "app/rosters/wall_card.h"

#include <QCoreApplication>

#include "app/rosters/door_layout.h"
#include "app/rosters/roster_drawing.h"
#include "app/words/listing.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct Tr {
  Q_DECLARE_TR_FUNCTIONS(wm::app::Roster)
};

constexpr double u = paper_unit;
constexpr double tier_height = 26 * u;

QString p(const QString& words) { return "<p>" + words + "</p>"; }
QString heading(const QString& words) { return "<h2>" + words.toHtmlEscaped() + "</h2>"; }

/// A name that is written from right to left stands by itself, or it would take its neighbours along.
QString isolated(const QString& name) { return QChar(0x2068) + name + QChar(0x2069); }

class Writer {
 public:
  Writer(const RosterTable& table, std::size_t first, std::size_t end)
      : table_(table), first_(first), end_(end) {}

  QString html(double points) const {
    const RosterColumn& column = table_.columns[first_];
    QString out = QString("<div style=\"font-size:%1px\">").arg(points * u);
    out += QString("<p style=\"font-size:%1px\"><b>%2</b></p>")
               .arg(points * 2.2 * u)
               .arg(column.machine.toHtmlEscaped());
    for (std::size_t each = first_; each < end_; ++each) out += names(each);
    out += heading(Tr::tr("Before you start"));
    for (const QString& condition : column.conditions)
      out += p(Tr::tr("Only while %1.", "a condition").arg(condition).toHtmlEscaped());
    out += p(Tr::tr("Whoever is not named here may not use it. With a supervisor means: somebody "
                    "who may supervise here stays beside you all the time.")
                 .toHtmlEscaped());
    out +=
        p(Tr::tr("The maker's manual, the limits card and the guards come first; local codes and a qualified "
                 "instructor before this card.")
              .toHtmlEscaped());
    out += heading(Tr::tr("Somebody hurt"));
    out += p("<b>" + call().toHtmlEscaped() + "</b>");
    out += p(Tr::tr("Stop the machine at its emergency stop and isolate it before anybody reaches into it. "
                    "Help as you "
                    "were taught, and leave everything as it is.")
                 .toHtmlEscaped());
    return out + "</div>";
  }

 private:
  QString call() const {
    const QString number = QString::fromStdString(table_.emergency.number);
    const QString where = QString::fromStdString(table_.emergency.where);
    const QString called = number.isEmpty()
                               ? Tr::tr("Call the local emergency number: ____________ (write it here)")
                               : Tr::tr("Call %1.", "a number").arg(number);
    return called + ' ' +
           (where.isEmpty() ? Tr::tr("Say where you are, what happened, how many are hurt.")
                            : Tr::tr("Say: %1. What happened, how many are hurt.").arg(where));
  }

  QString names(std::size_t column) const {
    const QString& mode = table_.columns[column].mode;
    QString out = mode.isEmpty() ? QString() : heading(Tr::tr("For %1", "a mode of a machine").arg(mode));
    QStringList free, watched, assess;
    for (const RosterRow& row : table_.rows) {
      const RosterCell& cell = row.cells[column];
      QString name = isolated(row.name).toHtmlEscaped();
      if (cell.assesses) assess << name;
      if (cell.rung == Rung::independent)
        name = Tr::tr("%1 (%2)", "a name, the last day").arg(name, door_day(cell, table_).toHtmlEscaped());
      if (!cell.restricted.isEmpty())
        name += Tr::tr(": %1", "what a check-out left open")
                    .arg(cell.restricted.join(Tr::tr("; ", "between restrictions")))
                    .toHtmlEscaped();
      if (cell.rung == Rung::independent) free << name;
      if (cell.rung == Rung::supervised) watched << name;
    }
    out +=
        group(Tr::tr("Without a supervisor, through the day shown: %1", "how many").arg(free.size()), free);
    out += group(Tr::tr("Only with a supervisor: %1", "how many").arg(watched.size()), watched);
    if (free.isEmpty() && watched.isEmpty()) out += p(Tr::tr("Nobody may use it.").toHtmlEscaped());
    if (!assess.isEmpty())
      out += p("<b>" + Tr::tr("Sign check-outs:").toHtmlEscaped() + "</b> " + assess.join("; "));
    return out;
  }

  static QString group(const QString& title, const QStringList& names) {
    if (names.isEmpty()) return {};
    return p("<b>" + title.toHtmlEscaped() + "</b>") + p(names.join("; "));
  }

  const RosterTable& table_;
  const std::size_t first_, end_;
};

/// As large as fits one page, else as many as it takes at the smallest size.
LaidText laid(const Writer& writer, const PaperText& paper) {
  LaidText text;
  for (const double points : {16.0, 14.0, 12.0, 10.5, 9.0}) {
    text = lay_out_text(paper, writer.html(points), tier_height);
    if (text.pages == 1) break;
  }
  return text;
}

}  // namespace

std::vector<WallCard> lay_out_cards(const RosterTable& table, const PaperText& paper) {
  std::vector<WallCard> cards;
  for (std::size_t first = 0; first < table.columns.size();) {
    std::size_t end = first + 1;
    while (end < table.columns.size() &&
           class_of(table.columns[end].target) == class_of(table.columns[first].target))
      ++end;
    cards.push_back({table.columns[first].tier, laid(Writer(table, first, end), paper)});
    first = end;
  }
  return cards;
}

void draw_card(QPainter& painter, const QRectF& body, const WallCard& card, int page) {
  draw_roster_tier(painter, body.topLeft(), card.tier, Tr::tr("Tier %1").arg(card.tier), body.width());
  card.text.draw(painter, body.adjusted(0, tier_height, 0, 0), page);
}

}  // namespace wm::app
