#pragma once
// Stores in memory's own file system, for fuzzers that need a shop.
#include <string>

#include "db/store.h"

namespace wm::fuzz {

/// A folder of this process, gone when it ends; on a disk in memory where there is one.
const std::string& folder();
std::string bytes_of(const std::string& path);
/// The store's file alone: no log of an earlier one is left beside it.
void put(const std::string& path, const std::string& bytes);

/// Some hours after the evening of the tests' small shop.
Instant now();
Expected<db::Store> opened(const std::string& path);

}  // namespace wm::fuzz
