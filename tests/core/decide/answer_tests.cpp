// What an answer says besides the standing, on small shops made by hand: what it rests on, its very first and
// last second, and the cases that random shops hardly ever make.
#include <catch2/catch.hpp>
#include <random>

#include "core/decide/changes.h"
#include "core/decide/decider.h"
#include "small_shop.h"

using namespace wm;
using namespace wm::small;

namespace {

Reason reason(const Shop& shop, Instant at) {
  return Decider(shop).standing("ana", "saw", at).gates.at(0).reason;
}

using Ids = std::vector<RecordId>;

}  // namespace

TEST_CASE("of two papers it rests on the one that lasts longer, whichever came first", "[decide]") {
  for (const int longer : {0, 1}) {
    Shop shop = shop_asking({NeedDocument{"waiver", {}, {}}});
    add(shop, "one", start, Document{"ana", "waiver", first + (longer == 0 ? 90 : 30)});
    add(shop, "two", start + 60, Document{"ana", "waiver", first + (longer == 1 ? 90 : 30)});
    CHECK(reason(shop, start + a_day).rests_on == Ids{longer == 0 ? "one" : "two"});
    CHECK(reason(shop, start + 40 * a_day).rests_on == Ids{longer == 0 ? "one" : "two"});
  }
}

TEST_CASE("it rests only on sessions that count and still cover", "[decide]") {
  NeedPractice need;
  need.sessions = 1;
  need.within = Period{PeriodUnit::days, 30};
  Shop shop = shop_asking({need});
  add(shop, "early", start + 60, Supervised{"ana", "saw", 30, "bo"});
  add(shop, "alone", start + 20 * a_day, Supervised{"ana", "saw", 30, "ana"});
  add(shop, "late", start + 21 * a_day, Supervised{"ana", "saw", 45, "bo"});
  const Reason both = reason(shop, start + 22 * a_day);
  CHECK(both.rests_on == Ids{"early", "late"});
  CHECK(both.sessions == 2);
  CHECK(both.minutes == 75);
  const Reason one = reason(shop, start + 40 * a_day);
  CHECK(one.rests_on == Ids{"late"});
  CHECK(one.minutes == 45);
}

TEST_CASE("a check-out that is taken away stands beside what took it away", "[decide]") {
  NeedCheckout need;
  need.checkout = "saw";
  need.renew_after_severity = 2;
  Shop shop = shop_asking({need});
  add(shop, "passed", start + 60, Checkout{"ana", "saw", 0, Outcome::passed, "bo"});
  CHECK(reason(shop, start + 80).rests_on == Ids{"passed"});
  add(shop, "stopped", start + 90, Checkout{"ana", "saw", 0, Outcome::stopped, "bo"});
  add(shop, "failed", start + 100, Checkout{"ana", "saw", 0, Outcome::failed, "bo"});
  add(shop, "near miss", start + 101, Incident{"ana", "saw", 3, Part::operating});
  add(shop, "cut", start + 102, Incident{"ana", "saw", 2, Part::operating});
  CHECK(reason(shop, start + 99).rests_on == Ids{"passed"});
  CHECK(reason(shop, start + 100).rests_on == Ids{"passed", "failed"});
  CHECK(reason(shop, start + 102).rests_on == Ids{"passed", "failed", "cut"});
}

TEST_CASE("what a check-out left open stands until another is passed that counts", "[decide]") {
  NeedCheckout need;
  need.checkout = "saw";
  need.valid = Period{PeriodUnit::days, 30};
  Shop shop = shop_asking({need});
  const auto last = [&](Instant at) { return Decider(shop).last_checkouts("ana", "saw", at); };
  CHECK(last(start).empty());
  add(shop, "first", start + 60, Checkout{"ana", "saw", 0, Outcome::passed, "bo"});
  CHECK(last(start + 59).empty());
  CHECK(last(start + 60) == Ids{"first"});
  CHECK(last(start + 90 * a_day) == Ids{"first"});  // lapsed
  add(shop, "failed", start + 100, Checkout{"ana", "saw", 0, Outcome::failed, "bo"});
  CHECK(last(start + 100) == Ids{"first"});
  add(shop, "own", start + 200, Checkout{"ana", "saw", 0, Outcome::passed, "ana"});  // counts for nothing
  CHECK(last(start + 200) == Ids{"first", "own"});
  add(shop, "other", start + 250, Checkout{"ana", "lathe", 0, Outcome::passed, "bo"});
  CHECK(last(start + 250) == Ids{"first", "own"});
  add(shop, "second", start + 300, Checkout{"ana", "saw", 0, Outcome::passed, "bo"});
  CHECK(last(start + 299) == Ids{"first", "own"});
  CHECK(last(start + 300) == Ids{"second"});
  // A rulebook that asks for another check-out ends nothing.
  Rulebook later = shop.rulebooks[0];
  later.version = 2;
  later.effective_from = later.recorded = start + a_day;
  std::get<NeedCheckout>(later.classes[0].gates[0].need.need).checkout = "saw-2";
  shop.rulebooks.push_back(later);
  CHECK(last(start + 2 * a_day) == Ids{"second"});
}

