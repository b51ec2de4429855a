// An attempt as a page to read: for whoever sat it, and for whoever asks later what was asked.
#include <QLocale>
#include <QPainter>
#include <QStringList>
#include <QSvgRenderer>
#include <algorithm>

#include "app/quiz/sat_attempt.h"
#include "app/quiz/tr.h"
#include "app/theme/theme.h"

namespace wm::app {
namespace {

QString safe(const std::string& text) { return QString::fromStdString(text).toHtmlEscaped(); }

/// What was given, in the words of the question.
struct GivenWords {
  const teach::Wording& wording;

  QString choice(std::size_t i) const {
    return i < wording.choices.size() ? safe(wording.choices[i]) : QString();
  }
  QString list(const std::vector<std::size_t>& choices) const {
    QStringList all;
    for (const std::size_t i : choices) all << choice(i);
    return all.join("<br>");
  }
  QString operator()(const teach::Unanswered&) const { return QuizWords::tr("left open"); }
  QString operator()(const teach::Chosen& g) const { return choice(g.choice); }
  QString operator()(const teach::Ticked& g) const {
    return g.choices.empty() ? QuizWords::tr("none of them") : list(g.choices);
  }
  QString operator()(const teach::Ordered& g) const { return list(g.steps); }
  QString operator()(const teach::Typed& g) const { return safe(g.text); }
  QString operator()(const teach::Pointed&) const { return QuizWords::tr("the place that is marked"); }
};

/// The choices as they stood, each with what was done with it and what would have been right.
class Choices {
 public:
  Choices(const teach::Question& question, const teach::Wording& wording, const teach::Asked& asked,
          const teach::Given& given)
      : question_(question), wording_(wording), asked_(asked), given_(given) {}

  QString html() const {
    QString rows;
    for (const std::size_t i : asked_.order) {
      const QString text = safe(wording_.choices[i]);
      rows += QString("<tr><td width=\"28\">%1</td><td>%2 <span class=\"quiet\">%3</span></td></tr>")
                  .arg(mark(i), marked(i) ? "<b>" + text + "</b>" : text, right(i));
    }
    return rows.isEmpty() ? QString() : "<table cellpadding=\"2\">" + rows + "</table>";
  }

 private:
  bool is_order() const { return std::holds_alternative<teach::InOrder>(question_.kind); }
  bool marked(std::size_t i) const {
    if (const auto* one = std::get_if<teach::Chosen>(&given_)) return one->choice == i;
    const auto* ticked = std::get_if<teach::Ticked>(&given_);
    return ticked && std::find(ticked->choices.begin(), ticked->choices.end(), i) != ticked->choices.end();
  }
  /// The number that a step was given; a sign before what was chosen.
  QString mark(std::size_t i) const {
    if (!is_order()) return marked(i) ? QStringLiteral("&#9679;") : QStringLiteral("&#9675;");
    const auto* ordered = std::get_if<teach::Ordered>(&given_);
    if (!ordered) return QStringLiteral("&ndash;");
    const auto place = std::find(ordered->steps.begin(), ordered->steps.end(), i);
    return place == ordered->steps.end() ? QString() : QString::number(place - ordered->steps.begin() + 1);
  }
  QString right(std::size_t i) const {
    if (is_order()) return QuizWords::tr("(right: %1)", "a number").arg(i + 1);
    const auto* one = std::get_if<teach::OneRight>(&question_.kind);
    const auto* several = std::get_if<teach::SeveralRight>(&question_.kind);
    const bool so = (one && one->right == i) || (several && several->right[i]);
    return so ? QuizWords::tr("(right)") : QString();
  }

  const teach::Question& question_;
  const teach::Wording& wording_;
  const teach::Asked& asked_;
  const teach::Given& given_;
};

QString verdict(const teach::Question& question, const teach::MarkedAnswer& answer) {
  const bool open = std::holds_alternative<teach::Unanswered>(answer.answer.given);
  const QString how = answer.mark.right ? QuizWords::tr("right")
                      : open            ? QuizWords::tr("left open, not right")
                                        : QuizWords::tr("not right");
  return question.critical ? QuizWords::tr("%1, a critical question", "right or not").arg(how) : how;
}

QString right_number(const teach::Question& question) {
  const auto* number = std::get_if<teach::ANumber>(&question.kind);
  if (!number) return {};
  return QuizWords::tr("Right: %1, within %2.", "a measure, a tolerance")
      .arg(safe(teach::to_text(number->answer)), safe(teach::to_text(number->tolerance)));
}

class Html {
 public:
  Html(const SatAttempt& sat, HowMuch shown, const std::string& language, int size,
       std::map<QString, QImage>& pictures)
      : sat_(sat), shown_(shown), language_(language), size_(size), pictures_(pictures) {}

  QString html() {
    const Palette& p = wm::app::palette();
    QString body;
    for (std::size_t i = 0; i < sat_.marking.answers.size(); ++i) body += question(i);
    return QString(
               "<html><head><style>body { color: %1; font-size: %2px; } .quiet { color: %3; } "
               "h3 { font-size: %2px; margin-bottom: 2px; } p { margin: 3px 0; }</style></head><body>%4"
               "</body></html>")
        .arg(p.text.name())
        .arg(size_)
        .arg(p.quiet.name(), body);
  }

