// What differs over time or were something otherwise, as people read it.
#include <QtTest>

#include "app/words/change_words.h"
#include "app/words/shown_timeline.h"
#include "page_test.h"
#include "words_reader.h"

namespace words_changes_test {

using namespace wm;
using namespace wm::app;

namespace {
const WordsShop shop;
}

class WordsChangesTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates)); }

  void a_fall_says_whose_on_what_and_when() {
    const Drop drop{shop.start(2026, 12, 3), "kim", "planer", Rung::independent, Rung::supervised};
    QCOMPARE(drop_sentence(drop, shop.reader()),
             QString("Kim Aoki's standing on the planer falls from “without a supervisor” to “only with a "
                     "supervisor” on 3 December."));
    // A fall on a birthday is no birthday's doing, and whoever is at the machine must know of it.
    QVERIFY(drop_sentence({shop.start(2027, 2, 3), "kim", "planer", Rung::supervised, Rung::barred},
                          shop.reader())
                .endsWith("to “not yet” on 3 February 2027."));
  }

  void what_would_be_were_it_otherwise() {
    const std::vector<StandingChange> changes = {{"kim", "planer", Rung::independent, Rung::barred},
                                                 {"tom", "forge", Rung::barred, Rung::supervised}};
    QCOMPARE(standing_change_sentences(changes, Were::struck_out, shop.reader()),
             QStringList({"Were it struck out, Kim Aoki's standing on the planer would fall from “without a "
                          "supervisor” to “not yet”.",
                          "Were it struck out, Tom Ryde's standing on the forge would rise from “not yet” to "
                          "“only with a supervisor”."}));
    QCOMPARE(
        standing_change_sentences(changes, Were::in_force, shop.reader()).back(),
        QString("Were it in force, Tom Ryde's standing on the forge would rise from “not yet” to “only with "
                "a supervisor”."));
    QCOMPARE(
        standing_change_sentence(changes.front(), Were::in_force, shop.reader()),
        QString("Were it in force, Kim Aoki's standing on the planer would fall from “without a supervisor” "
                "to “not yet”."));
    QCOMPARE(standing_change_sentences({}, Were::in_force, shop.reader()),
             QStringList("Nobody's standing would change."));
  }

  void what_an_entry_shifted() {
    const Instant dec3 = shop.start(2026, 12, 3), jan9 = shop.start(2027, 1, 9),
                  birthday = shop.start(2027, 2, 3);
    const auto told = [](const Shift& shift) { return shift_sentence(shift, shop.reader()); };
    const QString whose = "Kim Aoki's standing on the planer ";
    QCOMPARE(told({"kim", "planer", dec3, jan9}),
             whose + "is another from 3 December through 8 January 2027.");
    QCOMPARE(told({"kim", "planer", dec3, {}}), whose + "is another from 3 December on.");
    QCOMPARE(told({"kim", "planer", dec3, birthday}), whose + "is another from 3 December on, for a time.");
    QCOMPARE(told({"kim", "planer", birthday, {}}), whose + "becomes another.");
    QCOMPARE(told({"kim", "planer", first_instant, jan9}),
             whose + "is another for a time, through 8 January 2027.");
    QCOMPARE(told({"kim", "planer", first_instant, birthday}), whose + "is another for a time.");
    QCOMPARE(shift_sentences({}, shop.reader()), QStringList("Nobody's standing changes."));
    QCOMPARE(shift_sentences({{"kim", "planer", dec3, {}}}, shop.reader()).size(), 1);
  }

  void a_timeline_is_one_sentence() {
    QCOMPARE(
        timeline_sentence({{first_instant, Rung::barred},
                           {shop.start(2024, 3, 2), Rung::supervised},
                           {shop.start(2026, 5, 3) + 36000, Rung::independent}},
                          shop.reader()),
        QString("Not yet; from 2 March 2024 on only with a supervisor; from 3 May, 10:00 AM on without a "
                "supervisor."));
  }

  void a_timeline_shows_no_birthday_and_nothing_above_what_is_so() {
    const auto shown = [](const std::vector<TimelineStep>& steps) {
      return shown_timeline(steps, steps.front().at, shop.reader());
    };
    const Instant old = shop.start(2020, 1, 1), past = shop.start(2025, 2, 3),
                  to_come = shop.start(2027, 2, 3);
    using Steps = std::vector<TimelineStep>;
    // Past: from the next month on. To come: not at all, and nothing later above it.
    QVERIFY((shown({{old, Rung::supervised}, {past, Rung::independent}}) ==
             Steps{{old, Rung::supervised}, {shop.start(2025, 3, 1), Rung::independent}}));
    QVERIFY(
        (shown({{old, Rung::supervised}, {to_come, Rung::independent}}) == Steps{{old, Rung::supervised}}));
    QVERIFY(
        (shown({{old, Rung::supervised},
                {to_come, Rung::independent},
                {to_come + 864000, Rung::barred},
                {to_come + 1728000, Rung::independent}}) == Steps{{old, Rung::supervised},
                                                                  {to_come + 864000, Rung::barred},
                                                                  {to_come + 1728000, Rung::supervised}}));
    // What was over before it may be shown is not shown.
    QVERIFY((shown({{old, Rung::supervised}, {past, Rung::independent}, {past + 100, Rung::supervised}}) ==
             Steps{{old, Rung::supervised}}));
    // Falls, and rises on other days, stand as they are.
    const Steps others = {
        {old, Rung::independent}, {past, Rung::supervised}, {past + 200000, Rung::independent}};
    QVERIFY(shown(others) == others);
    // This month's birthday: from now on.
    AnswerReader reader = shop.reader();
    reader.now = past + 86400;
    QVERIFY((shown_timeline({{old, Rung::barred}, {past, Rung::supervised}}, old, reader) ==
             Steps{{old, Rung::barred}, {reader.now, Rung::supervised}}));
    // It shows as late where only its month reaches into what is shown.
    for (const Instant from : {past + -86400, past + 86400, past + 10 * 86400})
      QVERIFY(
          (shown_timeline({{before_month_of(from, shop.zone), Rung::supervised}, {past, Rung::independent}},
                          from, shop.reader()) ==
           Steps{{from, Rung::supervised}, {shop.start(2025, 3, 1), Rung::independent}}));
    QVERIFY(before_month_of(past, shop.zone) == shop.start(2025, 2, 1) - 1);
    QVERIFY(rung_in(others, past + -1) == Rung::independent && rung_in(others, past) == Rung::supervised);
  }
};

}  // namespace words_changes_test

WM_PAGE_TEST(words_changes_test, WordsChangesTest)
#include "words_changes_test.moc"
