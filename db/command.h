#pragma once
// Every change of the store: a plain struct that says who does what, on what, and when.
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/rulebook/rulebook.h"
#include "db/facts.h"

namespace wm::db {

/// Somebody new. `born` becomes a birth record; an empty `id` lets the store choose.
struct EnterPerson {
  Person person;
  std::optional<Day> born;
  friend bool operator==(const EnterPerson&, const EnterPerson&) = default;
};
struct CorrectPerson {
  Person person;
  friend bool operator==(const CorrectPerson&, const CorrectPerson&) = default;
};
/// Blanks a person's details; the records stay.
struct BlankPerson {
  PersonId person;
  friend bool operator==(const BlankPerson&, const BlankPerson&) = default;
};
struct ChoosePin {
  PersonId person;
  std::string pin;
  friend bool operator==(const ChoosePin&, const ChoosePin&) = default;
};
/// A fact that decisions rest on. A check-out goes by SignCheckout unless a manager enters one from paper.
struct EnterFact {
  Fact fact;
  friend bool operator==(const EnterFact&, const EnterFact&) = default;
};
/// A fact of the shop's own (a booking, presence, a waiting-list place, a role …); not a strike-out or a
/// rulebook. Marks and restrictions go with SignCheckout, unless from paper.
struct EnterShopFact {
  ShopFact fact;
  friend bool operator==(const EnterShopFact&, const EnterShopFact&) = default;
};
/// By what a member countersigns: their PIN, what the reader makes of their card, or with `paper` the number
/// of the printed sheet that they signed.
struct Countersign {
  Hand hand = Hand::pin;
  std::string proof;
  friend bool operator==(const Countersign&, const Countersign&) = default;
};
/// Who assessed a check-out with another, and signs it too: their own PIN; none from paper.
struct SecondAssessor {
  PersonId assessor;
  std::string pin;
  friend bool operator==(const SecondAssessor&, const SecondAssessor&) = default;
};
/// The assessor's signature under a check-out: their own PIN. `second`: where the tier asks for two, and
/// nowhere else.
struct SignCheckout {
  Checkout checkout;
  std::string pin;
  MachineId machine;
  std::string sheet;
  int sheet_revision = 0;
  std::vector<Mark> marks, again;
  std::vector<std::string> restrictions;
  std::optional<RecordId> booking;
  std::vector<LineMeasured> measured = {};
  RecordId opened = {};
  std::optional<Countersign> countersign = {};
  std::optional<SecondAssessor> second = {};
  friend bool operator==(const SignCheckout&, const SignCheckout&) = default;
};
/// A check-out that was marked and signed on a blank sheet printed here, taken in later by a manager, from
/// paper. `sheet` has no PINs and no sheet in hand, and is countersigned on this very paper or not at all;
/// `form` is the number at the paper's foot.
struct EnterPaperSheet {
  SignCheckout sheet;
  std::string form;
  friend bool operator==(const EnterPaperSheet&, const EnterPaperSheet&) = default;
};
/// The member of a check-out that was signed without their word gives it later, with their PIN or card.
struct CountersignCheckout {
  RecordId checkout;
  Countersign by;
  friend bool operator==(const CountersignCheckout&, const CountersignCheckout&) = default;
};
/// A second assessor's marks of a performance, with their own PIN.
struct ScoreApart {
  ScoredApart scored;
  std::string pin;
  friend bool operator==(const ScoreApart&, const ScoreApart&) = default;
};
/// Out of service, with its tag.
struct PutOutOfService {
  MachineId machine;
  std::string tag, padlock, reason;
  PersonId key_holder;
  PersonId put_on_by = {};  // whose lock it is; empty: who enters it
  friend bool operator==(const PutOutOfService&, const PutOutOfService&) = default;
};
/// The severity of what hurt nobody and cost nothing: no rulebook takes anything away for it.
inline constexpr int near_miss = 4;
/// What part somebody had in what happened.
struct Involved {
  PersonId person;
  Part part = Part::operating;
  friend bool operator==(const Involved&, const Involved&) = default;
};
/// What happened at a machine, with everybody who was there: a record for each who is named and one that
/// tells it, or nothing. One person may have several parts.
struct RecordIncident {
  TargetName target;
  MachineId machine;
  int severity = 1;  // 1, the gravest, to near_miss
  std::vector<Involved> people;
  std::vector<Part> unnamed;
  std::string what;
  friend bool operator==(const RecordIncident&, const RecordIncident&) = default;
};
/// A machine that was started is left again; what was worked there is recorded with it, from when it was
/// started: a use, or a supervised session of as many minutes; nothing where it was less than one.
struct LeaveMachine {
  RecordId started;
  friend bool operator==(const LeaveMachine&, const LeaveMachine&) = default;
};
/// A machine was changed: on all that is `target`, whatever the unit, since check-outs are for a class. What
/// it takes away is said by the rulebook (`renew_after_change`); nothing where a manager says that using the
/// machine is as it was (`as_before`): a repair, or another change than of what cuts, guards, switches it or
/// where it stands.
struct RecordChange {
  TargetName target;
  MachineId machine;  // the unit; empty: every one of the class
  Alteration kind = Alteration::other;
  std::string what;
  bool as_before = false;
  friend bool operator==(const RecordChange&, const RecordChange&) = default;
};
/// A lesson given to several people at once: a record for each who had it, and one that says who gave it. How
/// many there may be to one instructor is said by the rulebook (`learners_to_one`).
struct TeachGroup {
  std::string lesson;
  int revision = 0;
  std::vector<PersonId> instructors, people;
  friend bool operator==(const TeachGroup&, const TeachGroup&) = default;
};
struct PublishRulebook {
  Rulebook rulebook;
  friend bool operator==(const PublishRulebook&, const PublishRulebook&) = default;
};
struct StrikeOutRecord {
  RecordId record;
  std::string reason;
  friend bool operator==(const StrikeOutRecord&, const StrikeOutRecord&) = default;
};
/// Blanks what is personal inside one record, and nothing else of it: see Blanked.
struct BlankRecord {
  RecordId record;
  friend bool operator==(const BlankRecord&, const BlankRecord&) = default;
};
/// An attempt that was begun, handed in with its answers as JSON. The store marks it itself, by the bank as
/// it was issued, and enters the quiz that it comes to.
struct HandIn {
  RecordId begun;
  std::string attempt;
  friend bool operator==(const HandIn&, const HandIn&) = default;
};

/// Confirms that the clock is right; `shown` and `jumped` are the store's to say.
struct ConfirmClock {
  friend bool operator==(const ConfirmClock&, const ConfirmClock&) = default;
};

struct Action : std::variant<EnterPerson, CorrectPerson, BlankPerson, ChoosePin, EnterFact, EnterShopFact,
                             SignCheckout, PutOutOfService, RecordIncident, LeaveMachine, PublishRulebook,
                             StrikeOutRecord, BlankRecord, HandIn, ConfirmClock, ScoreApart, EnterPaperSheet,
                             RecordChange, TeachGroup, CountersignCheckout> {
  WM_COMPILED_ONCE(Action);
};

/// An instructor or a manager who vouches for what somebody else enters: their own PIN.
struct Second {
  PersonId person;
  std::string pin;
  friend bool operator==(const Second&, const Second&) = default;
};

struct Command {
  /// Unique; the same command twice is entered once, another under the same id is refused. The first record
  /// that comes of it has this id too, the others `id.2`, `id.3` …, so that a list of commands can name each
  /// other's records.
  std::string id;
  PersonId by;                // who sits at the station
  bool quiz_station = false;  // the station may take an attempt, nothing else, whoever sits at it
  std::optional<Instant> at;  // when it happened; nothing: now
  bool from_paper = false;    // a manager enters a paper from the past
  std::string note;
  Action action;
  std::optional<Second> second = {};  // needed where the rulebook asks for four eyes
  friend bool operator==(const Command&, const Command&) = default;
};

}  // namespace wm::db
