#include "db/sql/carry_over.h"

#include <map>
#include <nlohmann/json.hpp>

#include "db/journal/personal.h"
#include "db/journal/rows.h"
#include "db/journal/said.h"
#include "db/journal/shop_fact_json.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

using Json = nlohmann::json;

struct EarlierRecord {
  RecordId id;
  std::string kind;
  Instant at;
  bool from_paper = false;
  std::string note_hash, body;
  std::vector<KeptApart> kept;
};
struct EarlierCommit {
  std::int64_t number = 0;
  std::string command, action;
  PersonId person;
  std::string entered_by, station;
  Instant recorded;
  std::vector<EarlierRecord> records;
};
struct EarlierPeople {
  std::map<PersonId, Person> details;
  std::map<std::int64_t, PersonId> new_in;  // by commit
  std::map<PersonId, std::string> pins;
  std::map<PersonId, std::int64_t> last_pin;  // the commit that chose it
};

Instant instant(const QVariant& v) { return {v.toLongLong()}; }

Expected<std::vector<EarlierCommit>> read_commits(Connection& connection) {
  std::vector<EarlierCommit> commits;
  auto done = connection.each(
      "SELECT commit_no, command_id, action, person, entered_by, station, recorded_at FROM commits "
      "ORDER BY commit_no",
      [&](const QSqlQuery& q) {
        commits.push_back({q.value(0).toLongLong(),
                           text(q.value(1)),
                           text(q.value(2)),
                           text(q.value(3)),
                           text(q.value(4)),
                           text(q.value(5)),
                           instant(q.value(6)),
                           {}});
      });
  std::map<std::int64_t, EarlierRecord*> by_order;
  if (done)
    done = connection.each(
        "SELECT ord, commit_no, id, kind, happened_at, from_paper, note_hash, body FROM earlier_records "
        "ORDER BY ord DESC",
        [&](const QSqlQuery& q) {
          auto& records = commits.at(static_cast<std::size_t>(q.value(1).toLongLong()) - 1).records;
          records.insert(records.begin(), {text(q.value(2)),
                                           text(q.value(3)),
                                           instant(q.value(4)),
                                           q.value(5).toBool(),
                                           text(q.value(6)),
                                           text(q.value(7)),
                                           {}});
        });
  if (done) {
    std::int64_t order = 0;
    for (EarlierCommit& commit : commits)
      for (EarlierRecord& record : commit.records) by_order[++order] = &record;
    done = connection.each("SELECT ord, field, salt, value FROM earlier_private_values ORDER BY ord, field",
                           [&](const QSqlQuery& q) {
                             by_order.at(q.value(0).toLongLong())
                                 ->kept.push_back({text(q.value(1)), text(q.value(2)), text(q.value(3))});
                           });
  }
  return done.map([&] { return std::move(commits); });
}

Expected<EarlierPeople> read_people(Connection& connection, const std::vector<EarlierCommit>& commits) {
  EarlierPeople people;
  auto done = connection.each(
      "SELECT id, commit_no, number, given, family, nickname, card, email, phone, emergency_contact FROM "
      "people",
      [&](const QSqlQuery& q) {
        const auto column = [&](int i) { return text(q.value(i)); };
        people.new_in[q.value(1).toLongLong()] = column(0);
        people.details[column(0)] = {column(0), column(2), column(3), column(4), column(5),
                                     column(6), column(7), column(8), column(9)};
      });
  if (done)
    done = connection.each("SELECT person, hash FROM pins",
                           [&](const QSqlQuery& q) { people.pins[text(q.value(0))] = text(q.value(1)); });
  for (const EarlierCommit& commit : commits)
    if (commit.action == "choose_pin") people.last_pin[commit.person] = commit.number;
  return done.map([&] { return std::move(people); });
}

class Carrier {
 public:
  Carrier(Connection& connection, EarlierPeople people)
      : connection_(connection), people_(std::move(people)) {}

  Expected<void> carry(const EarlierCommit& commit) {
    next_ = 0;
    for (const EarlierRecord& record : commit.records)
      if (auto done = carry(commit, record); !done) return done;
    if (const auto entered = people_.new_in.find(commit.number); entered != people_.new_in.end())
      return add(commit, Details{entered->second, people_.details.at(entered->second)});
    if (commit.action == "correct_person")
      return add(commit, Details{commit.person, people_.details.at(commit.person)});
    if (commit.action == "choose_pin") return add(commit, PinChosen{commit.person, {}, {}});
    if (commit.action == "blank_person") return erase(commit);
    return {};
  }
  const std::vector<ledger::Hash>& leaves() const { return leaves_; }

