// A second assessor marks a performance apart: what may be entered, and that no standing rests on it.
#include <catch2/catch.hpp>

#include "db/journal/subject.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

const std::vector<Mark> seen_marks{Mark::shown, Mark::shown_when_asked, Mark::shown};

/// Kim's check-out by Ivo, on a sheet of three lines, before it is signed.
SignCheckout ivos_sheet() {
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  sign.pin = "2222";
  sign.machine = "b1";
  sign.sheet = "bandsaw";
  sign.sheet_revision = 1;
  sign.marks = seen_marks;
  return sign;
}

/// The same, signed.
RecordId watched_checkout(TestShop& shop) {
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.wait(60);
  const auto done = shop.commit("ivo", ivos_sheet());
  INFO((done ? "" : done.error().what));
  REQUIRE(done);
  shop.wait(60);
  return done->entries.front().id;
}

/// Mia, who may assess too.
ScoreApart scored_by_mia(const RecordId& checkout) {
  return {{checkout, "mia", "bandsaw", 1, {Mark::shown, Mark::not_shown, Mark::none}}, "1111"};
}

void turned_away(const Expected<Committed>& done, const std::string& part) {
  REQUIRE_FALSE(done);
  INFO(done.error().what);
  CHECK(done.error().what.find(part) != std::string::npos);
  CHECK_FALSE(done.error().remedy.empty());
}

}  // namespace

TEST_CASE("A second assessor's marks are kept about the check-out, signed, and change no standing") {
  TestShop shop;
  const RecordId checkout = watched_checkout(shop);
  const Shop before = shop.store().shop();
  const auto done = shop.commit("mia", scored_by_mia(checkout));
  INFO((done ? "" : done.error().what));
  REQUIRE(done);
  REQUIRE(done->entries.size() == 2);
  CHECK(*as<ScoredApart>(done->entries[0].fact) == scored_by_mia(checkout).scored);
  CHECK(as<Signature>(done->entries[1].fact)->person == "mia");
  CHECK(shop.store().shop().records == before.records);
  const std::vector<Entry> kept = shop.store().entries();
  shop.reopen();
  CHECK(shop.store().entries() == kept);
}

TEST_CASE("What is no second, apart look at the same sheet is refused", "[refusals]") {
  TestShop shop;
  const RecordId checkout = watched_checkout(shop);
  const auto with = [&](auto change, const char* by = "mia") {
    ScoreApart score = scored_by_mia(checkout);
    change(score);
    return shop.commit(by, score);
  };
  turned_away(with([](ScoreApart& s) { s.scored.checkout = "nothing"; }), "no check-out");
  turned_away(with([](ScoreApart& s) { s.scored.sheet_revision = 2; }), "revision 1");
  turned_away(with([](ScoreApart& s) { s.scored.marks.pop_back(); }), "which is another");
  turned_away(with([](ScoreApart& s) { s.scored.marks.assign(3, Mark::none); }), "No line is marked");
  turned_away(with([](ScoreApart& s) { s.pin = "9999"; }), "PIN");
  shop.wait(1000);
  turned_away(with([](ScoreApart& s) { s.scored.assessor = "ivo"; }, "ivo"), "neither side");
  turned_away(with([](ScoreApart&) {}, "ivo"), "by the one who watched");
  turned_away(with([](ScoreApart&) {}, "dee"), "The desk may not");
  turned_away(shop.commit("mia", own(scored_by_mia(checkout).scored)), "by hand only from a paper");
  REQUIRE(with([](ScoreApart&) {}));
  turned_away(with([](ScoreApart&) {}), "already");
}

