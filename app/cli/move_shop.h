#pragma once
// `witnessmark move FROM TO`: no window.
#include <string>

namespace wm::app {

/// Copies a whole shop from one engine to the other, or to another place on the same, and says its root.
/// Returns 0, or 2 where it could not.
int move_shop(const std::string& from, const std::string& to);

}  // namespace wm::app
