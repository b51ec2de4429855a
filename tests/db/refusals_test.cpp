// What cannot have happened is refused, with a sentence; and what lies just beside it is not.
#include <catch2/catch.hpp>

#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

SignCheckout signing(const PersonId& person, const PersonId& assessor, const std::string& pin) {
  SignCheckout sign;
  sign.checkout = {person, "bandsaw", 0, Outcome::passed, assessor};
  sign.pin = pin;
  sign.machine = "b1";
  return sign;
}

Booking booking(const PersonId& person, const PersonId& assessor, const MachineId& machine, Instant from,
                Instant to) {
  return {person, assessor, machine, "bandsaw", from, to, Purpose::check_out};
}

}  // namespace

TEST_CASE("What is dated ahead is refused, but not what is announced") {
  TestShop shop;
  refused(shop.commit("dee", fact(Document{"kim", "induction", {}}), evening + 1), "still ahead");
  refused(shop.commit("ivo", fact(Use{"kim", "sander"}), evening + 1), "still ahead");
  refused(shop.commit("dee", fact(Lockout{"b1"}), evening + 1), "still ahead");
  shop.enter("dee", fact(Document{"kim", "induction", {}}), evening);
  shop.enter("mia", fact(Publish{"guards", 2}), evening + day);
  shop.enter("mia", fact(Appoint{"lou", TierScope{1}, false, {}}), evening + day);
  shop.enter("mia", fact(Suspend{"lou", TargetScope{"combi/joint"}, {}}), evening + day);
  refused(shop.commit("dee", fact(Lesson{"kim", "guards", 2})), "not been published");
}

TEST_CASE("Nobody is in two supervised sessions at once, on either side") {
  TestShop shop;
  const RecordId first = shop.enter("ivo", fact(Supervised{"kim", "bandsaw", 30, "ivo"}), evening - 2 * hour);
  const Instant end = evening - 2 * hour + 1800;
  refused(shop.commit("ivo", fact(Supervised{"kim", "sander", 10, "mia"}), end - 1),
          "another supervised session");
  refused(shop.commit("ivo", fact(Supervised{"lou", "sander", 10, "ivo"}), end - 1),
          "another supervised session");
  refused(shop.commit("ivo", fact(Supervised{"lou", "sander", 60, "kim"}), evening - 2 * hour - 1800),
          "another supervised session");
  refused(shop.commit("mia", fact(Supervised{"ivo", "sander", 60, "mia"}), evening - 2 * hour - 1800),
          "another supervised session");
  refused(shop.commit("ivo", fact(Supervised{"kim", "sander", 10, "kim"})), "supervises themself");
  shop.enter("ivo", fact(Supervised{"kim", "sander", 10, "ivo"}), end);
  shop.enter("ivo", fact(Supervised{"lou", "sander", 30, "mia"}), evening - 2 * hour);
  shop.enter("mia", StrikeOutRecord{first, "another day"});
  shop.enter("ivo", fact(Supervised{"kim", "bandsaw", 30, "ivo"}), evening - 2 * hour);
}

TEST_CASE("A revision that had not been published is refused") {
  TestShop shop;
  refused(shop.commit("dee", fact(Lesson{"kim", "guards", 2})), "Revision 2 of 'guards'");
  refused(shop.commit("dee", fact(Lesson{"kim", "guards", 0})), "Revision 0 of 'guards'");
  refused(shop.commit("dee", fact(Lesson{"kim", "chisels", 1})), "Revision 1 of 'chisels'");
  refused(shop.commit("dee", fact(Lesson{"kim", "guards", 1}), evening - 8 * day), "Revision 1 of 'guards'");
  shop.enter("dee", fact(Lesson{"kim", "chisels", 0}));
  shop.enter("dee", fact(Lesson{"kim", "guards", 0}), evening - 8 * day);
  SignCheckout sign = signing("kim", "ivo", "2222");
  sign.checkout.revision = 1;
  refused(shop.commit("ivo", sign), "Revision 1 of 'bandsaw'");
}

