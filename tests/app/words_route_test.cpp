// What to do next, as people read it: a route day by day.
#include <QtTest>

#include "app/words/route_words.h"
#include "page_test.h"
#include "word_list.h"
#include "words_reader.h"

namespace words_route_test {

using namespace wm;
using namespace wm::app;

namespace {

const WordsShop shop;

Record step(Instant at, Fact fact) { return {"step-01", at, at, std::nullopt, std::move(fact)}; }

QStringList told(const Route& route, Rung to = Rung::independent) {
  return route_words(route, "bandsaw", to, shop.reader()).sentences();
}

}  // namespace

class WordsRouteTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates)); }

  void every_step_by_its_day_with_whom_and_what_it_leads_to() {
    const Instant dec3 = shop.start(2026, 12, 3);
    const Route route{
        dec3 + 60,
        true,
        {step(shop.now, Document{"kim", "waiver", {}}), step(shop.now, Lesson{"kim", "guards", 3}),
         step(dec3, Quiz{"kim", "tier-3", 2, 1, 1, 0}),
         step(dec3 + 30, Supervised{"kim", "bandsaw", 60, "tom"}), step(dec3 + 40, Use{"kim", "drill-press"}),
         step(dec3 + 60, Checkout{"kim", "bandsaw", 0, Outcome::passed, "mara"})}};
    QCOMPARE(
        told(route),
        QStringList({"Today: the paper “Waiver”; then the lesson “Guards”, revision 3.",
                     "From 3 December: the quiz “Tier 3”, revision 2; then 60 minutes of practice on the "
                     "bandsaw, for instance with Tom Ryde; then use of the drill press without a supervisor; "
                     "then the check-out “Bandsaw”, for instance with Mara Devlin.",
                     "With that, Kim may use the bandsaw without a supervisor from 3 December on at the "
                     "earliest."}));
  }

  void what_can_be_done_today_and_what_is_not_proved() {
    const Route route{shop.now, false, {step(shop.now, Document{"kim", "waiver", {}})}};
    QCOMPARE(told(route, Rung::supervised),
             QStringList({"Today: the paper “Waiver”.",
                          "With that, Kim may use the bandsaw only with a supervisor today.",
                          "There may be a way with fewer steps: that was not worked out to the end."}));
  }

  void the_same_step_stands_once_with_how_often() {
    const Route route{shop.now,
                      true,
                      {step(shop.now, Use{"kim", "bandsaw"}), step(shop.now + 1, Use{"kim", "bandsaw"}),
                       step(shop.now + 2, Use{"kim", "forge"})}};
    QCOMPARE(told(route).front(),
             QString("Today: use of the bandsaw without a supervisor, 2 times; then use of "
                     "the forge without a supervisor."));
  }

  void no_way_nothing_to_do_and_only_to_wait() {
    QCOMPARE(told({}),
             QStringList("There is no way from here for Kim to use the bandsaw without a supervisor: a "
                         "pause with no end is in force, or nobody is able to assess or to supervise "
                         "what is missing. Please ask a manager."));
    QCOMPARE(told({shop.now, true, {}}), QStringList("Nothing more is needed for that."));
    QCOMPARE(
        told({shop.start(2026, 12, 4), true, {}}),
        QStringList("Nothing is to be done but wait: from 4 December on Kim may use the bandsaw without a "
                    "supervisor."));
  }

  void a_birthday_is_told_neither_of_the_person_nor_of_whoever_is_waited_for() {
    const Instant birthday = shop.start(2027, 2, 3);
    const Route waits{
        birthday, true, {step(birthday, Checkout{"kim", "bandsaw", 1, Outcome::passed, "mara"})}};
    QCOMPARE(
        told(waits),
        QStringList({"Later: the check-out “Bandsaw”, revision 1, for instance with Mara Devlin.",
                     "With that, Kim may use the bandsaw without a supervisor, though not before a day still "
                     "to come."}));
    QCOMPARE(told({birthday, true, {}}),
             QStringList("Nothing is to be done: the day for it is still to come."));
    // Nor by the days before it, which periods count back from it.
    const Route counted{
        birthday,
        true,
        {step(shop.now, Document{"kim", "waiver", {}}), step(birthday + -49 * 86400, Use{"kim", "forge"})}};
    QCOMPARE(told(counted).mid(0, 2),
             QStringList({"Today: the paper “Waiver”.", "Later: use of the forge without a supervisor."}));
    AnswerReader reader = shop.reader();
    reader.birthdays = {};
    reader.birthdays.add("mara", day_of({1990, 2, 3}));
    QVERIFY(
        !route_words(waits, "bandsaw", Rung::independent, reader).sentences().join(' ').contains("February"));
    reader.birthdays = {};
    reader.birthdays.add("tom", day_of({1990, 2, 3}));
    QVERIFY(route_words(waits, "bandsaw", Rung::independent, reader)
                .sentences()
                .join(' ')
                .contains("3 February"));
  }
};

}  // namespace words_route_test

WM_PAGE_TEST(words_route_test, WordsRouteTest)
#include "words_route_test.moc"
