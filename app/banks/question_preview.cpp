#include "app/banks/question_preview.h"

#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QSvgRenderer>
#include <QVBoxLayout>
#include <algorithm>

#include "app/lists/issued.h"
#include "app/theme/theme.h"
#include "app/widgets/role_label.h"
#include "app/words/listing.h"

namespace wm::app {
namespace {

constexpr int picture_side = 240;

/// Drawn at the screen's own sharpness; a null picture where the bytes are none.
QPixmap picture_of(const db::Enclosure& enclosure, qreal ratio) {
  const QByteArray bytes = bytes_of(enclosure);
  QPixmap drawn;
  if (QString::fromStdString(enclosure.name).endsWith(".svg", Qt::CaseInsensitive)) {
    QSvgRenderer svg(bytes);
    if (!svg.isValid()) return {};
    const QSize size = svg.defaultSize().scaled(picture_side, picture_side, Qt::KeepAspectRatio) * ratio;
    drawn = QPixmap(size);
    drawn.fill(Qt::white);  // pictures are drawn for paper
    QPainter painter(&drawn);
    svg.render(&painter);
  } else if (drawn.loadFromData(bytes)) {
    drawn = drawn.scaled(QSize(picture_side, picture_side) * ratio, Qt::KeepAspectRatio,
                         Qt::SmoothTransformation);
  }
  drawn.setDevicePixelRatio(ratio);
  return drawn;
}

/// What a choice has before it on the screen.
QString box_before(const teach::Question& question) {
  if (std::holds_alternative<teach::SeveralRight>(question.kind)) return QStringLiteral("\u2610 ");
  if (std::holds_alternative<teach::InOrder>(question.kind)) return QStringLiteral("\u2195 ");
  return QStringLiteral("\u25CB ");
}

/// What is to be done, where the choices do not say it.
QString task_words(const teach::Question& question) {
  if (std::holds_alternative<teach::SeveralRight>(question.kind))
    return QuestionPreview::tr("Tick all that are right.");
  if (std::holds_alternative<teach::InOrder>(question.kind))
    return QuestionPreview::tr("Put them in order; they are shown shuffled.");
  if (std::holds_alternative<teach::ANumber>(question.kind)) return QuestionPreview::tr("Type a number.");
  if (std::holds_alternative<teach::APlace>(question.kind))
    return QuestionPreview::tr("Point at a place in the picture.");
  return {};
}

struct RightAnswer {
  const teach::Wording& wording;

  QString choice(std::size_t i) const {
    return i < wording.choices.size() ? QString::fromStdString(wording.choices[i]) : QString();
  }
  QString operator()(const teach::OneRight& one) const { return choice(one.right); }
  QString operator()(const teach::SeveralRight& several) const {
    QStringList right;
    for (std::size_t i = 0; i < several.right.size(); ++i)
      if (several.right[i]) right << choice(i);
    return right.join(QStringLiteral("; "));
  }
  QString operator()(const teach::InOrder&) const {
    return QuestionPreview::tr("the steps in the order in which they stand here");
  }
  QString operator()(const teach::ANumber& number) const {
    const QString answer = QString::fromStdString(teach::to_text(number.answer));
    return number.tolerance.value == 0
               ? answer
               : QuestionPreview::tr("%1, within %2", "a number, its tolerance")
                     .arg(answer, QString::fromStdString(teach::to_text(number.tolerance)));
  }
  QString operator()(const teach::APlace& place) const {
    return place.regions.size() == 1
               ? QuestionPreview::tr("one place in the picture")
               : QuestionPreview::tr("any of %1 places in the picture").arg(place.regions.size());
  }
};

}  // namespace

QString right_answer_words(const teach::Question& question, const teach::Wording& wording) {
  return std::visit(RightAnswer{wording}, question.kind);
}

QuestionPreview::QuestionPreview(QWidget* parent) : QFrame(parent) {
  setProperty("role", "paper");
  setObjectName("preview");
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 12, 16, 12);
  start();
}

void QuestionPreview::start() {
  delete content_;
  content_ = new QWidget;
  lines_ = new QVBoxLayout(content_);
  lines_->setContentsMargins(0, 0, 0, 0);
  lines_->setSpacing(6);
  layout()->addWidget(content_);
}

/// Shown with all that is in it, not line by line.
void QuestionPreview::finish() {
  lines_->addStretch(1);
  content_->show();
}

void QuestionPreview::say(const char* role, const QString& words) {
  if (!words.isEmpty()) lines_->addWidget(role_label(role, words));
}

void QuestionPreview::show_picture(const db::Enclosure* picture, const std::string& name) {
  const QPixmap drawn = picture ? picture_of(*picture, devicePixelRatioF()) : QPixmap();
  if (drawn.isNull())
    return say("quiet", tr("The picture %1 is not here.").arg(QString::fromStdString(name)));
  auto* label = new QLabel;
  label->setPixmap(drawn);
  label->setAccessibleName(QString::fromStdString(name));
  lines_->addWidget(label);
}

void QuestionPreview::show_question(const teach::Question& question,
                                    const std::vector<db::Enclosure>& pictures) {
  start();
  const bool several = question.wordings.size() > 1;
  for (const teach::Wording& wording : question.wordings) {
    if (several) say("heading", QString::fromStdString(wording.language));
    QLabel* text = role_label("body", QString::fromStdString(wording.text));
    text->setFont(type(TypeSize::body, true));
    lines_->addWidget(text);
    say("quiet", task_words(question));
    if (!question.picture.empty() && &wording == &question.wordings.front()) {
      const auto found = std::ranges::find(pictures, question.picture, &db::Enclosure::name);
      show_picture(found == pictures.end() ? nullptr : &*found, question.picture);
    }
    for (const std::string& choice : wording.choices)
      say("body", box_before(question) + QString::fromStdString(choice));
    lines_->addSpacing(4);
    say("quiet",
        tr("Right: %1", "what counts as the right answer").arg(right_answer_words(question, wording)));
    say("quiet", QString::fromStdString(wording.reason));
  }
  if (question.critical) say("quiet", tr("Critical: whoever gets it wrong does not pass."));
  finish();
}

void QuestionPreview::show_words(const QString& words) {
  start();
  say("quiet", words);
  finish();
}

}  // namespace wm::app
