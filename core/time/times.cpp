#include "core/time/times.h"

#include <vector>

namespace wm {

namespace {

struct Event {
  Instant at;
  int count;
  int minutes;
};

/// What was there before all events is what lasts since the beginning.
Times swept(std::vector<Event>& events, std::int64_t need_count, std::int64_t need_minutes) {
  std::sort(events.begin(), events.end(), [](const Event& a, const Event& b) { return a.at < b.at; });
  std::int64_t count = 0, minutes = 0;
  const auto holds = [&] { return count >= need_count && minutes >= need_minutes; };
  std::size_t i = 0;
  for (; i < events.size() && events[i].at <= beginning; ++i) {
    count += events[i].count;
    minutes += events[i].minutes;
  }
  Times times(holds());
  while (i < events.size()) {
    const Instant at = events[i].at;
    for (; i < events.size() && events[i].at == at; ++i) {
      count += events[i].count;
      minutes += events[i].minutes;
    }
    times.set_from(at, holds());
  }
  return times;
}

}  // namespace

Times enough(std::span<const Weighted> parts, std::int64_t count, std::int64_t minutes) {
  std::vector<Event> events;
  events.reserve(parts.size() * 2);
  for (const Weighted& part : parts) {
    if (part.span.empty()) continue;
    events.push_back({part.span.from, 1, part.minutes});
    if (part.span.to < forever) events.push_back({part.span.to, -1, -part.minutes});
  }
  return swept(events, count, minutes);
}

Times any_lasting(std::span<const Span> spans) {
  if (spans.empty()) return Times(false);
  std::vector<Span> in_order(spans.begin(), spans.end());
  std::sort(in_order.begin(), in_order.end(), [](const Span& a, const Span& b) { return a.from < b.from; });
  Times times(false);
  for (const Span& span : in_order) times.add(span);
  return times;
}

Times at_least(std::size_t count, std::span<const Times> parts) {
  std::vector<Event> events;
  int at_first = 0;
  for (const Times& part : parts) {
    bool value = part.first();
    at_first += value ? 1 : 0;
    for (const Instant flip : part.flips()) {
      value = !value;
      events.push_back({flip, value ? 1 : -1, 0});
    }
  }
  if (at_first > 0) events.push_back({beginning, at_first, 0});
  return swept(events, static_cast<std::int64_t>(count), 0);
}

Times both(const Times& a, const Times& b) {
  Times times(a.first() && b.first());
  for_each_flip(a, b, [&](Instant at, bool va, bool vb) { times.set_from(at, va && vb); });
  return times;
}

Times opposite(const Times& times) {
  Times other(!times.first());
  bool value = other.first();
  for (const Instant flip : times.flips()) other.set_from(flip, value = !value);
  return other;
}

void append_during(Times& whole, const Times& inner, Span span) {
  if (span.empty()) return;
  whole.set_from(span.from, inner.at(span.from));
  bool value = inner.first();
  for (const Instant flip : inner.flips()) {
    value = !value;
    if (flip > span.from && flip < span.to) whole.set_from(flip, value);
  }
  if (span.to < forever) whole.set_from(span.to, false);
}

}  // namespace wm
