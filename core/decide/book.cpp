#include "core/decide/book.h"

#include <algorithm>
#include <tuple>

namespace wm {

namespace {

Need compiled(const Requirement& requirement, Known& known);

std::vector<Need> compiled_all(const std::vector<Requirement>& requirements, Known& known) {
  std::vector<Need> needs;
  needs.reserve(requirements.size());
  for (const Requirement& requirement : requirements) needs.push_back(compiled(requirement, known));
  return needs;
}

/// How much work a requirement takes, by and large: first what looks at the person's own papers, last what
/// asks for many other standings.
int work(const Need& need) {
  switch (need.kind) {
    case NeedKind::document:
    case NeedKind::age:
    case NeedKind::lesson:
      return 0;
    case NeedKind::quiz:
      return 1;
    case NeedKind::checkout:
      return need.given.empty() ? 2 : 3;
    case NeedKind::practice:
    case NeedKind::recent_use:
      return 4;
    case NeedKind::standing:
      return 5;
    case NeedKind::tier_standing:
      return 6;
    case NeedKind::group:
      break;
  }
  int most = 0;
  for (const Need& part : need.of) most = std::max(most, work(part));
  return most;
}

struct Compile {
  Known& known;
  Need& need;

  void operator()(const NeedDocument& r) {
    need.kind = NeedKind::document;
    need.item = known.names().add(r.document);
    need.valid = r.valid;
    need.grace = r.grace;
  }
  void operator()(const NeedAge& r) {
    need.kind = NeedKind::age;
    need.years = r.years;
  }
  void operator()(const NeedLesson& r) {
    need.kind = NeedKind::lesson;
    take_item(r.lesson, r);
  }
  void operator()(const NeedQuiz& r) {
    need.kind = NeedKind::quiz;
    take_item(r.quiz, r);
    need.pass_percent = r.pass_percent;
    need.retry = r.retry;
  }
  void operator()(const NeedCheckout& r) {
    need.kind = NeedKind::checkout;
    take_item(r.checkout, r);
    need.given = compiled_all(r.given, known);
    need.renew_after_severity = r.renew_after_severity.value_or(0);
    need.renew_after_change = r.renew_after_change;
  }
  void operator()(const NeedPractice& r) {
    need.kind = NeedKind::practice;
    if (r.target) need.target = known.add_target(*r.target);
    need.minutes = r.minutes.value_or(0);
    need.count = r.sessions.value_or(0);
    need.valid = r.within;
  }
  void operator()(const NeedRecentUse& r) {
    need.kind = NeedKind::recent_use;
    if (r.target) need.target = known.add_target(*r.target);
    need.count = r.count;
    need.valid = r.within;
  }
  void operator()(const NeedStanding& r) {
    need.kind = NeedKind::standing;
    need.target = known.add_target(r.target);
    need.at_least = r.at_least;
  }
  void operator()(const NeedTierStanding& r) {
    need.kind = NeedKind::tier_standing;
    need.tier = r.tier;
    need.at_least = r.at_least;
    need.all = !r.count;
    need.count = r.count.value_or(0);
  }
  void operator()(const NeedAllOf& r) { group(r.of, static_cast<int>(r.of.size())); }
  void operator()(const NeedAnyOf& r) { group(r.of, 1); }
  void operator()(const NeedSomeOf& r) { group(r.of, r.count); }

 private:
  template <class Item>
  void take_item(const std::string& name, const Item& r) {
    need.item = known.names().add(name);
    need.current_revision = r.revision == RevisionRule::current;
    need.changeover = r.changeover;
    need.valid = r.valid;
    need.grace = r.grace;
  }
  void group(const std::vector<Requirement>& of, int count) {
    need.kind = NeedKind::group;
    need.count = count;
    need.of = compiled_all(of, known);
    for (std::uint32_t i = 0; i < need.of.size(); ++i) need.cheapest_first.push_back(i);
    std::stable_sort(need.cheapest_first.begin(), need.cheapest_first.end(),
                     [&](auto a, auto b) { return work(need.of[a]) < work(need.of[b]); });
  }
};

Need compiled(const Requirement& requirement, Known& known) {
  Need need;
  need.source = &requirement;
  need.number = known.next_need();
  std::visit(Compile{known, need}, requirement.need);
  if (need.valid) need.ends = &known.ends(*need.valid, need.grace);
  if (need.changeover) need.changeover_ends = &known.ends(*need.changeover, std::nullopt);
  return need;
}

class BookMaker {
 public:
  BookMaker(Book& book, Known& known) : book_(book), known_(known) {}

