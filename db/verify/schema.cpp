#include "db/verify/schema.h"

#include <QFile>
#include <map>

#include "db/sql/dialect.h"
#include "db/sql/migrate.h"

namespace wm::verify {
namespace {

/// The SQL of each thing by "table records", "trigger records_update" …
using Schema = std::map<std::string, std::string>;

Schema schema_of(const File& file) {
  Schema out;
  Rows rows = file.rows(db::dialect::read_schema);
  while (rows.next()) out[rows.shown(0) + " " + rows.shown(1)] = rows.shown(2);
  return out;
}

Schema as_migrated() {
  const File file = File::in_memory();
  for (const QString& name : db::migration_files()) {
    QFile migration(name);
    if (!migration.open(QIODevice::ReadOnly) || !file.run(migration.readAll().toStdString()))
      qFatal("migration %s does not run: %s", qPrintable(name), file.said().c_str());
  }
  return schema_of(file);
}

void check_version(const File& file, Findings& findings) {
  Rows version = file.rows(db::dialect::read_version);
  const std::string should = std::to_string(db::newest_version());
  if (version.next() && version.shown(0) != should)
    findings.add(FindingKind::schema, "the file's version", version.shown(0), should);
}

}  // namespace

void check_schema(const File& file, Findings& findings) {
  check_version(file, findings);
  const Schema should = as_migrated(), is = schema_of(file);
  for (const auto& [name, sql] : should) {
    const auto found = is.find(name);
    if (found == is.end())
      findings.add(FindingKind::schema, name, "missing", "there");
    else if (found->second != sql)
      findings.add(FindingKind::schema, name, found->second, sql);
  }
  for (const auto& [name, sql] : is)
    if (!should.contains(name))
      findings.add(FindingKind::schema, name, "there", "not there: this program makes no such thing");
}

}  // namespace wm::verify
