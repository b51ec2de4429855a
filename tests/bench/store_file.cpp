#include "store_file.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>

#include "db/journal/rows.h"
#include "db/store.h"

namespace wm::bench {
namespace {

using namespace wm::db;

template <class T>
T must(Expected<T> done) {
  if (done) return std::move(*done);
  std::fprintf(stderr, "%s: %s\n", done.error().where.c_str(), done.error().what.c_str());
  std::exit(1);
}
void must(Expected<void> done) {
  if (done) return;
  std::fprintf(stderr, "%s: %s\n", done.error().where.c_str(), done.error().what.c_str());
  std::exit(1);
}

class Writer {
 public:
  explicit Writer(Connection& connection) : connection_(connection) {}

  void write(const RecordId& id, Instant at, Instant recorded, AnyFact fact,
             const Rulebook* rulebook = nullptr) {
    Entry entry;
    entry.order = entry.commit = ++order_;
    entry.id = id;
    entry.at = at;
    // An import keeps them in order, as the store does.
    entry.recorded = last_ = std::max(last_, recorded);
    entry.fact = std::move(fact);
    const Origin origin{std::string(any_kind_word(entry.fact)), "", "import", false, ""};
    leaves_.push_back(must(write_entry(connection_, entry, origin, rulebook)));
  }
  void finish() { must(grow_tree(connection_, leaves_)); }

 private:
  Connection& connection_;
  std::int64_t order_ = 0;
  Instant last_ = first_instant;
  std::vector<ledger::Hash> leaves_;
};

/// What happens to the world in order: records, and strike-outs of some.
struct Event {
  Instant recorded;
  const Record* record;
  bool strikes;
};

std::vector<Event> events_of(const World& world) {
  std::vector<Event> events;
  for (const Record& record : world.shop.records) {
    events.push_back({record.recorded, &record, false});
    if (record.voided) events.push_back({*record.voided, &record, true});
  }
  std::stable_sort(events.begin(), events.end(),
                   [](const Event& a, const Event& b) { return a.recorded < b.recorded; });
  return events;
}

Person named(const PersonId& id) {
  Person person;
  person.id = person.number = id;
  person.given = "Person";
  person.family = id;
  return person;
}

}  // namespace

void write_store(const std::string& path, const World& world) {
  {
    auto store = must(
        Store::create(path, {"World W", "UTC", 0}, [&] { return world.shop.rulebooks.front().recorded; }));
  }
  Connection connection(path, 1500);
  auto transaction = must(Transaction::begin(connection));
  Writer writer(connection);
  const Instant founded = world.shop.rulebooks.front().recorded;
  for (const PersonId& id : world.shop.people)
    writer.write("details-" + id, founded, founded, ShopFact(Details{id, named(id)}));
  for (const Machine& machine : world.shop.machines)
    writer.write("unit-" + machine.id, founded, founded,
                 ShopFact(MachineAdded{machine.id, machine.machine_class, machine.id}));
  auto rulebook = world.shop.rulebooks.begin();
  for (const Event& event : events_of(world)) {
    for (; rulebook != world.shop.rulebooks.end() && rulebook->recorded <= event.recorded; ++rulebook)
      writer.write("rulebook-" + std::to_string(rulebook->version), rulebook->recorded, rulebook->recorded,
                   ShopFact(RulebookIssued{rulebook->version}), &*rulebook);
    if (event.strikes)
      writer.write("struck-" + event.record->id, event.recorded, event.recorded,
                   ShopFact(StrikeOut{event.record->id, "by mistake"}));
    else
      writer.write(event.record->id, event.record->at, event.recorded, AnyFact(event.record->fact));
  }
  writer.finish();
  must(transaction.commit());
}

}  // namespace wm::bench
