#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "core/time/times.h"

using namespace wm;

namespace {

Instant moment() { return {*rc::gen::inRange<std::int64_t>(0, 30)}; }

Span some_span() {
  Span span{moment(), moment()};
  if (*rc::gen::inRange(0, 6) == 0) span.from = beginning;
  if (*rc::gen::inRange(0, 6) == 0) span.to = forever;
  return span;
}

std::vector<Weighted> some_parts() {
  std::vector<Weighted> parts(*rc::gen::inRange<std::size_t>(0, 6));
  for (auto& part : parts) part = {some_span(), *rc::gen::inRange(0, 50)};
  return parts;
}

/// Each flip once, and in order.
bool is_minimal(const Times& times) {
  const auto flips = times.flips();
  return std::adjacent_find(flips.begin(), flips.end(), std::greater_equal<>()) == flips.end();
}

}  // namespace

TEST_CASE("a sum of intervals is what counting at each instant gives", "[time]") {
  const bool holds = rc::check("enough", [] {
    const auto parts = some_parts();
    const std::int64_t count = *rc::gen::inRange(0, 4), minutes = *rc::gen::inRange(0, 90);
    const Times steps = enough(parts, count, minutes);
    RC_ASSERT(is_minimal(steps));
    for (std::int64_t s = -2; s < 34; ++s) {
      std::int64_t n = 0, m = 0;
      for (const auto& part : parts) {
        if (!part.span.covers({s})) continue;
        ++n;
        m += part.minutes;
      }
      RC_ASSERT(steps.at({s}) == (n >= count && m >= minutes));
    }
  });
  REQUIRE(holds);
}

TEST_CASE("several step functions together are what each says at that instant", "[time]") {
  const bool holds = rc::check("at least", [] {
    std::vector<Times> parts(*rc::gen::inRange<std::size_t>(0, 5));
    for (auto& part : parts) part = enough(some_parts(), 1, 0);
    const std::size_t count = *rc::gen::inRange<std::size_t>(0, 5);
    const Times steps = at_least(count, parts);
    RC_ASSERT(is_minimal(steps));
    for (std::int64_t s = -2; s < 34; ++s) {
      const auto true_ones = static_cast<std::size_t>(
          std::count_if(parts.begin(), parts.end(), [&](const Times& part) { return part.at({s}); }));
      RC_ASSERT(steps.at({s}) == (true_ones >= count));
    }
  });
  REQUIRE(holds);
}

TEST_CASE("since and until are the bounds of what is the same around an instant", "[time]") {
  const bool holds = rc::check("bounds", [] {
    const Times steps = enough(some_parts(), 1, 0);
    const Instant t = moment();
    if (const auto until = steps.until(t)) {
      RC_ASSERT(steps.at(*until) != steps.at(t) && steps.at(*until - 1) == steps.at(t) && *until > t);
    }
    if (const auto since = steps.since(t)) {
      RC_ASSERT(steps.at(*since) == steps.at(t) && steps.at(*since - 1) != steps.at(t) && *since <= t);
    }
  });
  REQUIRE(holds);
}

TEST_CASE("stretches put one after another say what the one that lasts says", "[time]") {
  const bool holds = rc::check("append during", [] {
    const Instant border = moment();
    const Times before = enough(some_parts(), 1, 0), after = enough(some_parts(), 1, 0);
    Times whole(false);
    append_during(whole, before, {beginning, border});
    append_during(whole, after, {border, forever});
    RC_ASSERT(is_minimal(whole));
    for (std::int64_t s = -2; s < 34; ++s) {
      RC_ASSERT(whole.at({s}) == (Instant{s} < border ? before : after).at({s}));
    }
  });
  REQUIRE(holds);
}

TEST_CASE("spans added in order are what any of them covers", "[time]") {
  const bool holds = rc::check("add", [] {
    std::vector<Span> spans(*rc::gen::inRange<std::size_t>(0, 6));
    for (auto& span : spans) span = some_span();
    const Times any = any_lasting(spans);
    std::sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) { return a.from < b.from; });
    Times added(false);
    for (const Span& span : spans) added.add(span);
    RC_ASSERT(is_minimal(added));
    RC_ASSERT(added == any);
    for (std::int64_t s = -2; s < 34; ++s) {
      const bool covered =
          std::any_of(spans.begin(), spans.end(), [&](const Span& span) { return span.covers({s}); });
      RC_ASSERT(added.at({s}) == covered);
    }
  });
  REQUIRE(holds);
}

TEST_CASE("both and the opposite say at each instant what two and one say", "[time]") {
  const bool holds = rc::check("both, opposite", [] {
    const Times a = enough(some_parts(), 1, 0), b = enough(some_parts(), 1, 0);
    RC_ASSERT(is_minimal(both(a, b)));
    for (std::int64_t s = -2; s < 34; ++s) {
      RC_ASSERT(both(a, b).at({s}) == (a.at({s}) && b.at({s})));
      RC_ASSERT(opposite(a).at({s}) == !a.at({s}));
    }
  });
  REQUIRE(holds);
}
