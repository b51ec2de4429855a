#pragma once
// The demo shop: invented people with three years of history, made by the same import that any shop uses.
#include <string>

#include "db/store.h"

namespace wm::db {

/// Makes a new store at `path` from the files of resources/demo, which the program carries with it, in a
/// couple of seconds. Its clock starts in the evening of Wednesday 25 November 2026 and runs on from there.
/// Everybody with a role has the PIN that resources/demo/README.md names. Leaves no file behind where it
/// fails.
Expected<Store> make_demo(const std::string& path, Store::Clock clock, StoreOptions options = {});

}  // namespace wm::db
