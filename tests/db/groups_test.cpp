// A lesson given to several at once, with who gave it; visitors for a day.
#include <catch2/catch.hpp>

#include "db/floor.h"
#include "db/journal/subject.h"
#include "db/verify/verify.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

void most_to_one(TestShop& shop, int most) {
  Rulebook rulebook = small_rulebook(2, shop.now());
  rulebook.learners_to_one = most;
  shop.enter("mia", PublishRulebook{rulebook});
}

Action group(const std::vector<PersonId>& people, const std::vector<PersonId>& instructors) {
  return TeachGroup{"guards", 1, instructors, people};
}

}  // namespace

TEST_CASE("A group's lesson is entered with who gave it, within what one instructor may teach") {
  TestShop shop;
  most_to_one(shop, 1);
  const std::size_t before = shop.store().entries().size();
  refused(shop.commit("dee", group({"kim", "lou"}, {"ivo"})), "2 people are too many for one instructor");
  refused(shop.commit("dee", group({"kim", "lou"}, {"ivo", "ivo"})), "named twice");
  refused(shop.commit("dee", group({"kim", "kim"}, {"ivo", "mia"})), "twice");
  refused(shop.commit("dee", group({"kim"}, {"dee"})), "no instructor");
  refused(shop.commit("dee", group({"ivo"}, {"ivo"})), "can't give the lesson and have it");
  refused(shop.commit("dee", group({"kim"}, {})), "Nobody is named");
  refused(shop.commit("dee", group({}, {"ivo"})), "Nobody is in the group");
  refused(shop.commit("dee", group({"nobody"}, {"ivo"})), "nobody with the id");
  refused(shop.commit("dee", TeachGroup{"guards", 2, {"ivo"}, {"kim"}}), "had not been published");
  CHECK(shop.store().entries().size() == before);
  const Command both = shop.command("dee", group({"kim", "lou"}, {"ivo", "mia"}));
  const auto done = shop.store().commit(both);
  REQUIRE(done);
  REQUIRE(done->entries.size() == 3);
  CHECK(*as<GroupTaught>(done->entries[2].fact) ==
        GroupTaught{"guards", {"ivo", "mia"}, {done->entries[0].id, done->entries[1].id}});
  CHECK(*as<Lesson>(done->entries[1].fact) == Lesson{"lou", "guards", 1});
  CHECK(shop.store().commit(both)->again);
  shop.wait(1);
  CHECK(shop.store().current().rung("lou", "bandsaw", shop.now()) == Rung::supervised);
  shop.reopen();
  CHECK(verify::look_through(shop.path(), {}).value().findings.kept().empty());
}

TEST_CASE("A list with new people and their group is entered whole or not at all") {
  TestShop shop;
  most_to_one(shop, 2);
  Person noor;
  noor.id = "noor";
  noor.given = "Noor";
  std::vector<Command> all{shop.command("dee", EnterPerson{noor, {}}),
                           shop.command("dee", fact(Document{"noor", "induction", {}})),
                           shop.command("dee", group({"noor", "kim", "lou"}, {"ivo"}))};
  refused(shop.store().commit_all(all), "3 people are too many");
  CHECK_FALSE(shop.store().person("noor"));
  all[2] = shop.command("dee", group({"noor", "kim"}, {"ivo"}));
  REQUIRE(shop.store().commit_all(all));
  CHECK(shop.store().person("noor"));
}

TEST_CASE("A visitor is in with a host who is in, for the day, and is none of the shop's people") {
  TestShop shop;
  refused(shop.commit("dee", own(Visit{"Ada Quill", "visitor-rules", "ivo"})), "Ivo Lindqvist is not in");
  shop.enter("dee", own(Presence{"ivo", true, true}));
  refused(shop.commit("dee", own(Visit{" ", "visitor-rules", "ivo"})), "has a name");
  refused(shop.commit("dee", own(Visit{"Ada Quill", "", "ivo"})), "signed");
  refused(shop.commit("dee", own(Visit{"Ada Quill", "visitor-rules", "nobody"})), "nobody with the id");
  const std::size_t people = shop.store().people().size();
  const RecordId visit = shop.enter("dee", own(Visit{"Ada Quill", "visitor-rules", "ivo"}));
  CHECK(shop.store().people().size() == people);
  Floor floor = shop.store().floor(shop.now());
  REQUIRE(floor.visitors.size() == 1);
  CHECK(floor.visitors[0] == VisitorIn{visit, "Ada Quill", "visitor-rules", "ivo", true, shop.now()});
  CHECK(floor.present == std::vector<PersonId>{"ivo"});
  shop.wait(60);
  shop.enter("dee", own(Presence{"ivo", false, false}));
  CHECK_FALSE(shop.store().floor(shop.now()).visitors.at(0).host_in);
  shop.reopen();
  CHECK(shop.store().floor(shop.now()).visitors.at(0).name == "Ada Quill");
  const Instant before = shop.now();
  shop.wait(60);
  shop.enter("dee", own(VisitEnd{visit}));
  refused(shop.commit("dee", own(VisitEnd{visit})), "left already");
  CHECK(shop.store().floor(shop.now()).visitors.empty());
  CHECK(shop.store().floor(before).visitors.size() == 1);
  // The name goes, the visit stays.
  shop.enter("mia", BlankRecord{visit});
  CHECK(shop.store().floor(before).visitors.at(0).name.empty());
  CHECK(verify::look_through(shop.path(), {}).value().findings.kept().empty());
}

TEST_CASE("A visit is over when the day is") {
  TestShop shop;
  shop.enter("dee", own(Presence{"ivo"}));
  const RecordId visit = shop.enter("dee", own(Visit{"Ada Quill", "visitor-rules", "ivo"}));
  shop.wait(day);
  CHECK(shop.store().floor(shop.now()).visitors.empty());
  refused(shop.commit("dee", own(VisitEnd{visit})), "They were here on");
}
