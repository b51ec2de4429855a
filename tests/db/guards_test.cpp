// What other programs may not do to the file: tried with a second connection and with the sqlite3 program.
#include <QProcess>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <catch2/catch.hpp>

#include "db/sql/dialect.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

/// Runs one statement on a connection of its own; what went wrong, or nothing.
QString attempt(const std::string& path, const QString& sql, bool recursive_triggers = false) {
  QString error;
  {
    QSqlDatabase raw = QSqlDatabase::addDatabase("QSQLITE", "raw");
    raw.setDatabaseName(QString::fromStdString(path));
    REQUIRE(raw.open());
    QSqlQuery query(raw);
    query.exec(recursive_triggers ? "PRAGMA recursive_triggers = ON" : "PRAGMA recursive_triggers = OFF");
    if (!query.exec(sql)) error = query.lastError().text();
    raw.close();
  }
  QSqlDatabase::removeDatabase("raw");
  return error;
}

const QString columns = "commit_no, id, kind, recorded_at, person, refers_to, leaf, hash";
const QString next = "(SELECT max(ord) + 1 FROM records), (SELECT max(commit_no) FROM records)";

const std::vector<QString> forbidden = {
    "UPDATE records SET recorded_at = 0 WHERE ord = 2",
    "UPDATE OR REPLACE records SET ord = 1 WHERE ord = 2",
    "UPDATE records SET leaf = leaf",
    "DELETE FROM records WHERE ord = 2",
    "DELETE FROM records",
    "INSERT OR REPLACE INTO records SELECT * FROM records WHERE ord = 2",
    "REPLACE INTO records SELECT * FROM records WHERE ord = 2",
    "INSERT OR REPLACE INTO records SELECT 99999, " + columns + " FROM records WHERE ord = 2",
    // the next order number, but the id of another
    "INSERT OR REPLACE INTO records SELECT " + next +
        ", id, kind, 9999999999, person, refers_to, leaf, hash "
        "FROM records WHERE ord = 2",
    // the order number by its other name
    "INSERT OR REPLACE INTO records (rowid, commit_no, id, kind, recorded_at, leaf, hash) "
    "VALUES (2, 1, 'new', 'use', 9999999999, '{}', '')",
    // a gap in the order, a gap in the commits, a commit gone back to, and a clock run back
    "INSERT INTO records (ord, commit_no, id, kind, recorded_at, leaf, hash) "
    "VALUES (99999, 1, 'new', 'use', 9999999999, '{}', '')",
    "INSERT INTO records (ord, commit_no, id, kind, recorded_at, leaf, hash) "
    "SELECT max(ord) + 1, max(commit_no) + 2, 'new', 'use', 9999999999, '{}', '' FROM records",
    "INSERT INTO records (ord, commit_no, id, kind, recorded_at, leaf, hash) "
    "SELECT max(ord) + 1, 1, 'new', 'use', 9999999999, '{}', '' FROM records",
    "INSERT INTO records (ord, commit_no, id, kind, recorded_at, leaf, hash) SELECT " + next +
        ", 'new', 'use', 0, '{}', ''",
    // a second strike-out, which a unique index alone would let replace the first
    "INSERT OR REPLACE INTO records (ord, commit_no, id, kind, recorded_at, refers_to, leaf, hash) SELECT " +
        next +
        ", 'new', 'strike_out', 9999999999, (SELECT refers_to FROM records WHERE kind = 'strike_out'), '{}', "
        "''",
    "UPDATE private_values SET value = '2001-01-01' WHERE field = 'born'",
    "UPDATE private_values SET ord = 1",
    "DELETE FROM private_values",
    "INSERT OR REPLACE INTO private_values SELECT ord, field, 'aa', '2001-01-01' FROM private_values WHERE "
    "field = "
    "'born' LIMIT 1",
    // something kept beside a record that had nothing
    "INSERT INTO private_values SELECT min(ord), 'note', 'aa', 'said nobody' FROM records",
    "UPDATE tree_edge SET size = size - 1",
    "UPDATE tree_edge SET one = 2",
    "DELETE FROM tree_edge",
    "INSERT OR REPLACE INTO tree_edge VALUES (1, 1, '')",
    "UPDATE shop SET zone = 'UTC'",
    "DELETE FROM shop",
    "INSERT OR REPLACE INTO shop VALUES (1, 'Another', 'UTC', 0)",
};

}  // namespace

