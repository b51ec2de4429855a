#pragma once
// Attempts made for statistics.
#include <string>
#include <vector>

#include "core/teach/seen.h"

namespace wm::teach::made {

/// An attempt at questions q0, q1, … without choices, right or not.
inline SeenAttempt sitting(const std::vector<bool>& right, bool passed = false) {
  SeenAttempt attempt{1, "en", passed, {}};
  for (std::size_t i = 0; i < right.size(); ++i)
    attempt.answers.push_back(
        {"q" + std::to_string(i), "t" + std::to_string(i % 2), 1, {right[i], right[i] ? 1 : 0}, {}, {}});
  return attempt;
}

/// The 1,000 people and 5 items of section 6 of the Law School Admission Test: R. D. Bock, M. Lieberman,
/// Fitting a response model for n dichotomously scored items, Psychometrika 35:179-197 (1970). How often each
/// pattern 00000, 00001, … 11111 came.
inline std::vector<SeenAttempt> lsat_6() {
  const int often[32] = {3,  6,  2,  11, 1, 1,  3,  4,  1,  8,  0,  16,  0,  3,  2,  15,
                         10, 29, 14, 81, 3, 28, 15, 80, 16, 56, 21, 173, 11, 61, 28, 298};
  std::vector<SeenAttempt> all;
  for (unsigned pattern = 0; pattern < 32; ++pattern)
    for (int i = 0; i < often[pattern]; ++i) {
      std::vector<bool> right;
      for (unsigned item = 0; item < 5; ++item) right.push_back((pattern >> (4 - item) & 1) != 0);
      all.push_back(sitting(right));
    }
  return all;
}

}  // namespace wm::teach::made
