// Question banks by keyboard on the demo shop: reading and editing the text, what stands in its way, what it
// changes and for whom, and issuing it.
#include "app/banks/banks_page.h"

#include "app/words/words.h"
#include "core/teach/bank_text.h"
#include "db/demo.h"
#include "db/journal/subject.h"
#include "lists_shop.h"
#include "page_test.h"

namespace banks_test {

using namespace wm;
using namespace wm::app;

namespace {

void sit_down_as(Session& session, db::Role role) {
  for (const db::Person& person : session.store().people())
    if (session.store().role_of(person.id) == role && !session.seated())
      QVERIFY(session.sit_down(person.id, "2468"));
}

/// The demo shop anew: made once and copied, since making it takes seconds.
std::unique_ptr<Session> copied_demo(bool seated) {
  static const QTemporaryDir folder;
  static int number = 0;
  const auto now = [] { return Instant{QDateTime::currentSecsSinceEpoch()}; };
  const QString made = folder.filePath("made"), copy = folder.filePath(QString::number(++number));
  if (!QFile::exists(made) && !db::make_demo(made.toStdString(), now)) qFatal("no demo shop");
  QFile::copy(made, copy);
  auto store = db::Store::open(copy.toStdString(), now);
  if (!store) qFatal("%s", store.error().what.c_str());
  auto session = std::make_unique<Session>(std::move(*store));
  if (seated) sit_down_as(*session, db::Role::manager);
  return session;
}

struct ShownBanks {
  std::unique_ptr<Session> session;
  BanksPage page{*session};
  explicit ShownBanks(bool seated = true) : session(copied_demo(seated)) {
    QObject::connect(session.get(), &Session::changed, &page, &Page::refresh);
    QObject::connect(session.get(), &Session::seated_changed, &page, &Page::refresh);
    page.resize(1200, 800);
    page.show();
    page.refresh();
    page.open({});
  }
  ListView& list() { return *page.findChild<ListView*>("list"); }
  ListView& problems() { return *page.findChild<ListView*>("problems"); }
  QPlainTextEdit& text() { return *page.findChild<QPlainTextEdit*>("bank_text"); }
  QString effects() { return page.findChild<QLabel*>("bank_effects")->text(); }
  bool may_issue() { return page.findChild<QPushButton*>("issue")->isEnabled(); }

  void edit(const QString& id) {
    QVERIFY(list().choose(id));
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
    page.findChild<BankEditor*>()->look_again();
  }
  QString told_problems() {
    QStringList all;
    for (const ListRow& row : problems().rows())
      all << row.cells[0].text + ": " + row.cells[1].text + " " + row.cells[1].quiet;
    return all.join('\n');
  }
};

}  // namespace

class BanksTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase() { apply_theme(*qApp, Shade::light); }

  void every_revision_is_listed_and_told_which_is_in_force() {
    ShownBanks shown;
    QStringList rows;
    for (const ListRow& row : shown.list().rows()) rows << row.id + ' ' + row.cells[2].text;
    QCOMPARE(rows, QStringList({"tier 1/1 in force", "tier 2/2 in force", "tier 2/1 an earlier one",
                                "tier 3/1 in force", "tier 4/1 in force"}));
    shown.list().choose("tier 2/2");
    const QString seen = seen_on(shown.page);
    QVERIFY2(seen.contains("asks about an offcut beside the blade"), qPrintable(seen));
    QVERIFY(seen.contains("20 questions"));
    QVERIFY(seen.contains("2 of 4, critical ones always"));
  }

  void mistakes_are_told_with_their_lines_while_typing() {
    ShownBanks shown;
    shown.edit("tier 3/1");
    QCOMPARE(shown.problems().rows().size(), std::size_t(0));
    QVERIFY(shown.text().toPlainText().contains("bank: tier 3\nrevision: 2\n"));
    shown.text().setFocus();
    shown.text().moveCursor(QTextCursor::Start);
    QVERIFY(shown.text().find("kind: place"));
    const int line = shown.text().textCursor().blockNumber() + 1;
    QTest::keyClicks(&shown.text(), "kind: somewhere");
    QTRY_VERIFY(!shown.problems().rows().empty());  // without a key pressed for it
    QCOMPARE(shown.problems().rows().front().cells[0].text, QString::number(line));
    QVERIFY(!shown.may_issue());
    shown.text().moveCursor(QTextCursor::End);
    shown.problems().setFocus();
    press(shown.page, Qt::Key_Return);
    QCOMPARE(shown.text().textCursor().blockNumber() + 1, line);
    QVERIFY(shown.text().hasFocus());
  }

