// Machines started and left: who may, who is busy meanwhile, and what it comes to.
#include <catch2/catch.hpp>

#include "db/journal/subject.h"
#include "db/verify/verify.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

constexpr const char* joint = "combi/joint";  // everybody may, with a supervisor

void refused(const Expected<Committed>& done, const std::string& part) {
  REQUIRE_FALSE(done);
  INFO(done.error().what << " " << done.error().remedy);
  CHECK(done.error().what.find(part) != std::string::npos);
  CHECK_FALSE(done.error().remedy.empty());
}

Action start(const PersonId& person, const MachineId& machine, const TargetName& target,
             const PersonId& supervisor = {}) {
  return own(Started{person, machine, target, supervisor});
}

}  // namespace

TEST_CASE("A machine that is left gives a supervised session of as many minutes, from when it was started") {
  TestShop shop;
  shop.enter("dee", own(Presence{"ivo"}));
  const Instant began = shop.now();
  const RecordId started = shop.enter("dee", start("kim", "c1", joint, "ivo"));
  shop.wait(47 * 60 + 59);
  shop.reopen();  // it is still started
  const auto left = shop.commit("dee", LeaveMachine{started});
  REQUIRE(left);
  REQUIRE(left->entries.size() == 2);
  CHECK(*as<Left>(left->entries[0].fact) == Left{started});
  CHECK(left->entries[0].at == shop.now());
  CHECK(*as<Supervised>(left->entries[1].fact) == Supervised{"kim", joint, 47, "ivo"});
  CHECK(left->entries[1].at == began);
  refused(shop.commit("dee", LeaveMachine{started}), "left already");
  refused(shop.commit("dee", LeaveMachine{"nothing"}), "no start");
  CHECK(verify::look_through(shop.path(), {}).value().findings.kept().empty());
}

TEST_CASE("Whoever needs no supervisor has used it; when it was left may be said later", "[file]") {
  TestShop shop;
  const Instant began = shop.now();
  const RecordId started = shop.enter("dee", start("kim", "s1", "sander"));
  shop.wait(3 * hour);
  refused(shop.commit("dee", LeaveMachine{started}, began - 1), "started only");
  Command leave = shop.command("dee", LeaveMachine{started}, began + hour);
  const auto left = shop.store().commit(leave);
  REQUIRE(left);
  CHECK(left->entries[0].at == began + hour);
  CHECK(*as<Use>(left->entries[1].fact) == Use{"kim", "sander"});
  CHECK(left->entries[1].at == began);
  const auto again = shop.store().commit(leave);
  REQUIRE(again);
  CHECK(again->again);
  leave.at = began + hour + 1;
  refused(shop.store().commit(leave), "Something else");
}

TEST_CASE("Who forgot to say that they left says when it was") {
  TestShop shop;
  const Instant began = shop.now();
  const RecordId started = shop.enter("dee", start("kim", "s1", "sander"));
  shop.wait(2 * day);
  refused(shop.commit("dee", LeaveMachine{started}), "more than a day before");
  CHECK(shop.commit("dee", LeaveMachine{started}, began + hour));
}

TEST_CASE("Nobody starts what they may not: the engine is asked with who is here and free") {
  TestShop shop;
  refused(shop.commit("dee", start("kim", "b1", "bandsaw", "ivo")), "may not use it yet");
  refused(shop.commit("dee", start("kim", "c1", joint, "ivo")), "nobody is here and free");
  shop.enter("dee", own(Presence{"ivo"}));
  refused(shop.commit("dee", start("kim", "c1", joint)), "only with a supervisor");
  refused(shop.commit("dee", start("kim", "c1", joint, "mia")), "Mia Okafor is not here");
  refused(shop.commit("dee", start("kim", "c1", joint, "kim")), "supervises themself");
  refused(shop.commit("dee", start("kim", "s1", joint, "ivo")), "is not of");
  const RecordId lock = shop.enter("ivo", PutOutOfService{"c1", "1", "2", "belt torn", "ivo"});
  refused(shop.commit("dee", start("kim", "c1", joint, "ivo")), "out of service");
  shop.enter("ivo", fact(Release{lock}));
  CHECK(shop.commit("dee", start("kim", "c1", joint, "ivo")));
}

TEST_CASE("Who is at a machine, on either side, is at no other, and the unit is in use") {
  TestShop shop;
  shop.enter("dee", own(Presence{"ivo"}));
  shop.enter("dee", own(Presence{"mia"}));
  shop.enter("dee", fact(Lesson{"lou", "guards", 1}));
  const RecordId started = shop.enter("dee", start("kim", "c1", joint, "ivo"));
  shop.wait(60);
  refused(shop.commit("dee", start("lou", "c1", joint, "mia")), "Kim Abara is at the machine 'Unit c1'");
  refused(shop.commit("dee", start("kim", "s1", "sander")), "Kim Abara is at");
  refused(shop.commit("dee", start("ivo", "s1", "sander")), "Ivo Lindqvist is at");
  refused(shop.commit("dee", start("lou", "b1", "bandsaw", "ivo")), "Ivo Lindqvist is at");
  // Nor are they booked for this moment.
  refused(shop.commit("dee", own(Booking{"lou", "ivo", "b1", "bandsaw", shop.now(), shop.now() + hour})),
          "is at the machine");
  refused(shop.commit("dee", own(Booking{"lou", "mia", "c1", joint, shop.now(), shop.now() + hour})),
          "is at the machine");
  CHECK(shop.commit("dee",
                    own(Booking{"lou", "ivo", "b1", "bandsaw", shop.now() + hour, shop.now() + 2 * hour})));
  shop.enter("dee", LeaveMachine{started});
  CHECK(shop.commit("dee", start("lou", "b1", "bandsaw", "ivo")));
}

TEST_CASE("Who is in a one-on-one under way supervises nobody else, but whom they are booked with") {
  TestShop shop;
  shop.enter("dee", own(Presence{"ivo"}));
  const Instant from = shop.now() + hour;
  const RecordId booking = shop.enter("dee", own(Booking{"kim", "ivo", "c1", joint, from, from + hour}));
  shop.set_now(from + 60);
  shop.enter("dee", own(Attendance{booking, Turnout::arrived}));
  shop.enter("dee", fact(Lesson{"lou", "guards", 1}));
  shop.wait(1);
  refused(shop.commit("dee", start("lou", "b1", "bandsaw", "ivo")), "nobody is here and free");
  CHECK(shop.commit("dee", start("kim", "c1", joint, "ivo")));
  CHECK(shop.store().still_stands(booking));
}

TEST_CASE("A start that was struck out is over, and one that would run into a session is refused") {
  TestShop shop;
  shop.enter("dee", own(Presence{"ivo"}));
  const RecordId started = shop.enter("dee", start("kim", "c1", joint, "ivo"));
  shop.enter("dee", StrikeOutRecord{started, "it was lou"});
  refused(shop.commit("dee", LeaveMachine{started}), "no start");
  CHECK(shop.commit("ivo", fact(Supervised{"kim", joint, 30, "ivo"}), shop.now()));
  refused(shop.commit("dee", start("lou", "c1", joint, "ivo")), "was in another supervised session");
}
