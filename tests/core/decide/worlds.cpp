#include "worlds.h"

#include <algorithm>
#include <array>

#include "core/rulebook/json.h"
#include "core/time/times.h"

namespace wm::worlds {

namespace {

constexpr Instant epoch{1735689600};  // 2025-01-01T00:00:00Z
constexpr std::int64_t day_seconds = 86400;

class Maker {
 public:
  explicit Maker(Tape& tape) : tape_(tape) {}

  Shop make() {
    static const std::array zones{"UTC",         "America/Chicago",  "Europe/Lisbon",  "Pacific/Apia",
                                  "Asia/Tehran", "America/St_Johns", "America/Havana", "Australia/Lord_Howe"};
    shop_.zone = *Zone::named(zones[static_cast<std::size_t>(tape_.roll(static_cast<int>(zones.size())))]);
    const int people = 2 + tape_.roll(2);
    for (int i = 0; i < people; ++i) shop_.people.push_back("p" + std::to_string(i));
    const int books = 1 + tape_.roll(3);
    for (int i = 0; i < books; ++i) add_rulebook(i + 1);
    shop_.machines = {{"m0", classes_[0]}, {"m1", classes_[1]}};
    if (tape_.roll(4) != 3) appoint_a_founder();
    const int records = tape_.roll(140);
    for (int i = 0; i < records; ++i) add_record();
    return shop_;
  }

  Instant instant() {
    const Instant day = epoch + tape_.roll(420) * day_seconds;
    switch (tape_.roll(4)) {
      case 0:
        return day;
      case 1:
        return shop_.zone.start(shop_.zone.day(day)) - tape_.roll(2);
      case 2:
        return shop_.records.empty() ? day : pick(shop_.records).at + (tape_.roll(3) - 1);
      default:
        return day + tape_.roll(static_cast<int>(day_seconds));
    }
  }

  std::string any_target() {
    static const std::vector<std::string> all{"saw", "jp", "jp/over", "jp/under", "mill", "jp/side"};
    return pick(all);
  }

 private:
  template <class T>
  const T& pick(const std::vector<T>& of) {
    return of[static_cast<std::size_t>(tape_.roll(static_cast<int>(of.size())))];
  }

  Period period() {
    switch (tape_.roll(3)) {
      case 0:
        return {PeriodUnit::days, 1 + tape_.roll(200)};
      case 1:
        return {PeriodUnit::months, 1 + tape_.roll(6)};
      default:
        return {PeriodUnit::calendar_months, 1 + tape_.roll(3)};
    }
  }
  std::optional<Period> maybe_period() { return tape_.roll(2) == 0 ? std::nullopt : std::optional(period()); }
  std::string item() { return "item" + std::to_string(tape_.roll(2)); }
  Rung rung() { return tape_.roll(2) == 0 ? Rung::supervised : Rung::independent; }

  std::vector<Requirement> needs(int depth) {
    std::vector<Requirement> of;
    const int count = 1 + tape_.roll(3);
    for (int i = 0; i < count; ++i) of.push_back(need(depth));
    return of;
  }

  template <class Item>
  void periods(Item& n) {
    n.valid = maybe_period();
    if (n.valid && tape_.one_in(2)) n.grace = period();
  }

