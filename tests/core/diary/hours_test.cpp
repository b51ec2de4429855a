// Hours by the wall clock: against Python's zoneinfo where clocks change, and against a judge that looks at
// every quarter hour.
#include "core/diary/hours.h"

#include <rapidcheck.h>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdio>
#include <memory>

#include "core/time/text.h"

namespace {

using namespace wm;

Zone zone_of(const char* name) { return Zone::named(name).value(); }
Day day(const char* text) { return parse_day(text).value(); }
int weekday_of(Day d) { return (d.number + 3) % 7; }

std::string shown(const Zone& zone, const std::vector<Interval>& times) {
  std::string out;
  char text[64];
  for (const Interval& each : times) {
    const LocalTime from = zone.local(each.from), to = zone.local(each.to);
    std::snprintf(text, sizeof text, "%02d:%02d-%02d:%02d ", from.hour, from.minute, to.hour, to.minute);
    out += to_text(from.day).substr(5) + " " + text;
  }
  return out;
}

/// The whole week from ten to six, with an hour's break at one on Mondays.
Schedule ten_to_six() {
  Schedule out;
  for (int d = 0; d < 7; ++d) out.weekly.push_back({d, {600, 1080}});
  out.breaks = {{0, {780, 840}}};
  return out;
}

std::string week_of(const Schedule& schedule, const char* first, int days,
                    const char* where = "America/New_York") {
  const Zone here = zone_of(where);
  return shown(here, times_of(here, schedule, here.start(day(first)), here.start(day(first) + days)));
}

/// One instant, by itself: what the schedule says of each day that may reach to it.
bool in_at(const Zone& here, const Schedule& s, Instant t) {
  const auto covers = [&](Day d, const WallStretch& w) {
    const auto wall = [&](int m) {
      return m == 1440 ? here.start(d + 1) : here.instant({d, m / 60, m % 60, 0});
    };
    return wall(w.from_minute) <= t && t < wall(w.to_minute);
  };
  for (const Interval& each : s.busy)
    if (each.from <= t && t < each.to) return false;
  for (int back = -1; back <= 1; ++back) {
    const Day d = here.day(t) + back;
    const OtherDays* other = nullptr;
    for (const OtherDays& each : s.other)
      if (each.first <= d && d <= each.last) other = &each;
    const auto weekly = [&](const std::vector<OnWeekday>& all) {
      return std::any_of(all.begin(), all.end(), [&](const OnWeekday& each) {
        return each.weekday == weekday_of(d) && covers(d, each.when);
      });
    };
    if (other) {
      for (const WallStretch& each : other->hours)
        if (covers(d, each)) return true;
    } else if (weekly(s.weekly) && !weekly(s.breaks)) {
      return true;
    }
  }
  return false;
}

WallStretch any_stretch() {
  const int from = 15 * *rc::gen::inRange(0, 95);
  return {from, std::min(1440, from + 15 * *rc::gen::inRange(1, 40))};
}

Schedule any_schedule(Day monday) {
  Schedule out;
  for (int i = *rc::gen::inRange(0, 10); i > 0; --i)
    out.weekly.push_back({*rc::gen::inRange(0, 7), any_stretch()});
  for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
    out.breaks.push_back({*rc::gen::inRange(0, 7), any_stretch()});
  for (int i = *rc::gen::inRange(0, 3); i > 0; --i) {
    const Day first = monday + *rc::gen::inRange(-2, 8);
    OtherDays other{first, first + *rc::gen::inRange(0, 3), {}};
    for (int j = *rc::gen::inRange(0, 3); j > 0; --j) other.hours.push_back(any_stretch());
    out.other.push_back(std::move(other));
  }
  for (int i = *rc::gen::inRange(0, 3); i > 0; --i) {
    const Instant from{std::int64_t{86400} * monday.number + 900 * *rc::gen::inRange(0, 600)};
    out.busy.push_back({from, from + 900 * *rc::gen::inRange(1, 60)});
  }
  return out;
}

}  // namespace

