#include "app/widgets/person_box.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include "app/widgets/person_search.h"
#include "app/words/words.h"

namespace wm::app {

namespace {
// Of the people who fit, in points: less than a list's of its own, so that six fit over the fields below.
constexpr int list_row = 31;
}  // namespace

PersonBox::PersonBox(Session& session, Keep keep, QWidget* parent)
    : QWidget(parent),
      session_(session),
      keep_(std::move(keep)),
      field_(new QLineEdit),
      list_(new QListWidget) {
  field_->setPlaceholderText(tr("name or number"));
  field_->setAccessibleName(tr("Person"));
  field_->installEventFilter(this);
  list_->setFocusPolicy(Qt::NoFocus);
  list_->setAccessibleName(tr("People who fit"));
  list_->hide();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(field_);
  column->addWidget(list_);
  setFocusProxy(field_);
  connect(field_, &QLineEdit::textEdited, this, [this] {
    chosen_.reset();
    list();
  });
  connect(list_, &QListWidget::itemClicked, this, [this] { choose(list_->currentRow()); });
}

void PersonBox::set_person(const std::optional<PersonId>& person) {
  chosen_ = person;
  field_->setText(person ? person_name(session_.store().person(*person)) : QString());
  list_->hide();
  if (all_ && !person) list();
}

void PersonBox::show_all_when_empty(bool all) {
  all_ = all;
  list();
}

void PersonBox::list() {
  list_->clear();
  const QString typed = field_->text().trimmed();
  const auto& people = session_.store().people();
  for (const db::Person& person : typed.isEmpty() && all_ ? people : find_people(people, typed, 200)) {
    if ((keep_ && !keep_(person)) || session_.store().joined(person.id) != person.id) continue;
    auto* item = new QListWidgetItem(
        tr("%1  %2", "name, number").arg(person_name(person), QString::fromStdString(person.number)), list_);
    item->setSizeHint({0, list_row});
    item->setData(Qt::UserRole, QString::fromStdString(person.id));
    if (list_->count() >= 12) break;
  }
  list_->setFixedHeight(qMin(list_->count(), 6) * list_row + 6);
  list_->setCurrentRow(list_->count() > 0 ? 0 : -1);
  list_->setVisible(list_->count() > 0);
}

void PersonBox::choose(int row) {
  if (row < 0 || row >= list_->count()) return;
  set_person(list_->item(row)->data(Qt::UserRole).toString().toStdString());
  emit chosen();
}

bool PersonBox::eventFilter(QObject* watched, QEvent* event) {
  if (watched != field_ || event->type() != QEvent::KeyPress || !list_->isVisibleTo(this)) return false;
  const int key = static_cast<QKeyEvent*>(event)->key();
  const int rows = list_->count(), row = list_->currentRow();
  if (key == Qt::Key_Down)
    list_->setCurrentRow(qMin(row + 1, rows - 1));
  else if (key == Qt::Key_Up)
    list_->setCurrentRow(qMax(row - 1, 0));
  else if (key == Qt::Key_Return || key == Qt::Key_Enter || (key == Qt::Key_Tab && !chosen_))
    choose(row);
  else
    return false;
  return key != Qt::Key_Tab;
}

}  // namespace wm::app
