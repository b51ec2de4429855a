#include "app/start/shop_windows.h"

#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QTimer>
#include <utility>

#include "app/start/computer_secret.h"
#include "app/start/station_folder.h"
#include "app/theme/theme.h"
#include "app/words/words.h"
#include "db/backup/backup.h"
#include "db/demo.h"
#include "db/heads.h"
#include "db/sql/server.h"

namespace wm::app {

namespace {
/// How often a server that was not there is tried again.
constexpr int wait_for_server_ms = 2000;
}  // namespace

ShopWindows::ShopWindows(std::string path, db::Store::Clock real_now, db::StoreOptions options,
                         bool quiz_station)
    : path_(std::move(path)),
      real_now_(std::move(real_now)),
      options_(std::move(options)),
      quiz_station_(quiz_station) {
  // A shop that is only just being made has no wrong PINs yet.
  if (db::is_on_server(path_) || QFileInfo::exists(QString::fromStdString(path_))) keep_wait();
}

void ShopWindows::keep_wait() {
  options_.pin_wait = QDir(station_folder(path_)).filePath("pin-wait").toStdString();
}

ShopWindows::~ShopWindows() {
  keep_head();
  behind_.waitForDone();
}

void ShopWindows::keep_head() {
  if (!session_ || options_.secret == ledger::Secret{}) return;
  head_kept_ = session_->zone().day(session_->now());
  const auto kept = session_->store().head().and_then([this](const ledger::Head& head) {
    return db::keep_head(session_->station().toStdString(), head, station_key(options_.secret));
  });
  if (!kept && window_) window_->messages().tell_problem(kept.error());
}

void ShopWindows::open(db::Store store) {
  session_ = std::make_unique<Session>(std::move(store), station_folder(path_));
  connect(session_.get(), &Session::changed, this, [this] {
    if (session_->zone().day(session_->now()) != head_kept_) keep_head();
    // Not at once: the one who told it is a page of the window that goes.
    if (window_ && is_quiz_station())
      QMetaObject::invokeMethod(this, &ShopWindows::become_station, Qt::QueuedConnection);
  });
  if (quiz_station_ || is_quiz_station()) return open_station();
  // Not at once: the one who asks is a page of the window that goes.
  connect(
      &session_->backups(), &Backups::put_back_wanted, this,
      [this](const QString& backup) { put_back(backup.toStdString()); }, Qt::QueuedConnection);
  window_ = std::make_unique<MainWindow>(*session_);
  window_->resize(1366, 768);
  Place desk;
  desk.page = "desk";
  window_->go(desk);
  window_->show();
  keep_head();
  session_->backups().start();
  window_->take_up_quiz();
}

/// Backups and what else the desk looks after are the desk's.
void ShopWindows::open_station() {
  station_ = std::make_unique<QuizStation>(*session_, true);
  station_->take_up();
  station_->showFullScreen();
  keep_head();
}

bool ShopWindows::is_quiz_station() const { return session_->store().station() == db::Station::quiz; }

/// A manager has said elsewhere that this computer is the quiz station.
void ShopWindows::become_station() {
  if (!window_) return;
  open_station();
  window_.reset();
}

void ShopWindows::open_behind() {
  if (db::is_on_server(path_)) {
    wait_with(tr("The shop is being read from its server. This window goes on by itself."));
  } else if (auto look = db::FirstLook::open(path_, real_now_)) {
    first_look_ = std::make_unique<FirstLookWindow>(std::move(*look));
    first_look_->show();
  } else {
    wait_with(tr("The shop's file is being opened. This window goes on by itself."));
  }
  read_behind();
}

void ShopWindows::read_behind() {
  behind_.start([this] {
    auto ahead = std::make_shared<Expected<db::ReadAhead>>(db::ReadAhead::read(path_, options_));
    QMetaObject::invokeMethod(
        this, [this, ahead] { take(std::move(*ahead)); }, Qt::QueuedConnection);
  });
}

void ShopWindows::take(Expected<db::ReadAhead> ahead) {
  auto store = std::move(ahead).and_then(
      [this](db::ReadAhead read) { return db::Store::open(path_, real_now_, options_, std::move(read)); });
  if (!store) {
    const bool again = db::is_on_server(path_);  // which may only be starting itself
    const QString why = problem_sentence(store.error());
    wait_with(again ? tr("%1 This window goes on by itself once it can.", "a sentence first").arg(why) : why);
    if (again) QTimer::singleShot(wait_for_server_ms, this, &ShopWindows::read_behind);
    return first_look_.reset();
  }
  const auto person = first_look_ ? first_look_->person() : std::nullopt;
  const bool hurt = first_look_ && first_look_->somebody_hurt();
  open(std::move(*store));
  if (hurt && window_) {  // nobody loses the number while they read it
    Place emergency;
    emergency.page = "emergency";
    window_->go(emergency);
  } else if (person && window_) {
    Place desk;
    desk.page = "desk";
    desk.person = *person;
    window_->go(desk);
  }
  first_look_.reset();
  waiting_.reset();
}

void ShopWindows::ask() {
  start_ = std::make_unique<StartPage>();
  start_->resize(1024, 720);
  connect(start_.get(), &StartPage::answered, this, [this](const FirstAnswers& answers) {
    auto store = first_store(answers);
    if (!store) return start_->tell_problem(store.error());
    open(std::move(*store));
    start_->hide();
  });
  start_->show();
}

Expected<db::Store> ShopWindows::first_store(const FirstAnswers& answers) {
  if (answers.server) return store_on_server(*answers.server);
  return answers.demo ? db::make_demo(path_, real_now_, options_)
                      : make_shop(path_, answers, real_now_, options_);
}

/// Kept only once it has been opened.
Expected<db::Store> ShopWindows::store_on_server(const ServerAnswers& answers) {
  const auto address = address_of(answers);
  if (!address) return tl::unexpected(address.error());
  const std::string file = std::exchange(path_, with_password(*address, answers.password));
  keep_wait();
  auto store = db::Store::open(path_, real_now_, options_);
  if (store && !server_folder_.isEmpty())
    if (auto kept = keep_server_shop(server_folder_, *address, answers.password); !kept)
      store = tl::unexpected(kept.error());
  if (!store) {
    path_ = file;
    options_.pin_wait.clear();
  }
  return store;
}

void ShopWindows::wait_with(const QString& words) {
  waiting_ = std::make_unique<QLabel>(words);
  waiting_->setFont(type(TypeSize::large));
  waiting_->setAlignment(Qt::AlignCenter);
  waiting_->setWordWrap(true);
  waiting_->setTextFormat(Qt::PlainText);
  waiting_->setContentsMargins(40, 40, 40, 40);
  waiting_->setWindowTitle(tr("Witnessmark"));
  waiting_->resize(1024, 720);
  waiting_->show();
}

/// The shop's file must not be open, not even here. The next window is there before the last one goes: with
/// none the program would end.
void ShopWindows::put_back(const std::string& backup) {
  wait_with(tr("The backup is being put back. This window goes on by itself."));
  window_.reset();
  session_.reset();
  behind_.start([this, backup, now = real_now_()] {
    const auto kept = db::restore(backup, path_, now);
    QMetaObject::invokeMethod(
        this, [this, kept] { go_on(kept); }, Qt::QueuedConnection);
  });
}

void ShopWindows::go_on(const Expected<std::string>& kept) {
  auto store = db::Store::open(path_, real_now_, options_);
  if (!store) {
    const QString why = kept ? QString() : problem_sentence(kept.error()) + ' ';
    return wait_with(why + problem_sentence(store.error()));
  }
  open(std::move(*store));
  waiting_.reset();
  if (kept)
    window_->messages().tell(tr("The backup is in place. What was there before is kept as %1.")
                                 .arg(QString::fromStdString(*kept)));
  else
    window_->messages().tell_problem(kept.error());
}

}  // namespace wm::app