TEST_CASE("A break is cut out of the week's hours") {
  CHECK(week_of(ten_to_six(), "2026-11-23", 2) == "11-23 10:00-13:00 11-23 14:00-18:00 11-24 10:00-18:00 ");
}

TEST_CASE(
    "A closure has no hours, a day that is otherwise has its own, and the last that covers a day counts") {
  Schedule s = ten_to_six();
  s.other = {{day("2026-11-23"), day("2026-11-25"), {}},
             {day("2026-11-24"), day("2026-11-24"), {{720, 780}, {840, 900}}}};
  CHECK(week_of(s, "2026-11-22", 5) ==
        "11-22 10:00-18:00 11-24 12:00-13:00 11-24 14:00-15:00 11-26 10:00-18:00 ");
}

TEST_CASE("What somebody is busy with is cut out of whatever hours there are") {
  Schedule s = ten_to_six();
  const Instant noon = zone_of("America/New_York").instant({day("2026-11-24"), 12, 0, 0});
  s.busy = {{noon, noon + 1800}, {noon + 900, noon + 3600}, {noon + 5 * 3600, noon + 20 * 3600}};
  CHECK(week_of(s, "2026-11-24", 1) == "11-24 10:00-12:00 11-24 13:00-17:00 ");
}

TEST_CASE(
    "Hours that lie in the hour that clocks leave out are none, and those that reach into it end or begin at "
    "the jump") {
  Schedule s;
  s.weekly = {{6, {130, 170}}};
  CHECK(week_of(s, "2026-03-08", 1).empty());
  s.weekly = {{6, {60, 150}}};
  CHECK(week_of(s, "2026-03-08", 1) == "03-08 01:00-03:00 ");
  s.weekly = {{6, {150, 240}}};
  CHECK(week_of(s, "2026-03-08", 1) == "03-08 03:00-04:00 ");
}

TEST_CASE("A whole day has 23 hours, 25, or half an hour more, where clocks change") {
  Schedule s;
  s.weekly = {{6, {0, 1440}}};
  const auto hours = [&](const char* where, const char* on) {
    const Zone here = zone_of(where);
    const auto times = times_of(here, s, here.start(day(on)), here.start(day(on) + 1));
    REQUIRE(times.size() == 1);
    return static_cast<double>(times[0].to.seconds - times[0].from.seconds) / 3600;
  };
  CHECK(hours("America/New_York", "2026-03-08") == 23);
  CHECK(hours("America/New_York", "2026-11-01") == 25);
  CHECK(hours("Australia/Lord_Howe", "2026-10-04") == 23.5);
}

TEST_CASE(
    "Stretches of the wall clock begin and end where Python's zoneinfo has them, around changes of the "
    "clocks") {
  const std::string command = std::string("python3 '") + WM_TESTS + "/reference/hours.py' 40";
  const std::unique_ptr<FILE, int (*)(FILE*)> facts(popen(command.c_str(), "r"), pclose);
  REQUIRE(facts);
  char name[128];
  int number = 0, from = 0, to = 0;
  long long begins = 0, ends = 0;
  std::size_t compared = 0, wrong = 0;
  while (std::fscanf(facts.get(), "%127s %d %d %d %lld %lld", name, &number, &from, &to, &begins, &ends) ==
         6) {
    const auto here = Zone::named(name);
    if (!here) continue;  // the machine's own, no IANA name
    Schedule s;
    s.weekly = {{weekday_of({number}), {from, to}}};
    const auto times = times_of(*here, s, here->start({number - 1}), here->start({number + 2}));
    ++compared;
    const bool right = begins >= ends ? times.empty() : times == std::vector<Interval>{{{begins}, {ends}}};
    if (!right && ++wrong < 10)
      UNSCOPED_INFO(name << " " << number << " " << from << " to " << to << ", Python " << begins << " to "
                         << ends);
  }
  CHECK(wrong == 0);
  CHECK(compared > 1000);
}

