#include "db/journal/some_rows.h"

#include "db/journal/subject.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

#define WM_SHOP_WIDE                                                                                    \
  "kind IN ('details', 'erased', 'join', 'rulebook', 'publish', 'change', 'machine_added', 'lockout', " \
  "'release', "                                                                                         \
  "'reinstate', 'dismiss', 'restriction', 'strike_out')"
#define WM_RECORDS                                                                                       \
  "SELECT r.ord, r.id, r.person, r.leaf, p.field, p.value FROM records r LEFT JOIN private_values p ON " \
  "p.ord = r.ord "

constexpr const char* of_person = WM_RECORDS "WHERE r.person = ? AND r.ord <= ? ORDER BY r.ord";
constexpr const char* erased_leaves =
    "SELECT leaf FROM records WHERE " WM_SHOP_WIDE " AND kind = 'erased' ORDER BY ord";

/// A record's row, or several where more than one of its values is kept apart.
struct Row {
  std::int64_t order = 0;
  std::string id, leaf;
  PersonId person;
  ByField kept;
};

Expected<void> give(const Connection& connection, const Row& row, const Proved& proved,
                    const TakeContent& take) {
  const auto erased = proved.find(row.person);
  auto content = read_leaf(row.leaf, row.kept, erased == proved.end() ? std::nullopt : erased->second);
  if (!content) return damaged_record(connection.path(), row.id, content.error());
  take(std::move(*content));
  return {};
}

Expected<void> read(Connection& connection, const char* sql, const QVariantList& values, const Proved& proved,
                    const TakeContent& take) {
  auto q = connection.run(sql, values);
  if (!q) return tl::make_unexpected(q.error());
  std::optional<Row> open;
  Expected<void> done;
  auto there = connection.next(**q);
  for (; done && there && *there; there = connection.next(**q)) {
    const std::int64_t order = (*q)->value(0).toLongLong();
    if (open && open->order != order) {
      done = give(connection, *open, proved, take);
      open.reset();
    }
    if (!open) open = Row{order, text((*q)->value(1)), text((*q)->value(3)), text((*q)->value(2)), {}};
    if (!(*q)->value(5).isNull()) open->kept[text((*q)->value(4))] = text((*q)->value(5));
  }
  (*q)->finish();
  if (done && !there) return tl::make_unexpected(there.error());
  return done && open ? give(connection, *open, proved, take) : done;
}

}  // namespace

const char* const shop_wide_query = WM_RECORDS "WHERE r." WM_SHOP_WIDE " AND r.ord <= ? ORDER BY r.ord";

const char* const emergency_call_query =
    WM_RECORDS "WHERE r.kind = 'emergency_call' AND r.ord <= ? ORDER BY r.ord";

#undef WM_RECORDS
#undef WM_SHOP_WIDE

tl::unexpected<Problem> damaged_record(const std::string& path, const RecordId& id, const Problem& why) {
  return refuse(
      path, "The file is damaged: record '" + id + "' cannot be read (" + why.where + ": " + why.what + ").",
      "Bring back the last backup, and keep this file.");
}

Expected<Proved> read_proved(Connection& connection) {
  Proved proved;
  Expected<void> done;
  auto walked = connection.each(erased_leaves, [&](const QSqlQuery& row) {
    auto content = read_leaf(text(row.value(0)), {}, std::nullopt);
    if (!content) {
      done = tl::make_unexpected(content.error());
      return;
    }
    const auto* erased = as<Erased>(content->entry.fact);
    if (erased == nullptr) {
      done = damaged_record(connection.path(), content->entry.id,
                            {"kind", "it is no erasure, as its row says", {}});
      return;
    }
    proved[erased->person] = erased->born_by;
  });
  if (walked) walked = done;
  return walked.map([&] { return std::move(proved); });
}

Expected<void> read_shop_wide(Connection& connection, const Proved& proved, std::int64_t last,
                              const TakeContent& take) {
  const QVariantList through{QVariant::fromValue(static_cast<qlonglong>(last))};
  return read(connection, shop_wide_query, through, proved, take).and_then([&] {
    return read(connection, emergency_call_query, through, proved, take);
  });
}

Expected<void> read_person(Connection& connection, const PersonId& person, const Proved& proved,
                           std::int64_t last, const TakeContent& take) {
  return read(connection, of_person, {text(person), QVariant::fromValue(static_cast<qlonglong>(last))},
              proved, take);
}

}  // namespace wm::db
