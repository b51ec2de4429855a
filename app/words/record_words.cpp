#include "app/words/record_words.h"

#include <QLocale>
#include <QTime>
#include <algorithm>
#include <iterator>

#include "app/words/hours_words.h"
#include "app/words/labels.h"
#include "app/words/listed_name.h"
#include "app/words/listing.h"
#include "app/words/lock_words.h"
#include "app/words/station_words.h"
#include "app/words/tr.h"
#include "app/words/words.h"
#include "db/command.h"

namespace wm::app {
namespace {

QString day_words(Day day, const Zone& zone) { return short_day(zone.start(day), zone); }

/// ", through 2 May 2027", or nothing.
QString through(const std::optional<Day>& until, const Zone& zone) {
  return until ? Words::tr(", through %1", "ends a phrase").arg(day_words(*until, zone)) : QString();
}

QString scope_words(const Scope& scope) {
  if (const auto* tier = std::get_if<TierScope>(&scope)) return Words::tr("all of tier %1").arg(tier->tier);
  if (const auto* target = std::get_if<TargetScope>(&scope)) return target_phrase(target->target);
  return Words::tr("all machines");
}

QString role_name(db::Role role) {
  switch (role) {
    case db::Role::quiz_station:
      return Words::tr("quiz station");
    case db::Role::desk:
      return Words::tr("desk");
    case db::Role::instructor:
      return Words::tr("instructor");
    case db::Role::manager:
      return Words::tr("manager");
  }
  return {};
}

}  // namespace

QString part_words(Part part) {
  switch (part) {
    case Part::operating:
      return Words::tr("was working");
    case Part::supervising:
      return Words::tr("was supervising");
    case Part::hurt:
      return Words::tr("was hurt");
    case Part::saw:
      return Words::tr("saw it");
  }
  return {};
}

namespace {

QString work_name(db::Work work) {
  switch (work) {
    case db::Work::bank:
      return Words::tr("Question bank");
    case db::Work::lesson:
      return Words::tr("Lesson");
    case db::Work::sheet:
      return Words::tr("Run sheet");
    case db::Work::card:
      return Words::tr("Limits card");
  }
  return {};
}

/// One overload a kind: a new kind of record does not compile until it has its sentence.
struct Sentence {
  const db::Entry& entry;
  const RecordReader& reader;

  QString name(const PersonId& person) const { return reader.name_of(person); }
  QString machine(const MachineId& id) const { return reader.machine_of(id); }
  QString day(Day d) const { return day_words(d, reader.zone); }
  QString time(Instant t) const {
    return Words::tr("%1, %2", "a day and a time").arg(short_day(t, reader.zone), clock_time(t, reader.zone));
  }
  /// What another record says, inside this one's sentence.
  QString other(const RecordId& id) const {
    const db::Entry* found = reader.record_of(id);
    return found ? record_sentence(*found, reader) : Words::tr("A record that is not here.");
  }

  /// And the number of the paper that it was marked on, where there is one.
  static QString with_number(const QString& said, const std::string& form) {
    return form.empty() ? said : Words::tr("%1 On paper, number %2.").arg(said, QString::fromStdString(form));
  }

