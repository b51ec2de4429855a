// Run sheets by keyboard: what is missing, taking over and editing the text, what stands in its way, issuing
// it, and that every earlier revision can still be shown and entered.
#include "app/sheets/sheets_page.h"

#include "app/checkouts/checkouts_page.h"
#include "app/checkouts/sheet_view.h"
#include "app/sheets/sheet_book.h"
#include "app/sheets/sheet_editor.h"
#include "core/sheet/sheet_text.h"
#include "demo_shop.h"
#include "lists_shop.h"
#include "page_test.h"
#include "small_shop.h"

namespace sheets_test {

using namespace wm;
using namespace wm::app;

namespace {

struct ShownSheets {
  Session& session;
  SheetsPage page{session};
  QStringList told, refused;
  explicit ShownSheets(Session& of) : session(of) {
    QObject::connect(&session, &Session::changed, &page, &Page::refresh);
    QObject::connect(&session, &Session::seated_changed, &page, &Page::refresh);
    QObject::connect(&page, &Page::tell, &page, [this](const QString& words) { told << words; });
    QObject::connect(&page, &Page::tell_problem, &page, [this](const Problem& problem) {
      refused << QString::fromStdString(problem.what + " " + problem.remedy);
    });
    page.resize(1200, 800);
    page.show();
    page.refresh();
    page.open({});
  }
  ListView& list() { return *page.findChild<ListView*>("list"); }
  QPlainTextEdit& text() { return *page.findChild<QPlainTextEdit*>("sheet_text"); }
  QString effects() { return page.findChild<QLabel*>("sheet_effects")->text(); }
  QString seen() { return page.findChild<SheetPages*>()->accessibleDescription(); }
  bool may_issue() { return page.findChild<QPushButton*>("issue")->isEnabled(); }

  QStringList rows() {
    QStringList out;
    for (const ListRow& row : list().rows()) out << row.id + ": " + row.cells[2].text;
    return out;
  }
  void edit(const QString& id) {
    QVERIFY2(list().choose(id), qPrintable(rows().join('\n')));
    press(page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(text().isVisible());
  }
  /// As somebody finds words and types others over them; the text has been looked at afterwards.
  void retype(const QString& from, const QString& to) {
    text().moveCursor(QTextCursor::Start);
    QVERIFY2(text().find(from), qPrintable(from));
    text().setFocus();
    const QStringList lines = to.split('\n');
    for (qsizetype i = 0; i < lines.size(); ++i) {
      if (i > 0) QTest::keyClick(&text(), Qt::Key_Return);
      QTest::keyClicks(&text(), lines[i]);
    }
    page.findChild<SheetEditor*>()->look_again();
  }
  void issue(const char* changed) {
    page.findChild<QLineEdit*>("sheet_changed")->setFocus();
    QTest::keyClicks(page.findChild<QLineEdit*>("sheet_changed"), changed);
    press(page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(list().isVisible(), qPrintable(problems() + refused.join('\n')));
  }
  QString problems() {
    QStringList all;
    for (const ListRow& row : page.findChild<ListView*>("problems")->rows())
      all << row.cells[0].text + ": " + row.cells[1].text + " " + row.cells[1].quiet;
    return all.join('\n');
  }
};

/// What has been entered since there were so many entries.
std::vector<const db::Entry*> since(const Session& session, std::size_t before) {
  std::vector<const db::Entry*> out;
  for (const db::Entry& entry : session.store().entries())
    if (before > 0)
      --before;
    else
      out.push_back(&entry);
  return out;
}
std::size_t entered(const Session& session) { return session.store().entries().size(); }

std::unique_ptr<SmallShop> small_shop() {
  auto shop = std::make_unique<SmallShop>();
  if (!shop->session->sit_down("rosa", "1111")) qFatal("nobody sits there");
  return shop;
}

/// Pim's check-out on the bandsaw, signed by Mara with every line shown.
void sign_pims(SmallShop& shop, int revision) {
  SheetBook book(*shop.session);
  const Sheet* sheet = book.revision("bandsaw", revision);
  QVERIFY(sheet);
  db::SignCheckout sign;
  sign.checkout = {"pim", sheet->checkout, revision, Outcome::passed, "mara"};
  sign.pin = "2222";
  sign.machine = "b1";
  sign.sheet = sheet->name;
  sign.sheet_revision = revision;
  sign.marks.assign(line_count(*sheet), Mark::shown);
  for (const db::Entry& entry : shop.session->store().entries())
    if (const auto* booking = db::as<db::Booking>(entry.fact); booking && booking->person == "pim")
      sign.booking = entry.id;
  QVERIFY(shop.session->sit_down("mara", "2222"));
  const auto done = shop.session->commit(sign);
  QVERIFY2(done, done ? "" : done.error().what.c_str());
}

}  // namespace

class SheetsTest : public QObject {
  Q_OBJECT

