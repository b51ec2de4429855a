// Every file that is refused, in a sentence each.
#include <QDir>
#include <QFile>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <catch2/catch.hpp>

#include "db/sql/place.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

Expected<Store> open(const TestShop& shop, StoreOptions options = cheap_pins()) {
  return Store::open(shop.path(), shop.clock(), std::move(options));
}

void write(const std::string& path, qint64 from, const QByteArray& bytes) {
  QFile file(QString::fromStdString(path));
  REQUIRE(file.open(QIODevice::ReadWrite));
  REQUIRE(file.seek(from));
  file.write(bytes);
}

/// Holds a connection of another program.
class Other {
 public:
  explicit Other(const std::string& path) {
    raw_ = QSqlDatabase::addDatabase("QSQLITE", "other");
    raw_.setDatabaseName(QString::fromStdString(path));
    REQUIRE(raw_.open());
  }
  ~Other() {
    raw_.close();
    raw_ = {};
    QSqlDatabase::removeDatabase("other");
  }
  void run(const QString& sql) { REQUIRE(QSqlQuery(raw_).exec(sql)); }

 private:
  QSqlDatabase raw_;
};

void refused(const Expected<Store>& store, const std::string& what) {
  REQUIRE_FALSE(store);
  CHECK_THAT(store.error().what, Catch::Contains(what));
  CHECK_FALSE(store.error().remedy.empty());
  CHECK_FALSE(store.error().where.empty());
}

}  // namespace

TEST_CASE("A missing file, a folder and a missing folder are refused", "[file]") {
  TestShop shop;
  const std::string folder = QFileInfo(QString::fromStdString(shop.path())).path().toStdString();
  refused(Store::open(folder + "/none.wm", shop.clock()), "does not exist");
  refused(Store::open(folder, shop.clock()), "not a file");
  refused(Store::create(folder + "/none/shop.wm", {"A", "UTC", 0}, shop.clock()), "folder does not exist");
}

TEST_CASE("A file that exists is not made again, and stays as it is", "[file]") {
  TestShop shop;
  const auto entries = shop.store().entries();
  refused(Store::create(shop.path(), {"Another", "UTC", 0}, shop.clock()), "already");
  shop.reopen();
  CHECK(shop.store().entries() == entries);
}

TEST_CASE("A file with nothing in it, as a power cut may leave it, is taken for a new shop", "[file]") {
  TestShop shop;
  shop.close();
  QFile::resize(QString::fromStdString(shop.path()), 0);
  SECTION("no byte") {}
  SECTION("an empty database") { Other(shop.path()).run("PRAGMA journal_mode = WAL"); }
  CHECK(Store::create(shop.path(), {"Another", "UTC", 0}, shop.clock()));
  refused(Store::create(shop.path(), {"A third", "UTC", 0}, shop.clock()), "already");
  CHECK(open(shop)->details().name == "Another");
}

TEST_CASE("Another program's file is not made into a shop", "[file]") {
  TestShop shop;
  shop.close();
  QFile::remove(QString::fromStdString(shop.path()));
  SECTION("text") { write(shop.path(), 0, "Name,Number\n"); }
  SECTION("a database with a table") { Other(shop.path()).run("CREATE TABLE records (ord INTEGER)"); }
  SECTION("a database with a number of its own") { Other(shop.path()).run("PRAGMA user_version = 7"); }
  const qint64 size = QFile(QString::fromStdString(shop.path())).size();
  refused(Store::create(shop.path(), {"Another", "UTC", 0}, shop.clock()), "already");
  CHECK(QFile(QString::fromStdString(shop.path())).size() == size);
}

TEST_CASE("A shop needs a name and a zone that exists", "[file]") {
  TestShop shop;
  refused(Store::create(shop.path() + "2", {"", "UTC", 0}, shop.clock()), "no name");
  refused(Store::create(shop.path() + "2", {"A", "Chicago", 0}, shop.clock()), "no time zone");
  CHECK_FALSE(QFile::exists(QString::fromStdString(shop.path() + "2")));
}

