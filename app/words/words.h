#pragma once
// Answers as translatable sentences, by the shop's word list: nothing here works an answer out.
#include <QString>
#include <QStringList>
#include <functional>
#include <optional>
#include <vector>

#include "core/decide/answers.h"
#include "core/time/zone.h"
#include "db/facts.h"

namespace wm::app {

/// "without a supervisor", "only with a supervisor", "not yet".
QString standing_words(Rung rung);
/// Where there is no room: "unsupervised", "supervised", "no".
QString standing_cell(Rung rung);
/// "Jointer/planer, jointing" from "jointer-planer/jointing".
QString target_label(const TargetName& target);
QString class_label(std::string_view machine_class);
/// "Jonas Lindqvist", or the number where the details have been blanked.
QString person_name(const std::optional<db::Person>& person);

/// The last whole day covered before `instant`: "28 August 2026"; the year left out where it is `today`'s.
QString last_day(Instant instant, const Zone& zone, Instant today);
/// "Wednesday 25 November 2026"
QString long_day(Instant t, const Zone& zone);
QString short_day(Instant t, const Zone& zone);
/// "17:30" or "5:30 PM", as the locale has it.
QString clock_time(Instant t, const Zone& zone);

/// "Kim may use the planer without a supervisor, through 28 August, while staff are in and one other person
/// is present." `suspended` reads as paused.
QString standing_sentence(const QString& called, const TargetName& target, const StandingAnswer& answer,
                          const std::vector<Condition>& conditions, const QStringList& restrictions,
                          const Zone& zone, Instant now);

/// Whether the day on which the standing next changes is the person's birthday: then it is said to nobody.
bool until_shows_birthday(const StandingAnswer& answer);

/// One line for a requirement: what it is, and the quiet line under it.
struct NeedLine {
  bool holds = false;
  QString what;
  QString detail;
  int depth = 0;
};
/// A gate as lines, the parts of any_of and the like indented below it.
/// `name_of` turns a person's id into a name; `record_of` finds an entry by its id (or gives nothing).
std::vector<NeedLine> need_lines(const GateAnswer& gate,
                                 const std::function<const db::Entry*(const RecordId&)>& record_of,
                                 const std::function<QString(const PersonId&)>& name_of, const Zone& zone,
                                 Instant now);

/// One sentence of a Problem: what is wrong, and what to do.
QString problem_sentence(const Problem& problem);
QString hindrance_sentence(Hindrance hindrance, const QString& called);
/// "This records permission; it does not make the machine safe. …": on every page and paper that answers.
QString caution();

}  // namespace wm::app
