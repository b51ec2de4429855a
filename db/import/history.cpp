// What happened: one kind of row for each kind of record.
#include "core/records/json.h"
#include "core/time/text.h"
#include "db/import/kinds.h"
#include "db/import/rows.h"

namespace wm::db::import {
namespace {

/// Papers with a number of their own are named by it, so that a suspension, an appointment or a lockout can
/// be ended by a row of a later file; all others by what they say.
RecordId id_of(const RowReader& row, Instant at, const std::variant<Fact, ShopFact>& fact) {
  if (row.has("ref")) return "paper-" + row.text("ref");
  if (const auto* record = std::get_if<Fact>(&fact))
    return content_id(to_json(Record{{}, at, at, {}, *record}));
  return content_id(to_text(at) + "\x1f" + content_of(std::get<ShopFact>(fact)));
}

Action action_of(const std::variant<Fact, ShopFact>& fact) {
  if (const auto* record = std::get_if<Fact>(&fact)) return EnterFact{*record};
  return EnterShopFact{std::get<ShopFact>(fact)};
}

/// Publishing, appointing and suspending may be dated ahead.
bool may_lie_ahead(const std::variant<Fact, ShopFact>& fact) {
  const auto* record = std::get_if<Fact>(&fact);
  return record && (std::holds_alternative<Publish>(*record) || std::holds_alternative<Appoint>(*record) ||
                    std::holds_alternative<Suspend>(*record));
}

std::optional<Instant> time_of(RowReader& row) {
  const auto at = row.instant("date");
  if (!at && !row.has("date")) row.wrong("date", "is empty", "Write when it happened");
  return at;
}

void strike_out(RowReader& row, const RecordId& id, Instant at, std::vector<Command>& commands) {
  const auto struck = row.instant("struck_out");
  if (!struck) {
    if (row.has("reason") && !row.has("struck_out"))
      row.wrong("struck_out", "is empty though a reason is given", "Write when it was struck out");
    return;
  }
  const std::string reason = row.needed("reason");
  if (*struck < at) row.wrong("struck_out", "is before the date of the row", "Write the later day");
  if (*struck > row.ground().now)
    row.wrong("struck_out", "lies in the future", "Write when it was struck out");
  // In a shop that runs already a strike-out counts from now on: what was known before stays as it was.
  const auto when = row.options().by.empty() ? struck : std::nullopt;
  if (!row.ground().struck_out.contains(id))
    commands.push_back(command(row, id + "-struck", when, StrikeOutRecord{id, reason}));
}

/// Details that stand beside a record.
void enter_extras(RowReader& row, const RecordId& id, Instant at, const Fact& fact,
                  std::vector<Command>& commands) {
  if (std::holds_alternative<Checkout>(fact) && row.has("restriction"))
    commands.push_back(
        command(row, id + "-restriction", at, EnterShopFact{Restriction{id, row.text("restriction")}}));
  if (!std::holds_alternative<Lockout>(fact)) return;
  const PersonId holder = row.has("by") ? row.person("by") : PersonId();
  const PersonId put_on_by = row.has("number") ? row.person("number") : PersonId();
  const Tag tag{id, row.text("ref"), row.text("result"), row.text("note"), holder, put_on_by};
  commands.push_back(command(row, id + "-tag", at, EnterShopFact{tag}));
}

std::vector<Command> plan_event(RowReader& row) {
  const auto at = time_of(row);
  const auto fact = read_kind(row, at.value_or(row.ground().now));
  if (!at || !fact) return {};
  if (*at > row.ground().now && !may_lie_ahead(*fact))
    row.wrong("date", "lies in the future", "Write when it happened");
  const RecordId id = id_of(row, *at, *fact);
  std::vector<Command> commands;
  if (const auto here = row.ground().records.find(id); here == row.ground().records.end()) {
    commands.push_back(command(row, id, *at, action_of(*fact)));
    if (const auto* record = std::get_if<Fact>(&*fact)) enter_extras(row, id, *at, *record, commands);
  } else if (here->second.at != *at || here->second.fact != *fact) {
    row.wrong("ref", "\"" + row.text("ref") + "\" is another paper's", "Give each paper a number of its own");
  }
  strike_out(row, id, *at, commands);
  return commands;
}

}  // namespace

ImportPlan plan_history(const Table& table, const Mapping& mapping, const PlanOptions& options,
                        const Ground& ground) {
  return plan_rows(Source(FileKind::history, table, mapping, options), mapping, ground, "date", plan_event);
}

}  // namespace wm::db::import
