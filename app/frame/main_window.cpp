#include "app/frame/main_window.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/emergency/emergency_page.h"
#include "app/frame/pages.h"
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
      reader_(new CardReader(this)) {
  setWindowTitle(tr("%1 – Witnessmark").arg(QString::fromStdString(session.store().details().name)));
  setMinimumSize(1024, 640);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  row->addWidget(side_);
  auto* column = new QVBoxLayout;
  column->setSpacing(0);
  column->addWidget(banner());
  column->addWidget(stack_, 1);
  column->addWidget(messages_);
  row->addLayout(column, 1);

  connect(side_, &Side::go, this, [this](const QString& id) { go(place(id)); });
  connect(side_, &Side::refused, messages_, &MessageBar::tell_problem);
  connect(reader_, &CardReader::scanned, this, &MainWindow::scanned);
  connect(&session, &Session::changed, this, [this] {
    show_banner();
    if (current()) current()->refresh();
  });
  const auto draw_again = [this] {
    if (current()) current()->refresh();
  };
  connect(&session, &Session::seated_changed, this, draw_again);
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

void MainWindow::go(const Place& where) {
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
  for (const db::Person& person : session_.store().people())
    if (!person.card.empty() && card == QString::fromStdString(person.card))
      return go(place("desk", session_.store().joined(person.id)));
  messages_->tell_problem(
      {"card", tr("This card belongs to nobody here").toStdString(),
       tr("Type the name instead, or give the card to a person on the page People").toStdString()});
}

}  // namespace wm::app
