#include "db/journal/current_shop.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "db/journal/known_shop.h"

namespace wm::db {

void CurrentShop::make(const Memory& memory, const Zone& zone) {
  auto made = std::make_unique<Current>(known_shop(memory, zone, std::nullopt));
  if (current_) {
    const std::vector<Shift> shifts = made->shifts_from(*current_);
    shifts_.insert(shifts_.end(), shifts.begin(), shifts.end());
  }
  current_ = std::move(made);
}

bool CurrentShop::follow(const Memory& memory, const Entry& entry) {
  const auto note = [this](const std::vector<Shift>& shifts) {
    shifts_.insert(shifts_.end(), shifts.begin(), shifts.end());
    return true;
  };
  if (const auto* strike_out = as<StrikeOut>(entry.fact)) {
    const Entry* struck = memory.find(strike_out->record);
    if (struck != nullptr && std::holds_alternative<Fact>(struck->fact))
      return note(current_->strike_out(struck->id));
    return struck == nullptr ||
           (as<Join>(struck->fact) == nullptr && as<MachineAdded>(struck->fact) == nullptr &&
            as<RulebookIssued>(struck->fact) == nullptr);
  }
  if (entry.voided) return true;
  if (as<Join>(entry.fact) != nullptr || as<RulebookIssued>(entry.fact) != nullptr) return false;
  if (const auto* added = as<MachineAdded>(entry.fact)) {
    current_->set_machine({added->machine, added->machine_class});
  } else if (std::holds_alternative<Fact>(entry.fact)) {
    return note(current_->take(known_record(memory, entry)));
  }
  return true;
}

Current& CurrentShop::of(const Memory& memory, const Zone& zone) {
  const auto& entries = memory.entries();
  const auto& people = memory.people();
  if (!current_ || stale_) {
    make(memory, zone);
  } else {
    // Nobody who is new has been joined to somebody yet without an entry that says so.
    for (; people_ < people.size(); ++people_) current_->add_person(people[people_].id);
    bool followed = true;
    while (followed && entries_ < entries.size()) followed = follow(memory, entries[entries_++]);
    if (!followed) make(memory, zone);
  }
  stale_ = false;
  entries_ = entries.size();
  people_ = people.size();
  return *current_;
}

std::vector<Shift> CurrentShop::take_shifts() {
  std::map<std::pair<PersonId, TargetName>, Shift> merged;
  for (const Shift& shift : shifts_) {
    const auto [place, fresh] = merged.try_emplace({shift.person, shift.target}, shift);
    if (fresh) continue;
    Shift& one = place->second;
    one.from = std::min(one.from, shift.from);
    if (!one.until || !shift.until)
      one.until.reset();
    else
      one.until = std::max(*one.until, *shift.until);
  }
  shifts_.clear();
  std::vector<Shift> all;
  for (auto& [key, shift] : merged) all.push_back(std::move(shift));
  return all;
}

}  // namespace wm::db
