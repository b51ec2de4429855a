#pragma once
// Question banks: what a shop asks before somebody may go on. The text form stands in README.md.
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/teach/measure.h"
#include "core/teach/place.h"

namespace wm::teach {

/// One choice is right, the `right`-th.
struct OneRight {
  std::size_t right = 0;
  friend bool operator==(const OneRight&, const OneRight&) = default;
};
/// By choice; at least one is right.
struct SeveralRight {
  std::vector<bool> right;
  friend bool operator==(const SeveralRight&, const SeveralRight&) = default;
};
/// The choices are steps, and stand in their right order.
struct InOrder {
  friend bool operator==(const InOrder&, const InOrder&) = default;
};
/// Right within the tolerance, its edges included.
struct ANumber {
  Measure answer, tolerance;
  friend bool operator==(const ANumber&, const ANumber&) = default;
};
/// Right in any of the regions of the picture.
struct APlace {
  std::vector<Region> regions;
  friend bool operator==(const APlace&, const APlace&) = default;
};
using Kind = std::variant<OneRight, SeveralRight, InOrder, ANumber, APlace>;

/// A question in one language. A number and a place have no choices.
struct Wording {
  std::string language;
  std::string text;
  std::vector<std::string> choices;
  std::string reason;  // shown afterwards
  friend bool operator==(const Wording&, const Wording&) = default;
};

struct Question {
  std::string id;
  int revision = 1;
  std::string topic;
  bool critical = false;
  bool partial = false;  // whether part of it right scores something
  std::string picture;   // a file's name; may be empty
  Kind kind;
  std::vector<Wording>
      wordings;  // one for each of the bank's languages, in their order, all with as many choices
  friend bool operator==(const Question&, const Question&) = default;
};

/// That many questions of a topic are on each paper, all its critical ones among them.
struct Draw {
  std::string topic;
  int count = 1;
  friend bool operator==(const Draw&, const Draw&) = default;
};

struct Bank {
  std::string name;
  int revision = 1;
  std::vector<std::string> languages;
  int pass_percent = 100;
  std::optional<int> minutes;  // none: as long as it takes
  std::vector<Draw> draws;
  std::vector<Question> questions;
  friend bool operator==(const Bank&, const Bank&) = default;
};

constexpr std::size_t most_questions = 10'000, most_choices = 12;

/// How many choices a question has, in whatever language.
std::size_t choice_count(const Question& question);
/// How many questions a paper has.
std::size_t questions_a_paper(const Bank& bank);
/// Null where the bank has none of that id.
const Question* question_of(const Bank& bank, std::string_view id);
/// Null where it is not worded in that language.
const Wording* wording_of(const Question& question, std::string_view language);

}  // namespace wm::teach
