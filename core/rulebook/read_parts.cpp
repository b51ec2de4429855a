// The parts of a rulebook that have a form of their own.
#include <set>
#include <utility>

#include "core/json/kinds.h"
#include "core/rulebook/form.h"

namespace wm::forms {

namespace {

/// Reads an object with the form of a T. What comes back may hold defaults where a mistake was found.
template <class T>
std::optional<T> formed(json::Reading& reading, json::Value value) {
  T thing;
  json::Fields fields(reading, value);
  form(fields, thing);
  fields.finish();
  return thing;
}

/// The same for what comes in kinds: `choice` is the variant inside the thing.
template <class Choice, class WordOf>
void read_kind(json::Reading& reading, json::Value value, Choice& choice, const WordOf& word_of) {
  json::Fields fields(reading, value);
  const auto kind = [&](json::Reading& r, json::Value v) { return json::kind_of<Choice>(r, v, word_of); };
  if (fields.need("kind", choice, kind)) {
    std::visit([&](auto& one) { form(fields, one); }, choice);
  } else {
    fields.give_up();
  }
  fields.finish();
}

}  // namespace

std::optional<std::string> plain_name(json::Reading& reading, json::Value value) {
  auto name = json::text(reading, value);
  if (name && name->find('/') != std::string::npos)
    reading.mistake(value, "There is a \"/\" in the name " + json::in_quotes(*name) + ".",
                    "Leave it out: \"/\" stands between a class and its mode.");
  return name;
}

std::optional<Requirement> requirement(json::Reading& reading, json::Value value) {
  using Need = decltype(Requirement::need);
  Requirement requirement;
  read_kind(reading, value, requirement.need, [](const Need& need) { return kind_word(need); });
  return requirement;
}

std::optional<std::vector<Requirement>> requirements(json::Reading& reading, json::Value value) {
  constexpr int most_lists = 16;
  if (reading.lists == most_lists) {
    reading.mistake(value, "This list stands inside of 16 others.",
                    "Write the requirement with at most 16 lists one inside another.");
    return std::nullopt;
  }
  ++reading.lists;
  auto list = json::list_of(requirement)(reading, value);
  --reading.lists;
  return list;
}

std::optional<CountOrAll> count_or_all(json::Reading& reading, json::Value value) {
  if (value.kind() == json::Kind::text) {
    if (value.text() == "all") return CountOrAll{};
    json::not_one_of(reading, value, {"all"});
    return std::nullopt;
  }
  const auto number = count(reading, value);
  return number ? std::optional(CountOrAll{*number}) : std::nullopt;
}

std::optional<Retry> retry(json::Reading& reading, json::Value value) {
  if (value.kind() == json::Kind::object) return formed<Retry>(reading, value);
  json::Fields(reading, value).finish();
  return std::nullopt;
}

std::optional<std::vector<Condition>> conditions(json::Reading& reading, json::Value value) {
  const auto condition = [](json::Reading& r, json::Value v) {
    Condition one;
    read_kind(r, v, one, [](const Condition& c) { return kind_word(c); });
    return std::optional(one);
  };
  return json::list_of(condition)(reading, value);
}

std::optional<std::vector<Gate>> gates(json::Reading& reading, json::Value value) {
  return json::list_of(formed<Gate>)(reading, value);
}

std::optional<std::vector<Tier>> tiers(json::Reading& reading, json::Value value) {
  return json::list_of(formed<Tier>)(reading, value);
}

std::optional<std::vector<MachineClass>> classes(json::Reading& reading, json::Value value) {
  return json::list_of(formed<MachineClass>)(reading, value);
}

std::optional<std::vector<FourEyes>> four_eyes(json::Reading& reading, json::Value value) {
  auto list = json::list_of(json::one_of({FourEyes::reinstate, FourEyes::strike_out}))(reading, value);
  if (!list) return list;
  std::vector<FourEyes> once = *list;
  std::sort(once.begin(), once.end());
  if (std::adjacent_find(once.begin(), once.end()) != once.end())
    reading.mistake(value, "The same stands here twice.", "Write each once.");
  return list;
}

std::optional<std::vector<std::string>> modes(json::Reading& reading, json::Value value) {
  // Modes need to differ within their class alone.
  json::NameScope outer = std::exchange(reading.names, {});
  const auto mode = [](json::Reading& r, json::Value v) {
    auto name = plain_name(r, v);
    if (name) r.names.definitions.push_back({v, json::Names::mode, *name});
    return name;
  };
  auto list = json::list_of(mode)(reading, value);
  reading.repeated_names();
  reading.names = std::move(outer);
  return list;
}

std::optional<ModeGates> mode_gates(json::Reading& reading, json::Value value,
                                    const std::vector<std::string>* modes) {
  if (value.kind() != json::Kind::object) {
    json::Fields(reading, value).finish();
    return std::nullopt;
  }
  const std::set<std::string_view> known =
      modes ? std::set<std::string_view>(modes->begin(), modes->end()) : std::set<std::string_view>();
  ModeGates all;
  for (std::size_t i = 0; i < value.size(); ++i) {
    const json::Value list = value[i];
    if (list.repeated()) continue;
    const std::string mode(list.key());
    if (modes && !known.contains(mode))
      reading.mistake(list, "The class has no mode " + json::in_quotes(mode) + ".",
                      "Name one of the class's \"modes\", or add this one there.");
    if (auto read = gates(reading, list)) all[mode] = std::move(*read);
  }
  return all;
}

}  // namespace wm::forms
