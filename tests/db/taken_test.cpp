// The store itself books nobody and no unit twice, whatever program asks: held against what the program says,
// and tried by a second program that asks nobody.
#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <set>

#include "core/time/text.h"
#include "db/journal/subject.h"
#include "db/sql/connection.h"
#include "db/verify/verify.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

constexpr Instant noon = evening + 2 * day;

Booking booked(const PersonId& person, const PersonId& assessor, const MachineId& machine, Instant from,
               Instant to = {}) {
  return {person, assessor, machine, "bandsaw", from, to == Instant{} ? from + hour : to};
}

QString quoted(const std::string& said) { return "'" + text(said).replace("'", "''") + "'"; }

/// A record as a program would put it there that minds nothing but the guards.
QString put_in(const TestShop& shop, const std::string& id, const std::string& kind,
               const std::string& refers_to, const std::string& more, const std::string& how = "INSERT") {
  const std::string recorded = to_text(shop.now());
  const std::string leaf = "{\"body\":{\"at\":\"" + recorded + "\",\"id\":\"" + id + "\",\"kind\":\"" + kind +
                           "\",\"recorded\":\"" + recorded + "\"" + more + "},\"commit\":1,\"order\":1}";
  return text(how) +
         " INTO records (ord, commit_no, id, kind, recorded_at, person, refers_to, leaf, hash) "
         "SELECT max(ord) + 1, max(commit_no), " +
         quoted(id) + ", " + quoted(kind) + ", " + QString::number(shop.now().seconds) + ", NULL, " +
         (refers_to.empty() ? "NULL" : quoted(refers_to)) + ", " + quoted(leaf) + ", '' FROM records";
}

std::string said_of(const Booking& b) {
  const auto pair = [](const char* key, const std::string& value) {
    return std::string(",\"") + key + "\":\"" + value + "\"";
  };
  return pair("person", b.person) + pair("assessor", b.assessor) + pair("machine", b.machine) +
         pair("from", to_text(b.from)) + pair("to", to_text(b.to)) +
         (b.second.empty() ? "" : pair("second_assessor", b.second)) +
         (b.held_through ? pair("held_through", to_text(*b.held_through)) : "") +
         (b.instead_of.empty() ? "" : pair("instead_of", b.instead_of));
}

QString put_in(const TestShop& shop, const std::string& id, const Booking& booking,
               const std::string& how = "INSERT") {
  return put_in(shop, id, "booking", booking.instead_of, said_of(booking), how);
}

/// Whether the store takes all of that, one after the other; nothing of it stays.
bool takes(const TestShop& shop, const std::vector<QString>& statements) {
  Connection raw(shop.path(), 1500);
  REQUIRE(raw.run(QString("BEGIN")));
  bool all = true;
  for (const QString& each : statements) {
    const auto done = raw.run(each);
    UNSCOPED_INFO((done ? "taken" : done.error().what));
    all = all && done;
    if (!all) break;
  }
  REQUIRE(raw.run(QString("ROLLBACK")));
  return all;
}

using Row = std::tuple<std::string, std::int64_t, std::int64_t>;

/// A rulebook by which two assessors witness a check-out on the bandsaw.
void two_assess(TestShop& shop) {
  Rulebook rulebook = small_rulebook(shop.store().rulebooks().back().version + 1, shop.now() + 1);
  rulebook.tiers[1].two_assessors = true;
  shop.enter("mia", PublishRulebook{rulebook});
  shop.wait(2);
}

/// What takes time from now on, as the store's own table has it.
std::multiset<Row> rows_of(const TestShop& shop) {
  Connection raw(shop.path(), 1500);
  std::multiset<Row> rows;
  const auto now = QString::number(shop.now().seconds);
  REQUIRE(raw.each("SELECT what, from_at, until_at FROM taken WHERE until_at > " + now +
                       " AND (held_through IS NULL OR held_through > " + now + ")",
                   [&](const QSqlQuery& row) {
                     rows.insert({text(row.value(0)), row.value(1).toLongLong(), row.value(2).toLongLong()});
                   }));
  return rows;
}

