#include "app/start/open_program.h"

#include <QApplication>
#include <QCryptographicHash>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <cstdio>
#include <memory>

#include "app/cli/version.h"
#include "app/frame/main_window.h"
#include "app/start/computer_secret.h"
#include "app/start/language.h"
#include "app/start/start_page.h"
#include "app/start/system_shade.h"
#include "app/words/words.h"
#include "db/demo.h"
#include "db/heads.h"

namespace wm::app {

namespace {

Instant real_now() { return {QDateTime::currentSecsSinceEpoch()}; }

std::string store_path(const OpenWith& with) {
  if (!with.store.empty()) return with.store;
  const QDir folder(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
  folder.mkpath(".");
  return folder.filePath(with.demo ? "demo.witnessmark" : "shop.witnessmark").toStdString();
}

void tell(const std::string& path, const Problem& problem) {
  std::fprintf(stderr, "%s: %s\n", path.c_str(), problem_sentence(problem).toUtf8().constData());
}

/// Where the secret cannot be had, the program works on: a PIN alone then guards the keys made here.
db::StoreOptions store_options() {
  db::StoreOptions options;
  auto secret = computer_secret(QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation));
  if (secret)
    options.secret = *secret;
  else
    tell(secret.error().where, secret.error());
  return options;
}

Expected<db::Store> make(const std::string& path, const FirstAnswers& answers,
                         const db::StoreOptions& options) {
  return answers.demo ? db::make_demo(path, real_now, options) : make_shop(path, answers, real_now, options);
}

/// This computer's own folder for that shop, apart from the shop's file: what lies in it is no record.
QString station_folder(const std::string& path) {
  const QByteArray shop = QFileInfo(QString::fromStdString(path)).canonicalFilePath().toUtf8();
  const QDir folder(QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation));
  QString own = folder.filePath("station-" +
                                QCryptographicHash::hash(shop, QCryptographicHash::Sha256).left(8).toHex());
  QDir().mkpath(own);
  return own;
}

/// The window, and what it stands on.
class Program {
 public:
  Program(std::string path, db::StoreOptions options)
      : path_(std::move(path)), options_(std::move(options)) {}

  void open(db::Store store) {
    session_ = std::make_unique<Session>(std::move(store), station_folder(path_));
    keep_head();
    QObject::connect(session_.get(), &Session::changed, session_.get(), [this] {
      if (session_->zone().day(session_->now()) != kept_on_) keep_head();
    });
    QObject::connect(qApp, &QCoreApplication::aboutToQuit, session_.get(), [this] { keep_head(); });
    window_ = std::make_unique<MainWindow>(*session_);
    window_->resize(1366, 768);
    Place desk;
    desk.page = "desk";
    window_->go(desk);
    window_->show();
  }

  void ask() {
    start_ = std::make_unique<StartPage>();
    start_->resize(1024, 720);
    QObject::connect(start_.get(), &StartPage::answered, start_.get(), [this](const FirstAnswers& answers) {
      auto store = make(path_, answers, options_);
      if (!store) return start_->tell_problem(store.error());
      open(std::move(*store));
      start_->hide();
    });
    start_->show();
  }

 private:
  /// Writes the ledger's head down outside the store: at the start, once a day, and at the end.
  void keep_head() {
    kept_on_ = session_->zone().day(session_->now());
    if (options_.secret == ledger::Secret{}) return;
    const auto kept = session_->store().head().and_then([this](const ledger::Head& head) {
      return db::keep_head(session_->station().toStdString(), head, station_key(options_.secret));
    });
    if (!kept) tell(kept.error().where, kept.error());
  }

  std::string path_;
  db::StoreOptions options_;
  Day kept_on_;
  std::unique_ptr<Session> session_;
  std::unique_ptr<MainWindow> window_;
  std::unique_ptr<StartPage> start_;
};

}  // namespace

int open_program(int argc, char** argv, const OpenWith& with) {
  QApplication app(argc, argv);
  QCoreApplication::setApplicationName("witnessmark");
  QCoreApplication::setApplicationVersion(version);
  speak(app, QLocale::system());
  follow_system_shade(app);
  const std::string path = store_path(with);
  const db::StoreOptions options = store_options();
  Program program(path, options);
  const bool there = QFileInfo::exists(QString::fromStdString(path));
  if (!there && !with.demo) {
    program.ask();
    return QApplication::exec();
  }
  FirstAnswers demo;
  demo.demo = true;
  auto store = there ? db::Store::open(path, real_now, options) : make(path, demo, options);
  if (!store) {
    tell(path, store.error());
    return 2;
  }
  program.open(std::move(*store));
  return QApplication::exec();
}

}  // namespace wm::app
