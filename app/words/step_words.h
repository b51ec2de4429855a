#pragma once
// A step of a route, as what somebody at the desk can arrange.
#include <QString>

#include "app/words/reader.h"

namespace wm::app {

/// "the check-out “Bandsaw”, for instance with Mara Devlin"
QString step_words(const Fact& step, const AnswerReader& reader);
/// Whose word the step needs: an assessor, a supervisor; empty where nobody's.
PersonId witness_of(const Fact& step);

}  // namespace wm::app
