// What a designated initialiser does not name keeps its default, on purpose.
#pragma GCC diagnostic ignored "-Wmissing-field-initializers"

#include "generators.h"

#include <algorithm>

namespace wm::gen {

namespace {

using rc::Gen;
// Ranges written as in the documentation: both ends included.
Gen<int> whole(int low, int high) { return rc::gen::inRange(low, high + 1); }

template <class T>
Gen<std::optional<T>> maybe(Gen<T> some) {
  return rc::gen::oneOf(rc::gen::just(std::optional<T>()), rc::gen::map(std::move(some), [](T value) {
                          return std::optional<T>(std::move(value));
                        }));
}

std::string utf8(char32_t c) {
  const auto byte = [](char32_t b) { return static_cast<char>(static_cast<unsigned char>(b)); };
  if (c < 0x80) return {byte(c)};
  if (c < 0x800) return {byte(0xC0 | c >> 6), byte(0x80 | (c & 63))};
  if (c < 0x10000) return {byte(0xE0 | c >> 12), byte(0x80 | (c >> 6 & 63)), byte(0x80 | (c & 63))};
  return {byte(0xF0 | c >> 18), byte(0x80 | (c >> 12 & 63)), byte(0x80 | (c >> 6 & 63)),
          byte(0x80 | (c & 63))};
}

Gen<std::string> character() {
  const auto range = [](int low, int high) {
    return rc::gen::map(whole(low, high), [](int c) { return utf8(static_cast<char32_t>(c)); });
  };
  return rc::gen::oneOf(range(0x20, 0x7E), range(0x01, 0x1F),
                        rc::gen::element<std::string>("\"", "\\", "/", "~", "\x7F"), range(0xA0, 0x24F),
                        range(0x370, 0x5FF), range(0x900, 0xDFF), range(0x3040, 0x9FFF),
                        range(0xE000, 0xFFFF), range(0x1F300, 0x1F6FF), range(0x10FFF0, 0x10FFFF));
}

/// As a name of a class or mode.
Gen<std::string> plain() {
  return rc::gen::suchThat(text(), [](const std::string& t) { return t.find('/') == std::string::npos; });
}

Gen<Scope> scope() {
  return rc::gen::oneOf(rc::gen::just(Scope(Everything{})),
                        rc::gen::map(whole(1, 99), [](int tier) { return Scope(TierScope{tier}); }),
                        rc::gen::map(text(), [](std::string t) { return Scope(TargetScope{std::move(t)}); }));
}

Quiz quiz() {
  Quiz q{*text(), *text(), *whole(0, 1'000'000), 0, *whole(1, 10'000), 0};
  q.correct = *whole(0, q.total);
  q.critical_missed = *whole(0, q.total - q.correct);
  return q;
}

Appoint appoint() {
  Appoint a{*text(), *scope(), *rc::gen::arbitrary<bool>(), *maybe(day())};
  if (a.founding && !a.until) a.until = *day();
  return a;
}

Fact fact() {
  const auto revision = whole(0, 1'000'000);
  switch (*whole(0, 15)) {
    case 0:
      return Birth{*text(), *day()};
    case 1:
      return Document{*text(), *text(), *maybe(day())};
    case 2:
      return Lesson{*text(), *text(), *revision};
    case 3:
      return quiz();
    case 4:
      return Checkout{*text(), *text(), *revision,
                      *rc::gen::element(Outcome::passed, Outcome::failed, Outcome::stopped), *text()};
    case 5:
      return Supervised{*text(), *text(), *whole(1, 1440), *text()};
    case 6:
      return Use{*text(), *text()};
    case 7:
      return Incident{*text(), *text(), *whole(1, 4),
                      *rc::gen::element(Part::operating, Part::supervising, Part::hurt, Part::saw)};
    case 8:
      return Suspend{*text(), *scope(), *maybe(day())};
    case 9:
      return Reinstate{*text()};
    case 10:
      return appoint();
    case 11:
      return Dismiss{*text()};
    case 12:
      return Publish{*text(), *revision};
    case 13:
      return Lockout{*text()};
    case 14:
      return Release{*text()};
    default:
      return Change{*text()};
  }
}

/// Fills a rulebook whose names are already there. A gate may ask for standings on `below` alone, the classes
/// that came before its own, so that there is no circle.
class RulebookMaker {
 public:
  Rulebook make() {
    book_.version = *whole(1, 1'000'000);
    book_.effective_from = *instant();
    book_.recorded = *instant();
    if (*rc::gen::arbitrary<bool>()) book_.four_eyes.push_back(FourEyes::strike_out);
    if (*rc::gen::arbitrary<bool>()) book_.four_eyes.push_back(FourEyes::reinstate);
    book_.close_may_sign = *rc::gen::arbitrary<bool>();
    if (*rc::gen::arbitrary<bool>()) book_.keep_details = Period{PeriodUnit::months, 84};
    book_.learners_to_one = *maybe(whole(1, 100));
    for (const int tier : *rc::gen::unique<std::vector<int>>(whole(1, 99)))
      book_.tiers.push_back({.tier = tier});
    if (book_.tiers.empty()) return book_;
    for (const auto& name : *rc::gen::resize(5, rc::gen::unique<std::vector<std::string>>(plain())))
      add_class(name);
    for (Tier& tier : book_.tiers) {
      below_.clear();
      tier.gates = gates();
      tier.conditions = conditions();
      tier.supervision = supervision();
      tier.other_checks_out = *rc::gen::inRange(0, 4) == 0;
      tier.two_assessors = *rc::gen::inRange(0, 4) == 0;
      if (*rc::gen::inRange(0, 4) == 0) tier.supervises_at_once = *whole(1, 20);
    }
    return book_;
  }

 private:
  void add_class(const std::string& name) {
    MachineClass c{.name = name,
                   .tier = book_.tiers[*rc::gen::inRange<std::size_t>(0, book_.tiers.size())].tier};
    c.modes = *rc::gen::resize(3, rc::gen::unique<std::vector<std::string>>(plain()));
    c.gates = gates();
    for (const auto& mode : c.modes)
      if (*rc::gen::arbitrary<bool>()) c.mode_gates[mode] = gates();
    c.conditions = conditions();
    c.supervision = supervision();
    book_.classes.push_back(c);
    below_.push_back(name);
    for (const auto& mode : c.modes) below_.push_back(name + "/" + mode);
  }

  Supervision supervision() { return *rc::gen::element(Supervision::independent, Supervision::assessor); }

  std::vector<Condition> conditions() {
    const auto buddy = rc::gen::map(rc::gen::pair(whole(1, 100'000), any_rung()), [](auto b) {
      return Condition(Buddy{b.first, b.second});
    });
    return *rc::gen::resize(3, rc::gen::container<std::vector<Condition>>(
                                   rc::gen::oneOf(rc::gen::just(Condition(Staffed{})), buddy)));
  }

  static Gen<Rung> any_rung() { return rc::gen::element(Rung::barred, Rung::supervised, Rung::independent); }
  static Gen<Rung> rung() { return rc::gen::element(Rung::supervised, Rung::independent); }

  std::vector<Gate> gates() {
    std::vector<Gate> list;
    for (int left = *whole(0, 2); left > 0; --left)
      list.push_back({std::to_string(next_gate_++) + *text(), *rung(), need(3), *maybe(day())});
    return list;
  }

  std::vector<Requirement> needs(int deep, int least) {
    std::vector<Requirement> list;
    for (int left = *whole(least, 2); left > 0; --left) list.push_back(need(deep));
    return list;
  }

  template <class Need>
  Need timed(Need n) {
    n.valid = *maybe(period());
    if (n.valid) n.grace = *maybe(period());
    return n;
  }
  template <class Need>
  Need revised(Need n) {
    n.revision = *rc::gen::element(RevisionRule::any, RevisionRule::current);
    n.changeover = *maybe(period());
    return timed(n);
  }
  std::optional<TargetName> some_target() {
    if (below_.empty() || *rc::gen::arbitrary<bool>()) return std::nullopt;
    return below_[*rc::gen::inRange<std::size_t>(0, below_.size())];
  }

  NeedQuiz quiz_need() {
    auto n = revised(NeedQuiz{.quiz = *text(), .pass_percent = *whole(1, 100)});
    Retry retry{*maybe(whole(1, 100'000)), *maybe(whole(1, 100'000)), std::nullopt};
    if (retry.most) retry.in_hours = *whole(1, 100'000);
    if (retry.most || retry.wait_hours) n.retry = retry;
    return n;
  }
  NeedCheckout checkout_need(int deep) {
    auto n = revised(NeedCheckout{.checkout = *text()});
    if (deep > 0) n.given = needs(deep - 1, 0);
    n.renew_after_severity = *maybe(whole(1, 3));
    n.renew_after_change = *rc::gen::arbitrary<bool>();
    return n;
  }
  NeedPractice practice_need() {
    NeedPractice n{some_target(), *maybe(whole(1, 1'000'000)), *maybe(whole(1, 100'000)), *maybe(period())};
    if (!n.minutes && !n.sessions) n.sessions = 1;
    return n;
  }
  Requirement standing_need() {
    const auto target = some_target();
    if (!target) return {NeedAge{*whole(1, 120)}};
    return {NeedStanding{*target, *rung()}};
  }
  Requirement some_of(int deep) {
    NeedSomeOf n{1, needs(deep - 1, 1)};
    n.count = *whole(1, static_cast<int>(n.of.size()));
    return {n};
  }

  Requirement need(int deep) {
    switch (*whole(0, deep > 0 ? 10 : 7)) {
      case 0:
        return {timed(NeedDocument{.document = *text()})};
      case 1:
        return {NeedAge{*whole(1, 120)}};
      case 2:
        return {revised(NeedLesson{.lesson = *text()})};
      case 3:
        return {quiz_need()};
      case 4:
        return {checkout_need(deep)};
      case 5:
        return {practice_need()};
      case 6:
        return {NeedRecentUse{some_target(), *whole(1, 100'000), *period()}};
      case 7:
        return standing_need();
      case 8:
        return {NeedAllOf{needs(deep - 1, 1)}};
      case 9:
        return {NeedAnyOf{needs(deep - 1, 1)}};
      default:
        return some_of(deep);
    }
  }

  Rulebook book_;
  std::vector<TargetName> below_;
  int next_gate_ = 0;
};

}  // namespace

Gen<std::string> text() {
  return rc::gen::map(rc::gen::resize(6, rc::gen::container<std::vector<std::string>>(character())),
                      [](const std::vector<std::string>& characters) {
                        std::string all;
                        for (const auto& c : characters) all += c;
                        return all;
                      });
}

Gen<Instant> instant() {
  return rc::gen::map(rc::gen::inRange(first_instant.seconds, last_instant.seconds + 1),
                      [](std::int64_t s) { return Instant{s}; });
}

Gen<Day> day() {
  return rc::gen::map(whole(first_day.number, last_day.number), [](int n) { return Day{n}; });
}

Gen<Period> period() {
  return rc::gen::oneOf(rc::gen::map(whole(1, 36'525),
                                     [](int n) {
                                       return Period{PeriodUnit::days, n};
                                     }),
                        rc::gen::map(whole(1, 1200),
                                     [](int n) {
                                       return Period{PeriodUnit::months, n};
                                     }),
                        rc::gen::map(whole(1, 1200), [](int n) {
                          return Period{PeriodUnit::calendar_months, n};
                        }));
}

Gen<Record> record() {
  return rc::gen::exec([] {
    Record r{*rc::gen::suchThat(text(), [](const auto& id) { return !id.starts_with("step-"); }), *instant(),
             *instant(), std::nullopt, fact()};
    if (*rc::gen::arbitrary<bool>())
      r.voided = Instant{*rc::gen::inRange(r.recorded.seconds, last_instant.seconds + 1)};
    return r;
  });
}

Gen<Rulebook> rulebook() {
  return rc::gen::exec([] { return RulebookMaker().make(); });
}

}  // namespace wm::gen
