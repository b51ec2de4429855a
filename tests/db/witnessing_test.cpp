// A run sheet marked at the machine, kept line by line, put by, countersigned, and taken in from paper.
#include <catch2/catch.hpp>

#include "db/journal/subject.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

SheetOpened kims_sheet() { return {"kim", "b1", "bandsaw", "bandsaw", 1}; }

/// A shop in which Kim may be checked out.
TestShop ready() {
  TestShop shop;
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.wait(60);
  return shop;
}

SignCheckout signing(const RecordId& opened, std::vector<Mark> marks) {
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  sign.pin = "2222";
  sign.machine = "b1";
  sign.sheet = "bandsaw";
  sign.sheet_revision = 1;
  sign.marks = std::move(marks);
  sign.opened = opened;
  return sign;
}

void turned_away(const Expected<Committed>& done, const std::string& part) {
  REQUIRE_FALSE(done);
  INFO(done.error().where << ": " << done.error().what);
  CHECK(done.error().what.find(part) != std::string::npos);
  CHECK_FALSE(done.error().remedy.empty());
}

template <class F>
std::vector<F> all_of(const std::vector<Entry>& entries) {
  std::vector<F> out;
  for (const Entry& entry : entries)
    if (const F* fact = as<F>(entry.fact)) out.push_back(*fact);
  return out;
}

constexpr Mark shown = Mark::shown, asked = Mark::shown_when_asked, none = Mark::none;

}  // namespace

TEST_CASE("Marks are kept line by line, the latest of a line counting, and outlive the program") {
  TestShop shop = ready();
  const RecordId opened = shop.enter("ivo", own(kims_sheet()));
  const LineMeasured thick{3, "63/64\"", "63/64 in", "1/64 in"};
  shop.enter("ivo", own(LineMarked{opened, 3, shown, none, thick}));
  shop.enter("ivo", own(LineMarked{opened, 1, asked, none, {}}));
  shop.wait(60);
  const RecordId last = shop.enter("mia", own(LineMarked{opened, 1, asked, shown, {}}));
  shop.reopen();
  const auto open = shop.store().open_sheets();
  REQUIRE(open.size() == 1);
  CHECK(open[0].id == opened);
  CHECK(open[0].sheet == kims_sheet());
  CHECK(open[0].marks == std::vector{asked, none, shown});
  CHECK(open[0].again == std::vector{shown, none, none});
  CHECK(open[0].measured == std::vector{thick});
  CHECK(open[0].marked_by == "mia");
  CHECK(open[0].last_marked == shop.store().entry(last)->at);
  CHECK_FALSE(open[0].put_by);
  // A measure taken away again is gone, and a struck-out mark is as if it had not been made.
  shop.enter("ivo", own(LineMarked{opened, 3, none, none, {}}));
  CHECK(shop.store().open_sheets()[0].measured.empty());
  shop.enter("mia", StrikeOutRecord{last, "on the wrong line"});
  CHECK(shop.store().open_sheets()[0].again == std::vector{none, none, none});
}

TEST_CASE("What is put by is gone on with on another day, by whoever is there") {
  TestShop shop = ready();
  const RecordId opened = shop.enter("ivo", own(kims_sheet()));
  shop.enter("ivo", own(LineMarked{opened, 1, shown, none, {}}));
  shop.wait(60);
  const RecordId by = shop.enter("ivo", own(SheetPutBy{opened, "blade change is left", {"no resawing"}}));
  const std::vector<Entry> entries = shop.store().entries();
  shop.reopen();
  CHECK(shop.store().entries() == entries);
  auto open = shop.store().open_sheets();
  REQUIRE(open.size() == 1);
  CHECK(open[0].put_by == shop.store().entry(by)->at);
  CHECK(open[0].note == "blade change is left");
  CHECK(open[0].restrictions == std::vector<std::string>{"no resawing"});
  shop.wait(3 * day);
  turned_away(shop.commit("ivo", own(kims_sheet())), "in hand since");
  shop.enter("mia", own(LineMarked{opened, 2, shown, none, {}}));
  open = shop.store().open_sheets();
  CHECK_FALSE(open[0].put_by);
  CHECK(open[0].note == "blade change is left");
  CHECK(open[0].marks == std::vector{shown, shown});
  // The note is personal: it goes with the member.
  shop.enter("mia", BlankPerson{"kim"});
  CHECK(shop.store().open_sheets()[0].note.empty());
}

