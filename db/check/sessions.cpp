// Supervised sessions and check-outs: who can have been where, and who may judge whom.
#include <algorithm>

#include "core/rulebook/checkouts.h"
#include "db/check/checks.h"
#include "db/diary/diary.h"
#include "db/open_sheets.h"

namespace wm::db {
namespace {

Instant end_of(Instant at, const Supervised& session) { return at + 60ll * session.minutes; }

tl::unexpected<Problem> in_another(const Case& c, const PersonId& person, const Entry& other) {
  return refuse("at",
                c.memory.name(person) + " was in another supervised session from " + said(c, other.at) +
                    " to " + said(c, end_of(other.at, *as<Supervised>(other.fact))) + ".",
                "Check the times, or strike the other session out.");
}

/// Sessions that somebody was in at the same time, on whichever side, each once.
std::vector<const Entry*> meanwhile(const Case& c, const PersonId& person, const Supervised& session) {
  std::vector<const Entry*> found;
  for (const PersonId& alias : c.memory.aliases(person))
    for (const std::size_t i : c.memory.sessions_of(alias)) {
      const Entry& other = c.memory.entries()[i];
      const bool apart =
          other.at >= end_of(c.at, session) || end_of(other.at, *as<Supervised>(other.fact)) <= c.at;
      if (!other.voided && !apart && std::ranges::find(found, &other) == found.end()) found.push_back(&other);
    }
  return found;
}

/// Who works in a session is in no other.
Expected<void> check_free(const Case& c, const PersonId& person, const Supervised& session) {
  const auto others = meanwhile(c, person, session);
  return others.empty() ? Expected<void>{} : in_another(c, person, *others.front());
}

/// A supervisor is in as many at a time as the rules allow, and works in none of them.
Expected<void> check_takes_on(const Case& c, const Supervised& session) {
  const auto others = meanwhile(c, session.supervisor, session);
  for (const Entry* other : others)
    if (c.same(as<Supervised>(other->fact)->person, session.supervisor))
      return in_another(c, session.supervisor, *other);
  // It is fullest when one of them, or this one, begins.
  std::vector<Instant> begins{c.at};
  for (const Entry* other : others) begins.push_back(std::max(other->at, c.at));
  for (const Instant t : begins) {
    std::vector<TargetName> then;
    const Entry* last = nullptr;
    for (const Entry* other : others) {
      const auto& f = *as<Supervised>(other->fact);
      if (other->at <= t && t < end_of(other->at, f)) then.push_back(f.target), last = other;
    }
    if (last != nullptr && !takes_one_more(c.decider().in_force(c.at), then, session.target))
      return in_another(c, session.supervisor, *last);
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
  if (auto fine = check_takes_on(c, f); !fine) return fine;
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
    if (these && !entry.voided && entry.at <= c.at)
      return refuse(
          "assessor",
          c.memory.name(f.assessor) + " and " + c.memory.name(f.person) + " are close, by their own word.",
          "Let another assessor watch and sign.");
  }
  return {};
}

namespace {

/// Where this check-out is asked for: on the machine's class, or without one wherever it is.
std::vector<TargetName> asked_on(const Case& c, const Checkout& f, const MachineId& machine) {
  const std::string machine_class = machine.empty() ? "" : c.memory.class_of_machine(machine);
  const Rulebook* rulebook = c.decider().in_force(c.at);
  std::vector<TargetName> asked = rulebook == nullptr ? std::vector<TargetName>() : targets_of(*rulebook);
  std::erase_if(asked, [&](const TargetName& target) {
    return (!machine_class.empty() && class_of(target) != machine_class) ||
           !asks_for(*rulebook, target, f.checkout);
  });
  return asked;
}

/// Of these targets, those on which the assessor may sign it; refuses where there is none. A paper of
/// somebody who could not assess is kept: what it comes to, the decisions say.
Expected<std::vector<TargetName>> may_sign_on(const Case& c, const Checkout& f,
                                              const std::vector<TargetName>& asked) {
  if (auto fine = check_not_close(c, f); !fine) return tl::make_unexpected(fine.error());
  const Rulebook* rulebook = c.decider().in_force(c.at);
  bool taught_them = false;
  std::vector<TargetName> may;
  for (const TargetName& target : asked) {
    if (!c.from_paper && !c.decider().able_to_assess(c.memory.joined(f.assessor), target, c.at - 1)) continue;
    if (!another_checks_out(rulebook, target) || !taught(c.memory, f.assessor, f.person, target, c.at, c.now))
      may.push_back(target);
    else
      taught_them = true;
  }
  if (!may.empty()) return may;
  if (taught_them)
    return refuse(
        "assessor",
        c.memory.name(f.assessor) + " taught them on this machine, and in its tier another checks out.",
        "Let another assessor watch and sign.");
  if (c.from_paper) return asked;
  if (asked.empty())
    return refuse("checkout", "No rule in force asks for the check-out '" + f.checkout + "' here.",
                  "Choose a check-out of the rulebook.");
  return refuse(
      "assessor",
      c.memory.name(f.assessor) + " could not assess '" + f.checkout + "' at " + said(c, c.at) + ".",
      "Let somebody assess it who can; a manager may enter a paper from the past.");
}

bool asks_for_two(const Case& c, const std::vector<TargetName>& asked) {
  const Rulebook* rulebook = c.decider().in_force(c.at);
  return std::ranges::any_of(asked, [&](const TargetName& each) { return two_check_out(rulebook, each); });
}

/// Both must be able to on one and the same target.
Expected<void> check_both_able(const Case& c, const SignCheckout& s, const std::vector<TargetName>& asked) {
  const auto first = may_sign_on(c, s.checkout, asked);
  if (!first) return tl::make_unexpected(first.error());
  Checkout by_second = s.checkout;
  by_second.assessor = s.second->assessor;
  const auto second = may_sign_on(c, by_second, *first);
  if (second) return {};
  Problem problem = second.error();
  problem.where = "second";
  return tl::make_unexpected(std::move(problem));
}

Expected<void> check_second_assessor(const Case& c, const SignCheckout& s) {
  const std::vector<TargetName> asked = asked_on(c, s.checkout, s.machine);
  const bool two = !c.founding && asks_for_two(c, asked);
  if (two && !s.second)
    return refuse(
        "second",
        "Two assessors witness the check-out '" + s.checkout.checkout + "' here, and one has signed.",
        "Let the second, who watched it too, sign with it.");
  if (!s.second) return {};
  if (auto fine = check_known_person(c, s.second->assessor, "second"); !fine) return fine;
  if (c.same(s.second->assessor, s.checkout.assessor) || c.same(s.second->assessor, s.checkout.person))
    return refuse("second", "The second assessor is somebody else than the member and the first.",
                  "Let another assessor, who watched it too, sign with it.");
  if (!two && !c.founding)
    return refuse("second", "One assessor witnesses the check-out '" + s.checkout.checkout + "' here.",
                  "Leave the second out; whoever watched it too can mark it apart.");
  return c.founding ? Expected<void>{} : check_both_able(c, s, asked);
}

}  // namespace

Expected<void> check_assessor(const Case& c, const Checkout& f, const MachineId& machine) {
  if (c.founding) return {};
  return may_sign_on(c, f, asked_on(c, f, machine)).map([](const std::vector<TargetName>&) {});
}

Expected<void> check_one_is_enough(const Case& c, const Checkout& f) {
  if (c.founding || !asks_for_two(c, asked_on(c, f, {}))) return {};
  return refuse("second", "Two assessors witness the check-out '" + f.checkout + "', and this names one.",
                "Enter the run sheet by the number at its foot, with both who signed it.");
}

Expected<void> check_signing(const Case& c, const SignCheckout& s, const std::string& paper) {
  if (s.booking) {
    const Booking* booking = c.memory.live<Booking>(*s.booking);
    if (booking == nullptr || !c.same(booking->person, s.checkout.person))
      return refuse("booking", "This booking is not one of theirs.", "Choose their booking, or none.");
  }
  if (auto fine = check_fact(c, AnyFact(Fact(s.checkout))); !fine) return fine;
  if (!s.machine.empty() && c.memory.class_of_machine(s.machine).empty())
    return refuse("machine", "There is no machine '" + s.machine + "'.",
                  "Choose one of the shop's machines.");
  if (auto fine = check_restrictions(s.restrictions); !fine) return fine;
  if (auto fine = check_measured(s.measured, s.marks.size()); !fine) return fine;
  if (auto fine = check_sheet_in_hand(c, s); !fine) return fine;
  if (auto fine = check_on_sheet(c, s); !fine) return fine;
  if (s.countersign && (paper.empty() || s.countersign->hand != Hand::paper))
    if (auto fine = check_countersign(c, s.checkout.person, *s.countersign, s.sheet, s.sheet_revision); !fine)
      return fine;
  return check_assessor(c, s.checkout, s.machine).and_then([&] { return check_second_assessor(c, s); });
}

namespace {

/// The sheet that the check-out was signed on must be the one that is marked again.
Expected<void> check_same_sheet(const Case& c, const ScoredApart& f) {
  const Entry* entry = c.memory.about<SheetMarks>(f.checkout);
  const SheetMarks* first = entry == nullptr ? nullptr : as<SheetMarks>(entry->fact);
  if (first == nullptr || first->marks.empty())
    return refuse("checkout", "This check-out was signed without a run sheet.",
                  "Nothing can be compared; score another one apart.");
  if (first->sheet != f.sheet || first->sheet_revision != f.sheet_revision ||
      first->marks.size() != f.marks.size())
    return refuse("sheet",
                  "The check-out was signed on revision " + std::to_string(first->sheet_revision) +
                      " of the sheet '" + first->sheet + "', which is another.",
                  "Mark that revision, line by line.");
  if (std::ranges::all_of(f.marks, [](Mark mark) { return mark == Mark::none; }))
    return refuse("marks", "No line is marked.", "Mark the lines that you watched.");
  return {};
}

/// What can be known here of whether the second judged what they saw, and not what the first had marked.
Expected<void> check_apart(const Case& c, const ScoredApart& f) {
  if (c.founding) return {};
  const Instant performed = c.memory.find(f.checkout)->at;
  if (c.zone.day(c.from_paper ? c.at : c.now) != c.zone.day(performed))
    return refuse("checkout",
                  "It was performed on " + said(c, performed) + ", and is marked apart that day only.",
                  "Mark another one apart, on its day.");
  if (c.from_paper)
    return f.form.empty() ? refuse("form", "The number of the paper is missing.",
                                   "Type the number at the foot of the paper.")
                          : check_form(c, f.form, f.sheet, f.sheet_revision);
  if (!f.form.empty())
    return refuse("form", "What is signed here stands on no paper.", "Leave the paper's number out.");
  if (saw_marks(c.memory, f.checkout, f.assessor))
    return refuse("assessor",
                  "The first marks were made or typed in where " + c.memory.name(f.assessor) +
                      " sat, who has seen them so.",
                  "Let somebody else mark it apart; next time the first assessor sits there.");
  return {};
}

}  // namespace

Expected<void> check_scoring(const Case& c, const ScoredApart& f) {
  const Checkout* checkout = c.memory.live<Checkout>(f.checkout);
  if (checkout == nullptr)
    return refuse("checkout", "There is no check-out with the id '" + f.checkout + "'.",
                  "Choose one that was signed.");
  if (auto fine = check_known_person(c, f.assessor, "assessor"); !fine) return fine;
  if (c.same(f.assessor, checkout->assessor) || c.same(f.assessor, checkout->person))
    return refuse("assessor", "A performance is marked apart by somebody who was neither side of it.",
                  "Let another assessor, who watched it, mark it.");
  for (const Entry* entry : c.memory.all_about<Witnessed>(f.checkout))
    if (c.same(as<Witnessed>(entry->fact)->assessor, f.assessor))
      return refuse("assessor",
                    c.memory.name(f.assessor) + " has signed it as the second, and its marks with it.",
                    "Let another assessor, who watched it, mark it.");
  for (const std::size_t i : c.memory.of_kind("scored_apart")) {
    const Entry& entry = c.memory.entries()[i];
    const ScoredApart& other = *as<ScoredApart>(entry.fact);
    if (!entry.voided && other.checkout == f.checkout && c.same(other.assessor, f.assessor))
      return refuse("assessor", c.memory.name(f.assessor) + " has marked this performance already.",
                    "Nothing is left to do; a wrong one can be struck out.");
  }
  if (auto fine = check_same_sheet(c, f); !fine) return fine;
  if (auto fine = check_apart(c, f); !fine) return fine;
  // Whoever could not have signed it then could not judge it either.
  Case then = c;
  then.at = c.memory.find(f.checkout)->at;
  Checkout by_second = *checkout;
  by_second.assessor = f.assessor;
  return check_assessor(then, by_second,
                        as<SheetMarks>(c.memory.about<SheetMarks>(f.checkout)->fact)->machine);
}

}  // namespace wm::db
