// Backups: equal to the store, thinned by rule, put back with nothing lost unsaid.
#include "db/backup/backup.h"
#include "db/backup/same_content.h"

#include <rapidcheck.h>

#include <QDir>
#include <QFile>
#include <catch2/catch.hpp>

#include "core/time/text.h"
#include "db/backup/keep.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

struct Folder {
  QTemporaryDir dir;
  std::string path = dir.path().toStdString();
  QStringList names() const { return QDir(dir.path()).entryList(QDir::Files, QDir::Name); }
};

Store opened(const std::string& path) {
  auto store = Store::open(
      path, [] { return evening; }, cheap_pins());
  if (!store) FAIL(store.error().what);
  return std::move(*store);
}

void write(const std::string& path, const QByteArray& bytes) {
  QFile file(QString::fromStdString(path));
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(bytes);
}

/// How many different days, weeks or months among `times` are later than that of `t`.
template <class Of>
std::size_t later_ones(const std::vector<Instant>& times, Instant t, Of of) {
  std::set<decltype(of(t))> later;
  for (const Instant other : times)
    if (of(other) > of(t)) later.insert(of(other));
  return later.size();
}

template <class Of>
bool latest_of_its_own(const std::vector<Instant>& times, Instant t, Of of) {
  return std::none_of(times.begin(), times.end(),
                      [&](Instant other) { return other > t && of(other) == of(t); });
}

}  // namespace

TEST_CASE("A copy in which one cell, one number or one row is another is found to differ") {
  TestShop shop;
  const TestShop copy = [&] {
    shop.close();
    TestShop made = shop.copy();
    made.close();
    return made;
  }();
  const auto same = [&] {
    const auto a = verify::File::open(shop.path()), b = verify::File::open(copy.path());
    REQUIRE((a && b));
    const bool found = same_content(*a, copy.path());
    CHECK(found == same_content(*b, shop.path()));
    return found;
  };
  CHECK(same());
  const QString change = GENERATE(
      Catch::Generators::as<QString>(), "UPDATE private_values SET salt = NULL, value = NULL WHERE ord = 1",
      "PRAGMA user_version = 99", "PRAGMA application_id = 7", "CREATE TABLE more (a)",
      "DROP TRIGGER shop_update; UPDATE shop SET demo_clock = 1",
      "DROP TRIGGER tree_edge_delete; DELETE FROM tree_edge");
  INFO(change.toStdString());
  CHECK(by_sqlite3(copy.path(), change).toStdString().empty());
  if (change.contains("application_id")) {
    CHECK_FALSE(verify::File::open(copy.path()));
  } else {
    CHECK_FALSE(same());
  }
}

TEST_CASE("A backup of a shop in use holds all of it, and leaves it as it is") {
  TestShop shop;
  Folder folder;
  shop.enter("dee", fact(Document{"kim", "induction", {}}));
  const auto entries = shop.store().entries();
  const auto made = back_up(shop.path(), folder.path, evening);
  REQUIRE(made);
  CHECK(folder.names() == QStringList{"shop-20260314-230000Z.backup"});
  CHECK(made->path == folder.path + "/shop-20260314-230000Z.backup");
  CHECK(made->commits == shop.store().last_commit());
  CHECK(shop.store().entries() == entries);
  shop.enter("dee", own(Presence{"kim"}));
  const Store copy = opened(made->path);
  CHECK(copy.entries() == entries);
  CHECK(copy.people() == shop.store().people());
  CHECK(copy.rulebooks() == shop.store().rulebooks());
}

TEST_CASE("A folder tells which backups of this shop it has, the latest first") {
  TestShop shop;
  TestShop other = TestShop::empty();
  other.commit("", EnterPerson{Person{"ana", "9", "Ana", "Sorrel", "", "", "", "", ""}, std::nullopt});
  Folder folder;
  CHECK(backups_in(shop.path(), folder.path)->empty());
  const auto first = back_up(shop.path(), folder.path, evening);
  shop.enter("dee", fact(Document{"kim", "induction", {}}));
  const auto second = back_up(shop.path(), folder.path, evening + day);
  REQUIRE((first && second && back_up(other.path(), folder.path, evening + hour)));
  write(folder.path + "/shop-20260314-230001Z.backup", "no backup");
  const auto found = backups_in(shop.path(), folder.path);
  REQUIRE(found);
  REQUIRE(found->size() == 2);
  CHECK((*found)[0] == BackupFile{second->path, evening + day,
                                  QFileInfo(QString::fromStdString(second->path)).size(), second->commits});
  CHECK((*found)[1].path == first->path);
  CHECK((*found)[1].commits == second->commits - 1);
  CHECK_THAT(backups_in(shop.path(), folder.path + "/none").error().what, Catch::Contains("does not exist"));
}

