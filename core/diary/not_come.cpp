#include "core/diary/not_come.h"

#include <algorithm>

namespace wm {

std::optional<Day> rests_through(const NotComeRule& rule, std::vector<Day> not_come) {
  std::sort(not_come.begin(), not_come.end());
  std::optional<Day> last;
  const auto most = static_cast<std::size_t>(rule.most);
  for (std::size_t i = most - 1; i < not_come.size(); ++i)
    if (not_come[i].number - not_come[i + 1 - most].number < rule.in_days)
      last = not_come[i] + rule.rest_days;
  return last;
}

}  // namespace wm
