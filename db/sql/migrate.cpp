#include "db/sql/migrate.h"

#include <QDir>
#include <QFile>
#include <QStringList>

#include "db/sql/carry_over.h"
#include "db/sql/dialect.h"

// A resource inside a static library is linked only where it is asked for, and outside any namespace.
static void link_migrations() { Q_INIT_RESOURCE(migrations); }

namespace wm::db {
namespace {

const QString folder = ":/wm/db/";

Expected<void> run_file(Connection& connection, const QString& name) {
  QFile file(name);
  if (!file.open(QIODevice::ReadOnly)) qFatal("migration %s is missing from the program", qPrintable(name));
  const QString all = QString::fromUtf8(file.readAll());
  for (const QString& statement : all.split(";\n\n", Qt::SkipEmptyParts)) {
    if (auto done = connection.run(statement); !done) return done;
  }
  return {};
}

/// 7 of ":/wm/db/007_more_apart.sql".
int number_of(const QString& file) { return file.mid(folder.size(), 3).toInt(); }

}  // namespace

QStringList migration_files(const Dialect& dialect) {
  link_migrations();
  QStringList files;
  for (const QString& name : QDir(folder).entryList({"*.sql"}, QDir::Files, QDir::Name))
    if (!name.endsWith(dialect.not_ours)) files << folder + name;
  return files;
}

int newest_version() { return number_of(migration_files(dialect::sqlite).last()); }

Expected<void> migrate(Connection& connection, int from) {
  for (const QString& name : migration_files(connection.dialect())) {
    if (number_of(name) <= from) continue;
    if (auto done = run_file(connection, name); !done) return done;
    if (name.endsWith("/003_ledger.sql"))
      if (auto done = carry_over(connection); !done) return done;
  }
  return connection.run(QString(connection.dialect().set_version).arg(newest_version()));
}

}  // namespace wm::db