TEST_CASE("Only who can assess signs, only who can supervise supervises, and paper may say otherwise") {
  TestShop shop;
  shop.enter("mia", own(RoleGiven{"lou", Role::instructor}));
  shop.enter("mia", ChoosePin{"lou", "5555"});
  refused(shop.commit("lou", signing("kim", "lou", "5555")), "could not assess 'bandsaw'");
  refused(shop.commit("lou", fact(Supervised{"kim", "bandsaw", 30, "lou"})), "could not supervise 'bandsaw'");
  REQUIRE(shop.from_paper("mia", fact(Checkout{"kim", "bandsaw", 0, Outcome::passed, "lou"}), evening));
  REQUIRE(shop.from_paper("mia", fact(Supervised{"kim", "bandsaw", 30, "lou"}), evening - hour));
  CHECK(shop.store().entries().back().from_paper);
  refused(shop.commit("ivo", signing("ivo", "ivo", "2222")), "their own check-out");
  refused(shop.from_paper("mia", fact(Checkout{"kim", "bandsaw", 0, Outcome::passed, "kim"}), evening),
          "their own");
  refused(shop.commit("ivo", signing("kim", "ivo", "1111")), "not Ivo Lindqvist's PIN");
  SignCheckout elsewhere = signing("kim", "ivo", "2222");
  elsewhere.machine = "s1";
  refused(shop.commit("ivo", elsewhere), "No rule in force asks for");
  // Appointed at this very second is too late for this second.
  shop.enter("mia", fact(Appoint{"lou", Everything{}, true, Day{21000}}));
  refused(shop.commit("lou", signing("kim", "lou", "5555")), "could not assess");
  refused(shop.commit("lou", fact(Supervised{"kim", "bandsaw", 30, "lou"})), "could not supervise");
  shop.wait(1);
  shop.enter("lou", fact(Supervised{"kim", "bandsaw", 30, "lou"}));
  shop.enter("lou", signing("kim", "lou", "5555"));
}

TEST_CASE("What is named must exist") {
  TestShop shop;
  refused(shop.commit("dee", fact(Document{"nobody", "induction", {}})), "nobody with the id 'nobody'");
  refused(shop.commit("ivo", fact(Supervised{"kim", "bandsaw", 30, "nobody"})), "nobody with the id");
  refused(shop.commit("ivo", fact(Use{"kim", "lathe"})), "No rulebook has 'lathe'");
  refused(shop.commit("ivo", fact(Use{"kim", "combi/mortise"})), "No rulebook has 'combi/mortise'");
  refused(shop.commit("ivo", fact(Change{"lathe"})), "No rulebook has 'lathe'");
  refused(shop.commit("mia", fact(Suspend{"kim", TierScope{9}, {}})), "tier 9");
  refused(shop.commit("mia", fact(Suspend{"kim", TargetScope{"lathe"}, {}})), "No rulebook has 'lathe'");
  refused(shop.commit("dee", fact(Lockout{"b9"})), "no machine 'b9'");
  refused(shop.commit("dee", PutOutOfService{"b9", "", "", "broken", ""}), "no machine 'b9'");
  refused(shop.commit("dee", PutOutOfService{"b1", "", "", "broken", "nobody"}), "nobody with the id");
  refused(shop.commit("mia", own(MachineAdded{"l1", "lathe", ""})), "class 'lathe'");
  refused(shop.commit("mia", own(MachineAdded{"c2", "combi/joint", ""})), "class 'combi/joint'");
  refused(shop.commit("mia", fact(Release{"none"})), "no lock");
  refused(shop.commit("mia", fact(Reinstate{"none"})), "no suspension");
  refused(shop.commit("mia", fact(Dismiss{"none"})), "no appointment");
  refused(shop.commit("dee", own(Cancel{"none", "ill"})), "no booking");
  refused(shop.commit("mia", StrikeOutRecord{"none", "wrong"}), "no record");
  refused(shop.commit("mia", own(Join{"kim", "nobody"})), "nobody with the id");
  refused(shop.commit("mia", own(Join{"kim", "kim"})), "one person already");
  refused(shop.commit("ivo", fact(Supervised{"kim", "bandsaw", 0, "ivo"})), "");
  refused(shop.commit("ivo", fact(Incident{"kim", "bandsaw", 5, Part::hurt})), "");
}

