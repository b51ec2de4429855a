#pragma once
// The journal as rows of the file, written and read back.
#include <optional>

#include "db/journal/memory.h"
#include "db/sql/connection.h"

namespace wm::db {

/// A commit about to be written.
struct CommitRow {
  std::int64_t number = 0;
  std::string command, action;
  PersonId person, entered_by;
  std::string station;  // "desk", "quiz" or "import"
  Instant recorded;
};

Expected<void> write_commit(Connection& connection, const CommitRow& row);
/// `rulebook` is what RulebookIssued stands for. Every entry written can be read again: what cannot is
/// refused.
Expected<void> write_entry(Connection& connection, const Entry& entry, const std::string& station,
                           const Rulebook* rulebook);
Expected<void> write_person(Connection& connection, const Person& person,
                            std::optional<std::int64_t> new_in_commit);
Expected<void> write_pin(Connection& connection, const PersonId& person, const std::string& hash);
/// Empties a person's details, PIN, birth dates and the notes of records about them.
Expected<void> blank_person(Connection& connection, const PersonId& person);

Expected<std::string> read_pin(Connection& connection, const PersonId& person);
/// Adds to memory whatever lies in the file beyond it, and all people anew.
Expected<void> read_new(Connection& connection, Memory& memory);
Expected<ShopDetails> read_details(Connection& connection);

}  // namespace wm::db
