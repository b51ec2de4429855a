#pragma once
// Small random shops, made from a tape of numbers: the same tape always makes the same shop, and a shorter
// tape or smaller numbers a simpler one, so that a counter-example shrinks.
#include <cstdint>
#include <string>
#include <vector>

#include "core/records/shop.h"

namespace wm::worlds {

/// Deals out the tape's numbers; zeros when it is used up.
class Tape {
 public:
  explicit Tape(std::vector<std::uint32_t> numbers) : numbers_(std::move(numbers)) {}
  /// 0 to n - 1.
  int roll(int n) {
    if (next_ >= numbers_.size()) return 0;
    return static_cast<int>(numbers_[next_++] % static_cast<std::uint32_t>(n));
  }
  /// One time in n.
  bool one_in(int n) { return roll(n) == n - 1; }
  bool used_up() const { return next_ >= numbers_.size(); }

 private:
  std::vector<std::uint32_t> numbers_;
  std::size_t next_ = 0;
};

/// A shop of a few people, classes with and without modes, one to three rulebooks without circles, and up to
/// some sixty records of every kind, many of them at the same or at neighbouring instants.
Shop shop_from(Tape& tape);
/// An instant at which something may change: near a record, a rulebook or the start of a day, or anywhere.
Instant instant_from(Tape& tape, const Shop& shop);
/// A name to ask about: a target of any rulebook, or a class.
std::string target_from(Tape& tape, const Shop& shop);

}  // namespace wm::worlds
