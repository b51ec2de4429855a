#pragma once
// Why a requirement holds or does not, with the records it rests on.
#include "core/decide/answers.h"
#include "core/decide/engine.h"

namespace wm {

/// The reason for `need` of `person` on target `x` at `t`, its parts included.
Reason reason_for(Standings& standings, const Need& need, NameId person, NameId x, Instant t);

/// The instant, or nothing where it lies beyond the years that the program knows.
std::optional<Instant> within_years(std::optional<Instant> t);

}  // namespace wm
