#include "db/backup/keep.h"

#include <set>
#include <string>

#include "core/time/text.h"

namespace wm::db {
namespace {

/// Day 0, 1 January 1970, was a Thursday.
int week_of(Day day) { return (day.number + 3 - ((day.number + 3) % 7 + 7) % 7) / 7; }
std::string month_of(Day day) { return to_text(day).substr(0, 7); }

/// Whether this is the first of its kind, while there is room for one more.
template <class T>
bool takes(std::set<T>& taken, const T& one, std::size_t most) {
  return taken.size() < most && taken.insert(one).second;
}

}  // namespace

std::vector<bool> backups_to_keep(const std::vector<Instant>& latest_first, const Zone& zone) {
  std::set<int> days, weeks;
  std::set<std::string> months;
  std::vector<bool> keep;
  for (const Instant made : latest_first) {
    const Day day = zone.day(made);
    const bool daily = takes(days, day.number, 7);
    const bool weekly = takes(weeks, week_of(day), 5);
    const bool monthly = takes(months, month_of(day), 12);
    keep.push_back(daily || weekly || monthly);
  }
  return keep;
}

}  // namespace wm::db
