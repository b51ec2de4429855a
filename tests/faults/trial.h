#pragma once
// One trial: a piece of work, one fault in it, and what must hold afterwards.
#include "work.h"

namespace wm::faults {

/// What is done once the fault has come.
enum class After {
  goes_on,  // the program tries again; then the power is cut
  reopens   // the program ends; the file is opened anew
};

struct Broken {
  std::string what;  // "lost", "half done", "does not open" …
  std::string detail;
};

struct Trial {
  bool came = false;      // the fault has been met: there may be a later point
  bool in_doubt = false;  // refused, and yet there: allowed where the disk fails on, or the power is cut
  std::vector<Broken> broken;
};

Trial run_trial(Disk& disk, const std::string& path, const Work& work, const Trouble& trouble, After after);

}  // namespace wm::faults
