#include "core/records/json.h"

#include <algorithm>

#include "core/json/kinds.h"
#include "core/records/form.h"

namespace wm {

std::string written(const Scope& scope) {
  if (const auto* tier = std::get_if<TierScope>(&scope))
    return "{\"tier\":" + std::to_string(tier->tier) + "}";
  if (const auto* target = std::get_if<TargetScope>(&scope))
    return "{\"target\":" + json::in_quotes(target->target) + "}";
  return "\"all\"";
}

namespace forms {

std::optional<int> tier(json::Reading& reading, json::Value value) {
  const auto number = tier_number(reading, value);
  if (number) reading.names.uses.push_back({value, json::Names::tier, std::to_string(*number)});
  return number;
}

std::optional<Scope> scope(json::Reading& reading, json::Value value) {
  if (value.kind() == json::Kind::text && value.text() == "all") return Everything{};
  constexpr const char* remedy = R"(Write "all", {"tier": n} or {"target": name}.)";
  if (value.kind() != json::Kind::object || (value.size() == 0)) {
    reading.mistake(value, "This is no scope.", remedy);
    return std::nullopt;
  }
  json::Fields fields(reading, value);
  TierScope by_tier{};
  TargetScope by_target;
  const bool has_tier = fields.may("tier", by_tier.tier, tier);
  const bool has_target = fields.may("target", by_target.target, target);
  fields.finish();
  if (fields.has("tier") && fields.has("target"))
    reading.mistake(value[1], "A scope has one field; this is one more.", remedy);
  if (has_tier) return by_tier;
  if (has_target) return by_target;
  return std::nullopt;
}

std::optional<std::string> record_id(json::Reading& reading, json::Value value) {
  auto id = json::text(reading, value);
  if (id && id->starts_with("step-"))
    reading.mistake(value, "The id " + json::in_quotes(*id) + " begins like that of a step on a route.",
                    "Give it an id that does not begin with \"step-\".");
  return id;
}

std::optional<Fact> fact_kind(json::Reading& reading, json::Value value) {
  return json::kind_of<Fact>(reading, value, kind_word);
}

}  // namespace forms

Record read_record(json::Reading& reading, json::Value value) {
  Record record;
  json::Fields fields(reading, value);
  forms::form(fields, record);
  fields.finish();
  return record;
}

tl::expected<Record, std::vector<Problem>> read_record(std::string_view json) {
  const auto tree = json::Tree::parse(json);
  if (!tree) return tl::unexpected(std::vector{tree.error()});
  json::Reading reading;
  reading.repeated_keys(*tree);
  Record record = read_record(reading, tree->root());
  if (reading.mistakes() > 0) return tl::unexpected(std::move(reading).in_order());
  return record;
}

namespace {

json::Writer written(const Record& record) {
  Record copy = record;  // a form fills in as well as reads out, so it takes what it describes by reference
  json::Writer writer;
  forms::form(writer, copy);
  return writer;
}

}  // namespace

std::string to_answer(const Record& record) { return json::object(written(record).members()); }

std::string to_json(const Record& record) {
  auto members = written(record).members();
  std::sort(members.begin(), members.end());
  return json::compact(members);
}

}  // namespace wm
