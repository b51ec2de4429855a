// Hours, and how the shop books: what they refuse of a booking, and what they leave alone.
#include <catch2/catch.hpp>

#include "core/time/period.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

/// 16 March 2026, a Monday, at noon in Chicago.
constexpr Instant noon = evening + 2 * day - 6 * hour;
constexpr int mondays = 0;

Booking at(Instant from, const PersonId& person = "kim", const PersonId& assessor = "ivo") {
  return {person, assessor, "b1", "bandsaw", from, from + hour};
}
Booking for_purpose(Instant from, Purpose purpose, const PersonId& assessor = "ivo") {
  Booking out = at(from, "kim", assessor);
  out.purpose = purpose;
  return out;
}

void no(const Expected<Committed>& done, const std::string& what) {
  if (done) FAIL("was entered, though it should not: " << what);
  CHECK_THAT(done.error().what, Catch::Contains(what));
  CHECK_FALSE(done.error().where.empty());
  CHECK_FALSE(done.error().remedy.empty());
}

void publish(TestShop& shop, bool other_checks_out) {
  const int next = shop.store().rulebooks().back().version + 1;
  Rulebook rulebook = small_rulebook(next, shop.now() + 60);
  rulebook.tiers[1].other_checks_out = other_checks_out;
  shop.enter("mia", PublishRulebook{rulebook});
  shop.wait(120);
}

/// Kim is 16 today: born on 14 March 2010.
void make_kim_young(TestShop& shop) { shop.enter("dee", fact(Birth{"kim", Day{14682}})); }

}  // namespace

TEST_CASE("Without hours a time is booked whenever it is free") {
  TestShop shop;
  shop.enter("dee", own(at(evening + day + 9 * hour)));
  CHECK_FALSE(shop.store().hours().open);
}

TEST_CASE("A booking outside the shop's hours is refused, and one that ends with them is not") {
  TestShop shop;
  shop.enter("mia", own(WeekHours{Doing::open, mondays, 12 * 60, 14 * 60}));
  no(shop.commit("dee", own(at(noon - 1))), "not open and staffed from 2026-03-16 11:59");
  no(shop.commit("dee", own(at(noon + hour + 1))), "not open and staffed");
  no(shop.commit("dee", own(at(noon + day))), "not open and staffed");
  shop.enter("dee", own(at(noon)));
  shop.enter("dee", own(at(noon + hour)));
}

TEST_CASE("A shop that is open books only while somebody is on duty") {
  TestShop shop;
  shop.enter("mia", own(WeekHours{Doing::open, mondays, 8 * 60, 20 * 60}));
  const RecordId duty = shop.enter("mia", own(WeekHours{Doing::staffed, mondays, 13 * 60, 20 * 60}));
  no(shop.commit("dee", own(at(noon))), "not open and staffed");
  shop.enter("dee", own(at(noon + hour)));
  shop.enter("mia", StrikeOutRecord{duty, "nobody has to be"});
  shop.enter("dee", own(at(noon)));
}

TEST_CASE("On a day on which it is closed nothing is booked, whether or not it has weekly hours") {
  TestShop shop;
  const Day monday = day_of({2026, 3, 16});
  const OtherHours closed{"", Doing::open, monday, monday, {}, 1, "stocktaking"};
  const RecordId record = shop.enter("mia", own(closed));
  no(shop.commit("dee", own(at(noon))), "not open and staffed");
  shop.enter("dee", own(at(noon + day)));
  OtherHours open = closed;
  open.parts = {{12 * 60, 13 * 60}};
  shop.enter("mia", own(open));  // the later of two counts
  shop.enter("dee", own(at(noon)));
  no(shop.commit("dee", own(at(noon + hour))), "not open and staffed");
  shop.enter("mia", BlankRecord{record});
  CHECK(shop.store().entry(record) != nullptr);
}