  QString operator()(const Birth& r) const {
    return Words::tr("Birth date of %1 entered.").arg(name(r.person));
  }
  QString operator()(const Document& r) const {
    return Words::tr("%1 gave in a paper: %2%3.")
        .arg(name(r.person), item_label(r.document), through(r.until, reader.zone));
  }
  QString operator()(const Lesson& r) const {
    const QString who = name(r.person), lesson = item_label(r.lesson), revision = revision_words(r.revision);
    if (entry.station == db::Station::quiz)
      return Words::tr("%1 went through the lesson at the quiz station: %2%3.").arg(who, lesson, revision);
    if (entry.entered_by.empty()) return Words::tr("%1 had the lesson: %2%3.").arg(who, lesson, revision);
    return Words::tr("%1 had the lesson: %2%3, attested by %4.")
        .arg(who, lesson, revision, name(entry.entered_by));
  }
  QString operator()(const Quiz& r) const {
    const QString critical = r.critical_missed > 0
                                 ? Words::tr(", %1 critical missed", "ends a phrase").arg(r.critical_missed)
                                 : QString();
    return Words::tr("%1 took the quiz: %2%3, %4 of %5 right%6.")
        .arg(name(r.person), item_label(r.quiz), revision_words(r.revision), QString::number(r.correct),
             QString::number(r.total), critical);
  }
  QString operator()(const Checkout& r) const {
    const QString item = item_label(r.checkout), by = name(r.assessor);
    switch (r.outcome) {
      case Outcome::passed:
        return Words::tr("%1 passed the check-out: %2; assessed by %3.").arg(name(r.person), item, by);
      case Outcome::failed:
        return Words::tr("%1 did not pass the check-out: %2; assessed by %3.").arg(name(r.person), item, by);
      case Outcome::stopped:
        return Words::tr("%1's check-out was stopped: %2; assessed by %3.").arg(name(r.person), item, by);
    }
    return {};
  }
  QString operator()(const Supervised& r) const {
    return Words::tr("%1 worked on %2 for %3 min, supervised by %4.")
        .arg(name(r.person), target_phrase(r.target), QString::number(r.minutes), name(r.supervisor));
  }
  QString operator()(const Use& r) const {
    return Words::tr("%1 used %2.").arg(name(r.person), target_phrase(r.target));
  }
  QString operator()(const Incident& r) const {
    const QString where = target_phrase(r.target), severity = QString::number(r.severity),
                  who = name(r.person);
    switch (r.part) {
      case Part::operating:
        return Words::tr("Incident of severity %1 on %2; %3 was operating.").arg(severity, where, who);
      case Part::supervising:
        return Words::tr("Incident of severity %1 on %2; %3 was supervising.").arg(severity, where, who);
      case Part::hurt:
        return Words::tr("Incident of severity %1 on %2; %3 was hurt.").arg(severity, where, who);
      case Part::saw:
        return Words::tr("Incident of severity %1 on %2; %3 saw it.").arg(severity, where, who);
    }
    return {};
  }
  QString operator()(const db::Started& r) const {
    return r.supervisor.empty() ? Words::tr("%1 started %2.").arg(name(r.person), machine(r.machine))
                                : Words::tr("%1 started %2, supervised by %3.")
                                      .arg(name(r.person), machine(r.machine), name(r.supervisor));
  }
  QString operator()(const db::Left& r) const { return Words::tr("Left again: %1").arg(other(r.started)); }
  QString operator()(const db::Altered& r) const {
    const QString told = r.change.empty()
                             ? Words::tr("Worked on %1, which is used as before: %2, %3",
                                         "machine, kind of change, what was done")
                                   .arg(target_phrase(r.target), alteration_words(r.kind), said_words(r.what))
                             : Words::tr("What was changed: %1, %2", "the kind of change, what was done")
                                   .arg(alteration_words(r.kind), said_words(r.what));
    return (r.machine.empty()
                ? told
                : Words::tr("%1 (%2)", "what was changed, a unit").arg(told, machine(r.machine))) +
           QLatin1Char('.');
  }
  QString operator()(const db::GroupTaught& r) const {
    QStringList by;
    for (const PersonId& each : r.instructors) by << name(each);
    return Words::tr("%1 given to a group of %n, by %2.", "a lesson, who instructed",
                     static_cast<int>(r.lessons.size()))
        .arg(item_label(r.lesson), and_list(by));
  }
  QString operator()(const db::Visit& r) const {
    return Words::tr("A visitor for the day: %1, with %2; paper signed: %3.")
        .arg(said_words(r.name), name(r.host), item_label(r.paper));
  }
  QString operator()(const db::VisitEnd& r) const { return Words::tr("Left: %1").arg(other(r.visit)); }
  QString operator()(const db::Happened& r) const {
    const QString where = r.machine.empty() ? target_phrase(r.target) : machine(r.machine);
    const QString what = said_words(r.what);
    QString told = r.severity == db::near_miss
                       ? Words::tr("A near miss at %1: %2", "machine, what happened").arg(where, what)
                       : Words::tr("At %1, severity %2: %3", "machine, number, what happened")
                             .arg(where, QString::number(r.severity), what);
    for (const Part part : r.unnamed)
      told += Words::tr("; somebody not named %1", "was hurt").arg(part_words(part));
    return told + QLatin1Char('.');
  }
  QString operator()(const Suspend& r) const {
    return Words::tr("%1 paused on %2%3.")
        .arg(name(r.person), scope_words(r.scope), through(r.until, reader.zone));
  }
  QString operator()(const Reinstate& r) const {
    return Words::tr("Pause ended: %1").arg(other(r.suspension));
  }
  QString operator()(const Appoint& r) const {
    return (r.founding ? Words::tr("%1 appointed to assess %2 from the start%3.")
                       : Words::tr("%1 appointed to assess %2%3."))
        .arg(name(r.person), scope_words(r.scope), through(r.until, reader.zone));
  }
  QString operator()(const Dismiss& r) const {
    return Words::tr("Appointment ended: %1").arg(other(r.appointment));
  }
  QString operator()(const Publish& r) const {
    return Words::tr("%1 published%2.").arg(item_label(r.item), revision_words(r.revision));
  }
  QString operator()(const Lockout& r) const {
    return Words::tr("%1 put out of service.").arg(machine(r.machine));
  }
  QString operator()(const Release& r) const {
    return Words::tr("Padlock taken off: %1").arg(other(r.lockout));
  }
  QString operator()(const Change& r) const {
    return Words::tr("A change to %1.").arg(target_phrase(r.target));
  }

