#include "app/lists/record_reader.h"

#include <memory>
#include <unordered_map>

#include "app/words/listed_name.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct Index {
  std::unordered_map<std::string, QString> people, machines;
  std::unordered_map<std::string, const db::Entry*> records;
};

std::shared_ptr<const Index> index_of(const Session& session) {
  auto index = std::make_shared<Index>();
  for (const db::Person& person : session.people()) index->people[person.id] = person_name(person);
  for (const db::Entry& entry : session.store().entries()) {
    index->records[entry.id] = &entry;
    const auto* fact = std::get_if<db::ShopFact>(&entry.fact);
    const auto* unit = fact && session.counts(entry) ? std::get_if<db::MachineAdded>(fact) : nullptr;
    if (unit) index->machines[unit->machine] = unit_name(unit->machine_class, unit->label);
  }
  return index;
}

template <class Map>
QString named(const Map& map, const std::string& id) {
  const auto found = map.find(id);
  return found == map.end() ? QString::fromStdString(id) : found->second;
}

}  // namespace

RecordReader record_reader(const Session& session) {
  const auto index = index_of(session);
  return {[index](const PersonId& id) { return id.empty() ? QString() : named(index->people, id); },
          [index](const MachineId& id) { return named(index->machines, id); },
          [index](const RecordId& id) {
            const auto found = index->records.find(id);
            return found == index->records.end() ? nullptr : found->second;
          },
          session.zone()};
}

}  // namespace wm::app
