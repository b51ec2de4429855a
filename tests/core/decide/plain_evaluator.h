#pragma once
// The meaning of every decision again, as plainly as it can be said: all records are scanned at one instant,
// with no step functions, no caches and no compiled rules. Slow on purpose; the engine must always agree with
// it.
#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <tuple>
#include <vector>

#include "core/decide/answers.h"
#include "core/records/shop.h"

namespace wm::plain {

class Evaluator {
 public:
  Evaluator(const Shop& shop, std::optional<Instant> known) : shop_(shop), known_(known) {}
  /// One that asks `others` about everybody but `self`.
  Evaluator(const Shop& shop, std::optional<Instant> known, std::string self, const Evaluator& others)
      : shop_(shop), known_(known), self_(std::move(self)), others_(&others) {}

  const Rulebook* book(Instant t) const {
    const Rulebook* best = nullptr;
    for (const Rulebook& b : shop_.rulebooks) {
      if ((known_ && b.recorded > *known_) || b.effective_from > t) continue;
      const auto key = [](const Rulebook& r) { return std::tie(r.effective_from, r.recorded, r.version); };
      if (best == nullptr || key(*best) < key(b)) best = &b;
    }
    return best;
  }

  std::vector<std::string> stands_for(const std::string& x, Instant t) const {
    const Rulebook* b = book(t);
    if (b == nullptr) return {};
    const auto targets = all_targets(*b);
    if (targets.count(x) != 0) return {x};
    const std::string cls = cls_of(x);
    if (targets.count(cls) != 0) return {cls};
    std::vector<std::string> modes;
    for (const MachineClass& c : b->classes) {
      if (c.name != x) continue;
      for (const auto& mode : c.modes) modes.push_back(x + "/" + mode);
    }
    return modes;
  }

  Rung standing(const std::string& p, const std::string& x, Instant t) const {
    const auto each = stands_for(x, t);
    if (each.empty()) return Rung::barred;
    Rung lowest = Rung::independent;
    for (const auto& z : each) lowest = std::min(lowest, standing_here(p, z, t));
    return lowest;
  }

  bool standing_at_least(const std::string& p, const std::string& x, Rung r, Instant t) const {
    if (r == Rung::barred) return true;
    const auto each = stands_for(x, t);
    if (each.empty()) return false;
    return std::all_of(each.begin(), each.end(), [&](const auto& z) { return at_least_here(p, z, r, t); });
  }

  bool able_to_assess(const std::string& p, const std::string& x, Instant u) const {
    if (others_ != nullptr && p != self_) return others_->able_to_assess(p, x, u);
    const auto each = stands_for(x, u);
    if (each.empty()) return !suspended(p, x, u) && appointed(p, x, u, true);
    return std::all_of(each.begin(), each.end(), [&](const auto& z) { return assesses_here(p, z, u); });
  }

  bool able_to_supervise(const std::string& p, const std::string& x, Instant u) const {
    if (others_ != nullptr && p != self_) return others_->able_to_supervise(p, x, u);
    const auto each = stands_for(x, u);
    if (each.empty()) return able_to_assess(p, x, u);
    return std::all_of(each.begin(), each.end(), [&](const auto& z) {
      if (assesses_here(p, z, u)) return true;
      const auto [cls, tier] = rules_of(z, u);
      const bool strict =
          cls->supervision == Supervision::assessor || tier->supervision == Supervision::assessor;
      return !strict && at_least_here(p, z, Rung::independent, u);
    });
  }

  /// A gate followed as written: `own` is the rulebook that it stands in.
  bool gate_holds(const Gate& gate, const Rulebook& own, const std::string& p, const std::string& x,
                  Instant t, bool strict) const {
    if (holds(gate.need, p, x, t, strict)) return true;
    if (strict || !gate.existing_until) return false;
    return t < shop_.zone.start(*gate.existing_until + 1) &&
           standing_at_least(p, x, gate.guards, own.effective_from - 1);
  }

