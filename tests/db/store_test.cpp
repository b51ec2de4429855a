// Making, opening and writing a store: what every other test stands on.
#include <catch2/catch.hpp>

#include "core/decide/decider.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

TEST_CASE("A shop made out of its past is the same after opening it again") {
  TestShop shop;
  const auto entries = shop.store().entries();
  const auto people = shop.store().people();
  const auto rulebooks = shop.store().rulebooks();
  // five people and three PINs among them
  REQUIRE(entries.size() == 22);
  shop.reopen();
  CHECK(shop.store().entries() == entries);
  CHECK(shop.store().people() == people);
  CHECK(shop.store().rulebooks() == rulebooks);
  CHECK(shop.store().details() == ShopDetails{"Hollow Oak Workshop", "America/Chicago", 0});
}

TEST_CASE("A lesson and a signed check-out change what somebody may do") {
  TestShop shop;
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  SignCheckout signing;
  signing.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  signing.pin = "2222";
  signing.machine = "b1";
  signing.sheet = "bandsaw";
  signing.marks = {Mark::shown, Mark::shown_when_asked};
  signing.restrictions = {"no resawing"};
  shop.wait(60);
  const auto done = shop.commit("ivo", signing);
  REQUIRE(done);
  CHECK(done->entries.size() == 4);
  CHECK(done->entries[1].id == done->entries[0].id + ".2");
  Decider decider(shop.store().shop());
  CHECK(decider.rung("kim", "bandsaw", shop.now()) == Rung::independent);
  CHECK(decider.rung("kim", "bandsaw", shop.now() - 1) == Rung::supervised);
}
