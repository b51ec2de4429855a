// Free slots against a judge that looks at every minute by itself.
#include "core/diary/slots.h"

#include <rapidcheck.h>
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/time/text.h"

namespace {

using namespace wm;

constexpr int week_minutes = 7 * 24 * 60;

Zone zone(const char* name) { return Zone::named(name).value(); }

/// Whether somebody is in at t: some day on which they had come by then and not yet gone.
bool in_at(const SlotQuestion& q, const PersonId& person, Instant t) {
  for (const WeeklyHours& each : q.hours) {
    if (each.person != person) continue;
    for (int back = -1; back <= 1; ++back) {
      const Day day = q.zone.day(t) + back;
      if ((day.number + 3) % 7 != each.weekday) continue;
      const auto wall = [&](int minute) {
        return minute == 1440 ? q.zone.start(day + 1) : q.zone.instant({day, minute / 60, minute % 60, 0});
      };
      if (wall(each.from_minute) <= t && t < wall(each.to_minute)) return true;
    }
  }
  return false;
}

/// Everything that must be so during one minute, and nothing that goes beyond it.
bool minute_fits(const SlotQuestion& q, const PersonId& assessor, const MachineId& unit, Instant t,
                 std::optional<Fit> granted) {
  if (granted != Fit::assessor_in && !in_at(q, assessor, t)) return false;
  for (const Booked& each : q.booked) {
    if (!(each.when.from <= t && t < each.when.to)) continue;
    const auto takes = [&](const PersonId& id) { return each.person == id || each.assessor == id; };
    if (granted != Fit::member_free && takes(q.person)) return false;
    if (granted != Fit::assessor_free && takes(assessor)) return false;
    if (granted != Fit::unit_free && each.machine == unit) return false;
  }
  return true;
}

bool fits(const SlotQuestion& q, const PersonId& assessor, const MachineId& unit, Interval when,
          std::optional<Fit> granted = std::nullopt) {
  if (assessor == q.person) return false;
  if (granted != Fit::member_ready && !q.ready(when)) return false;
  if (granted != Fit::assessor_able && !q.able(assessor, when)) return false;
  if (granted != Fit::together && q.together && !q.together(assessor, when)) return false;
  if (granted != Fit::takes_on && q.takes_on && !q.takes_on(assessor, when)) return false;
  if (granted != Fit::unit_in_service && !q.in_service(unit, when)) return false;
  for (Instant t = when.from; t < when.to; t = t + 60)
    if (!minute_fits(q, assessor, unit, t, granted)) return false;
  return true;
}

std::vector<Interval> times(const SlotQuestion& q) {
  std::vector<Interval> out;
  for (Instant t = q.from; t + 60 * q.minutes <= q.to; t = t + 1) {
    if (t.seconds % 60 != 0) continue;  // the zones below are off by whole minutes
    if (q.zone.local(t).minute % q.step == 0) out.push_back({t, t + 60 * q.minutes});
  }
  return out;
}

std::vector<Slot> judged(const SlotQuestion& q, std::optional<Fit> granted = std::nullopt) {
  std::vector<Slot> out;
  for (const Interval& when : times(q))
    for (const PersonId& assessor : q.assessors) {
      std::vector<MachineId> units;
      for (const MachineId& unit : q.units)
        if (fits(q, assessor, unit, when, granted)) units.push_back(unit);
      if (!units.empty()) out.push_back({when, assessor, units.front(), when, units.size()});
    }
  return out;
}

const Instant before_spring = parse_instant("2026-03-07T18:00:00Z").value();  // clocks go forward on the 8th
const Instant before_autumn = parse_instant("2026-10-31T18:00:00Z").value();  // and back on 1 November

/// A question of a day and a half across a change of the clocks or an ordinary night, with a few of
/// everything.
SlotQuestion make_question() {
  SlotQuestion q;
  q.zone = zone(*rc::gen::element("America/New_York", "Australia/Lord_Howe", "Asia/Kathmandu", "UTC"));
  const Instant start =
      *rc::gen::element(before_spring, before_autumn, parse_instant("2026-04-04T02:00:00Z").value());
  q.from = start + *rc::gen::inRange(0, 4000);
  q.to = q.from + 60 * *rc::gen::inRange(60, 2200);
  q.minutes = *rc::gen::element(15, 45, 60, 90);
  q.step = *rc::gen::element(15, 30, 60);
  q.person = "p0";
  q.assessors = {"p1", "p2", "p0"};
  q.units = {"m1", "m2"};
  for (int i = *rc::gen::inRange(0, 12); i > 0; --i) {
    const int from = 15 * *rc::gen::inRange(0, 90);
    q.hours.push_back({*rc::gen::element<PersonId>("p0", "p1", "p2"), *rc::gen::element(4, 5, 6, 0),
                       from,  // Friday to Monday

                       std::min(1440, from + 15 * *rc::gen::inRange(1, 50))});
  }
  for (int i = *rc::gen::inRange(0, 6); i > 0; --i) {
    const Instant from = start + 900 * *rc::gen::inRange(0, 150);
    q.booked.push_back({*rc::gen::element<PersonId>("p0", "p1", "p3"),
                        *rc::gen::element<PersonId>("p1", "p2", "p4"),
                        *rc::gen::element<MachineId>("m1", "m2", "m3"),
                        {from, from + 900 * *rc::gen::inRange(1, 40)}});
  }
  const Instant ready = start + 900 * *rc::gen::inRange(-50, 100),
                able = start + 900 * *rc::gen::inRange(-20, 150),
                fixed = start + 900 * *rc::gen::inRange(-100, 100);
  q.ready = [ready](const Interval& when) { return when.from >= ready; };
  q.able = [able](const PersonId& who, const Interval& when) { return who == "p2" || when.to <= able; };
  const Instant staffed = start + 900 * *rc::gen::inRange(-50, 150);
  if (*rc::gen::inRange(0, 3) > 0)
    q.together = [staffed](const PersonId& who, const Interval& when) {
      return when.from >= staffed + (who == "p1" ? 0 : 7200);
    };
  if (*rc::gen::inRange(0, 3) > 0)
    q.takes_on = [staffed](const PersonId& who, const Interval& when) {
      return when.to <= staffed + 86400 || who == "p2";
    };
  q.in_service = [fixed](const MachineId& unit, const Interval& when) {
    return unit == "m2" || when.from >= fixed;
  };
  return q;
}

/// At full size throughout: small ones are too short for a slot.
SlotQuestion any_question() { return *rc::gen::resize(rc::kNominalSize, rc::gen::exec(make_question)); }

bool alike(const Slot& a, const Slot& b) {
  return a.when == b.when && a.assessor == b.assessor && a.unit == b.unit && a.units == b.units;
}

bool alike(const std::vector<Slot>& a, const std::vector<Slot>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](const Slot& x, const Slot& y) { return alike(x, y); });
}

