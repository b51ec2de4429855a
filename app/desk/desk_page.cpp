#include "app/desk/desk_page.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QShortcut>

#include "app/desk/legend.h"
#include "app/theme/theme.h"
#include "app/widgets/person_search.h"

namespace wm::app {

namespace {
enum Side { tonight_side, matches_side, person_side_index };
constexpr int answer_width = 394;
}  // namespace

DeskPage::DeskPage(Session& session, QWidget* parent)
    : Page(session, parent),
      search_(new QLineEdit),
      middle_(new QStackedWidget),
      right_(new QStackedWidget),
      tonight_(new TonightPanel(session)),
      matches_(new QListWidget),
      name_(new QLabel),
      summary_(new QLabel),
      strips_(new StripList(session)),
      tonight_side_(new TonightSide(session)),
      answer_(new AnswerPanel(session)) {
  search_->setObjectName("desk_search");
  search_->setPlaceholderText(tr("Name, number or card"));
  search_->setAccessibleName(tr("Find a person by name, number or card"));
  search_->setFixedHeight(row_height() + 4);
  search_->installEventFilter(this);
  matches_->setObjectName("matches");
  matches_->setAccessibleName(tr("People who fit"));
  matches_->setFocusPolicy(Qt::NoFocus);
  right_->addWidget(tonight_side_);
  right_->addWidget(answer_);
  right_->setFixedWidth(answer_width);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(20, 16, 16, 16);
  row->setSpacing(18);
  row->addWidget(middle(), 1);
  row->addWidget(right_);
  setFocusProxy(search_);
  wire();
}

void DeskPage::wire() {
  connect(search_, &QLineEdit::textEdited, this, &DeskPage::typed);
  connect(matches_, &QListWidget::itemClicked, this, &DeskPage::choose_match);
  connect(strips_, &StripList::target_chosen, this, &DeskPage::show_answer);
  connect(answer_, &AnswerPanel::go, this, &Page::go);
  connect(answer_, &AnswerPanel::tell, this, &Page::tell);
  connect(answer_, &AnswerPanel::tell_problem, this, &Page::tell_problem);
  connect(answer_, &AnswerPanel::back_to_list, strips_, qOverload<>(&QWidget::setFocus));
  connect(tonight_side_, &TonightSide::tell, this, &Page::tell);
  connect(tonight_side_, &TonightSide::tell_problem, this, &Page::tell_problem);
  connect(tonight_, &TonightPanel::tell, this, &Page::tell);
  connect(tonight_, &TonightPanel::tell_problem, this, &Page::tell_problem);
  connect(tonight_, &TonightPanel::go, this, &Page::go);
  auto* find = new QShortcut(QKeySequence::Find, this);
  connect(find, &QShortcut::activated, this, [this] {
    search_->setFocus();
    search_->selectAll();
  });
}

QWidget* DeskPage::middle() {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(10);
  column->addWidget(search_);
  middle_->addWidget(tonight_);
  middle_->addWidget(matches_);
  middle_->addWidget(person_side());
  column->addWidget(middle_, 1);
  return box;
}

QWidget* DeskPage::person_side() {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  name_->setProperty("role", "large");
  name_->setObjectName("person_name");
  summary_->setProperty("role", "quiet");
  column->addWidget(name_);
  column->addWidget(summary_);
  column->addWidget(new StripHeader(strips_, session().zone()));
  column->addWidget(strips_, 1);
  column->addWidget(new Legend);
  return box;
}

void DeskPage::refresh() {
  shop_ = shop_now(session());
  tonight_->show_shop(shop_);
  tonight_side_->show_shop(shop_);
  if (!person_.empty()) show_person(person_, strips_->target());
}

void DeskPage::open(const Place& place) {
  if (!place.person.empty()) {
    show_person(place.person, place.target);
    strips_->setFocus();
    return;
  }
  search_->setFocus();
  search_->selectAll();
}

void DeskPage::typed() {
  person_.clear();
  if (search_->text().trimmed().isEmpty()) return show_tonight();
  list_matches();
}

void DeskPage::list_matches() {
  matches_->clear();
  for (const db::Person& person : find_people(session().store().people(), search_->text())) {
    if (session().store().joined(person.id) != person.id) continue;
    QString line = person_name(person);
    if (!person.nickname.empty())
      line = tr("%1, called %2").arg(line, QString::fromStdString(person.nickname));
    auto* item = new QListWidgetItem(
        tr("%1  %2", "name, number").arg(line, QString::fromStdString(person.number)), matches_);
    item->setData(Qt::UserRole, QString::fromStdString(person.id));
    item->setSizeHint({200, row_height()});
  }
  if (matches_->count() == 0) {
    auto* nobody = new QListWidgetItem(
        tr("Nobody is called that here. New people are entered on the page People."), matches_);
    nobody->setFlags(Qt::NoItemFlags);
  } else {
    matches_->setCurrentRow(0);
  }
  middle_->setCurrentIndex(matches_side);
  right_->setCurrentWidget(tonight_side_);
}

void DeskPage::choose_match() {
  const QListWidgetItem* item = matches_->currentItem();
  if (!item || !(item->flags() & Qt::ItemIsEnabled)) return;
  show_person(item->data(Qt::UserRole).toString().toStdString(), {});
  strips_->setFocus();
}

void DeskPage::show_tonight() {
  person_.clear();
  middle_->setCurrentIndex(tonight_side);
  right_->setCurrentWidget(tonight_side_);
}

// Where the person waits or has most lately been at work to get further: the lowest tier that is only with a
// supervisor, else the first that is not yet open.
TargetName DeskPage::best_target() const {
  TargetName first;
  for (const StripRow& row : strips_->strips().rows) {
    if (row.heading()) continue;
    if (row.rung == Rung::supervised) return row.target;
    if (first.empty() && row.rung == Rung::barred) first = row.target;
  }
  return first;
}

void DeskPage::show_person(const PersonId& id, const TargetName& target) {
  const auto person = session().person(id);
  if (!person) return show_tonight();
  person_ = id;
  strips_->show_person(id);
  const Strips& strips = strips_->strips();
  name_->setText(person_name(person));
  summary_->setText(tr("%1. Machines without a supervisor: %2; only with one: %3.", "number, count, count")
                        .arg(QString::fromStdString(person->number))
                        .arg(strips.independent)
                        .arg(strips.supervised));
  if (search_->text() != person_name(person)) search_->setText(person_name(person));
  middle_->setCurrentIndex(person_side_index);
  right_->setCurrentWidget(answer_);
  strips_->choose(target.empty() ? best_target() : target);
  show_answer();
}

void DeskPage::show_answer() {
  if (!person_.empty() && !strips_->target().empty()) answer_->show_answer(shop_, person_, strips_->target());
}

void DeskPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Escape) return Page::keyPressEvent(event);
  search_->clear();
  search_->setFocus();
  show_tonight();
}

bool DeskPage::eventFilter(QObject* watched, QEvent* event) {
  if (watched != search_ || event->type() != QEvent::KeyPress) return false;
  const int key = static_cast<QKeyEvent*>(event)->key();
  const bool listing = middle_->currentIndex() == matches_side;
  const int row = matches_->currentRow();
  if (key == Qt::Key_Return || key == Qt::Key_Enter) {
    if (static_cast<QKeyEvent*>(event)->modifiers() & Qt::ControlModifier) return false;
    if (listing)
      choose_match();
    else if (!person_.empty())
      strips_->setFocus();
    return true;
  }
  if (key != Qt::Key_Down && key != Qt::Key_Up) return false;
  if (listing)
    matches_->setCurrentRow(qBound(0, row + (key == Qt::Key_Down ? 1 : -1), matches_->count() - 1));
  else if (key == Qt::Key_Down)
    middle_->currentIndex() == person_side_index ? strips_->setFocus() : tonight_->setFocus();
  return true;
}

}  // namespace wm::app
