// What happened, with everybody who was there: in one entry or not at all, and told once.
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "core/rulebook/checkouts.h"
#include "db/export/person_export.h"
#include "db/journal/subject.h"
#include "db/verify/verify.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

/// The bandsaw's check-out is asked for again after incidents of severity 1 and 2.
void ask_again_after_two(TestShop& shop) {
  Rulebook book = small_rulebook(2, evening + 60);
  std::get<NeedCheckout>(book.classes[0].gates[0].need.need).renew_after_severity = 2;
  shop.enter("mia", PublishRulebook{book});
  shop.wait(120);
}

RecordIncident happened(int severity, std::vector<Involved> people, std::vector<Part> unnamed = {}) {
  return {"bandsaw", "b1", severity, std::move(people), std::move(unnamed), "the blade jumped off"};
}

Rung rung_of_kim(TestShop& shop) {
  return shop.store().current().decider().rung("kim", "bandsaw", shop.now() + 1);
}

void let_kim_work(TestShop& shop) {
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  sign.pin = "2222";
  shop.wait(60);
  shop.enter("ivo", sign);
  shop.wait(60);
}

}  // namespace

TEST_CASE("What happened to several people is one commit: a record for each, and one that tells it once") {
  TestShop shop;
  ask_again_after_two(shop);
  let_kim_work(shop);
  REQUIRE(rung_of_kim(shop) == Rung::independent);
  const Instant when = shop.now() - 30;
  shop.wait(hour);
  const auto done = shop.commit(
      "ivo",
      happened(
          2, {{"kim", Part::operating}, {"kim", Part::hurt}, {"ivo", Part::supervising}, {"lou", Part::saw}},
          {Part::saw, Part::saw}),
      when);
  REQUIRE(done);
  REQUIRE(done->entries.size() == 5);
  CHECK(*as<Incident>(done->entries[0].fact) == Incident{"kim", "bandsaw", 2, Part::operating});
  CHECK(*as<Incident>(done->entries[1].fact) == Incident{"kim", "bandsaw", 2, Part::hurt});
  CHECK(*as<Incident>(done->entries[2].fact) == Incident{"ivo", "bandsaw", 2, Part::supervising});
  CHECK(*as<Incident>(done->entries[3].fact) == Incident{"lou", "bandsaw", 2, Part::saw});
  const Happened told = *as<Happened>(done->entries[4].fact);
  CHECK(told.what == "the blade jumped off");
  CHECK(told.unnamed == std::vector<Part>{Part::saw, Part::saw});
  REQUIRE(told.incidents.size() == 4);
  for (std::size_t i = 0; i < 4; ++i) CHECK(told.incidents[i] == done->entries[i].id);
  for (const Entry& entry : done->entries) CHECK(entry.at == when);
  // Kim alone was working: the others lose nothing.
  REQUIRE(done->shifts.size() == 1);
  CHECK(done->shifts.front().person == "kim");
  CHECK(rung_of_kim(shop) == Rung::supervised);
  shop.reopen();
  CHECK(*as<Happened>(shop.store().entries().back().fact) == told);
  CHECK(rung_of_kim(shop) == Rung::supervised);
}

TEST_CASE("Where one of several can't be entered nothing is") {
  TestShop shop;
  const std::size_t before = shop.store().entries().size();
  refused(shop.commit("ivo", happened(2, {{"kim", Part::hurt}, {"nobody", Part::saw}})),
          "nobody with the id");
  refused(shop.commit("ivo", happened(2, {{"kim", Part::hurt}, {"lou", Part::saw}, {"kim", Part::hurt}})),
          "Kim Abara is named twice");
  refused(shop.commit("ivo", happened(2, {{"kim", Part::hurt}}), shop.now() + 60), "still ahead");
  refused(shop.commit("ivo", happened(0, {{"kim", Part::hurt}})), "from 1");
  refused(shop.commit("ivo", happened(5, {{"kim", Part::hurt}})), "from 1");
  RecordIncident other = happened(2, {{"kim", Part::hurt}});
  other.machine = "s1";
  refused(shop.commit("ivo", other), "not one of 'bandsaw'");
  other.machine = "b9";
  refused(shop.commit("ivo", other), "no machine 'b9'");
  other = happened(2, {{"kim", Part::hurt}});
  other.target = "lathe";
  refused(shop.commit("ivo", other), "No rulebook has 'lathe'");
  other = happened(2, {{"kim", Part::hurt}});
  other.what = " \t";
  refused(shop.commit("ivo", other), "not said what happened");
  CHECK(shop.store().entries().size() == before);
}