  GateState gate_state(const Gate& gate, const Rulebook& own, const std::string& p, const std::string& x,
                       Instant t) const {
    if (!gate_holds(gate, own, p, x, t, false)) return GateState::unmet;
    return gate_holds(gate, own, p, x, t, true) ? GateState::met : GateState::in_grace;
  }

  std::set<std::string> hindrances(const std::string& p, const Machine& machine, const std::string& mode,
                                   Instant t, bool staffed, const std::vector<PersonId>& present,
                                   const std::vector<PersonId>& busy) const {
    const std::string x = mode.empty() ? machine.machine_class : machine.machine_class + "/" + mode;
    std::set<std::string> because;
    for (const Record& lock : shop_.records) {
      const auto* lockout = std::get_if<Lockout>(&lock.fact);
      if (lockout == nullptr || lockout->machine != machine.id || !seen(lock, t)) continue;
      bool off = false;
      for (const Record& r : shop_.records) {
        const auto* release = std::get_if<Release>(&r.fact);
        off = off || (release != nullptr && release->lockout == lock.id && seen(r, t));
      }
      if (!off) because.insert("locked_out");
    }
    std::set<std::string> others(present.begin(), present.end());
    others.erase(p);
    if (const Rulebook* b = book(t)) {
      for (const MachineClass& c : b->classes) {
        if (c.name != machine.machine_class) continue;
        std::vector<Condition> conditions = c.conditions;
        for (const Tier& tier : b->tiers) {
          if (tier.tier == c.tier)
            conditions.insert(conditions.end(), tier.conditions.begin(), tier.conditions.end());
        }
        for (const Condition& condition : conditions) {
          if (std::holds_alternative<Staffed>(condition) && !staffed) because.insert("staffed");
          if (const auto* buddy = std::get_if<Buddy>(&condition)) {
            int fit = 0;
            for (const auto& other : others) fit += standing(other, x, t) >= buddy->at_least ? 1 : 0;
            if (fit < buddy->count) because.insert("buddy");
          }
        }
      }
    }
    const Rung rung = standing(p, x, t);
    if (rung == Rung::barred) because.insert("barred");
    if (rung == Rung::supervised) {
      bool somebody = false;
      for (const auto& other : others) {
        const bool is_busy = std::find(busy.begin(), busy.end(), other) != busy.end();
        somebody = somebody || (!is_busy && able_to_supervise(other, x, t));
      }
      if (!somebody) because.insert("no_supervisor");
    }
    return because;
  }

  /// Of each check-out ever asked for on X by t: the last good one, and what was passed after it.
  std::set<std::string> last_checkouts(const std::string& p, const std::string& x, Instant t) const {
    std::set<std::string> found;
    std::map<std::string, std::map<std::string, std::vector<NeedCheckout>>> asked;
    for (const Rulebook& each : shop_.rulebooks) {
      const Instant from = each.effective_from;
      if (from > t || book(from) == nullptr || (known_ && each.recorded > *known_)) continue;
      for (const auto& z : stands_for(x, from))
        for (const Gate* gate : gates_of(z, from)) ask(gate->need, asked[z]);
    }
    for (const auto& [z, by_name] : asked)
      for (const auto& [name, needs] : by_name) {
        std::vector<const Record*> passed;
        for (const Record& r : shop_.records) {
          const auto* c = std::get_if<Checkout>(&r.fact);
          if (c != nullptr && seen(r, t) && c->person == p && c->checkout == name &&
              c->outcome == Outcome::passed)
            passed.push_back(&r);
        }
        std::sort(passed.begin(), passed.end(), [](const Record* a, const Record* b) {
          return std::tie(a->at, a->id) < std::tie(b->at, b->id);
        });
        std::size_t last = 0;
        for (std::size_t i = 0; i < passed.size(); ++i)
          for (const NeedCheckout& n : needs)
            if (good_checkout(n, *passed[i], p, z)) last = i;
        for (std::size_t i = last; i < passed.size(); ++i) found.insert(passed[i]->id);
      }
    return found;
  }

