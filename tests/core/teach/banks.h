#pragma once
// Random question banks that keep to every rule, and answers to their questions.
#include <rapidcheck.h>

#include <cstdint>
#include <random>
#include <string>

#include "core/teach/attempt.h"
#include "core/teach/bank.h"

namespace wm::teach::made {

using Dice = std::mt19937_64;

/// From low to high, both included; how even it is doesn't matter here.
inline int whole(Dice& dice, int low, int high) {
  return low + static_cast<int>(dice() % static_cast<std::uint64_t>(high - low + 1));
}
inline bool chance(Dice& dice, int percent) { return whole(dice, 1, 100) <= percent; }

/// A bank with questions of every kind whose blueprint can be filled.
Bank bank(Dice& dice);
/// An answer of any kind, right as often as wrong, sometimes of a kind that the question doesn't ask for.
Given given(Dice& dice, const Question& question);

}  // namespace wm::teach::made
