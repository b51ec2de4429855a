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

/// One assessor, or two.
using Those = std::vector<PersonId>;

/// Everything that must be so during one minute, and nothing that goes beyond it.
bool minute_fits(const SlotQuestion& q, const Those& those, const MachineId& unit, Instant t,
                 std::optional<Fit> granted) {
  for (const PersonId& each : those)
    if (granted != Fit::assessor_in && !in_at(q, each, t)) return false;
  for (const Booked& each : q.booked) {
    if (!(each.when.from <= t && t < each.when.to)) continue;
    const auto takes = [&](const PersonId& id) {
      return each.person == id || each.assessor == id || each.second == id;
    };
    if (granted != Fit::member_free && takes(q.person)) return false;
    if (granted != Fit::assessor_free && std::any_of(those.begin(), those.end(), takes)) return false;
    if (granted != Fit::unit_free && each.machine == unit) return false;
  }
  return true;
}

bool fits(const SlotQuestion& q, const Those& those, const MachineId& unit, Interval when,
          std::optional<Fit> granted = std::nullopt) {
  if (granted != Fit::member_ready && !q.ready(when)) return false;
  const PersonId second = those.size() > 1 ? those[1] : "";
  if (granted != Fit::together && q.together && !q.together(those[0], second, when)) return false;
  for (const PersonId& each : those) {
    if (each == q.person) return false;
    if (granted != Fit::assessor_able && !q.able(each, when)) return false;
    if (granted != Fit::takes_on && q.takes_on && !q.takes_on(each, when)) return false;
  }
  if (granted != Fit::unit_in_service && !q.in_service(unit, when)) return false;
  for (Instant t = when.from; t < when.to; t = t + 60)
    if (!minute_fits(q, those, unit, t, granted)) return false;
  return true;
}

/// Whoever might, one or two at a time, in the order of the list.
std::vector<Those> everybody(const SlotQuestion& q, const Interval& when, std::optional<Fit> granted) {
  const bool two = q.two_assessors && q.two_assessors(when) && granted != Fit::two_assessors;
  std::vector<Those> out;
  for (std::size_t i = 0; i < q.assessors.size(); ++i) {
    if (!two) out.push_back({q.assessors[i]});
    for (std::size_t j = i + 1; two && j < q.assessors.size(); ++j)
      out.push_back({q.assessors[i], q.assessors[j]});
  }
  return out;
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
    for (const Those& each : everybody(q, when, granted)) {
      std::vector<MachineId> units;
      for (const MachineId& unit : q.units)
        if (fits(q, each, unit, when, granted)) units.push_back(unit);
      if (units.empty()) continue;
      out.push_back({when, each[0], units.front(), when, units.size(), each.size() > 1 ? each[1] : ""});
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
  const Instant two_from = start + 900 * *rc::gen::inRange(-50, 50);  // as of another rulebook
  if (*rc::gen::inRange(0, 2) == 0)
    q.two_assessors = [two_from](const Interval& when) { return when.from >= two_from; };
  q.assessors = {"p1", "p2", "p0", "p3"};
  q.units = {"m1", "m2"};
  for (int i = *rc::gen::inRange(0, q.two_assessors ? 30 : 12); i > 0; --i) {
    const int from = 15 * *rc::gen::inRange(0, 90);
    q.hours.push_back({*rc::gen::element<PersonId>("p0", "p1", "p2", "p3"), *rc::gen::element(4, 5, 6, 0),
                       from,  // Friday to Monday

                       std::min(1440, from + 15 * *rc::gen::inRange(1, 50))});
  }
  for (int i = *rc::gen::inRange(0, 6); i > 0; --i) {
    const Instant from = start + 900 * *rc::gen::inRange(0, 150);
    q.booked.push_back({*rc::gen::element<PersonId>("p0", "p1", "p3"),
                        *rc::gen::element<PersonId>("p1", "p2", "p4"),
                        *rc::gen::element<MachineId>("m1", "m2", "m3"),
                        {from, from + 900 * *rc::gen::inRange(1, 40)},
                        *rc::gen::element<PersonId>("", "", "p0", "p3", "p4")});
  }
  const Instant ready = start + 900 * *rc::gen::inRange(-50, 100),
                able = start + 900 * *rc::gen::inRange(-20, 150),
                fixed = start + 900 * *rc::gen::inRange(-100, 100);
  q.ready = [ready](const Interval& when) { return when.from >= ready; };
  q.able = [able](const PersonId& who, const Interval& when) { return who == "p2" || when.to <= able; };
  const Instant staffed = start + 900 * *rc::gen::inRange(-50, 150);
  if (*rc::gen::inRange(0, 3) > 0)
    q.together = [staffed](const PersonId& who, const PersonId& second, const Interval& when) {
      return when.from >= staffed + (who == "p1" || second == "p3" ? 0 : 7200);
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
  return a.when == b.when && a.assessor == b.assessor && a.second == b.second && a.unit == b.unit &&
         a.units == b.units;
}

bool alike(const std::vector<Slot>& a, const std::vector<Slot>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](const Slot& x, const Slot& y) { return alike(x, y); });
}

