// Which choices are right, and whether all languages say so.
#include <algorithm>
#include <set>

#include "core/teach/reading.h"

namespace wm::teach {
namespace {

/// What a kind asks of the marks of its choices.
struct Rule {
  std::string_view word;
  std::size_t least, most;
};

Rule rule_of(const Kind& kind) {
  constexpr Rule choices{"* (right) or - (wrong)", 2, most_choices},
      steps{"a step's number, from 1. on", 3, most_choices};
  if (std::holds_alternative<InOrder>(kind)) return steps;
  return kind.index() < 2 ? choices : Rule{"", 0, 0};
}

void check_marks(const Kind& kind, const RawWording& raw, Mistakes& mistakes) {
  const Rule rule = rule_of(kind);
  for (std::size_t i = 0; i < raw.choices.size() && rule.most > 0; ++i) {
    const std::string& mark = raw.choices[i].mark;
    const bool fits =
        std::holds_alternative<InOrder>(kind) ? mark == std::to_string(i + 1) : mark == "*" || mark == "-";
    if (!fits)
      return mistakes.add(raw.choices[i].line, "This choice is marked " + quoted(mark) + ".",
                          "Mark the choices of this kind with " + std::string(rule.word) + ", in order.");
  }
  if (rule.most == 0 && !raw.choices.empty())
    return mistakes.add(raw.choices.front().line, "This kind of question has no choices.",
                        "Take them out, or write \\ before a line of text that begins with a mark.");
  if (raw.choices.size() < rule.least || raw.choices.size() > rule.most)
    mistakes.add(raw.line, "There are " + std::to_string(raw.choices.size()) + " choices here.",
                 "Write " + std::to_string(rule.least) + " to " + std::to_string(rule.most) + ".");
}

void check_texts(const RawWording& raw, Mistakes& mistakes) {
  if (raw.text.empty())
    mistakes.add(raw.line, "The question says nothing here.", "Write it under the language.");
  if (raw.reason.empty())
    mistakes.add(raw.line, "There is no reason here.",
                 "Add a line \"> …\" that says why, to be shown afterwards.");
  std::set<std::string_view> texts;
  for (const RawChoice& choice : raw.choices) {
    if (choice.text.empty())
      mistakes.add(choice.line, "This choice says nothing.", "Write it after its mark.");
    else if (!texts.insert(choice.text).second)
      mistakes.add(choice.line, "This choice stands here twice.", "Change or remove one of the two.");
  }
}

bool same_marks(const RawWording& a, const RawWording& b) {
  return std::equal(a.choices.begin(), a.choices.end(), b.choices.begin(), b.choices.end(),
                    [](const RawChoice& x, const RawChoice& y) { return x.mark == y.mark; });
}

void set_right(Kind& kind, const RawWording& raw, Mistakes& mistakes) {
  std::vector<bool> right;
  for (const RawChoice& choice : raw.choices) right.push_back(choice.mark == "*");
  const auto count = std::count(right.begin(), right.end(), true);
  if (auto* one = std::get_if<OneRight>(&kind)) {
    one->right = static_cast<std::size_t>(std::find(right.begin(), right.end(), true) - right.begin());
    if (count != 1)
      mistakes.add(raw.line, std::to_string(count) + " choices are marked as right here.",
                   "Mark one with *, or make the question of the kind several.");
  } else if (auto* several = std::get_if<SeveralRight>(&kind)) {
    if (count == 0)
      mistakes.add(raw.line, "No choice is marked as right here.", "Mark each right one with *.");
    several->right = std::move(right);
  }
}

Wording wording_from(const RawWording& raw) {
  Wording wording{raw.language, raw.text, {}, raw.reason};
  for (const RawChoice& choice : raw.choices) wording.choices.push_back(choice.text);
  return wording;
}

const RawWording* in_language(const std::vector<RawWording>& raw, std::string_view language) {
  const auto at = std::find_if(raw.begin(), raw.end(), [&](const auto& r) { return r.language == language; });
  return at == raw.end() ? nullptr : &*at;
}

/// Languages that the bank has not, or that come twice.
void check_languages(const std::vector<RawWording>& raw, const std::vector<std::string>& languages,
                     Mistakes& mistakes) {
  std::set<std::string_view> seen;
  for (const RawWording& each : raw) {
    if (std::find(languages.begin(), languages.end(), each.language) == languages.end())
      mistakes.add(each.line, "The bank has no language " + quoted(each.language) + ".",
                   "Add it to \"languages\" at the top, or take this out.");
    else if (!seen.insert(each.language).second)
      mistakes.add(each.line, "This language stands here twice.", "Keep one of the two.");
  }
}

}  // namespace

void settle(Question& question, std::size_t title, const std::vector<RawWording>& raw,
            const std::vector<std::string>& languages, Mistakes& mistakes) {
  check_languages(raw, languages, mistakes);
  const RawWording* measure = nullptr;
  for (const std::string& language : languages) {
    const RawWording* each = in_language(raw, language);
    if (each == nullptr) {
      mistakes.add(title, "The question is not worded in " + quoted(language) + ".",
                   "Add \"[" + language + "]\" and what it says, or take the language out at the top.");
      continue;
    }
    check_marks(question.kind, *each, mistakes);
    check_texts(*each, mistakes);
    if (measure == nullptr) {
      measure = each;
      set_right(question.kind, *each, mistakes);
    } else if (!same_marks(*measure, *each)) {
      mistakes.add(each->line, "The choices here are others than in " + quoted(measure->language) + ".",
                   "Write as many, in the same order and with the same marks.");
    }
    question.wordings.push_back(wording_from(*each));
  }
}

}  // namespace wm::teach
