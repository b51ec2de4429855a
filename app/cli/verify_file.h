#pragma once
// `witnessmark verify STORE`: no window.
#include <string>
#include <vector>

namespace wm::app {

struct VerifyWords {
  std::string store;
  std::vector<std::string> against;  // short roots, signed lines, or files with signed lines
  bool all = false;
  std::string record;
};

/// Says in sentences what was found and what can't be known. Returns 0 where all is as it must be, 1 where
/// something was found, 2 where it could not look.
int verify_file(const VerifyWords& words);

}  // namespace wm::app
