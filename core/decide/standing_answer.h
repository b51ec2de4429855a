#pragma once
// The whole answer about a standing, put together from what the engine says.
#include "core/decide/answers.h"
#include "core/decide/engine.h"

namespace wm {

/// The standing of `person` on x at `t`, whose standing over all time is `steps`.
StandingAnswer standing_answer(Standings& standings, const Steps<Rung>& steps, NameId person, NameId x,
                               Instant t);

struct LastingAnswer {
  StandingAnswer answer;
  Span same;  // around t: between these instants the answer stays the same to the letter
};
/// The same, and how long it lasts.
LastingAnswer lasting_answer(Standings& standings, const Steps<Rung>& steps, NameId person, NameId x,
                             Instant t);

}  // namespace wm
