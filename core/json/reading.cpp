#include "core/json/reading.h"

#include <algorithm>
#include <tuple>

#include "core/json/writing.h"
#include "core/time/text.h"

namespace wm::json {

namespace {

std::string_view kind_name(Kind kind) {
  switch (kind) {
    case Kind::null:
      return "null";
    case Kind::truth:
      return "true or false";
    case Kind::whole:
      return "a number";
    case Kind::other_number:
      return "a number that is not written as an integer, or too big a one";
    case Kind::text:
      return "text";
    case Kind::list:
      return "a list";
    case Kind::object:
      return "an object";
  }
  return "";
}

/// The value as a short piece of a sentence.
std::string shown(Value value) {
  constexpr std::size_t longest = 60;
  if (value.kind() == Kind::text && value.text().size() <= longest) return in_quotes(value.text());
  if (value.kind() == Kind::whole) return std::to_string(value.whole());
  return std::string(kind_name(value.kind()));
}

bool is_kind(Reading& reading, Value value, Kind kind, std::string_view article) {
  if (value.kind() == kind) return true;
  reading.mistake(value, "This is " + std::string(kind_name(value.kind())) + ".",
                  "Write " + std::string(article) + ".");
  return false;
}

}  // namespace

void Reading::mistake(Value at, std::string what, std::string remedy) {
  constexpr std::size_t most = 10'000, most_bytes = 8'000'000;
  if (mistakes_.size() == most || kept_bytes_ > most_bytes) {
    ++more_;
    return;
  }
  Problem problem{at.pointer(), std::move(what), std::move(remedy)};
  kept_bytes_ += problem.where.size() + problem.what.size() + problem.remedy.size();
  mistakes_.push_back({at.place(), std::move(problem)});
}

void Reading::repeated_keys(const Tree& tree) {
  for (const Value value : tree.repeated())
    mistake(value, "The field " + in_quotes(value.key()) + " stands here for the second time.",
            "Keep one of the two.");
}

void Reading::repeated_names() {
  const auto order = [](const Named& a, const Named& b) {
    return std::tuple(a.names, std::string_view(a.name), a.at.place()) <
           std::tuple(b.names, std::string_view(b.name), b.at.place());
  };
  auto& all = names.definitions;
  std::sort(all.begin(), all.end(), order);
  for (std::size_t i = 1; i < all.size(); ++i)
    if (all[i].names == all[i - 1].names && all[i].name == all[i - 1].name)
      mistake(all[i].at, "There is another one before it called " + in_quotes(all[i].name) + ".",
              "Give each its own name.");
}

std::vector<Problem> Reading::in_order() && {
  std::stable_sort(mistakes_.begin(), mistakes_.end(),
                   [](const Placed& a, const Placed& b) { return a.place < b.place; });
  std::vector<Problem> problems;
  for (Placed& placed : mistakes_) problems.push_back(std::move(placed.problem));
  if (more_ > 0)
    problems.push_back({"", "There are " + std::to_string(more_) + " more mistakes.",
                        "Correct those before this one, then read the file again."});
  return problems;
}

std::optional<std::string> text(Reading& reading, Value value) {
  if (!is_kind(reading, value, Kind::text, "text")) return std::nullopt;
  return std::string(value.text());
}

std::optional<bool> truth(Reading& reading, Value value) {
  if (!is_kind(reading, value, Kind::truth, "true or false")) return std::nullopt;
  return value.truth();
}

std::optional<Instant> instant(Reading& reading, Value value) {
  const auto read = value.kind() == Kind::text ? parse_instant(value.text()) : std::nullopt;
  if (!read)
    reading.mistake(value, "This is no instant: " + shown(value) + ".",
                    "Write a whole second in UTC of the years 1900 to 2999, like \"2026-03-14T15:20:00Z\".");
  return read;
}

std::optional<Day> day(Reading& reading, Value value) {
  const auto read = value.kind() == Kind::text ? parse_day(value.text()) : std::nullopt;
  if (!read)
    reading.mistake(value, "This is no day: " + shown(value) + ".",
                    "Write a date of the years 1900 to 2999, like \"2026-03-14\".");
  return read;
}

std::optional<int> whole(Reading& reading, Value value, int low, int high) {
  if (value.kind() == Kind::whole && value.whole() >= low && value.whole() <= high)
    return static_cast<int>(value.whole());
  const std::string what = value.kind() == Kind::whole ? "The number " + shown(value) + " is out of range."
                                                       : "This is " + shown(value) + ".";
  const std::string range =
      low == high ? "the number " + std::to_string(low) + ", no other"
                  : "a whole number from " + std::to_string(low) + " to " + std::to_string(high);
  reading.mistake(value, what, "Write " + range + ".");
  return std::nullopt;
}

bool is_list(Reading& reading, Value value) { return is_kind(reading, value, Kind::list, "a list"); }

std::optional<Period> period(Reading& reading, Value value) {
  struct Unit {
    std::string_view word;
    PeriodUnit unit;
    int most;
  };
  constexpr Unit units[] = {{"days", PeriodUnit::days, 36525},
                            {"months", PeriodUnit::months, 1200},
                            {"calendar_months", PeriodUnit::calendar_months, 1200}};
  constexpr const char* remedy = R"(Write {"days": n}, {"months": n} or {"calendar_months": n}.)";
  if (value.kind() != Kind::object || value.size() == 0) {
    reading.mistake(value,
                    value.kind() == Kind::object ? "A period without a length."
                                                 : "This is no period: " + shown(value) + ".",
                    remedy);
    return std::nullopt;
  }
  for (std::size_t i = 1; i < value.size(); ++i)
    if (!value[i].repeated()) reading.mistake(value[i], "A period has one field; this is one more.", remedy);
  const Value length = value[0];
  for (const Unit& unit : units) {
    if (length.key() != unit.word) continue;
    const auto count = whole(reading, length, 1, unit.most);
    return count ? std::optional(Period{unit.unit, *count}) : std::nullopt;
  }
  reading.mistake(length, "A period has no field " + in_quotes(length.key()) + ".", remedy);
  return std::nullopt;
}

void not_one_of(Reading& reading, Value value, const std::vector<std::string_view>& words) {
  std::string remedy;
  for (std::size_t i = 0; i < words.size(); ++i)
    remedy += (i == 0 ? "" : i + 1 == words.size() ? " or " : ", ") + in_quotes(words[i]);
  reading.mistake(value,
                  value.kind() == Kind::text ? "The word " + shown(value) + " is unknown here."
                                             : "This is " + shown(value) + ".",
                  "Write " + remedy + ".");
}

Fields::Fields(Reading& reading, Value object) : reading_(reading), object_(object) {
  if (!is_kind(reading, object, Kind::object, "an object")) give_up();
}

std::optional<Value> Fields::take(std::string_view key) {
  known_.emplace_back(key);
  return object_.find(key);
}

void Fields::missing(std::string_view key) {
  if (object_.kind() != Kind::object) return;
  reading_.mistake(object_, "The field " + in_quotes(key) + " is missing.", "Add it.");
}

void Fields::finish() {
  if (known_everything_) return;
  for (std::size_t i = 0; i < object_.size(); ++i) {
    const Value member = object_[i];
    if (member.repeated() || std::find(known_.begin(), known_.end(), member.key()) != known_.end()) continue;
    std::string list;
    for (const auto& key : known_) list += (list.empty() ? "" : ", ") + in_quotes(key);
    reading_.mistake(member, "The field " + in_quotes(member.key()) + " is unknown here.",
                     "Take it out. The fields known here: " + list + ".");
  }
}

}  // namespace wm::json
