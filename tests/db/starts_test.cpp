// Machines started and left: who may, who is busy meanwhile, and what it comes to.
#include <catch2/catch.hpp>

#include "db/floor.h"
#include "db/journal/subject.h"
#include "db/verify/verify.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

constexpr const char* joint = "combi/joint";  // everybody may, with a supervisor

Action start(const PersonId& person, const MachineId& machine, const TargetName& target,
             const PersonId& supervisor = {}) {
  return own(Started{person, machine, target, supervisor});
}

}  // namespace

TEST_CASE("A machine that is left gives a supervised session of as many minutes, from when it was started") {
  TestShop shop;
  shop.enter("dee", own(Presence{"ivo"}));
  const Instant began = shop.now();
  const RecordId started = shop.enter("dee", start("kim", "c1", joint, "ivo"));
  shop.wait(47 * 60 + 59);
  shop.reopen();  // it is still started
  const auto left = shop.commit("dee", LeaveMachine{started});
  REQUIRE(left);
  REQUIRE(left->entries.size() == 2);
  CHECK(*as<Left>(left->entries[0].fact) == Left{started});
  CHECK(left->entries[0].at == shop.now());
  CHECK(*as<Supervised>(left->entries[1].fact) == Supervised{"kim", joint, 47, "ivo"});
  CHECK(left->entries[1].at == began);
  refused(shop.commit("dee", LeaveMachine{started}), "left already");
  refused(shop.commit("dee", LeaveMachine{"nothing"}), "no start");
  CHECK(verify::look_through(shop.path(), {}).value().findings.kept().empty());
}

TEST_CASE("Whoever needs no supervisor has used it; when it was left may be said later", "[file]") {
  TestShop shop;
  const Instant began = shop.now();
  const RecordId started = shop.enter("dee", start("kim", "s1", "sander"));
  shop.wait(3 * hour);
  refused(shop.commit("dee", LeaveMachine{started}, began - 1), "started only");
  Command leave = shop.command("dee", LeaveMachine{started}, began + hour);
  const auto left = shop.store().commit(leave);
  REQUIRE(left);
  CHECK(left->entries[0].at == began + hour);
  CHECK(*as<Use>(left->entries[1].fact) == Use{"kim", "sander"});
  CHECK(left->entries[1].at == began);
  const auto again = shop.store().commit(leave);
  REQUIRE(again);
  CHECK(again->again);
  leave.at = began + hour + 1;
  refused(shop.store().commit(leave), "Something else");
}

TEST_CASE("Who forgot to say that they left says when it was") {
  TestShop shop;
  const Instant began = shop.now();
  const RecordId started = shop.enter("dee", start("kim", "s1", "sander"));
  shop.wait(2 * day);
  refused(shop.commit("dee", LeaveMachine{started}), "more than a day before");
  CHECK(shop.commit("dee", LeaveMachine{started}, began + hour));
}

TEST_CASE("Nobody starts what they may not: the engine is asked with who is here and free") {
  TestShop shop;
  refused(shop.commit("dee", start("kim", "b1", "bandsaw", "ivo")), "may not use it yet");
  refused(shop.commit("dee", start("kim", "c1", joint, "ivo")), "nobody is here and free");
  shop.enter("dee", own(Presence{"ivo"}));
  refused(shop.commit("dee", start("kim", "c1", joint)), "only with a supervisor");
  refused(shop.commit("dee", start("kim", "c1", joint, "mia")), "Mia Okafor is not here");
  refused(shop.commit("dee", start("kim", "c1", joint, "kim")), "supervises themself");
  refused(shop.commit("dee", start("kim", "s1", joint, "ivo")), "is not of");
  const RecordId lock = shop.enter("ivo", PutOutOfService{"c1", "1", "2", "belt torn", "ivo"});
  refused(shop.commit("dee", start("kim", "c1", joint, "ivo")), "out of service");
  shop.enter("ivo", fact(Release{lock}));
  CHECK(shop.commit("dee", start("kim", "c1", joint, "ivo")));
}

