#pragma once
// Why a standing is what it is, as sentences: what it rests on, what is missing, what stands in the way.
#include <QStringList>

#include "app/words/reader.h"
#include "core/decide/answers.h"

namespace wm::app {

/// "Still needed: the check-out “Bandsaw” (not passed on 15 August)."
QString gate_sentence(const GateAnswer& gate, const AnswerReader& reader);

/// Why `answer` is the standing on `target`. What is missing for the next rung first, then what holds it
/// where it is.
QStringList why_sentences(const TargetName& target, const StandingAnswer& answer, bool with_reasons,
                          const AnswerReader& reader);

}  // namespace wm::app