/// The same as the program works it out.
std::multiset<Row> should_of(TestShop& shop) {
  std::multiset<Row> rows;
  for (const Booked& each : shop.store().booked({shop.now(), shop.now() + 100 * day}))
    for (const std::string& what :
         {"person " + each.person, "person " + each.assessor,
          each.second.empty() ? "" : "person " + each.second, "machine " + each.machine})
      if (!what.empty()) rows.insert({what, each.when.from.seconds, each.when.to.seconds});
  return rows;
}

}  // namespace

TEST_CASE("A second program cannot book a member, an assessor or a unit twice") {
  TestShop shop;
  shop.enter("dee", own(booked("kim", "ivo", "b1", noon)));
  const std::vector<Booking> refused = {
      booked("lou", "mia", "b1", noon),                          // the unit
      booked("lou", "ivo", "b2", noon),                          // the assessor
      booked("kim", "mia", "b2", noon),                          // the member
      booked("ivo", "mia", "b2", noon),                          // the assessor as a member
      booked("lou", "kim", "b2", noon),                          // the member as an assessor
      booked("lou", "mia", "b1", noon - hour, noon + 1),         // by its first second
      booked("lou", "mia", "b1", noon + hour - 1),               // by its last
      booked("lou", "mia", "b1", noon + 600, noon + 1200),       // within it
      booked("lou", "mia", "b1", noon - hour, noon + 2 * hour),  // around it
      booked("lou", "lou", "b2", noon),                          // with themself
      booked("lou", "mia", "b2", noon, noon - 1),                // and what is no time
      {"lou", "mia", "", "bandsaw", noon + day, noon + day - 1},
  };
  for (const Booking& each : refused)
    for (const char* how : {"INSERT", "INSERT OR REPLACE", "INSERT OR IGNORE"}) {
      if (on_test_server() && how != std::string("INSERT")) continue;
      INFO(each.person << " " << each.assessor << " " << each.machine << " " << to_text(each.from) << " "
                       << how);
      CHECK_FALSE(takes(shop, {put_in(shop, "raw", each, how)}));
    }
  const std::vector<Booking> taken = {
      booked("kim", "ivo", "b1", noon - hour),
      booked("kim", "ivo", "b1", noon + hour),
      booked("lou", "mia", "b2", noon),
  };
  for (const Booking& each : taken) CHECK(takes(shop, {put_in(shop, "raw", each)}));
  // Two of its own are two too many.
  CHECK_FALSE(takes(shop, {put_in(shop, "raw", taken[2]), put_in(shop, "more", taken[2])}));
}

TEST_CASE("A second program cannot book a second assessor twice, nor anybody whom they are booked with") {
  TestShop shop;
  two_assess(shop);
  Booking first = booked("kim", "ivo", "b1", noon);
  first.second = "mia";
  shop.enter("dee", own(first));
  CHECK(rows_of(shop).size() == 4);
  const auto with = [](Booking booking, const PersonId& second) {
    booking.second = second;
    return booking;
  };
  const std::vector<Booking> refused = {
      booked("lou", "mia", "b2", noon),               // the second as the assessor
      booked("mia", "dee", "b2", noon),               // as a member
      with(booked("lou", "dee", "b2", noon), "mia"),  // as the second again
      with(booked("lou", "dee", "b2", noon), "ivo"),  // the assessor as the second
      with(booked("lou", "dee", "b2", noon), "kim"),  // the member as the second
      with(booked("lou", "dee", "b2", noon), "dee"),  // with themself
  };
  for (const Booking& each : refused) {
    INFO(each.person << " " << each.assessor << " " << each.second);
    CHECK_FALSE(takes(shop, {put_in(shop, "raw", each)}));
  }
  CHECK(takes(shop, {put_in(shop, "raw", booked("lou", "dee", "b2", noon))}));
  CHECK(takes(shop, {put_in(shop, "raw", with(booked("lou", "dee", "b2", noon + hour), "mia"))}));
}

