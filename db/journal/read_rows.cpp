#include <nlohmann/json.hpp>

#include "core/records/json.h"
#include "core/rulebook/json.h"
#include "core/time/text.h"
#include "db/journal/rows.h"
#include "db/journal/shop_fact_json.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

std::int64_t number(const QVariant& v) { return v.toLongLong(); }

tl::unexpected<Problem> unreadable(const Connection& connection, const Entry& entry, const Problem& why) {
  return refuse(
      connection.path(),
      "The file is damaged: record '" + entry.id + "' cannot be read (" + why.where + ": " + why.what + ").",
      "Bring back the last backup, and keep this file.");
}

Expected<AnyFact> read_core_fact(const std::string& body) {
  auto record = read_record(body);
  if (!record) return tl::make_unexpected(record.error().front());
  return AnyFact(std::move(record->fact));
}

/// A birth record with its date back in place; nothing where that was blanked.
Expected<std::optional<AnyFact>> read_birth(const std::string& body, const QVariant& born) {
  if (born.isNull()) return std::optional<AnyFact>();
  nlohmann::json json = nlohmann::json::parse(body, nullptr, false);
  if (!json.is_object()) return refuse("body", "The record is not JSON.", "");
  json["born"] = text(born);
  return read_core_fact(json.dump()).map([](AnyFact fact) { return std::optional(std::move(fact)); });
}

struct Row {
  Entry entry;
  std::string kind, body;
  QVariant born;
};

Row read_row(const QSqlQuery& q) {
  Row row;
  Entry& e = row.entry;
  e.order = number(q.value(0));
  e.commit = number(q.value(1));
  e.id = text(q.value(2));
  row.kind = text(q.value(3));
  e.at = {number(q.value(4))};
  e.recorded = {number(q.value(5))};
  e.entered_by = text(q.value(6));
  e.from_paper = q.value(7).toInt() != 0;
  row.body = text(q.value(8));
  row.born = q.value(9);
  e.note = text(q.value(10));
  return row;
}

Expected<void> add_row(const Connection& connection, Row row, Memory& memory) {
  Entry& entry = row.entry;
  if (row.kind == "rulebook") {
    auto rulebook = read_rulebook(row.body);
    if (!rulebook) return unreadable(connection, entry, rulebook.error().front());
    entry.fact = ShopFact(RulebookIssued{rulebook->version});
    memory.add_entry(std::move(entry));
    memory.add_rulebook(std::move(*rulebook));
    return {};
  }
  Expected<std::optional<AnyFact>> fact;
  if (row.kind == "birth")
    fact = read_birth(row.body, row.born);
  else if (is_shop_kind(row.kind))
    fact = read_shop_fact(row.kind, row.body).map([](ShopFact f) {
      return std::optional(AnyFact(std::move(f)));
    });
  else
    fact = read_core_fact(row.body).map([](AnyFact f) { return std::optional(std::move(f)); });
  if (!fact) return unreadable(connection, entry, fact.error());
  if (!*fact) {
    memory.skip(entry.order);
    return {};
  }
  entry.fact = std::move(**fact);
  memory.add_entry(std::move(entry));
  return {};
}

Expected<void> read_commits(Connection& connection, Memory& memory) {
  auto q = connection.run(
      "SELECT commit_no, command_id, person, recorded_at FROM commits WHERE commit_no > ? ORDER BY commit_no",
      {static_cast<qlonglong>(memory.last_commit())});
  if (!q) return tl::make_unexpected(q.error());
  auto row = connection.next(**q);
  for (; row && *row; row = connection.next(**q))
    memory.add_commit(text((*q)->value(1)), {number((*q)->value(0)), text((*q)->value(2))},
                      {number((*q)->value(3))});
  return row.map([](bool) {});
}

Expected<void> read_records(Connection& connection, Memory& memory) {
  auto q = connection.run(
      "SELECT r.ord, r.commit_no, r.id, r.kind, r.happened_at, r.recorded_at, r.entered_by, r.from_paper, "
      "r.body, "
      "b.value, n.value FROM records r "
      "LEFT JOIN private_values b ON b.ord = r.ord AND b.field = 'born' "
      "LEFT JOIN private_values n ON n.ord = r.ord AND n.field = 'note' WHERE r.ord > ? ORDER BY r.ord",
      {static_cast<qlonglong>(memory.last_order())});
  if (!q) return tl::make_unexpected(q.error());
  auto row = connection.next(**q);
  for (; row && *row; row = connection.next(**q)) {
    auto done = add_row(connection, read_row(**q), memory);
    if (done) continue;
    (*q)->finish();
    return done;
  }
  return row.map([](bool) {});
}

Expected<void> read_people(Connection& connection, Memory& memory) {
  auto q = connection.run(
      "SELECT p.id, p.number, p.given, p.family, p.nickname, p.card, p.email, p.phone, p.emergency_contact, "
      "c.recorded_at FROM people p JOIN commits c ON c.commit_no = p.commit_no ORDER BY p.commit_no",
      {});
  if (!q) return tl::make_unexpected(q.error());
  std::vector<std::pair<Person, Instant>> people;
  const auto column = [&](int i) { return text((*q)->value(i)); };
  auto row = connection.next(**q);
  for (; row && *row; row = connection.next(**q))
    people.emplace_back(Person{column(0), column(1), column(2), column(3), column(4), column(5), column(6),
                               column(7), column(8)},
                        Instant{number((*q)->value(9))});
  if (row) memory.set_people(people);
  return row.map([](bool) {});
}

}  // namespace

Expected<std::string> read_pin(Connection& connection, const PersonId& person) {
  auto q = connection.run("SELECT hash FROM pins WHERE person = ?", {text(person)});
  if (!q) return tl::make_unexpected(q.error());
  const auto row = connection.next(**q);
  if (!row) return tl::make_unexpected(row.error());
  const std::string hash = *row ? text((*q)->value(0)) : "";
  (*q)->finish();
  return hash;
}

Expected<void> read_new(Connection& connection, Memory& memory) {
  return read_commits(connection, memory)
      .and_then([&] { return read_records(connection, memory); })
      .and_then([&] { return read_people(connection, memory); });
}

Expected<ShopDetails> read_details(Connection& connection) {
  auto q = connection.run("SELECT name, zone, demo_clock FROM shop WHERE one = 1", {});
  if (!q) return tl::make_unexpected(q.error());
  const auto row = connection.next(**q);
  if (!row) return tl::make_unexpected(row.error());
  if (!*row)
    return refuse(connection.path(), "The file is damaged: it does not say which shop it is of.",
                  "Bring back the last backup, and keep this file.");
  ShopDetails details{text((*q)->value(0)), text((*q)->value(1)), number((*q)->value(2))};
  (*q)->finish();
  return details;
}

}  // namespace wm::db