TEST_CASE("Who is at a machine, on either side, is at no other, and the unit is in use") {
  TestShop shop;
  shop.enter("dee", own(Presence{"ivo"}));
  shop.enter("dee", own(Presence{"mia"}));
  shop.enter("dee", fact(Lesson{"lou", "guards", 1}));
  const RecordId started = shop.enter("dee", start("kim", "c1", joint, "ivo"));
  shop.wait(60);
  refused(shop.commit("dee", start("lou", "c1", joint, "mia")), "Kim Abara is at the machine 'Unit c1'");
  refused(shop.commit("dee", start("kim", "s1", "sander")), "Kim Abara is at");
  refused(shop.commit("dee", start("ivo", "s1", "sander")), "Ivo Lindqvist is at");
  refused(shop.commit("dee", start("lou", "b1", "bandsaw", "ivo")), "Ivo Lindqvist is at");
  // Nor are they booked for this moment.
  refused(shop.commit("dee", own(Booking{"lou", "ivo", "b1", "bandsaw", shop.now(), shop.now() + hour})),
          "is at the machine");
  refused(shop.commit("dee", own(Booking{"lou", "mia", "c1", joint, shop.now(), shop.now() + hour})),
          "is at the machine");
  CHECK(shop.commit("dee",
                    own(Booking{"lou", "ivo", "b1", "bandsaw", shop.now() + hour, shop.now() + 2 * hour})));
  shop.enter("dee", LeaveMachine{started});
  CHECK(shop.commit("dee", start("lou", "b1", "bandsaw", "ivo")));
}

TEST_CASE("Who is in a one-on-one under way supervises nobody else, but whom they are booked with") {
  TestShop shop;
  shop.enter("dee", own(Presence{"ivo"}));
  const Instant from = shop.now() + hour;
  const RecordId booking = shop.enter("dee", own(Booking{"kim", "ivo", "c1", joint, from, from + hour}));
  shop.set_now(from + 60);
  shop.enter("dee", own(Attendance{booking, Turnout::arrived}));
  shop.enter("dee", fact(Lesson{"lou", "guards", 1}));
  shop.wait(1);
  refused(shop.commit("dee", start("lou", "b1", "bandsaw", "ivo")), "nobody is here and free");
  CHECK(shop.commit("dee", start("kim", "c1", joint, "ivo")));
  CHECK(shop.store().still_stands(booking));
}

TEST_CASE("A start that was struck out is over, and one that would run into a session is refused") {
  TestShop shop;
  shop.enter("dee", own(Presence{"ivo"}));
  const RecordId started = shop.enter("dee", start("kim", "c1", joint, "ivo"));
  shop.enter("dee", StrikeOutRecord{started, "it was lou"});
  refused(shop.commit("dee", LeaveMachine{started}), "no start");
  CHECK(shop.commit("ivo", fact(Supervised{"kim", joint, 30, "ivo"}), shop.now()));
  refused(shop.commit("dee", start("lou", "c1", joint, "ivo")), "was in another supervised session");
}

namespace {

/// The small rulebook, in whose tier 2 one supervisor takes so many.
void take_at_once(TestShop& shop, int most) {
  Rulebook rulebook = small_rulebook(2, shop.now());
  rulebook.tiers[1].supervises_at_once = most;
  shop.enter("mia", PublishRulebook{rulebook});
  shop.wait(1);
}

}  // namespace

TEST_CASE("A supervisor takes as many at once as the tier says, and their sessions may overlap as far") {
  TestShop shop;
  take_at_once(shop, 2);
  shop.enter("dee", own(Presence{"ivo"}));
  for (const char* who : {"lou", "kim", "dee"}) shop.enter("dee", fact(Lesson{who, "guards", 1}));
  const RecordId first = shop.enter("dee", start("kim", "c1", joint, "ivo"));
  shop.wait(60);
  const RecordId second = shop.enter("dee", start("lou", "b1", "bandsaw", "ivo"));
  const StartNow third = shop.store().start_now("dee", "b2", "bandsaw");
  CHECK(third.may.because == std::vector<Hindrance>{Hindrance::no_supervisor});
  refused(shop.commit("dee", start("dee", "b2", "bandsaw", "ivo")), "supervises 2 people already");
  refused(shop.commit("dee", start("ivo", "s1", "sander")), "Ivo Lindqvist is at");
  shop.wait(600);
  CHECK(shop.commit("dee", LeaveMachine{first}));
  CHECK(shop.commit("dee", start("dee", "b2", "bandsaw", "ivo")));
  CHECK(shop.commit("dee", LeaveMachine{second}));
  // Said afterwards, a third at the same time is still one too many.
  refused(shop.commit("ivo", fact(Supervised{"mia", "bandsaw", 9, "ivo"}), shop.now() - 600),
          "another supervised session");
  CHECK(shop.commit("ivo", fact(Supervised{"mia", "bandsaw", 1, "ivo"}), shop.now() - 3600));
}

