#pragma once
// A shop with a long waiting list, made from a seed: everything in it is invented, how often things happen a
// guess.
#include <cstdint>

#include "core/match/question.h"

namespace wm {

struct WaitingShop {
  std::uint64_t seed = 1;
  int people = 200, assessors = 12, targets = 15, weeks = 4;
  bool uneven_lengths = false;  // one-on-ones of 45, 60 and 90 minutes, not of an hour
  bool by_two = false;          // on every third target two assessors witness a check-out
};
FitQuestion waiting_shop(const WaitingShop& shop);

}  // namespace wm
