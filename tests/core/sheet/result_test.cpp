// The suggested result against the rule said anew, one line at a time, for every sheet of up to three lines.
#include "core/sheet/result.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <functional>
#include <string>

namespace {

using namespace wm;

constexpr Mark all_marks[] = {Mark::none, Mark::shown, Mark::shown_when_asked, Mark::not_shown};

struct Seen {
  bool critical;
  Mark first, second;
};

enum class Line { open, fine, bad };

/// The rule of core/sheet/README.md as a table of one line.
Line judge(Seen seen) {
  if (seen.first == Mark::none) return Line::open;
  if (!seen.critical) return Line::fine;
  if (seen.first == Mark::shown) return Line::fine;
  if (seen.first == Mark::not_shown) return Line::bad;
  if (seen.second == Mark::shown) return Line::fine;
  return seen.second == Mark::not_shown ? Line::bad : Line::open;
}

Suggested judge(const std::vector<Seen>& lines) {
  bool open = lines.empty();
  for (Seen seen : lines) {
    if (judge(seen) == Line::bad) return Suggested::failed;
    open = open || judge(seen) == Line::open;
  }
  return open ? Suggested::not_finished : Suggested::passed;
}

SheetResult ask(const std::vector<Seen>& lines) {
  Sheet sheet;
  std::vector<Mark> marks, again;
  for (Seen seen : lines) {
    sheet.sections.push_back({std::to_string(marks.size()), {{"a line", "", seen.critical}}});
    marks.push_back(seen.first);
    again.push_back(seen.second);
  }
  return result_of(sheet, marks, again);
}

void each_sheet(std::size_t lines, std::vector<Seen>& made, const std::function<void()>& check) {
  if (made.size() == lines) {
    check();
    return;
  }
  for (bool critical : {false, true})
    for (Mark first : all_marks)
      for (Mark second : all_marks) {
        made.push_back({critical, first, second});
        each_sheet(lines, made, check);
        made.pop_back();
      }
}

}  // namespace

TEST_CASE("The suggested result is that of the rule for every sheet of up to three lines") {
  for (std::size_t lines = 0; lines <= 3; ++lines) {
    std::vector<Seen> made;
    std::size_t wrong = 0;
    each_sheet(lines, made, [&] { wrong += ask(made).suggested != judge(made); });
    CHECK(wrong == 0);
  }
}

TEST_CASE("Every line stands in the one list that says what is open about it") {
  std::vector<Seen> made;
  each_sheet(2, made, [&] {
    const SheetResult result = ask(made);
    for (std::size_t i = 0; i < made.size(); ++i) {
      const auto in = [&](const std::vector<std::size_t>& list) {
        return std::count(list.begin(), list.end(), i);
      };
      const bool missed = made[i].first == Mark::not_shown ||
                          (made[i].first == Mark::shown_when_asked && made[i].second == Mark::not_shown);
      const bool ok =
          in(result.unmarked) == (made[i].first == Mark::none) &&
          in(result.critical_missed) == (missed && made[i].critical) &&
          in(result.missed) == (missed && !made[i].critical) &&
          in(result.show_again) == (judge(made[i]) == Line::open && made[i].first == Mark::shown_when_asked);
      if (!ok) FAIL("line " << i);
    }
  });
}

TEST_CASE("Marks that are missing at the end are no marks, and marks beyond the last line are nothing") {
  const Sheet sheet{"s", 1, "c", "c", "", {{"before", {{"a", "", true}, {"b", "", false}}}}};
  const std::vector<Mark> one{Mark::shown};
  CHECK(result_of(sheet, one, {}).unmarked == std::vector<std::size_t>{1});
  const std::vector<Mark> three{Mark::shown, Mark::shown, Mark::not_shown};
  CHECK(result_of(sheet, three, {}).suggested == Suggested::passed);
}