constexpr Fit all_fits[] = {Fit::member_ready, Fit::assessor_able, Fit::assessor_in,
                            Fit::together,     Fit::takes_on,      Fit::unit_in_service,
                            Fit::member_free,  Fit::assessor_free, Fit::unit_free};

}  // namespace

TEST_CASE("The slots are those that fit at every minute, across changes of the clocks too") {
  CHECK(rc::check([] {
    const SlotQuestion q = any_question();
    const std::vector<Slot> slots = fitting(q);
    RC_ASSERT(alike(slots, judged(q)));
    RC_CLASSIFY(!slots.empty(), "some slot");
    for (const Slot& slot : slots)
      RC_ASSERT(slot.assessor_in.from <= slot.when.from && slot.when.to <= slot.assessor_in.to);
  }));
}

TEST_CASE("Unit by unit, a slot is there for each that fits at every minute") {
  CHECK(rc::check([] {
    const SlotQuestion q = any_question();
    std::vector<Slot> expected;
    for (const Slot& slot : fitting(q))
      for (const MachineId& unit : q.units)
        if (fits(q, slot.assessor, unit, slot.when)) {
          expected.push_back(slot);
          expected.back().unit = unit;
        }
    RC_ASSERT(fitting_units(q) == expected);
  }));
}

TEST_CASE(
    "Slots booked side by side put nobody in two places, and leave no room for one more of the same "
    "assessor") {
  CHECK(rc::check([] {
    const std::vector<Slot> all = fitting(any_question());
    const std::vector<Slot> chosen = side_by_side(all);
    for (const Slot& slot : all)
      RC_ASSERT(std::any_of(chosen.begin(), chosen.end(), [&](const Slot& other) {
        return other.assessor == slot.assessor && overlap(other.when, slot.when);
      }));
    for (std::size_t i = 0; i < chosen.size(); ++i)
      for (std::size_t j = 0; j < i; ++j)
        RC_ASSERT(chosen[i].assessor != chosen[j].assessor || !overlap(chosen[i].when, chosen[j].when));
  }));
}