TEST_CASE("the revision needed is the one published, from that very second", "[decide]") {
  NeedLesson need;
  need.lesson = "guards";
  Shop shop = shop_asking({need});
  add(shop, "new", start + 60, Publish{"guards", 3});
  CHECK(reason(shop, start + 59).revision_needed == 0);
  CHECK(reason(shop, start + 60).revision_needed == 3);
}

TEST_CASE("a suspension is named while it lasts", "[decide]") {
  Shop shop = shop_asking({NeedDocument{"waiver", {}, {}}});
  add(shop, "out", start + 60, Suspend{"ana", Everything{}, first + 2});
  const auto named = [&](Instant at) { return Decider(shop).standing("ana", "saw", at).suspensions; };
  const SuspensionAnswer out{"out", start + 60, start + 3 * a_day};
  CHECK(named(start + 59).empty());
  CHECK(named(start + 60) == std::vector{out});
  CHECK(named(start + 3 * a_day - 1) == std::vector{out});
  CHECK(named(start + 3 * a_day).empty());
}

TEST_CASE("a gate says whether only having been there before lets it hold", "[decide]") {
  Shop shop = shop_asking({NeedDocument{"waiver", {}, {}}});
  Rulebook stricter = shop.rulebooks[0];
  stricter.version = 2;
  stricter.effective_from = stricter.recorded = start + a_day;
  stricter.classes[0].gates[0].existing_until = first + 9;
  shop.rulebooks[0].classes[0].gates.clear();
  shop.rulebooks.push_back(stricter);
  const auto gate = [&](Instant at) { return Decider(shop).standing("ana", "saw", at).gates.at(0); };
  CHECK(gate(start + 2 * a_day).spared);
  CHECK(gate(start + 2 * a_day).lapses == start + 10 * a_day);
  CHECK(Decider(shop).rung("ana", "saw", start + 10 * a_day - 1) == Rung::independent);
  CHECK(Decider(shop).rung("ana", "saw", start + 10 * a_day) == Rung::supervised);
  add(shop, "waiver", start + a_day, Document{"ana", "waiver", {}});
  CHECK_FALSE(gate(start + 2 * a_day).spared);
}

TEST_CASE("gates are answered for the only mode of a class and not for the class", "[decide]") {
  Shop shop = shop_asking({NeedDocument{"waiver", {}, {}}});
  shop.rulebooks[0].classes[0].modes = {"rip"};
  Decider decider(shop);
  CHECK(decider.standing("ana", "saw/rip", start).gates.size() == 1);
  const StandingAnswer whole = decider.standing("ana", "saw", start);
  CHECK(whole.stands_for == std::vector<TargetName>{"saw/rip"});
  CHECK(whole.gates.empty());
}

TEST_CASE("a timeline begins at its first second and takes in its last", "[decide]") {
  Shop shop = shop_asking({NeedDocument{"waiver", {}, {}}});
  add(shop, "waiver", start + 60, Document{"ana", "waiver", {}});
  Decider decider(shop);
  using Steps = std::vector<TimelineStep>;
  CHECK(decider.timeline("ana", "saw", start, start + 59) == Steps{{start, Rung::supervised}});
  CHECK(decider.timeline("ana", "saw", start, start + 60) ==
        Steps{{start, Rung::supervised}, {start + 60, Rung::independent}});
  CHECK(decider.timeline("ana", "saw", start + 60, start + 90) == Steps{{start + 60, Rung::independent}});
}