TEST_CASE("What was blanked is not in a backup, not even between its pages") {
  TestShop shop;
  Folder folder;
  Person person;
  person.given = "Quillaja";
  const auto entered = shop.commit("dee", EnterPerson{person, std::nullopt});
  REQUIRE(entered);
  shop.enter("mia", BlankPerson{entered->person});
  const auto made = back_up(shop.path(), folder.path, evening);
  REQUIRE(made);
  QFile file(QString::fromStdString(made->path));
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK_FALSE(file.readAll().contains("Quillaja"));
}

TEST_CASE("A backup that cannot be made is refused in a sentence") {
  TestShop shop;
  Folder folder;
  CHECK_THAT(back_up(shop.path(), folder.path + "/none", evening).error().what,
             Catch::Contains("does not exist"));
  CHECK_THAT(back_up(folder.path + "/none.wm", folder.path, evening).error().what,
             Catch::Contains("does not exist"));
  write(folder.path + "/text.wm", QByteArray("Name,Number\n").repeated(99));
  CHECK_THAT(back_up(folder.path + "/text.wm", folder.path, evening).error().what,
             Catch::Contains("not a shop's file"));
  REQUIRE(back_up(shop.path(), folder.path, evening));
  CHECK_THAT(back_up(shop.path(), folder.path, evening).error().what, Catch::Contains("already"));
}

TEST_CASE("The latest of 7 days, 5 weeks and 12 months stay, counted by brute force") {
  const Zone zone = *Zone::named("America/Chicago");
  const auto day_of = [&](Instant t) { return zone.day(t); };
  const auto month_of = [&](Instant t) { return to_text(zone.day(t)).substr(0, 7); };
  // 5 January 1970 was a Monday.
  const auto week_of = [&](Instant t) {
    return static_cast<int>(std::floor((zone.day(t).number - 4) / 7.0));
  };
  const bool holds = rc::check("which stay", [&] {
    auto seconds = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-40000000, 40000000));
    std::sort(seconds.begin(), seconds.end(), std::greater<>());
    seconds.erase(std::unique(seconds.begin(), seconds.end()), seconds.end());
    std::vector<Instant> times;
    for (const int s : seconds) times.push_back({s});
    const std::vector<bool> keep = backups_to_keep(times, zone);
    RC_ASSERT(keep.size() == times.size());
    if (!times.empty()) RC_ASSERT(keep.front());
    for (std::size_t i = 0; i < times.size(); ++i) {
      const Instant t = times[i];
      const bool stays = (latest_of_its_own(times, t, day_of) && later_ones(times, t, day_of) < 7) ||
                         (latest_of_its_own(times, t, week_of) && later_ones(times, t, week_of) < 5) ||
                         (latest_of_its_own(times, t, month_of) && later_ones(times, t, month_of) < 12);
      RC_ASSERT(keep[i] == stays);
    }
  });
  CHECK(holds);
}

TEST_CASE("Older backups are thinned, and no file that is not one of this shop's") {
  TestShop shop, other;
  Folder folder;
  const std::vector<std::string> foreign = {"letter.txt", "shop-20200101-000000Z.backup", "shop-old.backup",
                                            "shop-20200101-0000Z.backup", "shops-20200101-000000Z.backup"};
  for (const std::string& name : foreign) write(folder.path + "/" + name, "not a backup");
  // Another shop whose file has the same name.
  TestShop stranger = TestShop::empty();
  REQUIRE(back_up(stranger.path(), folder.path, evening - 900 * day));
  std::size_t removed = 0;
  for (int i = 0; i < 60; ++i) {
    const auto made = back_up(shop.path(), folder.path, evening + i * 3 * day);
    REQUIRE(made);
    CHECK(QFile::exists(QString::fromStdString(made->path)));
    removed += made->removed.size();
  }
  CHECK(folder.names().size() + removed == foreign.size() + 1 + 60);
  for (const std::string& name : foreign) CHECK(folder.names().contains(QString::fromStdString(name)));
  // Every third day from 14 March to 7 September. The 7 latest days reach back to 20 August, the 5 latest
  // weeks add 14 August, the months their last ones from March to July: 13, by hand.
  QStringList stay = folder.names().filter("Z.backup").filter("shop-2026");
  for (const char* day : {"0329", "0428", "0531", "0630", "0730", "0814", "0820", "0823", "0826", "0829",
                          "0901", "0904", "0907"})
    CHECK(stay.removeAll(QString("shop-2026%1-230000Z.backup").arg(day)) == 1);
  CHECK(stay.isEmpty());
}

