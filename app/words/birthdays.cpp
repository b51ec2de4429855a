#include "app/words/birthdays.h"

#include <algorithm>

#include "core/time/period.h"

namespace wm::app {

bool Birthdays::on(const PersonId& person, Day day) const {
  const auto found = born_.find(person);
  if (found == born_.end()) return false;
  const int year = civil(day).year;
  return std::any_of(found->second.begin(), found->second.end(), [&](Day born) {
    const int years = year - civil(born).year;
    return years > 0 && birthday(born, years) == day;
  });
}

}  // namespace wm::app