TEST_CASE("Who works in a session is in no other, however many one supervisor takes") {
  TestShop shop;
  take_at_once(shop, 3);
  shop.wait(2 * hour);  // the rules of then are asked
  shop.enter("ivo", fact(Supervised{"kim", "bandsaw", 30, "ivo"}), shop.now() - hour);
  refused(shop.commit("ivo", fact(Supervised{"kim", "bandsaw", 30, "mia"}), shop.now() - hour),
          "Kim Abara was in");
  refused(shop.commit("ivo", fact(Supervised{"ivo", "bandsaw", 30, "mia"}), shop.now() - hour),
          "Ivo Lindqvist was in");
  refused(shop.commit("ivo", fact(Supervised{"lou", "bandsaw", 30, "kim"}), shop.now() - hour),
          "Kim Abara was in");
  CHECK(shop.commit("ivo", fact(Supervised{"lou", "bandsaw", 30, "ivo"}), shop.now() - hour));
}

TEST_CASE("What is asked before a start says who works the unit, and who has it booked") {
  TestShop shop;
  shop.enter("dee", own(Presence{"ivo"}));
  shop.enter("dee", own(Presence{"mia"}));
  const Instant from = shop.now() + hour;
  shop.enter("dee", own(Booking{"kim", "ivo", "c1", joint, from, from + hour}));
  CHECK_FALSE(shop.store().start_now("lou", "c1", joint).booked_for);
  shop.set_now(from + 60);
  StartNow lou = shop.store().start_now("lou", "c1", joint);
  CHECK(lou.possible());
  REQUIRE(lou.booked_for);
  CHECK(lou.booked_for->person == "kim");
  CHECK(lou.booked_for->when == Interval{from, from + hour});
  CHECK_FALSE(shop.store().start_now("kim", "c1", joint).booked_for);
  const RecordId started = shop.enter("dee", start("kim", "c1", joint, "ivo"));
  lou = shop.store().start_now("lou", "c1", joint);
  CHECK_FALSE(lou.possible());
  REQUIRE(lou.unit_in_use);
  CHECK(lou.unit_in_use->started == started);
  CHECK(shop.store().start_now("kim", "s1", "sander").at_another->machine == "c1");
  CHECK(shop.store().start_now("ivo", "s1", "sander").at_another->machine == "c1");
}

TEST_CASE("Open starts are found again after a left machine, a strike-out, and a reading of the file") {
  TestShop shop;
  const auto at = [&] {
    std::vector<MachineId> units;
    for (const AtMachine& each : shop.store().floor(shop.now()).at_machines) units.push_back(each.machine);
    return units;
  };
  const RecordId started = shop.enter("dee", start("kim", "s1", "sander"));
  const Instant began = shop.now();
  CHECK(at() == std::vector<MachineId>{"s1"});
  shop.wait(60);
  const RecordId left = shop.enter("dee", LeaveMachine{started});
  CHECK(at().empty());
  CHECK(shop.store().floor(began).at_machines.size() == 1);
  CHECK(shop.store().floor(shop.now(), began).at_machines.size() == 1);
  shop.enter("dee", StrikeOutRecord{left, "they are still there"});
  CHECK(at() == std::vector<MachineId>{"s1"});
  shop.reopen();
  CHECK(at() == std::vector<MachineId>{"s1"});
  shop.enter("dee", StrikeOutRecord{started, "it was lou"});
  CHECK(at().empty());
}

TEST_CASE("Striking out that a machine was left is checked like a start") {
  TestShop shop;
  const RecordId started = shop.enter("dee", start("kim", "s1", "sander"));
  shop.wait(60);
  const RecordId left = shop.enter("dee", LeaveMachine{started});
  shop.wait(60);
  const RecordId other = shop.enter("dee", start("lou", "s1", "sander"));
  refused(shop.commit("dee", StrikeOutRecord{left, "still there"}), "Lou Brandt is at the machine");
  shop.enter("dee", StrikeOutRecord{other, "it was kim"});
  CHECK(shop.commit("dee", StrikeOutRecord{left, "still there"}));
}

TEST_CASE("Nobody was at a machine after they were noted as gone, on either side") {
  for (const PersonId who : {"kim", "ivo"}) {
    TestShop shop;
    shop.enter("dee", own(Presence{"kim"}));
    shop.enter("dee", own(Presence{"kim", false}));  // before they came back
    shop.enter("dee", own(Presence{"kim"}));
    shop.enter("dee", own(Presence{"ivo"}));
    const RecordId started = shop.enter("dee", start("kim", "c1", joint, "ivo"));
    CHECK_FALSE(shop.store().floor(shop.now()).at_machines.front().gone);
    shop.wait(hour);
    const Instant gone = shop.now();
    shop.enter("dee", own(Presence{who, false}));
    shop.wait(12 * hour);
    CHECK(shop.store().floor(shop.now()).at_machines.front().gone == NotedGone{who, gone});
    CHECK_FALSE(shop.store().floor(gone - 1).at_machines.front().gone);
    refused(shop.commit("dee", LeaveMachine{started}), "was noted as gone at 2026-03-14 19:00");
    refused(shop.commit("dee", LeaveMachine{started}, gone + 1), "was noted as gone");
    const auto left = shop.commit("dee", LeaveMachine{started}, gone);
    REQUIRE(left);
    CHECK(as<Supervised>(left->entries[1].fact)->minutes == 60);
  }
}

