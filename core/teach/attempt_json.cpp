#include <algorithm>
#include <charconv>
#include <optional>
#include <set>

#include "core/json/writer.h"
#include "core/teach/attempt.h"
#include "core/teach/bank.h"
#include "core/teach/reading.h"

namespace wm::teach {
namespace {

constexpr std::size_t longest_typed = 200;
constexpr int longest_seconds = 1'000'000;
constexpr std::size_t seed_digits = 16;

/// A seed has more bits than a JSON number may have digits everywhere, so it is text: 16 hexadecimal digits.
std::optional<std::uint64_t> seed(json::Reading& reading, json::Value value) {
  const auto text = json::text(reading, value);
  if (!text) return std::nullopt;
  std::uint64_t seed = 0;
  const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), seed, 16);
  const bool upper = std::any_of(text->begin(), text->end(), [](char c) { return c >= 'A' && c <= 'F'; });
  if (text->size() == seed_digits && error == std::errc() && end == text->data() + text->size() && !upper)
    return seed;
  reading.mistake(value, "This is no seed.", "Write 16 digits from 0 to 9 and a to f, as text.");
  return std::nullopt;
}

std::string seed_text(std::uint64_t seed) {
  std::string text(seed_digits, '0');
  for (std::size_t i = seed_digits; i-- > 0; seed >>= 4) text[i] = "0123456789abcdef"[seed & 15];
  return text;
}

std::optional<std::size_t> choice(json::Reading& reading, json::Value value) {
  const auto number = json::whole(reading, value, 0, static_cast<int>(most_choices) - 1);
  return number ? std::optional(static_cast<std::size_t>(*number)) : std::nullopt;
}

std::optional<std::vector<std::size_t>> choices(json::Reading& reading, json::Value value) {
  auto list = json::list_of(choice)(reading, value);
  if (list && std::set(list->begin(), list->end()).size() != list->size())
    reading.mistake(value, "A choice stands here twice.", "Name each once.");
  return list;
}

std::optional<std::string> typed(json::Reading& reading, json::Value value) {
  auto text = json::text(reading, value);
  if (text && text->size() > longest_typed)
    reading.mistake(value, "What was typed has more than 200 bytes.", "Write what was typed, a number.");
  return text;
}

std::optional<Point> point(json::Reading& reading, json::Value value) {
  const auto list = json::list_of(json::whole(0, 1000))(reading, value);
  if (list && value.size() != 2) reading.mistake(value, "A place has two numbers.", "Write [x, y].");
  return list && list->size() == 2 ? std::optional(Point{(*list)[0], (*list)[1]}) : std::nullopt;
}

/// The one field that says what was given; none for a question left open.
Given given(json::Fields& fields) {
  Chosen chosen;
  Ticked ticked;
  Ordered ordered;
  Typed text;
  Pointed pointed;
  Given given;
  int count = 0;
  const auto take = [&](std::string_view key, auto& one, auto& field, const auto& read) {
    count += fields.has(key) ? 1 : 0;
    if (fields.may(key, field, read)) given = one;
  };
  take("chosen", chosen, chosen.choice, choice);
  take("ticked", ticked, ticked.choices, choices);
  take("order", ordered, ordered.steps, choices);
  take("typed", text, text.text, typed);
  take("pointed", pointed, pointed.point, point);
  fields.refuse(count > 1, "More than one kind of answer stands here.",
                R"(Keep one of "chosen", "ticked", "order", "typed" and "pointed".)");
  return given;
}

std::optional<Answer> answer(json::Reading& reading, json::Value value) {
  Answer answer;
  json::Fields fields(reading, value);
  fields.need("question", answer.question, json::text);
  answer.given = given(fields);
  fields.need("seconds", answer.seconds, json::whole(0, longest_seconds));
  fields.finish();
  return answer;
}

std::optional<std::vector<Answer>> answers(json::Reading& reading, json::Value value) {
  std::set<std::string> questions;
  const auto once = [&](json::Reading& r, json::Value v) {
    auto one = answer(r, v);
    if (!one->question.empty() && !questions.insert(one->question).second)
      r.mistake(v.find("question").value_or(v), "This question is answered twice.", "Keep one of the two.");
    return one;
  };
  auto all = json::list_of(once)(reading, value);
  if (all && all->size() > most_questions)
    reading.mistake(value, "There are more than 10,000 answers.", "No paper has more questions.");
  return all;
}

Attempt attempt(json::Reading& reading, json::Value value) {
  Attempt attempt;
  json::Fields fields(reading, value);
  fields.need("bank", attempt.bank, json::text);
  fields.need("revision", attempt.revision, json::whole(1, highest_revision));
  fields.need("seed", attempt.seed, seed);
  fields.need("language", attempt.language, json::text);
  fields.need("answers", attempt.answers, answers);
  fields.finish();
  return attempt;
}

std::string numbers(const std::vector<std::size_t>& list) {
  std::vector<std::string> all;
  for (const std::size_t n : list) all.push_back(std::to_string(n));
  return json::compact(all);
}

struct GivenMembers {
  std::vector<json::Member>& members;
  void operator()(const Unanswered&) const {}
  void operator()(const Chosen& c) const { members.emplace_back("chosen", std::to_string(c.choice)); }
  void operator()(const Ticked& t) const { members.emplace_back("ticked", numbers(t.choices)); }
  void operator()(const Ordered& o) const { members.emplace_back("order", numbers(o.steps)); }
  void operator()(const Typed& t) const { members.emplace_back("typed", json::in_quotes(t.text)); }
  void operator()(const Pointed& p) const {
    members.emplace_back("pointed", json::compact({std::to_string(p.point.x), std::to_string(p.point.y)}));
  }
};

std::string written(const Answer& answer) {
  std::vector<json::Member> members{{"question", json::in_quotes(answer.question)}};
  std::visit(GivenMembers{members}, answer.given);
  members.emplace_back("seconds", std::to_string(answer.seconds));
  return json::compact(members);
}

}  // namespace

tl::expected<Attempt, std::vector<Problem>> read_attempt(std::string_view json) {
  const auto tree = json::Tree::parse(json);
  if (!tree) return tl::unexpected(std::vector{tree.error()});
  json::Reading reading;
  reading.repeated_keys(*tree);
  Attempt read = attempt(reading, tree->root());
  if (reading.mistakes() > 0) return tl::unexpected(std::move(reading).in_order());
  return read;
}

std::string to_json(const Attempt& attempt) {
  std::vector<std::string> answers;
  for (const Answer& answer : attempt.answers) answers.push_back(written(answer));
  return json::compact({{"bank", json::in_quotes(attempt.bank)},
                        {"revision", std::to_string(attempt.revision)},
                        {"seed", json::in_quotes(seed_text(attempt.seed))},
                        {"language", json::in_quotes(attempt.language)},
                        {"answers", json::compact(answers)}});
}

}  // namespace wm::teach
