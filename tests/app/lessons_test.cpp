// Lessons by keyboard: which revision counts, and a manager publishing the next.
#include "app/lessons/lesson_reader.h"
#include "app/lessons/lessons_page.h"
#include "app/lists/record_reader.h"
#include "app/print/paper.h"
#include "app/words/record_words.h"
#include "db/journal/subject.h"
#include "lists_shop.h"
#include "page_test.h"

namespace lessons_test {

using namespace wm;
using namespace wm::app;

namespace {

const char* const page =
    "# The lathe\n\nChuck key out, chuck guard down.\n\n## Before\n![the chuck](chuck.png)\n\n## "
    "After\nBrush it.\n";

template <class W>
W* in(Shown<LessonsPage>& shop, const char* name) {
  return shop.page.findChild<W*>(name);
}

QString said(Shown<LessonsPage>& shop, const char* name) { return in<QLabel>(shop, name)->text(); }

void fill(Shown<LessonsPage>& shop, const char* name, const QString& text) {
  auto* field = in<QLineEdit>(shop, name);
  field->setFocus();
  field->clear();
  QTest::keyClicks(field, text);
}

void write(ListsShop& shop, const char* name, const QByteArray& bytes) {
  QFile file(shop.file(name));
  if (!file.open(QFile::WriteOnly) || file.write(bytes) != bytes.size()) qFatal("%s", name);
}

QByteArray picture() {
  QImage image(40, 30, QImage::Format_RGB32);
  image.fill(Qt::gray);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QBuffer::WriteOnly);
  image.save(&buffer, "PNG");
  return bytes;
}

/// A text of three parts, the second longer than a screen.
void issue(ListsShop& shop, const std::string& lesson) {
  std::string text = "# Title\nFirst.\n\n## Long\n";
  for (int i = 0; i < 80; ++i) text += "Line " + std::to_string(i) + " of what is to be read.\n\n";
  shop.enter(db::EnterShopFact{db::Issued{db::Work::lesson, lesson, 1, "", text + "## Last\nDone.\n", {}}});
}

/// Whoever has the lesson in an earlier revision has so many days to do the new one.
void give_changeover(ListsShop& shop, const std::string& name, int days) {
  shop.change_rules([&](Rulebook& book) {
    for (MachineClass& machine : book.classes)
      if (machine.name == name)
        std::get<NeedLesson>(machine.gates.front().need.need).changeover = Period{PeriodUnit::days, days};
  });
}

}  // namespace

class LessonsTest : public QObject {
  Q_OBJECT
 private slots:
  void the_next_revision_is_published_and_whoever_had_the_last_needs_it_again() {
    Shown<LessonsPage> shop("mia");
    QCOMPARE(shop.session().decider().rung("olga", "lathe", shop.session().now()), Rung::independent);
    type(shop.page, "lathe");
    auto* list = shop.page.findChild<ListView*>("list");
    QCOMPARE(list->chosen(), QString("lathe"));
    press(shop.page, Qt::Key_N, Qt::ControlModifier);
    QVERIFY2(seen_on(shop.page).contains("earlier revision: 5."), qPrintable(seen_on(shop.page)));
    QVERIFY2(seen_on(shop.page).contains("Without it they fall back, people: 5."),
             qPrintable(seen_on(shop.page)));
    QVERIFY2(seen_on(shop.page).contains(QString::fromUtf8(
                 "At once: Dee Griffith (Lathe), Thị Hương Nguyễn (Lathe), Inés Castellanos "
                 "(Lathe) and 2 more")),
             qPrintable(seen_on(shop.page)));
    QCOMPARE(shop.page.findChild<QLineEdit*>("revision")->text(), QString("2"));
    shop.page.findChild<QLineEdit*>("news")->setText("The new chuck guard");
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(shop.session().decider().rung("olga", "lathe", shop.session().now()) < Rung::independent);
    QVERIFY2(seen_on(shop.page).contains("The new chuck guard"), qPrintable(seen_on(shop.page)));
    QVERIFY(seen_on(shop.page).contains("Revision 2 counts"));
  }

