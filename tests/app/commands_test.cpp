// The program's commands without a window, as somebody types them: what they say, and what they return.
#include <sqlite3.h>

#include <QtTest>

#include "core/ledger/root.h"
#include "lists_shop.h"
#include "page_test.h"

namespace commands_test {

using namespace wm;
using namespace wm::app;

class CommandsTest : public QObject {
  Q_OBJECT

  struct Said {
    int returned;
    QString out, err;
  };

  /// With a home of its own, so that this computer's own roots are those of this test.
  Said run(const QStringList& words) const {
    QProcess program;
    QProcessEnvironment own = QProcessEnvironment::systemEnvironment();
    for (const char* place : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME"}) own.insert(place, home_.path());
    own.insert("DBUS_SESSION_BUS_ADDRESS", "disabled:");
    program.setProcessEnvironment(own);
    program.start(WM_PROGRAM, words);
    if (!program.waitForFinished(60'000)) return {-1, {}, program.errorString()};
    return {program.exitCode(), QString::fromUtf8(program.readAllStandardOutput()),
            QString::fromUtf8(program.readAllStandardError())};
  }

  static void change(const QString& file, const char* sql) {
    sqlite3* opened = nullptr;
    QCOMPARE(sqlite3_open(file.toUtf8().constData(), &opened), SQLITE_OK);
    QCOMPARE(sqlite3_exec(opened, sql, nullptr, nullptr, nullptr), SQLITE_OK);
    sqlite3_close(opened);
  }

  QTemporaryDir home_;

 private slots:
  void a_station_opens_only_on_a_shop_that_is_there() {
    const Said missing = run({"--station", "quiz", home_.filePath("nowhere.wm")});
    QCOMPARE(missing.returned, 2);
    QVERIFY2(missing.err.contains("There is no shop in this file. Open it at the desk first."),
             qPrintable(missing.err));
    QVERIFY(!QFile::exists(home_.filePath("nowhere.wm")));
    QCOMPARE(run({"--station", "coffee"}).returned, 2);
    // A file by itself is no command.
    QCOMPARE(run({home_.filePath("nowhere.wm")}).returned, 2);
  }

  void verify_says_fine_keeps_the_root_and_finds_what_was_changed_since() {
    ListsShop shop;
    const QString file = shop.file("shop.wm");
    const Said first = run({"verify", file});
    QCOMPARE(first.returned, 0);
    QVERIFY2(first.out.contains("Not known without a root from outside the file"), qPrintable(first.out));
    QVERIFY(first.out.endsWith("Fine: nothing was found that should not be there.\n"));
    const Said again = run({"verify", file});
    QCOMPARE(again.returned, 0);
    QVERIFY2(again.out.contains("the root up to which all was found fine here"), qPrintable(again.out));
    // Rebuilt with its hash and its columns, so that only the tree tells.
    change(file,
           "DROP TRIGGER records_update; UPDATE records SET kind = 'quiz' WHERE kind = 'lesson' OR ord = 2;");
    const Said found = run({"verify", file});
    QCOMPARE(found.returned, 1);
    QVERIFY2(found.out.contains("trigger records_update"), qPrintable(found.out));
    QVERIFY2(found.out.contains("record 2, kind: quiz; should be: "), qPrintable(found.out));
    QVERIFY(found.out.contains("NOT FINE"));
  }

  void without_a_keyring_the_secret_lies_in_its_file_and_one_that_is_shut_is_said() {
    ListsShop shop;
    QCOMPARE(run({"verify", shop.file("shop.wm")}).returned, 0);
    QFile secret(home_.filePath("witnessmark/secret"));
    QVERIFY(secret.open(QIODevice::ReadWrite));
    QCOMPARE(secret.readAll().trimmed().size(), 64);
    secret.resize(0);
    secret.write("in the system's keyring\n");
    secret.close();
    const Said shut = run({"verify", shop.file("shop.wm")});
    QCOMPARE(shut.returned, 0);
    QVERIFY2(shut.out.contains("lies in the system's keyring, which does not open"), qPrintable(shut.out));
    QVERIFY(secret.remove());
  }

  void verify_refuses_what_is_no_root_and_what_is_no_store() {
    ListsShop shop;
    const Said root = run({"verify", shop.file("shop.wm"), "--against", "not a root"});
    QCOMPARE(root.returned, 2);
    QVERIFY2(root.err.contains("No file, and no root either"), qPrintable(root.err));
    QCOMPARE(run({"verify", shop.file("nothing.wm")}).returned, 2);
    QCOMPARE(run({"verify", WM_TESTS "/CMakeLists.txt"}).returned, 2);
  }

  void a_root_of_a_paper_is_held_against_the_file() {
    ListsShop shop;
    const ledger::Head head = shop.session().store().head().value();
    const QString root = QString::fromStdString(ledger::to_text(ledger::shortened(head)));
    const Said said = run({"verify", shop.file("shop.wm"), "--against", root});
    QCOMPARE(said.returned, 0);
    QVERIFY2(said.out.contains("the root " + root + " holds"), qPrintable(said.out));
    ledger::Head later = head;
    later.size += 3;
    const Said cut = run({"verify", shop.file("shop.wm"), "--against",
                          QString::fromStdString(ledger::to_text(ledger::shortened(later)))});
    QCOMPARE(cut.returned, 1);
    QVERIFY2(cut.out.contains("the end was cut off"), qPrintable(cut.out));
  }

  /// What pdftotext reads of a PDF.
  static QString text_of(const QString& pdf) {
    QProcess reader;
    reader.start("pdftotext", {"-layout", pdf, "-"});
    return reader.waitForFinished() ? QString::fromUtf8(reader.readAllStandardOutput()) : QString();
  }

  void all_about_one_person_is_written_as_a_paper_and_as_a_file() {
    ListsShop shop;
    shop.sit("dee");
    shop.enter(db::EnterFact{Lesson{"ines", "guards", 1}});
    const QString pdf = home_.filePath("ines.pdf"), json = home_.filePath("ines.json");
    const QStringList words{"export", shop.file("shop.wm"), "--person", "04", "--pdf", pdf, "--json", json};
    const Said said = run(words);
    QVERIFY2(said.returned == 0, qPrintable(said.err));
    const QString text = text_of(pdf).simplified();
    for (const char* part :
         {"All that is held about Inés Castellanos", "Hand it to nobody else", "Called: Nena", "Number: 04",
          "Born: Thursday 2 March 1989", "may not yet use the", "Still needed: ", "had the lesson: Guards",
          "by dee.", "Hollow Oak Workshop", "Ledger ", "Page 1 of "})
      QVERIFY2(text.contains(QString::fromUtf8(part)), qPrintable(QString(part) + " in: " + text));
    QVERIFY(!text.contains(QString::fromUtf8("Ольга")));
    QVERIFY(QFileInfo::exists(json));
    QCOMPARE(QFileInfo(pdf).permissions() & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions());
    QCOMPARE(run(words).returned, 2);  // both are there already
    QCOMPARE(run(words + QStringList{"--replace"}).returned, 0);
    QCOMPARE(run({"export", shop.file("shop.wm"), "--person", "04"}).returned, 2);
    QCOMPARE(run({"export", shop.file("shop.wm"), "--person", "nobody", "--pdf", pdf}).returned, 2);
    // The paper is noted in the journal, for the desk that has the shop open too.
    QTRY_VERIFY(std::holds_alternative<db::ShopFact>(shop.session().store().entries().back().fact) &&
                std::holds_alternative<db::Printed>(
                    std::get<db::ShopFact>(shop.session().store().entries().back().fact)));
  }

  void one_record_is_shown_to_be_in_the_tree() {
    ListsShop shop;
    const Said said = run({"verify", shop.file("shop.wm"), "--record", "past-2"});
    QCOMPARE(said.returned, 0);
    QVERIFY2(said.out.contains("Record past-2 is leaf "), qPrintable(said.out));
    QCOMPARE(run({"verify", shop.file("shop.wm"), "--record", "nowhere"}).returned, 1);
  }
};

}  // namespace commands_test

WM_PAGE_TEST(commands_test, CommandsTest)
#include "commands_test.moc"
