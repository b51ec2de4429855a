#pragma once
// `witnessmark retention STORE`: no window.
#include <string>

namespace wm::app {

/// Says whose details may be erased by now, and why. Returns 0, or 2 where it could not look.
int retention_file(const std::string& store);

}  // namespace wm::app
