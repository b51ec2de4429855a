#include "core/match/why.h"

#include <algorithm>
#include <map>
#include <set>

namespace wm {
namespace {

/// Each target's openings: what fits anybody who waits for it.
std::map<TargetName, std::set<OpeningIndex>> openings_of_targets(const FitQuestion& question) {
  std::map<TargetName, std::set<OpeningIndex>> out;
  for (const Waiter& each : question.waiters) out[each.target].insert(each.fits.begin(), each.fits.end());
  return out;
}

class Why {
 public:
  Why(const FitQuestion& question, const std::vector<Placed>& placed)
      : q_(question), placed_(placed), of_target_(openings_of_targets(question)) {}

  WhyLeftOut of(std::size_t waiter) const {
    const Waiter& who = q_.waiters[waiter];
    const std::set<OpeningIndex>& all = of_target_.at(who.target);
    if (all.empty()) return NoOpening{};
    // Nobody is their own assessor.
    const bool some = std::any_of(who.fits.begin(), who.fits.end(),
                                  [&](OpeningIndex each) { return !q_.openings[each].assesses(who.person); });
    if (some) return taken(waiter);
    Instant first_over = last_instant;
    for (const OpeningIndex each : all) first_over = std::min(first_over, q_.openings[each].when.to);
    if (who.lapses && *who.lapses < first_over) return NothingBefore{*who.lapses, first_over};
    return NoneFits{all.size()};
  }

 private:
  AllTaken taken(std::size_t waiter) const {
    const Waiter& who = q_.waiters[waiter];
    AllTaken out;
    std::set<std::size_t> in_the_way;
    for (const OpeningIndex each : who.fits) {
      if (q_.openings[each].assesses(who.person)) continue;
      ++out.openings;
      if (add_clashes(who.person, q_.openings[each], in_the_way) == 0) ++out.beyond_limits;
    }
    for (const std::size_t other : in_the_way) {
      const bool sooner = comes_first(q_, q_.waiters[other]) || q_.waiters[other].days >= who.days;
      (sooner ? out.before : out.instead).push_back(other);
    }
    return out;
  }

  /// How many placements are in the way; each of their waiters is added.
  std::size_t add_clashes(const PersonId& person, const Opening& opening,
                          std::set<std::size_t>& waiters) const {
    std::size_t clashes = 0;
    for (const Placed& each : placed_) {
      const Opening& other = q_.openings[each.opening];
      if (!overlap(other.when, opening.when)) continue;
      const PersonId& member = q_.waiters[each.waiter].person;
      const bool clash = other.unit == opening.unit || other.assesses(opening.assessor) ||
                         (!opening.second.empty() && other.assesses(opening.second)) ||
                         opening.assesses(member) || member == person || other.assesses(person);
      if (!clash) continue;
      ++clashes;
      waiters.insert(each.waiter);
    }
    return clashes;
  }

  const FitQuestion& q_;
  const std::vector<Placed>& placed_;
  std::map<TargetName, std::set<OpeningIndex>> of_target_;
};

std::vector<std::size_t> unserved(const FitQuestion& question, const std::vector<Placed>& placed) {
  std::vector<char> served(question.waiters.size());
  for (const Placed& each : placed) served[each.waiter] = 1;
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < served.size(); ++i)
    if (!served[i]) out.push_back(i);
  return out;
}

bool clear_of(const std::vector<Booked>& booked, const Opening& opening) {
  return std::none_of(booked.begin(), booked.end(), [&](const Booked& each) {
    return overlap(each.when, opening.when) &&
           (each.machine == opening.unit || each.takes(opening.assessor) ||
            (!opening.second.empty() && each.takes(opening.second)));
  });
}

bool clear_of(const std::vector<Booked>& booked, const PersonId& person, const Interval& when) {
  return std::none_of(booked.begin(), booked.end(),
                      [&](const Booked& each) { return overlap(each.when, when) && each.takes(person); });
}

/// Those left out, with one extra's openings alone, beside all that is booked or proposed.
FitQuestion with_extra(const FitQuestion& question, const std::vector<Placed>& placed,
                       const std::vector<std::size_t>& left, const Extra& extra) {
  FitQuestion out = question;
  out.openings = extra.openings;
  out.waiters.clear();
  for (const Placed& each : placed) {
    const Opening& opening = question.openings[each.opening];
    out.booked.push_back(
        {question.waiters[each.waiter].person, opening.assessor, opening.unit, opening.when, opening.second});
  }
  for (const std::size_t i : left) {
    Waiter waiter = question.waiters[i];
    waiter.fits.clear();
    for (const OpeningIndex each : extra.fits[i])
      if (clear_of(out.booked, extra.openings[each]) &&
          clear_of(out.booked, waiter.person, extra.openings[each].when))
        waiter.fits.push_back(each);
    if (!waiter.fits.empty()) out.waiters.push_back(std::move(waiter));
  }
  return out;
}

}  // namespace

std::vector<LeftOut> left_out(const FitQuestion& question, const std::vector<Placed>& placed) {
  const Why why(question, placed);
  std::vector<LeftOut> out;
  for (const std::size_t waiter : unserved(question, placed)) out.push_back({waiter, why.of(waiter)});
  return out;
}

std::vector<std::size_t> would_serve(const FitQuestion& question, const std::vector<Placed>& placed,
                                     const std::vector<Extra>& extras) {
  const std::vector<std::size_t> left = unserved(question, placed);
  const GoOn how_many_only = [](Aim aim, const Measures&) { return aim == Aim::first || aim == Aim::served; };
  std::vector<std::size_t> out;
  for (const Extra& extra : extras) {
    const FitQuestion asked = with_extra(question, placed, left, extra);
    out.push_back(static_cast<std::size_t>(fit_everyone(asked, how_many_only).measures.served));
  }
  return out;
}

}  // namespace wm
