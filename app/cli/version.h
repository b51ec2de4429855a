#pragma once

namespace wm::app {

inline constexpr const char* version = "0.1.0";

}  // namespace wm::app