TEST_CASE("What a line measures counts beside its mark as the rule says, for every line and mark") {
  const Measure inch{
      MeasureKind::thickness,
      SizeToMeasure{{fraction(1)}, {fraction(1, 100)}, {fraction(1, 100)}, {fraction(1, 1000)}}};
  const MaybeMeasured none, within = Measured{fraction(1), fraction(1, 1000)},
                            out = Measured{fraction(102, 100), fraction(1, 1000)},
                            coarse = Measured{fraction(1), fraction(1, 16)},
                            coarse_and_out = Measured{fraction(2), fraction(1, 16)};
  std::vector<Seen> made;
  each_sheet(1, made, [&] {
    const Seen seen = made[0];
    const Sheet sheet{"s", 1, "c", "c", "", {{"before", {{"a", "", seen.critical, inch}}}}};
    const auto suggested = [&](const MaybeMeasured& measured) {
      const SheetResult result =
          result_of(sheet, std::vector{seen.first}, std::vector{seen.second}, std::vector{measured});
      CHECK((result.to_measure.size() == 1) == (result.critical_missed.empty() && result.missed.empty() &&
                                                measured != within && measured != out));
      return result.suggested;
    };
    const Suggested by_mark = judge(made);
    // Without a good measure nothing passes, and a miss is a miss.
    const Suggested unmeasured = by_mark == Suggested::failed ? Suggested::failed : Suggested::not_finished;
    const bool missed = seen.first == Mark::not_shown ||
                        (seen.first == Mark::shown_when_asked && seen.second == Mark::not_shown);
    for (const MaybeMeasured& measured : {none, coarse, coarse_and_out})
      CHECK(suggested(measured) == (missed && !seen.critical ? Suggested::passed : unmeasured));
    CHECK(suggested(out) == (seen.critical ? Suggested::failed : Suggested::passed));
    CHECK(suggested(within) == (seen.first == Mark::none ? Suggested::passed : by_mark));
    CHECK(result_of(sheet, std::vector{seen.first}, std::vector{seen.second}).suggested == by_mark);
    // What was seen is the mark; without one a measure tells, where the instrument can.
    const auto first = [&](const MaybeMeasured& measured) {
      return first_seen(sheet, std::vector{seen.first}, std::vector{measured});
    };
    const bool marked = seen.first != Mark::none;
    CHECK(first(within) == std::vector{marked ? seen.first : Mark::shown});
    CHECK(first(out) == std::vector{marked ? seen.first : Mark::not_shown});
    for (const MaybeMeasured& measured : {none, coarse, coarse_and_out})
      CHECK(first(measured) == std::vector{seen.first});
  });
}

TEST_CASE("A measure at a line that asks for none is nothing") {
  const Sheet sheet{"s", 1, "c", "c", "", {{"before", {{"a", "", true}}}}};
  const std::vector<MaybeMeasured> far{Measured{fraction(9), fraction(1, 1000)}};
  CHECK(result_of(sheet, std::vector{Mark::none}, {}, far).suggested == Suggested::not_finished);
  CHECK(result_of(sheet, std::vector{Mark::shown}, {}, far).suggested == Suggested::passed);
}

TEST_CASE(
    "A pass can be signed only where nothing critical is open, and nothing but a fail after a critical "
    "miss") {
  SheetResult result;
  result.suggested = Suggested::passed;
  CHECK(may_sign(result, Outcome::passed));
  CHECK(may_sign(result, Outcome::failed));
  CHECK(may_sign(result, Outcome::stopped));
  result.suggested = Suggested::not_finished;
  CHECK_FALSE(may_sign(result, Outcome::passed));
  CHECK(may_sign(result, Outcome::failed));
  CHECK(may_sign(result, Outcome::stopped));
  result.suggested = Suggested::failed;
  CHECK_FALSE(may_sign(result, Outcome::passed));
  CHECK(may_sign(result, Outcome::failed));
  CHECK_FALSE(may_sign(result, Outcome::stopped));
}
