#pragma once
// When something is so: the yes-or-no step function that decisions are made of, made from intervals and from
// one another in one sweep.
#include <absl/container/inlined_vector.h>

#include <algorithm>
#include <cstdint>
#include <limits>
#include <optional>
#include <span>

#include "core/time/instant.h"

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

/// Yes or no at every instant: `first` before the first flip, and the other from each flip on.
class Times {
 public:
  Times() = default;
  explicit Times(bool always) : first_(always) {}

  bool first() const { return first_; }
  bool last() const { return first_ != (flips_.size() % 2 == 1); }
  bool never() const { return !first_ && flips_.empty(); }
  bool always() const { return first_ && flips_.empty(); }
  /// In order of time, each once.
  std::span<const Instant> flips() const { return {flips_.data(), flips_.size()}; }

  bool at(Instant t) const { return first_ != (index_after(t) % 2 == 1); }
  /// The earliest instant from which it has been as it is at t; nothing where it always was.
  std::optional<Instant> since(Instant t) const {
    const std::size_t n = index_after(t);
    return n == 0 ? std::nullopt : std::optional(flips_[n - 1]);
  }
  /// The first later instant at which it is no longer as it is at t; nothing where that never comes.
  std::optional<Instant> until(Instant t) const {
    const std::size_t n = index_after(t);
    return n == flips_.size() ? std::nullopt : std::optional(flips_[n]);
  }

  /// From `at` on it is so or not, whatever it was. `at` must not lie before the last flip.
  void set_from(Instant at, bool value) {
    if (!flips_.empty() && flips_.back() == at) flips_.pop_back();
    if (last() == value) return;
    if (at <= beginning) {
      first_ = value;
    } else {
      flips_.push_back(at);
    }
  }
  /// Whether to add this span would change nothing: it is so all through it, as far as what was added goes.
  bool has(Span span) const {
    return span.empty() || last() || (!flips_.empty() && span.to <= flips_.back());
  }
  /// It is so in this span too. The span must not begin before one that was added before it.
  void add(Span span) {
    if (span.empty() || last()) return;
    if (flips_.empty() || flips_.back() < span.from) {
      set_from(span.from, true);
    } else if (span.to <= flips_.back()) {
      return;
    } else {
      flips_.pop_back();
    }
    if (span.to < forever) flips_.push_back(span.to);
  }

  friend bool operator==(const Times&, const Times&) = default;

 private:
  /// How many flips lie at or before t.
  std::size_t index_after(Instant t) const {
    return static_cast<std::size_t>(std::upper_bound(flips_.begin(), flips_.end(), t) - flips_.begin());
  }

  bool first_ = false;
  absl::InlinedVector<Instant, 6> flips_;
};

/// Tells each instant at which either flips, in order, with what both say from then on.
template <class Each>
void for_each_flip(const Times& a, const Times& b, Each each) {
  const auto fa = a.flips(), fb = b.flips();
  bool va = a.first(), vb = b.first();
  for (std::size_t i = 0, j = 0; i < fa.size() || j < fb.size();) {
    const Instant at = j == fb.size() || (i < fa.size() && fa[i] <= fb[j]) ? fa[i] : fb[j];
    if (i < fa.size() && fa[i] == at) {
      va = !va;
      ++i;
    }
    if (j < fb.size() && fb[j] == at) {
      vb = !vb;
      ++j;
    }
    each(at, va, vb);
  }
}

/// Where something begins or ends to count.
struct Edge {
  Instant at;
  std::int64_t count;
  std::int64_t minutes;
};
using Edges = absl::InlinedVector<Edge, 16>;

/// Something that counts while `span` lasts: once, and with `minutes`.
struct Weighted {
  Span span;
  int minutes = 0;
};

/// While at least `count` of these last, and their minutes add up to at least `minutes`.
Times enough(std::span<const Weighted> parts, std::int64_t count, std::int64_t minutes);
/// While any of these lasts; in any order.
Times any_lasting(std::span<const Span> spans);
/// Counts how many of several are so, each told once.
class Tally {
 public:
  void add(const Times& part);
  /// How many of those told always are, and never are.
  std::size_t always() const { return always_; }
  std::size_t never() const { return never_; }
  /// While at least `count` of those told are so.
  Times at_least(std::size_t count);

 private:
  std::size_t always_ = 0, never_ = 0;
  Edges begins_, ends_;
};
/// While at least `count` of these are so.
Times at_least(std::size_t count, std::span<const Times> parts);
Times both(const Times& a, const Times& b);
Times either(const Times& a, const Times& b);
/// Makes `times` only so while `other` is too.
void meet(Times& times, const Times& other);
Times opposite(const Times& times);

/// What `inner` says during `span`, put after what `whole` says up to there; no from then on.
void append_during(Times& whole, const Times& inner, Span span);

}  // namespace wm
