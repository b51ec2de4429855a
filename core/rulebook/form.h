#pragma once
// The JSON form of rulebooks, described once for reading (json::Fields) and writing (json::Writer).
#include <algorithm>

#include "core/records/form.h"
#include "core/rulebook/words.h"

namespace wm {

std::string written(const Requirement& requirement);
std::string written(const Condition& condition);
std::string written(const Gate& gate);
std::string written(const Tier& tier);
std::string written(const MachineClass& machine_class);
std::string written(const Retry& retry);

/// A number, or nothing for the word "all".
struct CountOrAll {
  std::optional<int> count;
};
inline std::string written(const CountOrAll& n) { return n.count ? std::to_string(*n.count) : "\"all\""; }

namespace forms {

inline const auto rung = json::one_of({Rung::supervised, Rung::independent});
inline const auto any_rung = json::one_of({Rung::barred, Rung::supervised, Rung::independent});
inline const auto revision_rule = json::one_of({RevisionRule::any, RevisionRule::current});
inline const auto supervision = json::one_of({Supervision::independent, Supervision::assessor});
inline const auto count = json::whole(1, 100'000);
/// No "/" in it, which parts a class from a mode.
std::optional<std::string> plain_name(json::Reading& reading, json::Value value);

std::optional<Requirement> requirement(json::Reading& reading, json::Value value);
/// An `of` or a `given`; 16 of them may stand one inside another.
std::optional<std::vector<Requirement>> requirements(json::Reading& reading, json::Value value);
std::optional<Retry> retry(json::Reading& reading, json::Value value);
std::optional<std::vector<Condition>> conditions(json::Reading& reading, json::Value value);
std::optional<std::vector<Gate>> gates(json::Reading& reading, json::Value value);
std::optional<std::vector<std::string>> modes(json::Reading& reading, json::Value value);
std::optional<std::vector<Tier>> tiers(json::Reading& reading, json::Value value);
std::optional<std::vector<MachineClass>> classes(json::Reading& reading, json::Value value);
std::optional<std::vector<FourEyes>> four_eyes(json::Reading& reading, json::Value value);

/// `valid` and `grace`, which make no sense the other way round.
template <class A, class Need>
void valid_and_grace(A& a, Need& n) {
  a.may("valid", n.valid, json::period);
  a.may("grace", n.grace, json::period);
  a.refuse(a.has("grace") && !a.has("valid"), "grace",
           "There is grace here, but nothing that it could follow.", "Add \"valid\", or take \"grace\" out.");
}
template <class A, class Need>
void revision_and_validity(A& a, Need& n, RevisionRule otherwise) {
  a.may("revision", n.revision, otherwise, revision_rule);
  a.may("changeover", n.changeover, json::period);
  valid_and_grace(a, n);
}

template <class A>
void form(A& a, NeedDocument& n) {
  a.need("document", n.document, json::text);
  valid_and_grace(a, n);
}
template <class A>
void form(A& a, NeedAge& n) {
  a.need("years", n.years, json::whole(1, 120));
}
template <class A>
void form(A& a, NeedLesson& n) {
  a.need("lesson", n.lesson, json::text);
  revision_and_validity(a, n, RevisionRule::current);
}
template <class A>
void form(A& a, NeedQuiz& n) {
  a.need("quiz", n.quiz, json::text);
  a.need("pass_percent", n.pass_percent, json::whole(1, 100));
  revision_and_validity(a, n, RevisionRule::current);
  a.may("retry", n.retry, retry);
}
template <class A>
void form(A& a, NeedCheckout& n) {
  a.need("checkout", n.checkout, json::text);
  revision_and_validity(a, n, RevisionRule::any);
  a.may("given", n.given, {}, requirements);
  a.may("renew_after_severity", n.renew_after_severity, json::whole(1, 3));
  a.may("renew_after_change", n.renew_after_change, false, json::truth);
}
template <class A>
void form(A& a, NeedPractice& n) {
  a.may("target", n.target, target);
  a.may("minutes", n.minutes, json::whole(1, 1'000'000));
  a.may("sessions", n.sessions, count);
  a.may("within", n.within, json::period);
  a.refuse(!a.has("minutes") && !a.has("sessions"), "Practice of no amount.",
           "Add \"minutes\" or \"sessions\" or both.");
}
template <class A>
void form(A& a, NeedRecentUse& n) {
  a.may("target", n.target, target);
  a.need("count", n.count, count);
  a.need("within", n.within, json::period);
}
template <class A>
void form(A& a, NeedStanding& n) {
  a.need("target", n.target, target);
  a.need("at_least", n.at_least, rung);
}
std::optional<CountOrAll> count_or_all(json::Reading& reading, json::Value value);
template <class A>
void form(A& a, NeedTierStanding& n) {
  CountOrAll some{n.count};
  a.need("tier", n.tier, tier);
  a.need("at_least", n.at_least, rung);
  a.need("count", some, count_or_all);
  n.count = some.count;
}
template <class A, class Need>
bool of(A& a, Need& n) {
  const bool read = a.need("of", n.of, requirements);
  a.refuse(read && n.of.empty(), "of", "The list is empty.", "List at least one requirement.");
  return read;
}
template <class A>
void form(A& a, NeedAllOf& n) {
  of(a, n);
}
template <class A>
void form(A& a, NeedAnyOf& n) {
  of(a, n);
}
template <class A>
void form(A& a, NeedSomeOf& n) {
  const bool counted = a.need("count", n.count, count);
  const bool listed = of(a, n) && !n.of.empty();
  a.refuse(counted && listed && n.count > static_cast<int>(n.of.size()), "count",
           "More requirements have to hold than there are.", "Write a number up to the length of \"of\".");
}

template <class A>
void form(A& a, Retry& r) {
  a.may("wait_hours", r.wait_hours, count);
  a.may("most", r.most, count);
  a.may("in_hours", r.in_hours, count);
  const bool most = a.has("most"), in_hours = a.has("in_hours");
  a.refuse(most != in_hours, "One of \"most\" and \"in_hours\" stands here without the other.",
           "Write both, or neither.");
  a.refuse(!a.has("wait_hours") && !most && !in_hours, "A retry that asks for nothing.",
           "Add \"wait_hours\", or \"most\" and \"in_hours\".");
}

template <class A>
void form(A&, Staffed&) {}
template <class A>
void form(A& a, Buddy& b) {
  a.need("count", b.count, count);
  a.may("at_least", b.at_least, Rung::supervised, any_rung);
}

template <class A>
void form(A& a, Gate& g) {
  a.define("id", g.id, json::Names::gate, json::text);
  a.need("for", g.guards, rung);
  a.need("need", g.need, requirement);
  a.may("existing_until", g.existing_until, json::day);
}
template <class A>
void form(A& a, Tier& t) {
  a.define("tier", t.tier, json::Names::tier, tier_number);
  a.may("gates", t.gates, {}, gates);
  a.may("conditions", t.conditions, {}, conditions);
  a.may("supervision", t.supervision, Supervision::independent, supervision);
  a.may("other_checks_out", t.other_checks_out, false, json::truth);
  a.may("two_assessors", t.two_assessors, false, json::truth);
  a.may("supervises_at_once", t.supervises_at_once, 1, json::whole(1, 20));
}

using ModeGates = std::map<std::string, std::vector<Gate>>;
/// A class's `mode_gates`: only its own modes have any. Where `modes` is null (they could not be read) any
/// may.
std::optional<ModeGates> mode_gates(json::Reading& reading, json::Value value,
                                    const std::vector<std::string>* modes);

template <class A>
void form(A& a, MachineClass& c) {
  a.define("class", c.name, json::Names::machine_class, plain_name);
  a.need("tier", c.tier, tier);
  const bool modes_read = a.may("modes", c.modes, {}, modes) || !a.has("modes");
  if (!modes_read) a.unreadable(json::Names::on);
  a.may("gates", c.gates, {}, gates);
  a.may("mode_gates", c.mode_gates, {}, [&](json::Reading& reading, json::Value value) {
    return mode_gates(reading, value, modes_read ? &c.modes : nullptr);
  });
  a.may("conditions", c.conditions, {}, conditions);
  a.may("supervision", c.supervision, Supervision::independent, supervision);
}

/// What a rulebook says, without when it says so.
template <class A>
void rules(A& a, Rulebook& r) {
  if (!a.need("tiers", r.tiers, tiers)) a.unreadable(json::Names::tier);
  if (!a.need("classes", r.classes, classes)) a.unreadable(json::Names::machine_class);
}
template <class A>
void form(A& a, Rulebook& r) {
  a.need("version", r.version, json::whole(1, 1'000'000));
  a.need("effective_from", r.effective_from, json::instant);
  a.need("recorded", r.recorded, json::instant);
  rules(a, r);
  a.may("four_eyes", r.four_eyes, {}, four_eyes);
  a.may("close_may_sign", r.close_may_sign, true, json::truth);
  a.may("keep_details", r.keep_details, json::period);
  a.may("learners_to_one", r.learners_to_one, json::whole(1, 100));
}

}  // namespace forms
}  // namespace wm
