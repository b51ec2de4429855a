#pragma once
// `witnessmark export STORE --person WHO --json FILE`: no window.
#include <string>

namespace wm::app {

struct ExportWords {
  std::string store, person, json;
  bool replace = false;  // a file that is there already
};

/// Says what was written and returns 0; or says on standard error what stood in the way, and returns 2.
int export_file(const ExportWords& words);

}  // namespace wm::app
