#pragma once
// Telling when two entries may be one person, while the second is being typed.
#include <optional>
#include <span>
#include <vector>

#include "core/time/instant.h"
#include "db/facts.h"

namespace wm::app {

/// What makes two entries look like one person. A birth date is weighed but is no reason to name: it is shown
/// to nobody.
enum class Alike { same_name, similar_name, same_number, same_card, same_phone, same_email };

struct KnownPerson {
  db::Person person;
  std::optional<Day> born;
};

struct LikelyDouble {
  PersonId person;
  std::vector<Alike> alike;
  int weight = 0;  // more is likelier; only for sorting
  friend bool operator==(const LikelyDouble&, const LikelyDouble&) = default;
};

/// Likeliest first. `entered.id`, where there is one, is never its own double.
std::vector<LikelyDouble> likely_doubles(const db::Person& entered, std::optional<Day> born,
                                         std::span<const KnownPerson> known);

}  // namespace wm::app
