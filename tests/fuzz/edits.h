#pragma once
// Small changes to a store's file: what somebody with the sqlite3 program, or a bad disk, does to it.
#include <string>
#include <string_view>

namespace wm::fuzz {

/// The bytes of an empty store of that version, or of the current one: made of a file of tests/db/stores.
std::string store_of(std::string_view dump_file);

/// The store's bytes after the edits that `script` spells, whatever bytes it has: single cells set, rows
/// removed and copied, tables and guards dropped, versions set; bytes of pages changed, the end cut off.
/// Guards and checks do not hinder; what SQLite still refuses is passed over.
std::string edited(const std::string& store, std::string_view script);

}  // namespace wm::fuzz