TEST_CASE("A second program cannot hide a booking from the store by columns that say another thing") {
  TestShop shop;
  const RecordId first = shop.enter("dee", own(booked("kim", "ivo", "b1", noon)));
  const RecordId second = shop.enter("dee", own(booked("lou", "mia", "b2", noon)));
  const Booking twice = booked("lou", "mia", "b1", noon + day);
  QString as_use = put_in(shop, "raw", twice);
  CHECK(takes(shop, {as_use}));
  CHECK_FALSE(takes(shop, {as_use.replace("'booking'", "'use'")}));
  CHECK_FALSE(takes(shop, {put_in(shop, "raw", twice).replace(", 'raw'", ", 'war'")}));
  // What ends another booking than it says.
  const std::string ends = ",\"booking\":\"" + first + "\",\"reason\":\"ill\"";
  CHECK(takes(shop, {put_in(shop, "raw", "cancel", first, ends),
                     put_in(shop, "more", booked("dee", "ivo", "b1", noon + 1, noon + 2))}));
  CHECK_FALSE(takes(shop, {put_in(shop, "raw", "cancel", second, ends)}));
  CHECK_FALSE(takes(shop, {put_in(shop, "raw", "strike_out", second, ",\"record\":\"" + first + "\"")}));
  Booking moved = booked("kim", "ivo", "b1", noon + day);
  moved.instead_of = first;
  CHECK(takes(shop, {put_in(shop, "raw", moved)}));
  CHECK_FALSE(takes(shop, {put_in(shop, "raw", "booking", second, said_of(moved))}));
  // A time of entry by which all of it would be over.
  CHECK_FALSE(takes(shop, {put_in(shop, "raw", "cancel", first, ends)
                               .replace(QString::number(shop.now().seconds), "9999999999")}));
}

TEST_CASE("What is taken is written by bookings alone, and stays until they end") {
  TestShop shop;
  Booking held = booked("kim", "ivo", "b1", noon);
  held.held_through = shop.now() + hour;
  shop.enter("dee", own(held));
  shop.enter("dee", own(booked("lou", "mia", "b2", noon)));
  std::vector<QString> forbidden = {
      "DELETE FROM taken",
      "DELETE FROM taken WHERE held_through IS NOT NULL",
      "UPDATE taken SET until_at = from_at + 1",
      "UPDATE taken SET held_through = 1",
      "UPDATE taken SET what = 'machine s1' WHERE what = 'machine b1'",
      "INSERT INTO taken SELECT 1, 'machine b1', 0, 99999999999, NULL FROM shop",
      "INSERT INTO taken SELECT min(ord), 'machine s1', min(from_at), max(until_at), NULL FROM taken",
  };
  if (on_test_server())
    forbidden.push_back("TRUNCATE taken");
  else
    forbidden.push_back("INSERT OR REPLACE INTO taken SELECT ord, what, from_at, until_at, 1 FROM taken");
  const auto before = rows_of(shop);
  CHECK(before.size() == 6);
  for (const QString& sql : forbidden) {
    INFO(sql.toStdString());
    CHECK_FALSE(takes(shop, {sql}));
    if (on_test_server()) CHECK(shop.place().as_owner(sql) != "");
  }
  CHECK(rows_of(shop) == before);
}

TEST_CASE(
    "A time is free again for a second program when its booking is cancelled, struck out, moved, given up or "
    "stayed away from") {
  TestShop shop;
  Booking first = booked("kim", "ivo", "b1", noon);
  const bool is_held = GENERATE(false, true);
  if (is_held) first.held_through = noon - hour;
  const RecordId id = shop.enter("dee", own(first));
  const auto again = [&] { return takes(shop, {put_in(shop, "raw", booked("lou", "mia", "b1", noon))}); };
  const auto is_back = [&](const RecordId& what) {
    CHECK(again());
    CHECK(rows_of(shop) == should_of(shop));
    shop.enter("mia", StrikeOutRecord{what, "a mistake"});
    CHECK_FALSE(again());
  };
  REQUIRE_FALSE(again());
  SECTION("cancelled") { is_back(shop.enter("dee", own(Cancel{id, "ill"}))); }
  SECTION("moved") {
    Booking moved = booked("kim", "ivo", "b1", noon + day);
    moved.instead_of = id;
    is_back(shop.enter("dee", own(moved)));
  }
  SECTION("stayed away from") {
    shop.set_now(noon - 2 * hour);
    is_back(shop.enter("dee", own(Attendance{id, Turnout::not_come})));
  }
  SECTION("struck out") {
    shop.enter("mia", StrikeOutRecord{id, "a mistake"});
    CHECK(again());
  }
  SECTION("given up, where it was only held") {
    shop.set_now(noon - hour);
    CHECK(again() == is_held);
  }
  if (is_held) {
    SECTION("confirmed, until that is struck out") {
      const RecordId certain = shop.enter("dee", own(Confirmed{id}));
      shop.set_now(noon - 600);
      CHECK_FALSE(again());
      CHECK(rows_of(shop) == should_of(shop));
      shop.enter("mia", StrikeOutRecord{certain, "not confirmed"});
      CHECK(again());
    }
  }
  CHECK(rows_of(shop) == should_of(shop));
}

