// Free text, and one version of somebody's details, erased by themselves: gone from the file, while every
// leaf stays.
#include <QFile>
#include <catch2/catch.hpp>

#include "db/journal/subject.h"
#include "db/verify/verify.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

bool file_has(const TestShop& shop, const std::string& text) {
  for (const char* end : {"", "-wal"}) {
    QFile file(QString::fromStdString(shop.path() + end));
    if (file.open(QIODevice::ReadOnly) && file.readAll().contains(QByteArray::fromStdString(text)))
      return true;
  }
  return false;
}

QStringList hashes(const TestShop& shop) {
  return by_sqlite3(shop.path(), "SELECT hex(hash) FROM records ORDER BY ord").split('\n');
}

/// What the verifier that knows nothing of the store finds; none is right.
std::size_t findings(const TestShop& shop) {
  return verify::look_through(shop.path(), {}).value().findings.kept().size();
}

/// What kim was called, as known then.
std::string given_known(TestShop& shop, Instant known) {
  for (const Person& person : shop.store().people_known(known))
    if (person.id == "kim") return person.given;
  return {};
}

template <class F>
const F& fact_at(TestShop& shop, const RecordId& id) {
  for (const Entry& entry : shop.store().entries())
    if (entry.id == id) return *db::as<F>(entry.fact);
  throw std::out_of_range(id);
}

}  // namespace

TEST_CASE("A reason is erased by itself, and its record stays", "[file]") {
  TestShop shop;
  const RecordId struck = shop.enter("mia", own(Presence{"kim"}));
  const RecordId strike = shop.enter("mia", StrikeOutRecord{struck, "she was at the doctor's"});
  CHECK(file_has(shop, "she was at the doctor's"));
  const auto before = hashes(shop);
  shop.enter("mia", BlankRecord{strike});
  CHECK(fact_at<StrikeOut>(shop, strike) == StrikeOut{struck, ""});
  shop.reopen();
  CHECK(fact_at<StrikeOut>(shop, strike) == StrikeOut{struck, ""});
  CHECK_FALSE(file_has(shop, "she was at the doctor's"));
  auto after = hashes(shop);
  REQUIRE(after.size() == before.size() + 1);
  after.removeLast();
  CHECK(after == before);
  CHECK(findings(shop) == 0);
  const auto again = shop.commit("mia", BlankRecord{strike});
  REQUIRE_FALSE(again);
  CHECK(again.error().what == "There is no text in this record that could be erased.");
}

TEST_CASE("Whoever loses a name is not called by it again, not even as known then", "[file]") {
  TestShop shop;
  const Person kim = *shop.store().person("kim");
  Person wrongly = kim;
  wrongly.given = "Quillon";
  const RecordId wrong = shop.enter("mia", CorrectPerson{wrongly});
  const Instant then = shop.now();
  shop.wait(day);
  shop.enter("mia", CorrectPerson{kim});
  CHECK(given_known(shop, then) == "Quillon");
  shop.enter("mia", BlankRecord{wrong});
  CHECK(given_known(shop, then) == kim.given);
  CHECK_FALSE(file_has(shop, "Quillon"));
  shop.reopen();
  CHECK(given_known(shop, then) == kim.given);
  CHECK(given_known(shop, evening) == kim.given);
  CHECK(findings(shop) == 0);
}

TEST_CASE("Details that count now, a birth date and a PIN are not erased by themselves") {
  TestShop shop;
  for (const char* record : {"past-1", "past-1.2", "past-14"}) {
    INFO(record);
    CHECK_FALSE(shop.commit("mia", BlankRecord{record}));
  }
  CHECK_FALSE(shop.commit("mia", BlankRecord{"nothing"}));
}

TEST_CASE("With a person go the reasons of what ends or strikes out a record of theirs, and nobody else's",
          "[file]") {
  TestShop shop;
  const auto booked = [&](const PersonId& person, const MachineId& machine, int from) {
    return shop.enter("dee", own(Booking{person, "ivo", machine, "bandsaw", evening + from * hour,
                                         evening + (from + 1) * hour}));
  };
  const RecordId theirs = shop.enter("mia", own(Cancel{booked("lou", "b1", 1), "Lou has the flu"}));
  const RecordId chained = shop.enter("mia", StrikeOutRecord{theirs, "Lou is well again"});
  const RecordId others = shop.enter("mia", own(Cancel{booked("kim", "b2", 3), "Kim is away"}));
  shop.enter("mia", BlankPerson{"lou"});
  shop.reopen();
  CHECK(fact_at<Cancel>(shop, theirs).reason.empty());
  CHECK(fact_at<StrikeOut>(shop, chained).reason.empty());
  CHECK(fact_at<Cancel>(shop, others).reason == "Kim is away");
  CHECK_FALSE(file_has(shop, "Lou has the flu"));
  CHECK(findings(shop) == 0);
}

TEST_CASE("A command whose text was erased since is still known as the same one") {
  TestShop shop;
  const RecordId struck = shop.enter("mia", own(Presence{"kim"}));
  const Command strike = shop.command("mia", StrikeOutRecord{struck, "it was Lou"});
  REQUIRE(shop.store().commit(strike));
  shop.enter("mia", BlankRecord{strike.id});
  const auto again = shop.store().commit(strike);
  REQUIRE(again);
  CHECK(again->again);
  Command other = strike;
  other.action = StrikeOutRecord{"past-1", "it was Lou"};
  CHECK_FALSE(shop.store().commit(other));
}
