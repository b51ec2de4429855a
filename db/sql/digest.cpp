#include "db/sql/digest.h"

#include <QCryptographicHash>
#include <QSqlRecord>
#include <vector>

#include "db/sql/dialect.h"

namespace wm::db {
namespace {

void add(QCryptographicHash& hash, const QByteArray& bytes) {
  hash.addData(QByteArray::number(bytes.size()) + ':');
  hash.addData(bytes);
}

void add_row(QCryptographicHash& hash, const QSqlQuery& row, int columns) {
  for (int i = 0; i < columns; ++i) {
    const QVariant cell = row.value(i);
    hash.addData(cell.isNull() ? "n" : QByteArray(1, static_cast<char>('a' + cell.typeId() % 26)));
    if (!cell.isNull())
      add(hash, cell.typeId() == QMetaType::QByteArray ? cell.toByteArray() : cell.toString().toUtf8());
  }
  hash.addData("\n");
}

}  // namespace

Expected<std::string> digest(Connection& connection) {
  QCryptographicHash hash(QCryptographicHash::Sha256);
  std::vector<QString> tables;
  auto done = connection.each(dialect::read_schema, [&](const QSqlQuery& row) {
    add_row(hash, row, 3);
    if (row.value(0).toString() == "table") tables.push_back(row.value(1).toString());
  });
  for (const char* number : {dialect::read_application_id, dialect::read_version}) {
    if (!done) break;
    done = connection.value(number).map([&](const QVariant& value) { add(hash, value.toByteArray()); });
  }
  for (const QString& table : tables) {
    if (!done) break;
    add(hash, table.toUtf8());
    // Each table's first column, or the first two, are its key.
    done = connection.each("SELECT * FROM " + table + " ORDER BY 1, 2",
                           [&](const QSqlQuery& row) { add_row(hash, row, row.record().count()); });
  }
  return done.map([&] { return hash.result().toHex().toStdString(); });
}

}  // namespace wm::db
