// What is signed is what the marks on the run sheet come to, wherever the sheet was issued in the shop.
#include <catch2/catch.hpp>

#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace on_sheet_test {
namespace {

constexpr Mark shown = Mark::shown, asked = Mark::shown_when_asked, not_shown = Mark::not_shown,
               none = Mark::none;
const LineMeasured thick{8, "1.004", "1.004 in", "0.001 in"};

/// Kim may be checked out; the bandsaw's sheet has been issued and published in its revision 1.
TestShop ready() {
  TestShop shop;
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.enter("mia", own(small_sheet()));
  shop.enter("mia", fact(Publish{"bandsaw", 1}));
  shop.wait(60);
  return shop;
}

SignCheckout signing(std::vector<Mark> marks, Outcome outcome, std::vector<Mark> again = {}) {
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 1, outcome, "ivo"};
  sign.pin = "2222";
  sign.machine = "b1";
  sign.sheet = "bandsaw";
  sign.sheet_revision = 1;
  sign.marks = std::move(marks);
  sign.again = std::move(again);
  sign.measured = {thick};
  return sign;
}
SignCheckout good() { return signing(std::vector<Mark>(8, shown), Outcome::passed); }

std::vector<Mark> with(std::size_t line, Mark mark) {
  std::vector<Mark> marks(8, shown);
  marks[line - 1] = mark;
  return marks;
}

EnterPaperSheet on_paper(SignCheckout sheet, const std::string& form) {
  sheet.pin.clear();
  return {std::move(sheet), form};
}

}  // namespace

TEST_CASE("A check-out is passed where the marks on its sheet come to that", "[on_sheet]") {
  TestShop shop = ready();
  CHECK(shop.commit("ivo", good()));
  SignCheckout again = signing(with(6, asked), Outcome::passed, with(6, shown));
  CHECK(shop.commit("ivo", again));
  CHECK(shop.commit("ivo", signing(with(7, not_shown), Outcome::passed)));  // not critical
}

TEST_CASE("Nothing that the marks do not come to is signed", "[on_sheet]") {
  TestShop shop = ready();
  const auto turned_away = [&](const SignCheckout& sign, const std::string& part) {
    refused(shop.commit("ivo", sign), part);
  };
  turned_away(signing(with(6, not_shown), Outcome::passed), "critical and not shown: line 6");
  turned_away(signing(with(6, not_shown), Outcome::stopped), "critical and not shown: line 6");
  turned_away(signing(with(6, asked), Outcome::passed), "to be shown again unasked: line 6");
  turned_away(signing(with(6, asked), Outcome::passed, with(6, not_shown)), "critical and not shown: line 6");
  turned_away(signing(with(7, none), Outcome::passed), "without a mark: line 7");
  SignCheckout begun = signing({shown, shown}, Outcome::passed);
  begun.measured.clear();
  turned_away(begun, "without a mark: lines 3, 4, 5, 6, 7; not measured: line 8");
  SignCheckout unmeasured = good();
  unmeasured.measured.clear();
  turned_away(unmeasured, "not measured: line 8");
  CHECK(shop.commit("ivo", signing(with(6, not_shown), Outcome::failed)));
  CHECK(shop.commit("ivo", signing(with(7, none), Outcome::stopped)));
}

TEST_CASE("What is marked and measured has a place on the sheet", "[on_sheet]") {
  TestShop shop = ready();
  refused(shop.commit("ivo", signing(std::vector<Mark>(9, shown), Outcome::passed)), "has 8 lines");
  SignCheckout elsewhere = good();
  elsewhere.measured = {{7, "1.004", "1.004 in", "0.001 in"}};
  refused(shop.commit("ivo", elsewhere), "Nothing is measured on this line");
  SignCheckout angle = good();
  angle.measured = {{8, "90", "90 deg", "1 deg"}};
  refused(shop.commit("ivo", angle), "something else");
}

TEST_CASE("A check-out is shown on the sheet that was issued for it, and on no other", "[on_sheet]") {
  TestShop shop = ready();
  SignCheckout without = good();
  without.sheet.clear(), without.sheet_revision = 0, without.marks.clear(), without.measured.clear();
  refused(shop.commit("ivo", without), "is shown on revision 1 of the run sheet 'bandsaw'");
  SignCheckout made_up = good();
  made_up.sheet = "mine";
  refused(shop.commit("ivo", made_up), "is shown on revision 1 of the run sheet 'bandsaw'");
  // Another machine's check-out on this sheet.
  SignCheckout combi = good();
  combi.checkout.checkout = "combi", combi.checkout.revision = 0, combi.machine = "c1";
  refused(shop.commit("ivo", combi), "which is another");
  // Of a check-out without a sheet nothing more is known here than before.
  combi.sheet.clear(), combi.sheet_revision = 0, combi.measured.clear();
  CHECK(shop.commit("ivo", combi));
}

TEST_CASE("A sheet is marked once its revision counts, and an earlier one can be entered from its paper",
          "[on_sheet]") {
  TestShop shop = ready();
  shop.enter("dee", own(Printed{"Run sheet", 1, std::string(64, 'a'), "7K2Q9X"}));
  shop.enter("dee", own(Printed{"Run sheet", 1, std::string(64, 'a'), "7K2Q9Y"}));
  const Instant then = shop.now();
  shop.wait(day);
  Issued second = small_sheet(2);
  second.text.replace(second.text.find("- Plans"), 1, "*");
  shop.enter("mia", own(second));
  const SheetOpened newer{"kim", "b1", "bandsaw", "bandsaw", 2};
  refused(shop.commit("ivo", own(newer)), "had not been published");
  shop.enter("mia", fact(Publish{"bandsaw", 2}));
  shop.wait(60);
  CHECK(shop.commit("ivo", own(newer)));
  SignCheckout second_sheet = signing(with(7, not_shown), Outcome::passed);
  second_sheet.checkout.revision = second_sheet.sheet_revision = 2;
  refused(shop.commit("ivo", second_sheet), "critical and not shown: line 7");
  // By the first revision line 7 was not critical, and the paper is of that one.
  CHECK(shop.from_paper("mia", on_paper(signing(with(7, not_shown), Outcome::passed), "7K2Q9X"), then));
  refused(shop.from_paper("mia", on_paper(signing(with(6, not_shown), Outcome::passed), "7K2Q9Y"), then),
          "critical and not shown: line 6");
}

TEST_CASE("The rule is held after the shop was opened again", "[on_sheet]") {
  TestShop shop = ready();
  shop.reopen();
  refused(shop.commit("ivo", signing(with(6, not_shown), Outcome::passed)), "critical and not shown");
  CHECK(shop.commit("ivo", good()));
}

}  // namespace on_sheet_test