TEST_CASE("Hours are those of the wall: an hour later by the sun once clocks have gone back") {
  TestShop shop;
  shop.enter("mia", own(WeekHours{Doing::open, 6, 12 * 60, 13 * 60}));
  const Instant before = evening + 225 * day - 6 * hour;  // 25 October, noon, the last Sunday of summer time
  no(shop.commit("dee", own(at(before + hour))), "not open");
  shop.enter("dee", own(at(before)));
  no(shop.commit("dee", own(at(before + 7 * day))), "not open and staffed from 2026-11-01 11:00");
  shop.enter("dee", own(at(before + 7 * day + hour)));
}

TEST_CASE("An assessor of whom hours are said is booked in them, less breaks, days away and busy times") {
  TestShop shop;
  shop.enter("mia", own(Hours{"ivo", mondays, 12 * 60, 18 * 60}));
  shop.enter("mia", own(Break{"ivo", mondays, 13 * 60, 14 * 60}));
  no(shop.commit("dee", own(at(noon - hour))), "Ivo Lindqvist is not in, or busy");
  no(shop.commit("dee", own(at(noon + hour))), "Ivo Lindqvist is not in, or busy");
  shop.enter("dee", own(at(noon)));
  shop.enter("ivo", own(Busy{"ivo", noon, noon + 30 * day, {{noon + 3 * hour, noon + 4 * hour}}}));
  no(shop.commit("dee", own(at(noon + 3 * hour))), "busy");
  shop.enter("ivo", own(Busy{"ivo", noon, noon + 30 * day, {}}));
  shop.enter("dee", own(at(noon + 3 * hour)));
  const Day next = day_of({2026, 3, 23});
  shop.enter("ivo", own(OtherHours{"ivo", Doing::open, next, next, {}, 1, ""}));
  no(shop.commit("dee", own(at(noon + 7 * day))), "not in, or busy");
}

TEST_CASE("An assessor of whom no hours are said is booked by arrangement, but not while busy") {
  TestShop shop;
  shop.enter("mia", own(Busy{"ivo", noon, noon + day, {{noon, noon + hour}}}));
  no(shop.commit("dee", own(at(noon + 1800))), "busy");
  shop.enter("dee", own(at(noon + hour)));
}

TEST_CASE(
    "An assessor whose hours were all taken back is booked at none, and one who is away for a day on the "
    "others") {
  TestShop shop;
  const Day next = day_of({2026, 3, 23});
  shop.enter("ivo", own(OtherHours{"ivo", Doing::open, next, next, {}, 1, "away"}));
  shop.enter("dee", own(at(noon)));
  no(shop.commit("dee", own(at(noon + 7 * day))), "not in, or busy");
  shop.enter("dee", own(at(noon + 8 * day)));
  const RecordId hours = shop.enter("mia", own(Hours{"mia", mondays, 12 * 60, 15 * 60}));
  Booking with_mia = at(noon + hour, "lou", "mia");
  const RecordId booked = shop.enter("dee", own(with_mia));
  CHECK(shop.store().still_stands(booked));
  shop.enter("mia", StrikeOutRecord{hours, "no longer here on Mondays"});
  const auto stands = shop.store().still_stands(booked);
  REQUIRE_FALSE(stands);
  CHECK_THAT(stands.error().what, Catch::Contains("not in, or busy"));
  with_mia.from = with_mia.from + hour;
  with_mia.to = with_mia.to + hour;
  no(shop.commit("dee", own(with_mia)), "not in, or busy");
}

TEST_CASE("A one-on-one under way stands only while whoever gives it is able to") {
  TestShop shop;
  const RecordId booked = shop.enter("dee", own(at(evening + hour)));
  shop.wait(hour + 600);
  shop.enter("dee", own(Attendance{booked, Turnout::arrived}));
  CHECK(shop.store().still_stands(booked));
  shop.enter("mia", fact(Suspend{"ivo", Everything{}, std::nullopt}));
  shop.wait(60);
  const auto stands = shop.store().still_stands(booked);
  REQUIRE_FALSE(stands);
  CHECK_THAT(stands.error().what, Catch::Contains("not able to assess"));
}

