// Machines started and left: who may, who is at one already, and what it comes to.
#include <algorithm>

#include "db/check/checks.h"
#include "db/diary/diary.h"

namespace wm::db {
namespace {

/// In seconds; whoever was at a machine for longer has left it and did not say so.
constexpr std::int64_t longest = 24 * 3600;

int minutes_between(Instant since, Instant left) {
  return static_cast<int>((left.seconds - since.seconds) / 60);
}

tl::unexpected<Problem> at_another(const Case& c, const char* where, const PersonId& who,
                                   const AtMachine& at) {
  return refuse(where, at_machine_words(c, who, at), "Enter first that it was left.");
}

/// A unit has one who works it, and one person is at one machine; but a supervisor takes as many as the rules
/// allow.
Expected<void> check_nobody_there(const Case& c, const Started& f) {
  const PersonId person = c.memory.joined(f.person);
  const PersonId supervisor = f.supervisor.empty() ? PersonId() : c.memory.joined(f.supervisor);
  std::vector<TargetName> supervised;
  for (const AtMachine& each : at_machines(c.memory, c.now)) {
    if (each.machine == f.machine) return at_another(c, "machine", each.person, each);
    if (each.person == person || each.supervisor == person) return at_another(c, "person", person, each);
    if (supervisor.empty()) continue;
    if (each.person == supervisor) return at_another(c, "supervisor", supervisor, each);
    if (each.supervisor != supervisor) continue;
    supervised.push_back(each.target);
    if (takes_one_more(c.decider().in_force(c.at), supervised, f.target)) continue;
    if (supervised.size() == 1) return at_another(c, "supervisor", supervisor, each);
    return refuse("supervisor",
                  c.memory.name(supervisor) + " supervises " + std::to_string(supervised.size()) +
                      " people already, and the rules allow no more here at a time.",
                  "Choose another supervisor, or enter first that a machine was left.");
  }
  return {};
}

/// What is said of a one-on-one that is in the way, and what to do.
tl::unexpected<Problem> in_one_on_one(const Case& c, const char* where, const Booked& b) {
  return refuse(
      where,
      c.memory.name(b.person) + " is in a one-on-one with " + c.memory.name(b.assessor) +
          (b.second.empty() ? "" : " and " + c.memory.name(b.second)) + " at the machine " +
          unit_words(c, b.machine) + " from " + said(c, b.when.from) + " to " + said(c, b.when.to) + ".",
      "Wait until then. Where it ended before its time, or nobody came, say so in the Diary: cancel it, "
      "or note that they did not come.");
}

/// Who has come to a one-on-one is at its machine, and so is whoever it is with.
Expected<void> check_no_one_on_one(const Case& c, const Started& f) {
  const OneOnOnes theirs = one_on_ones_at(c.memory, f.person, f.machine, c.at, c.now);
  if (theirs.of_others) return in_one_on_one(c, "machine", *theirs.of_others);
  if (theirs.elsewhere) return in_one_on_one(c, "person", *theirs.elsewhere);
  return {};
}

/// What it will come to when it is left again must not run into what is recorded already.
Expected<void> check_not_since(const Case& c, const Started& f) {
  if (f.supervisor.empty()) return {};
  Case then = c;
  then.founding = true;  // who may supervise is asked by what may be started
  const int minutes = std::clamp(minutes_between(c.at, c.now), 1, 1440);
  return check_session(then, Supervised{f.person, f.target, minutes, f.supervisor});
}

std::string because(Hindrance hindrance) {
  switch (hindrance) {
    case Hindrance::barred:
      return "they may not use it yet";
    case Hindrance::buddy:
      return "too few others are present";
    case Hindrance::locked_out:
      return "the machine is out of service";
    case Hindrance::no_supervisor:
      return "nobody is here and free who can supervise";
    case Hindrance::staffed:
      return "nobody else on duty is in";
  }
  return "";
}

Expected<void> check_may_start(const Case& c, const Started& f) {
  const PersonId person = c.memory.joined(f.person);
  const StartNow start = start_at(c.memory, c.zone, c.decider(), person, f.machine, f.target, c.at, c.now);
  const MayStart& may = start.may;
  if (!may.may) {
    std::string why;
    for (const Hindrance each : may.because) why += (why.empty() ? "" : ", and ") + because(each);
    return refuse("person", c.memory.name(person) + " may not start it: " + why + ".",
                  "The Desk says what would lift that, and who can.");
  }
  if (f.supervisor.empty())
    return start.needs_supervisor
               ? refuse("supervisor", c.memory.name(person) + " may use it only with a supervisor.",
                        "Say who supervises.")
               : Expected<void>{};
  if (has(may.can_supervise, c.memory.joined(f.supervisor))) return {};
  return refuse("supervisor",
                c.memory.name(f.supervisor) + " is not here, not free, or can't supervise on this machine.",
                "Choose another supervisor, or enter first that they came in.");
}

}  // namespace

std::string at_machine_words(const Case& c, const PersonId& who, const AtMachine& at) {
  return c.memory.name(who) + " is at the machine " + unit_words(c, at.machine) + " since " +
         said(c, at.since) + ".";
}

Expected<void> check_started(const Case& c, const Started& f) {
  if (class_of(f.target) != c.memory.class_of_machine(f.machine))
    return refuse("machine", "The machine " + unit_words(c, f.machine) + " is not of '" + f.target + "'.",
                  "Choose a machine of that class.");
  if (!f.supervisor.empty() && c.same(f.person, f.supervisor))
    return refuse("supervisor", "Nobody supervises themself.", "Choose who is with them.");
  return check_nobody_there(c, f)
      .and_then([&] { return check_no_one_on_one(c, f); })
      .and_then([&] { return check_not_since(c, f); })
      .and_then([&] { return c.judges_ability() ? check_may_start(c, f) : Expected<void>{}; });
}

Expected<void> check_left(const Case& c, const Left& f) {
  const Started* started = c.memory.live<Started>(f.started);
  if (started == nullptr)
    return refuse("started", "There is no start with the id '" + f.started + "'.",
                  "Choose one from the list.");
  if (c.memory.about<Left>(f.started) != nullptr)
    return refuse("started", "This machine has been left already.", "Nothing is left to do.");
  const Instant since = c.memory.find(f.started)->at;
  if (c.at < since)
    return refuse("at", "It was started only at " + said(c, since) + ".", "Choose a later time.");
  if (c.at.seconds - since.seconds > longest)
    return refuse("at", "It was started more than a day before, on " + said(c, since) + ".",
                  "Say when it was left.");
  // What is forgotten in the evening would be hours of practice the next morning.
  if (const auto gone = noted_gone(c.memory, *c.memory.find(f.started), c.at); gone && gone->at < c.at)
    return refuse("at",
                  c.memory.name(gone->person) + " was noted as gone at " + said(c, gone->at) +
                      ", and was at no machine after that.",
                  "Enter when the machine was left, no later than that.");
  return {};
}

Expected<void> check_started_again(const Case& c, const StrikeOut& f) {
  const auto* left = as<Left>(c.memory.find(f.record)->fact);
  const Started* started = left == nullptr ? nullptr : c.memory.live<Started>(left->started);
  if (started == nullptr) return {};
  return check_nobody_there(c, *started).and_then([&] { return check_no_one_on_one(c, *started); });
}

std::optional<Fact> worked(const Started& f, Instant since, Instant left) {
  const int minutes = minutes_between(since, left);
  if (minutes < 1) return std::nullopt;
  if (f.supervisor.empty()) return Use{f.person, f.target};
  return Supervised{f.person, f.target, minutes, f.supervisor};
}

}  // namespace wm::db
