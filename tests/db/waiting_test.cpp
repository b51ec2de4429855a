// The waiting list follows what is booked, and what is held: nobody waits for what they have, and nobody
// loses the days that they have waited.
#include <catch2/catch.hpp>

#include "db/verify/verify.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

constexpr Instant that_noon = evening + 2 * day - 6 * hour;

Booking checked_out_at(Instant from, Purpose purpose = Purpose::check_out) {
  return {"kim", "ivo", "b1", "bandsaw", from, from + hour, purpose};
}
Booking held_at(Instant from, Instant through) {
  Booking out = checked_out_at(from);
  out.held_through = through;
  return out;
}

/// When those who wait began to.
std::vector<Instant> waiting(TestShop& shop) {
  std::vector<Instant> out;
  for (const Entry* entry : shop.store().of_kind("waiting")) {
    bool over = entry->voided.has_value();
    for (const Entry* end : shop.store().of_kind("waiting_end"))
      over = over || (!end->voided && as<WaitingEnd>(end->fact)->waiting == entry->id);
    if (!over) out.push_back(entry->at);
  }
  return out;
}

/// Kim has waited for ten days.
TestShop with_kim_waiting() {
  TestShop shop;
  shop.enter("dee", own(Waiting{"kim", "bandsaw"}), evening - 5 * day);
  return shop;
}
const std::vector<Instant> long_since{evening - 5 * day};

}  // namespace

TEST_CASE(
    "Whoever is booked for their check-out waits no more, and waits again as before when it is cancelled") {
  TestShop shop = with_kim_waiting();
  REQUIRE(waiting(shop) == long_since);
  const RecordId id = shop.enter("dee", own(checked_out_at(that_noon)));
  CHECK(waiting(shop).empty());
  SECTION("cancelled") {
    const RecordId off = shop.enter("dee", own(Cancel{id, "ill"}));
    CHECK(waiting(shop) == long_since);
    SECTION("and the cancellation struck out") {
      shop.enter("mia", StrikeOutRecord{off, "well again"});
      CHECK(waiting(shop).empty());
      shop.enter("dee", own(Cancel{id, "ill after all"}));
      CHECK(waiting(shop) == long_since);
    }
    SECTION("and booked again") {
      shop.enter("dee", own(checked_out_at(that_noon + day)));
      CHECK(waiting(shop).empty());
    }
  }
  SECTION("moved, and cancelled then") {
    Booking moved = checked_out_at(that_noon + day);
    moved.instead_of = id;
    const RecordId second = shop.enter("dee", own(moved));
    CHECK(waiting(shop).empty());
    shop.enter("dee", own(Cancel{second, "ill"}));
    CHECK(waiting(shop) == long_since);
  }
  SECTION("struck out") {
    shop.enter("mia", StrikeOutRecord{id, "the wrong member"});
    CHECK(waiting(shop) == long_since);
  }
  SECTION("stayed away from") {
    shop.set_now(that_noon + hour);
    shop.enter("dee", own(Attendance{id, Turnout::not_come}));
    CHECK(waiting(shop).empty());
  }
  shop.close();
  if (!on_test_server()) CHECK(verify::look_through(shop.path(), {}).value().findings.empty());
}

TEST_CASE("Who is put back on the list by hand waits once") {
  TestShop shop = with_kim_waiting();
  const RecordId id = shop.enter("dee", own(checked_out_at(that_noon)));
  shop.enter("dee", own(Waiting{"kim", "bandsaw"}));
  shop.enter("dee", own(Cancel{id, "ill"}));
  CHECK(waiting(shop) == std::vector<Instant>{evening});
}

TEST_CASE("Nobody waits twice for one machine") {
  TestShop shop = with_kim_waiting();
  refused(shop.commit("dee", own(Waiting{"kim", "bandsaw"})), "has waited for this machine since 2026-03-09");
  shop.enter("dee", own(Waiting{"lou", "bandsaw"}));
  shop.enter("dee", own(Waiting{"kim", "combi/joint"}));
  refused(shop.commit("dee", own(Waiting{"kim", "combi/plane"})), "has waited for this machine");
  shop.enter("mia", own(Join{"kim", "lou"}));
  shop.enter("dee", own(WaitingEnd{shop.store().of_kind("waiting").front()->id}));
  refused(shop.commit("dee", own(Waiting{"kim", "bandsaw"})), "has waited for this machine");
}

TEST_CASE("To be taught or to practise ends no wait for a check-out") {
  TestShop shop = with_kim_waiting();
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.enter("dee", own(checked_out_at(that_noon, Purpose::teach)));
  shop.enter("dee", own(checked_out_at(that_noon + day, Purpose::practise)));
  CHECK(waiting(shop) == long_since);
}