TEST_CASE("a fall is one of those after the first second, up to the last", "[decide]") {
  Shop shop = shop_asking({NeedDocument{"waiver", {}, {}}});
  add(shop, "waiver", start, Document{"ana", "waiver", first});
  Decider decider(shop);
  const Instant falls = start + a_day;
  const std::vector<Drop> fall{{falls, "ana", "saw", Rung::independent, Rung::supervised}};
  CHECK(drops(decider, start, falls - 1).empty());
  CHECK(drops(decider, start, falls) == fall);
  CHECK(drops(decider, falls - 1, falls) == fall);
  CHECK(drops(decider, falls, falls + a_day).empty());
}

TEST_CASE("of rulebooks effective at the same instant the one recorded last is in force, then the version",
          "[decide]") {
  Shop shop = shop_asking({NeedDocument{"waiver", {}, {}}});
  const auto put = [&](int version, Instant recorded) {
    Rulebook book = shop.rulebooks[0];
    book.version = version;
    book.effective_from = start;
    book.recorded = recorded;
    shop.rulebooks.push_back(book);
  };
  put(3, start - 20);
  put(2, start - 10);
  CHECK(Decider(shop).in_force(start)->version == 2);
  put(4, start - 10);
  CHECK(Decider(shop).in_force(start)->version == 4);
  CHECK(Decider(shop, start - 15).in_force(start)->version == 3);
}

TEST_CASE("of births at the same instant the one recorded last is believed", "[decide]") {
  Shop shop = shop_asking({NeedAge{18}});
  shop.records.push_back({"b", start, start, {}, Birth{"ana", day_of({2000, 1, 1})}});
  CHECK(Decider(shop).rung("ana", "saw", start) == Rung::independent);
  shop.records.push_back({"a", start, start + 60, {}, Birth{"ana", day_of({2020, 1, 1})}});
  CHECK(Decider(shop).rung("ana", "saw", start) == Rung::supervised);
}

TEST_CASE("minutes of several sessions add up, and one short of enough is not enough", "[decide]") {
  NeedPractice need;
  need.minutes = 95;
  Shop shop = shop_asking({need});
  add(shop, "one", start + 60, Supervised{"ana", "saw", 45, "bo"});
  add(shop, "two", start + 120, Supervised{"ana", "saw", 49, "bo"});
  Decider short_of_it(shop);
  CHECK(short_of_it.rung("ana", "saw", start + 200) == Rung::supervised);
  CHECK(short_of_it.standing_steps("ana", "saw").at(start + 200) == Rung::supervised);
  add(shop, "three", start + 180, Supervised{"ana", "saw", 1, "bo"});
  Decider enough(shop);
  CHECK(enough.rung("ana", "saw", start + 180) == Rung::independent);
  CHECK(enough.standing_steps("ana", "saw").at(start + 180) == Rung::independent);
  CHECK(enough.standing_steps("ana", "saw").at(start + 179) == Rung::supervised);
}

TEST_CASE("a record is known from the second it is recorded to the one before it is struck out", "[decide]") {
  Shop shop = shop_asking({NeedDocument{"waiver", {}, {}}});
  shop.records.push_back({"waiver", start, start + 60, start + 90, Document{"ana", "waiver", {}}});
  const auto rung = [&](std::optional<Instant> known) {
    return Decider(shop, known).rung("ana", "saw", start);
  };
  CHECK(rung(start + 59) == Rung::supervised);
  CHECK(rung(start + 60) == Rung::independent);
  CHECK(rung(start + 89) == Rung::independent);
  CHECK(rung(start + 90) == Rung::supervised);
  CHECK(rung({}) == Rung::supervised);
}

TEST_CASE("a failed check-out takes away those of earlier seconds only, whatever the ids", "[decide]") {
  NeedCheckout need;
  need.checkout = "saw";
  for (const char* id : {"a", "z"}) {
    Shop shop = shop_asking({need});
    add(shop, "passed", start + 60, Checkout{"ana", "saw", 0, Outcome::passed, "bo"});
    add(shop, id, start + 60, Checkout{"ana", "saw", 0, Outcome::failed, "bo"});
    CHECK(Decider(shop).rung("ana", "saw", start + 70) == Rung::independent);
    add(shop, "later", start + 61, Checkout{"ana", "saw", 0, Outcome::failed, "bo"});
    CHECK(Decider(shop).rung("ana", "saw", start + 60) == Rung::independent);
    CHECK(Decider(shop).rung("ana", "saw", start + 61) == Rung::supervised);
  }
}

