// Wilson's interval against published ones.
#include "core/figures/interval.h"

#include <catch2/catch.hpp>

#include "tests/core/figures/prints.h"

namespace {

using namespace wm::stats;

void check_wilson(std::size_t count, std::size_t of, double low, double high, int digits) {
  INFO(count << " of " << of);
  const auto interval = wilson(count, of);
  REQUIRE(interval);
  CHECK(prints(interval->low, low, digits));
  CHECK(prints(interval->high, high, digits));
}

}  // namespace

TEST_CASE("Wilson's interval is that of Newcombe's table", "[figures]") {
  // R. G. Newcombe, Two-sided confidence intervals for the single proportion, Statist. Med. 17:857-872
  // (1998), table I, method 3.
  check_wilson(81, 263, .2553, .3662, 4);
  check_wilson(15, 148, .0624, .1605, 4);
  check_wilson(0, 20, 0, .1611, 4);
  check_wilson(1, 29, .0061, .1718, 4);
}

TEST_CASE("Wilson's interval for a quiz of few questions is that of R 4.2.2's prop.test without correction",
          "[figures]") {
  check_wilson(10, 10, .722467, 1, 6);
  check_wilson(9, 10, .595850, .982124, 6);
  check_wilson(7, 10, .396778, .892209, 6);
  check_wilson(5, 10, .236593, .763407, 6);
  check_wilson(0, 10, 0, .277533, 6);
  check_wilson(16, 20, .583983, .919342, 6);
  check_wilson(18, 20, .698966, .972134, 6);
}

TEST_CASE("Of nobody there is no share, and of all or none the interval ends where shares end", "[figures]") {
  CHECK_FALSE(wilson(0, 0));
  for (std::size_t n = 1; n < 2000; ++n) {
    CHECK(wilson(0, n)->low == 0);
    CHECK(wilson(n, n)->high == 1);
  }
  for (double z = 0.1; z < 4; z += 0.0131) {
    CHECK(wilson(0, 7, z)->low == 0);
    CHECK(wilson(7, 7, z)->high == 1);
  }
}

TEST_CASE("The limits are the shares from which the count lies just z deviations away", "[figures]") {
  for (std::size_t n = 1; n < 40; ++n)
    for (std::size_t count = 0; count <= n; ++count) {
      const Interval i = *wilson(count, n, 1.5);
      for (const double limit : {i.low, i.high})
        if (limit > 0 && limit < 1)
          CHECK(std::abs(double(count) / double(n) - limit) ==
                Approx(1.5 * std::sqrt(limit * (1 - limit) / double(n))));
    }
}