TEST_CASE("What is kept cannot be changed, deleted or replaced by another program") {
  TestShop shop;
  shop.wait(10);
  shop.enter("mia", StrikeOutRecord{"past-19", "published by mistake"});
  const auto entries = shop.store().entries();
  for (const QString& sql : forbidden) {
    INFO(sql.toStdString());
    CHECK_FALSE(attempt(shop.path(), sql).isEmpty());
    CHECK_FALSE(attempt(shop.path(), sql, true).isEmpty());
    CHECK(by_sqlite3(shop.path(), sql).contains("Error"));
  }
  shop.reopen();
  CHECK(shop.store().entries() == entries);
}

TEST_CASE("The file passes the sqlite3 program's own checks and says whose it is") {
  TestShop shop;
  shop.enter("dee", fact(Document{"kim", "Einführung für José", Day{21000}}));
  CHECK(by_sqlite3(shop.path(), "PRAGMA integrity_check").toStdString() == "ok");
  CHECK(by_sqlite3(shop.path(), "PRAGMA foreign_key_check").toStdString().empty());
  CHECK(by_sqlite3(shop.path(), "PRAGMA application_id").toInt() == dialect::application_id);
  CHECK(by_sqlite3(shop.path(), "PRAGMA journal_mode").toStdString() == "wal");
  // Every leaf is JSON to another reader too, and canonical in its eyes: without spaces.
  CHECK(
      by_sqlite3(shop.path(), "SELECT count(*) FROM records WHERE NOT json_valid(leaf) OR json(leaf) <> leaf")
          .toStdString() == "0");
}

TEST_CASE("A birth date and a note stand in the file only beside the record, and are gone when blanked") {
  TestShop shop;
  Command noted = shop.command("dee", fact(Document{"kim", "induction", std::nullopt}));
  noted.note = "asked for an interpreter";
  REQUIRE(shop.store().commit(noted));
  CHECK(by_sqlite3(
            shop.path(),
            "SELECT count(*) FROM records WHERE leaf LIKE '%2000-02-13%' OR leaf LIKE '%interpreter%' OR "
            "leaf LIKE '%Abara%'") == "0");
  // SHA-256 of salt, field, zero byte and value, by the sqlite3 program's bytes and coreutils' sha256sum.
  const QString row = by_sqlite3(
      shop.path(),
      "SELECT salt || hex('born') || '00' || hex(value) FROM private_values WHERE field = 'born' LIMIT 1");
  QProcess sum;
  sum.start("sha256sum", QStringList());
  sum.write(QByteArray::fromHex(row.toUtf8()));
  sum.closeWriteChannel();
  REQUIRE(sum.waitForFinished());
  CHECK(by_sqlite3(shop.path(), "SELECT leaf FROM records WHERE kind = 'birth' LIMIT 1")
            .contains(QString(sum.readAll().left(64))));

  shop.enter("mia", BlankPerson{"kim"});
  const auto births = [&] {
    const auto records = shop.store().shop().records;
    return std::count_if(records.begin(), records.end(), [](const Record& r) {
      const auto* birth = std::get_if<Birth>(&r.fact);
      return birth != nullptr && birth->person == "kim";
    });
  };
  CHECK(births() == 0);
  CHECK(shop.store().person("kim")->given.empty());
  const auto entries = shop.store().entries();
  shop.enter("dee", fact(Document{"lou", "induction", std::nullopt}));
  shop.reopen();
  CHECK(births() == 0);
  CHECK(shop.store().entries().size() == entries.size() + 1);
  shop.close();
  QProcess grep;  // neither in the file nor in its log
  grep.start("sh",
             {"-c", "cat \"$0\"* | grep -c -a -e Abara -e interpreter", QString::fromStdString(shop.path())});
  REQUIRE(grep.waitForFinished());
  CHECK(grep.readAll().trimmed() == "0");
}
