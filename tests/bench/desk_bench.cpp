// How long a person at the desk waits, beside what reading the same file takes by itself: the bare reading is
// the limit, so ratios can be compared between machines.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QDateTime>
#include <QLineEdit>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTemporaryDir>
#include <QTest>

#include "app/frame/main_window.h"
#include "app/theme/theme.h"
#include "db/demo.h"

using namespace wm;
using namespace wm::app;

namespace {

Instant real_time() { return {QDateTime::currentSecsSinceEpoch()}; }

/// The demo shop's file, made once.
QString demo_file() {
  static QTemporaryDir folder;
  static const QString path = [] {
    const QString file = folder.filePath("demo");
    if (!db::make_demo(file.toStdString(), real_time)) std::abort();
    return file;
  }();
  return path;
}

std::unique_ptr<Session> open_demo() {
  auto store = db::Store::open(demo_file().toStdString(), real_time);
  if (!store) std::abort();
  return std::make_unique<Session>(std::move(*store));
}

void show_desk(MainWindow& window) {
  window.resize(1366, 768);
  Place desk;
  desk.page = "desk";
  window.go(desk);
  window.show();
  window.grab();
}

/// The limit: every row of the journal read by plain SQL.
void bare_reading_of_the_file(benchmark::State& state) {
  for (auto _ : state) {
    {
      auto base = QSqlDatabase::addDatabase("QSQLITE", "bench");
      base.setDatabaseName(demo_file());
      base.setConnectOptions("QSQLITE_OPEN_READONLY");
      if (!base.open()) std::abort();
      QSqlQuery query(base);
      query.setForwardOnly(true);
      query.exec("SELECT * FROM records");
      std::size_t bytes = 0;
      while (query.next()) bytes += static_cast<std::size_t>(query.value("body").toByteArray().size());
      benchmark::DoNotOptimize(bytes);
    }
    QSqlDatabase::removeDatabase("bench");
  }
}
BENCHMARK(bare_reading_of_the_file)->Unit(benchmark::kMillisecond);

/// From the file to a Desk that can be typed into, drawn.
void a_usable_desk(benchmark::State& state) {
  for (auto _ : state) {
    auto session = open_demo();
    MainWindow window(*session);
    show_desk(window);
  }
}
BENCHMARK(a_usable_desk)->Unit(benchmark::kMillisecond);

/// One more letter of a name, to the list of people drawn.
void a_key_in_the_search_field(benchmark::State& state) {
  auto session = open_demo();
  MainWindow window(*session);
  show_desk(window);
  auto* search = window.findChild<QLineEdit*>("desk_search");
  const QString name = "jonas";
  int at = 0;
  for (auto _ : state) {
    if (at == 0) search->clear();
    QTest::keyClick(search, name[at].toLatin1());
    QApplication::processEvents();
    benchmark::DoNotOptimize(window.grab());
    at = (at + 1) % static_cast<int>(name.size());
  }
}
BENCHMARK(a_key_in_the_search_field)->Unit(benchmark::kMillisecond);

/// Enter on a name, to the person's strips and answer drawn.
void a_person_opened(benchmark::State& state) {
  auto session = open_demo();
  MainWindow window(*session);
  show_desk(window);
  auto* search = window.findChild<QLineEdit*>("desk_search");
  for (auto _ : state) {
    state.PauseTiming();
    search->clear();
    QTest::keyClicks(search, "jonas lind");
    state.ResumeTiming();
    QTest::keyClick(search, Qt::Key_Return);
    QApplication::processEvents();
    benchmark::DoNotOptimize(window.grab());
  }
}
BENCHMARK(a_person_opened)->Unit(benchmark::kMillisecond);

/// The limit for the next: the window drawn again with nothing worked out.
void the_window_drawn(benchmark::State& state) {
  auto session = open_demo();
  MainWindow window(*session);
  show_desk(window);
  for (auto _ : state) benchmark::DoNotOptimize(window.grab());
}
BENCHMARK(the_window_drawn)->Unit(benchmark::kMillisecond);

/// The limit for the next: the file asked for nothing but the number that another's commit changes.
void the_bare_question_for_others(benchmark::State& state) {
  {
    auto base = QSqlDatabase::addDatabase("QSQLITE", "bench");
    base.setDatabaseName(demo_file());
    if (!base.open()) std::abort();
    QSqlQuery query(base);
    for (auto _ : state)
      if (!query.exec("PRAGMA data_version") || !query.next()) std::abort();
  }
  QSqlDatabase::removeDatabase("bench");
}
BENCHMARK(the_bare_question_for_others)->Unit(benchmark::kMicrosecond);

/// What each window does some times a second: looks whether another has entered something, and none has.
void a_look_for_others(benchmark::State& state) {
  auto store = db::Store::open(demo_file().toStdString(), real_time);
  if (!store) std::abort();
  for (auto _ : state)
    if (store->refresh().value_or(true)) std::abort();
}
BENCHMARK(a_look_for_others)->Unit(benchmark::kMicrosecond);

}  // namespace

int main(int argc, char** argv) {
  QApplication app(argc, argv);
  apply_theme(app, Shade::light);
  benchmark::Initialize(&argc, argv);
  demo_file();  // made before anything is measured
  benchmark::RunSpecifiedBenchmarks();
}
