// Whose details may be erased: by the rulebook's own period, after the last record that names them.
#include "db/retention.h"

#include <catch2/catch.hpp>

#include "core/time/zone.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

const Zone chicago = Zone::named("America/Chicago").value();

/// The day in the shop's zone, at noon.
Instant noon(int year, int month, int on) { return chicago.start(day_of({year, month, on})) + 12 * hour; }

void keep_for(TestShop& shop, std::optional<Period> period) {
  Rulebook book = small_rulebook(shop.store().rulebooks().back().version + 1, shop.now());
  book.keep_details = period;
  shop.enter("mia", PublishRulebook{book});
  shop.wait(60);
}

std::vector<PersonId> who(TestShop& shop) {
  std::vector<PersonId> ids;
  for (const MayGo& gone : details_that_may_go(shop.store())) ids.push_back(gone.person);
  return ids;
}

using Ids = std::vector<PersonId>;

}  // namespace

TEST_CASE("Without a period in the rulebook all details are kept") {
  TestShop shop;
  shop.set_now(noon(2090, 1, 1));
  CHECK(who(shop).empty());
}

TEST_CASE("Details may go from the day after the period that began with the last record about somebody") {
  TestShop shop;
  shop.set_now(noon(2026, 5, 31));
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.enter("dee", fact(Lesson{"lou", "guards", 1}));
  keep_for(shop, Period{PeriodUnit::months, 6});
  // 31 May and six months: 30 November, which has no 31st, is still kept.
  shop.set_now(chicago.start(day_of({2026, 12, 1})) + -1);
  CHECK(who(shop).empty());
  shop.set_now(chicago.start(day_of({2026, 12, 1})));
  CHECK(who(shop) == Ids{"kim", "lou"});
  const auto gone = details_that_may_go(shop.store());
  CHECK(gone[0].last == noon(2026, 5, 31));
  CHECK(gone[0].since == shop.now());
}

TEST_CASE("Who is needed is kept: a role, a pause, a key, a record that is newer") {
  TestShop shop;
  keep_for(shop, Period{PeriodUnit::days, 30});
  const Instant long_after = shop.now() + 400 * day;
  SECTION("roles stay, and whoever assessed is named by the check-out") {
    shop.set_now(long_after);
    CHECK(who(shop) == Ids{"kim", "lou"});  // mia, ivo and dee have roles
    shop.enter("mia", own(RoleGiven{"ivo", std::nullopt}));
    CHECK(who(shop) == Ids{"kim", "lou"});  // that itself names ivo
    shop.wait(40 * day);
    CHECK(who(shop) == Ids{"kim", "lou", "ivo"});
  }
  SECTION("a pause without an end") {
    shop.enter("mia", fact(Suspend{"kim", Everything{}, std::nullopt}));
    shop.set_now(long_after);
    CHECK(who(shop) == Ids{"lou"});
  }
  SECTION("the key of a machine that is out of service") {
    const RecordId lockout = shop.enter("dee", PutOutOfService{"b1", "17", "P3", "guard broken", "lou"});
    shop.set_now(long_after);
    CHECK(who(shop) == Ids{"kim"});
    shop.enter("mia", own(Reached{lockout, "phoned"}));
    shop.enter("mia", fact(Release{lockout}));
    CHECK(who(shop) == Ids{"kim", "lou"});
  }
  SECTION("a record that was struck out names nobody") {
    shop.set_now(long_after);
    const RecordId lesson = shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
    CHECK(who(shop) == Ids{"lou"});
    shop.enter("mia", StrikeOutRecord{lesson, "somebody else"});
    CHECK(who(shop) == Ids{"kim", "lou"});
  }
  SECTION("joined entries are one person, and the erased are gone already") {
    shop.set_now(long_after);
    shop.enter("mia", own(Join{"kim", "lou"}));
    CHECK(who(shop).empty());  // the join itself is new
    shop.wait(31 * day);
    CHECK(who(shop) == Ids{"kim"});
    shop.enter("mia", BlankPerson{"kim"});
    shop.wait(400 * day);
    CHECK(who(shop).empty());
  }
}

TEST_CASE("Visitors' names go by the same rule, and the visit stays") {
  TestShop shop;
  shop.set_now(noon(2026, 5, 31));
  shop.enter("dee", own(Presence{"ivo"}));
  const RecordId visit = shop.enter("dee", own(Visit{"Ada Quill", "visitor-rules", "ivo"}));
  const RecordId mistake = shop.enter("dee", own(Visit{"Ida Quell", "visitor-rules", "ivo"}));
  shop.enter("dee", StrikeOutRecord{mistake, "misspelt"});
  CHECK(visits_that_may_go(shop.store()).empty());
  keep_for(shop, Period{PeriodUnit::months, 6});
  shop.set_now(chicago.start(day_of({2026, 12, 1})) + -1);
  CHECK(visits_that_may_go(shop.store()).empty());
  shop.set_now(chicago.start(day_of({2026, 12, 1})));
  // One that was struck out names somebody too.
  const auto gone = visits_that_may_go(shop.store());
  REQUIRE(gone.size() == 2);
  CHECK(gone[0].visit == visit);
  CHECK(gone[0].name == "Ada Quill");
  CHECK(gone[0].since == shop.now());
  for (const VisitMayGo& each : gone) shop.enter("mia", BlankRecord{each.visit});
  CHECK(visits_that_may_go(shop.store()).empty());
  CHECK(shop.store().of_kind("visit").size() == 2);
}
