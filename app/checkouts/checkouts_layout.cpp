// How Check-outs is laid out; what it does stands in checkouts_page.cpp.
#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

#include "app/checkouts/checkouts_page.h"
#include "app/checkouts/countersign_fields.h"
#include "app/checkouts/countersign_later.h"
#include "app/checkouts/paper_entry.h"
#include "app/checkouts/result_words.h"
#include "app/checkouts/sheet_view.h"
#include "app/diary/two_lines.h"
#include "app/passes/plan_view.h"
#include "app/theme/theme.h"
#include "app/widgets/key_button.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

QLabel* label(const char* role, const QString& words = {}, bool wrap = false) {
  auto* out = new QLabel(words);
  out->setProperty("role", role);
  out->setWordWrap(wrap);
  return out;
}

QFrame* paper() {
  auto* out = new QFrame;
  out->setProperty("role", "paper");
  return out;
}

QFrame* rule() {
  auto* out = new QFrame;
  out->setProperty("role", "rule");
  return out;
}

/// A caption whose letter after "&" leads to the field.
QLabel* caption(const QString& words, QWidget* field) {
  QLabel* out = label("quiet", words);
  out->setBuddy(field);
  field->setAccessibleName(QString(words).remove('&'));
  return out;
}

}  // namespace

CheckoutsPage::CheckoutsPage(Session& session, QWidget* parent)
    : CheckoutsPage(session, parent, SheetBook(session)) {}

CheckoutsPage::CheckoutsPage(Session& session, QWidget* parent, const std::vector<Sheet>& sheets)
    : CheckoutsPage(session, parent, SheetBook(session, sheets)) {}

CheckoutsPage::CheckoutsPage(Session& session, QWidget* parent, SheetBook book)
    : Page(session, parent), book_(std::move(book)), drafts_(session.station()) {
  auto* across = new QHBoxLayout(this);
  across->setContentsMargins(20, 18, 20, 18);
  across->setSpacing(16);
  list_box_ = make_list();
  across->addWidget(list_box_, 2);
  views_ = new QStackedWidget;
  views_->addWidget(make_sheet());
  views_->addWidget(make_plan());
  views_->addWidget(make_paper_entry());
  // A plan is as wide as the page.
  connect(views_, &QStackedWidget::currentChanged, this,
          [this](int view) { list_box_->setVisible(view == 0); });
  across->addWidget(views_, 7);
  across->addStretch(0);
}

QWidget* CheckoutsPage::make_list() {
  QFrame* box = paper();
  box->setMinimumWidth(236);
  box->setMaximumWidth(400);
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(12, 12, 12, 12);
  auto* heading = new QLabel(tr("One-on-ones"));
  heading->setFont(type(TypeSize::body, true));
  list_ = new QListWidget;
  list_->setObjectName("one_on_ones");
  list_->setAccessibleName(tr("Tonight's one-on-ones, and those still open"));
  list_->setItemDelegate(new TwoLines(list_));
  list_->setFrameShape(QFrame::NoFrame);
  down->addWidget(heading);
  down->addWidget(label("quiet", tr("tonight's, then those still open"), true));
  down->addWidget(list_, 1);
  connect(list_, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* item) {
    if (item && !filling_) choose(item->data(Qt::UserRole + 10).toString().toStdString());
  });
  connect(list_, &QListWidget::itemActivated, this, [this] { sheet_->setFocus(); });
  return box;
}

