// Lessons by keyboard: which revision counts, and a manager publishing the next.
#include "app/lessons/lessons_page.h"
#include "lists_shop.h"

using namespace wm;
using namespace wm::app;

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
    QVERIFY2(seen_on(shop.page).contains(
                 QString::fromUtf8("Published now, it would change the standings of: "
                                   "Dee Griffith (Lathe), Thị Hương Nguyễn (Lathe), Inés Castellanos "
                                   "(Lathe) and 2 more.")),
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

  void only_a_manager_is_offered_to_publish() {
    Shown<LessonsPage> shop("ivo");
    type(shop.page, "lathe");
    QVERIFY(!shop.page.findChild<QPushButton*>("publish"));
  }
};

QTEST_MAIN(LessonsTest)
#include "lessons_test.moc"