 private:
  Entry entry(const EarlierCommit& commit, RecordId id, Instant at, AnyFact fact) {
    return {++order_,     commit.number,   std::move(id),     at,    commit.recorded,
            std::nullopt, std::move(fact), commit.entered_by, false, {}};
  }

  Expected<void> write(const EarlierCommit& commit, const Json& body, const Entry& entry,
                       const std::string& note, const std::vector<KeptApart>& kept) {
    const std::string station = commit.station == "desk" ? "whole" : commit.station;
    const Origin origin{commit.action, commit.entered_by, station, entry.from_paper};
    const std::string leaf = to_leaf(entry.commit, entry.order, body, origin, note);
    return write_leaf(connection_, leaf, entry, kept).map([this](const ledger::Hash& hash) {
      leaves_.push_back(hash);
    });
  }

  Expected<void> carry(const EarlierCommit& commit, const EarlierRecord& record) {
    ++next_;
    Json body = Json::parse(record.body);
    if (record.kind == "rulebook")
      body = to_json(record.id, record.at, commit.recorded, RulebookIssued{}), body.erase("version"),
      body["rulebook"] = Json::parse(record.body);
    Entry as_written = entry(commit, record.id, record.at, {});
    as_written.from_paper = record.from_paper;
    // What it is about is read from the leaf that is written, whatever was blanked in it.
    const std::string leaf = to_leaf(commit.number, as_written.order, body, {}, record.note_hash);
    auto content = read_leaf(leaf, {}, Day{0});
    if (!content) return tl::make_unexpected(content.error());
    as_written.fact = std::move(content->entry.fact);
    return write(commit, body, as_written, record.note_hash, record.kept);
  }

  /// A record for what earlier versions kept without one.
  Expected<void> add(const EarlierCommit& commit, ShopFact fact) {
    Entry made = entry(commit, next_ == 0 ? commit.command : commit.command + "." + std::to_string(next_ + 1),
                       commit.recorded, AnyFact(fact));
    ++next_;
    ByField values = personal_in(made);
    bool blanked = false;
    if (const auto* details = std::get_if<Details>(&fact))
      blanked = details->details == nameless(details->person);
    if (const auto* pin = std::get_if<PinChosen>(&fact)) {
      const auto hash = people_.pins.find(pin->person);
      blanked = hash == people_.pins.end() || people_.last_pin.at(pin->person) != commit.number;
      if (!blanked) values["pin"] = hash->second;
    }
    auto [kept, hashes] = keep_apart(values);
    if (blanked) kept.front().salt.clear();
    return write(commit, body_of(made, hashes, nullptr), made, "", kept);
  }

  /// Until late in version 2 an erasing did not say whose details it was.
  Expected<void> erase(const EarlierCommit& commit) {
    if (!commit.person.empty()) return add(commit, Erased{commit.person, std::nullopt});
    for (const auto& [id, details] : people_.details)
      if (details == nameless(id))
        if (auto done = add(commit, Erased{id, std::nullopt}); !done) return done;
    return {};
  }

  Connection& connection_;
  EarlierPeople people_;
  std::int64_t order_ = 0;
  std::size_t next_ = 0;  // records of the commit so far
  std::vector<ledger::Hash> leaves_;
};

}  // namespace

Expected<void> carry_over(Connection& connection) {
  const auto shops = connection.value("SELECT count(*) FROM shop");
  if (!shops) return tl::make_unexpected(shops.error());
  if (shops->toInt() == 0) return {};
  const auto details = read_details(connection);
  if (!details) return tl::make_unexpected(details.error());
  try {
    const auto commits = read_commits(connection);
    if (!commits) return tl::make_unexpected(commits.error());
    auto people = read_people(connection, *commits);
    if (!people) return tl::make_unexpected(people.error());
    Carrier carrier(connection, std::move(*people));
    for (const EarlierCommit& commit : *commits)
      if (auto done = carrier.carry(commit); !done) return done;
    return begin_tree(connection, *details).and_then([&] { return grow_tree(connection, carrier.leaves()); });
  } catch (const std::exception& e) {
    return refuse(connection.path(), "The file is damaged: " + said(e) + ".",
                  "Bring back the last backup, and keep this file.");
  }
}

}  // namespace wm::db