  bool holds(const Requirement& need, const std::string& p, const std::string& x, Instant t,
             bool strict) const {
    return std::visit([&](const auto& n) { return need_holds(n, p, x, t, strict); }, need.need);
  }

 private:
  static std::string cls_of(const std::string& x) { return x.substr(0, x.find('/')); }
  static bool on(const std::string& target, const std::string& x) {
    return target == x || target == cls_of(x);
  }

  static std::set<std::string> all_targets(const Rulebook& b) {
    std::set<std::string> targets;
    for (const MachineClass& c : b.classes) {
      if (c.modes.empty()) targets.insert(c.name);
      for (const auto& mode : c.modes) targets.insert(c.name + "/" + mode);
    }
    return targets;
  }

  bool known(const Record& r) const {
    if (!known_) return !r.voided;
    return r.recorded <= *known_ && !(r.voided && *r.voided <= *known_);
  }
  bool seen(const Record& r, Instant t) const { return known(r) && r.at <= t; }

  std::pair<const MachineClass*, const Tier*> rules_of(const std::string& z, Instant t) const {
    const Rulebook* b = book(t);
    for (const MachineClass& c : b->classes) {
      if (c.name != cls_of(z)) continue;
      for (const Tier& tier : b->tiers) {
        if (tier.tier == c.tier) return {&c, &tier};
      }
    }
    return {nullptr, nullptr};
  }

  bool takes_in(const Scope& scope, const std::string& x, Instant t) const {
    if (std::holds_alternative<Everything>(scope)) return true;
    if (const auto* target = std::get_if<TargetScope>(&scope)) return on(target->target, x);
    const Rulebook* b = book(t);
    if (b == nullptr) return false;
    return std::any_of(b->classes.begin(), b->classes.end(), [&](const MachineClass& c) {
      return c.name == cls_of(x) && c.tier == std::get<TierScope>(scope).tier;
    });
  }

  bool not_past(const std::optional<Day>& until, Instant t) const {
    return !until || t < shop_.zone.start(*until + 1);
  }

  bool suspended(const std::string& p, const std::string& x, Instant t) const {
    for (const Record& r : shop_.records) {
      const auto* suspend = std::get_if<Suspend>(&r.fact);
      if (suspend == nullptr || suspend->person != p || !seen(r, t)) continue;
      if (!not_past(suspend->until, t) || !takes_in(suspend->scope, x, t)) continue;
      bool ended = false;
      for (const Record& e : shop_.records) {
        const auto* reinstate = std::get_if<Reinstate>(&e.fact);
        ended = ended || (reinstate != nullptr && reinstate->suspension == r.id && seen(e, t));
      }
      if (!ended) return true;
    }
    return false;
  }

  bool appointed(const std::string& p, const std::string& x, Instant u, bool founding_only) const {
    for (const Record& r : shop_.records) {
      const auto* appoint = std::get_if<Appoint>(&r.fact);
      if (appoint == nullptr || appoint->person != p || !seen(r, u)) continue;
      if (!not_past(appoint->until, u) || !takes_in(appoint->scope, x, u)) continue;
      if (founding_only && !appoint->founding) continue;
      bool ended = false;
      for (const Record& e : shop_.records) {
        const auto* dismiss = std::get_if<Dismiss>(&e.fact);
        ended = ended || (dismiss != nullptr && dismiss->appointment == r.id && seen(e, u));
      }
      if (!ended) return true;
    }
    return false;
  }

  bool assesses_here(const std::string& p, const std::string& z, Instant u) const {
    if (suspended(p, z, u)) return false;
    return appointed(p, z, u, true) ||
           (appointed(p, z, u, false) && at_least_here(p, z, Rung::independent, u));
  }