  void a_question_is_shown_as_a_member_sees_it() {
    ShownBanks shown;
    shown.edit("tier 3/1");
    shown.text().moveCursor(QTextCursor::Start);
    QVERIFY(shown.text().find("question: crown-up"));
    const auto* preview = shown.page.findChild<QuestionPreview*>();
    QVERIFY2(seen_on(*preview).contains(QString::fromUtf8("\u25CB On its edge")),
             qPrintable(seen_on(*preview)));
    QVERIFY(seen_on(*preview).contains("Right: Crown up, so that it stands on its two edges"));
    QVERIFY(shown.text().find("question: chip-limit", QTextDocument::FindBackward));
    QVERIFY(seen_on(*preview).contains("Right: 1/8 in, within 0.2 mm"));
    QVERIFY(seen_on(*preview).contains("Critical: whoever gets it wrong does not pass."));
    QVERIFY(shown.text().find("question: hands-never-here"));
    bool picture = false;
    for (const QLabel* label : preview->findChildren<QLabel*>())
      picture = picture || !label->pixmap().isNull();
    QVERIFY(picture);
  }

  void a_changed_question_needs_a_revision_of_its_own() {
    ShownBanks shown;
    shown.edit("tier 2/2");
    shown.retype("Which dust is the worst for your lungs?", "Which wood dust harms the lungs of everybody?");
    QVERIFY2(shown.told_problems().contains("The question fine-dust has changed and keeps its revision Write "
                                            "revision: 2 under it"),
             qPrintable(shown.told_problems()));
    QVERIFY(!shown.may_issue());
    shown.retype("question: fine-dust", "question: fine-dust\nrevision: 2");
    QCOMPARE(shown.told_problems(), QString());
    QVERIFY2(shown.effects().startsWith("Changed: fine-dust.\n"), qPrintable(shown.effects()));
  }