  QString operator()(const db::RoleGiven& r) const {
    return r.role ? Words::tr("%1 sits at the desk as %2.").arg(name(r.person), role_name(*r.role))
                  : Words::tr("%1 has no role at the desk any more.").arg(name(r.person));
  }
  QString operator()(const db::Join& r) const {
    return Words::tr("Two entries of one person joined: %1 and %2.").arg(name(r.keep), name(r.other));
  }
  QString operator()(const db::Booking& r) const {
    QString out = Words::tr("%1 booked with %2 on %3, %4 to %5.")
                      .arg(name(r.person), name(r.assessor), machine(r.machine), time(r.from),
                           clock_time(r.to, reader.zone));
    if (!r.second.empty()) out += ' ' + Words::tr("Second assessor: %1.").arg(name(r.second));
    if (r.held_through) out += ' ' + Words::tr("Held through %1.").arg(time(*r.held_through));
    if (!r.instead_of.empty()) out += ' ' + Words::tr("Instead of: %1").arg(other(r.instead_of));
    return out;
  }
  QString operator()(const db::Cancel& r) const {
    return Words::tr("Booking cancelled (%1): %2").arg(said_words(r.reason), other(r.booking));
  }
  QString operator()(const db::Attendance& r) const {
    switch (r.turnout) {
      case db::Turnout::arrived:
        return Words::tr("Arrived: %1").arg(other(r.booking));
      case db::Turnout::late:
        return Words::tr("Came late: %1").arg(other(r.booking));
      case db::Turnout::not_come:
        return Words::tr("Did not come: %1").arg(other(r.booking));
    }
    return {};
  }
  QString operator()(const db::Presence& r) const {
    if (!r.in) return Words::tr("%1 left.").arg(name(r.person));
    return (r.staff ? Words::tr("%1 came in, on duty.") : Words::tr("%1 came in.")).arg(name(r.person));
  }
  QString operator()(const db::Waiting& r) const {
    return Words::tr("%1 on the waiting list for %2.").arg(name(r.person), target_phrase(r.target));
  }
  QString operator()(const db::WaitingEnd& r) const {
    return Words::tr("Off the waiting list: %1").arg(other(r.waiting));
  }
  QString operator()(const db::Restriction& r) const {
    return Words::tr("Restriction: %1. %2").arg(QString::fromStdString(r.text), other(r.checkout));
  }
  QString operator()(const db::SheetMarks& r) const {
    QStringList measured;
    for (const LineMeasured& one : r.measured)
      measured << Words::tr("line %1, typed “%2”: %3, by marks of %4")
                      .arg(QString::number(one.line), QString::fromStdString(one.typed),
                           QString::fromStdString(one.read), QString::fromStdString(one.marks));
    QString marked =
        Words::tr("Run sheet marked%1. %2").arg(revision_words(r.sheet_revision), other(r.checkout));
    marked = with_number(marked, r.form);
    return measured.isEmpty() ? marked : Words::tr("%1 Measured: %2.").arg(marked, measured.join("; "));
  }
  QString operator()(const db::Witnessed& r) const {
    return Words::tr("%1 signed it as the second assessor: %2", "who, the check-out")
        .arg(name(r.assessor), other(r.checkout));
  }
  QString operator()(const db::ScoredApart& r) const {
    const QString marked = Words::tr("%1 marked the run sheet apart%2. %3", "who, revision, the check-out")
                               .arg(name(r.assessor), revision_words(r.sheet_revision), other(r.checkout));
    return with_number(marked, r.form);
  }
  QString operator()(const db::SheetOpened& r) const {
    return Words::tr("%1 took the run sheet for %2 in hand%3.", "who, on what, revision")
        .arg(name(r.person), target_phrase(r.target), revision_words(r.sheet_revision));
  }
  QString operator()(const db::LineMarked& r) const {
    QStringList said{mark_words(r.mark)};
    if (r.again != Mark::none) said << Words::tr("the second time %1", "a mark").arg(mark_words(r.again));
    if (r.measured)
      said << Words::tr("measured “%1”", "as it was typed").arg(QString::fromStdString(r.measured->typed));
    return Words::tr("Line %1: %2. %3", "its marks, the sheet")
        .arg(QString::number(r.line), said.join(", "), other(r.opened));
  }
  QString operator()(const db::SheetPutBy& r) const {
    const QString said = Words::tr("Put by, to go on another day: %1", "the sheet").arg(other(r.opened));
    QStringList open;
    for (const std::string& each : r.restrictions) open << QString::fromStdString(each);
    if (!r.note.empty()) open << QString::fromStdString(r.note);
    return open.isEmpty() ? said : Words::tr("%1 Said then: %2.").arg(said, open.join("; "));
  }
  QString operator()(const db::Countersigned& r) const {
    const QString said = r.hand == db::Hand::pin    ? Words::tr("%1 countersigned with their PIN: %2")
                         : r.hand == db::Hand::card ? Words::tr("%1 countersigned with their card: %2")
                                                    : Words::tr("%1 countersigned on paper: %2");
    return with_number(said.arg(name(r.person), other(r.checkout)), r.form);
  }
  QString operator()(const db::Tag& r) const {
    const QString tag = QString::fromStdString(r.tag), padlock = padlock_words(r.padlock),
                  why = said_words(r.reason);
    QString told = has_padlock(r)
                       ? Words::tr("Tag %1, %2, key with %3: %4.").arg(tag, padlock, name(r.key_holder), why)
                       : Words::tr("Tag %1, %2: %3.").arg(tag, padlock, why);
    if (!r.put_on_by.empty()) told += ' ' + Words::tr("Put on by %1.").arg(name(r.put_on_by));
    return told;
  }
  QString operator()(const db::Reached& r) const {
    return Words::tr("An attempt to reach who put the padlock on: %1. %2")
        .arg(said_words(r.how), other(r.lockout));
  }
  QString operator()(const db::MachineAdded& r) const {
    return Words::tr("Unit entered: %1.").arg(unit_name(r.machine_class, r.label));
  }
  template <class T>
  QString operator()(const T& r) const requires requires {
    hours_sentence(r, reader);
  }
  { return hours_sentence(r, reader); }
  QString operator()(const db::Confirmed& r) const {
    return Words::tr("For certain now: %1").arg(other(r.booking));
  }
  QString operator()(const db::StrikeOut& r) const {
    return Words::tr("Struck out (%1): %2").arg(said_words(r.reason), other(r.record));
  }
  QString operator()(const db::StationTold& r) const {
    return Words::tr("The computer %1 is for: %2.")
        .arg(QString::fromStdString(r.login), station_words(r.station));
  }
  QString operator()(const db::EmergencyCall& r) const {
    if (r.number.empty() && r.where.empty()) return Words::tr("No number to call in an emergency any more.");
    const QString none = Words::tr("none", "no number to call");
    const QString called = Words::tr("To call in an emergency: %1.")
                               .arg(r.number.empty() ? none : QString::fromStdString(r.number));
    return r.where.empty() ? called
                           : Words::tr("%1 To say where the shop is: %2.", "whom to call first")
                                 .arg(called, QString::fromStdString(r.where));
  }
  QString operator()(const db::ContactShown& r) const {
    return Words::tr("Whom to call for %1 was shown while nobody sat there.").arg(name(r.person));
  }
  QString operator()(const db::RulebookIssued& r) const {
    return Words::tr("Rulebook %1 published.").arg(r.version);
  }
  QString operator()(const db::Details& r) const {
    return Words::tr("Details of %1 entered.").arg(name(r.person));
  }
  QString operator()(const db::PinChosen& r) const {
    return Words::tr("%1 has a new PIN.").arg(name(r.person));
  }
  QString operator()(const db::Signature& r) const {
    return Words::tr("%1 signed: %2").arg(name(r.person), other(r.checkout));
  }
  QString operator()(const db::Close& r) const {
    return Words::tr("%1 named %2 as close to them.").arg(name(r.person), name(r.other));
  }
  QString operator()(const db::Printed& r) const {
    const QString said =
        Words::tr("Printed: %1, %n page(s), text %2.", nullptr, r.pages)
            .arg(QString::fromStdString(r.title), QString::fromStdString(r.digest.substr(0, 16)));
    return r.form.empty()
               ? said
               : Words::tr("%1 A blank run sheet with the number %2%3.", "what was printed, revision")
                     .arg(said, QString::fromStdString(r.form), revision_words(r.sheet_revision.value_or(0)));
  }
  QString operator()(const db::Blanked& r) const {
    return Words::tr("Text erased in: %1").arg(other(r.record));
  }
  QString operator()(const db::Issued& r) const {
    const QString name = r.work == db::Work::card ? target_phrase(r.name) : QString::fromStdString(r.name);
    const QString issued =
        Words::tr("%1 issued: %2%3.").arg(work_name(r.work), name, revision_words(r.revision));
    return r.changed.empty() ? issued : issued + QLatin1Char(' ') + QString::fromStdString(r.changed);
  }
  QString operator()(const db::AttemptBegun& r) const {
    return Words::tr("%1 began the quiz %2%3.")
        .arg(name(r.person), item_label(r.bank), revision_words(r.revision));
  }
  QString operator()(const db::AttemptSat& r) const {
    return r.attempt.empty()
               ? Words::tr("%1 handed in a quiz; the answers have been erased.").arg(name(r.person))
               : Words::tr("%1 handed in a quiz.").arg(name(r.person));
  }
  QString operator()(const db::ClockConfirmed& r) const {
    return Words::tr("The computer's clock confirmed at %1.").arg(time(r.shown));
  }
  QString operator()(const db::Erased& r) const {
    return Words::tr("Details of %1 erased.").arg(name(r.person));
  }
};

struct Kind {
  QString operator()(const Birth&) const { return Words::tr("Birth date"); }
  QString operator()(const Document&) const { return Words::tr("Paper"); }
  QString operator()(const Lesson&) const { return Words::tr("Lesson"); }
  QString operator()(const Quiz&) const { return Words::tr("Quiz"); }
  QString operator()(const Checkout&) const { return Words::tr("Check-out"); }
  QString operator()(const Supervised&) const { return Words::tr("Supervised work"); }
  QString operator()(const Use&) const { return Words::tr("Use"); }
  QString operator()(const Incident&) const { return Words::tr("Incident"); }
  QString operator()(const db::Happened&) const { return Words::tr("Incident"); }
  QString operator()(const db::Started&) const { return Words::tr("Use"); }
  QString operator()(const db::Left&) const { return Words::tr("Use"); }
  QString operator()(const db::Altered&) const { return Words::tr("Change"); }
  QString operator()(const db::GroupTaught&) const { return Words::tr("Lesson"); }
  QString operator()(const db::Visit&) const { return Words::tr("Visitor"); }
  QString operator()(const db::VisitEnd&) const { return Words::tr("Visitor"); }
  QString operator()(const Suspend&) const { return Words::tr("Pause"); }
  QString operator()(const Reinstate&) const { return Words::tr("Pause"); }
  QString operator()(const Appoint&) const { return Words::tr("Appointment"); }
  QString operator()(const Dismiss&) const { return Words::tr("Appointment"); }
  QString operator()(const Publish&) const { return Words::tr("Revision"); }
  QString operator()(const Lockout&) const { return Words::tr("Out of service"); }
  QString operator()(const Release&) const { return Words::tr("Out of service"); }
  QString operator()(const Change&) const { return Words::tr("Change"); }
  QString operator()(const db::RoleGiven&) const { return Words::tr("Role"); }
  QString operator()(const db::Join&) const { return Words::tr("Join"); }
  QString operator()(const db::Booking&) const { return Words::tr("Booking"); }
  QString operator()(const db::Cancel&) const { return Words::tr("Booking"); }
  QString operator()(const db::Attendance&) const { return Words::tr("Attendance"); }
  QString operator()(const db::Presence&) const { return Words::tr("Presence"); }
  QString operator()(const db::Waiting&) const { return Words::tr("Waiting list"); }
  QString operator()(const db::WaitingEnd&) const { return Words::tr("Waiting list"); }
  QString operator()(const db::Restriction&) const { return Words::tr("Check-out"); }
  QString operator()(const db::SheetMarks&) const { return Words::tr("Check-out"); }
  QString operator()(const db::ScoredApart&) const { return Words::tr("Check-out"); }
  QString operator()(const db::Witnessed&) const { return Words::tr("Check-out"); }
  QString operator()(const db::SheetOpened&) const { return Words::tr("Run sheet"); }
  QString operator()(const db::LineMarked&) const { return Words::tr("Run sheet"); }
  QString operator()(const db::SheetPutBy&) const { return Words::tr("Run sheet"); }
  QString operator()(const db::Countersigned&) const { return Words::tr("Check-out"); }
  QString operator()(const db::Tag&) const { return Words::tr("Out of service"); }
  QString operator()(const db::Reached&) const { return Words::tr("Out of service"); }
  QString operator()(const db::MachineAdded&) const { return Words::tr("Unit"); }
  QString operator()(const db::Hours&) const { return Words::tr("Hours"); }
  QString operator()(const db::WeekHours&) const { return Words::tr("Hours"); }
  QString operator()(const db::OtherHours&) const { return Words::tr("Hours"); }
  QString operator()(const db::Break&) const { return Words::tr("Hours"); }
  QString operator()(const db::TakesOn&) const { return Words::tr("Hours"); }
  QString operator()(const db::Lasts&) const { return Words::tr("Hours"); }
  QString operator()(const db::Busy&) const { return Words::tr("Hours"); }
  QString operator()(const db::Upkeep&) const { return Words::tr("Maintenance"); }
  QString operator()(const db::DiaryRules&) const { return Words::tr("Booking"); }
  QString operator()(const db::Confirmed&) const { return Words::tr("Booking"); }
  QString operator()(const db::StrikeOut&) const { return Words::tr("Struck out"); }
  QString operator()(const db::StationTold&) const { return Words::tr("Computer"); }
  QString operator()(const db::EmergencyCall&) const { return Words::tr("Emergency"); }
  QString operator()(const db::ContactShown&) const { return Words::tr("Emergency"); }
  QString operator()(const db::RulebookIssued&) const { return Words::tr("Rulebook"); }
  QString operator()(const db::Details&) const { return Words::tr("Details"); }
  QString operator()(const db::PinChosen&) const { return Words::tr("PIN"); }
  QString operator()(const db::Erased&) const { return Words::tr("Details"); }
  QString operator()(const db::Close&) const { return Words::tr("Closeness"); }
  QString operator()(const db::Printed&) const { return Words::tr("Paper printed"); }
  QString operator()(const db::Blanked&) const { return Words::tr("Text erased"); }
  QString operator()(const db::Issued&) const { return Words::tr("Revision"); }
  QString operator()(const db::AttemptBegun&) const { return Words::tr("Quiz"); }
  QString operator()(const db::AttemptSat&) const { return Words::tr("Quiz"); }
  QString operator()(const db::ClockConfirmed&) const { return Words::tr("Clock"); }
  QString operator()(const db::Signature&) const { return Words::tr("Check-out"); }
};

/// Whoever has a field for it: people by the names that the records' structs give them.
struct People {
  const RecordReader& reader;
  std::vector<PersonId>& found;

