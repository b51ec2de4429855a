#pragma once
// Making a store, in a file or on a server, and opening one, with every reason not to.
#include <functional>
#include <memory>
#include <string>

#include "core/problem.h"
#include "db/sql/connection.h"
#include "db/store.h"

namespace wm::db {

/// A new store with its tables, its one row about the shop, and what `fill` writes beside. Left away again
/// where something fails.
using Fill = std::function<Expected<void>(Connection&)>;
Expected<std::unique_ptr<Connection>> create_store(const std::string& path, const ShopDetails& details,
                                                   const StoreOptions& options, const Fill& fill = {});
/// An existing store as it is, to be read: ours, of a version that we know.
Expected<std::unique_ptr<Connection>> open_to_read(const std::string& path);
/// Whether a file is of a version before every change was a record. The next two know both.
Expected<bool> is_before_ledger(Connection& connection);
/// Whether a file has all the tables and indexes that this program knows.
Expected<bool> is_of_newest_version(Connection& connection);
Expected<std::int64_t> commits_in(Connection& connection);
/// The id of the first command; empty where there was none.
Expected<std::string> first_command(Connection& connection);
/// Refuses a file of which a page, an index or a reference is not as it must be.
Expected<void> check_every_page(Connection& connection);
/// The pages alone: whether each index still fits its table is not looked at, which takes ten times as long.
Expected<void> check_pages(Connection& connection);
/// An existing store, checked and migrated.
Expected<std::unique_ptr<Connection>> open_store(const std::string& path, const StoreOptions& options);

}  // namespace wm::db
