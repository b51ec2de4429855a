#pragma once
// A suspension as people read it: a pause, since when, through when, and who can end it.
#include <QStringList>

#include "app/words/reader.h"
#include "core/decide/answers.h"

namespace wm::app {

/// A sentence a pause, and last who can end one; nothing where nothing is paused. `with_reasons` is for
/// instructors and managers only.
QStringList pause_sentences(const StandingAnswer& answer, bool with_reasons, const AnswerReader& reader);

}  // namespace wm::app