QWidget* CheckoutsPage::make_sheet() {
  QFrame* box = paper();
  box->setMaximumWidth(1200);  // a mark stays near its line
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(18, 14, 18, 12);
  down->setSpacing(4);
  heading_ = label("large", {}, true);
  heading_->setObjectName("heading");
  auto* top = new QHBoxLayout;
  top->addWidget(heading_, 1);
  pass_plan_ = new KeyButton(tr("Pass plan"), QKeySequence("Ctrl+T"));
  pass_plan_->setObjectName("pass_plan");
  connect(pass_plan_, &QPushButton::clicked, this, &CheckoutsPage::show_pass_plan);
  blank_ = new KeyButton(tr("Print it blank"), QKeySequence("Ctrl+P"));
  blank_->setObjectName("blank");
  connect(blank_, &QPushButton::clicked, this, &CheckoutsPage::print_blank);
  from_paper_ = new KeyButton(tr("From a paper"), QKeySequence("Ctrl+Shift+F"));
  from_paper_->setObjectName("from_paper");
  connect(from_paper_, &QPushButton::clicked, this, &CheckoutsPage::enter_from_paper);
  for (KeyButton* button : {pass_plan_, blank_, from_paper_}) top->addWidget(button, 0, Qt::AlignTop);
  under_ = label("sentence", {}, true);
  under_->setObjectName("under");
  how_ = label("quiet", {}, true);
  how_->setObjectName("how");
  sheet_ = new SheetView;
  connect(sheet_, &SheetView::marked, this, [this] {
    keep_draft();
    show_result();
    fill_list();
  });
  connect(sheet_, &SheetView::typed, this, &CheckoutsPage::send_in_passing);
  down->addLayout(top);
  down->addWidget(under_);
  down->addWidget(make_left_behind());
  down->addWidget(how_);
  down->addWidget(sheet_, 1);
  no_sheet_ = new QWidget;
  issue_sheet_ = new KeyButton(tr("To the run sheets"), QKeySequence("Ctrl+Shift+N"));
  issue_sheet_->setObjectName("issue_sheet");
  connect(issue_sheet_, &QPushButton::clicked, this, &CheckoutsPage::issue_sheet);
  auto* none = new QVBoxLayout(no_sheet_);
  none->setContentsMargins(0, 8, 0, 0);
  none->addWidget(issue_sheet_, 0, Qt::AlignLeft);
  none->addStretch(1);
  down->addWidget(no_sheet_, 1);
  down->addWidget(rule());
  foot_ = make_foot();
  after_box_ = make_after();
  down->addWidget(foot_);
  down->addWidget(after_box_);
  down->addWidget(label("quiet", caution(), true));
  return box;
}

/// What stands there was marked and is nowhere else, so it stays for as long as nobody has read it.
QWidget* CheckoutsPage::make_left_behind() {
  auto* box = new QFrame;
  box->setProperty("role", "banner");
  left_behind_box_ = box;
  auto* across = new QHBoxLayout(box);
  across->setContentsMargins(10, 6, 10, 6);
  left_behind_ = label("sentence", {}, true);
  left_behind_->setObjectName("left_behind");
  auto* away = new KeyButton(tr("Read: put it away"), QKeySequence("Ctrl+Shift+W"));
  away->setObjectName("put_away");
  connect(away, &QPushButton::clicked, this, &CheckoutsPage::put_away);
  across->addWidget(left_behind_, 1);
  across->addWidget(away, 0, Qt::AlignTop);
  box->hide();
  return box;
}

QWidget* CheckoutsPage::make_plan() {
  QFrame* box = paper();
  box->setMaximumWidth(1500);
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  plan_ = new PlanView(session());
  down->addWidget(plan_);
  connect(plan_, &PlanView::left, this, &CheckoutsPage::back_to_sheet);
  connect(plan_, &PlanView::tell, this, &Page::tell);
  connect(plan_, &PlanView::tell_problem, this, &Page::tell_problem);
  return box;
}

QWidget* CheckoutsPage::make_paper_entry() {
  paper_entry_ = new PaperEntry(session(), book_);
  connect(paper_entry_, &PaperEntry::left, this, &CheckoutsPage::back_to_sheet);
  connect(paper_entry_, &PaperEntry::tell, this, &Page::tell);
  connect(paper_entry_, &PaperEntry::tell_problem, this, &Page::tell_problem);
  QFrame* box = paper();
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  down->addWidget(paper_entry_);
  return box;
}

