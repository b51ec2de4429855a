#include "core/time/times.h"

#include <vector>

namespace wm {

namespace {

/// Most come in order, since what they are made of does.
void put_in_order(Edges& edges) {
  const auto earlier = [](const Edge& a, const Edge& b) { return a.at < b.at; };
  if (!std::is_sorted(edges.begin(), edges.end(), earlier)) std::sort(edges.begin(), edges.end(), earlier);
}

/// What begins at the beginning or before has always been there; what ends is taken away again.
Times swept(Edges& begins, Edges& ends, std::int64_t need_count, std::int64_t need_minutes) {
  put_in_order(begins);
  put_in_order(ends);
  std::int64_t count = 0, minutes = 0;
  std::size_t i = 0, j = 0;
  const auto pass = [&](Instant at) {
    for (; i < begins.size() && begins[i].at <= at; ++i) {
      count += begins[i].count;
      minutes += begins[i].minutes;
    }
    for (; j < ends.size() && ends[j].at <= at; ++j) {
      count -= ends[j].count;
      minutes -= ends[j].minutes;
    }
    return count >= need_count && minutes >= need_minutes;
  };
  Times times(pass(beginning));
  while (i < begins.size() || j < ends.size()) {
    const bool begin_first = j == ends.size() || (i < begins.size() && begins[i].at <= ends[j].at);
    const Instant at = begin_first ? begins[i].at : ends[j].at;
    times.set_from(at, pass(at));
  }
  return times;
}

}  // namespace

Times enough(std::span<const Weighted> parts, std::int64_t count, std::int64_t minutes) {
  Edges begins, ends;
  for (const Weighted& part : parts) {
    if (part.span.empty()) continue;
    begins.push_back({part.span.from, 1, part.minutes});
    if (part.span.to < forever) ends.push_back({part.span.to, 1, part.minutes});
  }
  return swept(begins, ends, count, minutes);
}

Times any_lasting(std::span<const Span> spans) {
  if (spans.empty()) return Times(false);
  std::vector<Span> in_order(spans.begin(), spans.end());
  std::sort(in_order.begin(), in_order.end(), [](const Span& a, const Span& b) { return a.from < b.from; });
  Times times(false);
  for (const Span& span : in_order) times.add(span);
  return times;
}

void Tally::add(const Times& part) {
  if (part.flips().empty()) {
    ++(part.first() ? always_ : never_);
    return;
  }
  bool value = part.first();
  if (value) begins_.push_back({beginning, 1, 0});
  for (const Instant flip : part.flips()) {
    value = !value;
    (value ? begins_ : ends_).push_back({flip, 1, 0});
  }
}

Times Tally::at_least(std::size_t count) {
  return swept(begins_, ends_, static_cast<std::int64_t>(count) - static_cast<std::int64_t>(always_), 0);
}

Times at_least(std::size_t count, std::span<const Times> parts) {
  Tally tally;
  for (const Times& part : parts) tally.add(part);
  return tally.at_least(count);
}

Times both(const Times& a, const Times& b) {
  Times times(a.first() && b.first());
  for_each_flip(a, b, [&](Instant at, bool va, bool vb) { times.set_from(at, va && vb); });
  return times;
}

Times either(const Times& a, const Times& b) {
  Times times(a.first() || b.first());
  for_each_flip(a, b, [&](Instant at, bool va, bool vb) { times.set_from(at, va || vb); });
  return times;
}

void meet(Times& times, const Times& other) {
  if (other.always() || times.never()) return;
  if (times.always() || other.never()) {
    times = other;
  } else {
    times = both(times, other);
  }
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
