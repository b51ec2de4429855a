// The engine's side of the judges from outside: makes shops as scenario files, and answers scenario files.
//
//   oracle_worlds shops SEED COUNT MOST   COUNT random shops without asks, a scenario a line, of MOST records
//   at most oracle_worlds answer                  for each scenario (a line of standard input) a line: the
//   list of its answers oracle_worlds ends SEED COUNT         "DAY UNIT COUNT END": all days of some years,
//   and COUNT random ones
#include <cstdio>
#include <iostream>
#include <random>
#include <set>

#include "core/json/writing.h"
#include "core/records/json.h"
#include "core/rulebook/json.h"
#include "core/scenario/scenario.h"
#include "core/time/period.h"
#include "core/time/text.h"
#include "tests/core/decide/worlds.h"

using namespace wm;

namespace {

/// The names that a scenario file may use: those that some rulebook defines.
struct Names {
  std::set<std::string> on, classes;
  std::set<int> tiers;

  explicit Names(const Shop& shop) {
    for (const Rulebook& book : shop.rulebooks) {
      for (const auto& target : targets_of(book)) on.insert(target);
      for (const auto& c : book.classes) {
        on.insert(c.name);
        classes.insert(c.name);
      }
      for (const auto& tier : book.tiers) tiers.insert(tier.tier);
    }
  }
  bool know(const Scope& scope) const {
    if (const auto* tier = std::get_if<TierScope>(&scope)) return tiers.contains(tier->tier);
    if (const auto* target = std::get_if<TargetScope>(&scope)) return on.contains(target->target);
    return true;
  }
};

/// Keeps what a scenario file may say, and of the records about `most`.
void make_fit(Shop& shop, std::mt19937& random, std::size_t most) {
  const Names names(shop);
  std::erase_if(shop.machines, [&](const Machine& m) { return !names.classes.contains(m.machine_class); });
  const double share = static_cast<double>(most) / static_cast<double>(std::max(most, shop.records.size()));
  std::bernoulli_distribution keep(share);
  std::set<std::string> kept, machines;
  for (const Machine& m : shop.machines) machines.insert(m.id);
  std::erase_if(shop.records, [&](const Record& r) {
    const bool fits = std::visit(
        [&]<class F>(const F& fact) {
          if constexpr (requires { fact.target; }) return names.on.contains(fact.target);
          if constexpr (requires { fact.scope; }) return names.know(fact.scope);
          if constexpr (requires { fact.machine; }) return machines.contains(fact.machine);
          if constexpr (requires { fact.suspension; }) return kept.contains(fact.suspension);
          if constexpr (requires { fact.appointment; }) return kept.contains(fact.appointment);
          if constexpr (requires { fact.lockout; }) return kept.contains(fact.lockout);
          return true;
        },
        r.fact);
    const bool stays = fits && (r.id == "a-founder" || keep(random));
    if (stays) kept.insert(r.id);
    return !stays;
  });
}

template <class T, class Each>
std::string list(const std::vector<T>& items, const Each& each) {
  std::vector<std::string> texts;
  for (const T& item : items) texts.push_back(each(item));
  return json::compact(texts);
}

std::string scenario_text(const Shop& shop) {
  const auto person = [](const PersonId& p) { return "{\"id\":" + json::in_quotes(p) + "}"; };
  const auto machine = [](const Machine& m) {
    return "{\"id\":" + json::in_quotes(m.id) + ",\"class\":" + json::in_quotes(m.machine_class) + "}";
  };
  return "{\"zone\":" + json::in_quotes(shop.zone.name()) + ",\"people\":" + list(shop.people, person) +
         ",\"machines\":" + list(shop.machines, machine) +
         ",\"rulebooks\":" + list(shop.rulebooks, [](const Rulebook& b) { return to_json(b); }) +
         ",\"records\":" + list(shop.records, [](const Record& r) { return to_json(r); }) + ",\"asks\":[]}";
}

int shops(std::uint32_t seed, int count, std::size_t most) {
  std::mt19937 random(seed);
  for (int i = 0; i < count; ++i) {
    std::vector<std::uint32_t> numbers(9000);
    for (auto& n : numbers) n = static_cast<std::uint32_t>(random()) >> 4;
    worlds::Tape tape(std::move(numbers));
    Shop shop = worlds::shop_from(tape);
    make_fit(shop, random, most);
    std::cout << scenario_text(shop) << '\n';
  }
  return 0;
}

int complain(const Problem& problem) {
  std::cerr << problem.where << ": " << problem.what << ' ' << problem.remedy << '\n';
  return 2;
}

int answers() {
  for (std::string line; std::getline(std::cin, line);) {
    const auto scenario = read_scenario(line);
    if (!scenario) return complain(scenario.error().front());
    std::cout << json::compact(answer(*scenario)) << '\n';
  }
  return 0;
}

void end_line(Day from, Period period) {
  static const char* const words[]{"days", "months", "calendar_months"};
  const Day last = end(from, period);
  if (last > last_day) return;
  std::cout << to_text(from) << ' ' << words[static_cast<int>(period.unit)] << ' ' << period.count << ' '
            << to_text(last) << '\n';
}

int ends(std::uint32_t seed, int count) {
  constexpr PeriodUnit units[]{PeriodUnit::days, PeriodUnit::months, PeriodUnit::calendar_months};
  for (const int year : {1900, 1999, 2000, 2023, 2024, 2099, 2100, 2400, 2900}) {
    for (Day d = day_of({year, 1, 1}); d < day_of({year + 1, 1, 1}); d = d + 1) {
      for (const PeriodUnit unit : units) {
        for (const int n : {1, 2, 3, 6, 11, 12, 13, 24, 30, 36, 48, 90, 365, 1200}) end_line(d, {unit, n});
      }
    }
  }
  std::mt19937 random(seed);
  std::uniform_int_distribution<std::int32_t> days(first_day.number, last_day.number);
  for (int i = 0; i < count; ++i) {
    const PeriodUnit unit = units[random() % 3];
    const int most = unit == PeriodUnit::days ? 36525 : 1200;
    const int n = 1 + static_cast<int>(random() % static_cast<std::uint32_t>(most));
    end_line(Day{days(random)}, {unit, n});
  }
  return 0;
}

}  // namespace

int main(int count, char** words) {
  std::ios::sync_with_stdio(false);
  const std::vector<std::string> given(words + 1, words + count);
  const auto number = [&](std::size_t i) { return static_cast<std::uint32_t>(std::stoul(given[i])); };
  if (given.size() == 4 && given[0] == "shops")
    return shops(number(1), static_cast<int>(number(2)), number(3));
  if (given.size() == 1 && given[0] == "answer") return answers();
  if (given.size() == 3 && given[0] == "ends") return ends(number(1), static_cast<int>(number(2)));
  std::cerr << "usage: oracle_worlds shops SEED COUNT MOST | answer | ends SEED COUNT\n";
  return 2;
}
