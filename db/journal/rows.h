#pragma once
// The journal as rows of the file, written and read back.
#include <span>

#include "core/ledger/tree.h"
#include "db/journal/leaf.h"
#include "db/journal/memory.h"
#include "db/sql/connection.h"

namespace wm::db {

/// Writes an entry with what is kept apart, and gives its leaf's hash. `rulebook` is what RulebookIssued
/// stands for. Every entry written can be read again: what cannot is refused.
Expected<ledger::Hash> write_entry(Connection& connection, const Entry& entry, const Origin& origin,
                                   const Rulebook* rulebook);
/// What a record takes away: an Erased the person's details, PIN, birth dates and the notes and free text of
/// records about them and of what refers to those, a Blanked what is personal in one record but for a birth
/// date and a PIN, a PinChosen the person's earlier ones.
Expected<void> blank_by(Connection& connection, const Entry& entry);

/// A row of `records` with what is kept beside it.
struct KeptApart {
  std::string field, salt, value;  // blanked: neither salt nor value
};
/// What goes beside a record for its personal fields, and by field what the record holds of them.
struct Apart {
  std::vector<KeptApart> kept;
  ByField hashes;
};
Apart keep_apart(const ByField& values);
/// Writes a leaf as it is, its columns and what belongs to it.
Expected<ledger::Hash> write_leaf(Connection& connection, const std::string& leaf, const Entry& entry,
                                  const std::vector<KeptApart>& kept);

/// The tree of a new shop: its own leaf alone.
Expected<void> begin_tree(Connection& connection, const ShopDetails& details);
Expected<ledger::Edge> read_edge(Connection& connection);
/// Adds leaves to the tree's edge.
Expected<void> grow_tree(Connection& connection, std::span<const ledger::Hash> leaves);

/// Adds to memory whatever lies in the file beyond it.
Expected<void> read_new(Connection& connection, Memory& memory);
Expected<ShopDetails> read_details(Connection& connection);
/// Everything is dated by it, so one that this computer does not know is found first.
Expected<Zone> zone_of(const ShopDetails& details);

}  // namespace wm::db