  static void ask(const Requirement& need, std::map<std::string, std::vector<NeedCheckout>>& asked) {
    const auto all = [&](const std::vector<Requirement>& parts) {
      for (const Requirement& part : parts) ask(part, asked);
    };
    if (const auto* n = std::get_if<NeedCheckout>(&need.need))
      asked[n->checkout].push_back(*n), all(n->given);
    if (const auto* n = std::get_if<NeedAllOf>(&need.need)) all(n->of);
    if (const auto* n = std::get_if<NeedAnyOf>(&need.need)) all(n->of);
    if (const auto* n = std::get_if<NeedSomeOf>(&need.need)) all(n->of);
  }

  /// Of one that was passed.
  bool good_checkout(const NeedCheckout& n, const Record& r, const std::string& p,
                     const std::string& x) const {
    const auto& c = std::get<Checkout>(r.fact);
    return c.assessor != p && able_to_assess(c.assessor, x, r.at - 1) &&
           std::all_of(n.given.begin(), n.given.end(),
                       [&](const Requirement& g) { return holds(g, p, x, r.at, false); });
  }

  std::vector<const Gate*> gates_of(const std::string& z, Instant t) const {
    const auto [cls, tier] = rules_of(z, t);
    std::vector<const Gate*> gates;
    for (const Gate& g : tier->gates) gates.push_back(&g);
    for (const Gate& g : cls->gates) gates.push_back(&g);
    for (const auto& [mode, list] : cls->mode_gates) {
      if (cls->name + "/" + mode != z) continue;
      for (const Gate& g : list) gates.push_back(&g);
    }
    return gates;
  }

  bool at_least_here(const std::string& p, const std::string& z, Rung r, Instant t) const {
    if (suspended(p, z, t)) return false;
    const Rulebook& b = *book(t);
    const std::vector<const Gate*> gates = gates_of(z, t);
    return std::all_of(gates.begin(), gates.end(),
                       [&](const Gate* g) { return g->guards > r || gate_holds(*g, b, p, z, t, false); });
  }

  Rung standing_here(const std::string& p, const std::string& z, Instant t) const {
    if (at_least_here(p, z, Rung::independent, t)) return Rung::independent;
    return at_least_here(p, z, Rung::supervised, t) ? Rung::supervised : Rung::barred;
  }

  /// Good for a period with grace, from `at`.
  bool good_for(Instant at, const std::optional<Period>& valid, const std::optional<Period>& grace,
                bool strict, Instant t) const {
    if (t < at) return false;
    if (!valid) return true;
    Day last = end(shop_.zone.day(at), *valid);
    if (grace && !strict) last = end(last, *grace);
    return t < shop_.zone.start(last + 1);
  }

  int needed(const std::string& item, RevisionRule rule, const std::optional<Period>& changeover,
             Instant t) const {
    int greatest = 0;
    if (rule == RevisionRule::any) return greatest;
    for (const Record& r : shop_.records) {
      const auto* publish = std::get_if<Publish>(&r.fact);
      if (publish == nullptr || publish->item != item || !seen(r, t)) continue;
      if (changeover && t < shop_.zone.start(end(shop_.zone.day(r.at), *changeover) + 1)) continue;
      greatest = std::max(greatest, publish->revision);
    }
    return greatest;
  }

  bool need_holds(const NeedDocument& n, const std::string& p, const std::string&, Instant t,
                  bool strict) const {
    return std::any_of(shop_.records.begin(), shop_.records.end(), [&](const Record& r) {
      const auto* d = std::get_if<Document>(&r.fact);
      return d != nullptr && seen(r, t) && d->person == p && d->document == n.document &&
             not_past(d->until, t) && good_for(r.at, n.valid, n.grace, strict, t);
    });
  }

