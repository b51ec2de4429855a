#include "db/journal/leaf.h"

#include <nlohmann/json.hpp>

#include "core/records/form.h"
#include "core/records/json.h"
#include "core/rulebook/json.h"
#include "core/rulebook/read.h"
#include "core/time/text.h"
#include "db/journal/said.h"
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

json::Value need(json::Value object, const char* key) {
  const auto value = object.find(key);
  if (!value) throw std::invalid_argument(std::string("it has no \"") + key + "\"");
  return *value;
}
std::string text_in(json::Value object, const char* key) {
  const json::Value value = need(object, key);
  if (value.kind() != json::Kind::text)
    throw std::invalid_argument(std::string("\"") + key + "\" is no text");
  return std::string(value.text());
}
std::string text_or(json::Value object, const char* key, const char* otherwise) {
  return object.find(key) ? text_in(object, key) : otherwise;
}
std::int64_t whole_in(json::Value object, const char* key) {
  const json::Value value = need(object, key);
  if (value.kind() != json::Kind::whole)
    throw std::invalid_argument(std::string("\"") + key + "\" is no number");
  return value.whole();
}
/// A place in an order: from 1 on, and as far as every reader of JSON counts (RFC 8259, section 6), so that
/// there is always a next one.
std::int64_t place_in(json::Value object, const char* key) {
  const std::int64_t place = whole_in(object, key);
  if (place >= 1 && place < std::int64_t{1} << 53) return place;
  throw std::invalid_argument(std::string("\"") + key + "\" is no place in an order");
}
bool truth_in(json::Value object, const char* key) {
  const auto value = object.find(key);
  return value && value->kind() == json::Kind::truth && value->truth();
}
Instant instant_in(json::Value object, const char* key) {
  const auto instant = parse_instant(text_in(object, key));
  if (!instant) throw std::invalid_argument(std::string("\"") + key + "\" is no time");
  return *instant;
}

/// What came by an import was entered at no computer of its own. A word that means nothing is for verify to
/// find.
Station station_in(const std::string& said) {
  for (const Station each : {Station::front, Station::machine, Station::quiz, Station::office})
    if (said == word(each)) return each;
  return Station::whole;
}

Origin origin_in(json::Value leaf) {
  return {text_or(leaf, "action", text_in(need(leaf, "body"), "kind").c_str()), text_or(leaf, "by", ""),
          text_or(leaf, "station", "whole"), truth_in(leaf, "paper"), text_or(leaf, "second", "")};
}

tl::unexpected<Problem> unreadable(const std::string& why) {
  return refuse("leaf", "The record cannot be read: " + why + ".",
                "Bring back the last backup, and keep this file.");
}

Expected<json::Tree> tree_of(std::string_view leaf) {
  auto tree = json::Tree::parse(leaf);
  if (!tree) return unreadable(tree.error().what);
  if (!tree->repeated().empty()) return unreadable("a field stands in it twice");
  return std::move(*tree);
}

Expected<void> first_mistake(json::Reading& reading) {
  if (reading.mistakes() == 0) return {};
  return tl::make_unexpected(std::move(reading).in_order().front());
}

/// What the record's own reader makes of it: hashes replaced by what they stand for.
Expected<void> read_body(json::Value body, const ByField& kept, std::optional<Day> born_by,
                         LeafContent& content) {
  json::Reading reading;
  if (content.kind == "rulebook") {
    content.rulebook = read_rulebook(reading, need(body, "rulebook")).rulebook;
    content.entry.fact = ShopFact(RulebookIssued{content.rulebook->version});
    return first_mistake(reading);
  }
  if (is_shop_kind(content.kind)) {
    auto fact = read_shop_fact(content.kind, body, kept);
    if (!fact) return tl::make_unexpected(fact.error());
    if (auto* details = std::get_if<Details>(&*fact)) {
      const std::string text = value_at(kept, "details");
      details->details = text.empty() ? nameless(details->person) : details_in(details->person, text);
    }
    if (auto* pin = std::get_if<PinChosen>(&*fact)) pin->kept = value_at(kept, "pin");
    content.entry.fact = std::move(*fact);
    return {};
  }
  if (content.kind == "birth") {
    const std::string born = value_at(kept, "born");
    const auto day = born.empty() ? born_by : parse_day(born);
    content.blank = born.empty() && !born_by;
    if (content.blank) return {};
    if (!day) return unreadable("the birth date is none");
    content.entry.fact = Fact(Birth{text_in(body, "person"), *day});
    return {};
  }
  content.entry.fact = read_record(reading, body).fact;
  return first_mistake(reading);
}

}  // namespace

ByField personal_in(const Entry& entry) {
  ByField values;
  if (const auto* birth = as<Birth>(entry.fact)) values["born"] = to_text(birth->born);
  if (const auto* details = as<Details>(entry.fact)) values["details"] = details_text(details->details);
  if (const auto* pin = as<PinChosen>(entry.fact)) values["pin"] = pin->kept;
  if (const auto* own = std::get_if<ShopFact>(&entry.fact)) values.merge(personal_in(*own));
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
  if (const auto* own = std::get_if<ShopFact>(&entry.fact))
    for (const auto& [field, text] : personal_in(*own)) body["hashed"][field] = hashes.at(field);
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
  if (origin.station != "whole") leaf["station"] = origin.station;
  return leaf.dump();
}

std::string shop_leaf(const ShopDetails& details) {
  return Json{
      {"demo_clock", details.demo_clock}, {"kind", "shop"}, {"name", details.name}, {"zone", details.zone}}
      .dump();
}

Expected<LeafContent> read_leaf(std::string_view leaf, const ByField& kept, std::optional<Day> born_by) {
  const auto tree = tree_of(leaf);
  if (!tree) return tl::make_unexpected(tree.error());
  try {
    const json::Value all = tree->root(), body = need(all, "body");
    LeafContent content;
    content.kind = text_in(body, "kind");
    Entry& entry = content.entry;
    entry.order = place_in(all, "order");
    entry.commit = place_in(all, "commit");
    entry.id = text_in(body, "id");
    entry.at = instant_in(body, "at");
    entry.recorded = instant_in(body, "recorded");
    content.origin = origin_in(all);
    entry.entered_by = content.origin.by;
    entry.from_paper = content.origin.from_paper;
    entry.second = content.origin.second;
    entry.station = station_in(content.origin.station);
    entry.note = value_at(kept, "note");
    if (const char* field = personal_field(content.kind)) content.hashes[field] = text_in(body, field);
    if (const auto hashed = body.find("hashed"))
      for (std::size_t i = 0; i < hashed->size(); ++i) {
        const std::string field((*hashed)[i].key());
        content.hashes[field] = text_in(*hashed, field.c_str());
      }
    if (all.find("note")) content.hashes["note"] = text_in(all, "note");
    return read_body(body, kept, born_by, content).map([&] { return std::move(content); });
  } catch (const std::exception& e) {
    return unreadable(said(e));
  }
}

Expected<Origin> origin_of(std::string_view leaf) {
  const auto tree = tree_of(leaf);
  if (!tree) return tl::make_unexpected(tree.error());
  try {
    return origin_in(tree->root());
  } catch (const std::exception& e) {
    return unreadable(said(e));
  }
}

}  // namespace wm::db