  void make() {
    for (const Tier& tier : book_.rulebook->tiers) tier_gates_[tier.tier] = {&tier, gates(tier.gates)};
    for (const MachineClass& machine_class : book_.rulebook->classes) add(machine_class);
    book_.by_name.resize(known_.names().size(), nullptr);
    for (const auto& [id, target] : book_.targets) book_.by_name[id] = &target;
  }

 private:
  struct TierGates {
    const Tier* tier = nullptr;
    std::vector<const BookGate*> gates;
  };

  std::vector<const BookGate*> gates(const std::vector<Gate>& gates) {
    std::vector<const BookGate*> made;
    for (const Gate& gate : gates) {
      BookGate& one = book_.gates.emplace_back();
      one.gate = &gate;
      one.need = compiled(gate.need, known_);
      if (gate.existing_until) {
        one.spared_until = known_.zone().start(*gate.existing_until + 1);
        one.spared_by = book_.rulebook->effective_from - 1;
      }
      made.push_back(&one);
    }
    return made;
  }

  void add(const MachineClass& machine_class) {
    const NameId id = known_.add_target(machine_class.name);
    book_.classes[id] = &machine_class;
    const auto own = gates(machine_class.gates);
    if (machine_class.modes.empty()) add_target(id, machine_class, own, {});
    for (const std::string& mode : machine_class.modes) {
      const NameId target = known_.add_target(machine_class.name + "/" + mode);
      book_.modes[id].push_back(target);
      const auto found = machine_class.mode_gates.find(mode);
      add_target(
          target, machine_class, own,
          found == machine_class.mode_gates.end() ? std::vector<const BookGate*>{} : gates(found->second));
    }
  }

  void add_target(NameId id, const MachineClass& machine_class, const std::vector<const BookGate*>& own,
                  const std::vector<const BookGate*>& of_mode) {
    const TierGates& tier = tier_gates_[machine_class.tier];
    BookTarget target{id, book_.targets.size(), machine_class.tier, false, tier.gates, {}, {}};
    target.assessor_supervises = machine_class.supervision == Supervision::assessor ||
                                 (tier.tier != nullptr && tier.tier->supervision == Supervision::assessor);
    target.gates.insert(target.gates.end(), own.begin(), own.end());
    target.gates.insert(target.gates.end(), of_mode.begin(), of_mode.end());
    std::sort(target.gates.begin(), target.gates.end(),
              [](const BookGate* a, const BookGate* b) { return a->gate->id < b->gate->id; });
    for (const BookGate* gate : target.gates)
      (gate->gate->guards == Rung::independent ? target.independent : target.supervised).push_back(gate);
    for (auto* guarding : {&target.supervised, &target.independent}) {
      std::stable_sort(guarding->begin(), guarding->end(),
                       [](const BookGate* a, const BookGate* b) { return work(a->need) < work(b->need); });
    }
    book_.tiers[machine_class.tier].push_back(id);
    book_.targets.emplace(id, std::move(target));
  }

  Book& book_;
  Known& known_;
  std::map<int, TierGates> tier_gates_;
};

}  // namespace

const BookTarget* Book::find(NameId target) const {
  return target < by_name.size() ? by_name[target] : nullptr;
}

std::vector<NameId> Book::stands_for(NameId x, const Known& known) const {
  if (find(x) != nullptr) return {x};
  const NameId machine_class = known.class_of(x);
  if (find(machine_class) != nullptr) return {machine_class};
  const auto found = modes.find(x);
  return found == modes.end() ? std::vector<NameId>{} : found->second;
}

std::optional<int> Book::tier_of(NameId x, const Known& known) const {
  const auto found = classes.find(known.class_of(x));
  return found == classes.end() ? std::nullopt : std::optional(found->second->tier);
}

std::vector<Book> books_in_order(Known& known, std::vector<const Rulebook*> order) {
  std::sort(order.begin(), order.end(), [](const Rulebook* a, const Rulebook* b) {
    return std::tie(a->effective_from, a->recorded, a->version) <
           std::tie(b->effective_from, b->recorded, b->version);
  });
  std::vector<Book> books;
  books.reserve(order.size());  // they hold pointers into themselves
  for (std::size_t i = 0; i < order.size(); ++i) {
    const bool last = i + 1 == order.size();
    if (!last && order[i + 1]->effective_from == order[i]->effective_from) continue;
    Book& book = books.emplace_back();
    book.rulebook = order[i];
    book.span = {order[i]->effective_from, last ? forever : order[i + 1]->effective_from};
    BookMaker(book, known).make();
  }
  return books;
}

}  // namespace wm