  bool need_holds(const NeedAge& n, const std::string& p, const std::string&, Instant t, bool) const {
    const Record* latest = nullptr;
    for (const Record& r : shop_.records) {
      const auto* b = std::get_if<Birth>(&r.fact);
      if (b == nullptr || b->person != p || !seen(r, t)) continue;
      if (latest == nullptr ||
          std::tie(latest->at, latest->recorded, latest->id) < std::tie(r.at, r.recorded, r.id)) {
        latest = &r;
      }
    }
    if (latest == nullptr) return false;
    const CivilDate born = civil(std::get<Birth>(latest->fact).born);
    const int year = born.year + n.years;
    const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    const bool moved = born.month == 2 && born.day == 29 && !leap;
    return t >= shop_.zone.start(moved ? day_of({year, 3, 1}) : day_of({year, born.month, born.day}));
  }

  bool need_holds(const NeedLesson& n, const std::string& p, const std::string&, Instant t,
                  bool strict) const {
    const int revision = needed(n.lesson, n.revision, n.changeover, t);
    return std::any_of(shop_.records.begin(), shop_.records.end(), [&](const Record& r) {
      const auto* l = std::get_if<Lesson>(&r.fact);
      return l != nullptr && seen(r, t) && l->person == p && l->lesson == n.lesson &&
             l->revision >= revision && good_for(r.at, n.valid, n.grace, strict, t);
    });
  }

  bool need_holds(const NeedQuiz& n, const std::string& p, const std::string&, Instant t, bool strict) const {
    std::vector<const Record*> attempts;
    for (const Record& r : shop_.records) {
      const auto* q = std::get_if<Quiz>(&r.fact);
      if (q != nullptr && q->person == p && q->quiz == n.quiz && seen(r, t)) attempts.push_back(&r);
    }
    std::sort(attempts.begin(), attempts.end(), [](const Record* a, const Record* b) {
      return std::tie(a->at, a->id) < std::tie(b->at, b->id);
    });
    const int revision = needed(n.quiz, n.revision, n.changeover, t);
    std::vector<const Record*> missed;
    for (const Record* a : attempts) {
      const Quiz& q = std::get<Quiz>(a->fact);
      if (n.retry) {
        if (n.retry->wait_hours && !missed.empty() &&
            a->at.seconds - missed.back()->at.seconds < std::int64_t{*n.retry->wait_hours} * 3600) {
          continue;
        }
        if (n.retry->most) {
          const auto lie = std::count_if(missed.begin(), missed.end(), [&](const Record* m) {
            return a->at.seconds - std::int64_t{*n.retry->in_hours} * 3600 < m->at.seconds;
          });
          if (lie >= *n.retry->most) continue;
        }
      }
      const bool passed = 100 * q.correct >= n.pass_percent * q.total && q.critical_missed == 0;
      if (!passed) missed.push_back(a);
      if (passed && q.revision >= revision && good_for(a->at, n.valid, n.grace, strict, t)) return true;
    }
    return false;
  }

  bool need_holds(const NeedCheckout& n, const std::string& p, const std::string& x, Instant t,
                  bool strict) const {
    const int revision = needed(n.checkout, n.revision, n.changeover, t);
    for (const Record& r : shop_.records) {
      const auto* c = std::get_if<Checkout>(&r.fact);
      if (c == nullptr || !seen(r, t) || c->person != p || c->checkout != n.checkout) continue;
      if (c->outcome != Outcome::passed || c->revision < revision) continue;
      if (!good_for(r.at, n.valid, n.grace, strict, t) || taken_away(n, p, x, r.at, t)) continue;
      if (good_checkout(n, r, p, x)) return true;
    }
    return false;
  }

