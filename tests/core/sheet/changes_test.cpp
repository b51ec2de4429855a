// What a revision of a run sheet changes.
#include "core/sheet/changes.h"

#include <catch2/catch.hpp>

namespace {

using namespace wm;

Sheet sheet(std::vector<SheetSection> sections) { return {"saw", 1, "saw", "saw", "", std::move(sections)}; }
using Lines = std::vector<std::size_t>;

}  // namespace

TEST_CASE("Lines that come, go, change and are no longer critical are told by their numbers") {
  const Sheet before = sheet(
      {{"a", {{"one", "", true}, {"two", "", true}}}, {"b", {{"three", "", false}, {"four", "", false}}}});
  const Sheet after = sheet({{"a", {{"new", "", true}, {"one", "", false}, {"two", "says so", true}}},
                             {"b", {{"four", "", false}}}});
  const SheetChanges found = changes(before, after);
  CHECK(found.added == Lines{0});
  CHECK(found.eased == Lines{1});
  CHECK(found.changed == Lines{2});
  CHECK(found.removed == Lines{2});
  CHECK_FALSE(found.order);
  CHECK_FALSE(found.machine);
  CHECK(changes(before, before) == SheetChanges{});
}

TEST_CASE("A line that became critical has changed, and one that says another measure") {
  const Sheet before = sheet({{"a", {{"one", "", false}, {"two", "", false, of_kind(MeasureKind::angle)}}}});
  const Sheet after = sheet({{"a", {{"one", "", true}, {"two", "", false}}}});
  CHECK(changes(before, after).changed == Lines{0, 1});
}

TEST_CASE("Lines of the same words are told apart by their order, and moved ones change the order") {
  const Sheet twice = sheet({{"a", {{"x", "", true}, {"y", "", true}, {"x", "", true}}}});
  CHECK(changes(twice, twice) == SheetChanges{});
  const Sheet once = sheet({{"a", {{"x", "", true}, {"y", "", true}}}});
  CHECK(changes(twice, once).removed == Lines{2});
  CHECK(changes(once, twice).added == Lines{2});
  CHECK(changes(once, sheet({{"a", {{"y", "", true}, {"x", "", true}}}})).order);
  CHECK(changes(once, sheet({{"a", {{"x", "", true}}}, {"b", {{"y", "", true}}}})).order);
}

TEST_CASE("A sheet that becomes another machine's, or another check-out's, says so") {
  const Sheet before = sheet({{"a", {{"x", "", true}}}});
  Sheet after = before;
  after.checkout = "rip";
  CHECK(changes(before, after).machine);
  after = before;
  after.machine_class = "bandsaw";
  CHECK(changes(before, after).machine);
}
