// Four eyes, and who is close to whom: what the rulebook may ask of those who enter and sign.
#include <catch2/catch.hpp>

#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

void publish(TestShop& shop, std::vector<FourEyes> four_eyes, bool close_may_sign = true) {
  Rulebook rulebook = small_rulebook(2, shop.now() + 60);
  rulebook.four_eyes = std::move(four_eyes);
  rulebook.close_may_sign = close_may_sign;
  shop.enter("mia", PublishRulebook{rulebook});
  shop.wait(120);
}

RecordId signed_checkout(TestShop& shop) {
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.wait(60);
  SignCheckout signing;
  signing.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  signing.pin = "2222";
  signing.machine = "b1";
  const RecordId id = shop.enter("ivo", signing);
  shop.wait(60);
  return id;
}

Expected<Committed> vouched(TestShop& shop, Action action, const PersonId& second, const std::string& pin) {
  Command command = shop.command("mia", std::move(action));
  command.second = Second{second, pin};
  return shop.store().commit(command);
}

void says(const Expected<Committed>& done, const std::string& what) {
  REQUIRE_FALSE(done);
  CHECK(done.error().where == "second");
  CHECK_THAT(done.error().what, Catch::Contains(what));
  CHECK_FALSE(done.error().remedy.empty());
}

}  // namespace

TEST_CASE("Where the rulebook asks for four eyes, a suspension is lifted by two") {
  TestShop shop;
  const RecordId suspension = shop.enter("mia", fact(Suspend{"kim", Everything{}, std::nullopt}));
  const RecordId other = shop.enter("mia", fact(Suspend{"lou", Everything{}, std::nullopt}));
  publish(shop, {FourEyes::reinstate});
  const EnterFact lift = fact(Reinstate{suspension});
  CHECK(shop.store().asks_for_second(lift));
  CHECK(shop.store().asks_for_second(StrikeOutRecord{suspension, "by mistake"}));
  CHECK_FALSE(shop.store().asks_for_second(fact(Lesson{"kim", "guards", 1})));
  says(shop.commit("mia", lift), "a second person");
  // Struck out it would be lifted just as well.
  says(shop.commit("mia", StrikeOutRecord{suspension, "by mistake"}), "a second person");
  says(vouched(shop, lift, "mia", "1111"), "somebody else");
  says(vouched(shop, lift, "dee", "3333"), "neither an instructor nor a manager");
  const auto wrong = vouched(shop, lift, "ivo", "2223");
  REQUIRE_FALSE(wrong);
  CHECK_THAT(wrong.error().what, Catch::Contains("not Ivo"));
  CHECK(shop.store().entries().back().second.empty());

  const auto done = vouched(shop, lift, "ivo", "2222");
  REQUIRE(done);
  CHECK(done->entries.front().entered_by == "mia");
  CHECK(done->entries.front().second == "ivo");
  shop.reopen();
  CHECK(shop.store().entry(done->entries.front().id)->second == "ivo");
  REQUIRE(vouched(shop, StrikeOutRecord{other, "the wrong person"}, "ivo", "2222"));
}

TEST_CASE("Nobody vouches for what is about themselves") {
  TestShop shop;
  const RecordId suspension = shop.enter("mia", fact(Suspend{"ivo", Everything{}, std::nullopt}));
  publish(shop, {FourEyes::reinstate});
  says(vouched(shop, fact(Reinstate{suspension}), "ivo", "2222"), "This is about");
}

TEST_CASE("Where the rulebook asks for four eyes, a signed check-out is struck out by two, another by one") {
  TestShop shop;
  const RecordId checkout = signed_checkout(shop);
  const auto paper =
      shop.from_paper("mia", fact(Checkout{"lou", "bandsaw", 0, Outcome::passed, "ivo"}), shop.now() - 60);
  REQUIRE(paper);
  publish(shop, {FourEyes::strike_out});
  says(shop.commit("mia", StrikeOutRecord{checkout, "the wrong person"}), "a second person");
  REQUIRE(vouched(shop, StrikeOutRecord{checkout, "the wrong person"}, "ivo", "2222"));
  CHECK(shop.commit("mia", StrikeOutRecord{paper->entries.front().id, "the wrong person"}));
}

TEST_CASE("Where the rulebook does not ask for it, one is enough, and two are kept") {
  TestShop shop;
  const RecordId suspension = shop.enter("mia", fact(Suspend{"kim", Everything{}, std::nullopt}));
  CHECK_FALSE(shop.store().asks_for_second(fact(Reinstate{suspension})));
  shop.wait(60);
  Command command = shop.command("mia", fact(Reinstate{suspension}));
  command.second = Second{"ivo", "2222"};
  const auto done = shop.store().commit(command);
  REQUIRE(done);
  CHECK(done->entries.front().second == "ivo");
  const auto again = shop.store().commit(command);
  REQUIRE(again);
  CHECK(again->again);
  command.second.reset();
  CHECK_FALSE(shop.store().commit(command));  // that is another command
}

TEST_CASE("An assessor does not sign for whom they have named as close, where the rulebook says so") {
  TestShop shop;
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  const auto named = shop.commit("dee", own(Close{"ivo", "kim"}));
  REQUIRE_FALSE(named);
  CHECK(named.error().where == "role");
  CHECK_FALSE(shop.commit("ivo", own(Close{"mia", "kim"})));
  CHECK_FALSE(shop.commit("ivo", own(Close{"ivo", "ivo"})));
  CHECK_FALSE(shop.commit("ivo", own(Close{"ivo", "nobody"})));
  const RecordId close = shop.enter("ivo", own(Close{"ivo", "kim"}));
  CHECK_FALSE(shop.commit("ivo", own(Close{"ivo", "kim"})));
  SignCheckout signing;
  signing.checkout = {"kim", "bandsaw", 0, Outcome::failed, "ivo"};
  signing.pin = "2222";
  shop.wait(60);
  REQUIRE(shop.commit("ivo", signing));  // this rulebook does not mind
  publish(shop, {}, false);
  const auto refused = shop.commit("ivo", signing);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().where == "assessor");
  CHECK_THAT(refused.error().what, Catch::Contains("are close"));
  // Nor on a paper that somebody else takes in; but what was before they said so, or before the rule, stands.
  const auto on_paper = [&](Instant at) { return shop.from_paper("mia", fact(signing.checkout), at); };
  const auto paper = on_paper(shop.now());
  REQUIRE_FALSE(paper);
  CHECK_THAT(paper.error().what, Catch::Contains("are close"));
  CHECK(on_paper(evening - hour));
  shop.enter("mia", own(Join{"kim", "lou"}));
  signing.checkout.person = "lou";
  CHECK_FALSE(shop.commit("ivo", signing));  // the same person
  shop.enter("mia", StrikeOutRecord{close, "a mistake"});
  CHECK(shop.commit("ivo", signing));
}