  void a_revision_may_count_from_a_later_day() {
    Shown<LessonsPage> shop("mia");
    type(shop.page, "forge");
    press(shop.page, Qt::Key_N, Qt::ControlModifier);
    shop.page.findChild<QLineEdit*>("revision")->setText("two");
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->isVisible());
    shop.page.findChild<QLineEdit*>("revision")->setText("2");
    shop.page.findChild<QLineEdit*>("from_day")->setFocus();
    QTest::keyClicks(QApplication::focusWidget(), "2026-04-01");
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    const db::Entry& entry = shop.session().store().entries().back();
    QVERIFY((std::get<Fact>(entry.fact) == Fact(Publish{"forge", 2})));
    QCOMPARE(shop.session().zone().day(entry.at), day_of({2026, 4, 1}));
    QVERIFY2(seen_on(shop.page).contains("Revision 1 counts"), qPrintable(seen_on(shop.page)));
  }

  void who_needs_a_lesson_stands_beside_it() {
    Shown<LessonsPage> shop("dee");
    type(shop.page, "guards");
    const QString seen = seen_on(shop.page);
    QVERIFY2(seen.contains("Bandsaw, before working with a supervisor"), qPrintable(seen));
    QVERIFY2(seen.contains("Not issued here: it is taught from elsewhere, and attested by staff."),
             qPrintable(seen));
  }

  void a_manager_issues_a_text_and_sees_who_goes_through_it_again_and_by_when() {
    Shown<LessonsPage> shop("mia");
    give_changeover(shop, "lathe", 30);
    write(shop, "lathe.md", page);
    write(shop, "chuck.png", picture());
    type(shop.page, "lathe");
    press(shop.page, Qt::Key_I, Qt::ControlModifier);
    // Thirty days after the evening of 14 March.
    QVERIFY2(said(shop, "effect").contains("Through 13 April: Dee Griffith (Lathe)"),
             qPrintable(said(shop, "effect")));
    fill(shop, "from_day", "2026-05-01");
    QVERIFY2(said(shop, "effect").contains("Through 31 May: Dee Griffith (Lathe)"),
             qPrintable(said(shop, "effect")));
    in<QComboBox>(shop, "again")->setFocus();
    press(shop.page, Qt::Key_Down);
    QCOMPARE(said(shop, "effect"), QString("Nobody has to do it again. The text counts at once."));
    press(shop.page, Qt::Key_Up);
    fill(shop, "from_day", "");
    fill(shop, "page", shop.file("lathe.md"));
    fill(shop, "news", "The new chuck guard");
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    const auto issued = latest_issued(shop.session(), db::Work::lesson);
    QCOMPARE(issued.size(), std::size_t{1});
    QCOMPARE(issued[0].work->revision, 2);
    QCOMPARE(QString::fromStdString(issued[0].work->text), QString(page));
    QCOMPARE(issued[0].work->enclosures.size(), std::size_t{1});
    QVERIFY((std::get<Fact>(shop.session().store().entries().back().fact) == Fact(Publish{"lathe", 2})));
    // Not yet: that is what a changeover is for.
    QCOMPARE(shop.session().decider().rung("olga", "lathe", shop.session().now()), Rung::independent);
    shop.wait(31 * 86400);
    QVERIFY(shop.session().decider().rung("olga", "lathe", shop.session().now()) < Rung::independent);
    QVERIFY2(seen_on(shop.page).contains("revision 2: The new chuck guard"), qPrintable(seen_on(shop.page)));
  }

  void a_page_that_lacks_what_it_shows_is_refused_with_its_line() {
    Shown<LessonsPage> shop("mia");
    write(shop, "lathe.md", page);
    type(shop.page, "lathe");
    press(shop.page, Qt::Key_I, Qt::ControlModifier);
    fill(shop, "page", shop.file("nowhere.md"));
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(said(shop, "problem").contains("nowhere.md cannot be read"), qPrintable(said(shop, "problem")));
    fill(shop, "page", shop.file("lathe.md"));
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(said(shop, "problem").contains("chuck.png cannot be read"), qPrintable(said(shop, "problem")));
    for (const auto& [text, why] : {std::pair("[tool](tool.exe)", "No lesson shows this: tool.exe"),
                                    {"![up](../up.png)", "No lesson shows this: ../up.png"},
                                    {"![film](film.mp4)", "No lesson shows this: film.mp4"},
                                    {" \n", "The page is empty"},
                                    {"# Latin\xe9\x20", "not UTF-8"}}) {
      write(shop, "lathe.md", text);
      press(shop.page, Qt::Key_Return, Qt::ControlModifier);
      QVERIFY2(said(shop, "problem").contains(why), qPrintable(said(shop, "problem")));
    }
    QVERIFY(latest_issued(shop.session(), db::Work::lesson).empty());
  }

  void a_lesson_is_gone_through_once_every_part_was_on_the_screen() {
    Shown<LessonsPage> shop("mia");
    issue(shop, "shaper");
    shop.session().hand_over();
    shop.sit("dee");
    type(shop.page, "shaper");
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    type(shop.page, "ines");
    press(shop.page, Qt::Key_Return);
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    auto* reader = shop.page.findChild<LessonReader*>();
    QVERIFY(reader->isVisible());
    QVERIFY2(said(shop, "lesson_under").contains("gone through by"), qPrintable(said(shop, "lesson_under")));
    const auto lessons = [&] {
      return std::ranges::count_if(shop.session().store().entries(), [](const db::Entry& e) {
        const auto* lesson = db::as<Lesson>(e.fact);
        return lesson && lesson->person == "ines" && lesson->lesson == "shaper" && lesson->revision == 1;
      });
    };
    // The long part takes more than one screen.
    int pressed = 0;
    while (!reader->gone_through() && pressed < 60) {
      QCOMPARE(lessons(), 0);
      press(shop.page, Qt::Key_Return, Qt::ControlModifier);
      ++pressed;
    }
    QVERIFY2(pressed > 3 && pressed < 60, qPrintable(QString::number(pressed)));
    QCOMPARE(lessons(), 1);
    QCOMPARE(shop.session().store().entries().back().entered_by, PersonId("dee"));
    QCOMPARE(shop.session().store().entries().back().note,
             std::string("Gone through part by part on the screen."));
    press(shop.page, Qt::Key_Escape);
    QVERIFY(!reader->isVisible());
    QCOMPARE(lessons(), 1);
  }

  void leaving_before_the_end_and_reading_for_oneself_record_nothing() {
    Shown<LessonsPage> shop("mia");
    issue(shop, "shaper");
    const auto before = shop.session().store().entries().size();
    type(shop.page, "shaper");
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(said(shop, "problem").contains("Nobody is chosen"), qPrintable(said(shop, "problem")));
    type(shop.page, "ines");
    press(shop.page, Qt::Key_Return);
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    press(shop.page, Qt::Key_Escape);
    press(shop.page, Qt::Key_R, Qt::ControlModifier);
    auto* reader = shop.page.findChild<LessonReader*>();
    for (int i = 0; i < 60 && !reader->gone_through(); ++i)
      press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(reader->gone_through());
    QCOMPARE(shop.session().store().entries().size(), before);
  }

  void at_the_quiz_station_a_member_goes_through_it_for_themselves() {
    Shown<LessonsPage> shop("mia");
    issue(shop, "shaper");
    shop.enter(db::EnterShopFact{db::RoleGiven{"ines", db::Role::quiz_station}});
    shop.enter(db::ChoosePin{"ines", "3333"});
    shop.session().hand_over();
    shop.sit("ines");
    type(shop.page, "shaper");
    QVERIFY(!in<QWidget>(shop, "attest"));
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    auto* reader = shop.page.findChild<LessonReader*>();
    QVERIFY(reader->isVisible());
    for (int i = 0; i < 60 && !reader->gone_through(); ++i)
      press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    const db::Entry& entry = shop.session().store().entries().back();
    QVERIFY((std::get<Fact>(entry.fact) == Fact(Lesson{"ines", "shaper", 1})));
    QCOMPARE(entry.station, db::Station::quiz);
    QVERIFY2(record_sentence(entry, record_reader(shop.session()))
                 .contains("went through the lesson at the quiz station: Shaper, revision 1."),
             qPrintable(record_sentence(entry, record_reader(shop.session()))));
  }

  void a_text_that_is_behind_what_counts_is_read_and_not_gone_through() {
    Shown<LessonsPage> shop("mia");
    QStringList refused;
    connect(&shop.page, &Page::tell_problem, this,
            [&refused](const Problem& p) { refused << QString::fromStdString(p.what); });
    issue(shop, "shaper");
    shop.enter(db::EnterFact{Publish{"shaper", 2}});
    type(shop.page, "shaper");
    QVERIFY(seen_on(shop.page).contains("Revision 2 counts, but its text is not issued"));
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    type(shop.page, "ines");
    press(shop.page, Qt::Key_Return);
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(refused.value(0).contains("Revision 2 counts"), qPrintable(refused.join('\n')));
    QVERIFY(!shop.page.findChild<LessonReader*>()->isVisible());
    press(shop.page, Qt::Key_R, Qt::ControlModifier);
    QVERIFY(shop.page.findChild<LessonReader*>()->isVisible());
  }

  void a_lesson_taught_elsewhere_is_attested_by_staff() {
    Shown<LessonsPage> shop("dee");
    type(shop.page, "shaper");
    press(shop.page, Qt::Key_E, Qt::ControlModifier);
    type(shop.page, "ines");
    press(shop.page, Qt::Key_Return);
    fill(shop, "how", "Ivo, at the machine");
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    const db::Entry& entry = shop.session().store().entries().back();
    QVERIFY((std::get<Fact>(entry.fact) == Fact(Lesson{"ines", "shaper", 1})));
    QCOMPARE(entry.entered_by, PersonId("dee"));
    QCOMPARE(entry.note, std::string("Ivo, at the machine"));
    QCOMPARE(entry.station, db::Station::whole);
    QVERIFY(record_sentence(entry, record_reader(shop.session())).endsWith("attested by Dee Griffith."));
  }

  void large_type_is_larger_and_keeps_the_part() {
    Shown<LessonsPage> shop("mia");
    issue(shop, "shaper");
    type(shop.page, "shaper");
    press(shop.page, Qt::Key_R, Qt::ControlModifier);
    auto* text = shop.page.findChild<LessonBrowser*>();
    in<QListWidget>(shop, "lesson_parts")->setFocus();
    press(shop.page, Qt::Key_Down);
    QVERIFY2(text->toPlainText().startsWith("Long"), qPrintable(text->toPlainText().left(60)));
    const double usual = text->document()->size().height();
    press(shop.page, Qt::Key_Plus, Qt::ControlModifier);
    QVERIFY(text->document()->size().height() > usual * 1.2);
    QVERIFY2(text->toPlainText().startsWith("Long"), qPrintable(text->toPlainText().left(40)));
  }

  void a_video_or_a_pdf_that_cannot_be_shown_says_why() {
    Shown<LessonsPage> shop("mia");
    QStringList refused;
    connect(&shop.page, &Page::tell_problem, this,
            [&refused](const Problem& p) { refused << QString::fromStdString(p.what + " " + p.remedy); });
    db::Issued lesson{
        db::Work::lesson,          "shaper", 2, "", "# Shaper\n[film](film.mp4) [manual](page.pdf)\n",
        {{"page.pdf", "bm8gUERG"}}};
    shop.enter(db::EnterShopFact{lesson});
    type(shop.page, "shaper");
    press(shop.page, Qt::Key_R, Qt::ControlModifier);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    const auto files = shop.page.findChildren<QPushButton*>("lesson_file");
    QCOMPARE(files.size(), 2);
    files[0]->click();
    QVERIFY2(refused.value(0).contains("film.mp4 is not on this computer") &&
                 refused[0].contains("lessons/film.mp4"),
             qPrintable(refused.join('\n')));
    files[1]->click();
    QVERIFY2(refused.value(1).contains("page.pdf cannot be shown"), qPrintable(refused.join('\n')));
    QVERIFY(!in<QWidget>(shop, "lesson_pdf")->isVisible());
  }

  void a_pdf_is_shown_in_the_page_and_left_for_the_text() {
    Shown<LessonsPage> shop("mia");
    const PaperText paper{"Riving knife", {}, {}, {}, PaperSize::a4, false, false};
    QVERIFY(write_pdf(shop.file("page.pdf"), paper, 1, [](QPainter& painter, const QRectF& body, int) {
      painter.drawText(body, "The knife stands close behind the blade.");
    }));
    write(shop, "shaper.md", "# Shaper\nSee [the manual](page.pdf).\n");
    type(shop.page, "shaper");
    press(shop.page, Qt::Key_I, Qt::ControlModifier);
    fill(shop, "page", shop.file("shaper.md"));
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    press(shop.page, Qt::Key_R, Qt::ControlModifier);
    shop.page.findChild<QPushButton*>("lesson_file")->click();
    QVERIFY(in<QWidget>(shop, "lesson_pdf")->isVisible());
    press(shop.page, Qt::Key_Escape);
    QVERIFY(!in<QWidget>(shop, "lesson_pdf")->isVisible());
    QVERIFY(shop.page.findChild<LessonReader*>()->isVisible());
  }

  void a_text_whose_revision_counts_later_is_not_read_yet() {
    Shown<LessonsPage> shop("mia");
    issue(shop, "shaper");
    write(shop, "next.md", "# Next\nNew words.\n");
    type(shop.page, "shaper");
    press(shop.page, Qt::Key_I, Qt::ControlModifier);
    fill(shop, "page", shop.file("next.md"));
    fill(shop, "from_day", "2026-05-01");
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    press(shop.page, Qt::Key_R, Qt::ControlModifier);
    QVERIFY(!shop.page.findChild<LessonBrowser*>()->toPlainText().contains("New words"));
    press(shop.page, Qt::Key_Escape);
    shop.wait(60 * 86400);
    press(shop.page, Qt::Key_R, Qt::ControlModifier);
    QVERIFY(shop.page.findChild<LessonBrowser*>()->toPlainText().contains("Next"));
  }

  void only_a_manager_is_offered_to_publish() {
    Shown<LessonsPage> shop("ivo");
    type(shop.page, "lathe");
    QVERIFY(!shop.page.findChild<QPushButton*>("publish"));
    QVERIFY(!shop.page.findChild<QPushButton*>("issue"));
  }
};

}  // namespace lessons_test

WM_PAGE_TEST(lessons_test, LessonsTest)
#include "lessons_test.moc"