  Requirement need(int depth) {
    switch (tape_.roll(depth > 2 ? 9 : 12)) {
      case 0: {
        NeedDocument n{"paper" + std::to_string(tape_.roll(2)), {}, {}};
        periods(n);
        return {n};
      }
      case 1:
        return {NeedAge{17 + tape_.roll(2)}};
      case 2: {
        NeedLesson n;
        n.lesson = item();
        item_rule(n);
        return {n};
      }
      case 3: {
        NeedQuiz n;
        n.quiz = item();
        n.pass_percent = 60 + 10 * tape_.roll(4);
        item_rule(n);
        if (tape_.one_in(2)) n.retry = retry();
        return {n};
      }
      case 4:
      case 5: {
        NeedCheckout n;
        n.checkout = item();
        item_rule(n);
        if (tape_.one_in(2)) n.revision = RevisionRule::any;
        if (tape_.one_in(3) && depth < 3) n.given = needs(depth + 1);
        if (tape_.one_in(2)) n.renew_after_severity = 1 + tape_.roll(3);
        n.renew_after_change = tape_.one_in(3);
        return {n};
      }
      case 6: {
        NeedPractice n;
        if (tape_.one_in(3)) n.target = own_target();
        if (tape_.one_in(2)) n.minutes = 20 + tape_.roll(80);
        if (!n.minutes || tape_.one_in(2)) n.sessions = 1 + tape_.roll(2);
        n.within = maybe_period();
        return {n};
      }
      case 7: {
        NeedRecentUse n;
        if (tape_.one_in(3)) n.target = own_target();
        n.count = 1 + tape_.roll(2);
        n.within = period();
        return {n};
      }
      case 8: {
        if (tape_.one_in(2)) {
          NeedTierStanding n{1 + tape_.roll(2), rung(), {}};
          if (tape_.one_in(2)) n.count = 1 + tape_.roll(2);
          return {n};
        }
        return {NeedStanding{own_target(), rung()}};
      }
      case 9:
        return {NeedAllOf{needs(depth + 1)}};
      case 10:
        return {NeedAnyOf{needs(depth + 1)}};
      default: {
        NeedSomeOf n{1, needs(depth + 1)};
        n.count = 1 + tape_.roll(static_cast<int>(n.of.size()));
        return {n};
      }
    }
  }

  template <class Item>
  void item_rule(Item& n) {
    periods(n);
    n.revision = tape_.one_in(3) ? RevisionRule::any : RevisionRule::current;
    if (tape_.one_in(3)) n.changeover = period();
  }

  Retry retry() {
    Retry r;
    if (tape_.one_in(2)) r.wait_hours = 1 + tape_.roll(72);
    if (!r.wait_hours || tape_.one_in(2)) {
      r.most = 1 + tape_.roll(2);
      r.in_hours = 1 + tape_.roll(400);
    }
    return r;
  }

  std::string own_target() { return book_targets_.empty() ? "saw" : pick(book_targets_); }

  std::vector<Gate> gates(Rulebook& book, int most) {
    std::vector<Gate> made;
    const int count = tape_.roll(2 * most + 1) / 2;
    for (int i = 0; i < count; ++i) {
      Gate gate{"g" + std::to_string(gate_++), rung(), need(0), {}};
      if (tape_.one_in(4))
        gate.existing_until = shop_.zone.day(book.effective_from + tape_.roll(120) * day_seconds);
      made.push_back(std::move(gate));
    }
    return made;
  }

  void add_rulebook(int version) {
    Rulebook book;
    book.version = version;
    book.effective_from = epoch + (version == 1 ? tape_.roll(30) - 10 : tape_.roll(400)) * day_seconds;
    book.recorded = book.effective_from - tape_.roll(20) * day_seconds;
    const bool with_modes = tape_.roll(4) != 3;
    const bool with_jp = tape_.roll(6) != 5;
    book_targets_ = {"saw"};
    if (with_jp && !with_modes) book_targets_.push_back("jp");
    if (with_jp && with_modes) book_targets_.insert(book_targets_.end(), {"jp/over", "jp/under", "jp"});
    for (int tier = 1; tier <= 2; ++tier) {
      Tier t{tier, {}, {}, tape_.one_in(3) ? Supervision::assessor : Supervision::independent};
      add_conditions(t.conditions);
      t.gates = gates(book, 1);
      book.tiers.push_back(std::move(t));
    }
    add_class(book, "saw", {});
    if (with_jp)
      add_class(book, "jp",
                with_modes ? std::vector<std::string>{"over", "under"} : std::vector<std::string>{});
    if (tape_.one_in(3)) add_class(book, "mill", {});
    simplify(book);
    shop_.rulebooks.push_back(std::move(book));
  }