TEST_CASE("what was practised on the class counts for each mode, and on one mode for that alone",
          "[decide]") {
  NeedPractice need;
  need.sessions = 1;
  Shop shop = shop_asking({need});
  shop.rulebooks[0].classes[0].modes = {"rip", "cross"};
  Shop on_one = shop;
  add(shop, "s", start + 60, Supervised{"ana", "saw", 30, "bo"});
  add(on_one, "s", start + 60, Supervised{"ana", "saw/rip", 30, "bo"});
  const auto rung = [](const Shop& of, const char* x) { return Decider(of).rung("ana", x, start + 60); };
  CHECK(rung(shop, "saw/rip") == Rung::independent);
  CHECK(rung(shop, "saw/cross") == Rung::independent);
  CHECK(rung(on_one, "saw/rip") == Rung::independent);
  CHECK(rung(on_one, "saw/cross") == Rung::supervised);
}

TEST_CASE("a session's supervisor must be able to supervise what it was on, not only what is asked about",
          "[decide]") {
  NeedPractice need;
  need.sessions = 1;
  Shop shop = shop_asking({need});
  shop.people.push_back("cy");
  shop.rulebooks[0].classes[0].modes = {"rip", "cross"};
  add(shop, "cy", start, Appoint{"cy", TargetScope{"saw/rip"}, true, first + 9000});
  Shop on_class = shop;
  add(shop, "s", start + 60, Supervised{"ana", "saw/rip", 30, "cy"});
  add(on_class, "s", start + 60, Supervised{"ana", "saw", 30, "cy"});
  CHECK(Decider(shop).rung("ana", "saw/rip", start + 60) == Rung::independent);
  CHECK(Decider(on_class).rung("ana", "saw/rip", start + 60) == Rung::supervised);
}

TEST_CASE("what is given in the second of a check-out is given, and a second later is not", "[decide]") {
  NeedLesson lesson;
  lesson.lesson = "guards";
  NeedCheckout need;
  need.checkout = "saw";
  need.given = {{lesson}};
  for (const int late : {0, 1}) {
    Shop shop = shop_asking({need});
    add(shop, "c", start + 60, Checkout{"ana", "saw", 0, Outcome::passed, "bo"});
    add(shop, "l", start + 60 + late, Lesson{"ana", "guards", 0});
    const Rung expected = late == 0 ? Rung::independent : Rung::supervised;
    CHECK(Decider(shop).rung("ana", "saw", start + 90) == expected);
  }
}

TEST_CASE("an attempt counts when fewer than the most failed ones lie in the hours before it", "[decide]") {
  constexpr std::int64_t hour = 3600;
  NeedQuiz need;
  need.quiz = "guards";
  need.retry = Retry{{}, 2, 24};
  const auto rung = [&](std::int64_t after) {
    Shop shop = shop_asking({need});
    add(shop, "one", start + 60, Quiz{"ana", "guards", 0, 5, 10, 0});
    add(shop, "two", start + 60 + hour, Quiz{"ana", "guards", 0, 5, 10, 0});
    add(shop, "three", start + 60 + after, Quiz{"ana", "guards", 0, 10, 10, 0});
    return Decider(shop).rung("ana", "saw", start + 9 * a_day);
  };
  CHECK(rung(2 * hour) == Rung::supervised);
  CHECK(rung(24 * hour - 1) == Rung::supervised);
  CHECK(rung(24 * hour) == Rung::independent);
}

TEST_CASE("nobody waits after an attempt that was passed, and after a failed one to the second", "[decide]") {
  NeedQuiz need;
  need.quiz = "guards";
  need.valid = Period{PeriodUnit::days, 10};
  need.retry = Retry{24, {}, {}};
  const auto rung = [&](int correct, std::int64_t after) {
    Shop shop = shop_asking({need});
    add(shop, "one", start + 60, Quiz{"ana", "guards", 0, correct, 10, 0});
    add(shop, "two", start + 60 + after, Quiz{"ana", "guards", 0, 10, 10, 0});
    return Decider(shop).rung("ana", "saw", start + 11 * a_day);
  };
  CHECK(rung(10, a_day - 60) == Rung::independent);
  CHECK(rung(5, a_day - 1) == Rung::supervised);
  CHECK(rung(5, a_day) == Rung::independent);
}

