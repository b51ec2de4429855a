// What was measured at a check-out: kept as typed, and nothing of it changes what was kept before.
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "db/journal/shop_fact_json.h"
#include "db/journal/subject.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

SignCheckout measured_on(std::vector<LineMeasured> measured) {
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  sign.pin = "2222";
  sign.machine = "b1";
  sign.sheet = "bandsaw";
  sign.marks = {Mark::shown, Mark::none, Mark::shown};
  sign.measured = std::move(measured);
  return sign;
}

const LineMeasured thick{2, "25,2", "25.2 mm", "0.1 mm"}, angle{3, "90°", "90 deg", "0.5 deg"};

const SheetMarks* marks_in(const std::vector<Entry>& entries) {
  const SheetMarks* found = nullptr;
  for (const Entry& entry : entries)
    if (const auto* marks = as<SheetMarks>(entry.fact)) found = marks;
  return found;
}

void refused(const Expected<Committed>& done, const char* where, const char* what) {
  REQUIRE_FALSE(done);
  CHECK_THAT(done.error().where, Catch::Contains(where));
  CHECK_THAT(done.error().what, Catch::Contains(what));
}

}  // namespace

TEST_CASE("A check-out keeps what was measured as it was typed") {
  TestShop shop;
  shop.enter("ivo", measured_on({thick, angle}));
  shop.reopen();
  const SheetMarks* marks = marks_in(shop.store().entries());
  REQUIRE(marks != nullptr);
  CHECK(marks->measured == std::vector<LineMeasured>{thick, angle});
  CHECK(marks->marks == std::vector<Mark>{Mark::shown, Mark::none, Mark::shown});
}

TEST_CASE("A check-out with nothing measured is kept as it always was") {
  TestShop shop;
  shop.enter("ivo", measured_on({}));
  shop.reopen();
  const Entry& entry = *std::find_if(shop.store().entries().begin(), shop.store().entries().end(),
                                     [](const Entry& e) { return as<SheetMarks>(e.fact) != nullptr; });
  const auto body = to_json(entry.id, entry.at, entry.recorded, std::get<ShopFact>(entry.fact));
  CHECK_FALSE(body.contains("measured"));
}

TEST_CASE("What is no measure, or of no line, is not kept") {
  TestShop shop;
  refused(shop.commit("ivo", measured_on({{2, "25.2", "25.2", "0.1 mm"}})), "line 2", "'25.2' is not '25.2'");
  refused(shop.commit("ivo", measured_on({{2, "25.2", "25.2 mm", "0 mm"}})), "line 2", "read to '0 mm'");
  refused(shop.commit("ivo", measured_on({{2, "25.1", "25.2 mm", "0.1 mm"}})), "line 2", "'25.1' is not");
  refused(shop.commit("ivo", measured_on({{2, " ", "25.2 mm", "0.1 mm"}})), "line 2", "Nothing was typed");
  refused(shop.commit("ivo", measured_on({{4, "25.2", "25.2 mm", "0.1 mm"}})), "line 4", "no such line");
  refused(shop.commit("ivo", measured_on({{0, "25.2", "25.2 mm", "0.1 mm"}})), "line 0", "no such line");
  refused(shop.commit("ivo", measured_on({angle, thick})), "line 2", "no such line");
  refused(shop.commit("ivo", measured_on({thick, thick})), "line 2", "no such line");
  CHECK(marks_in(shop.store().entries()) == nullptr);
}