TEST_CASE("What is only held ends no wait; confirmed, or come to, it does, and stands") {
  TestShop shop = with_kim_waiting();
  const RecordId id = shop.enter("dee", own(held_at(that_noon, that_noon)));
  CHECK(waiting(shop) == long_since);
  SECTION("confirmed") { shop.enter("dee", own(Confirmed{id})); }
  SECTION("come to") {
    shop.set_now(that_noon - 300);
    shop.enter("dee", own(Attendance{id, Turnout::arrived}));
  }
  SECTION("come to, and signed") {
    shop.set_now(that_noon - 300);
    SignCheckout sign;
    sign.checkout = {"kim", "bandsaw", 0, Outcome::failed, "ivo"};
    sign.pin = "2222";
    sign.machine = "b1";
    sign.booking = id;
    shop.enter("ivo", sign);
  }
  CHECK(waiting(shop).empty());
  shop.set_now(that_noon + 600);
  const auto taken = shop.store().booked({that_noon, that_noon + 1});
  REQUIRE(taken.size() == 1);
  CHECK(taken.front().person == "kim");
  refused(shop.commit("dee", own(Booking{"lou", "mia", "b1", "bandsaw", that_noon, that_noon + hour})),
          "booked already");
}

TEST_CASE("What was held and given up is come to by nobody") {
  TestShop shop;
  const RecordId id = shop.enter("dee", own(held_at(that_noon, that_noon - hour)));
  shop.set_now(that_noon - 300);
  refused(shop.commit("dee", own(Attendance{id, Turnout::arrived})), "has been given up since");
}

TEST_CASE("Nobody has stayed away before the day on which it is") {
  TestShop shop;
  const RecordId id = shop.enter("dee", own(checked_out_at(that_noon)));
  refused(shop.commit("dee", own(Attendance{id, Turnout::not_come})), "It is on 2026-03-16");
  shop.set_now(that_noon - hour);
  shop.enter("dee", own(Attendance{id, Turnout::not_come}));
}

TEST_CASE("A booking entered once more under its id changes nothing on the list") {
  TestShop shop = with_kim_waiting();
  const Command booked = shop.command("dee", own(checked_out_at(that_noon)));
  REQUIRE(shop.store().commit(booked));
  const auto again = shop.store().commit(booked);
  REQUIRE(again);
  CHECK(again->again);
  CHECK(waiting(shop).empty());
  const Command off = shop.command("dee", own(Cancel{booked.id, "ill"}), shop.now());
  REQUIRE(shop.store().commit(off));
  CHECK(shop.store().commit(off)->again);
  CHECK(waiting(shop) == long_since);
  Command other = off;
  other.action = own(Cancel{booked.id, "away"});
  refused(shop.store().commit(other), "Something else has been entered");
}

TEST_CASE("Whoever comes to a time that was held until it began has it while it lasts, if nobody took it") {
  TestShop shop = with_kim_waiting();
  const RecordId id = shop.enter("dee", own(held_at(that_noon, that_noon)));
  const auto comes = [&](Instant at, Turnout how = Turnout::arrived) {
    shop.set_now(at);
    return shop.commit("dee", own(Attendance{id, how}));
  };
  SECTION("in the minute in which it begins, or late") {
    const bool late = GENERATE(false, true);
    REQUIRE((late ? comes(that_noon + hour - 60, Turnout::late) : comes(that_noon)));
    CHECK(waiting(shop).empty());
    CHECK(shop.store().booked({that_noon, that_noon + 1}).size() == 1);
    refused(shop.commit("dee", own(Booking{"lou", "mia", "b1", "bandsaw", that_noon, that_noon + hour})),
            "booked already");
  }
  SECTION("not when it is over, nor without coming") {
    shop.set_now(that_noon);
    refused(shop.commit("dee", own(Confirmed{id})), "given up since");
    refused(comes(that_noon, Turnout::not_come), "given up since");
    refused(comes(that_noon + hour), "given up since");
    CHECK(waiting(shop) == long_since);
  }
  SECTION("not where it was booked again, for its unit, its assessor or whoever comes") {
    shop.set_now(that_noon + 600);
    const Instant rest = that_noon + 1800, end = that_noon + hour;
    const Booking other = GENERATE_COPY(Booking{"lou", "mia", "b1", "bandsaw", rest, end, Purpose::teach},
                                        Booking{"lou", "ivo", "b2", "bandsaw", rest, end, Purpose::teach},
                                        Booking{"kim", "mia", "b2", "bandsaw", rest, end, Purpose::teach});
    const RecordId second = shop.enter("dee", own(other));
    refused(comes(that_noon + 900), "booked already");
    shop.enter("dee", own(Cancel{second, "not needed"}));
    CHECK(comes(that_noon + 960));
  }
  SECTION("nor where whoever assesses is at a machine") {
    shop.set_now(that_noon + 60);
    const RecordId started = shop.enter("dee", own(Started{"ivo", "s1", "sander", ""}));
    refused(comes(that_noon + 120), "is at");
    shop.enter("dee", LeaveMachine{started});
    CHECK(comes(that_noon + 180));
  }
  shop.close();
  if (!on_test_server()) CHECK(verify::look_through(shop.path(), {}).value().findings.empty());
}

TEST_CASE("What was held for less than until it begins is booked anew") {
  TestShop shop = with_kim_waiting();
  const RecordId id = shop.enter("dee", own(held_at(that_noon, that_noon - 60)));
  shop.set_now(that_noon);
  refused(shop.commit("dee", own(Attendance{id, Turnout::arrived})), "given up since");
}
