// What W's rulebooks say.
#include <algorithm>
#include <array>
#include <cstdlib>

#include "world.h"

namespace wm::bench {

namespace {

constexpr int modes = 3;

using Names = std::array<const char*, 12>;
constexpr std::array<Names, 4> single{
    Names{"scroll-saw", "belt-sander", "drill-press", "spindle-sander", "dowel-jig", "arbor-press",
          "hand-shear", "bench-grinder", "tap-stand", "notcher", "sewing-machine", "vinyl-cutter"},
    Names{"bandsaw", "router-table", "disc-sander", "mortiser", "drum-sander", "cold-saw", "finger-brake",
          "slip-roll", "spot-welder", "metal-bandsaw", "laser-cutter", "heat-press"},
    Names{"jointer", "thickness-planer", "mitre-saw", "panel-saw", "wood-lathe", "bench-mill", "metal-lathe",
          "press-brake", "mig-welder", "surface-grinder", "kiln", "embroidery-machine"},
    Names{"table-saw", "spindle-moulder", "router-cnc", "log-mill", "copy-lathe", "mill-cnc", "tig-welder",
          "plasma-cutter", "turret-punch", "forge-hammer", "fibre-laser", "glass-furnace"}};
constexpr std::array<const char*, 4> combined{"print-station", "cutting-table", "router-centre",
                                              "combination-planer"};
constexpr std::array<std::array<const char*, modes>, 4> mode_names{
    std::array{"fine", "large", "dual"}, std::array{"knife", "crease", "kiss"},
    std::array{"two-axis", "three-axis", "rotary"}, std::array{"surfacing", "thicknessing", "moulding"}};
constexpr std::array<const char*, 3> families{"wood", "metal", "making"};

constexpr Period months(int n) { return {PeriodUnit::months, n}; }
constexpr Period days(int n) { return {PeriodUnit::days, n}; }

Requirement document(std::string name, std::optional<Period> valid = {}, std::optional<Period> grace = {}) {
  return {NeedDocument{std::move(name), valid, grace}};
}
Requirement any_of(std::vector<Requirement> of) { return {NeedAnyOf{std::move(of)}}; }
Requirement all_of(std::vector<Requirement> of) { return {NeedAllOf{std::move(of)}}; }
Requirement some_of(int count, std::vector<Requirement> of) { return {NeedSomeOf{count, std::move(of)}}; }
Requirement tier_standing(int tier, Rung at_least, std::optional<int> count) {
  return {NeedTierStanding{tier, at_least, count}};
}
Requirement practice(std::optional<int> minutes, std::optional<int> sessions,
                     std::optional<Period> within = {}) {
  return {NeedPractice{std::nullopt, minutes, sessions, within}};
}
Requirement recent_use(int count, Period within) { return {NeedRecentUse{std::nullopt, count, within}}; }

/// Writes one version.
class BookWriter {
 public:
  BookWriter(int version, Day from, const std::vector<WorldTarget>& targets, const Zone& zone)
      : version_(version), from_(from), targets_(targets), columns_(static_cast<int>(targets.size()) / 4) {
    book_.version = version;
    book_.effective_from = zone.start(from);
    book_.recorded = book_.effective_from - 20 * 86400;
  }

  Rulebook write() {
    for (int tier = 1; tier <= 4; ++tier) book_.tiers.push_back(tier_rules(tier));
    for (const WorldTarget& target : targets_) add(target);
    return std::move(book_);
  }

 private:
  Tier tier_rules(int tier) {
    Tier rules;
    rules.tier = tier;
    const std::string of_tier = "-" + std::to_string(tier);
    rules.gates = {{"induction" + of_tier, Rung::supervised, induction(), {}},
                   {"age" + of_tier, Rung::supervised, {NeedAge{std::array{14, 14, 16, 18}[tier - 1]}}, {}},
                   {"safety" + of_tier, Rung::supervised, safety(tier), spared()},
                   {"ground" + of_tier, Rung::independent, ground(tier), {}}};
    if (tier >= 3) rules.conditions.push_back(Buddy{1, Rung::supervised});
    if (tier == 4) rules.conditions.push_back(Staffed{});
    if (tier == 4 && version_ == 3) rules.supervision = Supervision::assessor;
    return rules;
  }

  /// The later versions spare, for three quarters of a year, whoever was there before.
  std::optional<Day> spared() const {
    return version_ == 1 ? std::nullopt : std::optional(end(from_, months(9)));
  }

  Requirement induction() const {
    return version_ == 1 ? document("induction", months(24)) : document("induction", months(12), days(30));
  }

  Requirement safety(int tier) const {
    NeedLesson need;
    need.lesson = safety_of(tier);
    if (version_ == 1) need.revision = RevisionRule::any;
    if (version_ >= 2) need.changeover = days(90);
    if (version_ == 3) {
      need.valid = months(60);
      need.grace = days(60);
    }
    return {need};
  }

  Requirement ground(int tier) const {
    const auto at_most = [&](int count) { return std::min(count, columns_); };
    switch (tier) {
      case 1:
        return any_of({document("membership", Period{PeriodUnit::calendar_months, 12}), document("course")});
      case 2:
        return tier_standing(1, Rung::independent, 1);
      case 3:
        return tier_standing(2, Rung::supervised, at_most(3));
      default:
        return any_of({tier_standing(3, Rung::independent, at_most(2)),
                       all_of({tier_standing(1, Rung::supervised, std::nullopt), document("certificate")})});
    }
  }