TEST_CASE("What was marked more than thirty days ago is shown again, on a new sheet") {
  TestShop shop = ready();
  const RecordId opened = shop.enter("ivo", own(kims_sheet()));
  shop.wait(29 * day);
  shop.enter("ivo", own(LineMarked{opened, 1, shown, none, {}}));
  shop.wait(30 * day);
  CHECK(shop.store().open_sheets().size() == 1);
  shop.wait(1);
  CHECK(shop.store().open_sheets().empty());
  turned_away(shop.commit("ivo", own(LineMarked{opened, 2, shown, none, {}})), "30 days");
  turned_away(shop.commit("ivo", signing(opened, {shown})), "30 days");
  const RecordId anew = shop.enter("ivo", own(kims_sheet()));
  REQUIRE(shop.store().open_sheets().size() == 1);
  CHECK(shop.store().open_sheets()[0].id == anew);
  CHECK(shop.store().open_sheets()[0].marks.empty());
}

TEST_CASE("What is signed is what was marked, and ends the sheet") {
  TestShop shop = ready();
  const RecordId opened = shop.enter("ivo", own(kims_sheet()));
  shop.enter("ivo", own(LineMarked{opened, 1, shown, none, {}}));
  shop.enter("mia", own(LineMarked{opened, 2, shown, none, {}}));  // meanwhile, at another station
  turned_away(shop.commit("ivo", signing(opened, {shown, none})), "another station");
  SignCheckout other = signing(opened, {shown, shown});
  other.sheet_revision = 2;
  turned_away(shop.commit("ivo", other), "another sheet");
  turned_away(shop.commit("ivo", signing("nothing", {shown, shown})), "no run sheet in hand");
  const auto done = shop.commit("ivo", signing(opened, {shown, shown}));
  INFO((done ? "" : done.error().what));
  REQUIRE(done);
  CHECK(all_of<SheetMarks>(done->entries)[0].opened == opened);
  CHECK(shop.store().open_sheets().empty());
  shop.reopen();
  CHECK(shop.store().open_sheets().empty());
  turned_away(shop.commit("ivo", own(LineMarked{opened, 1, none, none, {}})), "has been signed");
  turned_away(shop.commit("ivo", signing(opened, {shown, shown})), "has been signed");
  // A check-out that was struck out opens no sheet again: its marks stay with it.
  shop.enter("ivo", own(kims_sheet()));
  CHECK(shop.store().open_sheets().size() == 1);
}

TEST_CASE("A sheet on another revision takes the place of one that is in hand") {
  TestShop shop = ready();
  shop.enter("ivo", own(kims_sheet()));
  SheetOpened next = kims_sheet();
  next.sheet_revision = 2;
  const RecordId second = shop.enter("ivo", own(next));
  const auto open = shop.store().open_sheets();
  REQUIRE(open.size() == 1);
  CHECK(open[0].id == second);
}

TEST_CASE("Marks that are none, on lines that are none, are refused") {
  TestShop shop = ready();
  const RecordId opened = shop.enter("ivo", own(kims_sheet()));
  turned_away(shop.commit("ivo", own(LineMarked{opened, 0, shown, none, {}})), "no line 0");
  turned_away(shop.commit("ivo", own(LineMarked{opened, 1000, shown, none, {}})), "no line 1000");
  turned_away(shop.commit("ivo", own(LineMarked{"nothing", 1, shown, none, {}})), "no run sheet in hand");
  turned_away(
      shop.commit("ivo", own(LineMarked{opened, 2, shown, none, LineMeasured{1, "1\"", "1 in", "1/64 in"}})),
      "line 1");
  turned_away(
      shop.commit("ivo", own(LineMarked{opened, 1, shown, none, LineMeasured{1, "1\"", "2 in", "1/64 in"}})),
      "is not");
  turned_away(shop.commit("ivo", own(SheetPutBy{opened, "", {" "}})), "restriction is empty");
  SheetOpened wrong = kims_sheet();
  wrong.machine = "s1";
  turned_away(shop.commit("ivo", own(wrong)), "not of the class");
  wrong = kims_sheet();
  wrong.sheet.clear();
  turned_away(shop.commit("ivo", own(wrong)), "which run sheet");
}

