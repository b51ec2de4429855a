#pragma once
// All that the answers to a shop's quizzes say, bank by bank, from the texts as they were issued and handed
// in.
#include <map>
#include <span>
#include <string>
#include <vector>

#include "core/teach/look_first.h"
#include "core/teach/paper_figures.h"

namespace wm::teach {

struct BankFigures {
  std::string bank;
  std::vector<Bank> revisions;  // as issued, in order of revision
  std::size_t unread = 0;       // attempts that can't be marked by any of them
  PaperFigures all;
  /// A topic's `passed` is that of the whole papers.
  std::map<std::string, PaperFigures> by_topic, by_language;
  std::map<int, PaperFigures> by_revision;
  /// How many attempts had that many questions right, from none to all; empty where papers have different
  /// lengths.
  std::vector<std::size_t> spread;
  std::vector<QuestionFigures> questions;
  std::vector<LookAt> look_first;
  friend bool operator==(const BankFigures&, const BankFigures&) = default;
};

/// `banks`: texts of banks, one for each revision; what is no bank is left out. `attempts`: as JSON
/// (attempt.h), in any order; whether one passed is decided by its bank's own pass mark. In order of the
/// banks' names, those that nobody sat too. Each question is told apart by its revision; see question_of.
std::vector<BankFigures> bank_figures(std::span<const std::string> banks,
                                      std::span<const std::string> attempts);

/// The question as the figures mean it, out of the newest bank that has that revision of it; null where
/// none has.
const Question* question_of(const BankFigures& figures, std::string_view id, int revision);

/// A question to look at, and the bank that it stands in.
struct LookIn {
  const BankFigures* bank = nullptr;
  const LookAt* look = nullptr;
};
/// Those of all banks, the worst first. Good as long as `banks` are.
std::vector<LookIn> look_first(std::span<const BankFigures> banks);

}  // namespace wm::teach
