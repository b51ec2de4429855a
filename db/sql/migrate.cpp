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

}  // namespace

QStringList migration_files() {
  link_migrations();
  QStringList files;
  for (const QString& name : QDir(folder).entryList({"*.sql"}, QDir::Files, QDir::Name))
    files << folder + name;
  return files;
}

int newest_version() { return static_cast<int>(migration_files().size()); }

Expected<void> migrate(Connection& connection, int from) {
  const QStringList names = migration_files();
  for (qsizetype i = from; i < names.size(); ++i) {
    if (auto done = run_file(connection, names[i]); !done) return done;
    if (names[i].endsWith("/003_ledger.sql"))
      if (auto done = carry_over(connection); !done) return done;
  }
  return connection.run(dialect::set_version + QString::number(names.size()));
}

}  // namespace wm::db
