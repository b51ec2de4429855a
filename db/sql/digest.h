#pragma once
// One number for all that a file says, to tell a copy from its original.
#include <string>

#include "core/problem.h"
#include "db/sql/connection.h"

namespace wm::db {

/// SHA-256 (FIPS 180-4) over every row of every table with their kinds and lengths, in an order of their own;
/// in hexadecimal. Where the rows lie in the file plays no part. Inside a transaction where others may write.
Expected<std::string> digest(Connection& connection);

}  // namespace wm::db
