#pragma once
// How every run sheet opens, whatever the machine and in whatever words.
#include <array>
#include <optional>
#include <string_view>

namespace wm {

/// What is shown before anything else: close dress; eyes and ears protected; where one stands, with the stop
/// within reach; that it is stopped and isolated; and what one does when the power fails and comes back.
enum class SheetOpening { dress, eyes_and_ears, stance, isolation, power };
inline constexpr std::array sheet_openings = {SheetOpening::dress, SheetOpening::eyes_and_ears,
                                              SheetOpening::stance, SheetOpening::isolation,
                                              SheetOpening::power};

/// As it stands in a sheet's text: "eyes and ears".
std::string_view word(SheetOpening opening);
std::optional<SheetOpening> opening_called(std::string_view word);

}  // namespace wm
