// What holds of a store on a server beside all that holds of any. Hidden where there is none: see
// tests/CMakeLists.txt.
#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include "db/backup/backup.h"
#include "db/sql/connection.h"
#include "db/verify/verify.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

Expected<Store> open(const TestShop& shop, const QString& login = {}, StoreOptions options = cheap_pins()) {
  return Store::open(login.isEmpty() ? shop.path() : shop.place().name_for(login), shop.clock(),
                     std::move(options));
}

/// A login that may connect and nothing else; the server has it once for all tests.
void let_in(const TestShop& shop, const QString& login) {
  shop.place().as_owner("CREATE ROLE " + login + " LOGIN");
  REQUIRE(shop.place().as_owner("DO $$ BEGIN EXECUTE format('GRANT CONNECT ON DATABASE %I TO " + login +
                                "', current_database()); END $$") == "");
}

const std::vector<QString> forbidden = {
    "UPDATE records SET recorded_at = 0 WHERE ord = 2",
    "UPDATE records SET leaf = leaf",
    "DELETE FROM records WHERE ord = 2",
    "DELETE FROM records WHERE ord = 99999",
    "TRUNCATE records CASCADE",
    "INSERT INTO records SELECT * FROM records WHERE ord = 2 ON CONFLICT (ord) DO UPDATE SET leaf = 'x'",
    "INSERT INTO records SELECT * FROM records WHERE ord = 2",
    // a gap in the order, a gap in the commits, a commit gone back to, a clock run back, an id that was there
    "INSERT INTO records (ord, commit_no, id, kind, recorded_at, leaf, hash) VALUES (99999, 1, 'new', 'use', "
    "9999999999, '{}', '')",
    "INSERT INTO records (ord, commit_no, id, kind, recorded_at, leaf, hash) SELECT max(ord) + 1, "
    "max(commit_no) + 2, "
    "'new', 'use', 9999999999, '{}', '' FROM records",
    "INSERT INTO records (ord, commit_no, id, kind, recorded_at, leaf, hash) SELECT max(ord) + 1, 1, 'new', "
    "'use', "
    "9999999999, '{}', '' FROM records",
    "INSERT INTO records (ord, commit_no, id, kind, recorded_at, leaf, hash) SELECT max(ord) + 1, "
    "max(commit_no), "
    "'new', 'use', 0, '{}', '' FROM records",
    "INSERT INTO records (ord, commit_no, id, kind, recorded_at, leaf, hash) SELECT max(ord) + 1, "
    "max(commit_no), "
    "min(id), 'use', 9999999999, '{}', '' FROM records",
    // a second strike-out of one record
    "INSERT INTO records (ord, commit_no, id, kind, recorded_at, refers_to, leaf, hash) SELECT max(ord) + 1, "
    "max(commit_no), 'new', 'strike_out', 9999999999, max(refers_to) FILTER (WHERE kind = 'strike_out'), "
    "'{}', '' FROM "
    "records",
    "UPDATE private_values SET value = '2001-01-01' WHERE field = 'born'",
    "UPDATE private_values SET ord = 1",
    "DELETE FROM private_values",
    "TRUNCATE private_values",
    "INSERT INTO private_values SELECT min(ord), 'note', 'aa', 'said nobody' FROM records",
    "UPDATE tree_edge SET size = size - 1",
    "UPDATE tree_edge SET one = 2",
    "DELETE FROM tree_edge",
    "INSERT INTO tree_edge VALUES (1, 1, '')",
    "UPDATE shop SET zone = 'UTC'",
    "DELETE FROM shop",
    "TRUNCATE shop",
    "INSERT INTO shop VALUES (1, 'Another', 'UTC', 0)",
};

/// What a desk's login has no right to, guards or none.
const std::vector<QString> no_right = {
    "UPDATE records SET leaf = leaf",
    "UPDATE records SET leaf = leaf WHERE false",
    "DELETE FROM records",
    "TRUNCATE records",
    "DELETE FROM private_values",
    "UPDATE private_values SET field = 'x'",
    "INSERT INTO tree_edge VALUES (2, 0, '')",
    "DELETE FROM tree_edge",
    "UPDATE shop SET zone = 'UTC'",
    "INSERT INTO shop VALUES (1, 'Another', 'UTC', 0)",
    "UPDATE witnessmark_store SET version = 99",
    "ALTER TABLE records DISABLE TRIGGER ALL",
    "DROP TRIGGER records_keep ON records",
    "DROP TABLE records",
    "CREATE TABLE mine (one INTEGER)",
    "CREATE TEMPORARY TABLE records (ord INTEGER)",
};

/// Runs the event loop until that holds; how many milliseconds it took, or -1.
qint64 waited(const std::function<bool()>& holds, int most_ms = 5000) {
  QElapsedTimer timer;
  timer.start();
  while (!holds()) {
    if (timer.elapsed() > most_ms) return -1;
    QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents | QEventLoop::AllEvents, 20);
  }
  return timer.elapsed();
}

}  // namespace

