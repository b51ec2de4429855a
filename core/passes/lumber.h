#pragma once
// What softwood lumber really measures: nominal sizes and the least dressed sizes of PS 20, the American
// Softwood Lumber Standard.
#include <optional>

#include "core/measure/length.h"

namespace wm {

/// Dry: a moisture content of 19 % or less.
enum class Seasoning { dry, unseasoned };

/// Thickness by its nominal: boards under 2 in, dimension from 2 in to under 5 in, timbers from 5 in on. None
/// where the standard has no such size.
std::optional<Inches> dressed_thickness(const Inches& nominal, Seasoning seasoning);
/// Width of boards and dimension by its nominal, from 2 in to 16 in.
std::optional<Inches> dressed_width(const Inches& nominal, Seasoning seasoning);

}  // namespace wm