  bool taken_away(const NeedCheckout& n, const std::string& p, const std::string& x, Instant after,
                  Instant t) const {
    for (const Record& r : shop_.records) {
      if (!seen(r, t) || r.at <= after) continue;
      if (const auto* c = std::get_if<Checkout>(&r.fact)) {
        if (c->person == p && c->checkout == n.checkout && c->outcome == Outcome::failed) return true;
      }
      if (const auto* i = std::get_if<Incident>(&r.fact)) {
        if (i->person == p && i->part == Part::operating && n.renew_after_severity &&
            i->severity <= *n.renew_after_severity && cls_of(i->target) == cls_of(x)) {
          return true;
        }
      }
      if (const auto* change = std::get_if<Change>(&r.fact)) {
        if (n.renew_after_change && on(change->target, x)) return true;
      }
    }
    return false;
  }

  bool good_session(const Record& r, const Supervised& s) const {
    return s.supervisor != s.person && able_to_supervise(s.supervisor, s.target, r.at - 1);
  }

  bool need_holds(const NeedPractice& n, const std::string& p, const std::string& x, Instant t, bool) const {
    const std::string target = n.target.value_or(x);
    long minutes = 0, sessions = 0;
    for (const Record& r : shop_.records) {
      const auto* s = std::get_if<Supervised>(&r.fact);
      if (s == nullptr || s->person != p || !seen(r, t) || !on(s->target, target)) continue;
      if (!good_for(r.at, n.within, std::nullopt, false, t) || !good_session(r, *s)) continue;
      minutes += s->minutes;
      ++sessions;
    }
    return minutes >= n.minutes.value_or(0) && sessions >= n.sessions.value_or(0);
  }

  bool need_holds(const NeedRecentUse& n, const std::string& p, const std::string& x, Instant t, bool) const {
    const std::string target = n.target.value_or(x);
    long found = 0;
    for (const Record& r : shop_.records) {
      if (!seen(r, t) || !good_for(r.at, n.within, std::nullopt, false, t)) continue;
      if (const auto* s = std::get_if<Supervised>(&r.fact)) {
        if (s->person == p && on(s->target, target) && good_session(r, *s)) ++found;
      }
      if (const auto* u = std::get_if<Use>(&r.fact)) {
        if (u->person == p && on(u->target, target) &&
            standing_at_least(p, u->target, Rung::independent, r.at - 1)) {
          ++found;
        }
      }
    }
    return found >= n.count;
  }

  bool need_holds(const NeedStanding& n, const std::string& p, const std::string&, Instant t, bool) const {
    return standing_at_least(p, n.target, n.at_least, t);
  }

  bool need_holds(const NeedTierStanding& n, const std::string& p, const std::string&, Instant t,
                  bool) const {
    const Rulebook* b = book(t);
    if (b == nullptr) return false;
    int all = 0, reached = 0;
    for (const auto& z : all_targets(*b)) {
      if (rules_of(z, t).first->tier != n.tier) continue;
      ++all;
      reached += at_least_here(p, z, n.at_least, t) ? 1 : 0;
    }
    return n.count ? reached >= *n.count : all > 0 && reached == all;
  }

  bool need_holds(const NeedAllOf& n, const std::string& p, const std::string& x, Instant t,
                  bool strict) const {
    return held(n.of, p, x, t, strict) == n.of.size();
  }
  bool need_holds(const NeedAnyOf& n, const std::string& p, const std::string& x, Instant t,
                  bool strict) const {
    return held(n.of, p, x, t, strict) >= 1;
  }
  bool need_holds(const NeedSomeOf& n, const std::string& p, const std::string& x, Instant t,
                  bool strict) const {
    return held(n.of, p, x, t, strict) >= static_cast<std::size_t>(n.count);
  }
  std::size_t held(const std::vector<Requirement>& of, const std::string& p, const std::string& x, Instant t,
                   bool strict) const {
    return static_cast<std::size_t>(
        std::count_if(of.begin(), of.end(), [&](const Requirement& r) { return holds(r, p, x, t, strict); }));
  }

  const Shop& shop_;
  std::optional<Instant> known_;
  std::string self_;
  const Evaluator* others_ = nullptr;
};

}  // namespace wm::plain
