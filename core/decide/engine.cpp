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

/// As much of a span as lies within another, which goes on for ever before and after: what is so all the
/// while then has no flip.
Span clipped(Span span, Span within) {
  if (span.to <= within.from || span.from >= within.to) return {beginning, beginning};
  return {span.from <= within.from ? beginning : span.from, span.to >= within.to ? forever : span.to};
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
Standings::Standings(const Shop& shop, std::optional<Instant> known)
    : known_(std::make_shared<Known>(shop, known)) {
  std::vector<const Rulebook*> rulebooks;
  for (const Rulebook& rulebook : known_->rulebooks()) rulebooks.push_back(&rulebook);
  books_ = books_in_order(*known_, std::move(rulebooks));
  target_times_.resize(books_.size());
}

Standings::Standings(std::shared_ptr<Known> known, std::vector<const Rulebook*> rulebooks,
                     const Timelines* past, Instant past_until)
    : known_(std::move(known)),
      books_(books_in_order(*known_, std::move(rulebooks))),
      past_(past),
      past_until_(past_until),
      target_times_(books_.size()) {}

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
    case Node::Kind::times:
      target_times(node.person, *book(node.book).find(node.x), node.rung, node.book);
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

Times Standings::gate_times(const BookGate& gate, NameId person, NameId x, bool strict) {
  return resolve([&] {
    Times room;
    return Times(gate_over(gate, person, x, strict, all_books, room));
  });
}

Times Standings::need_times(const Need& need, NameId person, NameId x, bool strict) {
  return resolve([&] {
    Times room;
    return Times(need_over(need, person, x, strict, all_books, room));
  });
}

const Steps<Rung>& Standings::steps(NameId person, NameId x) {
  const std::uint64_t key = pair_key(person, x);
  const auto found = steps_.find(key);
  return found != steps_.end() ? found->second : steps_.emplace(key, steps_anew(person, x)).first->second;
}

Steps<Rung> Standings::steps_anew(NameId person, NameId x) {
  return resolve([&] {
    Steps<Rung> steps(Rung::barred);
    for (int number = 0; number < static_cast<int>(books_.size()); ++number) {
      Times room[2];
      const Times& supervised = standing_over(person, x, Rung::supervised, number, room[0]);
      const Times& independent = standing_over(person, x, Rung::independent, number, room[1]);
      // Who is independent is supervised too.
      const auto from = [&](Instant at, bool s, bool i) {
        steps.set_from(at, i ? Rung::independent : s ? Rung::supervised : Rung::barred);
      };
      from(book(number).span.from, supervised.first(), independent.first());
      for_each_flip(supervised, independent, from);
    }
    return steps;
  });
}

void Standings::forget(NameId person) {
  for (const KnownSupervised& session : known_->facts(person).supervised)
    if (session.no < counts_.size()) counts_[session.no] = Verdict::open;
  checkouts_count_.erase(person);
  forget_own(person);
}

void Standings::forget_own(NameId person) {
  for (const KnownUse& use : known_->facts(person).uses)
    if (use.no < counts_.size()) counts_[use.no] = Verdict::open;
  const auto checkouts = checkouts_count_.find(person);
  if (checkouts == checkouts_count_.end()) return;
  absl::erase_if(checkouts->second, [](const auto& each) { return each.first.need != nullptr; });
}

void Standings::forget_instants() {
  if (!points_.empty()) points_.clear();
  ++round_;
  if (!steps_.empty()) steps_.clear();
}

std::vector<Instant> Standings::able_moments(NameId person, NameId x) {
  std::vector<Instant> moments;
  const PersonFacts& facts = known_->facts(person);
  for (const KnownAppointment& appointment : facts.appointments) {
    moments.insert(moments.end(), {appointment.span.from, appointment.span.to});
  }
  for (const KnownSuspension& suspension : facts.suspensions) {
    moments.insert(moments.end(), {suspension.span.from, suspension.span.to});
  }
  std::set<NameId> targets;
  for (const Book& book : books_) {
    moments.push_back(book.span.from);
    const auto stood_for = book.stands_for(x, *known_);
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
      return book != nullptr && book->tier_of(x, *known_) == scope.tier;
    case KnownScope::Kind::target:
      return known_->is_on(scope.target, x);
  }
  return false;
}

bool Standings::suspended(NameId person, NameId x, Instant t, const Book* book) const {
  const auto& suspensions = known_->facts(person).suspensions;
  return std::any_of(suspensions.begin(), suspensions.end(), [&](const KnownSuspension& suspension) {
    return suspension.span.covers(t) && takes_in(suspension.scope, x, book);
  });
}

bool Standings::appointed(NameId person, NameId x, Instant t, const Book* book, bool founding) const {
  const auto& appointments = known_->facts(person).appointments;
  return std::any_of(appointments.begin(), appointments.end(), [&](const KnownAppointment& appointment) {
    return appointment.span.covers(t) && (!founding || appointment.founding) &&
           takes_in(appointment.scope, x, book);
  });
}

bool Standings::at_least_on(NameId person, NameId x, Rung rung, Instant t) {
  if (rung == Rung::barred) return true;
  const Book* book = book_at(t);
  if (book == nullptr) return false;
  if (const BookTarget* target = book->find(x)) return at_least(*target, person, rung, t, *book);
  const std::vector<NameId> targets = book->stands_for(x, *known_);
  return !targets.empty() && std::all_of(targets.begin(), targets.end(), [&](NameId target) {
    return at_least(*book->find(target), person, rung, t, *book);
  });
}

bool Standings::at_least(const BookTarget& target, NameId person, Rung rung, Instant t, const Book& book) {
  if (past_ != nullptr && t < past_until_ && past_->has(person, target.target)) {
    looked_up_ = looked_up_ || person == watched_;
    return past_->at(person, target.target, t) >= rung;
  }
  const PointKey key{person, target.target, t.seconds, rung};
  const auto found = points_.find(key);
  if (found != points_.end()) return found->second;
  if (depth_ >= deepest)
    throw TooDeep{{Node::Kind::at_least, person, target.target, rung, 0, t, nullptr, {}}};
  const Depth depth(depth_);
  const auto gates_hold = [&] {
    const auto& gates = target.guarding(rung);
    return std::all_of(gates.begin(), gates.end(),
                       [&](const BookGate* gate) { return gate_holds(*gate, person, target.target, t); });
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
      for (const std::uint32_t i : need.cheapest_first) {
        if (need_holds(need.of[i], person, x, t) && ++held >= need.count) return true;
      }
      return false;
    }
    default:
      break;
  }
  std::int64_t count = 0, minutes = 0;
  const auto enough = [&] { return count >= need.count && minutes >= need.minutes; };
  for_each_cover(*known_, need, person, x, t, t, [&](const Cover& cover) {
    if (!cover.span(false).covers(t) || !cover_counts(cover, need, person, x)) return true;
    ++count;
    minutes += cover.minutes;
    return !enough();
  });
  return enough();
}

