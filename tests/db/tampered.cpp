#include "tampered.h"

#include <sqlite3.h>

#include <QFile>
#include <catch2/catch.hpp>
#include <memory>

#include "core/time/text.h"

namespace wm::db {
namespace {

using Json = nlohmann::json;
using Database = std::unique_ptr<sqlite3, int (*)(sqlite3*)>;

Database database_at(const std::string& path) {
  sqlite3* out = nullptr;
  REQUIRE(sqlite3_open(path.c_str(), &out) == SQLITE_OK);
  return {out, sqlite3_close};
}

std::vector<std::vector<std::string>> rows_of(sqlite3* database, const std::string& sql) {
  std::vector<std::vector<std::string>> out;
  sqlite3_stmt* statement = nullptr;
  INFO(sql << ": " << sqlite3_errmsg(database));
  REQUIRE(sqlite3_prepare_v2(database, sql.c_str(), -1, &statement, nullptr) == SQLITE_OK);
  while (sqlite3_step(statement) == SQLITE_ROW) {
    auto& row = out.emplace_back();
    for (int i = 0; i < sqlite3_column_count(statement); ++i) {
      const void* bytes = sqlite3_column_blob(statement, i);
      row.emplace_back(static_cast<const char*>(bytes), sqlite3_column_bytes(statement, i));
    }
  }
  sqlite3_finalize(statement);
  return out;
}

void exec(sqlite3* database, const std::string& sql) {
  const int done = sqlite3_exec(database, sql.c_str(), nullptr, nullptr, nullptr);
  INFO(sql << ": " << sqlite3_errmsg(database));
  REQUIRE(done == SQLITE_OK);
}

std::string quoted(const std::string& text) {
  std::string out = "'";
  for (const char c : text) out.append(c == '\'' ? 2 : 1, c);
  return out + "'";
}
std::string blob(std::string_view bytes) { return "x'" + ledger::to_hex(bytes) + "'"; }
std::string or_null(const std::string& text) { return text.empty() ? "NULL" : quoted(text); }

std::string referred(const Json& body) {
  const std::string kind = body.at("kind");
  for (const char* about_checkout :
       {"restriction", "marks", "signature", "scored_apart", "countersigned", "witnessed"})
    if (kind == about_checkout) return body.at("checkout");
  for (const char* key : {"record", "suspension", "appointment", "lockout", "booking", "instead_of", "begun",
                          "started", "opened"})
    if (body.contains(key)) return body.at(key);
  return kind == "waiting_end" ? body.at("waiting") : "";
}

std::string insert_of(const Json& leaf) {
  const Json& body = leaf.at("body");
  const std::string text = leaf.dump(), kind = body.at("kind");
  return "INSERT INTO records VALUES (" + leaf.at("order").dump() + ", " + leaf.at("commit").dump() + ", " +
         quoted(body.at("id")) + ", " + quoted(kind) + ", " +
         std::to_string(parse_instant(std::string(body.at("recorded")))->seconds) + ", " +
         or_null(body.value(kind == "join" ? "other" : "person", "")) + ", " + or_null(referred(body)) +
         ", " + quoted(text) + ", " + blob(ledger::as_text(ledger::leaf_hash(text))) + ");\n";
}

}  // namespace

Tampered::Tampered(const std::string& path) : path_(folder_.filePath("shop.wmk").toStdString()) {
  REQUIRE(QFile::copy(QString::fromStdString(path), QString::fromStdString(path_)));
}

std::vector<std::vector<std::string>> Tampered::rows(const std::string& sql) {
  return rows_of(database_at(path_).get(), sql);
}

void Tampered::run(const std::string& sql) {
  const Database database = database_at(path_);
  const auto guards = rows_of(database.get(), "SELECT name, sql FROM sqlite_master WHERE type = 'trigger'");
  std::string all = "PRAGMA ignore_check_constraints = ON; PRAGMA foreign_keys = OFF; BEGIN;\n";
  for (const auto& guard : guards) all += "DROP TRIGGER " + guard[0] + ";\n";
  all += sql + ";\n";
  for (const auto& guard : guards) all += guard[1] + ";\n";
  exec(database.get(), all + "COMMIT;");
}

void Tampered::run_plain(const std::string& sql) { exec(database_at(path_).get(), sql); }

std::vector<ledger::Hash> Tampered::hashes() {
  const auto shop = rows("SELECT demo_clock, name, zone FROM shop")[0];
  std::vector<ledger::Hash> out = {ledger::leaf_hash(
      Json{{"demo_clock", std::stoll(shop[0])}, {"kind", "shop"}, {"name", shop[1]}, {"zone", shop[2]}}
          .dump())};
  for (const auto& row : rows("SELECT leaf FROM records ORDER BY ord"))
    out.push_back(ledger::leaf_hash(row[0]));
  return out;
}

ledger::Head Tampered::head() {
  const auto leaves = hashes();
  return {leaves.size(), ledger::root_of(leaves), first_instant};
}

void Tampered::rebuild(const std::function<void(std::vector<Json>&)>& change) {
  std::vector<Json> leaves;
  for (const auto& row : rows("SELECT leaf FROM records ORDER BY ord")) leaves.push_back(Json::parse(row[0]));
  change(leaves);
  std::string sql = "DELETE FROM records;\n";
  std::int64_t commit = 0, order = 0;
  Json before;
  for (Json& leaf : leaves) {
    if (leaf.at("commit") != before) ++commit;
    before = leaf.at("commit");
    leaf["commit"] = commit;
    leaf["order"] = ++order;
    sql += insert_of(leaf);
  }
  run(sql +
      "DELETE FROM taken;\n"
      "INSERT INTO taken SELECT ord, what, from_at, until_at, held_through FROM time_taken "
      "WHERE until_at > (SELECT max(recorded_at) FROM records);\n");
  ledger::Edge edge;
  for (const ledger::Hash& hash : hashes()) edge.append(hash);
  run("UPDATE tree_edge SET size = " + std::to_string(edge.size()) + ", hashes = " + blob(edge.bytes()));
}

}  // namespace wm::db
