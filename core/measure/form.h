#pragma once
// Lengths inside of JSON: texts that name their unit.
#include <optional>

#include "core/json/reading.h"
#include "core/measure/length.h"

namespace wm {

std::string written(const Inches& length);

namespace forms {

/// "1 3/8 in", "25.2 mm": no one cares in which unit it was written.
std::optional<Inches> in_inches(json::Reading& reading, json::Value value);
/// The same, above zero.
std::optional<Inches> some_inches(json::Reading& reading, json::Value value);

}  // namespace forms
}  // namespace wm
