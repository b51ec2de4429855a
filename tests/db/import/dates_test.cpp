#include <catch2/catch.hpp>

#include "core/time/text.h"
#include "db/import/dates.h"

using namespace wm;
using namespace wm::db::import;

namespace {

std::string iso(std::string_view text, DateOrder order = DateOrder::month_first) {
  const auto date = read_date(text);
  const auto day = date ? day_meant(*date, order) : std::nullopt;
  return day ? to_text(*day) : "none";
}

}  // namespace

TEST_CASE("Three ways to write a date give the same day") {
  CHECK(iso("2026-03-14") == "2026-03-14");
  CHECK(iso("3/14/2026") == "2026-03-14");
  CHECK(iso("14.03.2026") == "2026-03-14");
  CHECK(iso("14. 3. 2026") == "2026-03-14");
}

TEST_CASE("A time may follow") {
  const auto date = read_date("3/14/2026 17:30");
  REQUIRE(date);
  CHECK(date->time == std::pair(17, 30));
  CHECK(read_date("2026-03-14T9:05")->time == std::pair(9, 5));
}

TEST_CASE("Only dates with slashes can be ambiguous, and not with a number above 12 or two alike") {
  CHECK(is_ambiguous(*read_date("3/4/2026")));
  CHECK_FALSE(is_ambiguous(*read_date("3/3/2026")));
  CHECK_FALSE(is_ambiguous(*read_date("13/4/2026")));
  CHECK_FALSE(is_ambiguous(*read_date("4.3.2026")));
  CHECK(order_shown(*read_date("13/4/2026")) == DateOrder::day_first);
  CHECK(order_shown(*read_date("4/13/2026")) == DateOrder::month_first);
  CHECK(iso("3/4/2026", DateOrder::day_first) == "2026-04-03");
}

TEST_CASE("What is no date, or no day of the calendar, is none") {
  for (const char* text :
       {"", "soon", "2026-3", "3/14/26", "2026/03/14", "2026-03-14 25:00", "2026-03-14 9:5", "14-03-2026",
        "2026-03-14x", "2025-02-29", "31.04.2026", "13/13/2026", "1899-12-31"})
    CHECK(iso(text) == "none");
}
