#include "db/second.h"

#include <algorithm>

#include "db/journal/subject.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

/// The record that an action ends or strikes out; null where it does neither.
const Entry* undone(const Memory& memory, const Action& action) {
  if (const auto* strike = std::get_if<StrikeOutRecord>(&action)) return memory.find(strike->record);
  const auto* enter = std::get_if<EnterFact>(&action);
  const auto* reinstate = enter == nullptr ? nullptr : std::get_if<Reinstate>(&enter->fact);
  return reinstate == nullptr ? nullptr : memory.find(reinstate->suspension);
}

std::optional<FourEyes> what(const Memory& memory, const Action& action) {
  const Entry* entry = undone(memory, action);
  if (entry == nullptr || entry->voided) return std::nullopt;
  if (as<Suspend>(entry->fact) != nullptr) return FourEyes::reinstate;
  const bool is_signed =
      as<Checkout>(entry->fact) != nullptr && memory.about<Signature>(entry->id) != nullptr;
  return is_signed ? std::optional(FourEyes::strike_out) : std::nullopt;
}

}  // namespace

bool needs_second(const Memory& memory, const Action& action, const Rulebook* rulebook) {
  const auto asked = what(memory, action);
  return asked && rulebook != nullptr &&
         std::ranges::find(rulebook->four_eyes, *asked) != rulebook->four_eyes.end();
}

Expected<void> check_second(const Memory& memory, const Action& action, const PersonId& by,
                            const PersonId& second, Instant t) {
  const auto same = [&](const PersonId& id) { return memory.joined(id) == memory.joined(second); };
  if (same(by))
    return refuse("second", "The second person must be somebody else.",
                  "Let another instructor or manager vouch for it.");
  const Entry* entry = undone(memory, action);
  if (entry != nullptr && same(subject_of(entry->fact).person))
    return refuse("second", "This is about " + memory.name(second) + ", who can't vouch for it.",
                  "Let another instructor or manager vouch for it.");
  const auto role = memory.role(second, t);
  if (role == Role::instructor || role == Role::manager) return {};
  return refuse("second", memory.name(second) + " is neither an instructor nor a manager.",
                "Let another instructor or manager vouch for it.");
}

}  // namespace wm::db
