#pragma once
// A record's leaf in the ledger: its canonical bytes, and what they say.
//
// A leaf is one line of JSON in the form of RFC 8785: an object with "commit", "order" and "body" (the record
// itself), and where they say something "action" (what was done, where that is not the body's kind), "by"
// (who sat there), "note" (a hash), "paper" (true: entered from a paper), "second" (who vouched for it too)
// and "station" ("quiz", "import", "front", "machine", "office"; else it was a computer that does it all).
// What is personal stands in it as a salted hash (personal.h): a note beside the body, a birth date, details
// and what a PIN is tested by under their own name in it, free text under "hashed". Keys that are names go by
// their UTF-8 bytes.
#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem.h"
#include "db/journal/personal.h"
#include "db/store.h"

namespace wm::db {

/// How a record came in.
struct Origin {
  std::string action, by;
  std::string station = "whole";  // a Station's word, or "import"
  bool from_paper = false;
  std::string second = {};
};

/// The values of an entry that are kept apart.
ByField personal_in(const Entry& entry);

/// The record of an entry with hashes in place of what is personal; `rulebook` is what RulebookIssued stands
/// for. Throws nlohmann's type_error where text is not UTF-8.
nlohmann::json body_of(const Entry& entry, const ByField& hashes, const Rulebook* rulebook);
/// The leaf around a body. `note` is a hash, or empty.
std::string to_leaf(std::int64_t commit, std::int64_t order, const nlohmann::json& body, const Origin& origin,
                    const std::string& note);
/// The shop's own leaf, the first of the tree.
std::string shop_leaf(const ShopDetails& details);

/// How a leaf came in, read without what it says.
Expected<Origin> origin_of(std::string_view leaf);
/// What a leaf says.
struct LeafContent {
  Entry entry;
  std::string kind;
  Origin origin;
  ByField hashes;
  std::optional<Rulebook> rulebook;  // with RulebookIssued
  bool blank = false;                // a birth record whose date has been blanked: `entry` has no fact
};

/// `kept`: what has not been blanked. `born_by`: in place of a birth date that has been.
Expected<LeafContent> read_leaf(std::string_view leaf, const ByField& kept, std::optional<Day> born_by);

}  // namespace wm::db
