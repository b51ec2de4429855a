#include "core/decide/engine.h"

#include <algorithm>
#include <set>

namespace wm {

namespace {

constexpr int deepest = 64;
/// Past this many kept answers about instants, all are let go: they can be worked out again.
constexpr std::size_t most_points = 1u << 20;

std::size_t mix(std::size_t h, std::uint64_t v) {
  h ^= v + 0x9e3779b97f4a7c15ULL + (h << 6) + (h >> 2);
  return h * 0xff51afd7ed558ccdULL;
}

std::uint64_t pair_key(NameId a, NameId b) { return (std::uint64_t{a} << 32) | b; }

}  // namespace

/// Counts how deep the questions are nested while it lives.
class Standings::Depth {
 public:
  explicit Depth(int& depth) : depth_(depth) { ++depth_; }
  ~Depth() { --depth_; }
  Depth(const Depth&) = delete;
  Depth& operator=(const Depth&) = delete;

 private:
  int& depth_;
};

std::size_t Standings::Hash::operator()(const PointKey& k) const {
  return mix(mix(pair_key(k.person, k.x), static_cast<std::uint64_t>(k.at)),
             static_cast<std::uint64_t>(k.rung));
}
std::size_t Standings::Hash::operator()(const CountsKey& k) const {
  return mix(pair_key(k.no, k.x), reinterpret_cast<std::uintptr_t>(k.need));
}
std::size_t Standings::Hash::operator()(const StepsKey& k) const {
  return mix(pair_key(k.person, k.x), static_cast<std::uint64_t>(k.book * 4 + static_cast<int>(k.rung)));
}

Standings::Standings(const Shop& shop, std::optional<Instant> known)
    : known_(shop, known), books_(books_in_order(known_)) {}

// --- asking from outside -----------------------------------------------------------------------------------

template <class Ask>
auto Standings::resolve(Ask ask) -> decltype(ask()) {
  std::vector<Node> first;
  for (;;) {
    try {
      while (!first.empty()) {
        const Node node = first.back();
        answer(node);
        first.pop_back();
      }
      return ask();
    } catch (const TooDeep& in_the_way) {
      first.push_back(in_the_way.node);
    }
  }
}

void Standings::answer(const Node& node) {
  switch (node.kind) {
    case Node::Kind::at_least:
      at_least_on(node.person, node.x, node.rung, node.at);
      break;
    case Node::Kind::counts:
      cover_counts(node.cover, *node.need, node.person, node.x);
      break;
    case Node::Kind::steps:
      target_steps(node.person, node.x, node.rung, node.book);
      break;
  }
}

Rung Standings::rung(NameId person, NameId x, Instant t) {
  if (points_.size() > most_points) points_.clear();
  return resolve([&] {
    if (!at_least_on(person, x, Rung::supervised, t)) return Rung::barred;
    return at_least_on(person, x, Rung::independent, t) ? Rung::independent : Rung::supervised;
  });
}

bool Standings::able_to_assess(NameId person, NameId x, Instant t) {
  return resolve([&] { return can_assess(person, x, t); });
}

bool Standings::able_to_supervise(NameId person, NameId x, Instant t) {
  return resolve([&] { return can_supervise(person, x, t); });
}

bool Standings::holds(const Need& need, NameId person, NameId x, Instant t) {
  return resolve([&] { return need_holds(need, person, x, t); });
}

bool Standings::counts(const Cover& cover, const Need& need, NameId person, NameId x) {
  return resolve([&] { return cover_counts(cover, need, person, x); });
}

Steps<bool> Standings::gate_steps(const BookGate& gate, NameId person, NameId x, bool strict) {
  return resolve([&] { return gate_over(gate, person, x, strict, all_books); });
}

Steps<bool> Standings::need_steps(const Need& need, NameId person, NameId x, bool strict) {
  return resolve([&] { return need_over(need, person, x, strict, all_books); });
}

const Steps<Rung>& Standings::steps(NameId person, NameId x) {
  const std::uint64_t key = pair_key(person, x);
  const auto found = steps_.find(key);
  if (found != steps_.end()) return found->second;
  return resolve([&]() -> const Steps<Rung>& {
    const Steps<bool> supervised = standing_over(person, x, Rung::supervised, all_books);
    const Steps<bool> independent = standing_over(person, x, Rung::independent, all_books);
    Steps<Rung> steps(Rung::barred);
    std::vector<Instant> instants;
    for (const auto& change : supervised.changes()) instants.push_back(change.at);
    for (const auto& change : independent.changes()) instants.push_back(change.at);
    std::sort(instants.begin(), instants.end());
    for (const Instant t : instants) {
      steps.set_from(t, independent.at(t)  ? Rung::independent
                        : supervised.at(t) ? Rung::supervised
                                           : Rung::barred);
    }
    return steps_.emplace(key, std::move(steps)).first->second;
  });
}

std::vector<Instant> Standings::able_moments(NameId person, NameId x) {
  std::vector<Instant> moments;
  const PersonFacts& facts = known_.facts(person);
  for (const KnownAppointment& appointment : facts.appointments) {
    moments.insert(moments.end(), {appointment.span.from, appointment.span.to});
  }
  for (const KnownSuspension& suspension : facts.suspensions) {
    moments.insert(moments.end(), {suspension.span.from, suspension.span.to});
  }
  std::set<NameId> targets;
  for (const Book& book : books_) {
    moments.push_back(book.span.from);
    const auto stood_for = book.stands_for(x, known_);
    targets.insert(stood_for.begin(), stood_for.end());
  }
  for (const NameId target : targets) {
    for (const auto& change : steps(person, target).changes()) moments.push_back(change.at);
  }
  return moments;
}

// --- at one instant ----------------------------------------------------------------------------------------

int Standings::book_number(Instant t) const {
  const auto after = std::partition_point(books_.begin(), books_.end(),
                                          [&](const Book& book) { return book.span.from <= t; });
  return static_cast<int>(after - books_.begin()) - 1;
}

const Book* Standings::book_at(Instant t) const {
  const int number = book_number(t);
  return number < 0 ? nullptr : &books_[static_cast<std::size_t>(number)];
}

bool Standings::takes_in(const KnownScope& scope, NameId x, const Book* book) const {
  switch (scope.kind) {
    case KnownScope::Kind::all:
      return true;
    case KnownScope::Kind::tier:
      return book != nullptr && book->tier_of(x, known_) == scope.tier;
    case KnownScope::Kind::target:
      return known_.is_on(scope.target, x);
  }
  return false;
}

bool Standings::suspended(NameId person, NameId x, Instant t, const Book* book) const {
  const auto& suspensions = known_.facts(person).suspensions;
  return std::any_of(suspensions.begin(), suspensions.end(), [&](const KnownSuspension& suspension) {
    return suspension.span.covers(t) && takes_in(suspension.scope, x, book);
  });
}

bool Standings::appointed(NameId person, NameId x, Instant t, const Book* book, bool founding) const {
  const auto& appointments = known_.facts(person).appointments;
  return std::any_of(appointments.begin(), appointments.end(), [&](const KnownAppointment& appointment) {
    return appointment.span.covers(t) && (!founding || appointment.founding) &&
           takes_in(appointment.scope, x, book);
  });
}

bool Standings::at_least_on(NameId person, NameId x, Rung rung, Instant t) {
  if (rung == Rung::barred) return true;
  const Book* book = book_at(t);
  if (book == nullptr) return false;
  const std::vector<NameId> targets = book->stands_for(x, known_);
  return !targets.empty() && std::all_of(targets.begin(), targets.end(), [&](NameId target) {
    return at_least(*book->find(target), person, rung, t, *book);
  });
}

bool Standings::at_least(const BookTarget& target, NameId person, Rung rung, Instant t, const Book& book) {
  const PointKey key{person, target.target, t.seconds, rung};
  const auto found = points_.find(key);
  if (found != points_.end()) return found->second;
  if (depth_ >= deepest)
    throw TooDeep{{Node::Kind::at_least, person, target.target, rung, 0, t, nullptr, {}}};
  const Depth depth(depth_);
  const auto gates_hold = [&] {
    return std::all_of(target.gates.begin(), target.gates.end(), [&](const BookGate* gate) {
      return gate->gate->guards != rung || gate_holds(*gate, person, target.target, t);
    });
  };
  const bool below = rung == Rung::supervised ? !suspended(person, target.target, t, &book)
                                              : at_least(target, person, Rung::supervised, t, book);
  const bool verdict = below && gates_hold();
  points_.emplace(key, verdict);
  return verdict;
}

bool Standings::gate_holds(const BookGate& gate, NameId person, NameId x, Instant t) {
  return need_holds(gate.need, person, x, t) ||
         (t < gate.spared_until && at_least_on(person, x, gate.gate->guards, gate.spared_by));
}

bool Standings::tier_holds(const Need& need, NameId person, Instant t, const Book& book) {
  const auto tier = book.tiers.find(need.tier);
  if (tier == book.tiers.end()) return false;
  const auto reached = std::count_if(tier->second.begin(), tier->second.end(), [&](NameId target) {
    return at_least(*book.find(target), person, need.at_least, t, book);
  });
  return need.all ? reached == static_cast<std::ptrdiff_t>(tier->second.size()) : reached >= need.count;
}

bool Standings::need_holds(const Need& need, NameId person, NameId x, Instant t) {
  switch (need.kind) {
    case NeedKind::standing:
      return at_least_on(person, need.target, need.at_least, t);
    case NeedKind::tier_standing: {
      const Book* book = book_at(t);
      return book != nullptr && tier_holds(need, person, t, *book);
    }
    case NeedKind::group: {
      int held = 0;
      for (const Need& part : need.of) {
        if (need_holds(part, person, x, t) && ++held >= need.count) return true;
      }
      return false;
    }
    default:
      break;
  }
  std::int64_t count = 0, minutes = 0;
  for (const Cover& cover : covers(known_, need, person, x, t)) {
    if (!cover.span(false).covers(t) || !cover_counts(cover, need, person, x)) continue;
    ++count;
    minutes += cover.minutes;
    if (count >= need.count && minutes >= need.minutes) return true;
  }
  return count >= need.count && minutes >= need.minutes;
}

bool Standings::assesses(NameId person, NameId x, Instant t, const Book& book) {
  if (suspended(person, x, t, &book)) return false;
  if (appointed(person, x, t, &book, true)) return true;
  return appointed(person, x, t, &book, false) && at_least(*book.find(x), person, Rung::independent, t, book);
}

bool Standings::can_assess(NameId person, NameId x, Instant t) {
  const Book* book = book_at(t);
  const auto targets = book == nullptr ? std::vector<NameId>{} : book->stands_for(x, known_);
  if (targets.empty()) return !suspended(person, x, t, book) && appointed(person, x, t, book, true);
  return std::all_of(targets.begin(), targets.end(),
                     [&](NameId target) { return assesses(person, target, t, *book); });
}

bool Standings::can_supervise(NameId person, NameId x, Instant t) {
  const Book* book = book_at(t);
  const auto targets = book == nullptr ? std::vector<NameId>{} : book->stands_for(x, known_);
  if (targets.empty()) return can_assess(person, x, t);
  return std::all_of(targets.begin(), targets.end(), [&](NameId id) {
    const BookTarget& target = *book->find(id);
    return assesses(person, id, t, *book) ||
           (!target.assessor_supervises && at_least(target, person, Rung::independent, t, *book));
  });
}

bool Standings::cover_counts(const Cover& cover, const Need& need, NameId person, NameId x) {
  if (cover.counts == Cover::Counts::always) return true;
  const bool checkout = cover.counts == Cover::Counts::checkout;
  const CountsKey key{cover.no, checkout ? x : no_name, checkout && !need.given.empty() ? &need : nullptr};
  const auto found = counts_.find(key);
  if (found != counts_.end()) return found->second;
  if (depth_ >= deepest) throw TooDeep{{Node::Kind::counts, person, x, Rung::barred, 0, {}, &need, cover}};
  const Depth depth(depth_);
  const bool verdict = witness_counts(cover, need, person, x);
  counts_.emplace(key, verdict);
  return verdict;
}

bool Standings::witness_counts(const Cover& cover, const Need& need, NameId person, NameId x) {
  const Instant before = cover.from - 1;
  switch (cover.counts) {
    case Cover::Counts::always:
      return true;
    case Cover::Counts::use:
      return at_least_on(person, cover.target, Rung::independent, before);
    case Cover::Counts::supervised:
      return cover.witness != person && can_supervise(cover.witness, cover.target, before);
    case Cover::Counts::checkout:
      break;
  }
  return cover.witness != person && can_assess(cover.witness, x, before) &&
         std::all_of(need.given.begin(), need.given.end(),
                     [&](const Need& given) { return need_holds(given, person, x, cover.from); });
}

// --- over time ---------------------------------------------------------------------------------------------

template <class OverBook>
Steps<bool> Standings::over_all_books(OverBook over_book) {
  Steps<bool> whole(false);
  for (int number = 0; number < static_cast<int>(books_.size()); ++number) {
    append_during(whole, over_book(number), books_[static_cast<std::size_t>(number)].span);
  }
  return whole;
}

const Steps<bool>& Standings::target_steps(NameId person, NameId x, Rung rung, int book) {
  const StepsKey key{person, x, book, rung};
  const auto found = target_steps_.find(key);
  if (found != target_steps_.end()) return found->second;
  if (depth_ >= deepest) throw TooDeep{{Node::Kind::steps, person, x, rung, book, {}, nullptr, {}}};
  const Depth depth(depth_);
  Steps<bool> steps = target_steps_anew(person, x, rung, book);
  return target_steps_.emplace(key, std::move(steps)).first->second;
}

Steps<bool> Standings::target_steps_anew(NameId person, NameId x, Rung rung, int number) {
  const Book& book = books_[static_cast<std::size_t>(number)];
  std::vector<Steps<bool>> parts;
  parts.push_back(rung == Rung::supervised ? not_suspended(person, x, book)
                                           : target_steps(person, x, Rung::supervised, number));
  for (const BookGate* gate : book.find(x)->gates) {
    if (gate->gate->guards == rung) parts.push_back(gate_over(*gate, person, x, false, number));
  }
  return wm::at_least(parts.size(), parts);
}

Steps<bool> Standings::not_suspended(NameId person, NameId x, const Book& book) const {
  std::vector<Span> spans;
  for (const KnownSuspension& suspension : known_.facts(person).suspensions) {
    if (takes_in(suspension.scope, x, &book)) spans.push_back(suspension.span);
  }
  const Steps<bool> suspended = any_lasting(spans);
  Steps<bool> free(!suspended.first());
  for (const auto& change : suspended.changes()) free.set_from(change.at, !change.value);
  return free;
}

Steps<bool> Standings::standing_over(NameId person, NameId x, Rung rung, int number) {
  if (number == all_books) {
    return over_all_books([&](int each) { return standing_over(person, x, rung, each); });
  }
  std::vector<Steps<bool>> parts;
  for (const NameId target : books_[static_cast<std::size_t>(number)].stands_for(x, known_)) {
    parts.push_back(target_steps(person, target, rung, number));
  }
  return parts.empty() ? Steps<bool>(false) : wm::at_least(parts.size(), parts);
}

Steps<bool> Standings::tier_over(const Need& need, NameId person, int number) {
  if (number == all_books) return over_all_books([&](int each) { return tier_over(need, person, each); });
  const Book& book = books_[static_cast<std::size_t>(number)];
  const auto tier = book.tiers.find(need.tier);
  if (tier == book.tiers.end()) return Steps<bool>(false);
  std::vector<Steps<bool>> parts;
  for (const NameId target : tier->second)
    parts.push_back(target_steps(person, target, need.at_least, number));
  return wm::at_least(need.all ? parts.size() : static_cast<std::size_t>(need.count), parts);
}

Steps<bool> Standings::need_over(const Need& need, NameId person, NameId x, bool strict, int number) {
  switch (need.kind) {
    case NeedKind::standing:
      return standing_over(person, need.target, need.at_least, number);
    case NeedKind::tier_standing:
      return tier_over(need, person, number);
    case NeedKind::group: {
      std::vector<Steps<bool>> parts;
      for (const Need& part : need.of) parts.push_back(need_over(part, person, x, strict, number));
      return wm::at_least(static_cast<std::size_t>(need.count), parts);
    }
    default:
      return leaf_over(need, person, x, strict, number);
  }
}

Steps<bool> Standings::leaf_over(const Need& need, NameId person, NameId x, bool strict, int number) {
  // Within one book's time, records of later books' time are left alone: whether they count may rest on what
  // is being worked out.
  const Instant horizon =
      number == all_books ? forever : books_[static_cast<std::size_t>(number)].span.to - 1;
  std::vector<Weighted> parts;
  for (const Cover& cover : covers(known_, need, person, x, horizon)) {
    const Span span = cover.span(strict);
    if (!span.empty() && cover_counts(cover, need, person, x)) parts.push_back({span, cover.minutes});
  }
  return enough(parts, need.count, need.minutes);
}

Steps<bool> Standings::gate_over(const BookGate& gate, NameId person, NameId x, bool strict, int number) {
  Steps<bool> need = need_over(gate.need, person, x, strict, number);
  if (strict || gate.spared_until <= beginning ||
      !at_least_on(person, x, gate.gate->guards, gate.spared_by)) {
    return need;
  }
  const std::vector<Steps<bool>> either{std::move(need),
                                        any_lasting(std::vector<Span>{{beginning, gate.spared_until}})};
  return wm::at_least(1, either);
}

}  // namespace wm