  std::unique_ptr<Session> demo_;

 private slots:
  void initTestCase() {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    apply_theme(*qApp, Shade::light);
    demo_ = demo_session();
  }

  void the_demo_has_a_sheet_for_every_check_out_and_both_revisions_of_the_jointer() {
    ShownSheets shown(*demo_);
    const QStringList rows = shown.rows();
    QCOMPARE(rows.filter("none has been issued"), QStringList());
    QCOMPARE(rows.filter(": in force").size(), 15);
    QVERIFY2(rows.contains("jointer-planer/5: in force") && rows.contains("jointer-planer/4: an earlier one"),
             qPrintable(rows.join('\n')));
    QVERIFY(shown.list().choose("jointer-planer/5"));
    const QString seen = seen_on(shown.page);
    QVERIFY2(seen.contains("limits card") && seen.contains("joint an edge"), qPrintable(seen));
  }

  void mistakes_are_told_with_their_lines_while_typing() {
    ShownSheets shown(*demo_);
    shown.edit("bandsaw/1");
    QCOMPARE(shown.problems(), QString());
    QVERIFY(shown.text().toPlainText().startsWith("sheet: bandsaw\nrevision: 2\n"));
    shown.text().setFocus();
    QVERIFY(shown.text().find("opens: stance"));
    const int line = shown.text().textCursor().blockNumber() + 1;
    QTest::keyClicks(&shown.text(), "opens: standing");
    QTRY_VERIFY(!shown.problems().isEmpty());  // without a key pressed for it
    QVERIFY2(shown.problems().startsWith(QString::number(line) + ": No sheet opens with \"standing\"."),
             qPrintable(shown.problems()));
    QVERIFY(!shown.may_issue());
    shown.text().moveCursor(QTextCursor::End);
    shown.page.findChild<ListView*>("problems")->setFocus();
    press(shown.page, Qt::Key_Return);
    QCOMPARE(shown.text().textCursor().blockNumber() + 1, line);
    QVERIFY(shown.text().hasFocus());
    // A line of the opening that is gone is missed at the section with which the sheet begins.
    shown.retype("opens: standing", " ");
    QVERIFY2(shown.problems().contains("stands after another one"), qPrintable(shown.problems()));
    press(shown.page, Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(shown.problems(), QString());
    press(shown.page, Qt::Key_Escape);
  }

  void the_blank_sheet_is_seen_as_it_will_be_printed() {
    ShownSheets shown(*demo_);
    shown.edit("bandsaw/1");
    QVERIFY2(shown.seen().startsWith("Close sleeves, no gloves"), qPrintable(shown.seen()));
    auto* pages = shown.page.findChild<SheetPages*>();
    const QImage before = pages->grab().toImage();
    shown.retype("Plans relief cuts", "Plans relief cuts, and says where they end");
    QVERIFY(shown.seen().contains("says where they end"));
    QVERIFY(pages->grab().toImage() != before);
    // What can't be read leaves the last that could.
    shown.retype("[cut]", "cut");
    QVERIFY(!shown.problems().isEmpty());
    QVERIFY(shown.seen().contains("says where they end"));
    press(shown.page, Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    press(shown.page, Qt::Key_Escape);
  }

  void it_is_issued_and_published_at_once_and_the_check_out_is_shown_on_it() {
    ShownSheets shown(*demo_);
    shown.edit("drill-press/1");
    shown.retype("title: ", "# Looked over\ntitle: ");
    QVERIFY2(shown.effects().startsWith("No line has changed."), qPrintable(shown.effects()));
    shown.retype("[after]", "[after]\n- Brushes the chips off, never by hand");
    QVERIFY2(shown.effects().startsWith("New lines: "), qPrintable(shown.effects()));
    QVERIFY(shown.effects().contains("nobody has to be checked out again"));
    const std::string text = shown.text().toPlainText().toStdString();
    const std::size_t before = entered(*demo_);
    shown.issue("Chips");
    const auto entries = since(*demo_, before);
    QCOMPARE(entries.size(), std::size_t(2));
    const auto* issued = db::as<db::Issued>(entries[0]->fact);
    QVERIFY(issued && issued->work == db::Work::sheet);
    QCOMPARE(QString::fromStdString(issued->text), QString::fromStdString(text));
    QCOMPARE(QString::fromStdString(issued->changed), QString("Chips"));
    QVERIFY((std::get<Fact>(entries[1]->fact) == Fact(Publish{"drill press", 2})));
    QVERIFY(shown.rows().contains("drill-press/2: in force"));
    QVERIFY(shown.rows().contains("drill-press/1: an earlier one"));
    SheetBook book(*demo_);
    QCOMPARE(book.for_target("drill press")->revision, 2);
    QCOMPARE(book.revision("drill-press", 1)->revision, 1);
  }

  void what_an_edit_changes_is_told_by_the_numbers_of_its_lines() {
    ShownSheets shown(*demo_);
    shown.edit("jointer-planer/5");
    shown.retype("* The flat face is down on the bed", "- The flat face is down on the bed");
    shown.retype("- Reads grain and crown; crown up", "- Reads the grain");
    const QString said = shown.effects();
    QVERIFY2(said.startsWith(
                 "New lines: 7.\nLines that are no longer critical: 20.\nLines of revision 5 that are no "
                 "longer asked: 7.\n"),
             qPrintable(said));
    shown.retype("class: jointer-planer", "class: jointer");
    QVERIFY2(shown.effects().contains("have no machine class jointer"), qPrintable(shown.effects()));
    QVERIFY(shown.effects().contains("another machine class"));
    press(shown.page, Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    press(shown.page, Qt::Key_Escape);
  }

  void a_revision_that_was_issued_or_lies_behind_is_not_issued() {
    ShownSheets shown(*demo_);
    shown.edit("jointer-planer/5");
    shown.retype("revision: 6", "revision: 5");
    QVERIFY2(shown.problems().contains("2: Revision 5 has been issued already Write a higher one"),
             qPrintable(shown.problems()));
    shown.retype("sheet: jointer-planer", "sheet: another");
    QCOMPARE(shown.problems(), QString());
    shown.retype("revision: 5", "revision: 3");
    QVERIFY2(shown.problems().contains("2: Revision 5 of this check-out counts already"),
             qPrintable(shown.problems()));
    press(shown.page, Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    press(shown.page, Qt::Key_Escape);
  }

  void a_sheet_is_shared_as_a_file_and_every_mistake_in_one_is_told() {
    ShownSheets shown(*demo_);
    QTemporaryDir folder;
    QVERIFY(shown.list().choose("jointer-planer/4"));
    shown.page.save_file(folder.filePath("jointer.txt"));
    shown.page.open_file(folder.filePath("jointer.txt"));
    QVERIFY2(shown.problems().startsWith("2: Revision 5 has been issued already"),
             qPrintable(shown.problems()));
    press(shown.page, Qt::Key_Escape);
    QFile file(folder.filePath("bad.txt"));
    const QByteArray bad = "sheet: x\nrevision: none\n\n[before]\n* Sleeves\nopens: glue\nmeasure: a lot\n";
    QVERIFY(file.open(QIODevice::WriteOnly) && file.write(bad) > 0);
    file.close();
    shown.page.open_file(file.fileName());
    const auto read = read_sheet(bad.toStdString());
    QVERIFY(!read);
    QCOMPARE(shown.problems().split('\n').size(), static_cast<qsizetype>(read.error().size()));
    press(shown.page, Qt::Key_Escape);
    shown.page.open_file(folder.filePath("nothing.txt"));
    QCOMPARE(shown.refused.size(), 1);
  }

  void what_has_no_sheet_is_listed_first_and_the_programs_own_is_taken_over() {
    const auto shop = small_shop();
    ShownSheets shown(*shop->session);
    QCOMPARE(shown.rows(), QStringList({"missing/bandsaw/bandsaw: none has been issued",
                                        "missing/jointer-planer/jointing: none has been issued"}));
    QVERIFY(shown.list().choose("missing/bandsaw/bandsaw"));
    const std::size_t before = entered(*shop->session);
    press(shown.page, Qt::Key_T, Qt::ControlModifier);
    QCOMPARE(shown.refused, QStringList());
    // Its revision 1 was published before it had a text.
    QCOMPARE(since(*shop->session, before).size(), std::size_t(1));
    QVERIFY2(shown.rows().contains("bandsaw/1: in force"), qPrintable(shown.rows().join('\n')));
    QVERIFY(SheetBook(*shop->session).for_target("bandsaw"));
  }

  void a_machine_of_the_shops_own_gets_a_sheet_that_begins_as_all_do() {
    const auto shop = small_shop();
    ShownSheets shown(*shop->session);
    shown.edit("missing/jointer-planer/jointing");
    QVERIFY2(shown.text().toPlainText().startsWith("sheet: jointing\nrevision: 1\nclass: jointer-planer\n"),
             qPrintable(shown.text().toPlainText()));
    QVERIFY2(shown.problems().contains("Nothing stands after the mark."), qPrintable(shown.problems()));
    shown.text().moveCursor(QTextCursor::End);
    shown.text().moveCursor(QTextCursor::PreviousBlock);
    shown.text().moveCursor(QTextCursor::EndOfBlock);
    QTest::keyClicks(&shown.text(), " Push blocks: no bare hand over the cutterhead");
    shown.page.findChild<SheetEditor*>()->look_again();
    QCOMPARE(shown.problems(), QString());
    QVERIFY2(shown.effects().contains("has been published"), qPrintable(shown.effects()));
    shown.issue("First");
    QVERIFY2(shown.rows().contains("jointing/1: in force"), qPrintable(shown.rows().join('\n')));
    SheetBook book(*shop->session);
    const Sheet* sheet = book.for_target("jointer-planer/planing");
    QVERIFY(sheet);
    QCOMPARE(line_count(*sheet), sheet_openings.size() + 1);
  }

  void a_machine_of_the_shops_own_may_begin_with_the_sheet_of_one_that_is_like_it() {
    const auto shop = small_shop();
    ShownSheets shown(*shop->session);
    QVERIFY(shown.list().choose("missing/jointer-planer/jointing"));
    press(shown.page, Qt::Key_B, Qt::ControlModifier);
    auto* which = shown.page.findChild<QComboBox*>("begin_with");
    QVERIFY(which && which->hasFocus());
    QTest::keyClicks(which, "Jointer");
    press(shown.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(shown.text().isVisible() && shown.text().hasFocus());
    QVERIFY2(shown.text().toPlainText().startsWith(
                 "sheet: jointing\nrevision: 1\nclass: jointer-planer\ncheckout: jointing\n\n[before]\n"),
             qPrintable(shown.text().toPlainText()));
    QVERIFY(shown.text().toPlainText().contains("The flat face is down on the bed"));
    QCOMPARE(shown.problems(), QString());
    shown.issue("As the program's");
    QVERIFY(SheetBook(*shop->session).for_target("jointer-planer/jointing"));
  }

  void all_that_the_program_has_are_taken_over_in_one_commit() {
    // As the demo shop is, with nothing issued: its rules alone, in a shop of their own.
    const auto shop = small_shop();
    Rulebook book = demo_->store().rulebooks().back();
    book.version = 2;
    shop->now = shop->now + std::int64_t{60};
    book.effective_from = shop->now;
    QVERIFY(shop->session->commit(db::PublishRulebook{book}));
    ShownSheets shown(*shop->session);
    QCOMPARE(shown.rows().filter("none has been issued").size(), 15);
    const std::size_t before = entered(*shop->session);
    press(shown.page, Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(shown.refused, QStringList());
    QCOMPARE(shown.rows().filter("none has been issued"), QStringList());
    QCOMPARE(shown.rows().filter(": in force").size(), 15);
    QVERIFY(shown.rows().contains("jointer-planer/5: in force"));
    // Of the bandsaw, revision 1 had been published before.
    QCOMPARE(since(*shop->session, before).size(), std::size_t(15 + 14));
  }

  void before_marking_begins_the_check_out_says_that_there_is_no_sheet() {
    const auto shop = small_shop();
    CheckoutsPage page(*shop->session);
    QObject::connect(shop->session.get(), &Session::changed, &page, &Page::refresh);
    page.show();
    page.refresh();
    page.open({});
    const auto under = [&page] { return page.findChild<QLabel*>("under")->text(); };
    QVERIFY2(under().contains("No run sheet has been issued for this machine"), qPrintable(under()));
    QVERIFY(page.findChild<QWidget*>("sheet")->isHidden());
    QSignalSpy went(&page, &Page::go);
    press(page, Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(went.count(), 1);
    const Place place = went[0][0].value<Place>();
    QCOMPARE(place.page, QString("sheets"));
    ShownSheets shown(*shop->session);
    shown.page.open(place);
    QCOMPARE(shown.list().chosen(), QString("missing/bandsaw/bandsaw"));
    shown.edit("missing/bandsaw/bandsaw");
    // From a day to come it is issued, and the page says from when.
    shown.retype("revision: 1", "revision: 2");
    auto* from = shown.page.findChild<QWidget*>("sheet_from");
    from->setFocus();
    QTest::keyClicks(QApplication::focusWidget(), "2026-12-01");
    shown.page.findChild<SheetEditor*>()->look_again();
    shown.issue("Later");
    QVERIFY2(under().contains("counts only from 1 Dec"), qPrintable(under()));
    QVERIFY(page.findChild<QWidget*>("sheet")->isHidden());
    shop->now = SmallShop::at("2026-12-01T18:00:00Z");
    page.refresh();
    QVERIFY(!page.findChild<QWidget*>("sheet")->isHidden());
  }

  void a_check_out_is_shown_on_the_revision_that_it_was_signed_on() {
    const auto shop = small_shop();
    {
      ShownSheets shown(*shop->session);
      shown.list().choose("missing/bandsaw/bandsaw");
      press(shown.page, Qt::Key_T, Qt::ControlModifier);
    }
    shop->now = shop->now + std::int64_t{600};
    sign_pims(*shop, 1);
    shop->now = shop->now + std::int64_t{600};
    QVERIFY(shop->session->sit_down("rosa", "1111"));
    {
      ShownSheets shown(*shop->session);
      shown.edit("bandsaw/1");
      shown.retype("[cut]", "[before the cut]\n* Says what the blade is for\n[cut]");
      shown.issue("One line more");
    }
    CheckoutsPage page(*shop->session);
    page.show();
    page.refresh();
    page.open({});
    auto* sheet = page.findChild<SheetView*>("sheet");
    SheetBook book(*shop->session);
    QCOMPARE(book.for_target("bandsaw")->revision, 2);
    const QString under = page.findChild<QLabel*>("under")->text();
    QVERIFY2(under.contains("sheet revision 1"), qPrintable(under));
    QCOMPARE(sheet->on_sheet().marks.size(), line_count(*book.revision("bandsaw", 1)));
    QVERIFY(std::ranges::all_of(sheet->on_sheet().marks, [](Mark mark) { return mark == Mark::shown; }));
    // A paper may be of either.
    press(page, Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
    const auto* papers = page.findChild<QComboBox*>("paper_sheet");
    QStringList listed;
    for (int i = 0; i < papers->count(); ++i) listed << papers->itemText(i);
    QCOMPARE(listed, QStringList({"Bandsaw, revision 2", "Bandsaw, revision 1"}));
  }

  void whoever_is_no_manager_reads_and_issues_nothing() {
    ShownSheets shown(*demo_);
    demo_->hand_over();
    QVERIFY(shown.list().choose("forge/1"));
    QVERIFY(!shown.page.findChild<QPushButton*>("edit"));
    QVERIFY(!shown.page.findChild<QPushButton*>("open_file"));
    press(shown.page, Qt::Key_Return);
    QVERIFY(shown.text().isVisible() && shown.text().isReadOnly());
    QVERIFY(!shown.page.findChild<QPushButton*>("issue")->isVisible());
    QVERIFY(shown.seen().contains("close sleeves", Qt::CaseInsensitive) || !shown.seen().isEmpty());
  }
};

}  // namespace sheets_test

WM_PAGE_TEST(sheets_test, SheetsTest)
#include "sheets_test.moc"
