#include "db/journal/rows.h"
#include "db/journal/some_rows.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

std::int64_t number(const QVariant& v) { return v.toLongLong(); }

/// What is kept apart, in step with the records that it belongs to.
class KeptRows {
 public:
  KeptRows(Connection& connection, QSqlQuery& query) : connection_(connection), query_(query) {}
  Expected<ByField> of(std::int64_t order) {
    ByField kept;
    while (true) {
      if (!fetched_) {
        const auto row = connection_.next(query_);
        if (!row) return tl::make_unexpected(row.error());
        more_ = *row;
        fetched_ = true;
      }
      if (!more_ || number(query_.value(0)) > order) return kept;
      if (!query_.value(2).isNull()) kept[text(query_.value(1))] = text(query_.value(2));
      fetched_ = false;
    }
  }

 private:
  Connection& connection_;
  QSqlQuery& query_;
  bool fetched_ = false, more_ = false;
};

Expected<void> add_row(const Connection& connection, const QSqlQuery& row, const ByField& kept,
                       const Proved& proved, Memory& memory) {
  const auto erased = proved.find(text(row.value(2)));
  auto content = read_leaf(text(row.value(3)), kept, erased == proved.end() ? std::nullopt : erased->second);
  if (!content) return damaged_record(connection.path(), text(row.value(1)), content.error());
  if (content->blank) {
    memory.skip(content->entry);
    return {};
  }
  memory.add_entry(std::move(content->entry));
  if (content->rulebook) memory.add_rulebook(std::move(*content->rulebook));
  return {};
}

}  // namespace

Expected<void> read_new(Connection& connection, Memory& memory) {
  const auto proved = read_proved(connection);
  if (!proved) return tl::make_unexpected(proved.error());
  const QVariantList from = {static_cast<qlonglong>(memory.last_order())};
  auto apart =
      connection.run("SELECT ord, field, value FROM private_values WHERE ord > ? ORDER BY ord, field", from);
  if (!apart) return tl::make_unexpected(apart.error());
  auto q = connection.run("SELECT ord, id, person, leaf FROM records WHERE ord > ? ORDER BY ord", from);
  if (!q) return tl::make_unexpected(q.error());
  KeptRows kept_rows(connection, **apart);
  auto row = connection.next(**q);
  Expected<void> done;
  for (; done && row && *row; row = connection.next(**q)) {
    const auto kept = kept_rows.of(number((*q)->value(0)));
    done = kept ? add_row(connection, **q, *kept, *proved, memory) : tl::make_unexpected(kept.error());
  }
  (*apart)->finish();
  (*q)->finish();
  return done ? row.map([](bool) {}) : done;
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
  constexpr std::int64_t century = 100LL * 366 * 86'400;
  if (details.demo_clock < -century || details.demo_clock > century)
    return refuse(connection.path(), "The file is damaged: its clock is more than a century off.",
                  "Bring back the last backup, and keep this file.");
  return details;
}

Expected<Zone> zone_of(const ShopDetails& details) {
  auto zone = Zone::named(details.zone);
  if (zone) return zone;
  return refuse("zone", "There is no time zone '" + details.zone + "' on this computer.",
                "Choose one such as 'America/Chicago', or update the computer's time zones.");
}

}  // namespace wm::db
