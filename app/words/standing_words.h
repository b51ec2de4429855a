#pragma once
// A standing as people read it: its rungs, the sentence that is largest on the Desk, since when, what then.
#include <QString>
#include <QStringList>
#include <vector>

#include "app/words/reader.h"
#include "core/decide/answers.h"

namespace wm::app {

/// "without a supervisor", "only with a supervisor", "not yet".
QString standing_words(Rung rung);
/// Where there is no room: "unsupervised", "supervised", "no".
QString standing_cell(Rung rung);
/// "Restricted: no dado; with an interpreter.", or nothing; and without a stop, after other words in a cell.
QString restricted_sentence(const QStringList& restrictions);
QString restricted_words(const QStringList& restrictions);
/// The rung above, or the highest.
Rung rung_above(Rung rung);
/// What a rule asks for: "at least with a supervisor", "without a supervisor".
QString asked_standing_words(Rung at_least);

/// Through when the standing lasts, where it ends and that may be shown; nothing otherwise.
std::optional<Instant> shown_end(const StandingAnswer& answer, const AnswerReader& reader);

/// "Kim may use the planer without a supervisor, through 28 August, while staff are in and one other person
/// is present." Suspended reads as paused, and sends to the manager. What is restricted is said in any case.
QString standing_sentence(const TargetName& target, const StandingAnswer& answer,
                          const std::vector<Condition>& conditions, const QStringList& restrictions,
                          const AnswerReader& reader);
/// "That has been so since 2 March 2024.", or nothing where it always was or the day is shown to nobody.
QString since_sentence(const StandingAnswer& answer, const AnswerReader& reader);
/// "From 29 August on only with a supervisor.", or nothing.
QString next_sentence(const StandingAnswer& answer, const AnswerReader& reader);

}  // namespace wm::app
