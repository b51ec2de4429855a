// How far assessors agree on a sheet: put together by hand, and against what core/figures says of the same
// marks.
#include <catch2/catch.hpp>

#include "core/sheet/agreed.h"

using namespace wm;

namespace {

constexpr Mark shown = Mark::shown, asked = Mark::shown_when_asked, missed = Mark::not_shown,
               none = Mark::none;

/// So many performances of one line, all marked like this.
void add(std::vector<MarkedTwice>& all, std::size_t many, std::vector<Mark> given) {
  MarkedTwice one{"lathe", 2, {}};
  for (const Mark mark : given) one.by.push_back({mark});
  all.insert(all.end(), many, one);
}

}  // namespace

TEST_CASE("two assessors are compared by Cohen's kappa, a step apart counting as half", "[sheet]") {
  std::vector<MarkedTwice> all;
  add(all, 10, {shown, shown});
  add(all, 4, {shown, asked});
  add(all, 3, {asked, asked});
  add(all, 2, {missed, missed});
  add(all, 1, {shown, missed});
  const auto sheets = sheets_agreed(all);
  REQUIRE(sheets.size() == 1);
  CHECK(sheets[0].assessors == 2);
  CHECK(sheets[0].performances == 20);
  REQUIRE(sheets[0].lines.size() == 1);
  const Agreed& line = sheets[0].lines[0].agreed;
  CHECK(line.things == 20);
  CHECK(line.alike == 15);
  CHECK_FALSE(line.few());
  // Worked out by hand: seen (15 + 4/2)/20 = 0.85; by chance, from 15 3 2 and 10 7 3 of 20 each,
  // (15*10 + 3*7 + 2*3 + (15*7 + 3*10 + 3*3 + 2*7)/2) / 400 = 256/400 = 0.64.
  REQUIRE(line.kappa);
  CHECK(line.kappa->observed == Approx(0.85));
  CHECK(line.kappa->expected == Approx(0.64));
  CHECK(line.kappa->kappa == Approx(0.21 / 0.36));
  CHECK(line.kappa->interval);
}

TEST_CASE("more assessors are compared by Fleiss' kappa, and stand apart from two", "[sheet]") {
  std::vector<MarkedTwice> all;
  add(all, 4, {shown, shown, shown});
  add(all, 2, {missed, missed, shown});
  add(all, 3, {shown, shown});
  const auto sheets = sheets_agreed(all);
  REQUIRE(sheets.size() == 2);
  CHECK(sheets[0].assessors == 2);
  CHECK(sheets[1].assessors == 3);
  CHECK(sheets[1].all.things == 6);
  CHECK(sheets[1].all.alike == 4);
  CHECK(sheets[1].all.few());
  // By hand: of each thing's pairs 4*1 and 2*(1/3) alike, 14/18; by chance (14/18)^2 + (4/18)^2.
  const double seen = 14.0 / 18, chance = seen * seen + (4.0 / 18) * (4.0 / 18);
  REQUIRE(sheets[1].all.kappa);
  CHECK(sheets[1].all.kappa->kappa == Approx((seen - chance) / (1 - chance)));
}

TEST_CASE("where all only ever say shown there is no number", "[sheet]") {
  std::vector<MarkedTwice> all;
  add(all, 30, {shown, shown});
  const auto sheets = sheets_agreed(all);
  REQUIRE(sheets.size() == 1);
  REQUIRE_FALSE(sheets[0].all.kappa);
  CHECK(sheets[0].all.kappa.error() == stats::NoKappa::chance_is_all);
  CHECK(sheets[0].all.alike == 30);
}

TEST_CASE("the worst lines come first, and what one left out is not compared", "[sheet]") {
  const MarkedTwice one{
      "lathe", 2, {{shown, shown, asked, none, shown}, {shown, asked, asked, shown, shown}}};
  const MarkedTwice two{
      "lathe", 2, {{shown, missed, shown, none, none}, {shown, shown, asked, shown, shown}}};
  const MarkedTwice older{"lathe", 1, {{shown}, {missed}}};
  const MarkedTwice by_one{"lathe", 2, {{missed, missed, missed, missed, missed}}};
  const auto sheets = sheets_agreed(std::vector{older, one, two, by_one});
  REQUIRE(sheets.size() == 2);
  CHECK(sheets[0].revision == 2);
  CHECK(sheets[1].revision == 1);
  std::vector<std::size_t> lines;
  for (const LineAgreed& line : sheets[0].lines) lines.push_back(line.line);
  CHECK(lines == std::vector<std::size_t>{1, 2, 0, 4});
  CHECK(sheets[0].lines[3].agreed.things == 1);
  CHECK(sheets[0].all.things == 7);
  CHECK(sheets_agreed({}).empty());
}
