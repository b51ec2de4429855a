// The assessor's signature under a check-out, and the key that it is made with.
#include <catch2/catch.hpp>

#include "db/journal/subject.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

SignCheckout checkout_of_kim(const std::string& pin) {
  SignCheckout signing;
  signing.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  signing.pin = pin;
  signing.machine = "b1";
  signing.sheet = "bandsaw";
  signing.sheet_revision = 1;
  signing.restrictions = {"no thin stock"};
  return signing;
}

Committed sign(TestShop& shop) {
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.wait(60);
  const auto done = shop.commit("ivo", checkout_of_kim("2222"));
  INFO((done ? "" : done.error().what));
  REQUIRE(done);
  return *done;
}

std::string latest_key(const Store& store, const PersonId& person) {
  std::string key;
  for (const Entry& entry : store.entries())
    if (const auto* pin = as<PinChosen>(entry.fact); pin != nullptr && pin->person == person) key = pin->key;
  return key;
}

/// The hashes of a commit's records as the file has them, by the sqlite3 program.
std::vector<ledger::Hash> hashes_of(const TestShop& shop, std::int64_t commit) {
  const QString lines = by_sqlite3(
      shop.path(),
      QString(
          "SELECT lower(hex(hash)) FROM records WHERE commit_no = %1 AND kind <> 'signature' ORDER BY ord")
          .arg(commit));
  std::vector<ledger::Hash> hashes;
  for (const QString& line : lines.split('\n')) {
    const auto hash = ledger::bytes_from_hex<32>(line.toStdString());
    REQUIRE(hash);
    hashes.push_back(*hash);
  }
  return hashes;
}

bool fits(const Signature& signature, const std::vector<ledger::Hash>& hashes) {
  const auto key = ledger::bytes_from_hex<32>(signature.key);
  const auto bytes = ledger::bytes_from_hex<64>(signature.signature);
  REQUIRE((key && bytes));
  return ledger::verify(*key, ledger::checkout_message(hashes), *bytes);
}

}  // namespace

TEST_CASE("A check-out is signed with the assessor's key, over all that the commit says", "[file]") {
  TestShop shop;
  const std::string key = latest_key(shop.store(), "ivo");
  CHECK(key.size() == 64);
  const Committed done = sign(shop);
  REQUIRE(done.entries.size() == 4);  // check-out, marks, restriction, signature
  const auto* signature = as<Signature>(done.entries.back().fact);
  REQUIRE(signature != nullptr);
  CHECK(signature->checkout == done.entries.front().id);
  CHECK(signature->person == "ivo");
  CHECK(signature->key == key);
  auto hashes = hashes_of(shop, done.number);
  REQUIRE(hashes.size() == 3);
  CHECK(fits(*signature, hashes));
  hashes[2][0] ^= 1;  // the restriction, said otherwise
  CHECK_FALSE(fits(*signature, hashes));
}

TEST_CASE("Each PIN brings a key of its own, and neither PIN nor key stands in the file") {
  TestShop shop;
  const std::string before = latest_key(shop.store(), "ivo");
  shop.enter("ivo", ChoosePin{"ivo", "8642"});
  const std::string after = latest_key(shop.store(), "ivo");
  CHECK(after != before);
  shop.wait(60);
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.wait(60);
  CHECK_FALSE(shop.commit("ivo", checkout_of_kim("2222")));
  const auto done = shop.commit("ivo", checkout_of_kim("8642"));
  REQUIRE(done);
  CHECK(as<Signature>(done->entries.back().fact)->key == after);
}

TEST_CASE("On another computer the PIN still serves, and the next signature comes with a new key", "[file]") {
  TestShop shop;
  const std::string before = latest_key(shop.store(), "ivo");
  shop.close();
  StoreOptions elsewhere = cheap_pins();
  elsewhere.secret = ledger::Secret(std::array<std::uint8_t, 32>{1, 2, 3});
  auto store = Store::open(shop.path(), shop.clock(), elsewhere);
  REQUIRE(store);
  CHECK(store->sit_down("ivo", "2222") == Role::instructor);
  REQUIRE(store->commit(shop.command("dee", fact(Lesson{"kim", "guards", 1}))));
  shop.wait(60);
  const Command signing = shop.command("ivo", checkout_of_kim("2222"));
  const auto done = store->commit(signing);
  REQUIRE(done);
  REQUIRE(done->entries.size() == 5);
  const auto* chosen = as<PinChosen>(done->entries[3].fact);
  REQUIRE(chosen != nullptr);
  CHECK(chosen->key != before);
  CHECK(chosen->kept.empty());
  CHECK(as<Signature>(done->entries[4].fact)->key == chosen->key);
  CHECK(fits(*as<Signature>(done->entries[4].fact), hashes_of(shop, done->number)));
  // The same command again is known, though the store added to it.
  const auto again = store->commit(signing);
  REQUIRE(again);
  CHECK(again->again);
  // From now on that key serves there.
  shop.wait(60);
  const auto next = store->commit(shop.command("ivo", checkout_of_kim("2222")));
  REQUIRE(next);
  CHECK(next->entries.size() == 4);
  CHECK(as<Signature>(next->entries.back().fact)->key == chosen->key);
}