  void add_class(Rulebook& book, const std::string& name, const std::vector<std::string>& modes) {
    MachineClass c{name, 1 + tape_.roll(2), modes, {}, {}, {}, Supervision::independent};
    if (tape_.one_in(5)) c.supervision = Supervision::assessor;
    add_conditions(c.conditions);
    c.gates = gates(book, 2);
    for (const auto& mode : modes) {
      if (tape_.one_in(3)) c.mode_gates[mode] = gates(book, 1);
    }
    book.classes.push_back(std::move(c));
  }

  void add_conditions(std::vector<Condition>& conditions) {
    if (tape_.one_in(3)) conditions.push_back(Staffed{});
    if (tape_.one_in(3)) {
      conditions.push_back(Buddy{1 + tape_.roll(2), static_cast<Rung>(tape_.roll(3))});
    }
  }

  /// Takes gates away from the end until the rulebook has no mistake (a circle) left.
  static void simplify(Rulebook& book) {
    while (!mistakes_in(book).empty()) {
      if (drop_last(book)) continue;
      break;
    }
  }
  static bool drop_last(Rulebook& book) {
    for (auto c = book.classes.rbegin(); c != book.classes.rend(); ++c) {
      if (!c->mode_gates.empty()) {
        c->mode_gates.clear();
        return true;
      }
      if (!c->gates.empty()) {
        c->gates.pop_back();
        return true;
      }
    }
    for (auto t = book.tiers.rbegin(); t != book.tiers.rend(); ++t) {
      if (!t->gates.empty()) {
        t->gates.pop_back();
        return true;
      }
    }
    return false;
  }

  Scope scope() {
    switch (tape_.roll(3)) {
      case 0:
        return Everything{};
      case 1:
        return TierScope{1 + tape_.roll(2)};
      default:
        return TargetScope{any_target()};
    }
  }
  std::optional<Day> maybe_until(Instant at) {
    if (tape_.roll(2) == 0) return std::nullopt;
    return shop_.zone.day(at + (tape_.roll(200) - 2) * day_seconds);
  }
  const Record* earlier(bool (*fits)(const Record&)) {
    std::vector<const Record*> found;
    for (const Record& r : shop_.records) {
      if (fits(r)) found.push_back(&r);
    }
    return found.empty() ? nullptr : pick(found);
  }

  /// Somebody able to assess from the start, without whom hardly any check-out would count.
  void appoint_a_founder() {
    const Instant at = epoch - day_seconds;
    shop_.records.push_back(
        {"a-founder", at, at, {}, Appoint{"p0", Everything{}, true, shop_.zone.day(at + 500 * day_seconds)}});
  }

  Quiz quiz(const std::string& p) {
    Quiz q{p, item(), tape_.roll(3), 6 + tape_.roll(5), 10, 0};
    if (q.correct < q.total && tape_.one_in(5)) q.critical_missed = 1;
    return q;
  }

