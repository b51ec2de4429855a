#pragma once
// Opens the window on a shop: the one asked for, or the first start's.
#include <string>

namespace wm::app {

struct OpenWith {
  std::string store;  // empty: in the user's data folder
  bool demo = false;
  bool quiz_station = false;  // nothing but the quiz station
};

/// Runs the program; its exit status.
int open_program(int argc, char** argv, const OpenWith& with);

}  // namespace wm::app
