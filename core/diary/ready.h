#pragma once
// Whether a check-out would be the last thing that is missing, as a decider answers.
#include <vector>

#include "core/decide/decider.h"
#include "core/diary/slots.h"

namespace wm {

/// At least `supervised`, and every gate would be met once each check-out in it is taken as passed.
bool ready_for_checkout(const StandingAnswer& answer);
/// What is missing for `supervised`, and where it is for a check-out what would still be missing once every
/// check-out is taken as passed. Of all_of the parts that are missing, of any_of and some_of the whole, with
/// the parts that are missing.
std::vector<Reason> missing_for(const StandingAnswer& answer, bool for_checkout);

/// Fills in what a question leaves to the rules (`ready`, `able`, `in_service`), on a check-out for `target`.
/// A slot is asked about at its beginning and at its last second, since the check-out is signed when it is
/// over. Keeps a reference to `decider`, and remembers its answers as long as the question lives.
void ask_decider(SlotQuestion& question, Decider& decider, const TargetName& target);

}  // namespace wm
