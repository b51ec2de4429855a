#include "app/start/open_program.h"

#include <QApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <cstdio>
#include <ctime>

#include "app/cli/version.h"
#include "app/start/computer_secret.h"
#include "app/start/language.h"
#include "app/start/server_shop.h"
#include "app/start/shop_windows.h"
#include "app/start/system_shade.h"
#include "app/words/words.h"
#include "db/demo.h"
#include "db/sql/server.h"

namespace wm::app {

namespace {

Instant real_now() { return {QDateTime::currentSecsSinceEpoch()}; }

/// Since the computer was started, asleep or awake.
std::int64_t seconds_passed() {
  timespec now{};
  return clock_gettime(CLOCK_BOOTTIME, &now) == 0 ? std::int64_t{now.tv_sec} : 0;
}

/// Where the shop is, and what else the program keeps beside it.
QDir own_folder() {
  QDir folder(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
  folder.mkpath(".");
  return folder;
}

Expected<std::string> store_path(const OpenWith& with) {
  if (!with.store.empty()) return with.store;
  if (with.demo) return own_folder().filePath("demo.witnessmark").toStdString();
  return kept_server_shop(own_folder().path()).map([](const std::optional<std::string>& address) {
    return address ? *address : own_folder().filePath("shop.witnessmark").toStdString();
  });
}

/// A file up to this size, in bytes, is read before its window could be drawn.
constexpr qint64 read_at_once = 16 << 20;

void tell(const std::string& path, const Problem& problem) {
  std::fprintf(stderr, "%s: %s\n", db::shown_name(path).c_str(),
               problem_sentence(problem).toUtf8().constData());
}

/// Where the secret cannot be had, the program works on: a PIN alone then guards the keys made here.
db::StoreOptions store_options() {
  db::StoreOptions options;
  options.passed = seconds_passed;
  auto secret = computer_secret();
  if (secret)
    options.secret = *secret;
  else
    tell(secret.error().where, secret.error());
  return options;
}

}  // namespace

int open_program(int argc, char** argv, const OpenWith& with) {
  QApplication app(argc, argv);
  QCoreApplication::setApplicationName("witnessmark");
  QCoreApplication::setApplicationVersion(version);
  speak(app, QLocale::system());
  follow_system_shade(app);
  const auto kept = store_path(with);
  if (!kept) {
    tell(kept.error().where, kept.error());
    return 2;
  }
  const std::string path = *kept;
  const db::StoreOptions options = store_options();
  ShopWindows windows(path, real_now, options, with.quiz_station);
  windows.keep_server_in(own_folder().path());
  const bool there = db::is_on_server(path) || QFileInfo::exists(QString::fromStdString(path));
  if (!there && with.quiz_station) {
    tell(path, {path, "There is no shop in this file", "Open it at the desk first"});
    return 2;
  }
  if (!there && !with.demo) {
    windows.ask();
    return QApplication::exec();
  }
  const bool large = QFileInfo(QString::fromStdString(path)).size() > read_at_once;
  if (db::is_on_server(path) || (there && !with.quiz_station && large)) {
    windows.open_behind();
    return QApplication::exec();
  }
  auto store =
      there ? db::Store::open(path, real_now, windows.options()) : db::make_demo(path, real_now, options);
  if (!store) {
    tell(path, store.error());
    return 2;
  }
  windows.open(std::move(*store));
  return QApplication::exec();
}

}  // namespace wm::app