TEST_CASE("Under a minute somebody has left, and nothing was worked") {
  TestShop shop;
  shop.enter("dee", own(Presence{"ivo"}));
  for (const bool supervised : {true, false}) {
    const Action wrong = supervised ? start("kim", "c1", joint, "ivo") : start("kim", "s1", "sander");
    const RecordId started = shop.enter("dee", wrong);
    shop.wait(20);
    const Command leave = shop.command("dee", LeaveMachine{started});
    const auto left = shop.store().commit(leave);
    REQUIRE(left);
    CHECK(left->entries.size() == 1);
    CHECK(shop.store().commit(leave)->again);
    // The unit that was meant is started at once, and 59 seconds are nothing either.
    const RecordId meant = shop.enter("dee", wrong);
    shop.wait(59);
    CHECK(shop.commit("dee", LeaveMachine{meant})->entries.size() == 1);
    const RecordId last = shop.enter("dee", wrong);
    shop.wait(60);
    CHECK(shop.commit("dee", LeaveMachine{last})->entries.size() == 2);
  }
  CHECK(verify::look_through(shop.path(), {}).value().findings.kept().empty());
}

TEST_CASE("Nobody who starts a machine is the staff that has to be in") {
  TestShop shop;
  Rulebook rulebook = small_rulebook(2, shop.now());
  rulebook.tiers[0].conditions = {Staffed{}};
  shop.enter("mia", PublishRulebook{rulebook});
  shop.wait(1);
  shop.enter("dee", own(Presence{"ivo", true, false}));
  refused(shop.commit("dee", start("kim", "s1", "sander")), "nobody else on duty is in");  // not on duty
  shop.enter("dee", own(Presence{"ivo", true, true}));
  refused(shop.commit("dee", start("ivo", "s1", "sander")), "nobody else on duty is in");
  CHECK(shop.store().start_now("kim", "s1", "sander").possible());
  shop.enter("dee", own(Presence{"mia", true, true}));
  CHECK(shop.commit("dee", start("ivo", "s1", "sander")));
}

namespace {

/// Kim has come to a one-on-one with Ivo at c1 that began a minute ago; Mia and Lou are in.
RecordId one_on_one(TestShop& shop, Purpose purpose) {
  for (const char* who : {"ivo", "mia", "lou"}) shop.enter("dee", own(Presence{who}));
  const Instant from = shop.now() + hour;
  const RecordId booking =
      shop.enter("dee", own(Booking{"kim", "ivo", "c1", joint, from, from + hour, purpose}));
  shop.set_now(from + 60);
  CHECK(shop.store().start_now("kim", "s1", "sander").possible());  // nobody has come yet
  shop.enter("dee", own(Attendance{booking, Turnout::late}));
  shop.wait(1);
  return booking;
}

}  // namespace

TEST_CASE("Who has come to a one-on-one is at its machine, and so is whoever it is with") {
  TestShop shop;
  const RecordId booking = one_on_one(shop, Purpose::practise);
  for (const char* who : {"kim", "ivo"}) {
    refused(shop.commit("dee", start(who, "s1", "sander")),
            "Kim Abara is in a one-on-one with Ivo Lindqvist");
    const StartNow elsewhere = shop.store().start_now(who, "s1", "sander");
    CHECK_FALSE(elsewhere.possible());
    CHECK(elsewhere.in_one_on_one->machine == "c1");
  }
  refused(shop.commit("dee", start("lou", "c1", joint, "mia")), "Kim Abara is in a one-on-one");
  const StartNow taken = shop.store().start_now("lou", "c1", joint);
  CHECK_FALSE(taken.possible());
  CHECK(taken.unit_taken->person == "kim");
  CHECK(shop.store().start_now("lou", "s1", "sander").possible());
  const RecordId started = shop.enter("dee", start("kim", "c1", joint, "ivo"));
  shop.wait(600);
  const RecordId left = shop.enter("dee", LeaveMachine{started});
  // It ended before its time.
  shop.enter("dee", own(Cancel{booking, "tired"}));
  CHECK(shop.store().start_now("lou", "c1", joint).possible());
  CHECK(shop.commit("dee", start("kim", "s1", "sander")));
  refused(shop.commit("dee", StrikeOutRecord{left, "still there"}), "Kim Abara is at the machine");
}

