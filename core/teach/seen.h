#pragma once
// Attempts as statistics look at them: nobody's names, only what was asked and what came of it.
#include <map>
#include <span>
#include <string>
#include <vector>

#include "core/teach/marking.h"

namespace wm::teach {

struct SeenAnswer {
  std::string question, topic;
  int revision = 1;  // of the question
  Mark mark;
  std::vector<bool> right;  // by choice, for the kinds that have right ones; else empty
  std::vector<std::size_t> chosen;
  friend bool operator==(const SeenAnswer&, const SeenAnswer&) = default;
};

struct SeenAttempt {
  int revision = 1;  // of the bank
  std::string language;
  bool passed = false;
  std::vector<SeenAnswer> answers;
  friend bool operator==(const SeenAttempt&, const SeenAttempt&) = default;
};

SeenAttempt seen(const Bank& bank, const Attempt& attempt, const Marking& marking);

/// By topic, an attempt is in the group of each of its topics, with that topic's answers alone; whether it
/// passed is that of the whole.
enum class By { everything, topic, revision, language };
std::map<std::string, std::vector<SeenAttempt>> grouped(std::span<const SeenAttempt> attempts, By by);

}  // namespace wm::teach