  void add(const WorldTarget& target) {
    if (book_.classes.empty() || book_.classes.back().name != target.machine_class) {
      MachineClass one;
      one.name = target.machine_class;
      one.tier = target.tier;
      one.gates = {{one.name + "-quiz", Rung::supervised, quiz(target), {}},
                   {one.name + "-kept-up", Rung::independent, kept_up(target.tier), spared()}};
      book_.classes.push_back(std::move(one));
    }
    MachineClass& one = book_.classes.back();
    const std::vector<Gate> own{{target.name + "-checkout", Rung::independent, checkout(target), {}},
                                basis(target)};
    if (target.mode.empty()) {
      one.gates.insert(one.gates.end(), own.begin(), own.end());
    } else {
      one.modes.push_back(target.mode);
      one.mode_gates[target.mode] = own;
    }
  }

  Requirement quiz(const WorldTarget& target) const {
    NeedQuiz need;
    need.quiz = quiz_of(target);
    need.pass_percent = version_ == 1 ? 70 : 80;
    if (version_ == 1) {
      need.revision = RevisionRule::any;
      return {need};
    }
    need.changeover = days(90);
    need.valid = months(36);
    need.grace = days(30);
    need.retry = Retry{24, 3, 720};
    return {need};
  }

  Requirement checkout(const WorldTarget& target) const {
    NeedCheckout need;
    need.checkout = target.name;
    if (version_ == 1) return {need};
    need.valid = months(checkout_months(target.tier));
    need.grace = days(60);
    if (target.tier >= 2) need.renew_after_severity = 2;
    need.renew_after_change = target.column % 3 == 0;
    need.given.push_back(target.tier <= 2 ? practice(std::nullopt, 1) : practice(60, 2));
    if (version_ == 3 && target.tier == 4) {
      need.revision = RevisionRule::current;
      need.changeover = months(12);
      need.given.push_back({NeedLesson{safety_of(4), RevisionRule::any, {}, {}, {}}});
    }
    return {need};
  }

  Requirement kept_up(int tier) const {
    if (version_ == 1) return practice(std::nullopt, 1);
    if (tier <= 2) return recent_use(1, months(12));
    if (tier == 3) return any_of({recent_use(2, months(12)), practice(120, std::nullopt, months(12))});
    return some_of(2, {recent_use(2, months(18)), practice(std::nullopt, 1, months(30)),
                       document("refresher", months(24))});
  }

  Gate basis(const WorldTarget& target) const {
    if (target.tier == 1) {
      return {target.name + "-basis",
              Rung::supervised,
              {NeedLesson{intro_of(target), RevisionRule::any, {}, {}, {}}},
              {}};
    }
    const TargetName below =
        targets_[static_cast<std::size_t>((target.tier - 2) * columns_ + target.column)].name;
    const Rung rung = target.tier == 2 ? Rung::supervised : Rung::independent;
    return {target.name + "-basis", rung, {NeedStanding{below, rung}}, {}};
  }

  int version_;
  Day from_;
  const std::vector<WorldTarget>& targets_;
  int columns_;
  Rulebook book_;
};

}  // namespace

std::vector<WorldTarget> world_targets(int count) {
  const int columns = count / 4;
  const int singles = columns >= 5 ? columns - modes : columns;
  if (count % 4 != 0 || columns < 1 || singles > 12) std::abort();
  std::vector<WorldTarget> targets;
  for (int tier = 1; tier <= 4; ++tier) {
    const auto t = static_cast<std::size_t>(tier - 1);
    for (int column = 0; column < columns; ++column) {
      WorldTarget one;
      one.tier = tier;
      one.column = column;
      one.family = families[static_cast<std::size_t>(column * 3 / columns)];
      if (column < singles) {
        one.machine_class = one.name = single[t][static_cast<std::size_t>(column)];
      } else {
        one.machine_class = combined[t];
        one.mode = mode_names[t][static_cast<std::size_t>(column - singles)];
        one.name = one.machine_class + "/" + one.mode;
      }
      targets.push_back(std::move(one));
    }
  }
  return targets;
}

std::string quiz_of(const WorldTarget& target) { return target.family + "-" + std::to_string(target.tier); }
std::string intro_of(const WorldTarget& target) { return target.family + "-intro"; }
std::string safety_of(int tier) { return "safety-" + std::to_string(tier); }
int checkout_months(int tier) { return std::array{48, 36, 24, 24}[static_cast<std::size_t>(tier - 1)]; }

std::vector<Rulebook> world_rulebooks(const std::vector<WorldTarget>& targets, const Zone& zone) {
  return {BookWriter(1, day_of({2016, 1, 1}), targets, zone).write(),
          BookWriter(2, day_of({2019, 7, 1}), targets, zone).write(),
          BookWriter(3, day_of({2023, 1, 1}), targets, zone).write()};
}

Rulebook edited(const Rulebook& rulebook) {
  Rulebook other = rulebook;
  for (Tier& tier : other.tiers) {
    for (Gate& gate : tier.gates) {
      if (gate.id.starts_with("induction")) gate.need = document("induction", months(6), days(30));
    }
  }
  return other;
}

}  // namespace wm::bench
