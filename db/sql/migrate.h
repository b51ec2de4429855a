#pragma once
// Brings a file's tables up to what this program knows.
#include <QStringList>

#include "core/problem.h"
#include "db/sql/connection.h"

namespace wm::db {

/// Of the program's resources, in order: their names begin with 001_, 002_ …
QStringList migration_files();
/// The version that a file has after every migration: their number.
int newest_version();
/// Runs the migrations above the file's version, all or none. Inside a transaction of the caller.
Expected<void> migrate(Connection& connection, int from);

}  // namespace wm::db