TEST_CASE(
    "What a second assessor marked on paper is taken in once, by the number of the paper, from that day",
    "[refusals]") {
  TestShop shop;
  const RecordId checkout = watched_checkout(shop);
  const Instant seen = shop.now();
  for (const char* form : {"4F7KQ2", "9M2XW5"})
    shop.enter("dee", own(Printed{"Run sheet", 1, std::string(64, 'a'), form}));
  ScoredApart marked = scored_by_mia(checkout).scored;
  marked.form = "4F7KQ2";
  shop.wait(3 * day);
  const auto with = [&](auto change, Instant at, const char* by = "mia") {
    ScoredApart other = marked;
    change(other);
    return shop.from_paper(by, own(other), at);
  };
  const auto as_it_is = [](ScoredApart&) {};
  turned_away(with(as_it_is, seen + day), "that day only");
  turned_away(with(as_it_is, seen, "ivo"), "Only a manager");
  turned_away(with([](ScoredApart& s) { s.form.clear(); }, seen), "number of the paper is missing");
  turned_away(with([](ScoredApart& s) { s.form = "ZZZZZZ"; }, seen), "was printed here");
  turned_away(with([](ScoredApart& s) { s.assessor = "ivo"; }, seen), "neither side");
  const Shop before = shop.store().shop();
  const auto done = with(as_it_is, seen);
  INFO((done ? "" : done.error().what));
  REQUIRE(done);
  CHECK(done->entries.size() == 1);
  CHECK(done->entries[0].from_paper);
  CHECK(*as<ScoredApart>(done->entries[0].fact) == marked);
  CHECK(shop.store().shop().records == before.records);
  turned_away(with([](ScoredApart& s) { s.form = "9M2XW5"; }, seen), "already");
  // Nor is the same paper a check-out besides.
  EnterPaperSheet sheet{ivos_sheet(), "4F7KQ2"};
  sheet.sheet.pin.clear();
  turned_away(shop.from_paper("mia", sheet, seen + hour), "4F7KQ2 was entered already, for Kim");
  REQUIRE(shop.commit("mia", StrikeOutRecord{done->entries[0].id, "read wrongly"}));
  CHECK(with(as_it_is, seen));
  const std::vector<Entry> kept = shop.store().entries();
  shop.reopen();
  CHECK(shop.store().entries() == kept);
}

TEST_CASE("What is signed here has no paper's number", "[refusals]") {
  TestShop shop;
  ScoreApart score = scored_by_mia(watched_checkout(shop));
  score.scored.form = "4F7KQ2";
  turned_away(shop.commit("mia", score), "stands on no paper");
}

TEST_CASE("Who could not have signed it then does not judge it either", "[refusals]") {
  TestShop shop;
  const RecordId checkout = watched_checkout(shop);
  shop.enter("mia", own(RoleGiven{"dee", Role::instructor}));
  ScoreApart score = scored_by_mia(checkout);
  score.scored.assessor = "dee";
  score.pin = "3333";
  turned_away(shop.commit("dee", score), "could not assess");
}

TEST_CASE("Whoever sat there when the first marked it has seen the marks, and does not mark it apart",
          "[refusals]") {
  TestShop shop;
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.wait(60);
  SignCheckout sign = ivos_sheet();
  SECTION("typed off the paper by her") {
    shop.enter("dee", own(Printed{"Run sheet", 1, std::string(64, 'a'), "7K2Q9X"}));
    sign.pin.clear();
    const auto done = shop.from_paper("mia", EnterPaperSheet{sign, "7K2Q9X"}, shop.now());
    INFO((done ? "" : done.error().what));
    REQUIRE(done);
    CHECK(shop.store().saw_marks(done->entries.front().id, "mia"));
    turned_away(shop.commit("mia", scored_by_mia(done->entries.front().id)), "who has seen them");
  }
  SECTION("one line marked where she sat") {
    const RecordId opened = shop.enter("ivo", own(SheetOpened{"kim", "b1", "bandsaw", "bandsaw", 1}));
    shop.enter("ivo", own(LineMarked{opened, 1, Mark::shown, Mark::none, {}}));
    shop.enter("mia", own(LineMarked{opened, 2, Mark::shown_when_asked, Mark::none, {}}));
    shop.enter("ivo", own(LineMarked{opened, 3, Mark::shown, Mark::none, {}}));
    sign.opened = opened;
    sign.again.assign(3, Mark::none);
    const auto done = shop.commit("ivo", sign);
    INFO((done ? "" : done.error().what));
    REQUIRE(done);
    turned_away(shop.commit("mia", scored_by_mia(done->entries.front().id)), "who has seen them");
  }
  SECTION("neither") {
    const auto done = shop.commit("ivo", sign);
    REQUIRE(done);
    CHECK_FALSE(shop.store().saw_marks(done->entries.front().id, "mia"));
    CHECK(shop.commit("mia", scored_by_mia(done->entries.front().id)));
  }
}

TEST_CASE("A performance is marked apart on its own day", "[refusals]") {
  TestShop shop;
  const RecordId checkout = watched_checkout(shop);
  shop.wait(86400);
  turned_away(shop.commit("mia", scored_by_mia(checkout)), "that day only");
}
