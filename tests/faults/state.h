#pragma once
// What a store's file says, every table of it, and what the store itself knows: to tell one state from
// another.
#include <optional>
#include <string>

#include "db/store.h"

namespace wm::faults {

struct State {
  std::string file;  // every row of every table and the schema
  std::vector<db::Entry> entries;
  std::vector<db::Person> people;
  std::vector<Rulebook> rulebooks;
};

/// Read past the store, by a connection of its own.
std::string dump(const std::string& path);
State state_of(const std::string& path, const db::Store& store);
/// "ok", or what SQLite's own check of the file (every page, every index, every foreign key) found.
std::string integrity(const std::string& path);
bool same_memory(const State& state, const db::Store& store);

/// The random numbers that salts are made of: the same each time after the same seed.
void fix_randomness();
void seed_randomness(std::uint64_t seed);

}  // namespace wm::faults
