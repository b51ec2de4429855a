#pragma once
// Lengths and angles inside of JSON: texts that name their unit.
#include <optional>

#include "core/json/reading.h"
#include "core/measure/length.h"

namespace wm {

std::string written(const Length& length);
std::string written(const Inches& length);
std::string written(const Degrees& angle);

namespace forms {

/// "1 3/8 in", "25.2 mm".
std::optional<Length> length(json::Reading& reading, json::Value value);
/// The same, above zero.
std::optional<Length> some_length(json::Reading& reading, json::Value value);
/// The same where no one cares in which unit it was written.
std::optional<Inches> in_inches(json::Reading& reading, json::Value value);
std::optional<Inches> some_inches(json::Reading& reading, json::Value value);
/// "90 deg".
std::optional<Degrees> degrees(json::Reading& reading, json::Value value);
std::optional<Degrees> some_degrees(json::Reading& reading, json::Value value);

}  // namespace forms
}  // namespace wm
