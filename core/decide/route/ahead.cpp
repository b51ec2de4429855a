#include "core/decide/route/ahead.h"

#include <algorithm>

namespace wm {

Ahead::Ahead(Standings& standings, Offers& offers, NameId person, NameId x, Rung rung, Instant from)
    : standings_(standings),
      offers_(offers),
      person_(person),
      x_(x),
      rung_(rung),
      from_(from),
      now_(from),
      all_(standings, from),
      on_the_way_(standings, from) {
  collect();
}

// --- what may matter -----------------------------------------------------------------------------------

void Ahead::collect() {
  all_.standing(x_);
  for (const Asked& asked : all_.asked()) {
    const Need& need = *asked.need;
    for (const Need& given : need.given) on_the_way_.need(given, asked.x);
    order_matters_ = order_matters_ || !need.given.empty() || need.kind == NeedKind::recent_use;
    if (need.kind == NeedKind::quiz) quizzes_[asked];
    if (need.kind == NeedKind::checkout) checkouts_[asked];
    if (need.kind == NeedKind::practice || need.kind == NeedKind::recent_use) {
      for (const NameId target : recordable_for(standings_.known(), asked)) {
        sessions_[target];
        if (need.kind != NeedKind::recent_use) continue;
        uses_[target];
        on_the_way_.standing(target);
      }
    }
    collect_own_covers(asked);
  }
  for (const Spared& spared : all_.spared()) {
    order_matters_ = true;
    spared_[spared] = false;
    on_the_way_.standing(spared.x);
  }
  for (auto& [x, chance] : uses_)
    independent_[x] = standings_.rung(person_, x, from_ - 1) == Rung::independent;
}

void Ahead::collect_own_covers(const Asked& asked) {
  std::vector<OwnCover>& own = own_[asked];
  for (const Cover& cover : covers(standings_.known(), *asked.need, person_, asked.x, forever)) {
    const bool rests_on_route = cover.counts == Cover::Counts::use ||
                                (cover.counts == Cover::Counts::checkout && !asked.need->given.empty());
    const bool open = rests_on_route && cover.from >= from_;
    own.push_back({cover, open, !open && standings_.counts(cover, *asked.need, person_, asked.x)});
  }
}

// --- going forward in time -----------------------------------------------------------------------------

std::optional<Instant> Ahead::reaches() {
  std::optional<Instant> t = from_;
  while (t) {
    look_at(*t);
    if (at_least(x_, rung_)) return t;
    t = next_after(*t);
  }
  return std::nullopt;
}

void Ahead::look_at(Instant t) {
  const bool first = looked_at_.empty();
  looked_at_.push_back(t);
  now_ = t;
  const auto before = [&](Chance& chance) {
    if (!first && chance.now) chance.last = t - 1;
  };
  const auto chance_is = [&](Chance& chance, bool now) {
    before(chance);
    chance.now = now;
    if (now) chance.last = t;
  };
  for (auto& [x, chance] : uses_) chance_is(chance, independent_[x]);
  for (auto& [x, chance] : sessions_) chance_is(chance, offers_.supervisor(x, t) != no_name);
  for (auto& [asked, chance] : quizzes_) chance_is(chance, offers_.quiz_counts(*asked.need, t));
  for (auto& [asked, chance] : checkouts_) before(chance);
  for (auto& [asked, own] : own_) {
    for (OwnCover& each : own) {
      if (each.open && each.cover.from == t && each.cover.counts == Cover::Counts::use)
        each.counts = uses_.at(each.cover.target).now;
    }
  }
  checkouts_done_.clear();
  held_.clear();
  look_at_targets();
  for (const Asked& asked : all_.asked())
    if (asked.need->kind == NeedKind::checkout) see_whether_checkout_counts(asked);
  for (auto& [spared, verdict] : spared_)
    if (spared.by == t) verdict = at_least(spared.x, spared.rung);
  for (auto& [x, independent] : independent_) independent = at_least(x, Rung::independent);
}

/// From the last met to the first, so that what a standing rests on is mostly known by then: a chain of any
/// length must not use up the stack.
void Ahead::look_at_targets() {
  for (auto x = all_.targets().rbegin(); x != all_.targets().rend(); ++x)
    for (const Rung rung : {Rung::supervised, Rung::independent}) at_least(*x, rung);
}

std::optional<Instant> Ahead::next_after(Instant t) {
  Instant next = forever;
  const auto earlier = [&](Instant at) {
    if (at > t && at < next) next = at;
  };
  for (const auto& [x, chance] : uses_)
    if (chance.now != independent_[x]) earlier(t + 1);
  if (next == t + 1) return next;
  for (const Asked& asked : all_.asked()) {
    const auto ends = [&](const Chance& chance) {
      if (!chance.now && chance.last) earlier(offers_.cover(asked, *chance.last).to);
    };
    const Need& need = *asked.need;
    if (need.kind == NeedKind::quiz) ends(quizzes_[asked]);
    if (need.kind == NeedKind::checkout) ends(checkouts_[asked]);
    if (need.kind != NeedKind::practice && need.kind != NeedKind::recent_use) continue;
    for (const NameId x : recordable_for(standings_.known(), asked)) {
      ends(sessions_[x]);
      if (need.kind == NeedKind::recent_use) ends(uses_[x]);
    }
  }
  const auto& fixed = fixed_moments();
  const auto after = std::upper_bound(fixed.begin(), fixed.end(), t);
  if (after != fixed.end()) earlier(*after);
  return next <= last_instant ? std::optional(next) : std::nullopt;
}

const std::vector<Instant>& Ahead::fixed_moments() {
  if (fixed_moments_) return *fixed_moments_;
  std::vector<Instant> moments;
  const auto take = [&](const std::vector<Instant>& more) {
    moments.insert(moments.end(), more.begin(), more.end());
  };
  for (const Book& book : standings_.books()) {
    moments.push_back(book.span.from);
    for (const BookGate& gate : book.gates) take({gate.spared_until, gate.spared_by});
  }
  for (const KnownSuspension& suspension : standings_.known().facts(person_).suspensions)
    take({suspension.span.from, suspension.span.to});
  for (const auto& [asked, own] : own_) {
    for (const OwnCover& each : own) take({each.cover.from, each.cover.to});
    take(supposed_moments(standings_.known(), *asked.need, person_, asked.x));
    if (asked.need->kind == NeedKind::checkout) take(offers_.assessor_moments(asked.x, from_));
  }
  for (const auto& [x, chance] : sessions_) take(offers_.supervisor_moments(x, from_));
  std::sort(moments.begin(), moments.end());
  moments.erase(std::unique(moments.begin(), moments.end()), moments.end());
  fixed_moments_ = std::move(moments);
  return *fixed_moments_;
}

std::vector<Instant> Ahead::last_chances() const {
  std::vector<Instant> last;
  const auto take = [&](const auto& chances) {
    for (const auto& [key, chance] : chances)
      if (chance.last) last.push_back(*chance.last);
  };
  take(quizzes_);
  take(checkouts_);
  take(sessions_);
  take(uses_);
  return last;
}

// --- what holds now ------------------------------------------------------------------------------------

bool Ahead::at_least(NameId x, Rung rung) {
  const Book* book = standings_.book_at(now_);
  if (book == nullptr) return false;
  const std::vector<NameId> targets = book->stands_for(x, standings_.known());
  return !targets.empty() && std::all_of(targets.begin(), targets.end(), [&](NameId target) {
    return target_at_least(*book->find(target), rung);
  });
}

bool Ahead::target_at_least(const BookTarget& target, Rung rung) {
  const auto known = held_.find({target.target, rung});
  if (known != held_.end()) return known->second;
  const bool holds = (rung == Rung::supervised
                          ? !standings_.suspended(person_, target.target, now_, standings_.book_at(now_))
                          : target_at_least(target, Rung::supervised)) &&
                     std::all_of(target.gates.begin(), target.gates.end(), [&](const BookGate* gate) {
                       return gate->gate->guards != rung || gate_holds(*gate, target.target);
                     });
  return held_[{target.target, rung}] = holds;
}

bool Ahead::gate_holds(const BookGate& gate, NameId x) {
  if (need_holds(gate.need, x)) return true;
  if (now_ >= gate.spared_until) return false;
  return gate.spared_by < from_ ? standings_.rung(person_, x, gate.spared_by) >= gate.gate->guards
                                : spared_.at({x, gate.gate->guards, gate.spared_by});
}

bool Ahead::need_holds(const Need& need, NameId x) {
  switch (need.kind) {
    case NeedKind::group:
      return std::count_if(need.of.begin(), need.of.end(),
                           [&](const Need& part) { return need_holds(part, x); }) >= need.count;
    case NeedKind::standing:
      return at_least(need.target, need.at_least);
    case NeedKind::tier_standing: {
      const Book* book = standings_.book_at(now_);
      if (book == nullptr) return false;
      const auto tier = book->tiers.find(need.tier);
      if (tier == book->tiers.end()) return false;
      const auto reached = std::count_if(tier->second.begin(), tier->second.end(), [&](NameId target) {
        return target_at_least(*book->find(target), need.at_least);
      });
      return need.all ? reached == static_cast<std::ptrdiff_t>(tier->second.size()) : reached >= need.count;
    }
    default:
      return leaf_holds({&need, x});
  }
}

bool Ahead::covered_by(const Chance& chance, const Asked& asked) const {
  return chance.last && offers_.cover(asked, *chance.last).span(false).covers(now_);
}

bool Ahead::own_cover(const Asked& asked) const {
  const auto& own = own_.at(asked);
  return std::any_of(own.begin(), own.end(), [&](const OwnCover& each) {
    return each.counts && each.cover.span(false).covers(now_);
  });
}

bool Ahead::leaf_holds(const Asked& asked) {
  switch (asked.need->kind) {
    case NeedKind::document:
    case NeedKind::lesson:
      return true;  // one may be entered at any instant, and covers that instant
    case NeedKind::quiz:
      return own_cover(asked) || covered_by(quizzes_.at(asked), asked);
    case NeedKind::checkout:
      see_whether_checkout_counts(asked);
      return own_cover(asked) || covered_by(checkouts_.at(asked), asked);
    case NeedKind::practice:
    case NeedKind::recent_use:
      return adds_up(asked);
    default:
      return own_cover(asked);
  }
}

bool Ahead::adds_up(const Asked& asked) {
  const Need& need = *asked.need;
  for (const NameId x : recordable_for(standings_.known(), asked)) {
    if (covered_by(sessions_.at(x), asked)) return true;  // and as many as are asked for
    if (need.kind == NeedKind::recent_use && covered_by(uses_.at(x), asked)) return true;
  }
  std::int64_t count = 0, minutes = 0;
  for (const OwnCover& each : own_.at(asked)) {
    if (!each.counts || !each.cover.span(false).covers(now_)) continue;
    ++count;
    minutes += each.cover.minutes;
  }
  return count >= need.count && minutes >= need.minutes;
}

void Ahead::see_whether_checkout_counts(const Asked& asked) {
  Chance& chance = checkouts_.at(asked);
  if (!checkouts_done_.insert(asked).second) return;
  const auto given_holds = [&] {
    return std::all_of(asked.need->given.begin(), asked.need->given.end(),
                       [&](const Need& given) { return need_holds(given, asked.x); });
  };
  chance.now = !offers_.assessors(asked.x, now_).empty() && given_holds();
  if (chance.now) chance.last = now_;
  for (OwnCover& each : own_.at(asked)) {
    if (!each.open || each.cover.from != now_) continue;
    each.counts = each.cover.witness != person_ &&
                  standings_.able_to_assess(each.cover.witness, asked.x, now_ - 1) && given_holds();
  }
}

}  // namespace wm
