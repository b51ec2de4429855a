#pragma once
// The days by which somebody's birth date could be told: they are shown to nobody.
#include <map>
#include <vector>

#include "core/records/record.h"

namespace wm::app {

class Birthdays {
 public:
  /// Each date that was ever entered for the person, right or wrong.
  void add(const PersonId& person, Day born) { born_[person].push_back(born); }
  /// Whether the person turns some age on that day; born on 29 February: 1 March in common years.
  bool on(const PersonId& person, Day day) const;

 private:
  std::map<PersonId, std::vector<Day>> born_;
};

}  // namespace wm::app
