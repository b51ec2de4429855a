#pragma once
// Fits everyone who waits to what is open, as well as can be: an integer program, solved aim after aim.
#include <functional>

#include "core/match/answer.h"

namespace wm {

/// Asked often, with the best so far, whether to go on with an aim. After a no the next aim has its turn,
/// with what was found so far held fast. The same answers make the same proposal.
using GoOn = std::function<bool(Aim working_on, const Measures& so_far)>;

/// By which part of the time that is given each aim should be done with, so that those below have theirs.
double done_by(Aim aim);

/// Nobody and no unit is in two places, nobody is served twice for one wait, and limits hold. Stopped early,
/// it is the best found, with what is known of how good it could be.
Proposal fit_everyone(const FitQuestion& question, const GoOn& go_on);

}  // namespace wm
