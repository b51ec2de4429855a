#pragma once
// Whether a bank has what its blueprint asks for.
#include <string>
#include <vector>

#include "core/problem.h"
#include "core/teach/bank.h"

namespace wm::teach {

/// What is wrong with a draw or a question (by its place in the bank's list), or with the whole bank.
struct Shortfall {
  enum class Of { draw, question, bank } of = Of::bank;
  std::size_t at = 0;
  std::string what, remedy;
};

/// None where every paper can be filled: each topic has as many questions as are drawn, all critical ones
/// fit, no question is left out for good, and a paper has two questions or more, so that the next can be
/// another.
std::vector<Shortfall> shortfalls(const Bank& bank);

/// Questions whose id one before them has: no paper could be told from another, nor an answer from another's.
std::vector<Shortfall> repeated_ids(const Bank& bank);

}  // namespace wm::teach
