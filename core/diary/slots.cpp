#include "core/diary/slots.h"

#include <algorithm>
#include <map>
#include <optional>

namespace wm {
namespace {

constexpr Fit all_fits[] = {Fit::member_ready,  Fit::assessor_able, Fit::assessor_in,     Fit::two_assessors,
                            Fit::together,      Fit::takes_on,      Fit::unit_in_service, Fit::member_free,
                            Fit::assessor_free, Fit::unit_free};

/// The first instant at or after t at which the wall clock shows a whole step.
Instant next_start(const Zone& zone, Instant t, int step) {
  while (true) {
    const LocalTime local = zone.local(t);
    const int past = local.minute % step;
    if (local.second != 0)
      t = t + (60 - local.second);
    else if (past != 0)
      t = t + std::int64_t{60} * (step - past);
    else
      return t;
  }
}

/// Stretches that do not overlap one another, in order; found by halving.
using Stretches = std::vector<Interval>;

const Interval* containing(const Stretches& stretches, const Interval& when) {
  const auto after = std::upper_bound(stretches.begin(), stretches.end(), when.from,
                                      [](Instant t, const Interval& each) { return t < each.from; });
  if (after == stretches.begin()) return nullptr;
  const Interval& last = *std::prev(after);
  return when.to <= last.to ? &last : nullptr;
}

/// Who and what is taken when. Bookings of the past may overlap, so each is looked at.
class Taken {
 public:
  explicit Taken(const SlotQuestion& question) {
    for (const Booked& each : question.booked) {
      if (!overlap(each.when, {question.from, question.to})) continue;
      people_[each.person].push_back(each.when);
      people_[each.assessor].push_back(each.when);
      if (!each.second.empty()) people_[each.second].push_back(each.when);
      units_[each.machine].push_back(each.when);
    }
    for (const Maintenance& each : question.maintenance) units_[each.machine].push_back(each.when);
  }
  bool person(const PersonId& id, const Interval& when) const { return any(people_, id, when); }
  bool unit(const MachineId& id, const Interval& when) const { return any(units_, id, when); }

 private:
  using ById = std::map<std::string, std::vector<Interval>>;
  static bool any(const ById& by_id, const std::string& id, const Interval& when) {
    const auto found = by_id.find(id);
    return found != by_id.end() && std::any_of(found->second.begin(), found->second.end(),
                                               [&](const Interval& each) { return overlap(each, when); });
  }
  ById people_, units_;
};

/// Goes through the times of one question, with some of what must be so taken for granted.
class Search {
 public:
  explicit Search(const SlotQuestion& question) : q_(question), taken_(question) {
    for (const PersonId& each : q_.assessors) {
      if (each == q_.person) continue;
      assessors_.push_back(each);
      in_.push_back(times_of_assessor(each));
    }
    for (std::size_t i = 0; i < assessors_.size(); ++i) {
      ones_.push_back({i, i});
      for (std::size_t j = i + 1; j < assessors_.size(); ++j) twos_.push_back({i, j});
    }
  }

  using Units = std::vector<MachineId>;
  /// Calls `found` with each slot and the units that would do, in order, until it says to stop.
  void run(std::optional<Fit> granted, const std::function<bool(const Slot&, const Units&)>& found) const {
    each_time([&](const Interval& when) {
      if (granted != Fit::member_free && taken_.person(q_.person, when)) return true;
      std::optional<Units> units;  // the dearer questions: asked once, and only where all else fits
      std::optional<bool> ready;
      Once can(*this, when, granted);
      for (const Those& each : granted == Fit::two_assessors ? ones_ : those(when)) {
        if (!can(each.one) || !can(each.other)) continue;
        if (!units) units = units_at(when, granted);
        if (units->empty()) return true;
        if (!may_be_together(each, when, granted)) continue;
        if (!ready) ready = granted == Fit::member_ready || q_.ready(when);
        if (!*ready) return true;
        if (!found(slot_of(each, when, *units), *units)) return false;
      }
      return true;
    });
  }

  /// Whether one thing alone is so at some time, for some assessor or unit.
  bool ever(Fit fit) const {
    bool so = false;
    each_time([&](const Interval& when) { return !(so = holds_somewhere(fit, when)); });
    return so;
  }

 private:
  Stretches times_of_assessor(const PersonId& assessor) const {
    for (const InTimes& each : q_.in)
      if (each.person == assessor) return each.times;
    return times_in(q_.zone, q_.hours, assessor, q_.from, q_.to);
  }

  void each_time(const std::function<bool(const Interval&)>& visit) const {
    const std::int64_t seconds = std::int64_t{60} * q_.minutes;
    for (Instant t = next_start(q_.zone, q_.from, q_.step); t + seconds <= q_.to;
         t = next_start(q_.zone, t + 60, q_.step))
      if (!visit({t, t + seconds})) return;
  }

  /// An assessor and another, by their places; where one is asked for, twice the same.
  struct Those {
    std::size_t one = 0, other = 0;
  };
  const std::vector<Those>& those(const Interval& when) const { return two_asked(when) ? twos_ : ones_; }
  bool two_asked(const Interval& when) const { return q_.two_assessors && q_.two_assessors(when); }

  /// What can be said of each assessor without another, asked once for each time.
  class Once {
   public:
    Once(const Search& search, const Interval& when, std::optional<Fit> granted)
        : search_(search), when_(when), granted_(granted), known_(search.assessors_.size()) {}
    bool operator()(std::size_t assessor) {
      std::optional<bool>& known = known_[assessor];
      if (!known) known = search_.can_come(assessor, when_, granted_);
      return *known;
    }