TEST_CASE("A file that is not ours is refused and left as it is", "[file]") {
  TestShop shop;
  shop.close();
  SECTION("text") {
    QFile::remove(QString::fromStdString(shop.path()));
    write(shop.path(), 0, QByteArray("Name,Number\n").repeated(200));
    refused(open(shop), "not a shop's file");
  }
  SECTION("empty") {
    QFile::resize(QString::fromStdString(shop.path()), 0);
    refused(open(shop), "is empty");
    CHECK(QFile(QString::fromStdString(shop.path())).size() == 0);
  }
  SECTION("another program's database") {
    QFile::remove(QString::fromStdString(shop.path()));
    { Other(shop.path()).run("CREATE TABLE records (ord INTEGER)"); }
    refused(open(shop), "not a shop's file");
  }
}

TEST_CASE("A file from a newer version is refused", "[file]") {
  TestShop shop;
  shop.close();
  { Other(shop.path()).run("PRAGMA user_version = 99"); }
  refused(open(shop), "newer version");
}

TEST_CASE("A file of a version that there never was is refused", "[file]") {
  TestShop shop;
  shop.close();
  const char* version = GENERATE("0", "-1", "-2147483648");
  { Other(shop.path()).run(QString("PRAGMA user_version = ") + version); }
  refused(open(shop), "damaged");
}

TEST_CASE("A folder on another computer is refused", "[file]") {
  TestShop shop;
  StoreOptions options = cheap_pins();
  std::string asked;
  options.on_network = [&](const std::string& folder) {
    asked = folder;
    return true;
  };
  refused(open(shop, options), "another computer");
  CHECK(asked == QFileInfo(QString::fromStdString(shop.path())).absolutePath().toStdString());
  refused(Store::create(shop.path() + "2", {"A", "UTC", 0}, shop.clock(), options), "another computer");
  for (const char* type : {"nfs", "nfs4", "cifs", "smb3", "fuse.sshfs", "9p"}) CHECK(is_network_type(type));
  for (const char* type : {"ext4", "btrfs", "xfs", "tmpfs", "overlay", "apfs", "ntfs"})
    CHECK_FALSE(is_network_type(type));
}

TEST_CASE("A file that another program holds is refused, at opening and at entering", "[file]") {
  TestShop shop;
  Other other(shop.path());
  other.run("BEGIN IMMEDIATE");
  refused(open(shop), "locked by another program");
  const auto done = shop.commit("dee", own(Presence{"kim"}));
  REQUIRE_FALSE(done);
  CHECK_THAT(done.error().what, Catch::Contains("locked by another program"));
  other.run("ROLLBACK");
  CHECK(open(shop));
  CHECK(shop.commit("dee", own(Presence{"kim"})));
}

TEST_CASE("A damaged file is refused", "[file]") {
  TestShop shop;
  shop.close();
  const qint64 size = QFile(QString::fromStdString(shop.path())).size();
  for (qint64 at = 4096; at + 600 < size; at += 4096) write(shop.path(), at + 100, QByteArray(400, '\x5a'));
  refused(open(shop), "damaged");
}

TEST_CASE("A record that cannot be read is a damaged file, named by its id", "[file]") {
  TestShop shop;
  shop.close();
  {
    Other other(shop.path());
    other.run("DROP TRIGGER records_update");
    other.run("UPDATE records SET leaf = '{\"at\":1}' WHERE id = 'past-19'");
  }
  refused(open(shop), "'past-19' cannot be read");
}

TEST_CASE("What another program of ours enters is seen after a refresh, and before the next entry") {
  TestShop shop;
  auto second = open(shop);
  REQUIRE(second);
  CHECK(*second->refresh() == false);
  const RecordId id = shop.enter("dee", own(Presence{"kim"}));
  CHECK(second->entries().size() + 1 == shop.store().entries().size());
  CHECK(*second->refresh() == true);
  CHECK(second->entries() == shop.store().entries());
  shop.enter("dee", own(Presence{"lou"}));
  Command strike = shop.command("dee", StrikeOutRecord{id, "it was lou"});
  REQUIRE(second->commit(strike));
  REQUIRE(shop.store().refresh());
  CHECK(second->entries() == shop.store().entries());
  REQUIRE(second->commit(shop.command("mia", BlankPerson{"kim"})));
  REQUIRE(shop.store().refresh());
  CHECK(second->entries() == shop.store().entries());
  CHECK(second->people() == shop.store().people());
}
