#pragma once
// The JSON form of each kind of record, described once for reading (json::Fields) and writing (json::Writer).
#include "core/json/writer.h"
#include "core/records/record.h"

namespace wm {

std::string written(const Scope& scope);
/// A fact's kind alone; its fields stand beside it.
inline std::string written(const Fact& fact) { return json::in_quotes(kind_word(fact)); }

namespace forms {

inline const auto person = json::name_of(json::Names::person);
inline const auto machine = json::name_of(json::Names::machine);
inline const auto record = json::name_of(json::Names::record);
/// A target or a class.
inline const auto target = json::name_of(json::Names::on);
inline const auto revision = json::whole(0, 1'000'000);
inline const auto tier_number = json::whole(1, 99);

/// A tier that is defined elsewhere.
std::optional<int> tier(json::Reading& reading, json::Value value);
std::optional<Scope> scope(json::Reading& reading, json::Value value);
/// An id that no step of a route can have.
std::optional<std::string> record_id(json::Reading& reading, json::Value value);
/// A fact of the kind named, its fields still to be filled.
std::optional<Fact> fact_kind(json::Reading& reading, json::Value value);

template <class A>
void form(A& a, Birth& f) {
  a.need("person", f.person, person);
  a.need("born", f.born, json::day);
}
template <class A>
void form(A& a, Document& f) {
  a.need("person", f.person, person);
  a.need("document", f.document, json::text);
  a.may("until", f.until, json::day);
}
template <class A>
void form(A& a, Lesson& f) {
  a.need("person", f.person, person);
  a.need("lesson", f.lesson, json::text);
  a.need("revision", f.revision, revision);
}
template <class A>
void form(A& a, Quiz& f) {
  constexpr int most_questions = 10'000;
  a.need("person", f.person, person);
  a.need("quiz", f.quiz, json::text);
  a.need("revision", f.revision, revision);
  const bool correct = a.need("correct", f.correct, json::whole(0, most_questions));
  const bool total = a.need("total", f.total, json::whole(1, most_questions));
  const bool missed = a.need("critical_missed", f.critical_missed, json::whole(0, most_questions));
  if (!correct || !total) return;
  a.refuse(f.correct > f.total, "correct", "More answers are right than there are questions.",
           "Write a number from 0 to \"total\".");
  a.refuse(missed && f.correct <= f.total && f.critical_missed > f.total - f.correct, "critical_missed",
           "More critical answers are wrong than answers at all.",
           "Write a number from 0 to \"total\" less \"correct\".");
}
template <class A>
void form(A& a, Checkout& f) {
  a.need("person", f.person, person);
  a.need("checkout", f.checkout, json::text);
  a.need("revision", f.revision, revision);
  a.need("outcome", f.outcome, json::one_of({Outcome::passed, Outcome::failed, Outcome::stopped}));
  a.need("assessor", f.assessor, person);
}
template <class A>
void form(A& a, Supervised& f) {
  a.need("person", f.person, person);
  a.need("target", f.target, target);
  a.need("minutes", f.minutes, json::whole(1, 1440));
  a.need("supervisor", f.supervisor, person);
}
template <class A>
void form(A& a, Use& f) {
  a.need("person", f.person, person);
  a.need("target", f.target, target);
}
template <class A>
void form(A& a, Incident& f) {
  a.need("person", f.person, person);
  a.need("target", f.target, target);
  a.need("severity", f.severity, json::whole(1, 4));
  a.need("part", f.part, json::one_of({Part::operating, Part::supervising, Part::hurt, Part::saw}));
}
template <class A>
void form(A& a, Suspend& f) {
  a.need("person", f.person, person);
  a.need("scope", f.scope, scope);
  a.may("until", f.until, json::day);
}
template <class A>
void form(A& a, Reinstate& f) {
  a.need("suspension", f.suspension, record);
}
template <class A>
void form(A& a, Appoint& f) {
  a.need("person", f.person, person);
  a.need("scope", f.scope, scope);
  a.may("founding", f.founding, false, json::truth);
  a.may("until", f.until, json::day);
  a.refuse(f.founding && !a.has("until"), "A founding appointment has no end.",
           "Add \"until\", the last day of it: until then others can be assessed and take over.");
}
template <class A>
void form(A& a, Dismiss& f) {
  a.need("appointment", f.appointment, record);
}
template <class A>
void form(A& a, Publish& f) {
  a.need("item", f.item, json::text);
  a.need("revision", f.revision, revision);
}
template <class A>
void form(A& a, Lockout& f) {
  a.need("machine", f.machine, machine);
}
template <class A>
void form(A& a, Release& f) {
  a.need("lockout", f.lockout, record);
}
template <class A>
void form(A& a, Change& f) {
  a.need("target", f.target, target);
}

template <class A>
void form(A& a, Record& r) {
  a.define("id", r.id, json::Names::record, record_id);
  const bool known_kind = a.need("kind", r.fact, fact_kind);
  a.need("at", r.at, json::instant);
  const bool recorded = a.need("recorded", r.recorded, json::instant);
  const bool voided = a.may("voided", r.voided, json::instant);
  a.refuse(recorded && voided && r.voided < r.recorded, "voided", "It is struck out before it was recorded.",
           "Write an instant that is not before \"recorded\".");
  if (!known_kind) return a.give_up();
  std::visit([&](auto& fact) { form(a, fact); }, r.fact);
}

}  // namespace forms

/// Reads one record; it may be used where that brought up no mistake.
Record read_record(json::Reading& reading, json::Value value);

}  // namespace wm
