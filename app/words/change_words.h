#pragma once
// What differs, as sentences: falls over time, what rests on a record, what another rulebook or a new record
// changes.
#include <QString>
#include <QStringList>
#include <vector>

#include "app/words/reader.h"
#include "core/decide/changes.h"
#include "core/decide/current.h"

namespace wm::app {

/// "Kim Aoki's standing on the planer falls from “without a supervisor” to “only with a supervisor” on 3
/// December."
QString drop_sentence(const Drop& drop, const AnswerReader& reader);

/// What is imagined: that a record were struck out, that a rulebook were in force.
enum class Were { struck_out, in_force };
/// "Were it struck out, Kim Aoki's standing on the planer would fall from … to …."
QString standing_change_sentence(const StandingChange& change, Were were, const AnswerReader& reader);
/// One sentence a change, or that nothing would change.
QStringList standing_change_sentences(const std::vector<StandingChange>& changes, Were were,
                                      const AnswerReader& reader);

/// "Kim Aoki's standing on the planer is another from 3 December on." Days that tell a birthday are left out.
QString shift_sentence(const Shift& shift, const AnswerReader& reader);
/// One sentence a shift, or that nothing changes.
QStringList shift_sentences(const std::vector<Shift>& shifts, const AnswerReader& reader);

/// A timeline as one sentence: "Not yet; from 2 March 2024 on only with a supervisor; from … ."
QString timeline_sentence(const std::vector<TimelineStep>& steps, const AnswerReader& reader);

}  // namespace wm::app
