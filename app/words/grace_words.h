#pragma once
// How long a gate that holds goes on holding: when it is due, through when it counts all the same.
#include <QString>
#include <QStringList>

#include "app/words/reader.h"
#include "core/decide/answers.h"

namespace wm::app {

/// "due since 12 October, still counts through 9 December"; "due by 23 January 2027, counts through 6
/// February 2027"; "counts through 9 December for people who were here before". Empty where the gate does not
/// hold, or is not due before it ends.
QString grace_words(const GateAnswer& gate, const AnswerReader& reader);

/// What there is of a gate, and when it is due.
QString gate_detail(const GateAnswer& gate, const AnswerReader& reader);

/// A sentence about each gate that keeps the standing and is due: "To be renewed: the paper “Induction”, due
/// since …."
QStringList due_sentences(const StandingAnswer& answer, const AnswerReader& reader);
/// The one that keeps the standing and falls due first, or nothing.
QString next_due_sentence(const StandingAnswer& answer, const AnswerReader& reader);

}  // namespace wm::app
