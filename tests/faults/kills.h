#pragma once
// Two programs enter a mixed load into one store, on a real disk, and are killed at random moments.
#include <cstdint>
#include <string>
#include <vector>

namespace wm::faults {

struct KillResult {
  std::int64_t kills = 0, acknowledged = 0, in_flight = 0, checks = 0;
  std::vector<std::string> broken;
};

/// In a folder that is made and removed again.
KillResult run_kills(std::int64_t kills, std::uint64_t seed);

}  // namespace wm::faults