/// Who watched it with the assessor, and signs it with them.
void CheckoutsPage::add_second(QGridLayout* grid, int row) {
  second_ = new QComboBox;
  second_->setObjectName("second");
  second_pin_ = new QLineEdit;
  second_pin_->setObjectName("second_pin");
  second_pin_->setEchoMode(QLineEdit::Password);
  second_pin_->setPlaceholderText(tr("their own PIN"));
  second_pin_->setAccessibleName(tr("The second assessor's own PIN"));
  QLabel* name = caption(tr("Se&cond assessor"), second_);
  auto* across = new QHBoxLayout;
  across->setSpacing(8);
  across->addWidget(second_, 3);
  across->addWidget(second_pin_, 2);
  grid->addWidget(name, row, 2);
  grid->addLayout(across, row, 3);
  of_two_ = {name, second_, second_pin_};
  connect(second_, &QComboBox::activated, this, &CheckoutsPage::keep_draft);
  connect(second_pin_, &QLineEdit::returnPressed, this, &CheckoutsPage::sign);
}

/// The member's word; and below it the key with which one who has no PIN chooses it.
void CheckoutsPage::add_countersign(QGridLayout* grid, int row) {
  countersign_ = new CountersignFields(session());
  countersign_->setObjectName("countersign");
  member_pin_ = new KeyButton(tr("Choose their PIN"), QKeySequence("Ctrl+Shift+P"));
  member_pin_->setObjectName("choose_member_pin");
  QLabel* member = caption(tr("M&ember"), countersign_);
  grid->addWidget(member, row, 0);
  grid->addWidget(countersign_, row, 1);
  of_the_first_.insert(of_the_first_.end(), {member, countersign_});
  connect(member_pin_, &QPushButton::clicked, this, &CheckoutsPage::choose_member_pin);
  connect(countersign_, &CountersignFields::done, this, &CheckoutsPage::sign);
}

QWidget* CheckoutsPage::make_foot() {
  auto* box = new QWidget;
  auto* grid = new QGridLayout(box);
  grid->setContentsMargins(0, 4, 0, 2);
  grid->setVerticalSpacing(5);
  grid->setHorizontalSpacing(10);
  suggested_ = label("sentence", {}, true);
  suggested_->setObjectName("suggested");
  suggested_->setFont(type(TypeSize::body, true));
  restrictions_ = new QLineEdit;
  restrictions_->setObjectName("restrictions");
  restrictions_->setPlaceholderText(tr("none; or: no dado; with the adapted jig; with an interpreter"));
  note_ = new QLineEdit;
  note_->setObjectName("note");
  outcome_ = new QComboBox;
  outcome_->setObjectName("outcome");
  outcome_->addItem(tr("choose"), -1);
  for (Outcome outcome : {Outcome::passed, Outcome::failed, Outcome::stopped})
    outcome_->addItem(outcome_words(outcome), static_cast<int>(outcome));
  assessor_ = new QComboBox;
  assessor_->setObjectName("assessor");
  pin_ = new QLineEdit;
  pin_->setObjectName("pin");
  pin_->setEchoMode(QLineEdit::Password);
  pin_->setPlaceholderText(tr("own PIN"));
  sign_ = new KeyButton(tr("Sign"), Qt::CTRL | Qt::Key_Return, true);
  sign_->setObjectName("sign");
  QLabel* restricted = caption(tr("&Restrictions"), restrictions_);
  grid->addWidget(restricted, 1, 0);
  grid->addWidget(restrictions_, 1, 1);
  QLabel* never = label(
      "quiet",
      tr("Restrictions: what stays open and what aid was used, a semicolon between. Never a medical reason: "
         "nobody asks for one. The member countersigns: I was shown this machine's cautions."),
      true);
  never->setObjectName("never_medical");
  restrictions_->setAccessibleDescription(never->text());
  QLabel* result = caption(tr("Resu&lt"), outcome_);
  grid->addWidget(result, 1, 2);
  grid->addWidget(outcome_, 1, 3);
  QLabel* notes = caption(tr("&Notes"), note_);
  grid->addWidget(notes, 2, 0);
  grid->addWidget(note_, 2, 1);
  grid->addWidget(caption(tr("&Assessor"), assessor_), 2, 2);
  grid->addWidget(assessor_, 2, 3);
  add_second(grid, 3);
  grid->addWidget(caption(tr("Si&gnature"), pin_), 4, 2);
  auto* signature = new QHBoxLayout;
  signature->setSpacing(8);
  signature->addWidget(pin_, 1);
  signature->addWidget(sign_);
  grid->addLayout(signature, 4, 3);
  of_the_first_ = {restricted, restrictions_, never, result, outcome_, notes, note_};
  add_countersign(grid, 4);
  auto* below = new QHBoxLayout;
  below->setSpacing(16);
  below->addWidget(never, 1);
  below->addWidget(member_pin_);
  grid->addLayout(below, 5, 0, 1, 4);
  another_day_ = new KeyButton(tr("Go on another day"), QKeySequence("Ctrl+Shift+D"));
  another_day_->setObjectName("another_day");
  connect(another_day_, &QPushButton::clicked, this, &CheckoutsPage::put_by);
  auto* first = new QHBoxLayout;
  first->addWidget(suggested_, 1);
  first->addWidget(another_day_);
  grid->addLayout(first, 0, 0, 1, 4);
  kept_ = label("quiet", {}, true);
  kept_->setObjectName("kept");
  grid->addWidget(kept_, 6, 0, 1, 4);
  grid->setColumnStretch(1, 3);
  grid->setColumnStretch(3, 3);

  for (QLineEdit* field : {restrictions_, note_})
    connect(field, &QLineEdit::textEdited, this, &CheckoutsPage::keep_draft);
  connect(outcome_, &QComboBox::activated, this, &CheckoutsPage::keep_draft);
  connect(assessor_, &QComboBox::activated, this, &CheckoutsPage::keep_draft);
  connect(pin_, &QLineEdit::returnPressed, this, &CheckoutsPage::sign);
  connect(sign_, &QPushButton::clicked, this, &CheckoutsPage::sign);
  auto* keypad = new QShortcut(Qt::CTRL | Qt::Key_Enter, this);
  connect(keypad, &QShortcut::activated, this, &CheckoutsPage::sign);
  return box;
}

