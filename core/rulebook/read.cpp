#include "core/rulebook/read.h"

#include <unordered_set>
#include <utility>

#include "core/rulebook/circles.h"
#include "core/rulebook/form.h"
#include "core/rulebook/json.h"

namespace wm {

namespace {

using Known = std::unordered_set<std::string>;

Known targets_and_classes(const Rulebook& rulebook) {
  Known known;
  for (auto& target : targets_of(rulebook)) known.insert(std::move(target));
  for (const MachineClass& c : rulebook.classes) known.insert(c.name);
  return known;
}

Known tiers(const Rulebook& rulebook) {
  Known known;
  for (const Tier& tier : rulebook.tiers) known.insert(std::to_string(tier.tier));
  return known;
}

void undefined_names(json::Reading& reading, const Rulebook& rulebook, bool targets_known, bool tiers_known) {
  const Known targets = targets_and_classes(rulebook), numbers = tiers(rulebook);
  for (const json::Named& use : reading.names.uses) {
    if (use.names == json::Names::tier && tiers_known && !numbers.contains(use.name))
      reading.mistake(use.at, "The rulebook has no tier " + use.name + ".",
                      "Name one of its \"tiers\", or add this one there.");
    if (use.names == json::Names::on && targets_known && !targets.contains(use.name))
      reading.mistake(use.at, "The rulebook has no target or class " + json::in_quotes(use.name) + ".",
                      "Name one of its \"classes\", alone or with \"/\" and a mode, or add it there.");
  }
}

void circles(json::Reading& reading, json::Value value, const Rulebook& rulebook) {
  const auto circle = find_circle(rulebook);
  if (!circle) return;
  constexpr std::size_t longest = 20;
  std::string path;
  for (std::size_t i = 0; i < circle->rungs.size(); ++i) {
    if (i > longest && i + 2 < circle->rungs.size()) continue;
    path +=
        (i == 0 ? "" : " needs ") + (i == longest && i + 2 < circle->rungs.size() ? "…" : circle->rungs[i]);
  }
  reading.mistake(value.at(circle->gate).value_or(value),
                  "The rungs depend on one another in a circle: " + path + ".",
                  "Take one of these requirements out, or ask for a lower rung in it.");
}

template <class Form>
RulebookRead read(json::Reading& reading, json::Value value, const Form& form) {
  RulebookRead read{};
  json::NameScope outer = std::exchange(reading.names, {});
  const std::size_t mistakes_before = reading.mistakes();
  json::Fields fields(reading, value);
  form(fields, read.rulebook);
  fields.finish();

  const auto& unreadable = reading.names.unreadable;
  const bool tiers_known = !unreadable.contains(json::Names::tier);
  const bool targets_known =
      !unreadable.contains(json::Names::machine_class) && !unreadable.contains(json::Names::on);
  reading.repeated_names();
  undefined_names(reading, read.rulebook, targets_known, tiers_known);
  if (reading.mistakes() == mistakes_before) circles(reading, value, read.rulebook);
  read.names_known = tiers_known && targets_known;
  reading.names = std::move(outer);
  return read;
}

}  // namespace

RulebookRead read_rulebook(json::Reading& reading, json::Value value) {
  return read(reading, value, [](json::Fields& fields, Rulebook& r) { forms::form(fields, r); });
}

RulebookRead read_rules(json::Reading& reading, json::Value value) {
  return read(reading, value, [](json::Fields& fields, Rulebook& r) { forms::rules(fields, r); });
}

tl::expected<Rulebook, std::vector<Problem>> read_rulebook(std::string_view json) {
  const auto tree = json::Tree::parse(json);
  if (!tree) return tl::unexpected(std::vector{tree.error()});
  json::Reading reading;
  reading.repeated_keys(*tree);
  RulebookRead read = read_rulebook(reading, tree->root());
  if (reading.mistakes() > 0) return tl::unexpected(std::move(reading).in_order());
  return std::move(read.rulebook);
}

std::vector<Problem> mistakes_in(const Rulebook& rulebook) {
  // One list of what a rulebook must be, not two: it is the reader's.
  const auto read = read_rulebook(to_json(rulebook));
  return read ? std::vector<Problem>() : read.error();
}

}  // namespace wm