TEST_CASE("On a server nothing that is kept can be changed, deleted or replaced, by its owner either",
          "[.server]") {
  TestShop shop;
  shop.wait(10);
  shop.enter("mia", StrikeOutRecord{"past-19", "published by mistake"});
  const auto entries = shop.store().entries();
  for (const QString& sql : forbidden) {
    INFO(sql.toStdString());
    CHECK(shop.place().as_owner(sql) != "");
  }
  shop.reopen();
  CHECK(shop.store().entries() == entries);
}

TEST_CASE("A desk's login on the server may enter what a desk enters, and has no right to anything else",
          "[.server]") {
  TestShop shop;
  CHECK_FALSE(open(shop, "stranger"));
  shop.place().as_owner("CREATE ROLE stranger LOGIN");
  CHECK_FALSE(open(shop, "stranger"));
  let_in(shop, "desk1");
  {
    auto desk = open(shop, "desk1");
    CHECK(desk->login() == "desk1");
    INFO((desk ? "" : desk.error().what));
    REQUIRE(desk);
    REQUIRE(desk->commit(shop.command("dee", fact(Lesson{"kim", "guards", 1}))));
    REQUIRE(desk->commit(shop.command("mia", BlankPerson{"lou"})));
    REQUIRE(shop.store().refresh());
    CHECK(shop.store().entries() == desk->entries());
    CHECK(shop.store().people() == desk->people());
  }
  Connection raw(shop.place().name_for("desk1"), 1500);
  for (const QString& sql : no_right) {
    INFO(sql.toStdString());
    QSqlError error;
    CHECK_FALSE(raw.run(sql, error));
    CHECK(error.nativeErrorCode() ==
          "42501");  // insufficient_privilege, by PostgreSQL's table of error codes
  }
}

