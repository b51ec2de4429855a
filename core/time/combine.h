#pragma once
// Step functions made from intervals and from one another, in one sweep over their changes.
#include <cstdint>
#include <limits>
#include <span>
#include <vector>

#include "core/time/steps.h"

namespace wm {

/// Before and after every instant that can be asked about.
inline constexpr Instant beginning{std::numeric_limits<std::int64_t>::min() / 4};
inline constexpr Instant forever{std::numeric_limits<std::int64_t>::max() / 4};

/// From `from` on and before `to`; empty where `to <= from`.
struct Span {
  Instant from = beginning;
  Instant to = forever;
  constexpr bool covers(Instant t) const { return from <= t && t < to; }
  constexpr bool empty() const { return to <= from; }
  friend bool operator==(const Span&, const Span&) = default;
};

/// Something that counts while `span` lasts: once, and with `minutes`.
struct Weighted {
  Span span;
  int minutes = 0;
};

/// True while at least `count` of these last, and their minutes add up to at least `minutes`.
Steps<bool> enough(std::span<const Weighted> parts, std::int64_t count, std::int64_t minutes);

/// True while any of these lasts.
Steps<bool> any_lasting(std::span<const Span> spans);

/// True while at least `count` of these are.
Steps<bool> at_least(std::size_t count, std::span<const Steps<bool>> parts);

/// `inner` during `span`, false outside it.
template <class T>
void append_during(Steps<T>& whole, const Steps<T>& inner, Span span) {
  if (span.empty()) return;
  if (span.from <= beginning) {
    whole = Steps<T>(inner.at(beginning));
  } else {
    whole.set_from(span.from, inner.at(span.from));
  }
  for (const auto& change : inner.changes()) {
    if (change.at > span.from && change.at < span.to) whole.set_from(change.at, change.value);
  }
}

}  // namespace wm