constexpr Fit all_fits[] = {Fit::member_ready,  Fit::assessor_able, Fit::assessor_in,     Fit::two_assessors,
                            Fit::together,      Fit::takes_on,      Fit::unit_in_service, Fit::member_free,
                            Fit::assessor_free, Fit::unit_free};

}  // namespace

TEST_CASE("The slots are those that fit at every minute, across changes of the clocks too") {
  CHECK(rc::check([] {
    const SlotQuestion q = any_question();
    const std::vector<Slot> slots = fitting(q);
    RC_ASSERT(alike(slots, judged(q)));
    RC_CLASSIFY(!slots.empty(), "some slot");
    RC_CLASSIFY(!slots.empty() && !slots.back().second.empty(), "some slot with two");
    for (const Slot& slot : slots) {
      RC_ASSERT(slot.assessor_in.from <= slot.when.from && slot.when.to <= slot.assessor_in.to);
      for (const Instant t : {slot.assessor_in.from, slot.assessor_in.to - 1})
        RC_ASSERT(in_at(q, slot.assessor, t) && (slot.second.empty() || in_at(q, slot.second, t)));
    }
  }));
}

TEST_CASE("Unit by unit, a slot is there for each that fits at every minute") {
  CHECK(rc::check([] {
    const SlotQuestion q = any_question();
    std::vector<Slot> expected;
    for (const Slot& slot : fitting(q))
      for (const MachineId& unit : q.units)
        if (fits(q, slot.second.empty() ? Those{slot.assessor} : Those{slot.assessor, slot.second}, unit,
                 slot.when)) {
          expected.push_back(slot);
          expected.back().unit = unit;
        }
    RC_ASSERT(fitting_units(q) == expected);
  }));
}

TEST_CASE(
    "Slots booked side by side leave no room for one more of the same assessor, and put nobody in two "
    "places "
    "but to show another with whom they could be") {
  CHECK(rc::check([] {
    const std::vector<Slot> all = fitting(any_question());
    const std::vector<Slot> chosen = side_by_side(all);
    const auto of = [](const Slot& slot) {
      return slot.second.empty() ? Those{slot.assessor} : Those{slot.assessor, slot.second};
    };
    const auto is_in = [&](const PersonId& who, const Slot& slot) {
      return who == slot.assessor || who == slot.second;
    };
    for (const Slot& slot : all)
      for (const PersonId& who : of(slot))
        RC_ASSERT(std::any_of(chosen.begin(), chosen.end(), [&](const Slot& other) {
          return is_in(who, other) && overlap(other.when, slot.when);
        }));
    for (std::size_t i = 0; i < chosen.size(); ++i) {
      const Those those = of(chosen[i]);
      // Somebody of each is in none that began before and is not over.
      RC_ASSERT(std::any_of(those.begin(), those.end(), [&](const PersonId& who) {
        return std::none_of(
            chosen.begin(), chosen.begin() + static_cast<std::ptrdiff_t>(i),
            [&](const Slot& other) { return is_in(who, other) && overlap(other.when, chosen[i].when); });
      }));
    }
  }));
}

