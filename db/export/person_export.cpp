#include "db/export/person_export.h"

#include <algorithm>
#include <array>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "core/time/text.h"
#include "db/journal/shop_fact_json.h"
#include "db/refuse.h"
#include "db/sql/file.h"

namespace wm::db {
namespace {

using Json = nlohmann::json;

constexpr std::array named_in_body = {"person",     "assessor",   "second_assessor",
                                      "supervisor", "key_holder", "put_on_by",
                                      "host",       "keep",       "other"};

std::string text_at(const Json& object, const char* key) {
  const auto found = object.find(key);
  return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

/// One walk over the records in their order: what a record refers to stands before it.
class Walk {
 public:
  Walk(Connection& connection, const std::vector<PersonId>& ids) : connection_(connection), ids_(ids) {
    for (const PersonId& id : ids) quoted_.push_back(Json(id).dump());
  }

  Expected<void> take(const QSqlQuery& row) {
    const std::string leaf = text(row.value(1)), refers_to = text(row.value(3));
    const bool named = std::any_of(quoted_.begin(), quoted_.end(),
                                   [&](const std::string& id) { return leaf.find(id) != std::string::npos; });
    const bool tells =
        leaf.find("\"incidents\"") != std::string::npos || leaf.find("\"lessons\"") != std::string::npos;
    if (!named && !tells && place_of_.find(refers_to) == place_of_.end()) return {};
    const Json content = Json::parse(leaf);
    const Json& body = content.at("body");
    const Json as = sides(content);
    const bool strikes = body.at("kind") == "strike_out";
    const bool adds = theirs_.count(refers_to) != 0 || tells_of_them(body);
    if (strikes)
      if (auto marked = mark_struck(row, content, refers_to); !marked) return marked;
    if (as.empty() && !adds && !(strikes && place_of_.count(refers_to) != 0)) return {};
    if (in_body(as) || adds) theirs_.insert(text_at(body, "id"));
    return add(row, content, as);
  }

  Json& records() { return records_; }
  const Json& births() const { return births_; }
  const std::set<PersonId>& known_by_name() const { return known_by_name_; }
  bool pin_set() const { return pin_set_; }
  const std::string& key() const { return key_; }

 private:
  bool is_them(const std::string& id) const { return std::find(ids_.begin(), ids_.end(), id) != ids_.end(); }

  /// What happened, and a group's lesson, are told once, in a record that names those of who was there.
  bool tells_of_them(const Json& body) const {
    return std::ranges::any_of(std::array{"incidents", "lessons"}, [&](const char* key) {
      const auto records = body.find(key);
      return records != body.end() && std::any_of(records->begin(), records->end(), [&](const Json& id) {
               return id.is_string() && theirs_.count(id.get<std::string>()) != 0;
             });
    });
  }

  Json sides(const Json& content) const {
    Json as = Json::array();
    for (const char* key : named_in_body)
      if (is_them(text_at(content.at("body"), key))) as.push_back(key);
    if (const auto all = content.at("body").find("instructors"); all != content.at("body").end())
      for (const Json& id : *all)
        if (id.is_string() && is_them(id.get<std::string>())) as.push_back("instructor");
    if (is_them(text_at(content, "by"))) as.push_back("entered_by");
    if (is_them(text_at(content, "second"))) as.push_back("second");
    return as;
  }
  static bool in_body(const Json& as) {
    return std::any_of(as.begin(), as.end(),
                       [](const Json& side) { return side != "entered_by" && side != "second"; });
  }

  Expected<void> mark_struck(const QSqlQuery& row, const Json& content, const RecordId& struck) {
    const auto found = place_of_.find(struck);
    if (found == place_of_.end()) return {};
    const Json& body = content.at("body");
    // Strike-outs of before free text was kept apart hold their reason themselves.
    Json reason = text_at(body, "reason");
    if (body.contains("hashed")) {
      const auto kept = kept_apart(row.value(0).toLongLong(), true);
      if (!kept) return tl::make_unexpected(kept.error());
      reason = kept->at("reason").value("value", Json(nullptr));
    }
    records_[found->second]["struck_out"] = {
        {"record", body.at("id")}, {"at", body.at("at")}, {"reason", std::move(reason)}};
    return {};
  }

  Expected<void> add(const QSqlQuery& row, const Json& content, const Json& as) {
    const Json& body = content.at("body");
    Json record = {{"as", as},
                   {"order", row.value(0).toLongLong()},
                   {"hash", row.value(2).toByteArray().toHex().toStdString()},
                   {"entered_by", text_at(content, "by")},
                   {"says", body},
                   {"struck_out", nullptr}};
    const bool pin = body.at("kind") == "pin";
    // What tests a PIN is not told, not even as a hash of it; so this leaf cannot be told as it is.
    if (pin)
      record["says"].erase("pin");
    else
      record["leaf"] = text(row.value(1));
    const bool about = theirs_.count(text_at(body, "id")) != 0 && about_them(body);
    auto kept = kept_apart(row.value(0).toLongLong(), about);
    if (!kept) return tl::make_unexpected(kept.error());
    if (pin && is_them(text_at(body, "person"))) note_pin(body, *kept);
    kept->erase("pin");
    note_birth(body, *kept);
    note_known(body);
    record["private"] = std::move(*kept);
    place_of_[text_at(body, "id")] = records_.size();
    records_.push_back(std::move(record));
    return {};
  }

  /// Whether what is personal in a record is this person's, and not somebody's whom they met in it.
  bool about_them(const Json& body) const {
    const std::string person = text_at(body, "person");
    return person.empty() || is_them(person);
  }

  Expected<Json> kept_apart(std::int64_t order, bool about) {
    Json kept = Json::object();
    // The value that tests a PIN does not leave the file.
    auto query = connection_.run(
        "SELECT field, value IS NULL, CASE WHEN field = 'pin' THEN NULL ELSE salt END, "
        "CASE WHEN field = 'pin' THEN NULL ELSE value END FROM private_values WHERE ord = ? ORDER BY field",
        {QVariant::fromValue<qlonglong>(order)});
    if (!query) return tl::make_unexpected(query.error());
    while (true) {
      const auto more = connection_.next(**query);
      if (!more) return tl::make_unexpected(more.error());
      if (!*more) return kept;
      Json& field = kept[text((*query)->value(0))];
      if ((*query)->value(1).toInt() != 0)
        field = {{"state", "erased"}};
      else if (!about)
        field = {{"state", "about somebody else"}};
      else
        field = {{"state", "kept"}, {"salt", text((*query)->value(2))}, {"value", text((*query)->value(3))}};
    }
  }

  void note_pin(const Json& body, const Json& kept) {
    const auto pin = kept.find("pin");
    if (pin == kept.end() || pin->at("state") != "kept") return;
    pin_set_ = true;
    key_ = text_at(body, "key");
  }
  void note_birth(const Json& body, const Json& kept) {
    if (body.at("kind") != "birth" || !is_them(text_at(body, "person"))) return;
    const Json& born = kept.at("born");
    births_.push_back(
        {{"record", body.at("id")}, {"born", born.at("state") == "kept" ? born.at("value") : Json(nullptr)}});
  }
  /// Who tested, watched or taught them was in the room with them.
  void note_known(const Json& body) {
    const bool witnessed = body.at("kind") == "witnessed" && theirs_.count(text_at(body, "checkout")) != 0;
    if (!is_them(text_at(body, "person")) && !witnessed) return;
    for (const char* key : {"assessor", "second_assessor", "supervisor"})
      if (const std::string id = text_at(body, key); !id.empty() && !is_them(id)) known_by_name_.insert(id);
  }

  Connection& connection_;
  const std::vector<PersonId>& ids_;
  std::vector<std::string> quoted_;
  std::map<RecordId, std::size_t> place_of_;
  std::set<RecordId> theirs_;  // those that name them, and what adds to them
  std::set<PersonId> known_by_name_;
  Json records_ = Json::array(), births_ = Json::array();
  bool pin_set_ = false;
  std::string key_;
};

Expected<void> walk(Connection& connection, std::int64_t leaves, Walk& found) {
  auto query = connection.run("SELECT ord, leaf, hash, refers_to FROM records WHERE ord < ? ORDER BY ord",
                              {QVariant::fromValue<qlonglong>(leaves)});
  if (!query) return tl::make_unexpected(query.error());
  while (true) {
    const auto more = connection.next(**query);
    if (!more) return tl::make_unexpected(more.error());
    if (!*more) return {};
    if (auto taken = found.take(**query); !taken) return taken;
  }
}

std::vector<PersonId> ids_of(const Store& store, const PersonId& id) {
  std::vector<PersonId> ids;
  const PersonId root = store.joined(id);
  for (const Person& person : store.people())
    if (store.joined(person.id) == root) ids.push_back(person.id);
  return ids;
}

Json details_of(const Person& p) {
  return {{"id", p.id},
          {"number", p.number},
          {"given", p.given},
          {"family", p.family},
          {"card", p.card},
          {"nickname", p.nickname},
          {"email", p.email},
          {"phone", p.phone},
          {"emergency_contact", p.emergency_contact},
          {"erased", p == nameless(p.id)}};
}

Json names_of(const Store& store, const std::set<PersonId>& ids) {
  Json names = Json::object();
  for (const PersonId& id : ids)
    if (const auto person = store.person(id); person && *person != nameless(id))
      names[id] = {{"given", person->given}, {"family", person->family}, {"nickname", person->nickname}};
  return names;
}

Json told(const Store& store, const std::vector<PersonId>& ids, const ledger::Head& head, Walk& found) {
  Json entries = Json::array();
  for (const PersonId& id : ids)
    if (const auto person = store.person(id)) entries.push_back(details_of(*person));
  const auto role = store.role_of(ids.front());
  return {{"format", "witnessmark person 1"},
          {"shop", {{"name", store.details().name}, {"zone", store.details().zone}}},
          {"ledger",
           {{"leaves", head.size}, {"root", ledger::to_hex(head.root)}, {"last_entered", to_text(head.at)}}},
          {"entries", entries},
          {"role", role ? Json(word(*role)) : Json(nullptr)},
          {"pin", {{"set", found.pin_set()}, {"public_key", found.key()}}},
          {"births", found.births()},
          {"names_of_others", names_of(store, found.known_by_name())},
          {"records", std::move(found.records())}};
}

}  // namespace

Expected<PersonId> find_person(const Store& store, const std::string& who) {
  if (store.person(who)) return store.joined(who);
  std::set<PersonId> found;
  for (const Person& person : store.people())
    if (!who.empty() && person.number == who) found.insert(store.joined(person.id));
  if (found.size() == 1) return *found.begin();
  if (found.empty())
    return refuse(who, "Nobody has this number or id.",
                  "Give the member's number as on the card; somebody erased has their id alone.");
  std::string ids;
  for (const PersonId& id : found) ids += (ids.empty() ? "" : ", ") + id;
  return refuse(who, "More than one person has this number.", "Give one of their ids: " + ids + ".");
}

Expected<std::string> export_person(const Store& store, const PersonId& id) {
  const std::vector<PersonId> ids = ids_of(store, id);
  if (ids.empty()) return refuse(id, "Nobody has this id.", "Give the id of a person of this shop.");
  const auto head = store.head();
  if (!head) return tl::make_unexpected(head.error());
  const auto connection = open_to_read(store.path());
  if (!connection) return tl::make_unexpected(connection.error());
  const auto moment = Transaction::begin_reading(**connection);
  if (!moment) return tl::make_unexpected(moment.error());
  Walk found(**connection, ids);
  try {
    if (const auto read = walk(**connection, static_cast<std::int64_t>(head->size), found); !read)
      return tl::make_unexpected(read.error());
    return told(store, ids, *head, found).dump(2) + "\n";
  } catch (const Json::exception&) {
    return refuse(store.path(), "A record cannot be read.",
                  "Look the file through with \"verify\", which names the record.");
  }
}

}  // namespace wm::db