 private:
  QString question(std::size_t i) {
    const teach::MarkedAnswer& answer = sat_.marking.answers[i];
    const teach::Question& question = sat_.bank.bank.questions[answer.question];
    const teach::Wording* wording = teach::wording_of(question, language_);
    if (!wording) return {};
    QString html = QString("<h3>%1. %2</h3>").arg(i + 1).arg(safe(wording->text));
    html += picture(i, question, answer.answer.given);
    const QString choices = shown_ == HowMuch::as_sat
                                ? Choices(question, *wording, sat_.paper[i], answer.answer.given).html()
                                : QString();
    const bool open = std::holds_alternative<teach::Unanswered>(answer.answer.given);
    if (choices.isEmpty() && !open)
      html += line(QuizWords::tr("Answered: %1").arg(std::visit(GivenWords{*wording}, answer.answer.given)));
    else
      html += choices;
    if (shown_ == HowMuch::as_sat)
      if (const QString right = right_number(question); !right.isEmpty()) html += line(right);
    html += "<p><b>" + verdict(question, answer) + "</b></p>";
    if (!wording->reason.empty()) html += line(safe(wording->reason));
    if (shown_ == HowMuch::as_sat)
      html += "<p class=\"quiet\">" + QuizWords::tr("Seconds on it: %1").arg(answer.answer.seconds) + "</p>";
    return html + "<p>&nbsp;</p>";
  }
  static QString line(const QString& words) { return "<p>" + words + "</p>"; }

  QString picture(std::size_t i, const teach::Question& question, const teach::Given& given) {
    if (question.picture.empty()) return {};
    const QImage image = marked_picture(picture_of(sat_.bank.issued, question.picture), 18 * size_, given);
    if (image.isNull()) return {};
    const QString name = QString("picture-%1").arg(i);
    pictures_[name] = image;
    return QString("<p><img src=\"%1\"></p>").arg(name);
  }

  const SatAttempt& sat_;
  HowMuch shown_;
  std::string language_;
  int size_;
  std::map<QString, QImage>& pictures_;
};

}  // namespace

QString attempt_html(const SatAttempt& sat, HowMuch shown, const std::string& language, int size,
                     std::map<QString, QImage>& pictures) {
  return Html(sat, shown, language, size, pictures).html();
}

QString help_words(const std::vector<db::Help>& helps) {
  QStringList all;
  for (const db::Help help : helps) switch (help) {
      case db::Help::interpreter:
        all << QuizWords::tr("an interpreter");
        break;
      case db::Help::read_aloud:
        all << QuizWords::tr("read aloud");
        break;
      case db::Help::large_type:
        all << QuizWords::tr("large type");
        break;
    }
  return all.join(QuizWords::tr(", ", "between helps"));
}

/// Without a territory in the tag the one that the system would think of is not meant: the plainest of all
/// names is taken ("English", not "American English").
QString language_name(const std::string& tag) {
  const QLocale locale(QString::fromStdString(tag).replace('-', '_'));
  if (locale.language() == QLocale::C) return QString::fromStdString(tag);
  QString name = locale.nativeLanguageName();
  if (tag.find('-') == std::string::npos)
    for (const QLocale& other :
         QLocale::matchingLocales(locale.language(), locale.script(), QLocale::AnyTerritory))
      if (const QString plain = other.nativeLanguageName(); !plain.isEmpty() && plain.size() < name.size())
        name = plain;
  return name.isEmpty() ? QString::fromStdString(tag) : name;
}

QString marks_words(int correct, int total, int critical_missed) {
  const QString right = QuizWords::tr("%1 of %2 right", "how many").arg(correct).arg(total);
  if (critical_missed == 0) return right;
  return critical_missed == 1
             ? QuizWords::tr("%1, 1 critical question missed", "marks").arg(right)
             : QuizWords::tr("%1, %n critical questions missed", "marks", critical_missed).arg(right);
}

QImage marked_picture(const QByteArray& picture, int size, const teach::Given& given) {
  QSvgRenderer svg;
  const bool drawn = svg.load(picture);
  QImage image(size, size, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  if (drawn) {
    svg.render(&painter, QRectF(0, 0, size, size));
  } else {
    const QImage plain = QImage::fromData(picture);
    if (plain.isNull()) return {};
    painter.drawImage(QRectF(0, 0, size, size), plain);
  }
  if (const auto* pointed = std::get_if<teach::Pointed>(&given)) {
    const QPointF at(pointed->point.x * size / 1000.0, pointed->point.y * size / 1000.0);
    painter.setPen(QPen(Qt::white, 6));
    painter.drawEllipse(at, 12, 12);
    painter.setPen(QPen(palette(Shade::light).full, 3));
    painter.drawEllipse(at, 12, 12);
    painter.drawLine(at - QPointF(18, 0), at + QPointF(18, 0));
    painter.drawLine(at - QPointF(0, 18), at + QPointF(0, 18));
  }
  return image;
}

}  // namespace wm::app