TEST_CASE("A one-on-one is booked where all three are free and able") {
  TestShop shop;
  const Instant from = evening + day, to = from + hour;
  const RecordId first = shop.enter("dee", own(booking("kim", "ivo", "b1", from, to)));
  refused(shop.commit("dee", own(booking("lou", "ivo", "b2", to - 1, to + hour))),
          "Ivo Lindqvist is booked already");
  refused(shop.commit("dee", own(booking("lou", "mia", "b1", from - hour, from + 1))),
          "'Unit b1' (bandsaw) is booked already");
  refused(shop.commit("dee", own(booking("kim", "mia", "b2", from, to))), "Kim Abara is booked already");
  refused(shop.commit("dee", own(booking("ivo", "mia", "b2", from, to))), "Ivo Lindqvist is booked already");
  shop.enter("dee", own(booking("lou", "ivo", "b1", to, to + hour)));
  shop.enter("dee", own(booking("lou", "mia", "b2", from - hour, from)));
  refused(shop.commit("dee", own(booking("kim", "lou", "b2", from + day, to + day))), "not able to assess");
  shop.enter("dee", own(booking("mia", "ivo", "b1", from + 2 * day, to + 2 * day)));
  refused(shop.commit("dee", own(booking("kim", "mia", "b2", from + 2 * day, to + 2 * day))),
          "Mia Okafor is booked already");
  refused(shop.commit("dee", own(booking("kim", "kim", "b2", from + day, to + day))), "with themself");
  refused(shop.commit("dee", own(booking("kim", "ivo", "s1", from + day, to + day))), "is not of 'bandsaw'");
  refused(shop.commit("dee", own(booking("kim", "ivo", "b1", to, from))), "ends before it begins");
  refused(shop.commit("dee", own(booking("kim", "ivo", "b1", evening - hour, evening))), "in the past");
  refused(shop.commit("dee", own(booking("kim", "ivo", "b1", from, from + 2 * day))), "longer than a day");
  // mia's and ivo's appointments end on day 21000.
  const Instant after = Zone::named("America/Chicago")->start(Day{21001});
  refused(shop.commit("dee", own(booking("kim", "ivo", "b1", after, after + hour))), "not able to assess");
  shop.enter("dee", own(booking("kim", "ivo", "b1", after - hour, after)));
  shop.enter("dee", own(Cancel{first, "ill"}));
  refused(shop.commit("dee", own(Cancel{first, "ill"})), "has been cancelled");
  refused(shop.commit("dee", own(Attendance{first, Turnout::late})), "has been cancelled");
  const RecordId again = shop.enter("dee", own(booking("kim", "ivo", "b1", from, to)));
  shop.set_now(from - hour);
  shop.enter("dee", own(Attendance{again, Turnout::not_come}));
  shop.enter("dee", own(booking("lou", "ivo", "b1", from, to)));
  shop.enter("dee", fact(Lockout{"b2"}));
  refused(shop.commit("dee", own(booking("kim", "mia", "b2", from + day, to + day))), "out of service");
}

TEST_CASE("What is over is not ended again") {
  TestShop shop;
  const RecordId lock = shop.enter("ivo", fact(Lockout{"b1"}));
  refused(shop.commit("ivo", fact(Release{lock}), evening - 1), "begins only on");
  shop.enter("ivo", fact(Release{lock}));
  refused(shop.commit("ivo", fact(Release{lock})), "ended already");
  const RecordId pause = shop.enter("mia", fact(Suspend{"kim", Everything{}, {}}));
  refused(shop.commit("mia", fact(Reinstate{lock})), "no suspension");
  shop.enter("mia", fact(Reinstate{pause}));
  refused(shop.commit("mia", fact(Reinstate{pause})), "ended already");
  const RecordId tonight = shop.enter("dee", fact(Suspend{"kim", Everything{}, Day{20526}}));
  shop.wait(day);
  refused(shop.commit("mia", fact(Reinstate{tonight})), "ended by itself");
  const RecordId post = shop.enter("mia", fact(Appoint{"lou", Everything{}, false, {}}));
  shop.enter("mia", fact(Dismiss{post}));
  refused(shop.commit("mia", fact(Dismiss{post})), "ended already");
  refused(shop.commit("mia", fact(Appoint{"lou", Everything{}, true, {}})), "for a time only");
  refused(shop.commit("mia", fact(Suspend{"kim", Everything{}, Day{20000}})), "before it begins");
  const RecordId place = shop.enter("dee", own(Waiting{"kim", "bandsaw"}));
  shop.enter("dee", own(WaitingEnd{place}));
  refused(shop.commit("dee", own(WaitingEnd{place})), "given up already");
  const RecordId wrong = shop.enter("dee", own(Presence{"kim"}));
  const RecordId out = shop.enter("dee", StrikeOutRecord{wrong, "it was lou"});
  refused(shop.commit("dee", StrikeOutRecord{wrong, "it was lou"}), "struck out already");
  refused(shop.commit("dee", StrikeOutRecord{out, "no"}), "A strike-out stays");
  refused(shop.commit("mia", StrikeOutRecord{place, "wrong"}, evening), "counts from now on");
}

TEST_CASE("Where a reason is needed, blanks are none") {
  TestShop shop;
  const RecordId entry = shop.enter("dee", own(Presence{"kim"}));
  refused(shop.commit("dee", StrikeOutRecord{entry, "  "}), "with a reason");
  refused(shop.commit("dee", PutOutOfService{"b1", "7", "3", "\t", ""}), "with a reason");
  const RecordId booked =
      shop.enter("dee", own(booking("kim", "ivo", "b1", evening + day, evening + day + hour)));
  refused(shop.commit("dee", own(Cancel{booked, ""})), "with a reason");
  const RecordId lock = shop.enter("dee", fact(Lockout{"b1"}));
  refused(shop.commit("mia", own(Reached{lock, " "})), "how they were tried");
  refused(shop.commit("mia", own(EmergencyCall{"Mill Road", ""})), "no digit");
  refused(shop.commit("", own(ContactShown{"nobody"})), "nobody");
  const RecordId shown = shop.enter("", own(ContactShown{"kim"}));
  refused(shop.commit("mia", StrikeOutRecord{shown, "by mistake"}), "says what was done");
}