  void it_is_issued_word_for_word_and_whoever_sat_the_last_one_sits_it_again_in_time() {
    ShownBanks shown;
    shown.edit("tier 2/2");
    shown.retype("# The demo shop's quiz for tier 2", "# Looked over. The demo shop's quiz for tier 2");
    const QStringList said = shown.effects().split('\n');
    QCOMPARE(said.front(), QString("Nothing has changed."));
    QCOMPARE(said[1], QString("Whoever has not sat it again by then falls back:"));
    const std::string text = shown.text().toPlainText().toStdString();
    shown.page.findChild<QLineEdit*>("bank_changed")->setFocus();
    QTest::keyClicks(shown.page.findChild<QLineEdit*>("bank_changed"), "Looked over");
    Current& current = shown.session->current();
    const auto expected =
        current.if_taken({"supposed", shown.session->now(), shown.session->now(), {}, Publish{"tier 2", 3}});
    QVERIFY(!expected.empty());
    QSignalSpy told(&shown.page, &Page::tell);
    press(shown.page, Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(told.count(), 1);
    QVERIFY(shown.list().isVisible());
    const auto& entries = shown.session->store().entries();
    const auto* issued = db::as<db::Issued>(entries[entries.size() - 2].fact);
    QVERIFY(issued);
    QCOMPARE(QString::fromStdString(issued->text), QString::fromStdString(text));
    QCOMPARE(QString::fromStdString(issued->changed), QString("Looked over"));
    QVERIFY((std::get<Fact>(entries.back().fact) == Fact(Publish{"tier 2", 3})));
    // The day that was told is the one on which the first of them falls back.
    const Shift& first = *std::ranges::min_element(expected, {}, &Shift::from);
    QVERIFY(said[2].contains(wm::app::last_day(first.from, shown.session->zone(), shown.session->now())));
    QVERIFY(shown.session->decider().rung(first.person, first.target, first.from - 1) >
            shown.session->decider().rung(first.person, first.target, first.from));
    // The one before stays as it was.
    QVERIFY(shown.list().choose("tier 2/2"));
    QVERIFY(seen_on(shown.page).contains("asks about an offcut beside the blade"));
  }

  void a_revision_that_was_issued_is_not_issued_again() {
    ShownBanks shown;
    shown.edit("tier 2/2");
    shown.retype("revision: 3", "revision: 2");
    QVERIFY2(shown.told_problems().contains("4: Revision 2 has been issued already Write a higher one"),
             qPrintable(shown.told_problems()));
    QVERIFY(!shown.may_issue());
  }

  void a_bank_is_shared_as_files_with_its_pictures() {
    ShownBanks shown;
    QTemporaryDir folder, other;
    QVERIFY(shown.list().choose("tier 3/1"));
    shown.page.save_file(folder.filePath("planer.txt"));
    QCOMPARE(QDir(folder.path()).entryList(QDir::Files), QStringList({"jointer.svg", "planer.txt"}));
    shown.page.open_file(folder.filePath("planer.txt"));
    QVERIFY2(shown.told_problems().startsWith("5: Revision 1 has been issued already"),
             qPrintable(shown.told_problems()));
    QCOMPARE(shown.page.findChild<BankEditor*>()->file().pictures.size(), std::size_t(1));
    // Without its picture it is not issued, and the line is told.
    QVERIFY(QFile::copy(folder.filePath("planer.txt"), other.filePath("planer.txt")));
    shown.page.open_file(other.filePath("planer.txt"));
    QVERIFY2(shown.told_problems().contains("The picture jointer.svg is missing"),
             qPrintable(shown.told_problems()));
    // Another picture of that name is not written over.
    QFile taken(other.filePath("jointer.svg"));
    QVERIFY(taken.open(QIODevice::WriteOnly) && taken.write("mine") == 4);
    taken.close();
    press(shown.page, Qt::Key_Escape);
    QVERIFY(shown.list().choose("tier 3/1"));
    QSignalSpy problems(&shown.page, &Page::tell_problem);
    shown.page.save_file(other.filePath("copy.txt"));
    QCOMPARE(problems.count(), 1);
    QVERIFY(!QFile::exists(other.filePath("copy.txt")));
    QVERIFY(taken.open(QIODevice::ReadOnly) && taken.readAll() == "mine");
  }

  void what_was_typed_and_not_issued_is_there_again() {
    ShownBanks shown;
    shown.edit("tier 3/1");
    const QString opened = shown.text().toPlainText();
    shown.text().setFocus();
    shown.text().moveCursor(QTextCursor::Start);
    QTest::keyClicks(&shown.text(), "# Mine. ");
    press(shown.page, Qt::Key_Escape);  // at once, before anything has been looked at
    QVERIFY(shown.list().isVisible());
    shown.session->hand_over();
    sit_down_as(*shown.session, db::Role::manager);
    QSignalSpy told(&shown.page, &Page::tell);
    shown.edit("tier 3/1");
    QCOMPARE(shown.text().toPlainText(), "# Mine. " + opened);
    QCOMPARE(told.count(), 1);
    press(shown.page, Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(shown.text().toPlainText(), opened);
    shown.text().undo();
    QCOMPARE(shown.text().toPlainText(), "# Mine. " + opened);
    press(shown.page, Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    press(shown.page, Qt::Key_Escape);
    shown.edit("tier 3/1");
    QCOMPARE(told.count(), 1);  // nothing was left
  }

  void a_draft_outlives_the_program_and_its_pictures_with_it() {
    QTemporaryDir folder;
    const WorkFile draft{"bank: saws, \"and\" more\n", {{"a.svg", "PHN2Zy8+"}}};
    {
      WorkDrafts drafts(folder.path(), "bank");
      QVERIFY(!drafts.find("saws"));
      QVERIFY(!drafts.keep("saws", draft));
    }
    WorkDrafts drafts(folder.path(), "bank");
    const auto found = drafts.find("saws");
    QVERIFY(found);
    QCOMPARE(QString::fromStdString(found->text), QString::fromStdString(draft.text));
    QVERIFY(found->pictures == draft.pictures);
    QVERIFY(!drafts.find("/elsewhere/saws"));
    drafts.drop("saws");
    QVERIFY(!WorkDrafts(folder.path(), "bank").find("saws"));
    QVERIFY(WorkDrafts(folder.filePath("no such folder"), "bank").keep("saws", draft));
  }

  void a_file_of_mistakes_is_opened_and_every_one_told() {
    ShownBanks shown;
    QTemporaryDir folder;
    QFile file(folder.filePath("bad.txt"));
    QVERIFY(file.open(QIODevice::WriteOnly) &&
            file.write("bank: x\nrevision: none\n\nquestion: A b\nkind: odd\n") > 0);
    file.close();
    shown.page.open_file(file.fileName());
    const auto read = teach::read_bank("bank: x\nrevision: none\n\nquestion: A b\nkind: odd\n");
    QVERIFY(!read);
    QCOMPARE(shown.problems().rows().size(), read.error().size());
    QSignalSpy problems(&shown.page, &Page::tell_problem);
    shown.page.open_file(folder.filePath("nothing.txt"));
    QCOMPARE(problems.count(), 1);
  }

  void an_instructor_reads_and_nobody_else_sees_the_answers() {
    ShownBanks shown(false);
    QVERIFY(seen_on(shown.page).contains("They open for instructors and managers."));
    QCOMPARE(shown.list().rows().size(), std::size_t(0));
    sit_down_as(*shown.session, db::Role::instructor);
    QVERIFY(shown.list().choose("tier 1/1"));
    QVERIFY(!shown.page.findChild<QPushButton*>("edit"));
    press(shown.page, Qt::Key_Return);
    QVERIFY(shown.text().isVisible() && shown.text().isReadOnly());
    QVERIFY(!shown.page.findChild<QPushButton*>("issue")->isVisible());
    shown.session->hand_over();
    QVERIFY(!shown.text().isVisible());
    QVERIFY(shown.text().toPlainText().isEmpty());
  }
};

}  // namespace banks_test

WM_PAGE_TEST(banks_test, BanksTest)
#include "banks_test.moc"