TEST_CASE("A member countersigns with their PIN, and signs before the assessor") {
  TestShop shop = ready();
  SignCheckout sign = signing({}, {shown});
  sign.countersign = Countersign{Hand::pin, "7777"};
  turned_away(shop.commit("ivo", sign), "no PIN");
  shop.enter("dee", ChoosePin{"kim", "7777"});  // their first, at whatever station they stand
  turned_away(shop.commit("dee", ChoosePin{"kim", "8888"}), "Only a manager");
  sign.countersign->proof = "1234";
  turned_away(shop.commit("ivo", sign), "PIN");
  CHECK(all_of<Checkout>(shop.store().entries()).empty());
  sign.countersign->proof = "7777";
  const auto done = shop.commit("ivo", sign);
  INFO((done ? "" : done.error().what));
  REQUIRE(done);
  CHECK(all_of<Countersigned>(done->entries) ==
        std::vector{Countersigned{done->entries[0].id, "kim", Hand::pin}});
  const auto signatures = all_of<Signature>(done->entries);
  REQUIRE(signatures.size() == 2);
  CHECK(signatures[0].person == "kim");
  CHECK(signatures[1].person == "ivo");
}

TEST_CASE("A member countersigns with their own card, or on paper") {
  TestShop shop = ready();
  Person kim = *shop.store().person("kim");
  kim.card = "0042";
  shop.enter("dee", CorrectPerson{kim});
  SignCheckout sign = signing({}, {shown});
  sign.countersign = Countersign{Hand::card, "0043"};
  turned_away(shop.commit("ivo", sign), "not Kim");
  sign.countersign->proof.clear();
  turned_away(shop.commit("ivo", sign), "not Kim");
  sign.countersign->proof = "0042";
  const auto by_card = shop.commit("ivo", sign);
  REQUIRE(by_card);
  CHECK(all_of<Countersigned>(by_card->entries)[0].hand == Hand::card);
  CHECK(all_of<Signature>(by_card->entries).size() == 1);
  shop.wait(60);
  sign.countersign = Countersign{Hand::paper, {}};
  turned_away(shop.commit("ivo", sign), "number of the sheet");
  sign.countersign->proof = "7K2Q9X";
  turned_away(shop.commit("ivo", sign), "No blank sheet");
  shop.enter("dee", own(Printed{"Run sheet", 2, std::string(64, 'a'), "7K2Q9X", "bandsaw", 2}));
  turned_away(shop.commit("ivo", sign), "is revision 2");
  sign.countersign->proof = "9M2XW5";
  shop.enter("dee", own(Printed{"Run sheet", 2, std::string(64, 'a'), "9M2XW5", "bandsaw", 1}));
  const auto on_paper = shop.commit("ivo", sign);
  INFO((on_paper ? "" : on_paper.error().what));
  REQUIRE(on_paper);
  CHECK(all_of<Countersigned>(on_paper->entries) ==
        std::vector{Countersigned{on_paper->entries[0].id, "kim", Hand::paper, "9M2XW5"}});
  shop.wait(60);
  turned_away(shop.commit("ivo", sign), "entered already");
}

TEST_CASE("Who did not countersign does so later, once, and signs that") {
  TestShop shop = ready();
  shop.enter("dee", ChoosePin{"kim", "7777"});
  const auto done = shop.commit("ivo", signing({}, {shown}));
  REQUIRE(done);
  const RecordId checkout = done->entries[0].id;
  shop.wait(day);
  CountersignCheckout later{checkout, {Hand::pin, "1234"}};
  turned_away(shop.commit("dee", later), "PIN");
  turned_away(shop.commit("dee", CountersignCheckout{"nothing", {Hand::pin, "7777"}}), "no check-out");
  turned_away(shop.commit("dee", CountersignCheckout{checkout, {Hand::card, "0042"}}), "not Kim");
  turned_away(shop.commit("mia", CountersignCheckout{checkout, {Hand::paper, "7K2Q9X"}}), "by a manager");
  later.by.proof = "7777";
  const Command command = shop.command("dee", later);
  const auto said = shop.store().commit(command);
  INFO((said ? "" : said.error().what));
  REQUIRE(said);
  CHECK(all_of<Countersigned>(said->entries) == std::vector{Countersigned{checkout, "kim", Hand::pin}});
  const auto signatures = all_of<Signature>(said->entries);
  REQUIRE(signatures.size() == 1);
  CHECK(signatures[0].person == "kim");
  CHECK(signatures[0].checkout == said->entries[0].id);
  shop.reopen();
  CHECK(shop.store().commit(command)->again);
  turned_away(shop.commit("dee", later), "already");
}

