// Supervised sessions and check-outs: who can have been where, and who may judge whom.
#include <algorithm>

#include "core/rulebook/checkouts.h"
#include "db/check/checks.h"
#include "db/diary/diary.h"

namespace wm::db {
namespace {

Instant end_of(Instant at, const Supervised& session) { return at + 60ll * session.minutes; }

/// One is in one session at a time, on whichever side.
Expected<void> check_free(const Case& c, const PersonId& person, const Supervised& session) {
  for (const PersonId& alias : c.memory.aliases(person)) {
    for (const std::size_t i : c.memory.sessions_of(alias)) {
      const Entry& other = c.memory.entries()[i];
      const Instant ends = end_of(other.at, *as<Supervised>(other.fact));
      if (other.voided || other.at >= end_of(c.at, session) || ends <= c.at) continue;
      return refuse("at",
                    c.memory.name(person) + " was in another supervised session from " + said(c, other.at) +
                        " to " + said(c, ends) + ".",
                    "Check the times, or strike the other session out.");
    }
  }
  return {};
}

bool asks_for(const Rulebook& rulebook, const TargetName& target, const std::string& checkout) {
  const auto needs = checkout_needs(rulebook, target);
  return std::any_of(needs.begin(), needs.end(),
                     [&](const NeedCheckout* need) { return need->checkout == checkout; });
}

}  // namespace

Expected<void> check_session(const Case& c, const Supervised& f) {
  if (c.same(f.person, f.supervisor))
    return refuse("supervisor", "Nobody supervises themself.", "Choose who was with them.");
  if (auto fine = check_free(c, f.person, f); !fine) return fine;
  if (auto fine = check_free(c, f.supervisor, f); !fine) return fine;
  if (!c.judges_ability()) return {};
  if (c.decider().able_to_supervise(c.memory.joined(f.supervisor), f.target, c.at - 1)) return {};
  return refuse(
      "supervisor",
      c.memory.name(f.supervisor) + " could not supervise '" + f.target + "' at " + said(c, c.at) + ".",
      "Choose who can; a manager may enter a paper from the past.");
}

Expected<void> check_not_close(const Case& c, const Checkout& f) {
  const Rulebook* rulebook = c.decider().in_force(c.at);
  if (rulebook == nullptr || rulebook->close_may_sign) return {};
  for (const std::size_t i : c.memory.of_kind("close")) {
    const Entry& entry = c.memory.entries()[i];
    const Close& named = *as<Close>(entry.fact);
    const bool these = (c.same(named.person, f.assessor) && c.same(named.other, f.person)) ||
                       (c.same(named.person, f.person) && c.same(named.other, f.assessor));
    if (these && !entry.voided)
      return refuse(
          "assessor",
          c.memory.name(f.assessor) + " and " + c.memory.name(f.person) + " are close, by their own word.",
          "Let another assessor watch and sign.");
  }
  return {};
}

Expected<void> check_assessor(const Case& c, const Checkout& f, const MachineId& machine) {
  if (!c.judges_ability()) return {};
  if (auto fine = check_not_close(c, f); !fine) return fine;
  const std::string machine_class = machine.empty() ? "" : c.memory.class_of_machine(machine);
  const Rulebook* rulebook = c.decider().in_force(c.at);
  bool asked = false, taught_them = false;
  for (const TargetName& target : rulebook == nullptr ? std::vector<TargetName>() : targets_of(*rulebook)) {
    if (!machine_class.empty() && class_of(target) != machine_class) continue;
    if (!asks_for(*rulebook, target, f.checkout)) continue;
    asked = true;
    if (!c.decider().able_to_assess(c.memory.joined(f.assessor), target, c.at - 1)) continue;
    if (!another_checks_out(rulebook, target) ||
        !taught(c.memory, f.assessor, f.person, std::string(class_of(target)), c.at, c.now))
      return {};
    taught_them = true;
  }
  if (taught_them)
    return refuse(
        "assessor",
        c.memory.name(f.assessor) + " taught them on this machine, and in its tier another checks out.",
        "Let another assessor watch and sign.");
  if (!asked)
    return refuse("checkout", "No rule in force asks for the check-out '" + f.checkout + "' here.",
                  "Choose a check-out of the rulebook.");
  return refuse(
      "assessor",
      c.memory.name(f.assessor) + " could not assess '" + f.checkout + "' at " + said(c, c.at) + ".",
      "Let somebody assess it who can; a manager may enter a paper from the past.");
}

Expected<void> check_signing(const Case& c, const SignCheckout& s) {
  if (s.booking) {
    const Booking* booking = c.memory.live<Booking>(*s.booking);
    if (booking == nullptr || !c.same(booking->person, s.checkout.person))
      return refuse("booking", "This booking is not one of theirs.", "Choose their booking, or none.");
  }
  if (auto fine = check_fact(c, AnyFact(Fact(s.checkout))); !fine) return fine;
  if (!s.machine.empty() && c.memory.class_of_machine(s.machine).empty())
    return refuse("machine", "There is no machine '" + s.machine + "'.",
                  "Choose one of the shop's machines.");
  for (const std::string& restriction : s.restrictions)
    if (restriction.empty())
      return refuse("restrictions", "A restriction is empty.", "Say what it is, or take it out.");
  if (auto fine = check_measured(s.measured, s.marks.size()); !fine) return fine;
  return check_assessor(c, s.checkout, s.machine);
}

}  // namespace wm::db
