#pragma once
// Whether a check-out would be the last thing that is missing, as a decider answers.
#include <string>
#include <vector>

#include "core/decide/decider.h"
#include "core/diary/slots.h"

namespace wm {

/// The ids of the gates that a passed check-out would leave unmet: those that do not hold although every
/// check-out in them is taken as passed.
std::vector<std::string> unmet_but_for_checkout(const StandingAnswer& answer);
/// At least `supervised`, and no such gate.
bool ready_for_checkout(const StandingAnswer& answer);

/// Fills in what a question leaves to the rules (`ready`, `able`, `in_service`), on a check-out for `target`.
/// A slot is asked about at its beginning and at its last second, since the check-out is signed when it is
/// over. Keeps a reference to `decider`, and remembers its answers as long as the question lives.
void ask_decider(SlotQuestion& question, Decider& decider, const TargetName& target);

}  // namespace wm