   private:
    const Search& search_;
    const Interval& when_;
    std::optional<Fit> granted_;
    std::vector<std::optional<bool>> known_;
  };

  bool can_come(std::size_t assessor, const Interval& when, std::optional<Fit> granted) const {
    const PersonId& who = assessors_[assessor];
    if (granted != Fit::assessor_in && !containing(in_[assessor], when)) return false;
    if (granted != Fit::assessor_free && taken_.person(who, when)) return false;
    if (granted != Fit::takes_on && q_.takes_on && !q_.takes_on(who, when)) return false;
    return granted == Fit::assessor_able || q_.able(who, when);
  }

  bool may_be_together(const Those& those, const Interval& when, std::optional<Fit> granted) const {
    return granted == Fit::together || !q_.together ||
           q_.together(assessors_[those.one], second(those), when);
  }

  PersonId second(const Those& those) const {
    return those.other == those.one ? PersonId() : assessors_[those.other];
  }

  Units units_at(const Interval& when, std::optional<Fit> granted) const {
    Units units;
    for (const MachineId& unit : q_.units) {
      if (granted != Fit::unit_free && taken_.unit(unit, when)) continue;
      if (granted == Fit::unit_in_service || q_.in_service(unit, when)) units.push_back(unit);
    }
    return units;
  }

  /// In the hours that both are in; where being in is taken for granted, as far as they are.
  Slot slot_of(const Those& those, const Interval& when, const Units& units) const {
    const auto hours = [&](std::size_t who) {
      const Interval* in = containing(in_[who], when);
      return in ? *in : when;
    };
    const Interval one = hours(those.one), other = hours(those.other);
    const Interval in{std::max(one.from, other.from), std::min(one.to, other.to)};
    return Slot{when, assessors_[those.one], units.front(), in, units.size(), second(those)};
  }

  bool holds_somewhere(Fit fit, const Interval& when) const {
    const auto some_assessor = [&](const auto& so) {
      for (std::size_t i = 0; i < assessors_.size(); ++i)
        if (so(i)) return true;
      return false;
    };
    const auto some_unit = [&](const auto& so) { return std::any_of(q_.units.begin(), q_.units.end(), so); };
    switch (fit) {
      case Fit::member_ready:
        return q_.ready(when);
      case Fit::assessor_able:
        return some_assessor([&](std::size_t i) { return q_.able(assessors_[i], when); });
      case Fit::assessor_in:
        return some_assessor([&](std::size_t i) { return containing(in_[i], when) != nullptr; });
      case Fit::two_assessors:
        return !two_asked(when) || two_can_come(when);
      case Fit::together:
        return some_together(when);
      case Fit::takes_on:
        return some_assessor([&](std::size_t i) { return !q_.takes_on || q_.takes_on(assessors_[i], when); });
      case Fit::unit_in_service:
        return some_unit([&](const MachineId& unit) { return q_.in_service(unit, when); });
      case Fit::member_free:
        return !taken_.person(q_.person, when);
      case Fit::assessor_free:
        return some_assessor([&](std::size_t i) { return !taken_.person(assessors_[i], when); });
      case Fit::unit_free:
        return some_unit([&](const MachineId& unit) { return !taken_.unit(unit, when); });
    }
    return false;
  }

  bool two_can_come(const Interval& when) const {
    std::size_t count = 0;
    for (std::size_t i = 0; i < assessors_.size() && count < 2; ++i)
      if (can_come(i, when, std::nullopt)) ++count;
    return count == 2;
  }

  /// Of two there are too few for, nothing forbids that they are together.
  bool some_together(const Interval& when) const {
    const std::vector<Those>& all = those(when);
    return (all.empty() && !ones_.empty()) || std::any_of(all.begin(), all.end(), [&](const Those& each) {
             return may_be_together(each, when, std::nullopt);
           });
  }

  const SlotQuestion& q_;
  Taken taken_;
  std::vector<PersonId> assessors_;
  std::vector<Stretches> in_;
  std::vector<Those> ones_, twos_;
};

}  // namespace

std::vector<Slot> fitting(const SlotQuestion& question) {
  std::vector<Slot> slots;
  Search(question).run(std::nullopt, [&](const Slot& slot, const auto&) {
    slots.push_back(slot);
    return true;
  });
  return slots;
}

std::vector<Slot> fitting_units(const SlotQuestion& question) {
  std::vector<Slot> slots;
  Search(question).run(std::nullopt, [&](Slot slot, const auto& units) {
    for (const MachineId& unit : units) {
      slot.unit = unit;
      slots.push_back(slot);
    }
    return true;
  });
  return slots;
}

std::vector<Slot> side_by_side(const std::vector<Slot>& slots) {
  std::vector<Slot> out;
  std::map<PersonId, Instant> over;
  const auto has_one = [&](const PersonId& who, Instant at) {
    const auto last = over.find(who);
    return last != over.end() && at < last->second;
  };
  for (const Slot& slot : slots) {
    const bool second = slot.second.empty() || has_one(slot.second, slot.when.from);
    if (has_one(slot.assessor, slot.when.from) && second) continue;
    over[slot.assessor] = slot.when.to;
    if (!slot.second.empty()) over[slot.second] = slot.when.to;
    out.push_back(slot);
  }
  return out;
}

WhyNone why_none(const SlotQuestion& question) {
  const Search search(question);
  WhyNone why;
  for (Fit fit : all_fits) {
    if (!search.ever(fit)) why.never.insert(fit);
    search.run(fit, [&](const Slot&, const auto&) {
      why.would_help.insert(fit);
      return false;
    });
  }
  return why;
}

}  // namespace wm
