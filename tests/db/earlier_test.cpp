// Stores of earlier versions, kept as files: opened by this one, with nothing lost.
#include <QFile>
#include <QProcess>
#include <catch2/catch.hpp>

#include "core/decide/decider.h"
#include "db/journal/subject.h"
#include "db/verify/verify.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

/// A folder with the store of that version in it.
class Earlier {
 public:
  explicit Earlier(int version) {
    make_application();
    QProcess shell;
    shell.setStandardInputFile(QString(WM_TESTS "/db/stores/version-%1.sql").arg(version));
    shell.start("sqlite3", {QString::fromStdString(path())});
    REQUIRE(shell.waitForFinished());
    REQUIRE(shell.exitCode() == 0);
  }
  std::string path() const { return folder_.filePath("shop.witnessmark").toStdString(); }
  Expected<Store> open() const {
    return Store::open(
        path(), [] { return evening + day; }, cheap_pins());
  }

 private:
  QTemporaryDir folder_;
};

std::size_t count_of(const Store& store, const auto& is) {
  return static_cast<std::size_t>(std::count_if(store.entries().begin(), store.entries().end(), is));
}

template <class F>
std::size_t how_many(const Store& store) {
  return count_of(store, [](const Entry& entry) { return as<F>(entry.fact) != nullptr; });
}

}  // namespace

TEST_CASE("A store of an earlier version keeps all it said, and has a ledger") {
  const int version = GENERATE(2, 4);
  INFO("version " << version);
  const Earlier file(version);
  auto store = file.open();
  INFO((store ? "" : store.error().what));
  REQUIRE(store);
  CHECK(store->details() == ShopDetails{"Hollow Oak Workshop", "America/Chicago", 0});
  CHECK(store->last_commit() == 29);
  CHECK(how_many<Lesson>(*store) == 2);
  CHECK(how_many<Checkout>(*store) == 1);
  CHECK(how_many<Details>(*store) == 7);  // six people, one of them corrected once
  CHECK(how_many<PinChosen>(*store) == 4);
  CHECK(how_many<Erased>(*store) == 1);
  CHECK(how_many<Restriction>(*store) == 1);
  // Nothing was measured then.
  CHECK(count_of(*store, [](const Entry& entry) {
          const auto* marks = as<SheetMarks>(entry.fact);
          return marks != nullptr && marks->machine == "b1" && marks->measured.empty();
        }) == 1);
  // The lesson entered for the wrong person stays struck out.
  CHECK(count_of(*store, [](const Entry& entry) { return entry.voided.has_value(); }) == 1);
  CHECK(count_of(*store, [](const Entry& entry) { return entry.note == "asked for an interpreter"; }) == 1);
  for (std::size_t i = 1; i < store->entries().size(); ++i)
    CHECK(store->entries()[i - 1].recorded <= store->entries()[i].recorded);

  const auto kim = store->person("kim");
  REQUIRE(kim);
  CHECK(kim->nickname == "Kimmy");
  CHECK(kim->phone == "555 0142");
  CHECK(store->person("lou") == nameless("lou"));
  CHECK(std::any_of(store->people().begin(), store->people().end(),
                    [](const Person& person) { return person.family == "Łukasik"; }));
  CHECK(store->sit_down("dee", "4444") == Role::desk);
  CHECK_FALSE(store->sit_down("dee", "3333"));
  CHECK(store->sit_down("ivo", "2222") == Role::instructor);
  CHECK(store->current().decider().standing("kim", "bandsaw", store->now()).standing == Rung::independent);

  SECTION("and goes on from there") {
    Command command;
    command.id = "after";
    command.by = "dee";
    command.action = fact(Document{"kim", "waiver", Day{21000}});
    const auto done = store->commit(command);
    REQUIRE(done);
    CHECK(done->number == 30);
    const auto entries = store->entries();
    store = file.open();
    REQUIRE(store);
    CHECK(store->entries() == entries);
  }
  SECTION("what was committed then is known when it comes again") {
    Command command;
    command.id = store->entries().front().id;
    command.by = "nobody";
    command.action = ChoosePin{"kim", "1234"};
    const auto again = store->commit(command);
    REQUIRE_FALSE(again);
    CHECK_THAT(again.error().what, Catch::Contains("Something else"));
  }
}

TEST_CASE("A store of an earlier version is whole after it was brought up to date, by both verifiers") {
  const int version = GENERATE(2, 4, 5);
  INFO("version " << version);
  const Earlier file(version);
  const auto store = file.open();
  REQUIRE(store);
  CHECK(verify::look_through(file.path(), {}).value().findings.empty());
  QProcess python;
  python.start("python3", {"-B", WM_TESTS "/oracles/ledger.py", QString::fromStdString(file.path())});
  REQUIRE(python.waitForFinished());
  CHECK(python.readAllStandardOutput().contains("\"found\": []"));
  // Reasons that stood in the records themselves are still told.
  CHECK(how_many<StrikeOut>(*store) > 0);
  CHECK(count_of(*store, [](const Entry& entry) {
          const auto* strike = as<StrikeOut>(entry.fact);
          return strike != nullptr && strike->reason.empty();
        }) == 0);
}
