#include <catch2/catch.hpp>

#include <random>

#include "core/decide/changes.h"
#include "core/decide/current.h"
#include "plain_evaluator.h"
#include "worlds.h"

using namespace wm;

namespace {

struct World {
  worlds::Tape tape;
  Shop shop;
  std::optional<Instant> known;
};

World world(std::mt19937& random) {
  std::vector<std::uint32_t> numbers(9000);
  for (auto& n : numbers) n = static_cast<std::uint32_t>(random()) >> 4;
  worlds::Tape tape(numbers);
  Shop shop = worlds::shop_from(tape);
  std::optional<Instant> known;
  if (tape.one_in(3)) known = worlds::instant_from(tape, shop);
  return {tape, std::move(shop), known};
}

std::set<TargetName> targets_in_force(const plain::Evaluator& plain, Instant at) {
  const Rulebook* book = plain.book(at);
  if (book == nullptr) return {};
  const auto targets = targets_of(*book);
  return {targets.begin(), targets.end()};
}

std::vector<StandingChange> differing(const Shop& shop, const plain::Evaluator& before,
                                      const plain::Evaluator& after, const std::set<TargetName>& targets,
                                      Instant at) {
  std::vector<StandingChange> found;
  for (const PersonId& p : shop.people) {
    for (const TargetName& x : targets) {
      const StandingChange c{p, x, before.standing(p, x, at), after.standing(p, x, at)};
      if (c.before != c.after) found.push_back(c);
    }
  }
  return found;
}

}  // namespace

TEST_CASE("what rests on a record is what changes for the plain evaluator without it", "[decide]") {
  std::mt19937 random(1);
  std::size_t changed = 0;
  for (int i = 0; i < 150; ++i) {
    World w = world(random);
    Current current(w.shop, w.known);
    for (const Record& record : w.shop.records) {
      const Instant at = worlds::instant_from(w.tape, w.shop);
      Shop without = w.shop;
      std::erase_if(without.records, [&](const Record& r) { return r.id == record.id; });
      const plain::Evaluator before(w.shop, w.known), after(without, w.known);
      const auto expected = differing(w.shop, before, after, targets_in_force(before, at), at);
      INFO("world " << i << ", record " << record.id);
      REQUIRE(current.rests_on(record.id, at) == expected);
      changed += expected.size();
    }
  }
  CHECK(changed > 100);
}

TEST_CASE("a supposed rulebook changes what it changes for the plain evaluator", "[decide]") {
  std::mt19937 random(2);
  std::size_t changed = 0;
  for (int i = 0; i < 400; ++i) {
    World w = world(random);
    const Rulebook supposed = world(random).shop.rulebooks[0];
    const Instant at = worlds::instant_from(w.tape, w.shop);
    Shop other = w.shop;
    std::erase_if(other.rulebooks, [&](const Rulebook& b) { return b.effective_from >= at; });
    other.rulebooks.push_back(supposed);
    other.rulebooks.back().effective_from = at;
    other.rulebooks.back().recorded = Instant{-4'000'000'000};
    const plain::Evaluator before(w.shop, w.known), after(other, w.known);
    auto targets = targets_in_force(before, at);
    targets.merge(targets_in_force(after, at));
    const auto expected = differing(w.shop, before, after, targets, at);
    INFO("world " << i);
    REQUIRE(Current(w.shop, w.known).what_if(supposed, at) == expected);
    changed += expected.size();
  }
  CHECK(changed > 100);
}

TEST_CASE("every fall is one for the plain evaluator, and no other instant has one", "[decide]") {
  std::mt19937 random(3);
  std::size_t fallen = 0;
  for (int i = 0; i < 200; ++i) {
    World w = world(random);
    Decider decider(w.shop, w.known);
    const plain::Evaluator plain(w.shop, w.known);
    const Instant from{1735689600}, to = from + 800 * std::int64_t{86400};
    const auto found = drops(decider, from, to);
    INFO("world " << i);
    for (const Drop& d : found) {
      REQUIRE(plain.standing(d.person, d.target, d.at - 1) == d.before);
      REQUIRE(plain.standing(d.person, d.target, d.at) == d.after);
      REQUIRE(d.after < d.before);
    }
    fallen += found.size();
    for (int k = 0; k < 50; ++k) {
      const Instant t = worlds::instant_from(w.tape, w.shop);
      for (const PersonId& p : w.shop.people) {
        for (const TargetName& x : decider.targets()) {
          const Drop d{t, p, x, plain.standing(p, x, t - 1), plain.standing(p, x, t)};
          if (d.after >= d.before || t <= from || t > to) continue;
          REQUIRE(std::find(found.begin(), found.end(), d) != found.end());
        }
      }
    }
  }
  CHECK(fallen > 100);
}
