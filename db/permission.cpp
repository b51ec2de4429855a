#include "db/permission.h"

#include <array>

#include "db/diary/floor.h"
#include "db/journal/shop_fact_json.h"
#include "db/refuse.h"
#include "db/stations.h"

namespace wm::db {
namespace {

using Condition = Expected<void> (*)(const Action&, const Occasion&);

Expected<void> yes(const Action&, const Occasion&) { return {}; }
constexpr Condition no = nullptr;

bool same(const Occasion& o, const PersonId& a, const PersonId& b) {
  return !a.empty() && !b.empty() && o.memory.joined(a) == o.memory.joined(b);
}

/// The fact that an EnterFact enters; the table asks only for its own row's.
template <class F>
const F& fact_of(const Action& action) {
  return std::get<F>(std::get<EnterFact>(action).fact);
}

Expected<void> own_pin(const Action& action, const Occasion& o) {
  if (same(o, std::get<ChoosePin>(action).person, o.by)) return {};
  return refuse("pin", "Only a manager may give somebody else a PIN.", "Ask a manager.");
}

/// A member who countersigns chooses their first PIN at whatever station they stand.
Expected<void> own_or_first_pin(const Action& action, const Occasion& o) {
  const PersonId& person = std::get<ChoosePin>(action).person;
  if (!o.memory.role(person, o.now) && !o.memory.has_pin(person)) return {};
  return own_pin(action, o);
}

Expected<void> own_signature(const Action& action, const Occasion& o) {
  const auto& sign = std::get<SignCheckout>(action);
  if (!same(o, sign.checkout.assessor, o.by))
    return refuse("assessor", "A check-out is signed by the one who assessed it.",
                  "Let the assessor sit down here and sign with their own PIN.");
  if (!sign.second) return {};
  // Who may sign check-outs here signs them as the second too, and nobody else.
  const auto role = o.memory.role(sign.second->assessor, o.now);
  if (role == Role::instructor || role == Role::manager) return {};
  return refuse(
      "second", o.memory.name(sign.second->assessor) + " is neither an instructor nor a manager.",
      "Let another assessor, who watched it too, sign with their own PIN; or ask a manager for a role.");
}

Expected<void> own_marks(const Action& action, const Occasion& o) {
  if (same(o, std::get<ScoreApart>(action).scored.assessor, o.by)) return {};
  return refuse("assessor", "A performance is marked apart by the one who watched it.",
                "Let the second assessor sit down here and sign with their own PIN.");
}

Expected<void> tonight(const Action& action, const Occasion& o) {
  const auto& suspend = fact_of<Suspend>(action);
  const bool everything = std::holds_alternative<Everything>(suspend.scope);
  if (everything && o.at <= o.now && suspend.until && *suspend.until <= o.zone.day(o.now)) return {};
  return refuse("until", "Without a manager somebody can be stopped on everything, and for today only.",
                "Stop them for today, and ask a manager about more.");
}

Expected<void> own_lock(const Action& action, const Occasion& o) {
  const Entry* lockout = o.memory.find(fact_of<Release>(action).lockout);
  if (lockout == nullptr || same(o, whose_lock(o.memory, *lockout), o.by)) return {};
  return refuse("lockout", "This lock was put on by somebody else.",
                "Ask the one who put it on; if they cannot be reached, a manager may take it off.");
}

Expected<void> own_lock_or_reached(const Action& action, const Occasion& o) {
  if (own_lock(action, o) || o.memory.about<Reached>(fact_of<Release>(action).lockout) != nullptr) return {};
  return refuse("lockout", "This lock was put on by somebody else, and nobody has tried to reach them.",
                "Try to reach the one who put it on, and enter how; then take it off.");
}

Expected<void> from_paper(const Action&, const Occasion& o) {
  if (o.from_paper) return {};
  return refuse("action", "This is entered by hand only from a paper of the past.",
                "Let it be taken or signed here, or mark it as entered from paper.");
}

/// Nobody takes in the paper of their own check-out.
Expected<void> paper_of_another(const Action& action, const Occasion& o) {
  if (const auto* paper = std::get_if<EnterPaperSheet>(&action);
      paper != nullptr && same(o, paper->sheet.checkout.person, o.by))
    return refuse("person", "Nobody enters the paper of their own check-out.",
                  "Let another manager enter it.");
  return from_paper(action, o);
}

/// The lock that striking a record out would take off, or make another's: its own, or that of the tag that
/// says whose it is. Empty: none that is on.
RecordId lock_struck(const Memory& memory, const RecordId& record) {
  const Entry* entry = memory.find(record);
  if (entry == nullptr || entry->voided) return {};
  const auto* tag = as<Tag>(entry->fact);
  const bool says_whose = tag != nullptr && !tag->put_on_by.empty();
  const RecordId lock = as<Lockout>(entry->fact) != nullptr ? record : says_whose ? tag->lockout : RecordId();
  const bool on = memory.live<Lockout>(lock) != nullptr && memory.about<Release>(lock) == nullptr;
  return on ? lock : RecordId();
}

Expected<void> own_today(const Action& action, const Occasion& o) {
  const RecordId& record = std::get<StrikeOutRecord>(action).record;
  const Entry* entry = o.memory.find(record);
  if (entry == nullptr) return {};  // refused later as unknown
  if (const RecordId lock = lock_struck(o.memory, record); !lock.empty())
    if (auto fine = own_lock(EnterFact{Release{lock}}, o); !fine) return fine;
  if (same(o, entry->entered_by, o.by) && o.zone.day(entry->recorded) == o.zone.day(o.now)) return {};
  return refuse("record", "Only your own entries of today can be struck out here.", "Ask a manager.");
}

Expected<void> own_family(const Action& action, const Occasion& o) {
  if (same(o, std::get<Close>(std::get<EnterShopFact>(action).fact).person, o.by)) return {};
  return refuse("person", "Who is close to somebody is for themselves to say.",
                "Let them sit down here, or ask a manager.");
}

/// An instructor says of themselves when they are away or busy.
Expected<void> own_time(const Action& action, const Occasion& o) {
  const ShopFact& fact = std::get<EnterShopFact>(action).fact;
  const auto* away = std::get_if<OtherHours>(&fact);
  if (same(o, away ? away->person : std::get<Busy>(fact).person, o.by)) return {};
  return refuse("person", "Only a manager may enter the shop's hours, or those of somebody else.",
                "Ask a manager.");
}

/// Whoever sits at the quiz station enters for themselves.
Expected<void> for_themselves(const Action& action, const Occasion& o) {
  const auto person = [&]() -> PersonId {
    if (const auto* handed = std::get_if<HandIn>(&action)) {
      const auto* begun = o.memory.live<AttemptBegun>(handed->begun);
      return begun == nullptr ? o.by : begun->person;  // unknown: refused later
    }
    if (const auto* fact = std::get_if<EnterFact>(&action)) return std::get<Lesson>(fact->fact).person;
    const ShopFact& own = std::get<EnterShopFact>(action).fact;
    if (const auto* begun = std::get_if<AttemptBegun>(&own)) return begun->person;
    return std::get<Waiting>(own).person;
  }();
  if (same(o, person, o.by)) return {};
  return refuse("person", "At the quiz station everybody enters for themselves.",
                "Let them come to the station.");
}

/// Striking out a lock that is on takes it off: that needs what taking it off needs.
Expected<void> not_anothers_lock(const Action& action, const Occasion& o) {
  const RecordId lock = lock_struck(o.memory, std::get<StrikeOutRecord>(action).record);
  return lock.empty() ? Expected<void>{} : own_lock_or_reached(EnterFact{Release{lock}}, o);
}

/// What commands of their own make is not entered by hand.
Expected<void> by_hand(const Action& action) {
  const auto* own = std::get_if<EnterShopFact>(&action);
  if (own == nullptr) return {};
  const bool stays = std::holds_alternative<Printed>(own->fact) ||
                     std::holds_alternative<Issued>(own->fact) ||
                     std::holds_alternative<ContactShown>(own->fact);
  const bool made = (is_for_good(own->fact) && !stays) || std::holds_alternative<RulebookIssued>(own->fact) ||
                    std::holds_alternative<Happened>(own->fact) || std::holds_alternative<Left>(own->fact) ||
                    std::holds_alternative<Altered>(own->fact) ||
                    std::holds_alternative<GroupTaught>(own->fact);
  if (made)
    return refuse("action", "This is not entered by hand.",
                  "Strike the record out, publish the rulebook, or correct the person.");
  return {};
}

/// What costs nobody anything may be reported to whoever is at the desk.
Expected<void> only_near_miss(const Action& action, const Occasion&) {
  if (std::get<RecordIncident>(action).severity == near_miss) return {};
  return refuse("severity", "At the desk only a near miss is recorded.",
                "Ask an instructor or a manager to record what was graver.");
}

/// That a change renews nothing is a manager's word.
Expected<void> changes_use(const Action& action, const Occasion&) {
  if (!std::get<RecordChange>(action).as_before) return {};
  return refuse("as_before", "That using the machine is as before is for a manager to say.",
                "Record it as a change of its use, or ask a manager.");
}

/// At which computers, beside one that does it all and the quiz station: a set of them.
using Places = unsigned;
constexpr Places place(Station station) { return 1u << static_cast<unsigned>(station); }
constexpr Places in_office = place(Station::office);
constexpr Places at_desks = in_office | place(Station::front);
constexpr Places at_machine =
    place(Station::machine);  // a performance is marked and signed where it is watched
constexpr Places anywhere = at_desks | at_machine;
constexpr Places nowhere_else = 0;

struct PermissionRow {
  std::string_view action;
  Places places;
  Condition quiz_station, desk, instructor, manager;
};

// clang-format off
// What is entered                     where        quiz station    desk              instructor        manager
constexpr std::array table = {
    PermissionRow{"enter_person",    at_desks,    no,             yes,              yes,              yes},
    PermissionRow{"correct_person",  at_desks,    no,             yes,              yes,              yes},
    PermissionRow{"blank_person",    in_office,   no,             no,               no,               yes},
    PermissionRow{"choose_pin",      anywhere,    no,             own_or_first_pin, own_or_first_pin, yes},
    PermissionRow{"birth",           at_desks,    no,             yes,              yes,              yes},
    PermissionRow{"document",        at_desks,    no,             yes,              yes,              yes},
    PermissionRow{"lesson",          anywhere,    for_themselves, yes,              yes,              yes},
    PermissionRow{"quiz",            at_desks,    yes,            no,               no,               from_paper},
    PermissionRow{"checkout",        at_desks,    no,             no,               no,               from_paper},
    PermissionRow{"sign_checkout",   at_machine,  no,             no,               own_signature,    own_signature},
    PermissionRow{"paper_sheet",     at_desks,    no,             no,               no,               paper_of_another},
    PermissionRow{"sheet_opened",    at_machine,  no,             no,               yes,              yes},
    PermissionRow{"line_marked",     at_machine,  no,             no,               yes,              yes},
    PermissionRow{"sheet_put_by",    at_machine,  no,             no,               yes,              yes},
    PermissionRow{"countersign",     anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"countersigned",   at_desks,    no,             no,               no,               from_paper},
    PermissionRow{"score_apart",     at_machine,  no,             no,               own_marks,        own_marks},
    PermissionRow{"scored_apart",    at_desks,    no,             no,               no,               from_paper},
    PermissionRow{"supervised",      anywhere,    no,             no,               yes,              yes},
    PermissionRow{"use",             anywhere,    no,             no,               yes,              yes},
    PermissionRow{"incident",        anywhere,    no,             no,               yes,              yes},
    PermissionRow{"record_incident", anywhere,    no,             only_near_miss,   yes,              yes},
    PermissionRow{"started",         anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"leave_machine",   anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"suspend",         anywhere,    no,             tonight,          tonight,          yes},
    PermissionRow{"reinstate",       in_office,   no,             no,               no,               yes},
    PermissionRow{"appoint",         in_office,   no,             no,               no,               yes},
    PermissionRow{"dismiss",         anywhere,    no,             no,               no,               yes},
    PermissionRow{"publish",         in_office,   no,             no,               no,               yes},
    PermissionRow{"lockout",         anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"out_of_service",  anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"tag",             anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"release",         anywhere,    no,             own_lock,         own_lock,         own_lock_or_reached},
    PermissionRow{"reached",         anywhere,    no,             no,               no,               yes},
    PermissionRow{"change",          anywhere,    no,             no,               yes,              yes},
    PermissionRow{"record_change",   anywhere,    no,             no,               changes_use,      yes},
    PermissionRow{"teach_group",     at_desks,    no,             yes,              yes,              yes},
    PermissionRow{"visit",           at_desks,    no,             yes,              yes,              yes},
    PermissionRow{"visit_end",       at_desks,    no,             yes,              yes,              yes},
    PermissionRow{"role",            in_office,   no,             no,               no,               yes},
    PermissionRow{"station",         in_office,   no,             no,               no,               yes},
    PermissionRow{"emergency_call",  in_office,   no,             no,               no,               yes},
    PermissionRow{"contact_shown",   anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"join",            in_office,   no,             no,               no,               yes},
    PermissionRow{"booking",         anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"cancel",          anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"attendance",      anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"presence",        anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"waiting",         anywhere,    for_themselves, yes,              yes,              yes},
    PermissionRow{"waiting_end",     anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"restriction",     at_desks,    no,             no,               no,               from_paper},
    PermissionRow{"marks",           at_desks,    no,             no,               no,               from_paper},
    PermissionRow{"machine_added",   in_office,   no,             no,               no,               yes},
    PermissionRow{"hours",           in_office,   no,             no,               no,               yes},
    PermissionRow{"confirmed",       anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"week_hours",      in_office,   no,             no,               no,               yes},
    PermissionRow{"other_hours",     at_desks,    no,             no,               own_time,         yes},
    PermissionRow{"break",           in_office,   no,             no,               no,               yes},
    PermissionRow{"takes_on",        in_office,   no,             no,               no,               yes},
    PermissionRow{"lasts",           in_office,   no,             no,               no,               yes},
    PermissionRow{"diary_rules",     in_office,   no,             no,               no,               yes},
    PermissionRow{"upkeep",          in_office,   no,             no,               no,               yes},
    PermissionRow{"busy",            at_desks,    no,             no,               own_time,         yes},
    PermissionRow{"rulebook",        in_office,   no,             no,               no,               yes},
    PermissionRow{"strike_out",      anywhere,    no,             own_today,        own_today,        not_anothers_lock},
    PermissionRow{"close",           at_desks,    no,             no,               own_family,       yes},
    PermissionRow{"printed",         anywhere,    no,             yes,              yes,              yes},
    PermissionRow{"blank_record",    in_office,   no,             no,               no,               yes},
    PermissionRow{"issued",          in_office,   no,             no,               no,               yes},
    PermissionRow{"attempt_begun",   nowhere_else, for_themselves, no,               no,               no},
    PermissionRow{"hand_in",         nowhere_else, for_themselves, no,               no,               no},
    PermissionRow{"clock",           anywhere,    no,             no,               no,               yes},
};
// clang-format on

Condition of(const PermissionRow& row, Role role) {
  switch (role) {
    case Role::quiz_station:
      return row.quiz_station;
    case Role::desk:
      return row.desk;
    case Role::instructor:
      return row.instructor;
    case Role::manager:
      return row.manager;
  }
  return no;
}

Expected<void> check_place(const PermissionRow& row, Station station) {
  if (station == Station::whole || station == Station::quiz || (row.places & place(station)) != 0) return {};
  const std::string here = "This is not entered at " + named(station) + ".";
  if (row.places == at_machine)
    return refuse("station", here, "Enter it at " + named(Station::machine) + ", where it is watched.");
  return refuse(
      "station", here,
      row.places == in_office ? "Enter it in the office." : "Enter it at the front desk or in the office.");
}

tl::unexpected<Problem> refuse_role(const PermissionRow& row, Role role) {
  if (role == Role::quiz_station)
    return refuse("role", "This is not entered at the quiz station.", "Enter it at the desk.");
  const std::string who = role == Role::desk         ? "The desk"
                          : role == Role::instructor ? "An instructor"
                                                     : "A manager";
  const std::string ask = row.instructor != no && role == Role::desk ? "Ask an instructor or a manager."
                          : row.manager == yes                       ? "Ask a manager."
                          : row.quiz_station != no                   ? "Let it be taken at the quiz station."
                                                   : "Let the assessor sign it, or ask a manager.";
  return refuse("role", who + " may not enter this.", ask);
}

}  // namespace

std::string action_word(const Action& action) {
  struct Words {
    std::string operator()(const EnterPerson&) const { return "enter_person"; }
    std::string operator()(const CorrectPerson&) const { return "correct_person"; }
    std::string operator()(const BlankPerson&) const { return "blank_person"; }
    std::string operator()(const ChoosePin&) const { return "choose_pin"; }
    std::string operator()(const EnterFact& a) const { return std::string(kind_word(a.fact)); }
    std::string operator()(const EnterShopFact& a) const { return std::string(kind_word(a.fact)); }
    std::string operator()(const SignCheckout&) const { return "sign_checkout"; }
    std::string operator()(const PutOutOfService&) const { return "out_of_service"; }
    std::string operator()(const RecordIncident&) const { return "record_incident"; }
    std::string operator()(const RecordChange&) const { return "record_change"; }
    std::string operator()(const TeachGroup&) const { return "teach_group"; }
    std::string operator()(const LeaveMachine&) const { return "leave_machine"; }
    std::string operator()(const PublishRulebook&) const { return "rulebook"; }
    std::string operator()(const StrikeOutRecord&) const { return "strike_out"; }
    std::string operator()(const BlankRecord&) const { return "blank_record"; }
    std::string operator()(const HandIn&) const { return "hand_in"; }
    std::string operator()(const ConfirmClock&) const { return "clock"; }
    std::string operator()(const ScoreApart&) const { return "score_apart"; }
    std::string operator()(const EnterPaperSheet&) const { return "paper_sheet"; }
    std::string operator()(const CountersignCheckout&) const { return "countersign"; }
  };
  return std::visit(Words{}, action);
}

Expected<void> allowed(Role role, const Action& action, const Occasion& occasion) {
  if (occasion.from_paper && role != Role::manager)
    return refuse("role", "Only a manager may enter a paper from the past.", "Ask a manager.");
  if (auto fine = by_hand(action); !fine) return fine;
  const std::string word = action_word(action);
  for (const PermissionRow& row : table) {
    if (row.action != word) continue;
    const Condition condition = of(row, role);
    if (condition == no) return refuse_role(row, role);
    if (auto fine = check_place(row, occasion.station); !fine) return fine;
    return condition(action, occasion);
  }
  return refuse("action", "Nobody may enter this.", "Choose another action.");
}

}  // namespace wm::db
