// How the Diary is laid out; what it does stands in diary_page.cpp.
#include <QGridLayout>
#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

#include "app/diary/day_strip.h"
#include "app/diary/diary_page.h"
#include "app/diary/fit_view.h"
#include "app/diary/waiting_list.h"
#include "app/theme/theme.h"
#include "app/widgets/date_field.h"
#include "app/widgets/key_button.h"
#include "app/widgets/person_box.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

QLabel* label(const char* role, bool wrap = false) {
  auto* out = new QLabel;
  out->setProperty("role", role);
  out->setWordWrap(wrap);
  return out;
}

/// A heading with a quiet word at its right.
QHBoxLayout* headed(QLabel* heading, QLabel* quiet) {
  auto* out = new QHBoxLayout;
  heading->setFont(type(TypeSize::body, true));
  out->addWidget(heading, 1);
  out->addWidget(quiet, 0, Qt::AlignTop);
  return out;
}

/// The day by machine on a sheet of paper.
QFrame* strip_paper(QLabel* heading, QLabel* quiet, QWidget* strip) {
  auto* out = new QFrame;
  out->setProperty("role", "paper");
  auto* column = new QVBoxLayout(out);
  column->setContentsMargins(12, 8, 12, 8);
  column->addLayout(headed(heading, quiet));
  column->addWidget(strip);
  return out;
}

}  // namespace

DiaryPage::DiaryPage(Session& session, QWidget* parent) : Page(session, parent) {
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(24, 18, 20, 18);
  views_ = new QStackedWidget;
  fit_ = new FitView(session);
  views_->addWidget(make_diary());
  views_->addWidget(fit_);
  whole->addWidget(views_);
  connect(fit_, &FitView::left, this, &DiaryPage::back_to_the_diary);
  connect(fit_, &FitView::book, this, &DiaryPage::book_all);
  setFocusProxy(person_);
}

QWidget* DiaryPage::make_diary() {
  auto* box = new QWidget;
  auto* across = new QHBoxLayout(box);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(20);
  auto* reading = new QWidget;
  reading->setMaximumWidth(1300);  // a reason stays near its time
  auto* left = new QVBoxLayout(reading);
  left->setContentsMargins(0, 0, 0, 0);
  left->setSpacing(6);
  left->addWidget(make_choice());
  left->addSpacing(6);
  left->addWidget(make_list(), 1);
  across->addWidget(reading, 9);
  across->addWidget(make_side(), 4);
  across->addStretch(0);
  return box;
}

QWidget* DiaryPage::make_choice() {
  auto* box = new QWidget;
  auto* across = new QHBoxLayout(box);
  across->setContentsMargins(0, 0, 0, 0);
  person_ = new PersonBox(session());
  person_->field()->setObjectName("person");
  person_->field()->installEventFilter(this);
  target_ = new QComboBox;
  target_->setObjectName("target");
  target_->setAccessibleName(tr("Machine"));
  target_->setMinimumWidth(200);
  target_->setMaxVisibleItems(16);
  purpose_ = new QComboBox;
  purpose_->setObjectName("purpose");
  purpose_->setAccessibleName(tr("What for"));
  for (const db::Purpose each : {db::Purpose::check_out, db::Purpose::teach, db::Purpose::practise})
    purpose_->addItem(purpose_words(each), static_cast<int>(each));
  day_ = new DateField(tr("from today"));
  day_->setObjectName("day");
  day_->setAccessibleName(tr("First day shown"));
  day_->setMinimumWidth(110);
  day_->setMaximumWidth(150);
  auto* hint = label("quiet");
  hint->setText(QKeySequence(Qt::CTRL | Qt::Key_G).toString(QKeySequence::NativeText));
  hint->setFixedHeight(row_height() - 6);
  across->addWidget(person_, 3, Qt::AlignTop);
  across->addWidget(target_, 2, Qt::AlignTop);
  across->addWidget(purpose_, 1, Qt::AlignTop);
  across->addWidget(day_, 1, Qt::AlignTop);
  across->addWidget(hint, 0, Qt::AlignTop);

  connect(person_, &PersonBox::chosen, this,
          [this] { choose_person(person_->person().value_or(PersonId())); });
  connect(person_->field(), &QLineEdit::textEdited, this, [this](const QString& typed) {
    if (typed.isEmpty()) choose_person({});
  });
  connect(target_, &QComboBox::activated, this,
          [this](int i) { choose_target(target_->itemData(i).toString().toStdString()); });
  connect(purpose_, &QComboBox::activated, this, [this] {
    list_->setCurrentIndex({});
    refresh();
  });
  connect(day_, &DateField::day_changed, this, [this] {
    first_ = day_->day();
    refresh();
  });
  connect(day_, &DateField::refused, this, &Page::tell_problem);
  connect(day_, &QLineEdit::returnPressed, this, [this] { list_->setFocus(); });
  auto* go_to_day = new QShortcut(Qt::CTRL | Qt::Key_G, this);
  connect(go_to_day, &QShortcut::activated, this, [this] {
    day_->setFocus();
    day_->selectAll();
  });
  return box;
}

QWidget* DiaryPage::make_list() {
  auto* box = new QWidget;
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(4);
  heading_ = label("large");
  heading_->setObjectName("heading");
  under_ = label("quiet", true);
  under_->setObjectName("under");
  why_not_ = label("sentence", true);
  why_not_->setObjectName("why_not");
  rows_ = new DiaryRows(this);
  delegate_ = new DiaryDelegate(*rows_, this);
  list_ = new QListView;
  list_->setObjectName("list");
  list_->setAccessibleName(tr("Bookings and free times"));
  list_->setModel(rows_);
  list_->setItemDelegate(delegate_);
  list_->setResizeMode(QListView::Adjust);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  down->addWidget(heading_);
  down->addWidget(under_);
  down->addWidget(why_not_);
  down->addSpacing(4);
  down->addWidget(list_, 1);
  auto* caution_words = label("quiet", true);
  caution_words->setText(caution());
  down->addWidget(caution_words);
  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &DiaryPage::show_selected);
  return box;
}

