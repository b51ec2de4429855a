#include "app/desk/paper_form.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include "app/desk/items.h"
#include "app/widgets/key_button.h"
#include "app/words/labels.h"
#include "app/words/words.h"

namespace wm::app {

namespace {
QSpinBox* number(int least, int most, int value) {
  auto* box = new QSpinBox;
  box->setRange(least, most);
  box->setValue(value);
  box->setButtonSymbols(QAbstractSpinBox::NoButtons);
  return box;
}
}  // namespace

PaperForm::PaperForm(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      title_(new QLabel),
      quiet_(new QLabel),
      form_(new QFormLayout),
      item_(new QComboBox),
      last_(new DateField(tr("no end"))),
      taken_(new DateField(tr("today"))),
      correct_(number(0, 1000, 0)),
      total_(number(1, 1000, 20)),
      critical_(number(0, 1000, 0)) {
  title_->setProperty("role", "large");
  title_->setWordWrap(true);
  quiet_->setProperty("role", "quiet");
  quiet_->setWordWrap(true);
  item_->setObjectName("item");
  item_->setPlaceholderText(tr("choose"));
  last_->setObjectName("last_day");
  taken_->setObjectName("taken");
  correct_->setObjectName("correct");
  form_->setRowWrapPolicy(QFormLayout::WrapAllRows);
  form_->setVerticalSpacing(4);
  form_->addRow(tr("Which"), item_);
  form_->addRow(tr("Good through"), last_);
  form_->addRow(tr("Taken on"), taken_);
  form_->addRow(tr("Questions right"), correct_);
  form_->addRow(tr("Questions in all"), total_);
  form_->addRow(tr("Critical questions missed"), critical_);
  auto* save = new KeyButton(tr("Enter it"), Qt::CTRL | Qt::Key_Return, true);
  save->setObjectName("enter_it");
  auto* leave = new KeyButton(tr("Leave it"), Qt::Key_Escape);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(20, 16, 20, 16);
  column->setSpacing(8);
  column->addWidget(title_);
  column->addWidget(quiet_);
  column->addLayout(form_);
  column->addSpacing(6);
  column->addWidget(save);
  column->addWidget(leave);
  column->addStretch(1);
  setFocusProxy(item_);
  connect(save, &KeyButton::clicked, this, &PaperForm::enter);
  connect(leave, &KeyButton::clicked, this, &PaperForm::closed);
  for (DateField* field : {last_, taken_})
    connect(field, &DateField::refused, this, &PaperForm::tell_problem);
}

void PaperForm::start(Kind kind, const PersonId& person, const std::string& item) {
  kind_ = kind;
  person_ = person;
  const QString name = person_name(session_.store().person(person));
  const Rulebook* book = session_.decider().in_force(session_.now());
  const Items items = book ? items_of(*book) : Items();
  const auto& names = kind == Kind::paper    ? items.documents
                      : kind == Kind::lesson ? items.lessons
                                             : items.quizzes;
  item_->clear();
  for (const std::string& each : names) item_->addItem(item_label(each), QString::fromStdString(each));
  // Where nothing is asked for in particular, nothing is chosen beforehand: the wrong paper is soon entered.
  item_->setCurrentIndex(names.size() == 1 ? 0 : item_->findData(QString::fromStdString(item)));
  title_->setText(kind == Kind::paper    ? tr("Take a paper of %1").arg(name)
                  : kind == Kind::lesson ? tr("%1 was at a lesson").arg(name)
                                         : tr("A quiz of %1, marked on paper").arg(name));
  quiet_->setText(kind == Kind::paper ? tr("You have seen the paper and it is in the file.")
                                      : tr("Counts for the revision that is taught now."));
  for (DateField* field : {last_, taken_}) {
    field->set_today(session_.zone().day(session_.now()));
    field->set_day({});
  }
  correct_->setValue(0);
  critical_->setValue(0);
  form_->setRowVisible(last_, kind == Kind::paper);
  form_->setRowVisible(taken_, kind == Kind::quiz);
  for (QSpinBox* row : {correct_, total_, critical_}) form_->setRowVisible(row, kind == Kind::quiz);
}

int PaperForm::revision(const std::string& item) const { return published_revision(session_, item); }

Fact PaperForm::fact() const {
  const std::string item = item_->currentData().toString().toStdString();
  switch (kind_) {
    case Kind::paper:
      return Document{person_, item, last_->typed()};
    case Kind::lesson:
      return Lesson{person_, item, revision(item)};
    case Kind::quiz:
      return Quiz{person_, item, revision(item), correct_->value(), total_->value(), critical_->value()};
  }
  return Document{};
}

/// At midday, since a paper has a day and no time.
std::optional<Instant> PaperForm::taken_at() const {
  const Zone& zone = session_.zone();
  if (!taken_->typed() || *taken_->typed() == zone.day(session_.now())) return std::nullopt;
  return zone.start(*taken_->typed()) + std::int64_t{12} * 3600;
}

void PaperForm::enter() {
  if (item_->count() == 0) return emit closed();
  if (item_->currentIndex() < 0) {
    item_->setFocus();
    return emit tell_problem(
        {"item", tr("It is not said which").toStdString(), tr("Choose it from the list").toStdString()});
  }
  for (DateField* field : {last_, taken_})
    if (!field->is_good()) return field->setFocus();
  const QString item = item_->currentText(), name = person_name(session_.store().person(person_));
  const bool from_paper = kind_ == Kind::quiz;
  const auto done =
      session_.commit(db::EnterFact{fact()}, from_paper ? taken_at() : std::nullopt, {}, from_paper);
  if (!done) return emit tell_problem(done.error());
  emit tell(tr("Entered for %1: %2.", "who, what").arg(name, item));
  emit closed();
}

void PaperForm::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return enter();
  QWidget::keyPressEvent(event);
}

}  // namespace wm::app
