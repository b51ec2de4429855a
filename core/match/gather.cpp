#include "core/match/gather.h"

namespace wm {
namespace {

/// The first second at which somebody is ready no more, where they are at `from` and not at `to`.
std::optional<Instant> lapse(const SlotQuestion& asked, Instant from, Instant to) {
  const auto ready = [&](Instant t) { return asked.ready({t, t + 1}); };
  if (to <= from || !ready(from) || ready(to)) return std::nullopt;
  std::int64_t still = from.seconds, no_more = to.seconds;
  while (no_more - still > 1) {
    const std::int64_t middle = still + (no_more - still) / 2;
    (ready({middle}) ? still : no_more) = middle;
  }
  return Instant{no_more};
}

}  // namespace

Gathering::Gathering(FitQuestion whole, Instant now) : whole_(std::move(whole)), now_(now) {}

OpeningIndex Gathering::index(const Slot& slot) {
  const auto next = static_cast<OpeningIndex>(whole_.openings.size());
  const auto [place, fresh] = openings_.emplace(
      std::tuple(slot.when.from, slot.when.to, slot.assessor, slot.second, slot.unit), next);
  if (fresh) whole_.openings.push_back({slot.when, slot.assessor, slot.unit, slot.second});
  return place->second;
}

void Gathering::add(const SlotQuestion& asked, const TargetName& target, int days) {
  Waiter waiter{asked.person, target, days, lapse(asked, now_, whole_.next_week), {}};
  for (const Slot& slot : fitting_units(asked)) waiter.fits.push_back(index(slot));
  whole_.waiters.push_back(std::move(waiter));
}

}  // namespace wm