QWidget* DiaryPage::make_side() {
  auto* box = new QWidget;
  box->setMinimumWidth(340);
  box->setMaximumWidth(600);
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(12);
  strip_heading_ = new QLabel;
  strip_heading_->setWordWrap(true);
  auto* by_machine = label("quiet");
  by_machine->setText(tr("by machine"));
  strip_ = new DayStrip;
  down->addWidget(strip_paper(strip_heading_, by_machine, strip_));
  waiting_heading_ = label("quiet");
  waiting_ = new WaitingList;
  waiting_->setMinimumHeight(row_height() + 12);
  auto* queue = new QVBoxLayout;
  queue->setSpacing(4);
  queue->addLayout(headed(new QLabel(tr("Waiting")), waiting_heading_));
  queue->addWidget(waiting_, 1);
  down->addLayout(queue, 1);
  down->addWidget(make_actions());
  connect(waiting_, &WaitingList::chosen, this, [this](const PersonId& person, const TargetName& target) {
    member_ = person;
    person_->set_person(person);
    choose_target(target);
  });
  return box;
}

QWidget* DiaryPage::make_actions() {
  auto* box = new QWidget;
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(6);
  book_ = new KeyButton(tr("Book"), Qt::CTRL | Qt::Key_Return, true);
  book_->setObjectName("book");
  fit_everyone_ = new KeyButton(tr("Fit everyone…"), Qt::CTRL | Qt::SHIFT | Qt::Key_E);
  fit_everyone_->setObjectName("fit_everyone");
  wait_ = new KeyButton(tr("Put on the waiting list"), Qt::CTRL | Qt::Key_L);
  arrived_ = new KeyButton(tr("Arrived"), Qt::CTRL | Qt::Key_1);
  late_ = new KeyButton(tr("Late"), Qt::CTRL | Qt::Key_2);
  not_come_ = new KeyButton(tr("Not come"), Qt::CTRL | Qt::Key_3);
  cancel_ = new KeyButton(tr("Cancel…"), Qt::CTRL | Qt::Key_4);
  hold_ = new KeyButton(tr("Hold it"), Qt::CTRL | Qt::Key_J);
  hold_->setObjectName("hold");
  move_ = new KeyButton(tr("Move…"), Qt::CTRL | Qt::Key_M);
  move_->setObjectName("move");
  keep_ = new KeyButton(tr("Keep its time"), QKeySequence("Esc"));
  keep_->setObjectName("keep");
  remind_ = new KeyButton(tr("Copy a reminder"), Qt::CTRL | Qt::Key_R);
  remind_->setObjectName("remind");
  print_ = new KeyButton(tr("Print this day's reminders"), Qt::CTRL | Qt::Key_P);
  print_->setObjectName("print_reminders");
  trouble_ = label("sentence", true);
  trouble_->setObjectName("trouble");
  reason_ = new QLineEdit;
  reason_->setObjectName("reason");
  reason_->setPlaceholderText(tr("the reason, then Enter; Esc keeps the booking"));
  reason_->setAccessibleName(tr("Reason for cancelling"));
  reason_->installEventFilter(this);
  reason_->hide();
  auto* turnout = new QGridLayout;
  turnout->setSpacing(6);
  turnout->addWidget(arrived_, 0, 0);
  turnout->addWidget(late_, 0, 1);
  turnout->addWidget(not_come_, 1, 0);
  turnout->addWidget(cancel_, 1, 1);
  turnout->addWidget(move_, 2, 0);
  turnout->addWidget(remind_, 2, 1);
  down->addWidget(trouble_);
  down->addLayout(turnout);
  down->addWidget(reason_);
  down->addWidget(print_);
  down->addWidget(keep_);
  down->addWidget(fit_everyone_);
  down->addWidget(wait_);
  down->addWidget(hold_);
  down->addWidget(book_);
  // The keypad's Enter is another key.
  auto* keypad = new QShortcut(Qt::CTRL | Qt::Key_Enter, this);
  connect(keypad, &QShortcut::activated, book_, &QPushButton::click);
  connect(book_, &QPushButton::clicked, this, &DiaryPage::book);
  connect(hold_, &QPushButton::clicked, this, &DiaryPage::hold);
  connect(move_, &QPushButton::clicked, this, &DiaryPage::begin_move);
  connect(keep_, &QPushButton::clicked, this, &DiaryPage::keep_time);
  connect(remind_, &QPushButton::clicked, this, &DiaryPage::copy_reminder);
  connect(print_, &QPushButton::clicked, this, &DiaryPage::print_day);
  connect(wait_, &QPushButton::clicked, this, &DiaryPage::wait_or_not);
  connect(fit_everyone_, &QPushButton::clicked, this, &DiaryPage::fit_everyone);
  connect(arrived_, &QPushButton::clicked, this, [this] { turned_out(db::Turnout::arrived); });
  connect(late_, &QPushButton::clicked, this, [this] { turned_out(db::Turnout::late); });
  connect(not_come_, &QPushButton::clicked, this, [this] { turned_out(db::Turnout::not_come); });
  connect(cancel_, &QPushButton::clicked, this, &DiaryPage::ask_reason);
  connect(reason_, &QLineEdit::returnPressed, this, &DiaryPage::cancel);
  return box;
}

}  // namespace wm::app