TEST_CASE("No more is booked than an assessor takes on, and the latest that was said of it counts") {
  TestShop shop;
  shop.enter("mia", own(TakesOn{"ivo", 60, {}, {}}));
  shop.enter("dee", own(at(noon)));
  no(shop.commit("dee", own(at(noon + 2 * hour))), "more than Ivo Lindqvist takes on");
  shop.enter("mia", own(TakesOn{"ivo", 180, 60, 60}));
  no(shop.commit("dee", own(at(noon + hour))), "more than Ivo Lindqvist takes on");
  shop.enter("dee", own(at(noon + 2 * hour)));
}

TEST_CASE("Nothing is booked on a unit while it has maintenance") {
  TestShop shop;
  shop.enter("mia", own(Upkeep{"b1", noon, noon + 2 * hour, "new belt"}));
  no(shop.commit("dee", own(at(noon + hour))), "has maintenance from 2026-03-16 12:00");
  shop.enter("dee", own(at(noon + 2 * hour)));
  Booking other = at(noon + hour);
  other.machine = "b2";
  shop.enter("dee", own(other));
}

TEST_CASE("Somebody under 18 is booked only while two adults are in the building") {
  TestShop shop;
  make_kim_young(shop);
  no(shop.commit("dee", own(at(noon))), "under 18");
  no(shop.commit("dee", own(at(noon, "lou", "kim"))), "not able to assess");
  const RecordId two = shop.enter("mia", own(WeekHours{Doing::staffed, mondays, 12 * 60, 14 * 60, 2}));
  shop.enter("dee", own(at(noon)));
  shop.enter("mia", StrikeOutRecord{two, "one has left"});
  no(shop.commit("dee", own(at(noon + hour))), "under 18");
  shop.enter("mia", own(Hours{"mia", mondays, 12 * 60, 15 * 60}));
  shop.enter("dee", own(at(noon + hour)));
  shop.enter("dee", own(at(noon + 5 * hour, "lou")));
}

TEST_CASE(
    "Where the tier asks for it, who taught somebody neither is booked for their check-out nor signs it") {
  TestShop shop;
  publish(shop, true);
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.enter("dee", own(for_purpose(evening + hour, Purpose::teach)));
  // What is to be taught is asked at the time of the check-out, not at that of the booking.
  CHECK(shop.store().first_taught("ivo", "kim", "bandsaw") == evening + hour);
  CHECK(shop.store().another_checks_out("bandsaw", noon));
  no(shop.commit("dee", own(at(noon))), "Ivo Lindqvist taught them");
  shop.wait(3 * hour);
  no(shop.commit("dee", own(at(noon))), "Ivo Lindqvist taught them");
  shop.enter("dee", own(at(noon, "lou")));
  shop.enter("dee", own(for_purpose(noon + hour, Purpose::practise)));
  shop.enter("dee", own(at(noon + 2 * hour, "kim", "mia")));
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  sign.pin = "2222";
  sign.machine = "b1";
  no(shop.commit("ivo", sign), "Ivo Lindqvist taught them");
  publish(shop, false);
  shop.enter("ivo", sign);
}

TEST_CASE("Teaching that did not take place is none") {
  TestShop shop;
  publish(shop, true);
  const RecordId lesson = shop.enter("dee", own(for_purpose(evening + hour, Purpose::teach)));
  shop.wait(3 * hour);
  shop.enter("dee", own(Attendance{lesson, Turnout::not_come}));
  shop.enter("dee", own(at(noon)));
}

TEST_CASE("Whoever did not come as often as the shop's rule has it is booked again after a rest") {
  TestShop shop;
  DiaryRules rules;
  rules.not_come = 2;
  rules.not_come_days = 30;
  rules.rest_days = 7;
  shop.enter("mia", own(rules));
  std::vector<RecordId> missed;
  for (int n = 0; n < 2; ++n) {
    missed.push_back(shop.enter("dee", own(at(shop.now() + hour))));
    shop.wait(day);
    missed.back() = shop.enter("dee", own(Attendance{missed.back(), Turnout::not_come}));
  }
  // Not come on the 14th and on the 15th: through the 22nd.
  no(shop.commit("dee", own(at(noon + 8 * day))), "through 2026-03-22");
  shop.enter("dee", own(at(noon + 8 * day, "lou")));
  shop.enter("mia", StrikeOutRecord{missed[0], "Kim was ill"});
  shop.enter("dee", own(at(noon + 9 * day)));
  shop.wait(8 * day);
  shop.enter("dee", own(at(noon + 10 * day)));
}

