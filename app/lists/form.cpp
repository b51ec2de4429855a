#include "app/lists/form.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "app/widgets/key_button.h"
#include "app/widgets/role_label.h"
#include "app/words/words.h"

namespace wm::app {
Form::Form(const QString& heading, const QString& save_words, QWidget* parent)
    : QWidget(parent), fields_(new QVBoxLayout), problem_(role_label("problem")) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  layout->addWidget(role_label("large", heading));
  fields_->setSpacing(8);
  layout->addLayout(fields_);
  problem_->setObjectName("problem");
  problem_->hide();
  layout->addWidget(problem_);
  auto* save = new KeyButton(save_words, QKeySequence("Ctrl+Return"), true, this);
  save->setObjectName("save");
  auto* leave = new KeyButton(tr("Leave it"), QKeySequence("Esc"), false, this);
  leave->setObjectName("leave");
  connect(save, &QPushButton::clicked, this, &Form::saved);
  connect(leave, &QPushButton::clicked, this, &Form::left);
  layout->addWidget(save);
  layout->addWidget(leave);
  layout->addStretch(1);
}

QWidget* Form::with_name(const QString& words, QWidget* field) {
  auto* box = new QWidget;
  auto* layout = new QVBoxLayout(box);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  QLabel* name = role_label("quiet", words);
  name->setBuddy(field);
  layout->addWidget(name);
  layout->addWidget(field);
  field->setAccessibleName(words);
  if (!first_) first_ = field;
  return box;
}

QLineEdit* Form::new_line(const QString& name) {
  auto* field = new QLineEdit;
  field->setObjectName(name);
  connect(field, &QLineEdit::returnPressed, this, &Form::saved);
  return field;
}

QLineEdit* Form::line(const QString& words, const QString& name, const QString& value) {
  QLineEdit* field = new_line(name);
  field->setText(value);
  fields_->addWidget(with_name(words, field));
  return field;
}

std::pair<QLineEdit*, QLineEdit*> Form::two_lines(const QString& left, const QString& left_name,
                                                  const QString& right, const QString& right_name) {
  auto* row = new QHBoxLayout;
  QLineEdit* one = new_line(left_name);
  QLineEdit* two = new_line(right_name);
  row->addWidget(with_name(left, one));
  row->addWidget(with_name(right, two));
  fields_->addLayout(row);
  return {one, two};
}

QComboBox* Form::choice(const QString& words, const QString& name,
                        const std::vector<std::pair<QString, QString>>& choices) {
  auto* field = new QComboBox;
  // As wide as the panel, however long a choice is.
  field->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  field->setMinimumContentsLength(10);
  field->setObjectName(name);
  for (const auto& [value, shown] : choices) field->addItem(shown, value);
  fields_->addWidget(with_name(words, field));
  return field;
}

QLabel* Form::say(const QString& words) {
  QLabel* label = role_label("body", words);
  fields_->addWidget(label);
  return label;
}

void Form::add_field(const QString& words, QWidget* field) { fields_->addWidget(with_name(words, field)); }

void Form::add(QWidget* widget) { fields_->addWidget(widget); }

void Form::show_problem(const Problem& problem) { show_problem(problem_sentence(problem)); }

void Form::show_problem(const QString& sentence) {
  problem_->setText(sentence);
  problem_->setVisible(!sentence.isEmpty());
}

void Form::take_cursor() {
  if (first_) first_->setFocus(Qt::OtherFocusReason);
}

}  // namespace wm::app
