// What a session does beside its pages: another window's entries, and a press that comes again after the disk
// failed.
#include "app/session.h"

#include <QTemporaryDir>
#include <QtTest>
#include <cstring>

#include "tests/db/small_shop.h"
#include "tests/faults/disk.h"

using namespace wm;
using namespace wm::app;

namespace {

Expected<db::Store> open(const std::string& path) {
  return db::Store::open(
      path, [] { return db::evening; }, db::cheap_pins());
}

void found(const std::string& path) {
  auto store = db::Store::create(
      path, {"Hollow Oak Workshop", "America/Chicago", 0}, [] { return db::evening; }, db::cheap_pins());
  QVERIFY(store.has_value());
  QVERIFY(store->found(db::small_history()).has_value());
}

const db::EnterFact guards{Lesson{"kim", "guards", 1}};

std::size_t lessons(const db::Store& store) {
  std::size_t count = 0;
  for (const db::Entry& entry : store.entries()) {
    const auto* fact = std::get_if<Fact>(&entry.fact);
    count += fact && *fact == guards.fact;
  }
  return count;
}

/// What another program does that finds the log's index unfinished, since whoever wrote it has died: it makes
/// the index anew, out of all that the log has (sqlite.org/walformat.html, "Recovery").
std::size_t lessons_for_another(faults::Disk& disk, const std::string& path) {
  const auto node = disk.node(path, false);
  if (node && !node->shm.empty()) std::memset(node->shm.front().get(), 0, 136);
  const auto store = open(path);
  return store ? lessons(*store) : 0;
}

/// Sits down, and enters the same lesson until it is entered, with the trouble at the first time.
struct Pressed {
  bool came = false, in_doubt = false, was_there = false;
  std::size_t entered = 0;
};

Pressed press_twice(faults::Disk& disk, const std::string& path, const faults::Trouble& trouble) {
  Pressed pressed;
  auto store = open(path);
  if (!store) return pressed;
  Session session(std::move(*store));
  if (!session.sit_down("dee", "3333")) return pressed;
  const std::size_t before = lessons(session.store());
  disk.trouble(trouble);
  const auto first = session.commit(guards);
  pressed.came = disk.came();
  disk.mend();
  pressed.in_doubt = !first && first.error().what.find("or not") != std::string::npos;
  pressed.was_there = !first && lessons_for_another(disk, path) > before;
  if (!first && !session.commit(guards)) return pressed;
  pressed.entered = lessons(session.store()) - before;
  return pressed;
}

}  // namespace

class SessionTest : public QObject {
  Q_OBJECT
 private slots:
  void another_windows_entry_is_seen_within_a_second() {
    QTemporaryDir folder;
    const std::string path = folder.filePath("shop").toStdString();
    found(path);
    auto one = open(path), two = open(path);
    QVERIFY(one && two);
    Session here(std::move(*one)), there(std::move(*two));
    QVERIFY(here.sit_down("dee", "3333"));
    // At whatever moment between two looks it is entered.
    for (int i = 0; i < 5; ++i) {
      QTest::qWait(i * 97);
      QSignalSpy changed(&there, &Session::changed);
      QElapsedTimer since;
      since.start();
      QVERIFY(here.commit(guards));
      QVERIFY(changed.wait(1000));
      QVERIFY2(since.elapsed() < 1000, qPrintable(QString::number(since.elapsed())));
      QCOMPARE(lessons(there.store()), lessons(here.store()));
    }
    QSignalSpy changed(&there, &Session::changed);
    QTest::qWait(1000);
    QCOMPARE(changed.count(), 0);
  }

  void a_press_after_the_disk_failed_enters_it_once_whether_it_was_there_or_not() {
    QTemporaryDir folder;
    faults::Disk disk(folder.path().toStdString());
    faults::the_disk() = &disk;
    faults::install();
    const std::string path = folder.filePath("shop").toStdString();
    found(path);
    const faults::Files whole = disk.files();
    int doubts = 0, were_there = 0;
    for (const auto fault : {faults::Fault::fails_once, faults::Fault::fails_on, faults::Fault::full})
      for (std::int64_t n = 1;; ++n) {
        disk.put(whole);
        const Pressed pressed = press_twice(disk, path, {fault, n, faults::Left::nothing, 0});
        QVERIFY2(pressed.entered == 1, qPrintable(QString("call %1: %2 times").arg(n).arg(pressed.entered)));
        doubts += pressed.in_doubt;
        were_there += pressed.was_there;
        if (!pressed.came) break;
      }
    QVERIFY(doubts > 0);
    QVERIFY(were_there > 0);
    faults::the_disk() = nullptr;
  }

  void what_went_well_is_entered_again_when_it_comes_again() {
    QTemporaryDir folder;
    const std::string path = folder.filePath("shop").toStdString();
    found(path);
    auto store = open(path);
    QVERIFY(store.has_value());
    Session session(std::move(*store));
    QVERIFY(session.sit_down("dee", "3333"));
    for (std::size_t n = 1; n <= 2; ++n) {
      QVERIFY(session.commit(guards));
      QCOMPARE(lessons(session.store()), n);
    }
  }
};

QTEST_GUILESS_MAIN(SessionTest)
#include "session_test.moc"
