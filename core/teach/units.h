#pragma once
// The units of answers, and the words and signs that people write for them.
#include <optional>
#include <string_view>

#include "core/measure/length.h"
#include "core/teach/measure.h"

namespace wm::teach {

/// The unit as it is written out: "in", "degrees"; empty for none.
std::string_view word(Unit unit);
std::optional<LengthUnit> length_unit(Unit unit);
Unit unit_of(LengthUnit length);

struct OtherUnit {
  std::string_view word;
  Unit unit;
};
/// What is written for units that are no lengths'.
inline constexpr OtherUnit other_units[] = {
    {"degrees", Unit::degree}, {"degree", Unit::degree},  {"deg", Unit::degree},
    {"°", Unit::degree},       {"%", Unit::percent},      {"percent", Unit::percent},
    {"seconds", Unit::second}, {"second", Unit::second},  {"sec", Unit::second},
    {"s", Unit::second},       {"minutes", Unit::minute}, {"minute", Unit::minute},
    {"min", Unit::minute},     {"hours", Unit::hour},     {"hour", Unit::hour},
    {"h", Unit::hour},         {"rpm", Unit::rpm},
};

/// What stands before the word at the text's end, in whatever case and with or without a full stop; nothing
/// where the word isn't there.
std::optional<std::string_view> without_word(std::string_view text, std::string_view word);

}  // namespace wm::teach