TEST_CASE("A sheet that was countersigned on paper later is taken in by its number") {
  TestShop shop = ready();
  shop.enter("dee", own(Printed{"Run sheet", 2, std::string(64, 'a'), "7K2Q9X", "bandsaw", 1}));
  shop.enter("dee", own(Printed{"Run sheet", 2, std::string(64, 'a'), "9M2XW5", "combi", 1}));
  const auto done = shop.commit("ivo", signing({}, {shown}));
  REQUIRE(done);
  const RecordId checkout = done->entries[0].id;
  const Instant before = shop.now() + -hour;
  shop.wait(hour);
  const auto taken_in = [&](const std::string& form, Instant at) {
    return shop.from_paper("mia", own(Countersigned{checkout, "kim", Hand::paper, form}), at);
  };
  turned_away(taken_in("7K2Q9X", before), "which is later");
  turned_away(taken_in("7K2Q9Y", shop.now()), "No blank sheet");
  turned_away(taken_in("9M2XW5", shop.now()), "run sheet 'combi'");
  CHECK(taken_in("7K2Q9X", shop.now()));
}

TEST_CASE("What was marked on a blank sheet is taken in once, by its number, as what it is") {
  TestShop shop = ready();
  Printed blank{"Run sheet", 2, std::string(64, 'a'), "7K2Q9X", "bandsaw", 1};
  shop.enter("dee", own(blank));
  shop.wait(day);
  const Instant then = shop.now() + -hour;
  EnterPaperSheet paper{signing({}, {shown, asked}), "7K2Q9X"};
  paper.sheet.pin.clear();
  paper.sheet.again = {none, shown};
  paper.sheet.restrictions = {"no resawing"};
  paper.sheet.countersign = Countersign{Hand::paper, {}};
  const auto with = [&](auto change) {
    EnterPaperSheet other = paper;
    change(other);
    return shop.from_paper("mia", other, then);
  };
  turned_away(with([](auto& p) { p.form.clear(); }), "number of the paper");
  turned_away(with([](auto& p) { p.form = "7K2Q9Y"; }), "No blank sheet");
  turned_away(with([](auto& p) { p.sheet.pin = "2222"; }), "no PIN");
  turned_away(with([](auto& p) { p.sheet.countersign->hand = Hand::card; }), "no PIN");
  turned_away(with([](auto& p) { p.sheet.marks.clear(); }), "No line");
  turned_away(with([](auto& p) { p.sheet.sheet_revision = 2; }), "is revision 1");
  turned_away(with([](auto& p) { p.sheet.countersign->proof = "7K2Q9X"; }), "no PIN");
  turned_away(with([](auto& p) { p.sheet.checkout.assessor = "kim"; }), "own check-out");
  turned_away(shop.commit("mia", paper), "from a paper");
  turned_away(shop.from_paper("ivo", paper, then), "Only a manager");
  const auto done = shop.from_paper("mia", paper, then);
  INFO((done ? "" : done.error().what));
  REQUIRE(done);
  CHECK(done->entries[0].at == then);
  CHECK(done->entries[0].from_paper);
  CHECK(done->entries[0].entered_by == "mia");
  CHECK(as<Checkout>(done->entries[0].fact)->assessor == "ivo");
  CHECK(all_of<SheetMarks>(done->entries)[0].form == "7K2Q9X");
  CHECK(all_of<Restriction>(done->entries).size() == 1);
  CHECK(all_of<Signature>(done->entries).empty());
  turned_away(with([](auto&) {}), "entered already");
  shop.enter("mia", StrikeOutRecord{done->entries[0].id, "another's paper"});
  CHECK(with([](auto&) {}));
}

TEST_CASE("The same signature once more, after a crash, is entered once") {
  TestShop shop = ready();
  shop.enter("dee", ChoosePin{"kim", "7777"});
  const RecordId opened = shop.enter("ivo", own(kims_sheet()));
  shop.enter("ivo", own(LineMarked{opened, 1, shown, none, {}}));
  SignCheckout sign = signing(opened, {shown});
  sign.countersign = Countersign{Hand::pin, "7777"};
  const Command command = shop.command("ivo", sign);
  REQUIRE(shop.store().commit(command));
  const auto last = shop.store().last_commit();
  shop.reopen();
  const auto again = shop.store().commit(command);
  REQUIRE(again);
  CHECK(again->again);
  CHECK(shop.store().last_commit() == last);
}
