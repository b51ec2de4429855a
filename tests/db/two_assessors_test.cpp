// Check-outs that two assessors witness: how they are booked and signed, and that neither goes with one.
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/time/period.h"
#include "db/diary/floor.h"
#include "db/export/person_export.h"
#include "db/floor.h"
#include "db/journal/subject.h"
#include "db/retention.h"
#include "test_shop.h"

namespace wm::db::two_assessors {
namespace {

/// 16 March 2026, a Monday, at noon in Chicago.
constexpr Instant noon = evening + 2 * day - 6 * hour;
constexpr int mondays = 0;

struct Asks {
  bool two = true, other = false;
};
void publish(TestShop& shop, Asks asks = {}) {
  const int next = shop.store().rulebooks().back().version + 1;
  Rulebook rulebook = small_rulebook(next, shop.now() + 60);
  rulebook.tiers[1].two_assessors = asks.two;
  rulebook.tiers[1].other_checks_out = asks.other;
  shop.enter("mia", PublishRulebook{rulebook});
  shop.wait(120);
}

/// The tier of the bandsaw asks for two; Kim may be checked out, and Noa assesses too: their PIN is 6666.
TestShop ready(Asks asks = {}) {
  TestShop shop;
  shop.enter("mia", EnterPerson{Person{"noa", "M 91", "Noa", "Berg", {}, {}, {}, {}, {}}, std::nullopt});
  shop.enter("mia", own(RoleGiven{"noa", Role::instructor}));
  shop.enter("mia", ChoosePin{"noa", "6666"});
  shop.enter("mia", fact(Appoint{"noa", Everything{}, true, Day{21000}}));
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  publish(shop, asks);
  return shop;
}

Booking at(Instant from, const PersonId& assessor = "ivo", const PersonId& second = "mia",
           const PersonId& person = "kim") {
  Booking out{person, assessor, "b1", "bandsaw", from, from + hour};
  out.second = second;
  return out;
}

SignCheckout signing(const PersonId& second = "mia", const std::string& pin = "1111") {
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  sign.pin = "2222";
  sign.machine = "b1";
  sign.sheet = "bandsaw";
  sign.sheet_revision = 1;
  sign.marks = {Mark::shown};
  if (!second.empty()) sign.second = SecondAssessor{second, pin};
  return sign;
}

/// That it was refused about this part, in this sentence.
void no(const Expected<Committed>& done, const std::string& where, const std::string& what) {
  if (done) FAIL("was entered, though it should not: " << what);
  INFO(done.error().where << ": " << done.error().what);
  CHECK(done.error().where == where);
  CHECK(done.error().what.find(what) != std::string::npos);
  CHECK_FALSE(done.error().remedy.empty());
}

template <class F>
std::vector<F> all_of(const std::vector<Entry>& entries) {
  std::vector<F> out;
  for (const Entry& entry : entries)
    if (const F* f = as<F>(entry.fact)) out.push_back(*f);
  return out;
}

}  // namespace

TEST_CASE("Where the tier asks for two, a check-out is booked with two, and all else with one") {
  TestShop shop = ready();
  no(shop.commit("dee", own(at(noon, "ivo", ""))), "second", "Two assessors witness a check-out here");
  no(shop.commit("dee", own(at(noon, "ivo", "ivo"))), "second", "somebody else");
  no(shop.commit("dee", own(at(noon, "ivo", "kim"))), "second", "somebody else");
  no(shop.commit("dee", own(at(noon, "ivo", "nobody"))), "second", "There is nobody");
  no(shop.commit("dee", own(at(noon, "ivo", "lou"))), "second", "Lou Brandt is not able to assess");
  Booking teach = at(noon, "ivo", "");
  teach.purpose = Purpose::teach;
  Booking with_two = teach;
  with_two.second = "mia";
  no(shop.commit("dee", own(with_two)), "second", "Only a check-out");
  shop.enter("dee", own(teach));
  const RecordId id = shop.enter("dee", own(at(noon + day)));
  CHECK(as<Booking>(shop.store().entry(id)->fact)->second == "mia");
  publish(shop, {false, false});
  no(shop.commit("dee", own(at(noon + 2 * day))), "second", "One assessor witnesses");
  shop.enter("dee", own(at(noon + 2 * day, "ivo", "")));
  // What was booked with two when it was asked for is not wrong by it.
  CHECK(shop.store().still_stands(id));
}

TEST_CASE("The second is in by their hours, not busy, and gives no more than they take on") {
  TestShop shop = ready();
  shop.enter("mia", own(Hours{"mia", mondays, 12 * 60, 18 * 60}));
  no(shop.commit("dee", own(at(noon - hour))), "second", "Mia Okafor is not in, or busy");
  shop.enter("mia", own(Busy{"mia", noon - day, noon + day, {{noon + hour, noon + 2 * hour}}}));
  no(shop.commit("dee", own(at(noon + hour))), "second", "Mia Okafor is not in, or busy");
  TakesOn takes_on;
  takes_on.person = "mia";
  takes_on.longest_day = 90;
  shop.enter("mia", own(takes_on));
  shop.enter("dee", own(at(noon)));
  no(shop.commit("dee", own(at(noon + 3 * hour))), "second", "more than Mia Okafor takes on");
  // It counts the same whichever of the two they are.
  no(shop.commit("dee", own(at(noon + 3 * hour, "mia", "noa"))), "assessor", "more than Mia Okafor takes on");
}

TEST_CASE("The second is in one place at a time, as everybody is, whatever they are booked as") {
  TestShop shop = ready();
  const RecordId id = shop.enter("dee", own(at(noon)));
  const auto on_b2 = [](Booking booking) {
    booking.machine = "b2";
    return booking;
  };
  no(shop.commit("dee", own(on_b2(at(noon, "noa", "mia", "lou")))), "second", "Mia Okafor is booked already");
  no(shop.commit("dee", own(on_b2(at(noon, "mia", "noa", "lou")))), "assessor",
     "Mia Okafor is booked already");
  no(shop.commit("dee", own(on_b2(at(noon, "noa", "ivo", "lou")))), "second",
     "Ivo Lindqvist is booked already");
  no(shop.commit("dee", own(on_b2(at(noon, "noa", "dee", "mia")))), "person", "Mia Okafor is booked already");
  // Somebody who was entered twice is one.
  shop.enter("mia",
             EnterPerson{Person{"mia-again", "M 92", "Mia", "Again", {}, {}, {}, {}, {}}, std::nullopt});
  shop.enter("mia", own(Join{"mia", "mia-again"}));
  no(shop.commit("dee", own(on_b2(at(noon, "noa", "mia-again", "lou")))), "second", "is booked already");
  no(shop.commit("dee", own(at(noon + day, "mia", "mia-again"))), "second", "somebody else");
  // A move leaves the second's time free, as everybody's.
  Booking moved = at(noon + 1800, "ivo", "noa");
  moved.instead_of = id;
  shop.enter("dee", own(moved));
  Booking practice = on_b2(at(noon, "mia", "", "lou"));
  practice.purpose = Purpose::teach;
  shop.enter("dee", own(practice));
}

TEST_CASE("Neither of the two has taught them, where the tier asks for that too") {
  TestShop shop = ready({true, true});
  Booking teach = at(evening + hour, "mia", "");
  teach.purpose = Purpose::teach;
  shop.enter("dee", own(teach));
  shop.wait(3 * hour);
  no(shop.commit("dee", own(at(noon, "mia", "ivo"))), "assessor", "Mia Okafor taught them");
  no(shop.commit("dee", own(at(noon, "ivo", "mia"))), "second", "Mia Okafor taught them");
  shop.enter("dee", own(at(noon, "ivo", "noa")));
  no(shop.commit("ivo", signing()), "second", "Mia Okafor taught them");
  REQUIRE(shop.commit("ivo", signing("noa", "6666")));
}

TEST_CASE("Nobody signs as the second for whom they are close to, where the rulebook says so") {
  TestShop shop = ready();
  Rulebook rulebook = shop.store().rulebooks().back();
  rulebook.version += 1;
  rulebook.effective_from = shop.now() + 1;
  rulebook.close_may_sign = false;
  shop.enter("mia", PublishRulebook{rulebook});
  shop.wait(2);
  shop.enter("mia", own(Close{"mia", "kim"}));
  no(shop.commit("ivo", signing()), "second", "Mia Okafor and Kim Abara are close");
  CHECK(shop.commit("ivo", signing("noa", "6666")));
}

TEST_CASE("Two adults who assess are the two adults in the building") {
  TestShop shop = ready();
  shop.enter("dee", fact(Birth{"kim", Day{14682}}));  // 16 years ago
  shop.enter("mia", own(WeekHours{Doing::staffed, mondays, 0, 1440, 1}));
  Booking teach = at(noon, "ivo", "");
  teach.purpose = Purpose::teach;
  no(shop.commit("dee", own(teach)), "person", "two adults");
  shop.enter("dee", own(at(noon)));
  // With one of them under 18 too, a third has to be in.
  shop.enter("dee", fact(Birth{"noa", Day{14682}}));
  no(shop.commit("dee", own(at(noon + hour, "ivo", "noa"))), "person", "two adults");
  shop.enter("mia", own(WeekHours{Doing::staffed, mondays, 0, 1440, 2}));
  shop.enter("dee", own(at(noon + hour, "ivo", "noa")));
}

TEST_CASE("A booking whose second can't come any more is said to be no longer possible, and why") {
  TestShop shop = ready();
  const RecordId appointed = shop.enter("mia", fact(Appoint{"dee", Everything{}, true, Day{21000}}));
  const RecordId id = shop.enter("dee", own(at(noon, "ivo", "dee")));
  CHECK(shop.store().still_stands(id));
  const auto wrong = [&](const std::string& part) {
    const auto stands = shop.store().still_stands(id);
    REQUIRE_FALSE(stands);
    CHECK(stands.error().where == "second");
    CHECK_THAT(stands.error().what, Catch::Contains(part));
  };
  SECTION("dismissed") {
    shop.enter("mia", fact(Dismiss{appointed}));
    wrong("Dee Castellano is not able to assess");
  }
  SECTION("paused") {
    shop.enter("mia", fact(Suspend{"dee", Everything{}, std::nullopt}));
    wrong("Dee Castellano is not able to assess");
  }
  SECTION("hours gone") {
    shop.enter("mia", own(Hours{"dee", mondays, 15 * 60, 18 * 60}));
    wrong("Dee Castellano is not in, or busy");
  }
}

TEST_CASE("A booking with one of before a rule that asks for two is said to lack the second") {
  TestShop shop = ready({false, false});
  const RecordId id = shop.enter("dee", own(at(noon, "ivo", "")));
  CHECK(shop.store().still_stands(id));
  publish(shop);
  const auto stands = shop.store().still_stands(id);
  REQUIRE_FALSE(stands);
  CHECK(stands.error().where == "second");
}

TEST_CASE("Both are busy while a one-on-one goes on to which somebody came") {
  TestShop shop = ready();
  const RecordId id = shop.enter("dee", own(at(evening + hour)));
  shop.wait(hour);
  shop.enter("dee", own(Attendance{id, Turnout::arrived}));
  for (const char* who : {"kim", "ivo", "mia"}) {
    INFO(who);
    no(shop.commit("dee", own(Started{who, "s1", "sander", ""})), "person",
       "Kim Abara is in a one-on-one with Ivo Lindqvist and Mia Okafor");
  }
  no(shop.commit("dee", own(Started{"noa", "b1", "bandsaw", ""})), "machine",
     "Kim Abara is in a one-on-one with Ivo Lindqvist and Mia Okafor");
  CHECK(shop.store().floor(shop.now()).together == std::vector<std::vector<PersonId>>{{"kim", "ivo", "mia"}});
}

TEST_CASE("A check-out that two assess is signed by both, in one commit, or not at all") {
  TestShop shop = ready();
  const auto before = shop.store().last_commit();
  no(shop.commit("ivo", signing("")), "second", "and one has signed");
  no(shop.commit("ivo", signing("ivo", "2222")), "second", "somebody else");
  no(shop.commit("ivo", signing("kim", "1")), "second", "neither an instructor nor a manager");
  no(shop.commit("ivo", signing("mia", "2222")), "pin", "not Mia Okafor's PIN");
  no(shop.commit("mia", signing()), "assessor", "by the one who assessed it");
  // An instructor who is not able to assess it.
  shop.enter("mia", own(RoleGiven{"lou", Role::instructor}));
  shop.enter("mia", ChoosePin{"lou", "5555"});
  no(shop.commit("ivo", signing("lou", "5555")), "second", "Lou Brandt could not assess");
  CHECK(shop.store().last_commit() == before + 2);
  CHECK(shop.store().current().decider().rung("kim", "bandsaw", shop.now()) == Rung::supervised);
  const auto done = shop.commit("ivo", signing());
  INFO((done ? "" : done.error().what));
  REQUIRE(done);
  CHECK(all_of<Witnessed>(done->entries) == std::vector<Witnessed>{{done->entries.front().id, "mia"}});
  const auto signatures = all_of<Signature>(done->entries);
  REQUIRE(signatures.size() == 2);
  CHECK(signatures[0].person == "mia");
  CHECK(signatures[1].person == "ivo");  // the assessor's is the last
  CHECK(shop.store().current().decider().rung("kim", "bandsaw", shop.now() + 1) == Rung::independent);
  const std::vector<Entry> entries = shop.store().entries();
  shop.reopen();
  CHECK(shop.store().entries() == entries);
  // It stays as long as the check-out, and goes with it.
  const auto witnessed = std::ranges::find_if(
      done->entries, [](const Entry& entry) { return as<Witnessed>(entry.fact) != nullptr; });
  no(shop.commit("mia", StrikeOutRecord{witnessed->id, "wrong"}), "record", "not struck out by itself");
  no(shop.commit("ivo", own(Witnessed{done->entries.front().id, "noa"})), "action", "not entered by hand");
}

TEST_CASE("The same command again is entered once; with another second it is another command") {
  TestShop shop = ready();
  Command command = shop.command("ivo", signing());
  const auto first = shop.store().commit(command);
  REQUIRE(first);
  const auto again = shop.store().commit(command);
  REQUIRE(again);
  CHECK(again->again);
  std::get<SignCheckout>(command.action).second = SecondAssessor{"noa", "6666"};
  no(shop.store().commit(command), "id", "Something else");
}

TEST_CASE("A second where none is asked for is refused: who watched it can mark it apart") {
  TestShop shop = ready({false, false});
  no(shop.commit("ivo", signing()), "second", "One assessor witnesses");
  const auto done = shop.commit("ivo", signing(""));
  REQUIRE(done);
  CHECK(
      shop.commit("mia", ScoreApart{{done->entries.front().id, "mia", "bandsaw", 1, {Mark::shown}}, "1111"}));
}

TEST_CASE("Who signed it as the second has seen its marks, and marks nothing apart") {
  TestShop shop = ready();
  const auto done = shop.commit("ivo", signing());
  REQUIRE(done);
  const auto apart = [&](const PersonId& by, const std::string& pin) {
    return shop.commit(by, ScoreApart{{done->entries.front().id, by, "bandsaw", 1, {Mark::shown}}, pin});
  };
  no(apart("mia", "1111"), "assessor", "signed it as the second");
  CHECK(apart("noa", "6666"));
}

TEST_CASE("From paper both who signed it are named; nobody types a PIN of theirs") {
  TestShop shop = ready();
  shop.enter("dee", own(Printed{"Run sheet", 1, std::string(64, 'a'), "7K2Q9X"}));
  shop.enter("dee", own(Printed{"Run sheet", 1, std::string(64, 'b'), "9M2XW5"}));
  EnterPaperSheet paper{signing(), "7K2Q9X"};
  paper.sheet.pin.clear();
  no(shop.from_paper("mia", paper, shop.now()), "sheet", "no PIN");
  paper.sheet.second.reset();
  no(shop.from_paper("mia", paper, shop.now()), "second", "and one has signed");
  no(shop.from_paper("mia", fact(paper.sheet.checkout), shop.now()), "second", "this names one");
  paper.sheet.second = SecondAssessor{"ivo", {}};
  no(shop.from_paper("mia", paper, shop.now()), "second", "somebody else");
  paper.sheet.second = SecondAssessor{"noa", {}};
  const auto done = shop.from_paper("mia", paper, shop.now());
  INFO((done ? "" : done.error().what));
  REQUIRE(done);
  CHECK(all_of<Witnessed>(done->entries)[0].assessor == "noa");
  CHECK(all_of<Signature>(done->entries).empty());
  CHECK(done->entries[0].from_paper);
  // A paper of before the rule has one name.
  paper.form = "9M2XW5";
  paper.sheet.second.reset();
  CHECK(shop.from_paper("mia", paper, evening));
  CHECK(shop.from_paper("mia", fact(paper.sheet.checkout), evening));
}

TEST_CASE("Both must be able to assess it on the same mode: by one each nobody has seen either") {
  TestShop shop = ready();
  for (const auto& [who, mode] : {std::pair{"dee", "combi/joint"}, {"lou", "combi/plane"}}) {
    shop.enter("mia", own(RoleGiven{who, Role::instructor}));
    shop.enter("mia", ChoosePin{who, "5555"});
    shop.enter("mia", fact(Appoint{who, TargetScope{mode}, true, Day{21000}}));
  }
  shop.wait(60);
  SignCheckout sign;
  sign.checkout = {"kim", "combi", 0, Outcome::passed, "dee"};
  sign.pin = "5555";
  sign.machine = "c1";
  sign.second = SecondAssessor{"lou", "5555"};
  no(shop.commit("dee", sign), "second", "Lou Brandt could not assess 'combi'");
  sign.second = SecondAssessor{"ivo", "2222"};
  CHECK(shop.commit("dee", sign));
}

TEST_CASE("Who was the second is named by it, for as long as details are kept") {
  TestShop shop = ready();
  shop.enter("dee", own(Printed{"Run sheet", 1, std::string(64, 'a'), "7K2Q9X"}));
  Rulebook rulebook = shop.store().rulebooks().back();
  rulebook.version += 1;
  rulebook.effective_from = shop.now() + 1;
  rulebook.keep_details = Period{PeriodUnit::days, 30};
  shop.enter("mia", PublishRulebook{rulebook});
  shop.enter("mia", own(RoleGiven{"noa", std::nullopt}));
  const auto may_go = [&] {
    return std::ranges::count(details_that_may_go(shop.store()), "noa", &MayGo::person) == 1;
  };
  CHECK_FALSE(may_go());
  shop.wait(40 * day);
  CHECK(may_go());
  shop.enter("dee", own(at(shop.now() + hour, "ivo", "noa")));
  CHECK_FALSE(may_go());
  shop.wait(40 * day);
  CHECK(may_go());
  EnterPaperSheet paper{signing("noa", ""), "7K2Q9X"};
  paper.sheet.pin.clear();
  REQUIRE(shop.from_paper("mia", paper, shop.now()));
  CHECK_FALSE(may_go());
}

TEST_CASE("What is told of somebody has where they were the second, and of the member who the second was",
          "[file]") {
  TestShop shop = ready();
  const RecordId booked = shop.enter("dee", own(at(noon, "ivo", "mia", "lou")));
  const auto done = shop.commit("ivo", signing());
  REQUIRE(done);
  const auto of_mia = export_person(shop.store(), "mia"), of_kim = export_person(shop.store(), "kim");
  REQUIRE((of_mia && of_kim));
  CHECK(of_mia->find("second_assessor") != std::string::npos);
  CHECK(of_mia->find("\"" + booked + "\"") != std::string::npos);
  CHECK(of_mia->find("\"witnessed\"") != std::string::npos);
  CHECK(of_kim->find("\"witnessed\"") != std::string::npos);
  CHECK(of_kim->find("Okafor") != std::string::npos);
}

}  // namespace wm::db::two_assessors
