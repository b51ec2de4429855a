// The demo shop's quizzes were sat: each has its answers, and came to what its history says.
#include "db/demo_quizzes.h"

#include <QFile>
#include <QTemporaryDir>
#include <catch2/catch.hpp>
#include <map>

#include "db/demo.h"
#include "db/journal/subject.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

TEST_CASE("Every quiz of the demo shop has an attempt that was begun before it, by the same person") {
  make_application();
  const QTemporaryDir folder;
  const auto store = make_demo(
      folder.filePath("demo").toStdString(), [] { return Instant{1790000000}; }, cheap_pins());
  REQUIRE(store);
  QFile history(QString(WM_RESOURCES) + "/demo/history.csv");
  REQUIRE(history.open(QIODevice::ReadOnly));
  const auto rows = history.readAll().count(",quiz,");
  int quizzes = 0, sat = 0, struck = 0, banks = 0;
  for (const Entry& entry : store->entries()) {
    if (const auto* issued = as<Issued>(entry.fact)) banks += issued->work == Work::bank ? 1 : 0;
    if (as<Quiz>(entry.fact)) {
      ++quizzes;
      struck += entry.voided ? 1 : 0;
    }
    const auto* attempt = as<AttemptSat>(entry.fact);
    if (!attempt) continue;
    ++sat;
    const Entry* begun = store->entry(attempt->begun);
    const Entry* quiz = store->entry(attempt->quiz);
    REQUIRE((begun && quiz && as<AttemptBegun>(begun->fact) && as<Quiz>(quiz->fact)));
    CHECK(as<AttemptBegun>(begun->fact)->person == attempt->person);
    CHECK(as<Quiz>(quiz->fact)->person == attempt->person);
    CHECK(begun->at < quiz->at);
    CHECK(begun->order < quiz->order);
  }
  CHECK(banks == 5);
  CHECK(quizzes == rows);
  CHECK(sat == rows);
  CHECK(struck == 4);
}

TEST_CASE("Attempts that are not those of the history are refused") {
  const auto quiz_of = [](const PersonId& person) {
    import::ImportPlan plan;
    Command command;
    command.id = "quiz";
    command.at = Instant{1790000000};
    command.action = EnterFact{Quiz{person, "tier 1", 1, 1, 10, 0}};
    plan.commands = {command};
    plan.lines = {2};
    return plan;
  };
  import::Ground ground;
  Person kim = nameless("kim");
  kim.number = "0007";
  ground.add(kim);
  const std::string line =
      R"({"date":"2026-01-01 10:00","number":"0007","attempt":{"bank":"tier 1","revision":1,)"
      R"("seed":"0000000000000001","language":"en","answers":[]}})"
      "\n";
  auto good = quiz_of("kim");
  REQUIRE(sit_quizzes(good, line, ground));
  REQUIRE(good.commands.size() == 2);
  CHECK(good.commands[1].id == "quiz");
  CHECK(std::get<HandIn>(good.commands[1].action).begun == good.commands[0].id);
  auto missing = quiz_of("kim"), another = quiz_of("lou"), more = quiz_of("kim");
  CHECK_FALSE(sit_quizzes(missing, "", ground));
  CHECK_FALSE(sit_quizzes(another, line, ground));
  CHECK_FALSE(sit_quizzes(more, line + line, ground));
}
