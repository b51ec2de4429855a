// Whose lock it is, and who may take it off; what was changed on a machine.
#include <catch2/catch.hpp>

#include "db/floor.h"
#include "db/journal/subject.h"
#include "db/verify/verify.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

/// The small rulebook, where a change has the check-out "bandsaw" renewed.
void renew_after_change(TestShop& shop) {
  Rulebook rulebook = small_rulebook(2, shop.now());
  std::get<NeedCheckout>(rulebook.classes[0].gates[0].need.need).renew_after_change = true;
  shop.enter("mia", PublishRulebook{rulebook});
  shop.wait(1);
}

}  // namespace

TEST_CASE("A lock is whose its tag says, though somebody else entered it, and only they take it off") {
  TestShop shop;
  const RecordId lock = shop.enter("mia", PutOutOfService{"b1", "7", "3", "blade cracked", "ivo", "ivo"});
  const auto on = shop.store().locks_on(shop.now());
  REQUIRE(on.size() == 1);
  CHECK(on[0].lockout == lock);
  CHECK(on[0].whose == "ivo");
  CHECK(on[0].entered_by == "mia");
  CHECK(on[0].tag == Tag{lock, "7", "3", "blade cracked", "ivo", "ivo"});
  // She entered it, but it is not hers.
  refused(shop.commit("mia", fact(Release{lock})), "put on by somebody else");
  CHECK_FALSE(shop.store().permitted("mia", fact(Release{lock})));
  CHECK(shop.store().permitted("ivo", fact(Release{lock})));
  refused(shop.commit("dee", own(Tag{lock, "7", "3", "blade cracked", "dee", "dee"})),
          "said when it was put on");
  // A tag written anew leaves whose it is.
  shop.enter("mia", own(Tag{lock, "8", "3", "blade cracked", "ivo"}));
  CHECK(shop.store().locks_on(shop.now())[0].tag.tag == "8");
  refused(shop.commit("mia", fact(Release{lock})), "put on by somebody else");
  CHECK(shop.commit("ivo", fact(Release{lock})));
  CHECK(shop.store().locks_on(shop.now()).empty());
  CHECK(shop.store().locks_on(shop.now() - 1).empty());
}

TEST_CASE("Nor is another's lock struck out, or made one's own, by whoever entered it for them") {
  TestShop shop;
  const Command put = shop.command("dee", PutOutOfService{"b1", "7", "3", "blade cracked", "ivo", "ivo"});
  const auto done = shop.store().commit(put);
  REQUIRE(done);
  refused(shop.commit("dee", StrikeOutRecord{done->entries[0].id, "mistake"}), "put on by somebody else");
  refused(shop.commit("dee", StrikeOutRecord{done->entries[1].id, "mistake"}), "put on by somebody else");
  refused(shop.commit("mia", StrikeOutRecord{done->entries[1].id, "mistake"}), "nobody has tried to reach");
  // Her own she may, on the same day.
  const RecordId own_one = shop.enter("dee", PutOutOfService{"b2", "8", "4", "belt torn", "dee"});
  CHECK(shop.commit("dee", StrikeOutRecord{own_one, "wrong machine"}));
  CHECK(shop.store().locks_on(shop.now()).size() == 1);
}

TEST_CASE("Whoever put a lock on takes it off, at the desk too, on whatever day") {
  TestShop shop;
  const RecordId lock = shop.enter("dee", PutOutOfService{"b1", "7", "", "blade cracked", ""});
  const RecordId other = shop.enter("ivo", PutOutOfService{"b2", "8", "", "belt torn", ""});
  shop.wait(day);
  refused(shop.commit("dee", fact(Release{other})), "put on by somebody else");
  refused(shop.commit("ivo", fact(Release{lock})), "put on by somebody else");
  CHECK(shop.commit("dee", fact(Release{lock})));
  CHECK(shop.store().locks_on(shop.now()).size() == 1);
}

TEST_CASE("A manager takes another's lock off once an attempt to reach them was entered") {
  TestShop shop;
  const RecordId lock = shop.enter("ivo", PutOutOfService{"b1", "7", "3", "blade cracked", "ivo"});
  CHECK(shop.store().locks_on(shop.now())[0].whose == "ivo");
  CHECK_FALSE(shop.store().permitted("mia", fact(Release{lock})));
  shop.wait(60);
  shop.enter("mia", own(Reached{lock, "telephoned, no answer"}));
  const auto on = shop.store().locks_on(shop.now());
  REQUIRE(on[0].attempts.size() == 1);
  CHECK(on[0].attempts[0] == Attempt{shop.now(), "mia", "telephoned, no answer"});
  CHECK(shop.store().permitted("mia", fact(Release{lock})));
  CHECK_FALSE(shop.store().permitted("dee", fact(Release{lock})));
  CHECK_FALSE(shop.store().permitted("kim", fact(Release{lock})));  // no role at the desk
  const Instant before = shop.now();
  shop.wait(60);
  shop.enter("mia", fact(Release{lock}));
  CHECK(shop.store().locks_on(shop.now()).empty());
  // As it was, and as was known then.
  CHECK(shop.store().locks_on(before).size() == 1);
  CHECK(shop.store().locks_on(before, before).size() == 1);
  CHECK(shop.store().locks_on(shop.now(), before).size() == 1);
}