TEST_CASE("A time that is held is taken, given up when its while is over, and kept where it is confirmed") {
  TestShop shop;
  Booking held = at(noon);
  held.held_through = evening + hour;
  const RecordId first = shop.enter("dee", own(held));
  no(shop.commit("dee", own(at(noon, "lou"))), "booked already");
  shop.wait(hour);
  no(shop.commit("dee", own(Confirmed{first})), "given up since");
  shop.enter("dee", own(at(noon, "lou")));
  held.from = noon + hour;
  held.to = noon + 2 * hour;
  held.held_through = shop.now() + hour;
  const RecordId second = shop.enter("dee", own(held));
  shop.enter("dee", own(Confirmed{second}));
  no(shop.commit("dee", own(Confirmed{second})), "for certain already");
  shop.wait(2 * hour);
  no(shop.commit("dee", own(at(noon + hour, "lou"))), "booked already");
  held.held_through = noon + 2 * hour;
  no(shop.commit("dee", own(held)), "no longer than to its beginning");
}

TEST_CASE("What is moved leaves its time free, and can be moved on from where it is") {
  TestShop shop;
  const RecordId first = shop.enter("dee", own(at(noon)));
  Booking moved = at(noon + 1800);  // over its own time
  moved.instead_of = first;
  const RecordId second = shop.enter("dee", own(moved));
  no(shop.commit("dee", own(at(noon + 1800, "lou"))), "booked already");
  shop.enter("dee", own(at(noon - 1800, "lou")));
  moved = at(noon + 3 * hour);
  moved.instead_of = first;
  no(shop.commit("dee", own(moved)), "moved already");
  no(shop.commit("dee", own(Cancel{first, "ill"})), "has been moved");
  moved = at(noon + 3 * hour, "lou");
  moved.instead_of = second;
  no(shop.commit("dee", own(moved)), "for the same person");
  moved.instead_of = "none";
  no(shop.commit("dee", own(moved)), "no booking");
}

TEST_CASE("Two change places in one commit, or neither does") {
  TestShop shop;
  const RecordId kims = shop.enter("dee", own(at(noon))),
                 lous = shop.enter("dee", own(at(noon + hour, "lou")));
  Booking kim = at(noon + hour), lou = at(noon, "lou");
  kim.instead_of = kims;
  lou.instead_of = lous;
  const std::vector<Command> swap{shop.command("dee", own(Cancel{lous, "changed places"})),
                                  shop.command("dee", own(kim)), shop.command("dee", own(lou))};
  REQUIRE(shop.store().commit_all(swap));
  no(shop.commit("dee", own(at(noon, "kim"))), "booked already");
  no(shop.commit("dee", own(at(noon + hour, "lou"))), "booked already");
}

TEST_CASE("A strike-out brings no booking back into a time that is taken") {
  TestShop shop;
  const RecordId first = shop.enter("dee", own(at(noon)));
  Booking moved = at(noon + 1800);
  moved.instead_of = first;
  const RecordId second = shop.enter("dee", own(moved));
  const RecordId lous = shop.enter("dee", own(at(noon - 1800, "lou")));
  no(shop.commit("dee", StrikeOutRecord{second, "not moved"}), "booked already");
  const RecordId called_off = shop.enter("dee", own(Cancel{lous, "ill"}));
  shop.enter("dee", StrikeOutRecord{second, "not moved"});
  no(shop.commit("dee", StrikeOutRecord{called_off, "not ill"}), "booked already");
}

