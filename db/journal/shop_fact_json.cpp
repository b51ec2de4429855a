#include "db/journal/shop_fact_json.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <utility>

#include "core/time/text.h"
#include "db/journal/said.h"
#include "db/journal/shop_fact_fields.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

using Json = nlohmann::json;

// The words of each enumeration, in its order.
constexpr std::array<std::string_view, 4> words_for(Role) {
  return {"quiz_station", "desk", "instructor", "manager"};
}
constexpr std::array<std::string_view, 5> words_for(Station) {
  return {"whole", "front", "machine", "quiz", "office"};
}
constexpr std::array<std::string_view, 3> words_for(Purpose) { return {"teach", "practise", "check_out"}; }
constexpr std::array<std::string_view, 3> words_for(Turnout) { return {"arrived", "late", "not_come"}; }
constexpr std::array<std::string_view, 4> words_for(Mark) {
  return {"none", "shown", "shown_when_asked", "not_shown"};
}

constexpr std::array<std::string_view, 4> words_for(Part) {
  return {"operating", "supervising", "hurt", "saw"};
}
constexpr std::array<std::string_view, 3> words_for(Hand) { return {"pin", "card", "paper"}; }
constexpr std::array<std::string_view, 6> words_for(Alteration) {
  return {"cutter", "guard", "controls", "moved", "repair", "other"};
}
constexpr std::array<std::string_view, 4> words_for(Work) { return {"bank", "lesson", "sheet", "card"}; }
constexpr std::array<std::string_view, 2> words_for(Doing) { return {"open", "staffed"}; }
constexpr std::array<std::string_view, 3> words_for(Help) {
  return {"interpreter", "read_aloud", "large_type"};
}

template <class E>
std::string_view word_of(E value) {
  return words_for(value)[static_cast<std::size_t>(value)];
}

/// What stands inside of a fact, with fields of its own.
template <class T>
constexpr bool is_part = std::is_same_v<T, Enclosure> || std::is_same_v<T, LineMeasured> ||
                         std::is_same_v<T, DayPart> || std::is_same_v<T, BusyPart>;

void put(Json& json, const std::string& value) { json = value; }
void put(Json& json, int value) { json = value; }
void put(Json& json, std::int64_t value) { json = value; }
/// A seed: 16 hexadecimal digits, since not every reader's numbers have 64 bits.
void put(Json& json, std::uint64_t value) {
  std::string digits(16, '0');
  for (auto digit = digits.rbegin(); digit != digits.rend(); ++digit, value >>= 4)
    *digit = "0123456789abcdef"[value & 15];
  json = digits;
}
void put(Json& json, bool value) { json = value; }
void put(Json& json, Instant value) { json = to_text(value); }
void put(Json& json, Day value) { json = to_text(value); }
template <class E>
requires std::is_enum_v<E>
void put(Json& json, E value) { json = word_of(value); }
template <class T>
requires is_part<T>
void put(Json& json, const T& value);
template <class T>
void put(Json& json, const std::vector<T>& values) {
  json = Json::array();
  for (const T& value : values) put(json.emplace_back(), value);
}

json::Value member(json::Value object, const char* key) {
  const auto value = object.find(key);
  if (!value) throw std::invalid_argument(std::string("there is no \"") + key + "\"");
  return *value;
}
json::Value of_kind(json::Value value, json::Kind kind) {
  if (value.kind() != kind)
    throw std::invalid_argument("\"" + std::string(value.key()) + "\" is of another kind");
  return value;
}

void take(json::Value from, std::string& value) { value = of_kind(from, json::Kind::text).text(); }
void take(json::Value from, int& value) {
  value = static_cast<int>(of_kind(from, json::Kind::whole).whole());
}
void take(json::Value from, std::int64_t& value) { value = of_kind(from, json::Kind::whole).whole(); }
void take(json::Value from, std::uint64_t& value) {
  const std::string_view digits = of_kind(from, json::Kind::text).text();
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value, 16);
  if (digits.size() != 16 || error != std::errc() || end != digits.data() + digits.size())
    throw std::invalid_argument("not 16 hexadecimal digits");
}
void take(json::Value from, bool& value) { value = of_kind(from, json::Kind::truth).truth(); }
void take(json::Value from, Instant& value) {
  const auto instant = parse_instant(of_kind(from, json::Kind::text).text());
  if (!instant) throw std::invalid_argument("not an instant");
  value = *instant;
}
void take(json::Value from, Day& value) {
  const auto day = parse_day(of_kind(from, json::Kind::text).text());
  if (!day) throw std::invalid_argument("not a day");
  value = *day;
}
template <class E>
requires std::is_enum_v<E>
void take(json::Value from, E& value) {
  constexpr auto words = words_for(E{});
  const auto found = std::find(words.begin(), words.end(), of_kind(from, json::Kind::text).text());
  if (found == words.end()) throw std::invalid_argument("not a word known here");
  value = static_cast<E>(found - words.begin());
}
template <class T>
requires is_part<T>
void take(json::Value from, T& value);
template <class T>
void take(json::Value from, std::vector<T>& values) {
  of_kind(from, json::Kind::list);
  for (std::size_t i = 0; i < from.size(); ++i) take(from[i], values.emplace_back());
}