  void follow(const RecordId& id) const {
    if (const db::Entry* other = reader.record_of(id))
      std::ranges::copy(people_in(*other, reader), std::back_inserter(found));
  }

  template <class T>
  void operator()(const T& r) const {
    if constexpr (std::is_same_v<T, db::OtherHours>) {
      if (!r.person.empty()) found.push_back(r.person);
    } else if constexpr (requires { r.person; }) {
      found.push_back(r.person);
    }
    if constexpr (requires { r.assessor; }) found.push_back(r.assessor);
    if constexpr (std::is_same_v<T, db::Booking>)
      if (!r.second.empty()) found.push_back(r.second);
    if constexpr (requires { r.supervisor; })
      if (!r.supervisor.empty()) found.push_back(r.supervisor);
    if constexpr (requires { r.key_holder; }) found.push_back(r.key_holder);
    if constexpr (requires { r.put_on_by; })
      if (!r.put_on_by.empty()) found.push_back(r.put_on_by);
    if constexpr (requires { r.host; }) found.push_back(r.host);
    if constexpr (requires { r.instructors; })
      found.insert(found.end(), r.instructors.begin(), r.instructors.end());
    if constexpr (requires { r.visit; }) follow(r.visit);
    if constexpr (requires { r.lessons; })
      for (const RecordId& lesson : r.lessons) follow(lesson);
    if constexpr (std::is_same_v<T, db::Close>) found.push_back(r.other);
    if constexpr (requires { r.keep; }) found.insert(found.end(), {r.keep, r.other});
    if constexpr (requires { r.suspension; }) follow(r.suspension);
    if constexpr (requires { r.appointment; }) follow(r.appointment);
    if constexpr (requires { r.booking; }) follow(r.booking);
    if constexpr (requires { r.waiting; }) follow(r.waiting);
    if constexpr (requires { r.started; }) follow(r.started);
    if constexpr (std::is_same_v<T, db::LineMarked> || std::is_same_v<T, db::SheetPutBy>) follow(r.opened);
    if constexpr (requires { r.incidents; })
      for (const RecordId& incident : r.incidents) follow(incident);
    if constexpr (std::is_same_v<T, db::Restriction> || std::is_same_v<T, db::SheetMarks> ||
                  std::is_same_v<T, db::Signature> || std::is_same_v<T, db::ScoredApart> ||
                  std::is_same_v<T, db::Countersigned> || std::is_same_v<T, db::Witnessed>)
      follow(r.checkout);
    if constexpr (std::is_same_v<T, db::StrikeOut>) follow(r.record);
  }
};

template <class Visitor>
auto visit_fact(const db::Entry& entry, Visitor visitor) {
  return std::visit([&](const auto& family) { return std::visit(visitor, family); }, entry.fact);
}

}  // namespace

QString RecordReader::entered_by(const PersonId& id) const {
  return id.empty() ? Words::tr("import", "who entered it") : name_of(id);
}

QString said_words(const std::string& text) {
  return text.empty() ? Words::tr("text erased") : QString::fromStdString(text);
}

QString record_sentence(const db::Entry& entry, const RecordReader& reader) {
  return visit_fact(entry, Sentence{entry, reader});
}

QString alteration_words(db::Alteration kind) {
  switch (kind) {
    case db::Alteration::cutter:
      return Words::tr("another cutterhead, blade or cutter");
    case db::Alteration::guard:
      return Words::tr("another guard");
    case db::Alteration::controls:
      return Words::tr("controls or switches");
    case db::Alteration::moved:
      return Words::tr("moved, or set up anew");
    case db::Alteration::repair:
      return Words::tr("a repair");
    case db::Alteration::other:
      return Words::tr("something else");
  }
  return {};
}

QString role_words(std::optional<db::Role> role) { return role ? role_name(*role) : Words::tr("no role"); }

QString record_kind(const db::Entry& entry) { return visit_fact(entry, Kind{}); }

std::vector<PersonId> people_in(const db::Entry& entry, const RecordReader& reader) {
  std::vector<PersonId> found;
  visit_fact(entry, People{reader, found});
  return found;
}

}  // namespace wm::app
