#pragma once
// What one revision of a bank has that another has not, question by question.
#include <string>
#include <vector>

#include "core/teach/bank.h"

namespace wm::teach {

/// Ids of questions, each list in the order of the bank that has them.
struct BankChanges {
  std::vector<std::string> added, removed;
  std::vector<std::string> changed;  // under a higher revision of the question
  /// Changed although their revision is not higher: answers to two questions would be counted as answers to
  /// one.
  std::vector<std::string> uncounted;
  bool languages = false, pass_percent = false, minutes = false, draws = false;
  friend bool operator==(const BankChanges&, const BankChanges&) = default;
};

/// Names and revisions of the banks themselves are not compared, nor in which order questions stand.
BankChanges changes(const Bank& before, const Bank& after);

}  // namespace wm::teach
