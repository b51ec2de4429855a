#include <catch2/catch.hpp>

#include "core/decide/decider.h"
#include "small_shop.h"

using namespace wm;
using small::start;

namespace {

Requirement checkout(const std::string& name) {
  NeedCheckout need;
  need.checkout = name;
  return {need};
}

std::string numbered(const std::string& name, int i) { return name + std::to_string(i); }

}  // namespace

TEST_CASE("a chain of twenty thousand assessors is followed to its founder", "[decide]") {
  constexpr int length = 20'000;
  Shop shop;
  Rulebook book{1, start - 1, start - 1, {{1, {}, {}, {}}}, {}};
  book.classes = {{"saw", 1, {}, {{"g", Rung::independent, checkout("saw"), {}}}, {}, {}, {}}};
  shop.rulebooks = {book};
  shop.people = {"p0"};
  shop.records.push_back({"a0", start, start, {}, Appoint{"p0", Everything{}, true, Day{40'000}}});
  for (int i = 1; i <= length; ++i) {
    shop.people.push_back(numbered("p", i));
    const Instant at = start + 10 * i;
    shop.records.push_back(
        {numbered("a", i), start, start, {}, Appoint{numbered("p", i), Everything{}, false, {}}});
    shop.records.push_back({numbered("c", i),
                            at,
                            at,
                            {},
                            Checkout{numbered("p", i), "saw", 0, Outcome::passed, numbered("p", i - 1)}});
  }
  const Instant after = start + 10 * length;
  CHECK(Decider(shop).rung(numbered("p", length), "saw", after) == Rung::independent);
  CHECK(Decider(shop).standing_steps(numbered("p", length), "saw").at(after - 1) == Rung::supervised);

  shop.records[0].voided = after;
  CHECK(Decider(shop).rung(numbered("p", length), "saw", after) == Rung::supervised);
}

TEST_CASE("a chain of five thousand machines, each asking for the one before, is followed to its end",
          "[decide]") {
  constexpr int length = 5'000;
  Shop shop;
  shop.people = {"kim"};
  Rulebook book{1, start - 1, start - 1, {{1, {}, {}, {}}}, {}};
  for (int i = 0; i < length; ++i) {
    const Requirement need = i == 0 ? Requirement{NeedDocument{"waiver", {}, {}}}
                                    : Requirement{NeedStanding{numbered("m", i - 1), Rung::supervised}};
    book.classes.push_back(
        {numbered("m", i), 1, {}, {{numbered("g", i), Rung::supervised, need, {}}}, {}, {}, {}});
  }
  shop.rulebooks = {book};
  shop.records = {{"d", start, start, {}, Document{"kim", "waiver", {}}}};
  Decider decider(shop);
  CHECK(decider.rung("kim", numbered("m", length - 1), start) == Rung::independent);
  CHECK(decider.standing_steps("kim", numbered("m", length - 1)).since(start) == start);
  CHECK(decider.rung("kim", numbered("m", length - 1), start - 1) == Rung::barred);
}