QWidget* CheckoutsPage::make_after() {
  auto* box = new QWidget;
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 6, 0, 2);
  after_ = label("large", {}, true);
  after_->setObjectName("after");
  practise_ = label("sentence", {}, true);
  practise_->setObjectName("practise");
  mark_apart_ = new KeyButton(tr("Second assessor: mark it apart"), QKeySequence("Ctrl+M"));
  mark_apart_->setObjectName("mark_apart");
  connect(mark_apart_, &QPushButton::clicked, this, &CheckoutsPage::begin_apart);
  show_marks_ = new KeyButton(tr("Show the marks"), QKeySequence("Ctrl+Shift+M"));
  show_marks_->setObjectName("show_marks");
  connect(show_marks_, &QPushButton::clicked, this, &CheckoutsPage::show_marks);
  next_ = new KeyButton(tr("Book the next one-on-one"), QKeySequence("Ctrl+O"));
  next_->setObjectName("next");
  connect(next_, &QPushButton::clicked, this, &CheckoutsPage::book_next);
  desk_ = new KeyButton(tr("Back to the Desk"), Qt::CTRL | Qt::Key_D, true);
  desk_->setObjectName("desk");
  connect(desk_, &QPushButton::clicked, this, &CheckoutsPage::to_desk);
  later_ = new CountersignLater(session());
  connect(later_, &CountersignLater::choose_pin, this, &CheckoutsPage::choose_member_pin);
  connect(later_, &CountersignLater::tell, this, &Page::tell);
  connect(later_, &CountersignLater::tell_problem, this, &Page::tell_problem);
  down->addWidget(after_);
  down->addWidget(practise_);
  down->addWidget(later_);
  auto* across = new QHBoxLayout;
  across->addStretch(1);
  for (KeyButton* button : {mark_apart_, show_marks_, next_, desk_}) across->addWidget(button);
  down->addLayout(across);
  box->hide();
  return box;
}

}  // namespace wm::app
