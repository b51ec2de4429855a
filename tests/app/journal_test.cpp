// The journal by keyboard: what records say, filters, and striking out with a reason.
#include "app/journal/journal_page.h"
#include "core/ledger/root.h"
#include "lists_shop.h"
#include "page_test.h"

namespace journal_test {

using namespace wm;
using namespace wm::app;

class JournalTest : public QObject {
  Q_OBJECT
 private slots:
  void every_record_is_there_once_latest_first() {
    Shown<JournalPage> shop;
    auto* list = shop.page.findChild<ListView*>("list");
    const auto& entries = shop.session().store().entries();
    QCOMPARE(list->rows().size(), entries.size());
    for (std::size_t i = 0; i < entries.size(); ++i)
      QCOMPARE(list->rows()[entries.size() - 1 - i].id, QString::fromStdString(entries[i].id));
    for (const ListRow& row : list->rows()) QVERIFY(!row.cells[2].text.isEmpty());
  }

  void a_birth_date_is_told_to_nobody() {
    Shown<JournalPage> shop("mia");
    type(shop.page, "birth date");
    const QString seen = seen_on(shop.page);
    QVERIFY(seen.contains(QString::fromUtf8("Birth date of Inés Castellanos entered.")));
    QVERIFY(!seen.contains("1989"));
  }

  void words_and_people_narrow_it_down() {
    Shown<JournalPage> shop;
    auto* list = shop.page.findChild<ListView*>("list");
    type(shop.page, "ines check-out");
    QCOMPARE(list->rows().size(), std::size_t(1));
    QVERIFY(list->rows().front().cells[2].text.contains(
        "passed the check-out: Bandsaw; assessed by Mia Okafor."));
    shop.page.findChild<QLineEdit*>("search")->clear();
    auto* person = shop.page.findChild<QComboBox*>("person");
    person->setCurrentIndex(person->findData("eleni"));
    for (const ListRow& row : list->rows()) QVERIFY(row.cells[2].text.contains(QString::fromUtf8("Ελένη")));
    auto* kind = shop.page.findChild<QComboBox*>("kind");
    kind->setCurrentIndex(kind->findData("Lesson"));
    QCOMPARE(list->rows().size(), std::size_t(1));
  }

  void what_i_did_this_shift_is_struck_out_with_a_reason() {
    ListsShop shop;
    shop.sit("dee");
    const RecordId lesson = shop.enter(db::EnterFact{Lesson{"eleni", "guards", 1}});
    QCOMPARE(shop.session().decider().rung("eleni", "bandsaw", shop.session().now()), Rung::supervised);
    JournalPage page(shop.session());
    shop.show(page);
    auto* list = page.findChild<ListView*>("list");
    page.findChild<QCheckBox*>("shift")->setChecked(true);
    QCOMPARE(list->rows().size(), std::size_t(1));
    shop.wait(60);
    QSignalSpy told(&page, &Page::tell);
    press(page, Qt::Key_D, Qt::ControlModifier);
    const QString bandsaw = QString::fromUtf8("Ελένη Παπαδοπούλου (Bandsaw).");
    QVERIFY2(seen_on(page).contains("Standings that rest on it now: " + bandsaw), qPrintable(seen_on(page)));
    press(page, Qt::Key_Return);
    QVERIFY(page.findChild<QLabel*>("problem")->isVisible());  // no reason, no strike
    type(page, "Wrong person");
    press(page, Qt::Key_Return);
    QCOMPARE(told.front().front().toString(), "Struck out. Standings that changed: " + bandsaw);
    QCOMPARE(shop.session().decider().rung("eleni", "bandsaw", shop.session().now()), Rung::barred);
    const auto row = std::ranges::find(list->rows(), QString::fromStdString(lesson), &ListRow::id);
    QVERIFY(row->struck);
    QVERIFY(row->cells[2].quiet.contains("Wrong person"));
    QVERIFY(row->cells[2].quiet.contains("Dee Griffith"));
  }

  void a_manager_erases_a_reason_and_the_record_stays() {
    ListsShop shop;
    shop.sit("mia");
    const RecordId lesson = shop.enter(db::EnterFact{Lesson{"eleni", "guards", 1}});
    const RecordId strike = shop.enter(db::StrikeOutRecord{lesson, "she was at the doctor's"});
    JournalPage page(shop.session());
    shop.show(page);
    type(page, "doctor");
    auto* list = page.findChild<ListView*>("list");
    QCOMPARE(list->rows().size(), std::size_t(1));
    QCOMPARE(list->rows().front().id, QString::fromStdString(strike));
    press(page, Qt::Key_B, Qt::ControlModifier | Qt::ShiftModifier);
    type(page, "7");
    press(page, Qt::Key_Return);
    QVERIFY(page.findChild<QLabel*>("problem")->isVisible());  // another record's number
    QVERIFY(shop.session().store().has_text_to_erase(strike));
    press(page, Qt::Key_Backspace);
    type(page, QString::number(shop.session().store().entry(strike)->order));
    press(page, Qt::Key_Return);
    QVERIFY2(!seen_on(page).contains("doctor's"), qPrintable(seen_on(page)));
    page.findChild<QLineEdit*>("search")->clear();
    list->choose(QString::fromStdString(strike));
    QVERIFY2(seen_on(page).contains("Struck out (text erased)"), qPrintable(seen_on(page)));
    QVERIFY(page.findChild<QPushButton*>("erase_text") == nullptr);
    QVERIFY(!shop.session().store().has_text_to_erase(strike));
  }

