// Lessons gone through at the quiz station, by keyboard: before the quiz that asks for them, by whoever sits
// there, and only where every part was on the screen.
#include <QtTest>

#include "app/quiz/station.h"
#include "app/theme/theme.h"
#include "db/journal/subject.h"
#include "page_test.h"
#include "quiz_shop.h"

namespace station_lessons_test {

using namespace wm;
using namespace wm::app;

namespace {

/// Of three parts, the second longer than a screen.
std::string guards_text() {
  std::string text = "# Guards\nWhat they are for.\n\n## Each machine\n";
  for (int i = 0; i < 80; ++i) text += "Line " + std::to_string(i) + " of what is to be read.\n\n";
  return text + "## Before you begin\nLook whether it is there.\n";
}

}  // namespace

class StationLessonsTest : public QObject {
  Q_OBJECT

  std::unique_ptr<SmallShop> shop_;
  std::unique_ptr<QuizStation> station_;

  Session& session() const { return *shop_->session; }
  QStringList offered() const {
    QStringList all;
    const auto* list = station_->findChild<QListWidget*>("quizzes");
    for (int row = 0; row < list->count(); ++row) all << list->item(row)->text();
    return all;
  }
  QString text(const char* name) const { return station_->findChild<QLabel*>(name)->text(); }
  bool seen(const char* name) const { return station_->findChild<QWidget*>(name)->isVisible(); }
  void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) const {
    press_key(*station_, key, with);
  }

  /// As a manager.
  void enter(db::Action action) const {
    QVERIFY(session().sit_down("rosa", "1111"));
    const auto done = session().commit(std::move(action));
    QVERIFY2(done, done ? "" : done.error().what.c_str());
    session().hand_over();
  }
  void issue(int revision) const {
    enter(db::EnterShopFact{db::Issued{db::Work::lesson, "guards", revision, "", guards_text(), {}}});
  }
  std::vector<const db::Entry*> lessons_of_lucja() const {
    std::vector<const db::Entry*> out;
    for (const db::Entry* entry : session().store().of_kind("lesson"))
      if (db::as<Lesson>(entry->fact)->person == "lucja") out.push_back(entry);
    return out;
  }
  void sit_down() {
    station_ = std::make_unique<QuizStation>(session(), true);
    station_->resize(1366, 768);
    station_->show();
    QVERIFY(QTest::qWaitForWindowActive(station_.get()));
    identify(*station_, "0413");
  }
  /// So many screens on; the last is on the screen once they are drawn.
  void read_on(int screens) const {
    for (int i = 0; i < screens; ++i) {
      QCoreApplication::processEvents();
      key(Qt::Key_Return, Qt::ControlModifier);
    }
    QCoreApplication::processEvents();
  }

 private slots:
  void initTestCase() {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    apply_theme(*qApp, Shade::light);
  }
  void init() {
    shop_ = std::make_unique<SmallShop>();
    issue_cutters(*shop_);
    enter(db::EnterFact{Document{"lucja", "waiver", {}}});
  }
  void cleanup() {
    station_.reset();
    shop_.reset();
  }

  void a_lesson_is_gone_through_and_then_its_quiz_begins() {
    issue(1);
    sit_down();
    QCOMPARE(offered().front(), QString("Lesson: Guards"));
    QVERIFY2(offered().contains("Quiz: Cutters"), qPrintable(offered().join(' ')));
    key(Qt::Key_Return);
    QVERIFY(seen("lesson_parts"));
    QCOMPARE(text("lesson_title"), QString("Guards"));
    read_on(3);
    QVERIFY2(lessons_of_lucja().empty(), "before the end");
    read_on(20);
    QCOMPARE(lessons_of_lucja().size(), std::size_t{1});
    const db::Entry& entry = *lessons_of_lucja().front();
    QVERIFY(*db::as<Lesson>(entry.fact) == (Lesson{"lucja", "guards", 1}));
    QCOMPARE(entry.entered_by, PersonId("lucja"));
    QVERIFY2(text("lesson_under").startsWith("Entered"), qPrintable(text("lesson_under")));
    key(Qt::Key_Escape);
    QCOMPARE(offered().front(), QString("Quiz: Cutters"));
    QCOMPARE(offered().back(), QString("Lesson: Guards  ✓"));
    QVERIFY(seen("begin"));
    key(Qt::Key_Return);
    QVERIFY(station_->run().sitting());
    QCOMPARE(lessons_of_lucja().size(), std::size_t{1});
  }

  void what_was_not_read_to_its_end_is_not_entered_and_nobody_reads_on_under_that_name() {
    issue(1);
    sit_down();
    key(Qt::Key_Return);
    read_on(2);
    key(Qt::Key_Escape);
    QVERIFY(lessons_of_lucja().empty());
    QCOMPARE(offered().front(), QString("Lesson: Guards"));
    key(Qt::Key_Escape);
    QVERIFY(seen("member_number"));
    station_.reset();
    // Somebody else reads it through: it is theirs.
    station_ = std::make_unique<QuizStation>(session(), true);
    station_->show();
    QVERIFY(QTest::qWaitForWindowActive(station_.get()));
    identify(*station_, "0412");
    auto* list = station_->findChild<QListWidget*>("quizzes");
    list->setCurrentRow(static_cast<int>(offered().indexOf("Lesson: Guards  ✓")));
    key(Qt::Key_Return);
    read_on(25);
    QVERIFY(lessons_of_lucja().empty());
  }

  void a_lesson_without_its_text_is_for_the_desk() {
    sit_down();
    QCOMPARE(text("not_now"), QString("This lesson is taught by staff. Please ask the desk."));
    QVERIFY(!seen("begin"));
    key(Qt::Key_Return);
    QVERIFY(!seen("lesson_parts"));
  }

  void an_earlier_revision_than_the_one_that_counts_is_only_read() {
    issue(1);
    enter(db::EnterFact{Publish{"guards", 2}});
    sit_down();
    QVERIFY2(text("not_now").contains("Please ask the desk"), qPrintable(text("not_now")));
    key(Qt::Key_Return);
    QVERIFY(seen("lesson_parts"));
    read_on(25);
    QVERIFY(lessons_of_lucja().empty());
    key(Qt::Key_Escape);
    QCOMPARE(offered().front(), QString("Lesson: Guards"));
  }
};

}  // namespace station_lessons_test

WM_PAGE_TEST(station_lessons_test, StationLessonsTest)
#include "station_lessons_test.moc"