TEST_CASE("A start that a strike-out brings back is not in the way of a one-on-one either") {
  TestShop shop;
  const RecordId started = shop.enter("dee", start("kim", "s1", "sander"));
  shop.wait(60);
  const RecordId left = shop.enter("dee", LeaveMachine{started});
  one_on_one(shop, Purpose::practise);
  refused(shop.commit("dee", StrikeOutRecord{left, "still there"}), "is in a one-on-one");
}

TEST_CASE("A one-on-one for a check-out is over once that is signed") {
  TestShop shop;
  const RecordId booking = one_on_one(shop, Purpose::check_out);
  SignCheckout signing;
  signing.checkout = {"kim", "combi", 0, Outcome::passed, "ivo"};
  signing.pin = "2222";
  signing.machine = "c1";
  signing.booking = booking;
  CHECK_FALSE(shop.store().start_now("kim", "s1", "sander").possible());
  shop.enter("ivo", signing);
  shop.wait(1);
  CHECK(shop.store().start_now("kim", "s1", "sander").possible());
  CHECK(shop.store().start_now("lou", "c1", joint).possible());
  CHECK(shop.store().floor(shop.now()).together.empty());
}

TEST_CASE("What was taught in a one-on-one that ended before its time was taught") {
  TestShop shop;
  Rulebook rulebook = small_rulebook(2, shop.now());
  for (Tier& tier : rulebook.tiers) tier.other_checks_out = true;
  shop.enter("mia", PublishRulebook{rulebook});
  const auto leaves = [&] {
    const auto first = shop.store().first_taught("ivo", "kim", joint);
    return first && *first < shop.now() && shop.store().another_checks_out(joint, shop.now());
  };
  CHECK_FALSE(leaves());
  const RecordId booking = one_on_one(shop, Purpose::teach);
  CHECK(leaves());
  shop.enter("dee", own(Cancel{booking, "tired"}));
  shop.wait(1);
  CHECK(leaves());
}

namespace {

/// Every day from then to then, in minutes.
void open_daily(TestShop& shop, int from, int to) {
  for (int day = 0; day < 7; ++day) shop.enter("mia", own(WeekHours{Doing::open, day, from, to}));
}

/// Ivo on duty and a visitor of his come in at ten in the evening; whether they are in at a time of the next
/// day, in minutes from midnight. Both are, or neither.
bool in_next_day(TestShop& shop, int minute) {
  const Instant midnight = evening + 6 * hour;
  const Floor floor = shop.store().floor(midnight + std::int64_t{60} * minute);
  const bool in = floor.present == std::vector<PersonId>{"ivo"};
  CHECK(floor.staff == floor.present);
  CHECK(floor.visitors.size() == (in ? 1u : 0u));
  return in;
}
void come_in(TestShop& shop) {
  shop.set_now(evening + 4 * hour);
  shop.enter("dee", own(Presence{"ivo", true, true}));
  shop.enter("dee", own(Visit{"Ada Quill", "waiver", "ivo"}));
}

}  // namespace

TEST_CASE("Who came in is in past midnight as long as the opening is that covers it") {
  TestShop shop;
  open_daily(shop, 18 * 60, 24 * 60);
  come_in(shop);
  CHECK_FALSE(in_next_day(shop, 0));  // it ends at midnight
  const Instant before = shop.now();
  shop.wait(60);
  open_daily(shop, 0, 2 * 60);
  CHECK(in_next_day(shop, 0));
  CHECK(in_next_day(shop, 119));
  CHECK_FALSE(in_next_day(shop, 120));
  CHECK_FALSE(in_next_day(shop, 19 * 60));                                // another opening
  CHECK(shop.store().floor(evening + 6 * hour, before).present.empty());  // by the hours as known then
  shop.set_now(evening + 6 * hour + 300);
  shop.enter("dee", own(Presence{"ivo", false}));
  CHECK(shop.store().floor(shop.now()).present.empty());
}

TEST_CASE("Where no hours are said the day ends who is in; where it never closes, the day after") {
  TestShop shop;
  come_in(shop);
  CHECK(in_next_day(shop, -1));
  CHECK_FALSE(in_next_day(shop, 0));
  open_daily(shop, 0, 24 * 60);
  CHECK(in_next_day(shop, 0));
  CHECK(in_next_day(shop, 24 * 60 - 1));
  CHECK_FALSE(in_next_day(shop, 24 * 60));
}