  void nobody_but_a_manager_is_offered_to_erase_text() {
    ListsShop shop;
    shop.sit("dee");
    const RecordId lesson = shop.enter(db::EnterFact{Lesson{"eleni", "guards", 1}});
    const RecordId strike = shop.enter(db::StrikeOutRecord{lesson, "the wrong Eleni"});
    JournalPage page(shop.session());
    shop.show(page);
    page.findChild<ListView*>("list")->choose(QString::fromStdString(strike));
    QVERIFY(page.findChild<QPushButton*>("strike_out") == nullptr);
    QVERIFY(page.findChild<QPushButton*>("erase_text") == nullptr);
  }

  void somebody_is_called_by_the_same_name_in_every_line() {
    ListsShop shop;
    shop.sit("mia");
    shop.enter(db::EnterFact{Lesson{"eleni", "guards", 1}});
    JournalPage page(shop.session());
    shop.show(page);
    db::Person eleni = *shop.session().store().person("eleni");
    eleni.family = "Quillon";
    shop.enter(db::CorrectPerson{eleni});
    page.refresh();
    type(page, "Quillon guards");
    QVERIFY(!page.findChild<ListView*>("list")->rows().empty());
  }

  void the_file_is_looked_through_against_a_root_from_paper() {
    QStandardPaths::setTestModeEnabled(true);
    Shown<JournalPage> shop;
    const QString paper =
        QString::fromStdString(ledger::to_text(ledger::shortened(shop.session().store().head().value())));
    press(shop.page, Qt::Key_L, Qt::ControlModifier);
    auto* verdict = shop.page.findChild<QLabel*>("verdict");
    type(shop.page, paper);
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QTRY_COMPARE(verdict->text(), QString("Fine: nothing was found that should not be there."));
    QVERIFY2(seen_on(shop.page).contains("The root from the paper holds: records 1 to "),
             qPrintable(seen_on(shop.page)));
    auto* root = shop.page.findChild<QLineEdit*>("root");
    root->setFocus();
    QString other = paper;
    other[other.size() - 8] = other[other.size() - 8] == 'A' ? 'B' : 'A';
    root->setText(other);
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(verdict->text(), QString("It could not be looked through."));  // mistyped, and said so
    press(shop.page, Qt::Key_Escape);
    QVERIFY(shop.page.findChild<ListView*>("list")->isVisible());
  }

  void as_known_then_it_says_what_it_said_then() {
    ListsShop shop;
    shop.sit("mia");
    const RecordId lesson = shop.enter(db::EnterFact{Lesson{"eleni", "guards", 1}});
    shop.wait(60);
    JournalPage page(shop.session());
    shop.show(page);
    const auto seen = [&page] {
      QStringList all{seen_on(page), page.findChild<QLabel*>("count")->text()};
      auto* person = page.findChild<QComboBox*>("person");
      for (int i = 0; i < person->count(); ++i) all << person->itemText(i);
      auto* kind = page.findChild<QComboBox*>("kind");
      for (int i = 0; i < kind->count(); ++i) all << kind->itemText(i);
      for (const ListRow& row : page.findChild<ListView*>("list")->rows()) {
        for (const ListCell& cell : row.cells) all << cell.text << cell.quiet;
        all << (row.struck ? "struck" : "");
      }
      return all;
    };
    const Instant then = shop.session().now();
    shop.session().set_known(then);
    const QStringList before = seen();
    shop.session().set_known(std::nullopt);
    // Ten years of other names, strike-outs, machines and people.
    for (int year = 1; year <= 10; ++year) {
      shop.wait(365 * 86400);
      db::Person renamed = *shop.session().store().person("eleni");
      renamed.family = "Renamed" + std::to_string(year);
      shop.enter(db::CorrectPerson{renamed});
      shop.enter(db::EnterShopFact{db::MachineAdded{"b1", "bandsaw", "Bandsaw " + std::to_string(year)}});
      shop.enter(
          db::EnterPerson{{.id = {}, .number = std::to_string(900 + year), .given = "New"}, std::nullopt});
    }
    shop.enter(db::StrikeOutRecord{lesson, "the wrong person"});
    shop.enter(db::EnterShopFact{db::Join{"ines", "olga"}});
    QVERIFY(seen() != before);
    shop.session().set_known(then);
    const QStringList after = seen();
    for (qsizetype i = 0; i < std::min(before.size(), after.size()); ++i) QCOMPARE(after[i], before[i]);
    QCOMPARE(after.size(), before.size());
  }

  void the_desk_strikes_out_nobody_elses_record() {
    Shown<JournalPage> shop("dee");
    type(shop.page, "ines check-out");
    press(shop.page, Qt::Key_D, Qt::ControlModifier);
    type(shop.page, "I do not like it");
    press(shop.page, Qt::Key_Return);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->isVisible());
    for (const db::Entry& entry : shop.session().store().entries()) QVERIFY(!entry.voided);
  }

  void why_somebody_is_paused_is_for_instructors_and_managers() {
    ListsShop shop;
    shop.sit("mia");
    const auto done = shop.session().commit(db::EnterFact{Suspend{"olga", Everything{}, std::nullopt}},
                                            std::nullopt, "Took a guard off");
    QVERIFY(done);
    JournalPage page(shop.session());
    shop.show(page);
    QVERIFY(seen_on(page).contains("Took a guard off"));
    shop.sit("dee");
    QVERIFY(seen_on(page).contains(QString::fromUtf8("Ольга Иванова paused on all machines.")));
    QVERIFY(!seen_on(page).contains("Took a guard off"));
  }
};

}  // namespace journal_test

WM_PAGE_TEST(journal_test, JournalTest)
#include "journal_test.moc"
