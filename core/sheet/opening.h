#pragma once
// How every run sheet opens, whatever the machine and in whatever words.
#include <array>
#include <optional>
#include <string_view>

namespace wm {

/// What is shown before anything else: close dress; eyes and ears protected; where one stands, with the stop
/// within reach; that it is stopped and isolated; and what one does when the power fails and comes back.
enum class Opening { dress, eyes_and_ears, stance, isolation, power };
inline constexpr std::array openings = {Opening::dress, Opening::eyes_and_ears, Opening::stance,
                                        Opening::isolation, Opening::power};

/// As it stands in a sheet's text: "eyes and ears".
std::string_view word(Opening opening);
std::optional<Opening> opening_called(std::string_view word);

}  // namespace wm