struct Writer {
  Json& json;
  template <class T>
  void operator()(const char* key, const T& value) {
    put(json[key], value);
  }
  template <class T>
  void operator()(const char* key, const std::optional<T>& value) {
    if (value) put(json[key], *value);
  }
  /// Left out where it is empty.
  template <class T>
  void may(const char* key, const T& value) {
    if (!value.empty()) put(json[key], value);
  }
  void personal(const char*, const std::string&) {}
};

struct Reader {
  json::Value object;
  const ByField& kept;
  template <class T>
  void operator()(const char* key, T& value) {
    take(member(object, key), value);
  }
  template <class T>
  void operator()(const char* key, std::optional<T>& value) {
    if (const auto found = object.find(key)) take(*found, value.emplace());
  }
  template <class T>
  void may(const char* key, T& value) {
    if (const auto found = object.find(key)) take(*found, value);
  }
  /// Records of before such text was kept apart hold it themselves.
  void personal(const char* key, std::string& value) {
    if (const auto found = object.find(key)) return take(*found, value);
    if (const auto found = kept.find(key); found != kept.end()) value = found->second;
  }
};

/// Visits the personal texts alone.
template <class Visit>
struct Personal {
  Visit visit;
  template <class T>
  void operator()(const char*, T&) {}
  template <class T>
  void may(const char*, T&) {}
  void personal(const char* key, std::string& value) { visit(key, value); }
};
template <class Visit>
void visit_personal(ShopFact& fact, Visit visit) {
  Personal<Visit> each{visit};
  std::visit([&](auto& f) { fields(each, f); }, fact);
}

template <class T>
requires is_part<T>
void put(Json& json, const T& value) {
  Writer writer{json};
  T copy = value;
  fields(writer, copy);
}
template <class T>
requires is_part<T>
void take(json::Value from, T& value) {
  static const ByField none;
  Reader reader{of_kind(from, json::Kind::object), none};
  fields(reader, value);
}

constexpr std::array<std::string_view, kinds_in<ShopFact>> kinds = {
    "role",          "join",           "booking",       "cancel",       "attendance",   "presence",
    "waiting",       "waiting_end",    "restriction",   "marks",        "tag",          "reached",
    "machine_added", "hours",          "strike_out",    "rulebook",     "details",      "pin",
    "erased",        "signature",      "close",         "printed",      "clock",        "blanked",
    "issued",        "attempt_begun",  "attempt_sat",   "confirmed",    "week_hours",   "other_hours",
    "break",         "takes_on",       "lasts",         "diary_rules",  "upkeep",       "busy",
    "happened",      "started",        "left",          "scored_apart", "sheet_opened", "line_marked",
    "sheet_put_by",  "countersigned",  "altered",       "group_taught", "visit",        "visit_end",
    "station",       "emergency_call", "contact_shown", "witnessed"};

/// Asked of every record that is read, so nothing is made in order to look at its word.
std::optional<ShopFact> empty_fact(std::string_view kind) {
  const auto found = std::find(kinds.begin(), kinds.end(), kind);
  if (found == kinds.end()) return std::nullopt;
  constexpr auto makers = []<std::size_t... i>(std::index_sequence<i...>) {
    return std::array{+[] { return ShopFact(std::in_place_index<i>); }...};
  }
  (std::make_index_sequence<kinds.size()>());
  return makers[static_cast<std::size_t>(found - kinds.begin())]();
}

}  // namespace

std::string_view word(Role role) { return word_of(role); }
std::string_view word(Station station) { return word_of(station); }
std::string_view word(Purpose purpose) { return word_of(purpose); }
std::string_view word(Turnout turnout) { return word_of(turnout); }
std::string_view word(Mark mark) { return word_of(mark); }
std::string_view word(Hand hand) { return word_of(hand); }
std::string_view word(Work work) { return word_of(work); }
std::string_view word(Help help) { return word_of(help); }

std::string_view kind_word(const ShopFact& fact) { return kinds[fact.index()]; }

bool is_shop_kind(std::string_view kind) {
  return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

nlohmann::json to_json(const RecordId& id, Instant at, Instant recorded, const ShopFact& fact) {
  Json json = {{"id", id}, {"kind", kind_word(fact)}, {"at", to_text(at)}, {"recorded", to_text(recorded)}};
  std::visit(
      [&](auto copy) {
        Writer writer{json};
        fields(writer, copy);
      },
      fact);
  return json;
}

ByField personal_in(ShopFact fact) {
  ByField texts;
  visit_personal(fact, [&](const char* key, const std::string& value) {
    if (!value.empty()) texts[key] = value;
  });
  return texts;
}

void blank_as(const ShopFact& blanked, ShopFact& fact) {
  const ByField left = personal_in(blanked);
  visit_personal(fact, [&](const char* key, std::string& value) {
    if (!left.contains(key)) value.clear();
  });
}

Expected<ShopFact> read_shop_fact(std::string_view kind, json::Value object, const ByField& kept) {
  auto fact = empty_fact(kind);
  if (!fact) return refuse("kind", "The kind '" + std::string(kind) + "' is unknown.", "Update the program.");
  try {
    std::visit(
        [&](auto& f) {
          Reader reader{object, kept};
          fields(reader, f);
        },
        *fact);
    return *fact;
  } catch (const std::exception& e) {
    return refuse("body", "The entry cannot be read: " + said(e) + ".", "Bring back the last backup.");
  }
}

}  // namespace wm::db