TEST_CASE("What has come between a booking and its time is said of it, and nothing where nothing has") {
  TestShop shop;
  const RecordId id = shop.enter("dee", own(at(noon)));
  const auto says = [&](const std::string& what) {
    const auto fine = shop.store().still_stands(id);
    REQUIRE_FALSE(fine);
    CHECK_THAT(fine.error().what, Catch::Contains(what));
  };
  CHECK(shop.store().still_stands(id));
  const RecordId lock = shop.enter("mia", fact(Lockout{"b1"}));
  says("out of service");
  shop.enter("mia", fact(Release{lock}));
  CHECK(shop.store().still_stands(id));
  const Day monday = day_of({2026, 3, 16});
  const RecordId closed = shop.enter("mia", own(OtherHours{"", Doing::open, monday, monday, {}, 1, ""}));
  says("not open and staffed");
  shop.enter("mia", StrikeOutRecord{closed, "open after all"});
  const RecordId paused = shop.enter("mia", fact(Suspend{"ivo", Everything{}, std::nullopt}));
  says("not able to assess");
  shop.enter("mia", fact(Reinstate{paused}));
  make_kim_young(shop);
  says("under 18");
}

TEST_CASE("Hours that are none are refused") {
  TestShop shop;
  no(shop.commit("mia", own(WeekHours{Doing::open, 7, 0, 60})), "no hours");
  no(shop.commit("mia", own(WeekHours{Doing::open, 0, 60, 60})), "no hours");
  no(shop.commit("mia", own(WeekHours{Doing::staffed, 0, 0, 60, 0})), "not on duty");
  no(shop.commit("mia", own(Break{"ivo", 0, 0, 1441})), "no hours");
  const Day d = day_of({2026, 3, 16});
  no(shop.commit("mia", own(OtherHours{"", Doing::open, d + 1, d, {}, 1, ""})), "before the first");
  no(shop.commit("mia", own(OtherHours{"", Doing::open, d, d, {{60, 30}}, 1, ""})), "no hours");
  no(shop.commit("mia", own(OtherHours{"nobody", Doing::open, d, d, {}, 1, ""})), "nobody with the id");
  no(shop.commit("mia", own(TakesOn{"ivo", {}, {}, 30})), "missing what it ends");
  no(shop.commit("mia", own(TakesOn{"ivo", 0, {}, {}})), "not so long");
  no(shop.commit("mia", own(Lasts{"lathe", 60})), "class 'lathe'");
  no(shop.commit("mia", own(Lasts{"bandsaw", 0})), "does not last so long");
  DiaryRules half;
  half.not_come = 3;
  no(shop.commit("mia", own(half)), "not whole");
  no(shop.commit("mia", own(Upkeep{"b1", noon, noon, ""})), "ends before it begins");
  no(shop.commit("mia", own(Upkeep{"b9", noon, noon + hour, ""})), "no machine");
  no(shop.commit("mia", own(Busy{"ivo", noon, noon + day, {{noon, noon}}})), "ends before it begins");
}

TEST_CASE("Hours and rules are the same when the file is opened again") {
  TestShop shop;
  shop.enter("mia", own(WeekHours{Doing::staffed, mondays, 60, 120, 2}));
  shop.enter("mia", own(OtherHours{"ivo",
                                   Doing::open,
                                   day_of({2026, 3, 16}),
                                   day_of({2026, 3, 17}),
                                   {{60, 90}, {100, 130}},
                                   1,
                                   "moving house"}));
  shop.enter("mia", own(Hours{"ivo", mondays, 60, 120}));
  shop.enter("mia", own(Break{"ivo", mondays, 70, 80}));
  shop.enter("mia", own(TakesOn{"ivo", 240, 120, 30}));
  shop.enter("mia", own(Lasts{"bandsaw", 60}));
  shop.enter("mia", own(Lasts{"bandsaw", 90}));
  shop.enter("mia", own(DiaryRules{60, 48, 3, 90, 30}));
  shop.enter("mia", own(Upkeep{"b1", noon, noon + hour, "new belt"}));
  shop.enter("mia", own(Busy{"ivo", noon, noon + day, {{noon, noon + hour}}}));
  const ShopHours hours = shop.store().hours();
  const DiaryRules rules = shop.store().diary_rules();
  CHECK(minutes_for(hours, "bandsaw") == 90);
  CHECK(hours.assessors.size() == 1);
  CHECK(hours.two_on_duty.weekly.size() == 1);
  CHECK(rules.longest_wait == 60);
  shop.reopen();
  CHECK(shop.store().hours() == hours);
  CHECK(shop.store().diary_rules() == rules);
}
