// The head of a store's tree, and the file of heads that is kept outside it.
#include <QFile>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include "core/ledger/tree.h"
#include "db/heads.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

/// The tree over the leaves as the sqlite3 program gives them, from the definition and not from the edge.
ledger::Head by_definition(const TestShop& shop) {
  std::vector<ledger::Hash> leaves;
  const auto add = [&](const QString& hex) {
    leaves.push_back(ledger::leaf_hash(QByteArray::fromHex(hex.toLatin1()).toStdString()));
  };
  add(by_sqlite3(shop.path(),
                 "SELECT hex('{\"demo_clock\":' || demo_clock || ',\"kind\":\"shop\",\"name\":\"' || name || "
                 "'\",\"zone\":\"' || zone || '\"}') FROM shop"));
  for (const QString& line :
       by_sqlite3(shop.path(), "SELECT hex(leaf) FROM records ORDER BY ord").split('\n'))
    add(line);
  return {leaves.size(), ledger::root_of(leaves), {}};
}

}  // namespace

TEST_CASE("The head follows every commit, and is what the leaves alone give", "[file]") {
  TestShop shop;
  std::vector<std::pair<Instant, ledger::Head>> then;
  for (int i = 0; i < 20; ++i) {
    const auto head = shop.store().head();
    REQUIRE(head);
    const ledger::Head expected = by_definition(shop);
    CHECK(head->size == expected.size);
    CHECK(head->root == expected.root);
    then.emplace_back(shop.now(), *head);
    shop.wait(60);
    if (i % 3 == 2)
      CHECK_FALSE(shop.commit("dee", fact(Checkout{"kim", "bandsaw", 0, Outcome::passed, "ivo"})));
    else
      shop.enter("dee", fact(Document{"kim", "paper " + std::to_string(i), std::nullopt}));
  }
  // As known at any moment of before, it is the head of that moment.
  for (const auto& [known, head] : then) CHECK(shop.store().head(known) == head);
  CHECK(head_of(shop.path()) == shop.store().head());
}

TEST_CASE("Heads are kept line by line, each signed, none twice") {
  TestShop shop;
  QTemporaryDir folder;
  const std::string where = folder.path().toStdString();
  const auto key = ledger::SigningKey::random();
  CHECK(*last_head(where) == std::nullopt);
  const auto first = shop.store().head();
  REQUIRE(keep_head(where, *first, key));
  REQUIRE(keep_head(where, *first, key));
  shop.wait(60);
  shop.enter("dee", fact(Document{"kim", "induction", std::nullopt}));
  const auto second = shop.store().head();
  REQUIRE(keep_head(where, *second, key));
  QFile file(QString::fromStdString(heads_file(where)));
  REQUIRE(file.open(QIODevice::ReadOnly));
  const auto lines = file.readAll().trimmed().split('\n');
  REQUIRE(lines.size() == 2);
  CHECK(ledger::read_line(lines[0].toStdString())->head == *first);
  const auto last = last_head(where);
  REQUIRE((last && *last));
  CHECK((*last)->head == *second);
  CHECK((*last)->key == key.public_key());
  file.close();
  REQUIRE(file.open(QIODevice::Append));
  file.write("scribble\n");
  file.close();
  CHECK_FALSE(last_head(where));
  CHECK_FALSE(keep_head(where, *first, key));
}