TEST_CASE("At every quarter hour of a week a schedule says what each of its parts says") {
  CHECK(rc::check([] {
    const Zone here = zone_of(*rc::gen::element("America/New_York", "Australia/Lord_Howe", "Asia/Kathmandu"));
    const Day monday = *rc::gen::element(day("2026-03-02"), day("2026-10-26"), day("2026-09-28"));
    const Schedule s =
        *rc::gen::resize(rc::kNominalSize, rc::gen::exec([&] { return any_schedule(monday); }));
    const Instant from = here.start(monday), to = here.start(monday + 8);
    const std::vector<Interval> times = times_of(here, s, from, to);
    for (std::size_t i = 0; i < times.size(); ++i) {
      RC_ASSERT(times[i].from < times[i].to && overlap(times[i], {from, to}));
      RC_ASSERT(i == 0 || times[i - 1].to < times[i].from);
    }
    for (Instant t = from; t < to; t = t + 900) {
      const bool in = std::any_of(times.begin(), times.end(),
                                  [&](const Interval& each) { return each.from <= t && t < each.to; });
      RC_ASSERT(in == in_at(here, s, t));
    }
  }));
}

TEST_CASE("What is in both, and in one and not the other, at every second") {
  CHECK(rc::check([] {
    const auto any = [] {
      std::vector<Interval> out;
      for (int i = *rc::gen::inRange(0, 8); i > 0; --i) {
        const Instant from{*rc::gen::inRange(0, 60)};
        out.push_back({from, from + *rc::gen::inRange(-1, 20)});
      }
      return out;
    };
    const auto first = any(), second = any();
    const auto a = joined(first), b = joined(second);
    const auto holds = [](const std::vector<Interval>& all, Instant t) {
      return std::any_of(all.begin(), all.end(),
                         [&](const Interval& each) { return each.from <= t && t < each.to; });
    };
    for (Instant t{0}; t < Instant{90}; t = t + 1) {
      RC_ASSERT(holds(a, t) == holds(first, t));
      RC_ASSERT(holds(common(a, b), t) == (holds(a, t) && holds(b, t)));
      RC_ASSERT(holds(without(a, b), t) == (holds(a, t) && !holds(b, t)));
    }
    RC_ASSERT(joined(a) == a);
    RC_ASSERT(joined(without(a, b)) == without(a, b));
  }));
}

TEST_CASE(
    "A one-on-one is offered while its assessor is in, the shop open and staffed, and no unit under "
    "maintenance") {
  ShopHours hours;
  hours.open = ten_to_six();
  hours.staffed = Schedule{{{1, {960, 1440}}}, {}, {}, {}};  // Tuesdays from four
  hours.assessors = {{"ana", Schedule{{{1, {840, 1200}}}, {}, {}, {}}, 120, {}},
                     {"bo", {}, {}, Stretch{180, 30}}};
  hours.lengths = {{"lathe", 30}};
  SlotQuestion q;
  q.zone = zone_of("America/New_York");
  q.person = "wim";
  q.units = {"m1"};
  q.from = q.zone.start(day("2026-11-23"));
  q.to = q.zone.start(day("2026-11-30"));
  q.step = 30;
  q.ready = [](const Interval&) { return true; };
  q.able = [](const PersonId&, const Interval&) { return true; };
  q.in_service = [](const MachineId&, const Interval&) { return true; };
  const Instant four = q.zone.instant({day("2026-11-24"), 16, 0, 0});
  hours.maintenance = {{"m1", {four + 1800, four + 3600}}};
  ask_hours(q, hours, "lathe/wood");
  CHECK(q.assessors == std::vector<PersonId>{"ana", "bo"});
  std::vector<Instant> offered;
  for (const Slot& each : fitting(q)) {
    CHECK(each.assessor == "ana");
    CHECK(each.when.to.seconds - each.when.from.seconds == 1800);
    offered.push_back(each.when.from);
  }
  CHECK(offered == std::vector<Instant>{four, four + 3600, four + 5400});
  CHECK(limits_of(hours) == std::vector<AssessorLimits>{{"ana", 120, {}}, {"bo", {}, Stretch{180, 30}}});
  CHECK(minutes_for(hours, "saw") == 60);
}