TEST_CASE("A change is told with its unit and kind, and takes away what the rulebook has renewed after it") {
  TestShop shop;
  renew_after_change(shop);
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.enter("ivo", SignCheckout{
                        {"kim", "bandsaw", 0, Outcome::passed, "ivo"}, "2222", "b1", {}, 0, {}, {}, {}, {}});
  shop.wait(60);
  REQUIRE(shop.store().current().rung("kim", "bandsaw", shop.now()) == Rung::independent);
  refused(shop.commit("ivo", RecordChange{"bandsaw", "b1", Alteration::cutter, "  "}), "not said what");
  refused(shop.commit("ivo", RecordChange{"bandsaw", "s1", Alteration::cutter, "a wider blade"}),
          "not one of");
  refused(shop.commit("ivo", RecordChange{"lathe", "", Alteration::cutter, "a wider blade"}),
          "No rulebook has");
  refused(shop.commit("dee", RecordChange{"bandsaw", "b1", Alteration::cutter, "a wider blade"}),
          "desk may not");
  const Command change =
      shop.command("ivo", RecordChange{"bandsaw", "b1", Alteration::cutter, "a wider blade"});
  const auto done = shop.store().commit(change);
  REQUIRE(done);
  REQUIRE(done->entries.size() == 2);
  CHECK(*as<Change>(done->entries[0].fact) == Change{"bandsaw"});
  CHECK(*as<Altered>(done->entries[1].fact) ==
        Altered{done->entries[0].id, "b1", Alteration::cutter, "a wider blade"});
  REQUIRE(done->shifts.size() == 1);
  CHECK(done->shifts[0].person == "kim");
  CHECK(done->shifts[0].target == "bandsaw");
  shop.wait(1);
  CHECK(shop.store().current().rung("kim", "bandsaw", shop.now()) == Rung::supervised);
  CHECK(shop.store().commit(change)->again);
  shop.reopen();
  CHECK(*as<Altered>(shop.store().entries().back().fact) ==
        Altered{done->entries[0].id, "b1", Alteration::cutter, "a wider blade"});
  CHECK(verify::look_through(shop.path(), {}).value().findings.kept().empty());
}

TEST_CASE(
    "A repair after which a manager says that using the machine is as before is told, and takes nothing "
    "away") {
  TestShop shop;
  renew_after_change(shop);
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.enter("ivo", SignCheckout{
                        {"kim", "bandsaw", 0, Outcome::passed, "ivo"}, "2222", "b1", {}, 0, {}, {}, {}, {}});
  shop.wait(60);
  RecordChange lamp{"bandsaw", "b1", Alteration::repair, "a new lamp", true};
  refused(shop.commit("ivo", lamp), "for a manager to say");
  for (const Alteration kind :
       {Alteration::cutter, Alteration::guard, Alteration::controls, Alteration::moved}) {
    RecordChange other = lamp;
    other.kind = kind;
    refused(shop.commit("mia", other), "changes how it is used");
  }
  const Command change = shop.command("mia", lamp, shop.now() - 30);
  const auto done = shop.store().commit(change);
  REQUIRE(done);
  REQUIRE(done->entries.size() == 1);
  const Altered told{{}, "b1", Alteration::repair, "a new lamp", "bandsaw"};
  CHECK(*as<Altered>(done->entries[0].fact) == told);
  CHECK(done->shifts.empty());
  CHECK(shop.store().commit(change)->again);
  shop.wait(1);
  CHECK(shop.store().current().rung("kim", "bandsaw", shop.now()) == Rung::independent);
  shop.reopen();
  CHECK(*as<Altered>(shop.store().entries().back().fact) == told);
  CHECK(shop.commit("mia", StrikeOutRecord{done->entries[0].id, "another machine"}));
  CHECK(verify::look_through(shop.path(), {}).value().findings.kept().empty());
}

TEST_CASE("A change is entered with its own time: whoever was checked out after it keeps that") {
  TestShop shop;
  renew_after_change(shop);
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  const Instant changed = shop.now();
  shop.wait(hour);
  shop.enter("ivo", SignCheckout{
                        {"kim", "bandsaw", 0, Outcome::passed, "ivo"}, "2222", "b1", {}, 0, {}, {}, {}, {}});
  shop.wait(60);
  REQUIRE(shop.commit("ivo", RecordChange{"bandsaw", "b1", Alteration::cutter, "a wider blade"}, changed));
  shop.wait(1);
  CHECK(shop.store().current().rung("kim", "bandsaw", shop.now()) == Rung::independent);
}
