#include "app/quiz/number_field.h"

#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/quiz/station_type.h"
#include "app/quiz/tr.h"
#include "app/words/words.h"

namespace wm::app {
namespace {
// In bytes an attempt's file takes 200 (core/teach/attempt_json.cpp); a character may have four.
constexpr int longest_typed = 50;
}  // namespace

NumberField::NumberField(const AskedQuestion& asked, QWidget* parent)
    : AnswerView(parent),
      unit_(std::get<teach::ANumber>(asked.kind).answer.unit),
      field_(new QLineEdit),
      judged_(station_label(asked.size)) {
  field_->setObjectName("number");
  field_->setAccessibleName(QuizWords::tr("Your answer, a number with its unit"));
  field_->setFont(sized(asked.size * 3 / 2));
  field_->setMaxLength(longest_typed);
  field_->setMaximumWidth(asked.size * 26);
  judged_->setObjectName("judged");
  judged_->setMinimumHeight(asked.size * 3);
  judged_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(2, 2, 2, 2);
  column->setSpacing(10);
  column->addWidget(field_);
  column->addWidget(judged_);
  column->addStretch(1);
  setFocusProxy(field_);
  connect(field_, &QLineEdit::textEdited, this, [this](const QString& text) {
    judge();
    emit given(text.trimmed().isEmpty() ? teach::Given(teach::Unanswered{})
                                        : teach::Typed{text.toStdString()});
  });
  judge();
}

void NumberField::show_given(const teach::Given& given) {
  const auto* typed = std::get_if<teach::Typed>(&given);
  field_->setText(typed ? QString::fromStdString(typed->text) : QString());
  judge();
}

/// Only whether it can be read: a number that can is never told right or wrong here.
void NumberField::judge() {
  const QString text = field_->text().trimmed();
  if (text.isEmpty())
    return judged_->setText(QuizWords::tr("Type a number with its unit, as 1/8 in, 3.2 mm or 90 degrees."));
  const auto read = teach::read_measure(text.toStdString(), unit_);
  judged_->setText(read ? QuizWords::tr("Read as %1.").arg(QString::fromStdString(teach::to_text(*read)))
                        : QuizWords::tr("This can't be read yet. %1").arg(problem_sentence(read.error())));
}

}  // namespace wm::app
