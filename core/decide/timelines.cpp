#include "core/decide/timelines.h"

#include <algorithm>

namespace wm {

namespace {

Rung rung_of(std::int64_t packed) { return static_cast<Rung>(packed & 3); }
std::int64_t packed(Instant at, Rung rung) { return at.seconds * 4 + static_cast<std::int64_t>(rung); }
Instant at_of(std::int64_t packed) { return {packed >> 2}; }

struct Slice {
  Rung first;
  std::span<const std::int64_t> changes;

  Slice(const Timelines::Row& row, std::size_t target) : first(static_cast<Rung>(row.ends[target] & 3)) {
    const std::size_t begin = target == 0 ? 0 : row.ends[target - 1] >> 2;
    changes = std::span(row.changes).subspan(begin, (row.ends[target] >> 2) - begin);
  }
  Rung at(Instant t) const {
    const auto after = std::upper_bound(changes.begin(), changes.end(), t.seconds * 4 + 3);
    return after == changes.begin() ? first : rung_of(*(after - 1));
  }
};

}  // namespace

Timelines::Timelines(std::vector<NameId> targets) : targets_(std::move(targets)) {
  for (std::uint32_t i = 0; i < targets_.size(); ++i) {
    if (targets_[i] >= places_.size()) places_.resize(targets_[i] + 1, none);
    places_[targets_[i]] = i;
  }
}

Rung Timelines::at(NameId person, NameId target, Instant t) const {
  return Slice(*rows_[person], places_[target]).at(t);
}

Steps<Rung> Timelines::steps(NameId person, NameId target) const {
  return steps(*rows_[person], places_[target]);
}

Steps<Rung> Timelines::steps(const Row& row, std::size_t target) {
  const Slice slice(row, target);
  Steps<Rung> steps(slice.first);
  for (const std::int64_t change : slice.changes) steps.set_from(at_of(change), rung_of(change));
  return steps;
}

void Timelines::add(Row& row, const Steps<Rung>& steps) {
  for (const auto& change : steps.changes()) row.changes.push_back(packed(change.at, change.value));
  row.ends.push_back(static_cast<std::uint32_t>(row.changes.size()) << 2 |
                     static_cast<std::uint32_t>(steps.first()));
}

void Timelines::add(Row& row, const Row& other, std::size_t target) {
  const Slice slice(other, target);
  row.changes.insert(row.changes.end(), slice.changes.begin(), slice.changes.end());
  row.ends.push_back(static_cast<std::uint32_t>(row.changes.size()) << 2 |
                     static_cast<std::uint32_t>(slice.first));
}

Rung Timelines::at(const Row& row, std::size_t target, Instant t) { return Slice(row, target).at(t); }

void Timelines::all_at(const Row& row, Instant t, std::vector<Rung>& rungs) {
  const std::int64_t* const changes = row.changes.data();
  const std::int64_t last = t.seconds * 4 + 3;
  std::size_t begin = 0;
  for (const std::uint32_t end_and_first : row.ends) {
    // From the end: most of what is asked about lies after most of what happened.
    std::size_t at = end_and_first >> 2;
    const std::size_t end = at;
    while (at > begin && changes[at - 1] > last) --at;
    rungs.push_back(at == begin ? static_cast<Rung>(end_and_first & 3) : rung_of(changes[at - 1]));
    begin = end;
  }
}

Span Timelines::difference(const Row& a, const Row& b, std::size_t target) const {
  const Slice in_a(a, target), in_b(b, target);
  Span span{forever, beginning};
  if (in_a.first != in_b.first) span.from = beginning;
  bool differs = in_a.first != in_b.first;
  for (std::size_t i = 0, j = 0; i < in_a.changes.size() || j < in_b.changes.size();) {
    Instant at = forever;
    if (i < in_a.changes.size()) at = std::min(at, at_of(in_a.changes[i]));
    if (j < in_b.changes.size()) at = std::min(at, at_of(in_b.changes[j]));
    if (i < in_a.changes.size() && at_of(in_a.changes[i]) == at) ++i;
    if (j < in_b.changes.size() && at_of(in_b.changes[j]) == at) ++j;
    const Rung now_a = i == 0 ? in_a.first : rung_of(in_a.changes[i - 1]);
    const Rung now_b = j == 0 ? in_b.first : rung_of(in_b.changes[j - 1]);
    if (differs == (now_a != now_b)) continue;
    differs = !differs;
    if (differs) {
      span.from = std::min(span.from, at);
    } else {
      span.to = at;
    }
  }
  if (differs) span.to = forever;
  return span;
}

std::unique_ptr<Timelines::Row> Timelines::keep(NameId person, std::unique_ptr<Row> row) {
  if (person >= rows_.size()) rows_.resize(person + 1);
  std::swap(rows_[person], row);
  return row;
}

std::size_t Timelines::bytes() const {
  std::size_t bytes = 0;
  for (const auto& row : rows_)
    if (row) bytes += sizeof *row + row->ends.capacity() * 4 + row->changes.capacity() * 8;
  return bytes;
}

}  // namespace wm
