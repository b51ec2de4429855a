#pragma once
// A store on a PostgreSQL server is named by a connection URI in place of a path
// (postgresql.org/docs/15/libpq-connect.html, "Connection URIs"):
// postgresql://desk@host:5432/shop?sslmode=verify-full
#include <QString>
#include <string>

#include "core/problem.h"

namespace wm::db {

/// The URI taken apart. What is empty is left to libpq's own defaults (PGHOST, ~/.pgpass and so on).
struct ServerAddress {
  QString host, database, user, password;
  int port = -1;
  QString options;  // as QSqlDatabase::setConnectOptions takes them
  friend bool operator==(const ServerAddress&, const ServerAddress&) = default;
};

/// Whether a store of that name is on a server: it begins with postgresql:// or postgres://.
bool is_on_server(const std::string& name);
Expected<ServerAddress> read_address(const std::string& uri);
/// A store's name as it may be shown and written down: a URI without its password; a path as it is.
std::string shown_name(const std::string& name);

}  // namespace wm::db
