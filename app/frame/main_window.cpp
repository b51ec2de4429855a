#include "app/frame/main_window.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/emergency/emergency_page.h"
#include "app/frame/pages.h"
#include "app/quiz/screens.h"
#include "app/quiz/station.h"
#include "app/seat/seat_page.h"
#include "app/widgets/key_button.h"
#include "app/words/words.h"

namespace wm::app {

namespace {
Place place(const QString& page, const PersonId& person = {}) {
  Place to;
  to.page = page;
  to.person = person;
  return to;
}
}  // namespace

MainWindow::MainWindow(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      side_(new Side(session)),
      stack_(new QStackedWidget),
      messages_(new MessageBar),
      banner_(new QFrame),
      banner_words_(new QLabel),
      clock_(new QFrame),
      clock_words_(new QLabel),
      clock_right_(new KeyButton(tr("The clock is right"), Qt::CTRL | Qt::SHIFT | Qt::Key_T)),
      reader_(new CardReader(this)),
      left_alone_(new LeftAlone(session, 60'000, this)) {
  setWindowTitle(tr("%1 – Witnessmark").arg(QString::fromStdString(session.store().details().name)));
  setMinimumSize(1024, 640);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  row->addWidget(side_);
  auto* column = new QVBoxLayout;
  column->setSpacing(0);
  column->addWidget(banner());
  column->addWidget(clock_banner());
  column->addWidget(stack_, 1);
  column->addWidget(messages_);
  row->addLayout(column, 1);

  connect(side_, &Side::go, this, [this](const QString& id) { go(place(id)); });
  connect(side_, &Side::refused, messages_, &MessageBar::tell_problem);
  connect(reader_, &CardReader::scanned, this, &MainWindow::scanned);
  connect(left_alone_, &LeftAlone::handed_over, this, [this](int minutes) {
    messages_->tell(tr("Nobody touched the keys for %n minutes: nobody sits here any more.", "", minutes));
  });
  connect(&session, &Session::changed, this, [this] {
    show_banner();
    if (current()) current()->refresh();
  });
  const auto draw_again = [this] {
    if (current()) current()->refresh();
  };
  connect(&session, &Session::seated_changed, this, draw_again);
  connect(&session, &Session::seated_changed, this, [this] { show_clock(session_.store().clock_jump()); });
  connect(&session, &Session::clock_jumped, this, &MainWindow::show_clock);
  show_clock(session.store().clock_jump());
  connect(&session.backups(), &Backups::changed, this, draw_again);
  show_banner();
}

QWidget* MainWindow::banner() {
  banner_->setObjectName("banner");
  banner_->setProperty("role", "banner");
  auto* row = new QHBoxLayout(banner_);
  row->setContentsMargins(20, 6, 20, 6);
  auto* back = new KeyButton(tr("Back to now"), Qt::CTRL | Qt::Key_0);
  connect(back, &KeyButton::clicked, this, [this] {
    session_.set_known({});
    session_.set_asked_at({});
  });
  row->addWidget(banner_words_, 1);
  row->addWidget(back);
  return banner_;
}

QWidget* MainWindow::clock_banner() {
  clock_->setObjectName("clock_banner");
  clock_->setProperty("role", "banner");
  auto* row = new QHBoxLayout(clock_);
  row->setContentsMargins(20, 6, 20, 6);
  clock_words_->setWordWrap(true);
  clock_right_->setObjectName("clock_right");
  connect(clock_right_, &KeyButton::clicked, this, &MainWindow::confirm_clock);
  row->addWidget(clock_words_, 1);
  row->addWidget(clock_right_);
  return clock_;
}

void MainWindow::show_clock(qint64 jump) {
  clock_->setVisible(jump != 0);
  clock_right_->setVisible(session_.role() == db::Role::manager);
  if (jump == 0) return;
  const Zone& zone = session_.zone();
  const Instant now = session_.now();
  const QString shows =
      tr("This computer's clock shows %1, %2.").arg(long_day(now, zone), clock_time(now, zone));
  const QString how = jump < 0
                          ? tr("That is before the last entry, or it was set back while the shop was open.")
                          : tr("It was set ahead while the shop was open.");
  clock_words_->setText(QStringList{
      shows, how,
      tr("Put it right, or let a manager say here that it is right; nothing can be entered before that.")}
                            .join(' '));
}

void MainWindow::confirm_clock() {
  const auto done = session_.commit(db::ConfirmClock{});
  show_clock(session_.store().clock_jump());
  if (done)
    messages_->tell(tr("The clock counts as right from now on."));
  else
    messages_->tell_problem(done.error());
}

void MainWindow::show_banner() {
  const auto asked = session_.asked_at(), known = session_.known();
  banner_->setVisible(asked || known);
  const Zone& zone = session_.zone();
  if (asked && known)
    banner_words_->setText(
        tr("Answers are for %1, as known on %2.").arg(long_day(*asked, zone), long_day(*known, zone)));
  else if (asked)
    banner_words_->setText(tr("Answers are for %1.").arg(long_day(*asked, zone)));
  else if (known)
    banner_words_->setText(tr("Answers are as known on %1.").arg(long_day(*known, zone)));
}

void MainWindow::add(Page* page) {
  made_[page->id()] = page;
  stack_->addWidget(page);
  connect(page, &Page::go, this, &MainWindow::go);
  connect(page, &Page::tell, messages_, &MessageBar::tell);
  connect(page, &Page::tell_problem, messages_, &MessageBar::tell_problem);
}

Page* MainWindow::page(const QString& id) {
  if (const auto found = made_.find(id); found != made_.end()) return found->second;
  if (id == "emergency") add(new EmergencyPage(session_));
  if (id == "seat") {
    auto* seat = new SeatPage(session_);
    add(seat);
    connect(seat, &SeatPage::done, this, &MainWindow::leave_seat_page);
  }
  for (const PageEntry& entry : pages())
    if (id == QLatin1String(entry.id)) add(entry.make(session_, nullptr));
  const auto made = made_.find(id);
  return made == made_.end() ? nullptr : made->second;
}

Page* MainWindow::current() const { return qobject_cast<Page*>(stack_->currentWidget()); }

MainWindow::~MainWindow() = default;

bool MainWindow::make_quiz() {
  // While one is open another would take its place.
  if (quiz_) return false;
  quiz_ = std::make_unique<QuizStation>(session_, false);
  connect(
      quiz_.get(), &QuizStation::finished, this, [this] { quiz_.reset(); }, Qt::QueuedConnection);
  return true;
}

/// Over the whole of the second screen. Where there is only one the Desk is covered, so nobody sits at it any
/// more: whoever takes the quiz would find it open at the end.
void MainWindow::show_quiz() {
  const auto other = second_screen(*this);
  if (other)
    quiz_->setGeometry(other->geometry());
  else
    session_.hand_over();
  quiz_->showFullScreen();
  quiz_->activateWindow();
}

void MainWindow::open_quiz(const Place& where) {
  if (const auto may = session_.store().quiz_here(); !may) return messages_->tell_problem(may.error());
  if (!make_quiz())
    return messages_->tell_problem({"quiz", tr("A quiz is going on at the station").toStdString(),
                                    tr("Wait for its end").toStdString()});
  quiz_->open_for(where.person, where.item);
  show_quiz();
}

void MainWindow::take_up_quiz() {
  make_quiz();
  if (quiz_->take_up()) return show_quiz();
  // A damaged file is told; one that another program has is none of the Desk's business.
  if (const QString why = quiz_->refused(); !why.isEmpty()) messages_->tell(why);
  quiz_.reset();
}

void MainWindow::go(const Place& where) {
  if (where.page == "quiz") return open_quiz(where);
  for (const PageEntry& entry : pages())
    if (where.page == QLatin1String(entry.id) && !is_shown(entry, session_.store()))
      return messages_->tell_problem({page_title(entry).toStdString(),
                                      tr("This page is not used at this computer").toStdString(),
                                      tr("Use it at the front desk or in the office").toStdString()});
  Page* const to = page(where.page);
  if (!to) return;
  if (where.page == "seat" && current() && current()->id() != "seat") before_seat_ = current()->id();
  stack_->setCurrentWidget(to);
  side_->show_current(where.page);
  to->refresh();
  to->open(where);
}

void MainWindow::leave_seat_page() { go(place(before_seat_)); }

void MainWindow::scanned(const QString& card) {
  if (Page* here = current(); here && here->take_card(card)) return;
  for (const db::Person& person : session_.store().people())
    if (!person.card.empty() && card == QString::fromStdString(person.card))
      return go(place("desk", session_.store().joined(person.id)));
  messages_->tell_problem(
      {"card", tr("This card belongs to nobody here").toStdString(),
       tr("Type the name instead, or give the card to a person on the page People").toStdString()});
}

}  // namespace wm::app
