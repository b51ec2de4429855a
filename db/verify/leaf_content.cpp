#include "db/verify/leaf_content.h"

#include <algorithm>
#include <array>

#include "core/time/text.h"

namespace wm::verify {
namespace {

std::string_view text_or_empty(const Members& members, std::string_view key) {
  return members.text(key).value_or("");
}

/// The records that one refers to stand under these names; two names mean a record in some kinds alone.
std::string_view referred_to(const LeafContent& leaf) {
  for (const char* kind : {"restriction", "marks", "signature", "scored_apart", "countersigned", "witnessed"})
    if (leaf.kind == kind) return text_or_empty(leaf.body, "checkout");
  for (const char* key : {"record", "suspension", "appointment", "lockout", "booking", "instead_of", "begun",
                          "started", "opened", "change", "visit"})
    if (leaf.body.has(key)) return text_or_empty(leaf.body, key);
  return leaf.kind == "waiting_end" ? text_or_empty(leaf.body, "waiting") : "";
}

bool is_hash(std::string_view text) {
  return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

/// The field of a body that is personal, by kind.
const char* personal_field(std::string_view kind) {
  if (kind == "birth") return "born";
  if (kind == "details") return "details";
  return kind == "pin" ? "pin" : nullptr;
}

/// Whether what the leaf has of `from` under `key` is a hash, and then keeps it.
bool keep_hash(const Members& from, std::string_view key, LeafContent& leaf) {
  const auto hash = from.text(key);
  if (!hash || !is_hash(*hash)) return false;
  leaf.commitments.push_back({std::string(key), std::string(*hash)});
  return true;
}

/// Text that is kept apart.
bool keep_hashed(LeafContent& leaf) {
  if (!leaf.body.has("hashed")) return true;
  static thread_local Members hashed;
  if (!Members::read(leaf.body.raw("hashed"), hashed)) return false;
  for (const auto& [key, raw] : hashed.all())
    if (!keep_hash(hashed, key, leaf)) return false;
  return true;
}

std::optional<std::string> read_body(LeafContent& leaf) {
  const auto id = leaf.body.text("id"), kind = leaf.body.text("kind");
  const auto at = leaf.body.text("at"), recorded = leaf.body.text("recorded");
  if (!id || !kind || !at || !recorded) return "its body has no id, kind, time or time of entry";
  const auto recorded_at = parse_instant(*recorded);
  if (!recorded_at || !parse_instant(*at)) return "its body has a time that is none";
  leaf.id = *id, leaf.kind = *kind, leaf.recorded = *recorded_at;
  leaf.person = text_or_empty(leaf.body, leaf.kind == "join" ? "other" : "person");
  leaf.refers_to = referred_to(leaf);
  const char* field = personal_field(leaf.kind);
  if (field != nullptr && !keep_hash(leaf.body, field, leaf))
    return std::string("its body has no hash under \"") + field + "\"";
  if (!keep_hashed(leaf)) return "its text that is kept apart has no hashes";
  return std::nullopt;
}

/// Where something can have been entered; without the word, at a computer that does it all.
constexpr std::array<std::string_view, 5> stations = {"quiz", "import", "front", "machine", "office"};

/// What may be left out is left out where it says nothing.
bool says_nothing(const Members& all, const LeafContent& leaf) {
  return all.text("action") == leaf.kind || all.text("by") == "" || all.text("second") == "" ||
         (all.has("paper") && all.raw("paper") != "true") ||
         (all.has("station") && std::find(stations.begin(), stations.end(), leaf.station) == stations.end());
}

}  // namespace

std::optional<std::string> read_leaf(std::string_view text, LeafContent& leaf) {
  static thread_local Members all;
  leaf.commitments.clear();
  if (!Members::read(text, all, "body", leaf.body)) return "it is not one JSON object in canonical form";
  if (const auto key =
          all.unknown({"action", "body", "by", "commit", "note", "order", "paper", "second", "station"});
      !key.empty())
    return "it has a \"" + std::string(key) + "\"";
  const auto order = all.whole("order"), commit = all.whole("commit");
  if (!order || !commit) return "it has no order or no commit";
  leaf.order = *order, leaf.commit = *commit, leaf.paper = all.has("paper");
  leaf.station = all.text("station").value_or("whole");
  if (!all.raw("body").starts_with('{')) return "it has no body";
  if (auto wrong = read_body(leaf)) return wrong;
  if (says_nothing(all, leaf)) return "it says what is left out by rule";
  if (all.has("note") && !keep_hash(all, "note", leaf)) return "its note is no hash";
  std::sort(leaf.commitments.begin(), leaf.commitments.end(),
            [](const Commitment& a, const Commitment& b) { return a.field < b.field; });
  return std::nullopt;
}

}  // namespace wm::verify
