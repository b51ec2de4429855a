#pragma once
// What the store keeps beside the records that decisions rest on: bookings, presence, roles, papers. All of
// it append-only too.
#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/records/record.h"
#include "core/sheet/line_measured.h"
#include "core/sheet/mark.h"

namespace wm::db {

/// Who somebody is to the program when they sit down. Ordered: each may do what the ones before may, except
/// that `quiz_station` stands apart.
enum class Role { quiz_station, desk, instructor, manager };

/// What a computer of the shop is for, and so what may be entered there, whoever sits at it. `whole`: all of
/// it, as where there is only one.
enum class Station { whole, front, machine, quiz, office };

/// A person's details. They stand in no record, only beside the one that they were entered with.
struct Person {
  PersonId id;         // chosen by the store, never shown as a name
  std::string number;  // the member's number, as on the card
  std::string given, family;
  std::string nickname;  // what they are called, if not `given`
  std::string card;      // what the card reader types, without its prefix
  std::string email, phone, emergency_contact;
  friend bool operator==(const Person&, const Person&) = default;
};
/// What is left of a person's details when they have been erased.
inline Person nameless(const PersonId& id) {
  Person person;
  person.id = id;
  return person;
}

#define WM_EQUAL(Type) friend bool operator==(const Type&, const Type&) = default
/// From `at` on this person has this role at the desk; the latest counts. Nothing: no role any more.
struct RoleGiven {
  PersonId person;
  std::optional<Role> role;
  WM_EQUAL(RoleGiven);
};
/// Two entries of one person: records of `other` count as `keep`'s. Ended by striking this out.
struct Join {
  PersonId keep, other;
  WM_EQUAL(Join);
};
enum class Purpose { teach, practise, check_out };
/// A one-on-one: member, assessor and unit, from `from` to `to`; a check-out with a second assessor where the
/// tier asks for two.
struct Booking {
  PersonId person;
  PersonId assessor;
  MachineId machine;
  TargetName target;
  Instant from, to;
  Purpose purpose = Purpose::check_out;
  std::optional<Instant> held_through = {};  // only held: given up then, where nobody has confirmed it
  RecordId instead_of = {};                  // the booking that this one moves, which no longer stands
  PersonId second = {};                      // the other assessor; empty: there is one
  WM_EQUAL(Booking);
};
/// Whether a time that was held is given up at that moment, since nobody has confirmed it by then.
inline bool given_up(const Booking& booking, bool confirmed, Instant at) {
  return booking.held_through && !confirmed && *booking.held_through <= at;
}
/// Member, assessor, and the second where there are two.
std::vector<PersonId> everybody_in(const Booking& booking);
/// Whether somebody was expected at a time that is given up only because it has begun: it was held until
/// then. Whoever comes while it lasts still has it, where nobody else has taken it since.
inline bool may_still_come(const Booking& booking, bool confirmed, Instant at) {
  return given_up(booking, confirmed, at) && *booking.held_through == booking.from && at < booking.to;
}
/// A booking that was held is for certain.
struct Confirmed {
  RecordId booking;
  WM_EQUAL(Confirmed);
};
struct Cancel {
  RecordId booking;
  std::string reason;
  WM_EQUAL(Cancel);
};
enum class Turnout { arrived, late, not_come };
struct Attendance {
  RecordId booking;
  Turnout turnout = Turnout::arrived;
  WM_EQUAL(Attendance);
};
/// Somebody came in or left; `staff` when on duty.
struct Presence {
  PersonId person;
  bool in = true;
  bool staff = false;
  WM_EQUAL(Presence);
};
struct Waiting {
  PersonId person;
  TargetName target;
  WM_EQUAL(Waiting);
};
struct WaitingEnd {
  RecordId waiting;
  WM_EQUAL(WaitingEnd);
};
/// What a check-out left open: "no dado", "with the adapted jig". Stands beside the ladder until a new
/// check-out.
struct Restriction {
  RecordId checkout;
  std::string text;
  WM_EQUAL(Restriction);
};
/// The marks of a check-out's run sheet, in the sheet's order, and what was measured on it, in order of its
/// lines.
using wm::LineMeasured;
using wm::Mark;
struct SheetMarks {
  RecordId checkout;
  std::string sheet;
  int sheet_revision = 0;
  std::vector<Mark> marks;
  std::vector<Mark> again;
  MachineId machine;
  std::vector<LineMeasured> measured = {};
  RecordId opened = {};   // the sheet as it was marked at the machine, line by line; empty: it was not
  std::string form = {};  // the number on the blank sheet, where it was marked on paper
  WM_EQUAL(SheetMarks);
};
/// Somebody's run sheet taken in hand at a machine. Nothing counts of it before a check-out is signed; it
/// stays open, for another day and another station too, until then or until it is struck out.
struct SheetOpened {
  PersonId person;
  MachineId machine;
  TargetName target;
  std::string sheet;
  int sheet_revision = 0;
  WM_EQUAL(SheetOpened);
};
/// How a line of it is marked from now on: line 1 is the sheet's first.
struct LineMarked {
  RecordId opened;
  int line = 1;
  Mark mark = Mark::none, again = Mark::none;
  std::optional<LineMeasured> measured;
  WM_EQUAL(LineMarked);
};
/// Stopped, to go on another day: what whoever goes on has to know, and what is to be left open.
struct SheetPutBy {
  RecordId opened;
  std::string note;
  std::vector<std::string> restrictions;
  WM_EQUAL(SheetPutBy);
};
/// By what hand a member says that they were shown the cautions: their own PIN, their card held to the
/// reader, or their name on the paper.
enum class Hand { pin, card, paper };
/// A member's word that they were shown the machine's cautions: at their check-out by SignCheckout, later by
/// CountersignCheckout, or from paper. `form`: the number of the printed sheet that they signed; empty where
/// they signed none, or where it is the paper that the check-out itself came in from.
struct Countersigned {
  RecordId checkout;
  PersonId person;
  Hand hand = Hand::pin;
  std::string form = {};
  WM_EQUAL(Countersigned);
};
/// A second assessor's word under a check-out, where the tier asks for two: they watched it too, and say of
/// it what the first does. By SignCheckout, with their own signature; or from paper, by EnterPaperSheet.
struct Witnessed {
  RecordId checkout;
  PersonId assessor;
  WM_EQUAL(Witnessed);
};
/// What a second assessor saw of a performance that was checked out, marked apart from the first, on the same
/// sheet and its revision: line by line at the first showing. A record about the check-out that counts for
/// nothing in any standing; it tells how far assessors agree. By ScoreApart, or from paper.
struct ScoredApart {
  RecordId checkout;
  PersonId assessor;
  std::string sheet;
  int sheet_revision = 0;
  std::vector<Mark> marks;
  std::string form = {};  // the number on the blank sheet, where it was marked on paper
  WM_EQUAL(ScoredApart);
};
/// Details of a lockout: what the tag says, the padlock, who holds the key, why; and whose lock it is, where
/// somebody else entered it.
struct Tag {
  RecordId lockout;
  std::string tag, padlock, reason;
  PersonId key_holder;
  PersonId put_on_by = {};  // empty: who entered the lockout
  WM_EQUAL(Tag);
};
/// An attempt to reach the one who put a lock on, before somebody else takes it off.
struct Reached {
  RecordId lockout;
  std::string how;
  WM_EQUAL(Reached);
};
/// A unit of a class, as it stands from `at` on.
struct MachineAdded {
  MachineId machine;
  std::string machine_class, label;
  WM_EQUAL(MachineAdded);
};
/// Days on which an assessor is usually in: minutes of the shop's day, 0 = Monday.
struct Hours {
  PersonId person;
  int weekday = 0, from_minute = 0, to_minute = 0;
  WM_EQUAL(Hours);
};
/// Minutes of a day by the shop's clock, 0 to 1440, from < to.
struct DayPart {
  int from_minute = 0, to_minute = 0;
  WM_EQUAL(DayPart);
};
enum class Doing { open, staffed };
/// When the shop is open, or somebody is on duty, on a weekday (0 = Monday). `adults`: of those on duty.
struct WeekHours {
  Doing doing = Doing::open;
  int weekday = 0, from_minute = 0, to_minute = 0;
  int adults = 1;
  WM_EQUAL(WeekHours);
};
/// Days on which other hours hold than the week's, the shop's or (`person`) an assessor's: none at all where
/// it is closed or they are away. Of several records about a day the latest counts.
struct OtherHours {
  PersonId person;  // empty: the shop's
  Doing doing = Doing::open;
  Day first, last;
  std::vector<DayPart> parts;
  int adults = 1;
  std::string why;
  WM_EQUAL(OtherHours);
};
/// A break in an assessor's week.
struct Break {
  PersonId person;
  int weekday = 0, from_minute = 0, to_minute = 0;
  WM_EQUAL(Break);
};
/// What an assessor takes on; the latest counts. Minutes of one-on-ones a day, minutes on end, and the break
/// that ends a stretch.
struct TakesOn {
  PersonId person;
  std::optional<int> longest_day, stretch, rest;
  WM_EQUAL(TakesOn);
};
/// How long a one-on-one on a machine class lasts; the latest counts.
struct Lasts {
  std::string machine_class;
  int minutes = 60;
  WM_EQUAL(Lasts);
};
/// How the shop books; the latest counts as a whole. Days of the longest wait; hours for which a time is
/// held; and the rule for whoever does not come (core/diary/not_come.h): all three of it or none.
struct DiaryRules {
  std::optional<int> longest_wait, hold_hours;
  std::optional<int> not_come, not_come_days, rest_days;
  WM_EQUAL(DiaryRules);
};
/// A unit that can't be used from `from` to `to`, known beforehand.
struct Upkeep {
  MachineId machine;
  Instant from, to;
  std::string why;
  WM_EQUAL(Upkeep);
};
struct BusyPart {
  Instant from, to;
  WM_EQUAL(BusyPart);
};
/// When somebody is busy between two moments, by a calendar of theirs; not with what. The latest counts, and
/// takes the place of all before.
struct Busy {
  PersonId person;
  Instant from, to;
  std::vector<BusyPart> parts;
  WM_EQUAL(Busy);
};
/// Another record struck out, with a reason. Its `at` is the other's `voided`.
struct StrikeOut {
  RecordId record;
  std::string reason;
  WM_EQUAL(StrikeOut);
};
/// A rulebook published, in its place in the journal; Store::rulebooks has what it says. By PublishRulebook
/// only.
struct RulebookIssued {
  int version = 1;
  WM_EQUAL(RulebookIssued);
};
/// A person's details as they were entered or corrected; only the id where they have been erased since.
struct Details {
  PersonId person;
  Person details;
  WM_EQUAL(Details);
};
/// A PIN chosen, and with it a key to sign check-outs with (Ed25519, public half, in hexadecimal; empty where
/// an earlier version kept none). `kept` is what the PIN is tested and the key opened by: on its way to the
/// file only.
struct PinChosen {
  PersonId person;
  std::string key;
  std::string kept;
  WM_EQUAL(PinChosen);
};
/// A signature under the records of a check-out: those of the same commit before it. The assessor's is the
/// last; before it stands the second assessor's, where there are two, and before that the member's who
/// countersigns with their PIN. `checkout`: what is signed; of a member who countersigns later, their
/// `Countersigned`. `key` and `signature` (Ed25519) in hexadecimal.
struct Signature {
  RecordId checkout;
  PersonId person;
  std::string key, signature;
  WM_EQUAL(Signature);
};
/// Somebody whom an assessor has named as close to them: family, a partner. Where the rulebook says so the
/// assessor does not sign for them. Ended by striking it out.
struct Close {
  PersonId person, other;
  WM_EQUAL(Close);
};
/// A paper printed or saved. `digest`: SHA-256 of its text, page by page, in hexadecimal. A blank run sheet
/// has a number, `form`, and says which sheet it is in which revision.
struct Printed {
  std::string title;
  int pages = 0;
  std::string digest;
  std::string form = {}, sheet = {};
  std::optional<int> sheet_revision = {};
  WM_EQUAL(Printed);
};
/// A manager found the computer's clock right although it had jumped. `jumped`: seconds, ahead or (less than
/// 0) back.
struct ClockConfirmed {
  Instant shown;
  std::int64_t jumped = 0;
  WM_EQUAL(ClockConfirmed);
};
/// Somebody's details, birth date and notes erased. `born_by`: they were born on this day or before, as had
/// been proved; later than the birth date, which it does not tell.
struct Erased {
  PersonId person;
  std::optional<Day> born_by;
  WM_EQUAL(Erased);
};
/// What is personal inside one record blanked: its note and free text, an attempt's answers, or details that
/// have been corrected since.
struct Blanked {
  RecordId record;
  WM_EQUAL(Blanked);
};
/// A revision of what the shop teaches or tests by, word for word, so that what was sat or read under it can
/// be shown as it was. Which revision counts for a standing, and from when, a Publish record says.
enum class Work { bank, lesson, sheet, card };
/// A picture or another file that a work shows.
struct Enclosure {
  std::string name;
  std::string base64;  // RFC 4648, section 4
  WM_EQUAL(Enclosure);
};
struct Issued {
  Work work = Work::bank;
  std::string name;  // a bank's, a lesson's, a sheet's; for a card the target that it is of
  int revision = 1;
  std::string changed;  // against the one before, in a sentence; may be empty
  std::string text;
  std::vector<Enclosure> enclosures;
  WM_EQUAL(Issued);
};
/// Help that somebody had at a quiz; never why.
enum class Help { interpreter, read_aloud, large_type };
/// Somebody sat down to a quiz: with the bank's text as issued, this is the paper (core/teach/paper.h).
struct AttemptBegun {
  PersonId person;
  std::string bank;
  int revision = 1;
  std::uint64_t seed = 0;
  std::string language;
  std::vector<Help> helps;
  WM_EQUAL(AttemptBegun);
};
/// An attempt handed in: `quiz` is the record of what it came to, `attempt` the answers as JSON
/// (core/teach/attempt.h), empty where they have been blanked. By HandIn only.
struct AttemptSat {
  PersonId person;
  RecordId begun, quiz;
  std::string attempt;
  WM_EQUAL(AttemptSat);
};
/// What happened at a machine, told once for everybody who was there; it names nobody. `incidents`: the
/// records of those who are named; `unnamed`: the parts of those who are not. By RecordIncident only.
struct Happened {
  TargetName target;
  MachineId machine;  // the unit; empty where it is not known
  int severity = 1;
  std::vector<Part> unnamed;
  std::vector<RecordId> incidents;
  std::string what;
  WM_EQUAL(Happened);
};
/// Somebody started a machine, or (`supervisor`) practises there under them. They are at it from then on,
/// until it is left; nobody else, and neither of them elsewhere.
struct Started {
  PersonId person;
  MachineId machine;
  TargetName target;
  PersonId supervisor;  // empty: nobody
  WM_EQUAL(Started);
};
/// They left it again, at this record's `at`. By LeaveMachine only.
struct Left {
  RecordId started;
  WM_EQUAL(Left);
};
/// What was changed on a machine: what cuts, what guards, what switches it, where it stands, a part repaired.
enum class Alteration { cutter, guard, controls, moved, repair, other };
/// Told beside the record of a change: on which unit, and what was done. By RecordChange only. Without
/// `change` nothing about using the machine changed, a manager's word: it is told of `target` alone.
struct Altered {
  RecordId change;    // empty: no decision rests on it
  MachineId machine;  // empty: every unit of the class
  Alteration kind = Alteration::other;
  std::string what;
  TargetName target = {};  // of what; empty where `change` says it
  WM_EQUAL(Altered);
};
/// A lesson given to several people at one time; `lessons`: the record of each who had it. By TeachGroup
/// only.
struct GroupTaught {
  std::string lesson;
  std::vector<PersonId> instructors;
  std::vector<RecordId> lessons;
  WM_EQUAL(GroupTaught);
};
/// Somebody who is in for one day, with somebody of the shop's, and uses nothing. They are none of the shop's
/// people: all that is kept of them is in this record. `paper`: what they have signed.
struct Visit {
  std::string name;
  std::string paper;
  PersonId host;
  WM_EQUAL(Visit);
};
/// They left again; without it they are in as long as anybody who came in then (README.md, "Who is in").
struct VisitEnd {
  RecordId visit;
  WM_EQUAL(VisitEnd);
};
/// From `at` on the computer that comes in by this login of the server is this; the latest counts.
struct StationTold {
  std::string login;
  Station station = Station::whole;
  WM_EQUAL(StationTold);
};
/// What is said on the telephone when somebody is hurt: the number to call from here, and where the shop is
/// and how one comes in, as a caller has to say it. The latest counts as a whole; an empty one takes the last
/// away.
struct EmergencyCall {
  std::string number, where;
  WM_EQUAL(EmergencyCall);
};
/// Whom to call for somebody was shown while nobody sat there. By whoever stood there: that is not known.
struct ContactShown {
  PersonId person;
  WM_EQUAL(ContactShown);
};
#undef WM_EQUAL

struct ShopFact
    : std::variant<RoleGiven, Join, Booking, Cancel, Attendance, Presence, Waiting, WaitingEnd, Restriction,
                   SheetMarks, Tag, Reached, MachineAdded, Hours, StrikeOut, RulebookIssued, Details,
                   PinChosen, Erased, Signature, Close, Printed, ClockConfirmed, Blanked, Issued,
                   AttemptBegun, AttemptSat, Confirmed, WeekHours, OtherHours, Break, TakesOn, Lasts,
                   DiaryRules, Upkeep, Busy, Happened, Started, Left, ScoredApart, SheetOpened, LineMarked,
                   SheetPutBy, Countersigned, Altered, GroupTaught, Visit, VisitEnd, StationTold,
                   EmergencyCall, ContactShown, Witnessed> {
  WM_COMPILED_ONCE(ShopFact);
};

/// Whether a fact is never struck out: a strike-out itself, what was issued or printed, and what commands of
/// their own make and undo.
inline bool is_for_good(const ShopFact& fact) {
  return std::holds_alternative<StrikeOut>(fact) || std::holds_alternative<Details>(fact) ||
         std::holds_alternative<PinChosen>(fact) || std::holds_alternative<Erased>(fact) ||
         std::holds_alternative<Signature>(fact) || std::holds_alternative<Witnessed>(fact) ||
         std::holds_alternative<Printed>(fact) || std::holds_alternative<ClockConfirmed>(fact) ||
         std::holds_alternative<Blanked>(fact) || std::holds_alternative<Issued>(fact) ||
         std::holds_alternative<AttemptSat>(fact) || std::holds_alternative<ContactShown>(fact);
}

/// One line of the journal. `order` is the place in the one order of commits; `recorded` a label that never
/// runs backwards.
struct Entry {
  std::int64_t order = 0;
  std::int64_t commit = 0;
  RecordId id;
  Instant at, recorded;
  std::optional<Instant> voided;
  std::variant<Fact, ShopFact> fact;
  PersonId entered_by;  // empty: the import that made the shop
  bool from_paper = false;
  std::string note;
  PersonId second = {};              // who vouched for it beside `entered_by`; empty: nobody
  Station station = Station::whole;  // where; at the quiz station whoever it is about sat there themselves
  friend bool operator==(const Entry&, const Entry&) = default;
};

/// Whether it counts as known then: entered by then, and not struck out by then. Nothing: by all that is
/// known.
inline bool counts(const Entry& entry, std::optional<Instant> known) {
  if (!known) return !entry.voided;
  return entry.recorded <= *known && (!entry.voided || *known < *entry.voided);
}

}  // namespace wm::db
