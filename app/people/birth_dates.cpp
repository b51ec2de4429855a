#include "app/people/birth_dates.h"

#include <unordered_map>

namespace wm::app {

std::vector<KnownPerson> known_people(const Session& session) {
  std::unordered_map<PersonId, Day> born;
  for (const db::Entry& entry : session.store().entries()) {
    const auto* fact = std::get_if<Fact>(&entry.fact);
    const auto* birth = fact && !entry.voided ? std::get_if<Birth>(fact) : nullptr;
    if (birth) born[birth->person] = birth->born;
  }
  std::vector<KnownPerson> known;
  for (const db::Person& person : session.store().people()) {
    const auto found = born.find(person.id);
    known.push_back({person, found == born.end() ? std::nullopt : std::optional(found->second)});
  }
  return known;
}

}  // namespace wm::app
