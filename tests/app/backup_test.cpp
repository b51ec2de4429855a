// `witnessmark backup` and `witnessmark restore`, by what they print, return and leave.
#include <QTemporaryDir>
#include <QtTest>
#include <iostream>
#include <sstream>

#include "app/cli/program.h"
#include "db/store.h"

using namespace wm;

namespace {

struct Said {
  int status = 0;
  QString out, error;
};

Said said(std::vector<std::string> words) {
  words.insert(words.begin(), "witnessmark");
  std::vector<char*> argv;
  for (std::string& word : words) argv.push_back(word.data());
  argv.push_back(nullptr);
  std::ostringstream out, error;
  auto* const real_out = std::cout.rdbuf(out.rdbuf());
  auto* const real_error = std::cerr.rdbuf(error.rdbuf());
  Said said;
  said.status = app::run(static_cast<int>(words.size()), argv.data());
  std::cout.rdbuf(real_out);
  std::cerr.rdbuf(real_error);
  said.out = QString::fromStdString(out.str());
  said.error = QString::fromStdString(error.str());
  return said;
}

/// Closed again at once: the program must be able to open it. Nobody enters more than the first people.
void enter(const std::string& path, const std::string& name, bool makes) {
  int argc = 1;
  char word[] = "test";
  char* argv[] = {word, nullptr};
  QCoreApplication application(argc, argv);
  const auto clock = [] { return Instant{1773529200}; };
  auto store = makes ? db::Store::create(path, {"Hollow Oak Workshop", "America/Chicago", 0}, clock)
                     : db::Store::open(path, clock);
  QVERIFY(store.has_value());
  db::Person person;
  person.given = name;
  db::Command command;
  command.id = "enter-" + name;
  command.action = db::EnterPerson{person, std::nullopt};
  QVERIFY(store->commit(command).has_value());
}

int people(const std::string& path) {
  int argc = 1;
  char word[] = "test";
  char* argv[] = {word, nullptr};
  QCoreApplication application(argc, argv);
  const auto store = db::Store::open(path, [] { return Instant{1773529200}; });
  return store ? static_cast<int>(store->people().size()) : -1;
}

}  // namespace

class BackupTest : public QObject {
  Q_OBJECT
 private slots:
  void there_and_back() {
    QTemporaryDir folder;
    const std::string path = folder.filePath("shop.witnessmark").toStdString();
    QVERIFY(QDir(folder.path()).mkdir("backups"));
    const QDir backups(folder.filePath("backups"));
    enter(path, "Ana", true);
    const Said made = said({"backup", path, backups.path().toStdString()});
    QCOMPARE(made.status, 0);
    QCOMPARE(backups.entryList({"*.backup"}, QDir::Files).size(), 1);
    QVERIFY(backups.exists("heads"));  // the ledger's root, beside what it is of
    const QString backup = backups.filePath(backups.entryList({"*.backup"}, QDir::Files).front());
    QCOMPARE(made.out, backup + ": 1 entries, read back and equal to the store.\n");
    enter(path, "Bram", false);
    const Said asked = said({"restore", backup.toStdString(), path});
    QCOMPARE(asked.status, 1);
    QVERIFY2(
        asked.out.contains("has 1 entry that the backup has not:\n  2  2026-03-14T23:00:00Z  enter_person\n"),
        qPrintable(asked.out));
    QVERIFY(asked.out.contains("Nothing has been done."));
    QCOMPARE(people(path), 2);
    const Said done = said({"restore", "--yes", backup.toStdString(), path});
    QCOMPARE(done.status, 0);
    QCOMPARE(people(path), 1);
    const QStringList kept = QDir(folder.path()).entryList({"shop-replaced-*.witnessmark"});
    QCOMPARE(kept.size(), 1);
    QVERIFY2(done.out.endsWith("What was there is kept as " + folder.filePath(kept.front()) + ".\n"),
             qPrintable(done.out));
    QCOMPARE(people(folder.filePath(kept.front()).toStdString()), 2);
  }

  void refusals_are_sentences() {
    QTemporaryDir folder;
    const std::string none = folder.filePath("none").toStdString();
    const Said backup = said({"backup", none, folder.path().toStdString()});
    QCOMPARE(backup.status, 2);
    QCOMPARE(backup.error,
             QString::fromStdString(none) + ": The file does not exist. Look at the path again.\n");
    const Said restore = said({"restore", none, none, "--yes"});
    QCOMPARE(restore.status, 2);
    QVERIFY(restore.out.isEmpty());
    QVERIFY(!QFile::exists(QString::fromStdString(none)));
  }
};

QTEST_APPLESS_MAIN(BackupTest)
#include "backup_test.moc"
