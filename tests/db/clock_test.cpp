// A clock that jumps: nothing is entered by it until it is put right, or a manager says that it is.
#include <catch2/catch.hpp>

#include "db/clock_watch.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

/// A store on the shop's file for which time passes as `passed` says, whatever the clock is set to.
Store watched(const TestShop& shop, const std::int64_t& passed) {
  StoreOptions options = cheap_pins();
  options.passed = [&passed] { return passed; };
  auto store = Store::open(shop.path(), shop.clock(), options);
  REQUIRE(store);
  return std::move(*store);
}

Expected<Committed> enter(TestShop& shop, Store& store, const PersonId& by, Action action) {
  return store.commit(shop.command(by, std::move(action)));
}

}  // namespace

TEST_CASE(
    "A clock set back by hours enters nothing until a manager confirms it, and never runs back in the "
    "journal") {
  TestShop shop;
  shop.enter("dee", own(Presence{"kim"}));
  const Instant before = shop.now();
  shop.set_now(before - 3 * hour);
  CHECK(shop.store().clock_jump() == -3 * hour);
  const auto refused = shop.commit("dee", own(Presence{"lou"}));
  REQUIRE_FALSE(refused);
  CHECK(refused.error().where == "clock");
  CHECK_THAT(refused.error().what, Catch::Contains("back by 3 hours"));
  CHECK_FALSE(shop.commit("dee", ConfirmClock{}));
  const auto confirmed = shop.commit("mia", ConfirmClock{});
  REQUIRE(confirmed);
  const auto& fact = std::get<ClockConfirmed>(std::get<ShopFact>(confirmed->entries.front().fact));
  CHECK(fact.shown == before - 3 * hour);
  CHECK(fact.jumped == -3 * hour);
  CHECK(shop.store().clock_jump() == 0);
  shop.wait(60);
  REQUIRE(shop.commit("dee", own(Presence{"lou"})));
  shop.reopen();
  REQUIRE(shop.commit("dee", own(Presence{"lou", false})));
  const auto& entries = shop.store().entries();
  CHECK(std::is_sorted(entries.begin(), entries.end(),
                       [](const Entry& a, const Entry& b) { return a.recorded < b.recorded; }));
  CHECK(entries.back().recorded == before);
  // Once more back: what was confirmed was another time.
  shop.set_now(before - 9 * hour);
  CHECK_FALSE(shop.commit("dee", own(Presence{"kim", false})));
  // When the clock has caught up, what was confirmed then is over.
  shop.set_now(before + day);
  REQUIRE(shop.commit("dee", own(Presence{"kim", false})));
  shop.set_now(before - hour);
  CHECK_FALSE(shop.commit("dee", own(Presence{"kim"})));
}

TEST_CASE("Less than an hour back is borne") {
  TestShop shop;
  shop.enter("dee", own(Presence{"kim"}));
  shop.set_now(shop.now() - hour);
  CHECK(shop.commit("dee", own(Presence{"lou"})));
}

TEST_CASE("A clock set ahead while the shop is open is found out by the time that has passed") {
  TestShop shop;
  std::int64_t passed = 5000;
  Store store = watched(shop, passed);
  shop.wait(10 * hour), passed += 10 * hour;  // a day's work
  REQUIRE(enter(shop, store, "dee", own(Presence{"kim"})));
  shop.wait(50 * hour), passed += hour;
  CHECK(store.clock_jump() == 49 * hour);
  const auto refused = enter(shop, store, "dee", own(Presence{"lou"}));
  REQUIRE_FALSE(refused);
  CHECK_THAT(refused.error().what, Catch::Contains("ahead by 2 days"));
  SECTION("put right") { shop.wait(-49 * hour); }
  SECTION("confirmed") { REQUIRE(enter(shop, store, "mia", ConfirmClock{})); }
  CHECK(store.clock_jump() == 0);
  CHECK(enter(shop, store, "dee", own(Presence{"lou"})));
  CHECK_FALSE(enter(shop, store, "mia", ConfirmClock{}));  // nothing to confirm
}

TEST_CASE("What is borne is an hour, to the second") {
  CHECK(ClockWatch().jump(evening, first_instant, std::nullopt) == 0);
  CHECK(ClockWatch().jump(evening, evening + hour, std::nullopt) == 0);
  CHECK(ClockWatch().jump(evening, evening + hour + 1, std::nullopt) == -hour - 1);
}
