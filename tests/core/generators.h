#pragma once
// Random records and rulebooks, with names in many scripts: whatever a file may hold.
#include <rapidcheck.h>

#include <string>
#include <vector>

#include "core/records/record.h"
#include "core/rulebook/rulebook.h"

namespace wm::gen {

/// UTF-8 text of up to a few characters out of every plane, what JSON escapes among them.
rc::Gen<std::string> text();
rc::Gen<Instant> instant();
rc::Gen<Day> day();
rc::Gen<Period> period();

/// A record of any kind, of the right form; what it names is made up.
rc::Gen<Record> record();
/// A rulebook without a mistake: names defined, none twice, no circle.
rc::Gen<Rulebook> rulebook();

}  // namespace wm::gen