  void add_record() {
    Record r;
    const int number = static_cast<int>(shop_.records.size());
    // Ids are not in the order of time, so that ties are decided by them.
    r.id = std::string(1, static_cast<char>('a' + tape_.roll(26))) + std::to_string(number);
    r.at = instant();
    const std::string p = pick(shop_.people), q = pick(shop_.people);
    switch (tape_.roll(22)) {
      case 0:
        r.fact = Birth{p, day_of({2007 + tape_.roll(2), 1 + tape_.roll(12), 1 + tape_.roll(28)})};
        break;
      case 1:
        r.fact = Birth{p, day_of({2008, 2, 29})};
        break;
      case 2:
      case 3:
        r.fact = Document{p, "paper" + std::to_string(tape_.roll(2)), maybe_until(r.at)};
        break;
      case 4:
      case 5:
        r.fact = Lesson{p, item(), tape_.roll(3)};
        break;
      case 6:
      case 7:
      case 8:
        r.fact = quiz(p);
        break;
      case 9:
      case 10:
      case 11:
      case 12: {
        const Outcome outcome = tape_.one_in(6)   ? Outcome::failed
                                : tape_.one_in(8) ? Outcome::stopped
                                                  : Outcome::passed;
        r.fact = Checkout{p, item(), tape_.roll(3), outcome, q};
        break;
      }
      case 13:
        r.fact = Supervised{p, any_target(), 10 + tape_.roll(50), q};
        break;
      case 14:
        r.fact = Use{p, any_target()};
        break;
      case 15:
        r.fact = Incident{p, any_target(), 1 + tape_.roll(4), static_cast<Part>(tape_.roll(4) % 3)};
        break;
      case 16:
        r.fact = Suspend{p, scope(), maybe_until(r.at)};
        break;
      case 17:
      case 18: {
        const bool founding = tape_.one_in(2);
        std::optional<Day> until = maybe_until(r.at);
        if (founding && !until) until = shop_.zone.day(r.at + 300 * day_seconds);
        r.fact = Appoint{p, scope(), founding, until};
        break;
      }
      case 19:
        r.fact = Publish{item(), tape_.roll(3)};
        break;
      case 20:
        r.fact = tape_.roll(2) == 0 ? Fact(Lockout{"m" + std::to_string(tape_.roll(2))})
                                    : Fact(Change{any_target()});
        break;
      default:
        end_something(r);
        break;
    }
    r.recorded = r.at + tape_.roll(3) * day_seconds;
    if (tape_.one_in(8)) r.voided = r.recorded + tape_.roll(60) * day_seconds;
    shop_.records.push_back(std::move(r));
  }

  void end_something(Record& r) {
    const auto suspends = [](const Record& x) { return std::holds_alternative<Suspend>(x.fact); };
    const auto appoints = [](const Record& x) { return std::holds_alternative<Appoint>(x.fact); };
    const auto locks = [](const Record& x) { return std::holds_alternative<Lockout>(x.fact); };
    const int kind = tape_.roll(3);
    const Record* ended = kind == 0 ? earlier(suspends) : kind == 1 ? earlier(appoints) : earlier(locks);
    if (ended == nullptr) {
      r.fact = Use{shop_.people[0], "saw"};
      return;
    }
    r.at = std::max(r.at, ended->at);
    if (kind == 0) r.fact = Reinstate{ended->id};
    if (kind == 1) r.fact = Dismiss{ended->id};
    if (kind == 2) r.fact = Release{ended->id};
  }

  Tape& tape_;
  Shop shop_;
  std::vector<std::string> book_targets_;
  std::vector<std::string> classes_{"saw", "jp"};
  int gate_ = 0;
};

}  // namespace

Shop shop_from(Tape& tape) { return Maker(tape).make(); }

Instant instant_from(Tape& tape, const Shop& shop) {
  const auto near = [&](Instant t) { return t + (tape.roll(3) - 1); };
  switch (tape.roll(5)) {
    case 0:
      if (!shop.records.empty()) {
        return near(
            shop.records[static_cast<std::size_t>(tape.roll(static_cast<int>(shop.records.size())))].at);
      }
      [[fallthrough]];
    case 1:
      return near(shop.zone.start(shop.zone.day(epoch + tape.roll(800) * day_seconds)));
    case 2:
      return near(shop.rulebooks[static_cast<std::size_t>(tape.roll(static_cast<int>(shop.rulebooks.size())))]
                      .effective_from);
    case 3:
      return near(shop.zone.start(
          end(shop.zone.day(epoch + tape.roll(420) * day_seconds), {PeriodUnit::months, 1 + tape.roll(12)})));
    default:
      return epoch + tape.roll(800) * day_seconds + tape.roll(static_cast<int>(day_seconds));
  }
}

std::string target_from(Tape& tape, const Shop&) {
  static const std::array all{"saw", "jp/over", "jp/under", "jp", "mill", "jp/side"};
  return all[static_cast<std::size_t>(tape.roll(static_cast<int>(all.size())))];
}

}  // namespace wm::worlds
