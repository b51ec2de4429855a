#include "db/journal/leaf.h"

#include <nlohmann/json.hpp>

#include "core/records/json.h"
#include "core/rulebook/json.h"
#include "core/time/text.h"
#include "db/journal/shop_fact_json.h"
#include "db/journal/subject.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

using Json = nlohmann::json;

/// The field of a body that is personal, by kind; a note stands beside the body.
const char* personal_field(std::string_view kind) {
  return kind == "birth" ? "born" : kind == "details" ? "details" : kind == "pin" ? "pin" : nullptr;
}

std::string details_text(const Person& p) {
  return Json{{"number", p.number}, {"given", p.given},
              {"family", p.family}, {"nickname", p.nickname},
              {"card", p.card},     {"email", p.email},
              {"phone", p.phone},   {"emergency_contact", p.emergency_contact}}
      .dump();
}

Person details_in(const PersonId& id, const std::string& text) {
  const Json json = Json::parse(text);
  const auto field = [&](const char* key) { return json.at(key).get<std::string>(); };
  return {id,
          field("number"),
          field("given"),
          field("family"),
          field("nickname"),
          field("card"),
          field("email"),
          field("phone"),
          field("emergency_contact")};
}

std::string value_at(const ByField& fields, const char* field) {
  const auto found = fields.find(field);
  return found == fields.end() ? "" : found->second;
}

Origin origin_in(const Json& leaf) {
  return {leaf.value("action", leaf.at("body").at("kind").get<std::string>()), leaf.value("by", ""),
          leaf.value("station", "desk"), leaf.value("paper", false), leaf.value("second", "")};
}

tl::unexpected<Problem> unreadable(const std::exception& e) {
  return refuse("leaf", std::string("The record cannot be read: ") + e.what() + ".",
                "Bring back the last backup, and keep this file.");
}

Instant instant_in(const Json& json, const char* key) {
  const auto instant = parse_instant(json.at(key).get<std::string>());
  if (!instant) throw std::invalid_argument(std::string(key) + " is no time");
  return *instant;
}

/// What the record's own reader makes of it: hashes replaced by what they stand for.
Expected<void> read_body(const Json& body, const ByField& kept, std::optional<Day> born_by,
                         LeafContent& content) {
  if (content.kind == "rulebook") {
    auto rulebook = read_rulebook(body.at("rulebook").dump());
    if (!rulebook) return tl::make_unexpected(rulebook.error().front());
    content.rulebook = std::move(*rulebook);
    content.entry.fact = ShopFact(RulebookIssued{content.rulebook->version});
    return {};
  }
  if (is_shop_kind(content.kind)) {
    auto fact = read_shop_fact(content.kind, body);
    if (!fact) return tl::make_unexpected(fact.error());
    if (auto* details = std::get_if<Details>(&*fact)) {
      const std::string text = value_at(kept, "details");
      details->details = text.empty() ? nameless(details->person) : details_in(details->person, text);
    }
    if (auto* pin = std::get_if<PinChosen>(&*fact)) pin->kept = value_at(kept, "pin");
    content.entry.fact = std::move(*fact);
    return {};
  }
  Json copy;
  const Json* whole = &body;
  if (content.kind == "birth") {
    std::string born = value_at(kept, "born");
    if (born.empty() && born_by) born = to_text(*born_by);
    content.blank = born.empty();
    if (content.blank) return {};
    copy = body;
    copy["born"] = born;
    whole = &copy;
  }
  auto record = read_record(whole->dump());
  if (!record) return tl::make_unexpected(record.error().front());
  content.entry.fact = std::move(record->fact);
  return {};
}

}  // namespace

ByField personal_in(const Entry& entry) {
  ByField values;
  if (const auto* birth = as<Birth>(entry.fact)) values["born"] = to_text(birth->born);
  if (const auto* details = as<Details>(entry.fact)) values["details"] = details_text(details->details);
  if (const auto* pin = as<PinChosen>(entry.fact)) values["pin"] = pin->kept;
  if (!entry.note.empty()) values["note"] = entry.note;
  return values;
}

Json body_of(const Entry& entry, const ByField& hashes, const Rulebook* rulebook) {
  Json body = std::holds_alternative<Fact>(entry.fact)
                  ? Json::parse(to_json(
                        Record{entry.id, entry.at, entry.recorded, std::nullopt, std::get<Fact>(entry.fact)}))
                  : to_json(entry.id, entry.at, entry.recorded, std::get<ShopFact>(entry.fact));
  if (rulebook != nullptr) {
    body.erase("version");
    body["rulebook"] = Json::parse(to_json(*rulebook));
  }
  if (const char* field = personal_field(any_kind_word(entry.fact))) body[field] = hashes.at(field);
  return body;
}

std::string to_leaf(std::int64_t commit, std::int64_t order, const Json& body, const Origin& origin,
                    const std::string& note) {
  Json leaf = {{"body", body}, {"commit", commit}, {"order", order}};
  if (origin.action != body.at("kind")) leaf["action"] = origin.action;
  if (!origin.by.empty()) leaf["by"] = origin.by;
  if (!note.empty()) leaf["note"] = note;
  if (origin.from_paper) leaf["paper"] = true;
  if (!origin.second.empty()) leaf["second"] = origin.second;
  if (origin.station != "desk") leaf["station"] = origin.station;
  return leaf.dump();
}

std::string shop_leaf(const ShopDetails& details) {
  return Json{
      {"demo_clock", details.demo_clock}, {"kind", "shop"}, {"name", details.name}, {"zone", details.zone}}
      .dump();
}

Expected<LeafContent> read_leaf(std::string_view leaf, const ByField& kept, std::optional<Day> born_by) {
  try {
    const Json json = Json::parse(leaf);
    const Json& body = json.at("body");
    LeafContent content;
    content.kind = body.at("kind").get<std::string>();
    Entry& entry = content.entry;
    entry.order = json.at("order").get<std::int64_t>();
    entry.commit = json.at("commit").get<std::int64_t>();
    entry.id = body.at("id").get<std::string>();
    entry.at = instant_in(body, "at");
    entry.recorded = instant_in(body, "recorded");
    entry.entered_by = json.value("by", "");
    entry.from_paper = json.value("paper", false);
    entry.second = json.value("second", "");
    entry.note = value_at(kept, "note");
    content.origin = origin_in(json);
    if (const char* field = personal_field(content.kind))
      content.hashes[field] = body.at(field).get<std::string>();
    if (json.contains("note")) content.hashes["note"] = json.at("note").get<std::string>();
    return read_body(body, kept, born_by, content).map([&] { return std::move(content); });
  } catch (const std::exception& e) {
    return unreadable(e);
  }
}

Expected<Origin> origin_of(std::string_view leaf) {
  try {
    return origin_in(Json::parse(leaf));
  } catch (const std::exception& e) {
    return unreadable(e);
  }
}

}  // namespace wm::db