TEST_CASE("When something was recorded is said by the server's clock, however wrong a desk's own is",
          "[.server]") {
  TestShop shop;
  for (const std::int64_t wrong : {-1800, 0, 2 * 86'400}) {
    StoreOptions options = cheap_pins();
    options.own_clock_ms = [wrong] {
      return std::chrono::duration_cast<std::chrono::milliseconds>(
                 std::chrono::system_clock::now().time_since_epoch())
                 .count() +
             wrong * 1000;
    };
    auto store = Store::open(
        shop.path(), [&, wrong] { return shop.now() + wrong; }, options);
    REQUIRE(store);
    CHECK(store->now() == shop.now());
    const auto done = store->commit(shop.command("dee", own(Presence{"kim"})));
    REQUIRE(done);
    CHECK(done->entries.front().recorded == shop.now());
  }
}

TEST_CASE("Another desk is told of a commit within a second, and has it after a refresh", "[.server]") {
  TestShop shop;
  auto other = open(shop);
  REQUIRE(other);
  int told = 0, own_told = 0;
  REQUIRE(other->listen([&] { ++told; }));
  REQUIRE(shop.store().listen([&] { ++own_told; }));
  const RecordId id = shop.enter("dee", own(Presence{"kim"}));
  const qint64 took = waited([&] { return told > 0; });
  CHECK(took >= 0);
  CHECK(took < 1000);
  CHECK(*other->refresh());
  CHECK(other->entry(id) != nullptr);
  CHECK(own_told == 0);

  SECTION("also after its connection was cut and found again") {
    REQUIRE(shop.place().as_owner(
                "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = "
                "'witnessmark'") == "");
    REQUIRE(other->refresh());
    told = 0;
    shop.enter("dee", own(Presence{"lou"}));
    CHECK(waited([&] { return told > 0; }) >= 0);
  }
}

TEST_CASE("A desk whose connection was cut finds the server again by itself", "[.server]") {
  TestShop shop;
  const auto before = shop.store().last_commit();
  for (int i = 0; i < 3; ++i) {
    REQUIRE(shop.place().as_owner(
                "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = "
                "'witnessmark'") == "");
    shop.enter("dee", own(Presence{"kim"}));
  }
  CHECK_FALSE(shop.store().unsure());
  CHECK(shop.store().last_commit() == before + 3);
}

TEST_CASE("A desk waits its turn on the server, and says who is in the way", "[.server]") {
  TestShop shop;
  Connection raw(shop.path(), 1500);
  REQUIRE(raw.run(QString("BEGIN")));
  REQUIRE(raw.run(QString("LOCK TABLE tree_edge IN EXCLUSIVE MODE")));
  const auto done = shop.commit("dee", own(Presence{"kim"}));
  REQUIRE_FALSE(done);
  CHECK_THAT(done.error().what, Catch::Contains("another desk is entering something"));
  CHECK(shop.store().refresh());  // reading waits for nobody
  REQUIRE(raw.run(QString("ROLLBACK")));
  CHECK(shop.commit("dee", own(Presence{"kim"})));
}

TEST_CASE("Databases that are not a shop's, or a newer program's, are refused in a sentence", "[.server]") {
  TestShop shop;
  const auto again = Store::create(shop.path(), {"Another", "UTC", 0}, shop.clock());
  REQUIRE_FALSE(again);
  CHECK_THAT(again.error().what, Catch::Contains("already"));
  REQUIRE(shop.place().as_owner("UPDATE witnessmark_store SET version = 99") == "");
  CHECK_THAT(open(shop).error().what, Catch::Contains("newer version"));

  const TestPlace place;
  const auto clock = shop.clock();
  CHECK_THAT(Store::open(place.name(), clock).error().what, Catch::Contains("empty"));
  REQUIRE(place.as_owner("CREATE TABLE records (ord INTEGER)") == "");
  CHECK_THAT(Store::open(place.name(), clock).error().what, Catch::Contains("not a shop's"));
  CHECK_THAT(Store::create(place.name(), {"A", "UTC", 0}, clock).error().what, Catch::Contains("already"));
  const auto nowhere = Store::open("postgresql://a@/b?host=/nowhere", clock);
  REQUIRE_FALSE(nowhere);
  CHECK_THAT(nowhere.error().what, Catch::Contains("cannot be reached"));
}

TEST_CASE("A character with the code 0 is refused by a server, and nothing of it is entered", "[.server]") {
  TestShop shop;
  Command noted = shop.command("dee", own(Presence{"kim"}));
  noted.note = std::string("a\0b", 3);
  const auto done = shop.store().commit(noted);
  REQUIRE_FALSE(done);
  CHECK_THAT(done.error().what, Catch::Contains("code 0"));
  CHECK(shop.commit("dee", own(Presence{"kim"})));
}

TEST_CASE(
    "A shop on a server is backed up into a file that was read back, and put back into an empty database",
    "[.server]") {
  TestShop shop;
  QTemporaryDir folder;
  const std::string into = folder.path().toStdString();
  shop.enter("dee", own(Booking{"kim", "ivo", "b1", "bandsaw", evening + day, evening + day + hour}));
  const auto made = back_up(shop.path(), into, evening);
  INFO((made ? "" : made.error().what));
  REQUIRE(made);
  CHECK(made->commits == shop.store().last_commit());
  CHECK(QDir(folder.path()).entryList(QDir::Files).size() == 1);  // and no log beside it
  const auto report = verify::look_through(made->path, {});
  REQUIRE(report);
  CHECK(report->findings.empty());
  CHECK(report->head.root == shop.store().head()->root);

  shop.enter("dee", own(Presence{"kim"}));
  const auto later = back_up(shop.path(), into, evening + 600);
  REQUIRE(later);
  CHECK(later->removed == std::vector{made->path});  // two of one day
  const auto all = backups_in(shop.path(), into);
  REQUIRE(all);
  REQUIRE(all->size() == 1);
  CHECK(all->front().commits == shop.store().last_commit());
  CHECK_FALSE(back_up(shop.path(), into, evening + 600));  // there already

  const TestPlace empty;
  CHECK_THAT(plan_restore(later->path, shop.path()).error().what,
             Catch::Contains("something in this database"));
  CHECK_FALSE(restore(later->path, shop.path(), evening));
  QFile file(QString::fromStdString(later->path));
  REQUIRE(file.open(QIODevice::ReadOnly));
  const QByteArray bytes = file.readAll();
  const auto plan = plan_restore(later->path, empty.name());
  REQUIRE(plan);
  CHECK(plan->commits == shop.store().last_commit());
  REQUIRE(restore(later->path, empty.name(), evening));
  file.seek(0);
  CHECK(file.readAll() == bytes);  // the backup stays as it was
  auto back = Store::open(empty.name(), shop.clock(), cheap_pins());
  REQUIRE(back);
  CHECK(back->entries() == shop.store().entries());
  CHECK(back->head()->root == shop.store().head()->root);
  CHECK(back->commit(shop.command("dee", own(Presence{"lou"}))));
  CHECK_FALSE(back->commit(
      shop.command("dee", own(Booking{"lou", "ivo", "b2", "bandsaw", evening + day, evening + day + hour}))));
}

TEST_CASE("A backup of a server that goes away leaves nothing half done", "[.server]") {
  QTemporaryDir folder;
  const auto made = back_up("postgresql://a@/b?host=/nowhere", folder.path().toStdString(), evening);
  REQUIRE_FALSE(made);
  CHECK_THAT(made.error().what, Catch::Contains("cannot be reached"));
  CHECK(QDir(folder.path()).entryList(QDir::Files).isEmpty());
}
