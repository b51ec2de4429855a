#pragma once
// Everybody's standings over all time, kept small: what a shop in memory looks things up in.
#include <cstdint>
#include <memory>
#include <span>
#include <vector>

#include "core/decide/known.h"
#include "core/time/steps.h"

namespace wm {

class Timelines {
 public:
  /// For these targets, each once.
  explicit Timelines(std::vector<NameId> targets);

  const std::vector<NameId>& targets() const { return targets_; }
  /// Whether the person's standings are kept, and the target is one of those they are kept for.
  bool has(NameId person, NameId target) const { return row(person) != nullptr && place(target) != none; }
  /// The standing at t; only where they are kept.
  Rung at(NameId person, NameId target, Instant t) const;
  Steps<Rung> steps(NameId person, NameId target) const;

  /// One person's standings, in order of targets().
  struct Row {
    std::vector<std::uint32_t> ends;    // by target: where its changes end, times 4, and its first rung
    std::vector<std::int64_t> changes;  // seconds times 4, and the rung from then on
    friend bool operator==(const Row&, const Row&) = default;
  };
  static void add(Row& row, const Steps<Rung>& steps);
  /// As another row has it.
  static void add(Row& row, const Row& other, std::size_t target);
  static Rung at(const Row& row, std::size_t target, Instant t);
  /// The rungs on all targets at t, put after what is there already.
  static void all_at(const Row& row, Instant t, std::vector<Rung>& rungs);
  /// The instants between which two rows differ on the target: from the first at which they do, to the first
  /// from which they no longer do. Empty where they are the same.
  Span difference(const Row& a, const Row& b, std::size_t target) const;
  static Steps<Rung> steps(const Row& row, std::size_t target);

  /// Keeps a row, or with null none, and returns what was kept before.
  std::unique_ptr<Row> keep(NameId person, std::unique_ptr<Row> row);
  const Row* row(NameId person) const { return person < rows_.size() ? rows_[person].get() : nullptr; }
  /// What is kept, in bytes.
  std::size_t bytes() const;

 private:
  static constexpr std::uint32_t none = ~std::uint32_t{0};
  std::uint32_t place(NameId target) const { return target < places_.size() ? places_[target] : none; }

  std::vector<NameId> targets_;
  std::vector<std::uint32_t> places_;       // by NameId
  std::vector<std::unique_ptr<Row>> rows_;  // by NameId
};

}  // namespace wm
