#pragma once
// World W: an invented shop of some size and ten years of its life, on which everything else here is
// measured. The same size and seed always make the same records, on any machine: no distribution of the
// standard library is used, since those are left to each library.
#include <cstdint>
#include <string>
#include <vector>

#include "core/records/shop.h"

namespace wm::bench {

/// How large a world is. Four tiers share the targets equally; from five targets a tier on, three of them are
/// the modes of one class.
struct WorldSize {
  int people = 5000;
  int machines = 400;
  int targets = 60;  // a multiple of 4, at most 60
  int assessors = 60;
  int records = 1'000'000;
  /// W with people, machines, assessors and records cut down to that part, all targets kept. 0 < part <= 1.
  static WorldSize part_of(double part);
};

/// One target with what its rules name.
struct WorldTarget {
  TargetName name;
  std::string machine_class, mode;  // mode: "" where the class is the target
  int tier = 1;                     // 1 to 4
  int column = 0;                   // its place in the tier; a target builds on the one below in its column
  std::string family;               // shares one quiz with the family's other targets of its tier
};

/// The targets, tier after tier, each in order of column.
std::vector<WorldTarget> world_targets(int count);
std::string quiz_of(const WorldTarget& target);
std::string intro_of(const WorldTarget& target);
std::string safety_of(int tier);

/// How long a check-out of that tier is good in the last rulebook, without its grace; in months.
int checkout_months(int tier);

/// Three versions, each with eight gates on every target, from 2016, mid-2019 and 2023.
std::vector<Rulebook> world_rulebooks(const std::vector<WorldTarget>& targets, const Zone& zone);
/// The last one with one gate made stricter: what somebody at the desk would try out.
Rulebook edited(const Rulebook& rulebook);

struct World {
  WorldSize size;
  Shop shop;
  Instant now;  // an evening at the end of the tenth year
  std::vector<WorldTarget> targets;
};

/// Fails by abort where the size leaves no room for what happens besides uses.
World make_world(const WorldSize& size, std::uint64_t seed = 1);

}  // namespace wm::bench
