#pragma once
// A value over time that changes in steps.
#include <algorithm>
#include <cstddef>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "core/time/instant.h"

namespace wm {

/// A value for every instant: `first` before the first change, then each change's value from its instant on.
/// Changes are in order of time and each differs from the value before it.
template <class T>
class Steps {
 public:
  struct Change {
    Instant at;
    T value;
    friend bool operator==(const Change&, const Change&) = default;
  };

  Steps() = default;
  explicit Steps(T first) : first_(std::move(first)) {}

  /// Appends a change at `at`, which must not lie before the last one; at the same instant it replaces it.
  /// A value equal to the one before is dropped.
  void set_from(Instant at, T value) {
    if (!changes_.empty() && changes_.back().at == at) changes_.pop_back();
    const T& before = changes_.empty() ? first_ : changes_.back().value;
    if (!(before == value)) changes_.push_back({at, std::move(value)});
  }

  const T& first() const { return first_; }
  std::span<const Change> changes() const { return changes_; }

  const T& at(Instant t) const {
    const std::size_t n = index_after(t);
    return n == 0 ? first_ : changes_[n - 1].value;
  }
  /// The earliest instant from which the value has been the same up to t; nothing where it always was.
  std::optional<Instant> since(Instant t) const {
    const std::size_t n = index_after(t);
    return n == 0 ? std::nullopt : std::optional(changes_[n - 1].at);
  }
  /// The first later instant at which the value differs; nothing where it never does.
  std::optional<Instant> until(Instant t) const {
    const std::size_t n = index_after(t);
    return n == changes_.size() ? std::nullopt : std::optional(changes_[n].at);
  }

  friend bool operator==(const Steps&, const Steps&) = default;

 private:
  /// How many changes lie at or before t.
  std::size_t index_after(Instant t) const {
    return static_cast<std::size_t>(std::upper_bound(changes_.begin(), changes_.end(), t,
                                                     [](Instant u, const Change& c) { return u < c.at; }) -
                                    changes_.begin());
  }

  T first_{};
  std::vector<Change> changes_;
};

}  // namespace wm