TEST_CASE("A slot that was booked is no slot any more, nor is any that would put somebody in two places") {
  CHECK(rc::check([] {
    SlotQuestion q = any_question();
    const std::vector<Slot> slots = fitting(q);
    RC_PRE(!slots.empty());
    const Slot taken = *rc::gen::elementOf(slots);
    q.booked.push_back({"p9", taken.assessor, taken.unit, taken.when});
    for (const Slot& left : fitting(q))
      RC_ASSERT(!overlap(left.when, taken.when) ||
                (left.assessor != taken.assessor && left.unit != taken.unit));
  }));
}

TEST_CASE("What would help is what makes a slot by itself, and what is never so is so at no time") {
  CHECK(rc::check([] {
    const SlotQuestion q = any_question();
    const WhyNone why = why_none(q);
    for (Fit fit : all_fits) RC_ASSERT(why.would_help.contains(fit) == !judged(q, fit).empty());
    const std::vector<Interval> all = times(q);
    const auto never = [&](const auto& so) { return std::none_of(all.begin(), all.end(), so); };
    RC_ASSERT(why.never.contains(Fit::member_ready) == never(q.ready));
    RC_ASSERT(why.never.contains(Fit::assessor_able) ==
              never([&](const Interval& when) { return q.able("p1", when) || q.able("p2", when); }));
    RC_ASSERT(why.never.contains(Fit::together) == never([&](const Interval& when) {
                return !q.together || q.together("p1", when) || q.together("p2", when);
              }));
    RC_ASSERT(why.never.contains(Fit::unit_in_service) == never([&](const Interval& when) {
                return q.in_service("m1", when) || q.in_service("m2", when);
              }));
  }));
}

TEST_CASE("Somebody is in from five to eight by the wall clock, in summer and in winter") {
  const Zone here = zone("America/New_York");
  const std::vector<WeeklyHours> hours{{"p", 6, 17 * 60, 20 * 60}};
  const Instant from = parse_instant("2026-10-25T00:00:00Z").value();
  const auto in = times_in(here, hours, "p", from, from + 8 * 86400);
  REQUIRE(in.size() == 2);
  CHECK(to_text(in[0].from) == "2026-10-25T21:00:00Z");  // four hours behind
  CHECK(to_text(in[1].from) == "2026-11-01T22:00:00Z");  // five
  CHECK(to_text(in[1].to) == "2026-11-02T01:00:00Z");
}

TEST_CASE("Hours across the change of the clocks are shorter in spring and longer in autumn") {
  const Zone here = zone("America/New_York");
  const std::vector<WeeklyHours> hours{{"p", 6, 0, 6 * 60}};
  const auto length = [&](Instant from) {
    const auto in = times_in(here, hours, "p", from, from + 86400);
    REQUIRE(in.size() == 1);
    return in[0].to.seconds - in[0].from.seconds;
  };
  CHECK(length(before_spring) == 5 * 3600);
  CHECK(length(before_autumn) == 7 * 3600);
}

TEST_CASE("Hours that touch are one stretch, over midnight too") {
  const std::vector<WeeklyHours> hours{{"p", 0, 22 * 60, 1440}, {"p", 1, 0, 60}, {"p", 1, 60, 120}};
  const Instant monday = parse_instant("2026-11-23T00:00:00Z").value();
  const auto in = times_in(Zone::utc(), hours, "p", monday, monday + 60 * (week_minutes - 1440));
  REQUIRE(in.size() == 1);
  CHECK(in[0].to.seconds - in[0].from.seconds == 4 * 3600);
}

TEST_CASE("One booking may end at the minute at which the next begins") {
  SlotQuestion q;
  q.person = "p0";
  q.assessors = {"p1"};
  q.units = {"m1"};
  q.from = parse_instant("2026-11-23T08:00:00Z").value();
  q.to = q.from + 4 * 3600;
  q.hours = {{"p1", 0, 9 * 60, 11 * 60}};
  q.booked = {{"p2", "p1", "m1", {q.from + 3600, q.from + 2 * 3600}}};
  q.ready = [](const Interval&) { return true; };
  q.able = [](const PersonId&, const Interval&) { return true; };
  q.in_service = [](const MachineId&, const Interval&) { return true; };
  const auto slots = fitting(q);
  REQUIRE(slots.size() == 1);
  CHECK(to_text(slots[0].when.from) == "2026-11-23T10:00:00Z");
}
