#pragma once
// What is tried under every fault: opening and making a store, each command, imports, a whole evening.
#include <functional>
#include <memory>
#include <string>

#include "disk.h"
#include "state.h"

namespace wm::faults {

/// The shop's clock stands still within a step.
struct Bench {
  std::string path;  // of the store, on the disk
  Instant now;
  std::optional<db::Store> store;

  Expected<void> open();
  Expected<void> create();
};

/// Something done in steps; each is acknowledged or refused on its own, and may be done again.
struct Work {
  std::string name;
  Files start = {};
  bool opens = false;     // the first step is opening the store, or making it
  bool opened = true;     // whether the store is open before the first step
  bool in_doubt = false;  // may be refused and be there after any fault, and says so
  int log_pages = 0;      // the log is moved into the file after so many; 0: SQLite's own
  int memory_pages = 0;   // the connection keeps so many pages at most; 0: SQLite's own
  std::vector<std::function<Expected<void>(Bench&)>> steps = {};
  /// What else must hold afterwards, given whether the last step was acknowledged; empty, or what is wrong.
  std::function<std::string(const std::string& file, bool acknowledged)> also = {};
  std::vector<State> states = {};  // before the first step, and after each
};

/// All there is. Uses the disk to prepare them. Stops the program where anything does not work without a
/// fault, or an alternative of a command is not among them.
std::vector<Work> all_work(Disk& disk, const std::string& path);
/// One step by number, with the clock and the random numbers that it always has.
Expected<void> step(const Work& work, std::size_t number, Bench& bench);

}  // namespace wm::faults