TEST_CASE("A slot that was booked is no slot any more, nor is any that would put somebody in two places") {
  CHECK(rc::check([] {
    SlotQuestion q = any_question();
    const std::vector<Slot> slots = fitting(q);
    RC_PRE(!slots.empty());
    const Slot taken = *rc::gen::elementOf(slots);
    q.booked.push_back({"p9", taken.assessor, taken.unit, taken.when, taken.second});
    for (const Slot& left : fitting(q)) {
      if (!overlap(left.when, taken.when)) continue;
      RC_ASSERT(left.unit != taken.unit);
      for (const PersonId& who : {taken.assessor, taken.second})
        RC_ASSERT(who.empty() || (left.assessor != who && left.second != who));
    }
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
    RC_ASSERT(why.never.contains(Fit::assessor_able) == never([&](const Interval& when) {
                return q.able("p1", when) || q.able("p2", when) || q.able("p3", when);
              }));
    RC_ASSERT(
        why.never.contains(Fit::together) == never([&](const Interval& when) {
          if (!q.together) return true;
          if (!q.two_assessors || !q.two_assessors(when))
            return q.together("p1", "", when) || q.together("p2", "", when) || q.together("p3", "", when);
          return q.together("p1", "p2", when) || q.together("p1", "p3", when) || q.together("p2", "p3", when);
        }));
    // Two who could each come, whatever member and units are like.
    const auto could_come = [&](const PersonId& who, const Interval& when) {
      if (!q.able(who, when) || (q.takes_on && !q.takes_on(who, when))) return false;
      for (Instant t = when.from; t < when.to; t = t + 60) {
        if (!in_at(q, who, t)) return false;
        for (const Booked& each : q.booked)
          if (each.when.from <= t && t < each.when.to &&
              (each.person == who || each.assessor == who || each.second == who))
            return false;
      }
      return true;
    };
    RC_ASSERT(why.never.contains(Fit::two_assessors) == never([&](const Interval& when) {
                return !q.two_assessors || !q.two_assessors(when) ||
                       could_come("p1", when) + could_come("p2", when) + could_come("p3", when) > 1;
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

TEST_CASE("Where two are asked for, every two who are in are found once, whichever is named first") {
  SlotQuestion q;
  q.person = "p0";
  q.assessors = {"p3", "p0", "p1", "p2"};
  q.two_assessors = [](const Interval&) { return true; };
  q.units = {"m1"};
  q.from = parse_instant("2026-11-23T08:00:00Z").value();
  q.to = q.from + 4 * 3600;
  q.hours = {{"p0", 0, 9 * 60, 10 * 60},
             {"p1", 0, 8 * 60, 10 * 60},
             {"p2", 0, 9 * 60, 12 * 60},
             {"p3", 0, 9 * 60, 10 * 60}};
  q.ready = [](const Interval&) { return true; };
  q.able = [](const PersonId&, const Interval&) { return true; };
  q.in_service = [](const MachineId&, const Interval&) { return true; };
  const Interval nine{q.from + 3600, q.from + 7200};
  CHECK(fitting(q) == std::vector<Slot>{{nine, "p3", "m1", nine, 1, "p1"},
                                        {nine, "p3", "m1", nine, 1, "p2"},
                                        {nine, "p1", "m1", nine, 1, "p2"}});
  // Each of them is in one of those that are shown.
  CHECK(side_by_side(fitting(q)).size() == 2);
  // One by themselves is none, and is said to be what is missing.
  q.assessors = {"p0", "p2"};
  CHECK(fitting(q).empty());
  CHECK(why_none(q) == WhyNone{{Fit::two_assessors}, {Fit::two_assessors}});
}
