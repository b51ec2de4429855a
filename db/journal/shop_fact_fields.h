#pragma once
// The fields of each of the shop's own facts by name: the one list that writing and reading share. What is
// `personal` is kept beside the record, which holds a salted hash of it.
#include "db/facts.h"

namespace wm::db {

// clang-format off
template <class A> void fields(A& a, RoleGiven& f) { a("person", f.person); a("role", f.role); }
template <class A> void fields(A& a, Join& f) { a("keep", f.keep); a("other", f.other); }
template <class A> void fields(A& a, Booking& f) {
  a("person", f.person); a("assessor", f.assessor); a("machine", f.machine); a("target", f.target);
  a("from", f.from); a("to", f.to); a("purpose", f.purpose);
  a("held_through", f.held_through); a.may("instead_of", f.instead_of);
  a.may("second_assessor", f.second);  // "second" is who vouched for a command
}
template <class A> void fields(A& a, Confirmed& f) { a("booking", f.booking); }
template <class A> void fields(A& a, DayPart& f) { a("from_minute", f.from_minute); a("to_minute", f.to_minute); }
template <class A> void fields(A& a, WeekHours& f) {
  a("doing", f.doing); a("weekday", f.weekday); a("from_minute", f.from_minute); a("to_minute", f.to_minute);
  a("adults", f.adults);
}
template <class A> void fields(A& a, OtherHours& f) {
  a.may("person", f.person); a("doing", f.doing); a("first", f.first); a("last", f.last);
  a.may("parts", f.parts); a("adults", f.adults);
  a.personal("why", f.why);
}
template <class A> void fields(A& a, Break& f) {
  a("person", f.person); a("weekday", f.weekday); a("from_minute", f.from_minute); a("to_minute", f.to_minute);
}
template <class A> void fields(A& a, TakesOn& f) {
  a("person", f.person); a("longest_day", f.longest_day); a("stretch", f.stretch); a("rest", f.rest);
}
template <class A> void fields(A& a, Lasts& f) { a("class", f.machine_class); a("minutes", f.minutes); }
template <class A> void fields(A& a, DiaryRules& f) {
  a("longest_wait", f.longest_wait); a("hold_hours", f.hold_hours);
  a("not_come", f.not_come); a("not_come_days", f.not_come_days); a("rest_days", f.rest_days);
}
template <class A> void fields(A& a, Upkeep& f) {
  a("machine", f.machine); a("from", f.from); a("to", f.to);
  a.personal("why", f.why);
}
template <class A> void fields(A& a, BusyPart& f) { a("from", f.from); a("to", f.to); }
template <class A> void fields(A& a, Busy& f) {
  a("person", f.person); a("from", f.from); a("to", f.to);
  a("parts", f.parts);
}
template <class A> void fields(A& a, Cancel& f) { a("booking", f.booking); a.personal("reason", f.reason); }
template <class A> void fields(A& a, Attendance& f) { a("booking", f.booking); a("turnout", f.turnout); }
template <class A> void fields(A& a, Presence& f) { a("person", f.person); a("in", f.in); a("staff", f.staff); }
template <class A> void fields(A& a, Waiting& f) { a("person", f.person); a("target", f.target); }
template <class A> void fields(A& a, WaitingEnd& f) { a("waiting", f.waiting); }
template <class A> void fields(A& a, Restriction& f) { a("checkout", f.checkout); a("text", f.text); }
template <class A> void fields(A& a, LineMeasured& f) {
  a("line", f.line); a("typed", f.typed); a("read", f.read); a("marks", f.marks);
}
template <class A> void fields(A& a, SheetMarks& f) {
  a("checkout", f.checkout); a("sheet", f.sheet); a("sheet_revision", f.sheet_revision);
  a("marks", f.marks); a("again", f.again); a("machine", f.machine);
  a.may("measured", f.measured); a.may("opened", f.opened); a.may("form", f.form);
}
template <class A> void fields(A& a, SheetOpened& f) {
  a("person", f.person); a("machine", f.machine); a("target", f.target);
  a("sheet", f.sheet); a("sheet_revision", f.sheet_revision);
}
template <class A> void fields(A& a, LineMarked& f) {
  a("opened", f.opened); a("line", f.line); a("mark", f.mark); a("again", f.again); a("measured", f.measured);
}
template <class A> void fields(A& a, SheetPutBy& f) {
  a("opened", f.opened); a.may("restrictions", f.restrictions);
  a.personal("said", f.note);  // "note" is that of the command
}
template <class A> void fields(A& a, Witnessed& f) { a("checkout", f.checkout); a("assessor", f.assessor); }
template <class A> void fields(A& a, Countersigned& f) {
  a("checkout", f.checkout); a("person", f.person); a("hand", f.hand); a.may("form", f.form);
}
template <class A> void fields(A& a, ScoredApart& f) {
  a("checkout", f.checkout); a("assessor", f.assessor); a("sheet", f.sheet); a("sheet_revision", f.sheet_revision);
  a("marks", f.marks); a.may("form", f.form);
}
template <class A> void fields(A& a, Tag& f) {
  a("lockout", f.lockout); a("tag", f.tag); a("padlock", f.padlock);
  a.personal("reason", f.reason);
  a("key_holder", f.key_holder); a.may("put_on_by", f.put_on_by);
}
template <class A> void fields(A& a, Happened& f) {
  a("target", f.target); a.may("machine", f.machine); a("severity", f.severity);
  a.may("unnamed", f.unnamed); a.may("incidents", f.incidents);
  a.personal("what", f.what);
}
template <class A> void fields(A& a, Started& f) {
  a("person", f.person); a("machine", f.machine); a("target", f.target); a.may("supervisor", f.supervisor);
}
template <class A> void fields(A& a, Left& f) { a("started", f.started); }
template <class A> void fields(A& a, Altered& f) {
  a.may("change", f.change); a.may("machine", f.machine); a("alteration", f.kind); a.may("target", f.target);
  a.personal("what", f.what);
}
template <class A> void fields(A& a, GroupTaught& f) {
  a("lesson", f.lesson); a("instructors", f.instructors); a("lessons", f.lessons);
}
template <class A> void fields(A& a, Visit& f) {
  a.personal("name", f.name);
  a("paper", f.paper); a("host", f.host);
}
template <class A> void fields(A& a, VisitEnd& f) { a("visit", f.visit); }
template <class A> void fields(A& a, StationTold& f) { a("login", f.login); a("station", f.station); }
template <class A> void fields(A& a, EmergencyCall& f) { a.may("number", f.number); a.may("where", f.where); }
template <class A> void fields(A& a, ContactShown& f) { a("person", f.person); }
template <class A> void fields(A& a, Reached& f) { a("lockout", f.lockout); a.personal("how", f.how); }
template <class A> void fields(A& a, MachineAdded& f) {
  a("machine", f.machine); a("class", f.machine_class); a("label", f.label);
}
template <class A> void fields(A& a, Hours& f) {
  a("person", f.person); a("weekday", f.weekday); a("from_minute", f.from_minute); a("to_minute", f.to_minute);
}
template <class A> void fields(A& a, StrikeOut& f) { a("record", f.record); a.personal("reason", f.reason); }
template <class A> void fields(A& a, RulebookIssued& f) { a("version", f.version); }
template <class A> void fields(A& a, Details& f) { a("person", f.person); }
template <class A> void fields(A& a, PinChosen& f) { a("person", f.person); a.may("key", f.key); }
template <class A> void fields(A& a, Signature& f) {
  a("checkout", f.checkout); a("person", f.person); a("key", f.key); a("signature", f.signature);
}
template <class A> void fields(A& a, Close& f) { a("person", f.person); a("other", f.other); }
template <class A> void fields(A& a, Printed& f) { a("title", f.title); a("pages", f.pages); a("digest", f.digest); a.may("form", f.form); a.may("sheet", f.sheet); a("sheet_revision", f.sheet_revision); }
template <class A> void fields(A& a, ClockConfirmed& f) { a("shown", f.shown); a("jumped", f.jumped); }
template <class A> void fields(A& a, Erased& f) { a("person", f.person); a("born_by", f.born_by); }
template <class A> void fields(A& a, Blanked& f) { a("record", f.record); }
template <class A> void fields(A& a, Enclosure& f) { a("name", f.name); a("base64", f.base64); }
template <class A> void fields(A& a, Issued& f) {
  a("work", f.work); a("name", f.name); a("revision", f.revision); a.may("changed", f.changed); a("text", f.text);
  a.may("enclosures", f.enclosures);
}
template <class A> void fields(A& a, AttemptBegun& f) {
  a("person", f.person); a("bank", f.bank); a("revision", f.revision); a("seed", f.seed); a("language", f.language);
  a.may("helps", f.helps);
}
template <class A> void fields(A& a, AttemptSat& f) {
  a("person", f.person); a("begun", f.begun); a("quiz", f.quiz); a.personal("attempt", f.attempt);
}
// clang-format on

}  // namespace wm::db