TEST_CASE("The backup just made stays, even where the clock has run back behind many others") {
  TestShop shop;
  Folder folder;
  for (int i = 1; i <= 20; ++i) REQUIRE(back_up(shop.path(), folder.path, evening + i * day));
  const QString here = QDir::currentPath();
  QDir::setCurrent(folder.dir.path());
  const auto made = back_up(shop.path(), ".", evening - 3600);
  QDir::setCurrent(here);
  REQUIRE(made);
  CHECK(QFile::exists(QString::fromStdString(made->path)));
  CHECK(folder.names().contains("shop-20260314-220000Z.backup"));
}

TEST_CASE("Putting a backup back says what would be lost, and keeps what it replaces") {
  TestShop shop;
  Folder folder;
  const auto made = back_up(shop.path(), folder.path, evening);
  REQUIRE(made);
  const auto before = shop.store().entries();
  shop.enter("dee", own(Presence{"kim"}));
  shop.enter("mia", fact(Use{"kim", "bandsaw"}));
  const auto after = shop.store().entries();
  CHECK_THAT(restore(made->path, shop.path(), evening).error().what, Catch::Contains("Another program"));
  shop.close();
  const auto plan = plan_restore(made->path, shop.path());
  REQUIRE(plan);
  CHECK(plan->replaces);
  CHECK(plan->readable);
  CHECK(plan->commits == made->commits);
  REQUIRE(plan->lost.size() == 2);
  CHECK(plan->lost[0].number == made->commits + 1);
  CHECK(plan->lost[0].entered_by == "Dee Castellano");
  CHECK(plan->lost[1].action == "use");
  CHECK(plan->lost[1].recorded == evening);
  const auto kept = restore(made->path, shop.path(), evening);
  if (!kept) FAIL(kept.error().what);
  CHECK(QFileInfo(QString::fromStdString(*kept)).fileName() == "shop-replaced-20260314-230000Z.wm");
  CHECK(opened(*kept).entries() == after);
  CHECK(opened(shop.path()).entries() == before);
  CHECK(opened(made->path).entries() == before);
}

TEST_CASE("A log that lies beside the place does not get into the backup that comes there") {
  TestShop shop;
  Folder folder;
  const auto made = back_up(shop.path(), folder.path, evening);
  REQUIRE(made);
  const auto before = shop.store().entries();
  shop.enter("dee", own(Presence{"kim"}));
  const QString path = QString::fromStdString(shop.path());
  QFile::copy(path + "-wal", path + "-kept");
  shop.close();
  SECTION("its store is gone") { QFile::remove(path); }
  SECTION("its store is there") {}
  QFile::copy(path + "-kept", path + "-wal");
  const auto kept = restore(made->path, shop.path(), evening);
  if (!kept) FAIL(kept.error().what);
  CHECK(opened(shop.path()).entries() == before);
}

TEST_CASE("A damaged store is replaced whole, and what cannot be told is said") {
  TestShop shop;
  Folder folder;
  const auto made = back_up(shop.path(), folder.path, evening);
  REQUIRE(made);
  const auto before = shop.store().entries();
  shop.close();
  const QByteArray rubbish = QByteArray("rubbish ").repeated(4000);
  write(shop.path(), rubbish);
  const auto plan = plan_restore(made->path, shop.path());
  REQUIRE(plan);
  CHECK(plan->replaces);
  CHECK_FALSE(plan->readable);
  const auto kept = restore(made->path, shop.path(), evening);
  if (!kept) FAIL(kept.error().what);
  QFile file(QString::fromStdString(*kept));
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.readAll() == rubbish);
  CHECK(opened(shop.path()).entries() == before);
}

TEST_CASE("What is no backup of this shop is not put back") {
  TestShop shop;
  Folder folder;
  const auto entries = shop.store().entries();
  shop.close();
  CHECK_FALSE(restore(folder.path + "/none.backup", shop.path(), evening));
  CHECK_FALSE(restore(shop.path(), shop.path(), evening));
  TestShop other = TestShop::empty();
  other.commit("", EnterPerson{Person{"ana", "9", "Ana", "Sorrel", "", "", "", "", ""}, std::nullopt});
  const auto made = back_up(other.path(), folder.path, evening);
  REQUIRE(made);
  CHECK_THAT(restore(made->path, shop.path(), evening).error().what, Catch::Contains("another shop"));
  // Damaged in one page, in which records lie.
  const auto own = back_up(shop.path(), folder.path, evening + 1);
  REQUIRE(own);
  QFile file(QString::fromStdString(own->path));
  REQUIRE(file.open(QIODevice::ReadWrite));
  REQUIRE(file.seek(file.readAll().lastIndexOf("{\"body\"") / 4096 * 4096 + 8));
  file.write(QByteArray(2000, '\x5a'));
  file.close();
  const auto damaged = restore(own->path, shop.path(), evening);
  REQUIRE_FALSE(damaged);
  CHECK_THAT(damaged.error().what, Catch::Contains("damaged"));
  CHECK(opened(shop.path()).entries() == entries);
}
