#pragma once
// `witnessmark export STORE --person WHO [--json FILE] [--pdf FILE]`: no window.
#include <string>

namespace wm::app {

struct ExportWords {
  std::string store, person, json, pdf;  // a file each; empty: not wanted
  bool replace = false;                  // files that are there already
};

/// Says what was written and returns 0; or says on standard error what stood in the way, and returns 2.
int export_file(const ExportWords& words);

}  // namespace wm::app