TEST_CASE("Whoever stayed away comes after all only where their time is still theirs") {
  TestShop shop;
  const RecordId id = shop.enter("dee", own(booked("kim", "ivo", "b1", noon)));
  shop.set_now(noon - hour);
  shop.enter("dee", own(Attendance{id, Turnout::not_come}));
  shop.enter("dee", own(Attendance{id, Turnout::late}));
  shop.enter("dee", own(Attendance{id, Turnout::not_come}));
  const RecordId other = shop.enter("dee", own(booked("lou", "mia", "b1", noon)));
  const auto done = shop.commit("dee", own(Attendance{id, Turnout::arrived}));
  REQUIRE_FALSE(done);
  CHECK_THAT(done.error().what, Catch::Contains("booked already"));
  shop.enter("dee", own(Cancel{other, "ill"}));
  shop.enter("dee", own(Attendance{id, Turnout::arrived}));
}

TEST_CASE("Whatever becomes of bookings, the store's table of taken times says what the program says") {
  TestShop prepared;
  two_assess(prepared);
  prepared.close();
  const std::vector<PersonId> members = {"kim", "lou", "dee"}, assessors = {"mia", "ivo"};
  const std::vector<MachineId> machines = {"b1", "b2"};
  const bool holds = rc::check("random diaries", [&] {
    TestShop shop = prepared.copy();
    const int count = *rc::gen::inRange(1, 50);
    for (int i = 0; i < count; ++i) {
      shop.wait(*rc::gen::inRange(0, 2400));
      std::vector<RecordId> bookings;
      for (const Entry* entry : shop.store().of_kind("booking")) bookings.push_back(entry->id);
      const RecordId any = bookings.empty() ? "none" : *rc::gen::elementOf(bookings);
      const auto action = [&]() -> Action {
        switch (*rc::gen::weightedElement<int>({{6, 0}, {1, 1}, {1, 2}, {2, 3}, {3, 4}})) {
          case 0: {
            const Instant from = shop.now() + 1800 * *rc::gen::inRange(0, 12);
            Booking one = booked(*rc::gen::elementOf(members), *rc::gen::elementOf(assessors),
                                 *rc::gen::elementOf(machines), from);
            if (*rc::gen::inRange(0, 3) > 0)
              one.second = one.assessor == "mia" ? "ivo" : "mia";
            else
              one.purpose = Purpose::practise;
            if (*rc::gen::inRange(0, 3) == 0 && from > shop.now())
              one.held_through = shop.now() + (from.seconds - shop.now().seconds + 1) / 2;
            if (*rc::gen::inRange(0, 4) == 0 && any != "none") {
              one.instead_of = any;
              one.person = as<Booking>(shop.store().entry(any)->fact)->person;
            }
            return own(one);
          }
          case 1:
            return own(Cancel{any, "ill"});
          case 2:
            return own(Confirmed{any});
          case 3:
            return own(
                Attendance{any, *rc::gen::element(Turnout::arrived, Turnout::late, Turnout::not_come)});
          default: {
            const auto& all = shop.store().entries();
            const std::size_t behind = *rc::gen::inRange<std::size_t>(1, 15);
            return StrikeOutRecord{all[all.size() - std::min(all.size(), behind)].id, "a mistake"};
          }
        }
      }();
      const auto done = shop.commit("mia", action);
      // Refused by the program's own checks: the store never has to.
      if (!done) RC_ASSERT(done.error().where != shop.path());
      RC_ASSERT(rows_of(shop) == should_of(shop));
    }
    shop.close();
    if (!on_test_server()) RC_ASSERT(verify::look_through(shop.path(), {}).value().findings.empty());
  });
  CHECK(holds);
}