TEST_CASE("A rulebook with mistakes, of a version there is, or from before it is entered is refused") {
  TestShop shop;
  refused(shop.commit("mia", PublishRulebook{small_rulebook(1, evening)}), "version 1 already");
  refused(shop.commit("mia", PublishRulebook{small_rulebook(2, evening - 1)}), "before it is entered");
  Rulebook wrong = small_rulebook(2, evening);
  wrong.classes[0].tier = 7;
  const auto done = shop.commit("mia", PublishRulebook{wrong});
  REQUIRE_FALSE(done);
  CHECK(done.error().where == "/classes/0/tier");
  shop.enter("mia", PublishRulebook{small_rulebook(2, evening)});
  CHECK(shop.store().rulebooks().size() == 2);
  CHECK(shop.store().shop(evening - 1).rulebooks.size() == 1);
  CHECK(shop.store().rulebooks().back().recorded == evening);
}

TEST_CASE("People need a name, and a number and a card of their own") {
  TestShop shop;
  Person person;
  refused(shop.commit("dee", EnterPerson{person, {}}), "no name");
  person.given = "Noor";
  person.number = "4";
  refused(shop.commit("dee", EnterPerson{person, {}}), "is Kim Abara's");
  person.number = "6";
  refused(shop.commit("dee", EnterPerson{person, Day{20527}}), "still ahead");
  const auto done = shop.commit("dee", EnterPerson{person, Day{20526}});
  REQUIRE(done);
  CHECK(done->person == "p6");
  person.id = "kim";
  refused(shop.commit("dee", EnterPerson{person, {}}), "already");
  refused(shop.commit("dee", CorrectPerson{person}), "is Noor's");
  person.id = "nobody";
  refused(shop.commit("dee", CorrectPerson{person}), "nobody with the id");
  person.id = "";
  person.given = "\xff";
  person.number = "";
  refused(shop.commit("dee", EnterPerson{person, {}}), "UTF-8");
  refused(shop.commit("dee", fact(Document{"kim", "\xff", {}})), "");
}

TEST_CASE("Names in every script come back as they were entered") {
  TestShop shop;
  const std::vector<std::string> names = {
      "Ægir Þórsson", "李小龍",      "Զարուհի", "עדה כהן",     "عائشة",
      "Nguyễn Thị",   "ក្រុមហ៊ុន",       "😀 Ok",    "a\xCC\x88 ä", "O'Brien; DROP TABLE",
      "\"quoted\"",   "line\nbreak", "ไทย",     "Ελένη",       "Ирина"};
  for (const std::string& name : names) {
    Person person;
    person.given = name;
    REQUIRE(shop.commit("dee", EnterPerson{person, {}}));
    Command command = shop.command("dee", fact(Document{"kim", name, {}}));
    command.note = name;
    REQUIRE(shop.store().commit(command));
  }
  const auto people = shop.store().people();
  const auto entries = shop.store().entries();
  shop.reopen();
  CHECK(shop.store().people() == people);
  CHECK(shop.store().entries() == entries);
  CHECK(entries.back().note == names.back());
}

TEST_CASE("What commands of their own make is not struck out, nor entered by hand") {
  TestShop shop;
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.wait(60);
  SignCheckout signing;
  signing.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  signing.pin = "2222";
  shop.enter("ivo", signing);
  shop.enter("mia", BlankPerson{"lou"});
  std::size_t tried = 0;
  for (const Entry& entry : std::vector<Entry>(shop.store().entries())) {
    const auto* own_fact = std::get_if<ShopFact>(&entry.fact);
    if (own_fact == nullptr || !is_for_good(*own_fact)) continue;
    INFO(entry.id);
    ++tried;
    const auto struck = shop.commit("mia", StrikeOutRecord{entry.id, "by mistake"});
    REQUIRE_FALSE(struck);
    CHECK(struck.error().where == "record");
    const auto entered = shop.commit("mia", EnterShopFact{*own_fact});
    REQUIRE_FALSE(entered);
    CHECK_THAT(entered.error().what, Catch::Contains("not entered by hand"));
  }
  CHECK(tried == 10);  // details of five, three PINs, one signature, one erasing
}
