#include "core/time/combine.h"

#include <algorithm>

namespace wm {

namespace {

struct Event {
  Instant at;
  int count;
  int minutes;
};

/// The value before all events is that of what lasts since the beginning.
Steps<bool> swept(std::vector<Event>& events, std::int64_t need_count, std::int64_t need_minutes) {
  std::sort(events.begin(), events.end(), [](const Event& a, const Event& b) { return a.at < b.at; });
  std::int64_t count = 0, minutes = 0;
  const auto holds = [&] { return count >= need_count && minutes >= need_minutes; };
  std::size_t i = 0;
  for (; i < events.size() && events[i].at <= beginning; ++i) {
    count += events[i].count;
    minutes += events[i].minutes;
  }
  Steps<bool> steps(holds());
  while (i < events.size()) {
    const Instant at = events[i].at;
    for (; i < events.size() && events[i].at == at; ++i) {
      count += events[i].count;
      minutes += events[i].minutes;
    }
    steps.set_from(at, holds());
  }
  return steps;
}

}  // namespace

Steps<bool> enough(std::span<const Weighted> parts, std::int64_t count, std::int64_t minutes) {
  std::vector<Event> events;
  events.reserve(parts.size() * 2);
  for (const Weighted& part : parts) {
    if (part.span.empty()) continue;
    events.push_back({part.span.from, 1, part.minutes});
    if (part.span.to < forever) events.push_back({part.span.to, -1, -part.minutes});
  }
  return swept(events, count, minutes);
}

Steps<bool> any_lasting(std::span<const Span> spans) {
  std::vector<Event> events;
  events.reserve(spans.size() * 2);
  for (const Span& span : spans) {
    if (span.empty()) continue;
    events.push_back({span.from, 1, 0});
    if (span.to < forever) events.push_back({span.to, -1, 0});
  }
  return swept(events, 1, 0);
}

Steps<bool> at_least(std::size_t count, std::span<const Steps<bool>> parts) {
  std::vector<Event> events;
  int at_first = 0;
  for (const auto& part : parts) {
    at_first += part.first() ? 1 : 0;
    for (const auto& change : part.changes()) events.push_back({change.at, change.value ? 1 : -1, 0});
  }
  if (at_first > 0) events.push_back({beginning, at_first, 0});
  return swept(events, static_cast<std::int64_t>(count), 0);
}

}  // namespace wm
