// A shop that is kept current, held against one made anew after every record.
#include <catch2/catch.hpp>

#include <random>

#include "core/decide/current.h"
#include "core/decide/decider.h"
#include "core/time/times.h"
#include "plain_evaluator.h"
#include "worlds.h"

using namespace wm;

namespace {

/// Where two step functions differ first, and from where on no more: by looking at each change of either.
std::optional<Shift> shift(const PersonId& person, const TargetName& target, const Steps<Rung>& before,
                           const Steps<Rung>& after) {
  std::vector<Instant> moments{beginning};
  for (const auto& change : before.changes()) moments.push_back(change.at);
  for (const auto& change : after.changes()) moments.push_back(change.at);
  std::sort(moments.begin(), moments.end());
  std::optional<Shift> found;
  bool differs = false;
  for (const Instant t : moments) {
    const bool now = before.at(t) != after.at(t);
    if (now && !found) found = Shift{person, target, t, {}};
    if (!now && differs) found->until = t;
    if (now) found->until = std::nullopt;
    differs = now;
  }
  return found;
}

worlds::Tape tape_of(std::mt19937& random) {
  std::vector<std::uint32_t> numbers(9000);
  for (auto& n : numbers) n = static_cast<std::uint32_t>(random()) >> 4;
  return worlds::Tape(numbers);
}

/// The records of a shop without those that name one that is not there.
std::vector<Record> without_loose_ends(const std::vector<Record>& records, std::size_t count) {
  std::set<RecordId> there;
  for (std::size_t i = 0; i < count; ++i) there.insert(records[i].id);
  std::vector<Record> kept;
  for (std::size_t i = 0; i < count; ++i) {
    const auto* r = std::get_if<Reinstate>(&records[i].fact);
    const auto* d = std::get_if<Dismiss>(&records[i].fact);
    const auto* l = std::get_if<Release>(&records[i].fact);
    const RecordId* ended = r != nullptr   ? &r->suspension
                            : d != nullptr ? &d->appointment
                            : l != nullptr ? &l->lockout
                                           : nullptr;
    if (ended == nullptr || there.count(*ended) != 0) kept.push_back(records[i]);
  }
  return kept;
}

}  // namespace

TEST_CASE("one record at a time, and struck out again, it says what a shop made anew says", "[decide]") {
  std::mt19937 random(20261127);
  std::size_t taken = 0, shifted = 0, compared = 0;
  for (int world = 0; world < 60; ++world) {
    worlds::Tape tape = tape_of(random);
    Shop whole = worlds::shop_from(tape);
    std::erase_if(whole.records, [](const Record& r) { return r.voided.has_value(); });
    whole.records = without_loose_ends(whole.records, whole.records.size());
    // Entered in another order than they happened in, so that some are dated back.
    const std::size_t at_once = whole.records.size() / 2;
    Shop shop = whole;
    shop.records = without_loose_ends(whole.records, at_once);
    Current current(shop);
    std::vector<Record> later;
    for (const Record& record : whole.records) {
      const bool there = std::any_of(shop.records.begin(), shop.records.end(),
                                     [&](const Record& r) { return r.id == record.id; });
      if (!there) later.push_back(record);
    }
    const auto check = [&](const Shop& before, const Shop& after, const std::vector<Shift>& shifts) {
      Decider was(before), is(after);
      std::vector<Shift> expected;
      for (const PersonId& person : is.people()) {
        for (const TargetName& target : is.targets()) {
          CHECK(current.standing_steps(person, target) == is.standing_steps(person, target));
          ++compared;
          if (const auto one = shift(person, target, was.standing_steps(person, target),
                                     is.standing_steps(person, target)))
            expected.push_back(*one);
        }
      }
      CHECK(shifts == expected);
      shifted += shifts.size();
      for (int i = 0; i < 6; ++i) {
        const std::string person =
            shop.people[static_cast<std::size_t>(tape.roll(static_cast<int>(shop.people.size())))];
        const std::string x = worlds::target_from(tape, shop);
        const Instant t = worlds::instant_from(tape, shop);
        CHECK(current.rung(person, x, t) == is.rung(person, x, t));
        CHECK(current.standing(person, x, t) == is.standing(person, x, t));
        // One after another, so that what was answered before may be the answer again.
        for (int j = 0; j < 6; ++j) {
          const Instant u = j == 0 ? t + 5 : worlds::instant_from(tape, shop);
          CHECK(current.standing(person, x, u) == is.standing(person, x, u));
        }
        CHECK(current.who(x, t, Rung::supervised) == is.who(x, t, Rung::supervised));
        CHECK(current.able_to_assess(person, x, t) == is.able_to_assess(person, x, t));
        CHECK(current.able_to_supervise(person, x, t) == is.able_to_supervise(person, x, t));
        Decider& kept = current.decider();
        CHECK(kept.rung(person, x, t) == is.rung(person, x, t));
        CHECK(kept.standing(person, x, t) == is.standing(person, x, t));
        CHECK(kept.timeline(person, x, t, forever) == is.timeline(person, x, t, forever));
        CHECK(kept.assessors(x, t) == is.assessors(x, t));
        if (!shop.machines.empty()) {
          const MachineId& unit = shop.machines.front().id;
          CHECK(kept.may_start(person, unit, "", t, true, shop.people, {}) ==
                is.may_start(person, unit, "", t, true, shop.people, {}));
        }
        std::vector<Rung> everyone;
        for (const PersonId& each : is.people())
          for (const TargetName& target : is.targets()) everyone.push_back(is.rung(each, target, t));
        CHECK(current.people() == is.people());
        CHECK(current.targets() == is.targets());
        CHECK(current.everyone(t) == everyone);
      }
    };
    for (const Record& record : later) {
      INFO("world " << world << ", taking " << record.id << " " << kind_word(record.fact));
      const Shop before = shop;
      shop.records.push_back(record);
      const std::vector<Shift> supposed = current.if_taken(record), taken_in = current.take(record);
      CHECK(supposed == taken_in);
      check(before, shop, taken_in);
      ++taken;
    }
    for (int i = 0; i < 8 && !shop.records.empty(); ++i) {
      const auto n = static_cast<std::size_t>(tape.roll(static_cast<int>(shop.records.size())));
      const RecordId id = shop.records[n].id;
      INFO("world " << world << ", striking out " << id << " " << kind_word(shop.records[n].fact));
      const Instant at = worlds::instant_from(tape, shop);
      const Shop before = shop;
      const std::vector<StandingChange> resting = current.rests_on(id, at);
      shop.records.erase(shop.records.begin() + static_cast<std::ptrdiff_t>(n));
      Current was(before);
      CHECK(resting == was.rests_on(id, at));
      const std::vector<Shift> shifts = current.strike_out(id);
      check(before, shop, shifts);
      CHECK(current.shifts_from(was) == shifts);
    }
    const Instant at = worlds::instant_from(tape, shop);
    Rulebook other = worlds::shop_from(tape).rulebooks.front();
    CHECK(current.what_if(other, at) == Current(shop).what_if(other, at));
  }
  WARN(taken << " records taken in, " << shifted << " standings shifted, " << compared
             << " timelines compared");
  CHECK(shifted > 100);
}
