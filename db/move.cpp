#include "db/move.h"

#include <algorithm>

#include "db/heads.h"
#include "db/journal/rows.h"
#include "db/refuse.h"
#include "db/sql/file.h"
#include "db/sql/server.h"

namespace wm::db {
/// Of this file alone, however files are compiled together.
namespace moving {
namespace {

/// How many records are held in memory at a time.
constexpr qlonglong stretch = 2000;

constexpr const char* records_of =
    "SELECT ord, commit_no, id, kind, recorded_at, person, refers_to, leaf, hash FROM records "
    "WHERE ord > ? AND ord <= ? ORDER BY ord";
constexpr const char* kept_of =
    "SELECT ord, field, salt, value FROM private_values WHERE ord > ? AND ord <= ? ORDER BY ord, field";
/// What bookings take from the last entry on: what is over by then may lie there or not. It is made anew by
/// the records themselves.
constexpr const char* taken_of =
    "SELECT ord, what, from_at, until_at, held_through FROM taken, (SELECT max(recorded_at) AS last FROM "
    "records) l "
    "WHERE ord > ? AND ord <= ? AND until_at > last AND (held_through IS NULL OR held_through > last)";
constexpr const char* add_record =
    "INSERT INTO records (ord, commit_no, id, kind, recorded_at, person, refers_to, leaf, hash) "
    "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)";
constexpr const char* add_kept = "INSERT INTO private_values (ord, field, salt, value) VALUES (?, ?, ?, ?)";

using Row = QVariantList;
struct Stretch {
  std::vector<Row> records, kept, taken;
};

Expected<std::vector<Row>> rows(Connection& connection, const char* sql, qlonglong after) {
  auto query = connection.run(sql, {after, after + stretch});
  if (!query) return tl::make_unexpected(query.error());
  std::vector<Row> all;
  auto there = connection.next(**query);
  const int columns = sql == records_of ? 9 : sql == kept_of ? 4 : 5;
  for (; there && *there; there = connection.next(**query)) {
    Row row;
    for (int i = 0; i < columns; ++i) row << (*query)->value(i);
    all.push_back(std::move(row));
  }
  (*query)->finish();
  return there.map([&](bool) { return std::move(all); });
}

Expected<Stretch> read(Connection& connection, qlonglong after) {
  auto records = rows(connection, records_of, after);
  if (!records) return tl::make_unexpected(records.error());
  auto taken = rows(connection, taken_of, after);
  if (!taken) return tl::make_unexpected(taken.error());
  std::sort(taken->begin(), taken->end(), [](const Row& a, const Row& b) {
    return std::pair(a[0].toLongLong(), text(a[1])) < std::pair(b[0].toLongLong(), text(b[1]));
  });
  return rows(connection, kept_of, after).map([&](std::vector<Row> kept) {
    return Stretch{std::move(*records), std::move(kept), std::move(*taken)};
  });
}

tl::unexpected<Problem> damaged(const Connection& from) {
  return refuse(from.shown(), "The shop is damaged: its records are not what its ledger says.",
                "Have it looked through with 'witnessmark verify', and bring back the last backup.");
}

/// What is kept apart goes in with its record: the store takes it at no other time.
Expected<void> write(Connection& to, const Stretch& some) {
  auto kept = some.kept.begin();
  for (const Row& record : some.records) {
    if (auto done = to.run(add_record, record); !done) return tl::make_unexpected(done.error());
    for (; kept != some.kept.end() && kept->front().toLongLong() == record.front().toLongLong(); ++kept)
      if (auto done = to.run(add_kept, *kept); !done) return tl::make_unexpected(done.error());
  }
  return {};
}

/// All records, and the tree that they make by themselves: not the one that the shop says it has.
Expected<void> copy(Connection& from, Connection& to) {
  std::vector<ledger::Hash> leaves;
  for (qlonglong after = 0;; after += stretch) {
    const auto some = read(from, after);
    if (!some) return tl::make_unexpected(some.error());
    if (some->records.empty()) break;
    for (const Row& record : some->records) leaves.push_back(ledger::leaf_hash(text(record[7])));
    if (auto done = write(to, *some); !done) return done;
  }
  if (auto done = grow_tree(to, leaves); !done) return done;
  const auto was = head_of(from), is = head_of(to);
  if (!was || !is) return tl::make_unexpected(was ? is.error() : was.error());
  return *was == *is ? Expected<void>{} : damaged(from);
}

/// Engines give numbers, and nothing where one would be, in types of their own.
bool same(const Row& a, const Row& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const QVariant& one, const QVariant& other) {
    if (one.isNull() || other.isNull()) return one.isNull() && other.isNull();
    return one.toByteArray() == other.toByteArray();
  });
}

bool same(const std::vector<Row>& a, const std::vector<Row>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](const Row& x, const Row& y) { return same(x, y); });
}

Expected<void> compare(Connection& from, Connection& to) {
  for (qlonglong after = 0;; after += stretch) {
    const auto was = read(from, after), is = read(to, after);
    if (!was || !is) return tl::make_unexpected(was ? is.error() : was.error());
    if (!same(was->records, is->records) || !same(was->kept, is->kept) || !same(was->taken, is->taken))
      return refuse(to.shown(), "What was written there is not what was read.", "Use the shop where it was.");
    if (was->records.empty()) return {};
  }
}

}  // namespace
}  // namespace moving

Expected<ledger::Head> move_store(const std::string& from, const std::string& to,
                                  const StoreOptions& options) {
  const auto old = open_store(from, options);
  if (!old) return tl::make_unexpected(old.error());
  // One moment of it, whoever goes on entering.
  const auto reading = Transaction::begin_reading(**old);
  if (!reading) return tl::make_unexpected(reading.error());
  const auto details = read_details(**old);
  if (!details) return tl::make_unexpected(details.error());
  const auto made =
      create_store(to, *details, options, [&](Connection& fresh) { return moving::copy(**old, fresh); });
  if (!made) return tl::make_unexpected(made.error());
  return moving::compare(**old, **made).and_then([&] { return head_of(**made); });
}

}  // namespace wm::db