TEST_CASE("what is good for a month and some grace is not given up before its last second", "[decide]") {
  Shop shop =
      shop_asking({NeedDocument{"waiver", Period{PeriodUnit::months, 1}, Period{PeriodUnit::days, 3}}});
  add(shop, "waiver", start, Document{"ana", "waiver", {}});
  const Instant lapses = start + 35 * a_day;  // 1 February, and three days
  CHECK(Decider(shop).rung("ana", "saw", lapses - 1) == Rung::independent);
  CHECK(Decider(shop).rung("ana", "saw", lapses) == Rung::supervised);
}

namespace {

/// Whether a passing attempt at t would carry the gate, by the standing that it gives.
bool would_count(Shop shop, Instant t) {
  add(shop, "one more", t, Quiz{"ana", "saw", 0, 10, 10, 0});
  return Decider(shop).rung("ana", "saw", t) == Rung::independent;
}

NeedQuiz quiz_with(std::optional<int> wait_hours, std::optional<int> most, std::optional<int> in_hours) {
  NeedQuiz need;
  need.quiz = "saw";
  need.pass_percent = 80;
  if (wait_hours || most) need.retry = Retry{wait_hours, most, in_hours};
  return need;
}

Quiz missed() { return {"ana", "saw", 0, 1, 10, 0}; }

constexpr std::int64_t an_hour = 3600;

}  // namespace

TEST_CASE("a quiz without a retry rule can be tried at once, any number of times", "[decide]") {
  const NeedQuiz need = quiz_with({}, {}, {});
  Shop shop = shop_asking({need});
  add(shop, "missed", start + 60, missed());
  CHECK(Decider(shop).next_attempt("ana", need, start + 61) == NextAttempt{start + 61, std::nullopt});
}

TEST_CASE("the first second at which an attempt counts is the one that a standing shows", "[decide]") {
  // Random attempts and rules: every hour, and the second before it, is tried by entering an attempt.
  std::mt19937 random(20261126);
  const auto one_of = [&random](int from, int to) {
    return std::uniform_int_distribution<int>(from, to)(random);
  };
  for (int round = 0; round < 60; ++round) {
    const bool waits = one_of(0, 2) > 0, few = !waits || one_of(0, 1) == 1;
    const NeedQuiz need = quiz_with(waits ? std::optional(one_of(1, 6)) : std::nullopt,
                                    few ? std::optional(one_of(1, 3)) : std::nullopt,
                                    few ? std::optional(one_of(2, 12)) : std::nullopt);
    Shop shop = shop_asking({need});
    for (int i = one_of(0, 6); i > 0; --i)
      add(shop, "missed " + std::to_string(i), start + one_of(1, 12) * an_hour, missed());
    const Instant at = start + one_of(0, 14) * an_hour + 1;
    const NextAttempt next = Decider(shop).next_attempt("ana", need, at);
    INFO(round << ": from " << next.from.seconds - start.seconds << " asked at "
               << at.seconds - start.seconds);
    CHECK(would_count(shop, next.from));
    if (next.from > at) {
      CHECK_FALSE(would_count(shop, next.from - 1));
      CHECK_FALSE(would_count(shop, at));
    }
    for (Instant t = start + an_hour; t < next.from; t = t + an_hour)
      if (t >= at) CHECK_FALSE(would_count(shop, t));
  }
}

TEST_CASE("as many attempts as are left may go wrong, and no more", "[decide]") {
  const NeedQuiz need = quiz_with({}, 3, 10);
  Shop shop = shop_asking({need});
  add(shop, "missed", start + an_hour, missed());
  const Instant at = start + 2 * an_hour;
  REQUIRE(Decider(shop).next_attempt("ana", need, at).left == 2);
  add(shop, "missed again", at, missed());
  CHECK(Decider(shop).next_attempt("ana", need, at) == NextAttempt{at, 1});
  add(shop, "missed once more", at, missed());
  // The window is full; the first of them leaves it ten hours after it was made.
  CHECK(Decider(shop).next_attempt("ana", need, at) == NextAttempt{start + 11 * an_hour, 1});
}