bool Standings::assesses(NameId person, NameId x, Instant t, const Book& book) {
  if (suspended(person, x, t, &book)) return false;
  if (appointed(person, x, t, &book, true)) return true;
  return appointed(person, x, t, &book, false) && at_least(*book.find(x), person, Rung::independent, t, book);
}

bool Standings::can_assess(NameId person, NameId x, Instant t) {
  const Book* book = book_at(t);
  const auto targets = book == nullptr ? std::vector<NameId>{} : book->stands_for(x, *known_);
  if (targets.empty()) return !suspended(person, x, t, book) && appointed(person, x, t, book, true);
  return std::all_of(targets.begin(), targets.end(),
                     [&](NameId target) { return assesses(person, target, t, *book); });
}

bool Standings::can_supervise(NameId person, NameId x, Instant t) {
  const Book* book = book_at(t);
  const auto targets = book == nullptr ? std::vector<NameId>{} : book->stands_for(x, *known_);
  if (targets.empty()) return can_assess(person, x, t);
  return std::all_of(targets.begin(), targets.end(), [&](NameId id) {
    const BookTarget& target = *book->find(id);
    return assesses(person, id, t, *book) ||
           (!target.assessor_supervises && at_least(target, person, Rung::independent, t, *book));
  });
}

bool Standings::cover_counts(const Cover& cover, const Need& need, NameId person, NameId x) {
  if (cover.counts == Cover::Counts::always || all_count_) return true;
  const auto find_out = [&] {
    if (depth_ >= deepest) throw TooDeep{{Node::Kind::counts, person, x, Rung::barred, 0, {}, &need, cover}};
    const Depth depth(depth_);
    return witness_counts(cover, need, person, x);
  };
  if (cover.counts == Cover::Counts::checkout) {
    const CountsKey key{cover.no, x, need.given.empty() ? nullptr : &need};
    const auto& known = checkouts_count_[person];
    const auto found = known.find(key);
    if (found != known.end()) return found->second;
    const bool verdict = find_out();
    return checkouts_count_[person][key] = verdict;
  }
  if (cover.no >= counts_.size()) counts_.resize(known_->record_count());
  if (counts_[cover.no] != Verdict::open) return counts_[cover.no] == Verdict::yes;
  const bool verdict = find_out();
  counts_[cover.no] = verdict ? Verdict::yes : Verdict::no;
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
//
// Within one book's time, what lies before and after is as at its first and its last second.

template <class OverBook>
const Times& Standings::over_all_books(Times& room, OverBook over_book) {
  Times whole(false);
  for (int number = 0; number < static_cast<int>(books_.size()); ++number) {
    append_during(whole, over_book(number, room), book(number).span);
  }
  return room = std::move(whole);
}

const Times& Standings::target_times(NameId person, const BookTarget& target, Rung rung, int number) {
  if (person != slots_of_) {
    slots_of_ = person;
    ++round_;
  }
  Slots& slots = target_times_[static_cast<std::size_t>(number)];
  slots.grow(book(number).targets.size() * 2);
  const std::size_t slot = target.place * 2 + (rung == Rung::independent ? 1 : 0);
  if (slots.filled[slot] == round_) return slots.times[slot];
  if (depth_ >= deepest)
    throw TooDeep{{Node::Kind::times, person, target.target, rung, number, {}, nullptr, {}}};
  const Depth depth(depth_);
  slots.times[slot] = target_times_anew(person, target, rung, number);
  slots.filled[slot] = round_;
  return slots.times[slot];
}

Times Standings::target_times_anew(NameId person, const BookTarget& target, Rung rung, int number) {
  Times times = rung == Rung::supervised ? not_suspended(person, target.target, number)
                                         : target_times(person, target, Rung::supervised, number);
  for (const BookGate* gate : target.guarding(rung)) {
    if (times.never()) break;
    Times room;
    meet(times, gate_over(*gate, person, target.target, false, number, room));
  }
  return times;
}

Times Standings::not_suspended(NameId person, NameId x, int number) const {
  const auto& suspensions = known_->facts(person).suspensions;
  if (suspensions.empty()) return Times(true);
  Times suspended(false);
  for (const KnownSuspension& suspension : suspensions) {
    if (takes_in(suspension.scope, x, &book(number)))
      suspended.add(clipped(suspension.span, book(number).span));
  }
  return opposite(suspended);
}

const Times& Standings::standing_over(NameId person, NameId x, Rung rung, int number, Times& room) {
  if (number == all_books) {
    return over_all_books(room, [&](int each, Times& inner) -> const Times& {
      return standing_over(person, x, rung, each, inner);
    });
  }
  if (const BookTarget* target = book(number).find(x)) return target_times(person, *target, rung, number);
  const std::vector<NameId> targets = book(number).stands_for(x, *known_);
  room = Times(!targets.empty());
  for (const NameId target : targets)
    meet(room, target_times(person, *book(number).find(target), rung, number));
  return room;
}

template <class Part>
const Times& Standings::some_over(std::size_t count, std::size_t size, Times& room, Part part) {
  Tally tally;
  for (std::size_t i = 0; i < size; ++i) {
    tally.add(part(i, room));
    if (tally.always() >= count) return room = Times(true);
    if (tally.never() + count > size) return room = Times(false);
  }
  return room = tally.at_least(count);
}

const Times& Standings::tier_over(const Need& need, NameId person, int number, Times& room) {
  if (number == all_books) {
    return over_all_books(
        room, [&](int each, Times& inner) -> const Times& { return tier_over(need, person, each, inner); });
  }
  const auto tier = book(number).tiers.find(need.tier);
  if (tier == book(number).tiers.end()) return room = Times(false);
  const std::vector<NameId>& targets = tier->second;
  return some_over(need.all ? targets.size() : static_cast<std::size_t>(need.count), targets.size(), room,
                   [&](std::size_t i, Times&) -> const Times& {
                     return target_times(person, *book(number).find(targets[i]), need.at_least, number);
                   });
}

const Times& Standings::need_over(const Need& need, NameId person, NameId x, bool strict, int number,
                                  Times& room) {
  switch (need.kind) {
    case NeedKind::standing:
      return standing_over(person, need.target, need.at_least, number, room);
    case NeedKind::tier_standing:
      return tier_over(need, person, number, room);
    case NeedKind::group:
      return some_over(static_cast<std::size_t>(need.count), need.of.size(), room,
                       [&](std::size_t i, Times& inner) -> const Times& {
                         return need_over(need.of[need.cheapest_first[i]], person, x, strict, number, inner);
                       });
    default:
      break;
  }
  // Standing gates of a tier or a class are the same on each of its targets.
  if (strict || number == all_books || person != slots_of_ || !need.of_person())
    return room = leaf_over(need, person, x, strict, number);
  need_times_.grow(known_->needs());
  if (need_times_.filled[need.number] != round_) {
    need_times_.times[need.number] = leaf_over(need, person, x, strict, number);
    need_times_.filled[need.number] = round_;
  }
  return need_times_.times[need.number];
}

Times Standings::leaf_over(const Need& need, NameId person, NameId x, bool strict, int number) {
  // Within one book's time, records of later books' time are left alone: whether they count may rest on what
  // is being worked out.
  const Span within = number == all_books ? Span{} : book(number).span;
  if (need.count <= 1 && need.minutes <= 1) {
    Times times(false);
    for_each_cover(*known_, need, person, x, within.from, within.to - 1, [&](const Cover& cover) {
      const Span span = clipped(cover.span(strict), within);
      if (!times.has(span) && cover_counts(cover, need, person, x)) times.add(span);
      return !times.last();
    });
    return times;
  }
  absl::InlinedVector<Weighted, 32> parts;
  for_each_cover(*known_, need, person, x, within.from, within.to - 1, [&](const Cover& cover) {
    const Span span = clipped(cover.span(strict), within);
    if (!span.empty() && cover_counts(cover, need, person, x)) parts.push_back({span, cover.minutes});
    return true;
  });
  return enough({parts.data(), parts.size()}, need.count, need.minutes);
}

const Times& Standings::gate_over(const BookGate& gate, NameId person, NameId x, bool strict, int number,
                                  Times& room) {
  const Times& need = need_over(gate.need, person, x, strict, number, room);
  if (strict || gate.spared_until <= beginning || need.always()) return need;
  const Span within = number == all_books ? Span{} : book(number).span;
  const Span spared = clipped({beginning, gate.spared_until}, within);
  if (spared.empty() || !at_least_on(person, x, gate.gate->guards, gate.spared_by)) return need;
  Times times(false);
  times.add(spared);
  return room = either(need, times);
}

}  // namespace wm