TEST_CASE("A near miss costs nobody anything, and nobody need be named") {
  TestShop shop;
  ask_again_after_two(shop);
  let_kim_work(shop);
  const auto nobody = shop.commit("dee", happened(4, {}, {Part::operating}));
  REQUIRE(nobody);
  CHECK(nobody->entries.size() == 1);
  CHECK(nobody->shifts.empty());
  const auto kim = shop.commit("dee", happened(4, {{"kim", Part::operating}}));
  REQUIRE(kim);
  CHECK(kim->shifts.empty());
  CHECK(rung_of_kim(shop) == Rung::independent);
}

TEST_CASE("A name is asked for where the rules take something from whoever was working, and only there") {
  TestShop shop;
  ask_again_after_two(shop);
  refused(shop.commit("ivo", happened(2, {}, {Part::hurt})), "nobody who was there is named");
  const auto slight = shop.commit("ivo", happened(3, {}, {Part::hurt}));
  REQUIRE(slight);
  CHECK(slight->entries.size() == 1);
  CHECK(shop.commit("ivo", happened(3, {}, {Part::operating, Part::hurt})));
  CHECK(shop.commit("ivo", RecordIncident{"sander", "s1", 1, {}, {}, "a belt tore"}));
  refused(shop.commit("dee", happened(3, {}, {Part::hurt})), "only a near miss");
  refused(shop.commit("ivo", happened(2, {{"lou", Part::saw}}, {Part::operating})), "checked out");
  // Severity 3 takes nothing away here, and who was hurt loses nothing at any.
  CHECK(shop.commit("ivo", happened(3, {{"lou", Part::saw}}, {Part::operating})));
  CHECK(shop.commit("ivo", happened(1, {{"lou", Part::saw}}, {Part::hurt})));
  // Nor on a machine whose rules say nothing of incidents.
  CHECK(shop.commit(
      "ivo", RecordIncident{"sander", "s1", 1, {{"lou", Part::saw}}, {Part::operating}, "a belt tore"}));
}

TEST_CASE("The rules' severity is found at any depth, on each mode of a class, and 0 where there is none") {
  Rulebook book = small_rulebook(1, evening);
  CHECK(renewed_after_severity(book, "bandsaw") == 0);
  NeedCheckout outer;
  outer.checkout = "outer";
  outer.given = {book.classes[0].gates[0].need};
  std::get<NeedCheckout>(outer.given[0].need).renew_after_severity = 3;
  book.classes[0].gates[0].need = {NeedAnyOf{{{NeedAge{18}}, {outer}}}};
  CHECK(renewed_after_severity(book, "bandsaw") == 3);
  NeedCheckout joint;
  joint.checkout = "joint";
  joint.renew_after_severity = 1;
  book.classes[1].mode_gates["joint"] = {Gate{"joint", Rung::independent, {joint}, {}}};
  CHECK(renewed_after_severity(book, "combi/plane") == 1);
  CHECK(renewed_after_severity(book, "lathe") == 0);
}

TEST_CASE("What happened stays told when one who was there is erased, and goes by itself", "[file]") {
  TestShop shop;
  const auto done = shop.commit("ivo", happened(2, {{"kim", Part::hurt}, {"lou", Part::saw}}));
  REQUIRE(done);
  const RecordId told = done->entries.back().id;
  const auto exported = nlohmann::json::parse(export_person(shop.store(), "lou").value());
  const auto& records = exported.at("records");
  const auto found = std::find_if(records.begin(), records.end(),
                                  [&](const auto& record) { return record.at("says").at("id") == told; });
  REQUIRE(found != records.end());
  CHECK(found->at("private").at("what").at("value") == "the blade jumped off");
  // Mia was not there.
  CHECK(export_person(shop.store(), "mia").value().find("the blade jumped off") == std::string::npos);
  shop.enter("mia", BlankPerson{"kim"});
  shop.reopen();
  CHECK(as<Happened>(shop.store().entry(told)->fact)->what == "the blade jumped off");
  shop.enter("mia", BlankRecord{told});
  shop.reopen();
  CHECK(as<Happened>(shop.store().entry(told)->fact)->what.empty());
  CHECK(as<Happened>(shop.store().entry(told)->fact)->incidents.size() == 2);
  CHECK(verify::look_through(shop.path(), {}).value().findings.kept().empty());
}
