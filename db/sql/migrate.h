#pragma once
// Brings a file's tables up to what this program knows.
#include <QStringList>

#include "core/problem.h"
#include "db/sql/connection.h"

namespace wm::db {

/// Of the program's resources, in order: their names begin with 001_, 002_ … Those of both engines, and the
/// one's own.
QStringList migration_files(const Dialect& dialect = dialect::sqlite);
/// The version that a store has after every migration: the last one's number.
int newest_version();
/// Runs the migrations above the file's version, all or none. Inside a transaction of the caller.
Expected<void> migrate(Connection& connection, int from);

}  // namespace wm::db
