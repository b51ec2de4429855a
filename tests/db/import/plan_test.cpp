#include "db/import/plan.h"

#include <QCryptographicHash>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QTemporaryDir>
#include <QVariant>
#include <catch2/catch.hpp>

#include "core/time/text.h"
#include "db/journal/subject.h"
#include "tests/db/test_shop.h"

using namespace wm;
using namespace wm::db;
using namespace wm::db::import;

namespace {

constexpr Instant now{1795646400};  // 2026-11-25T22:40:00Z

/// A shop with a manager, one class and one unit; its file can be dumped.
struct Desk {
  QTemporaryDir dir;
  std::string path = dir.filePath("shop.wm").toStdString();
  Store store = made();

  Store made() {
    make_application();
    auto made = Store::create(
        path, {"Test shop", "America/Chicago", 0}, [] { return now; }, cheap_pins());
    REQUIRE(made);
    Rulebook book;
    book.effective_from = book.recorded = *parse_instant("2024-01-01T12:00:00Z");
    Tier tier;
    MachineClass bandsaw;
    bandsaw.name = "bandsaw";
    book.tiers = {tier};
    book.classes = {bandsaw};
    const Instant start = book.recorded;
    const auto founded = made->found(
        {{"b", {}, false, start, false, {}, PublishRulebook{book}},
         {"p",
          {},
          false,
          start,
          false,
          {},
          EnterPerson{{"boss", "0001", "Ada", "Boss", "", "", "", "", ""}, {}}},
         {"r", {}, false, start, false, {}, EnterShopFact{RoleGiven{"boss", Role::manager}}},
         {"m", {}, false, start, false, {}, EnterShopFact{MachineAdded{"bs-1", "bandsaw", "unit 1"}}}});
    INFO((founded ? "" : founded.error().where + " " + founded.error().what));
    REQUIRE(founded);
    return std::move(*made);
  }

  ImportPlan plan(FileKind kind, std::string_view csv, PlanOptions options = {}) {
    options.by = "boss";
    const auto table = read_table(csv);
    REQUIRE(table);
    return import::plan(kind, *table, guess_mapping(*table, kind), options, Ground::of(store));
  }
  Committed take(FileKind kind, std::string_view csv) {
    const ImportPlan planned = plan(kind, csv);
    for (const RowProblem& p : planned.problems) UNSCOPED_INFO(p.problem.where << ": " << p.problem.what);
    const auto done = run({planned}, store);
    if (!done) UNSCOPED_INFO(done.error().where << ": " << done.error().what);
    REQUIRE(done);
    return *done;
  }

  /// Over every row of every table, in order.
  QByteArray hash() const {
    QCryptographicHash hash(QCryptographicHash::Sha256);
    {
      QSqlDatabase db = QSqlDatabase::addDatabase("QSQLITE", "dump");
      db.setDatabaseName(QString::fromStdString(path));
      REQUIRE(db.open());
      QStringList tables = db.tables(QSql::Tables);
      tables.sort();
      REQUIRE(tables.size() > 3);
      for (const QString& table : tables) {
        QStringList rows;
        QSqlQuery query("SELECT * FROM \"" + table + "\"", db);
        while (query.next()) {
          QStringList cells;
          for (int i = 0; i < query.record().count(); ++i) cells << query.value(i).toString();
          rows << cells.join('\x1f');
        }
        rows.sort();
        hash.addData((table + '\n' + rows.join('\n')).toUtf8());
      }
    }
    QSqlDatabase::removeDatabase("dump");
    return hash.result();
  }
};

constexpr std::string_view people =
    "Member No,First name,Last name,E-mail,Date of birth\r\n"
    "0412,Jonas,Lindqvist,jonas@example.org,1988-05-17\r\n"
    "0007,Mara,Devlin,,\r\n";
constexpr std::string_view history =
    "date,kind,number,what,result,by,minutes,ref,until,struck_out,reason\n"
    "2026-03-14 17:30,document,0412,induction,,,,,2028-03-14,,\n"
    "2026-03-15,checkout,412,bandsaw,passed,0007,,,,,\n"
    "2026-03-16 10:00,supervised,0412,bandsaw,,0007,45,,,,\n"
    "2026-03-17,suspend,0412,all,,,,S1,2026-04-01,,\n"
    "2026-03-18,quiz,0412,tier 1,9 of 10,,,,,2026-03-19,wrong key\n";

std::vector<std::string> places(const ImportPlan& plan) {
  std::vector<std::string> where;
  for (const RowProblem& p : plan.problems) where.push_back(p.problem.where);
  return where;
}

}  // namespace

TEST_CASE("People and their history are taken in, with columns guessed by their headers") {
  Desk desk;
  desk.take(FileKind::people, people);
  REQUIRE(desk.store.people().size() == 3);
  CHECK(desk.store.person("p0412")->email == "jonas@example.org");
  const Committed done = desk.take(FileKind::history, history);
  CHECK(done.entries.size() == 6);  // five rows, one of them struck out
  CHECK(done.entries.front().from_paper);
  CHECK(to_text(done.entries.front().at) == "2026-03-14T22:30:00Z");
}

TEST_CASE("The same file a second time changes nothing, in whatever form its dates and separators are") {
  Desk desk;
  desk.take(FileKind::people, people);
  desk.take(FileKind::history, history);
  const QByteArray before = desk.hash();
  const ImportPlan again = desk.plan(FileKind::people, people);
  CHECK(again.already_here == 2);
  CHECK(again.commands.empty());
  const ImportPlan twice = desk.plan(FileKind::history, history);
  CHECK(twice.already_here == 5);
  CHECK(run({again, twice}, desk.store));
  CHECK(desk.plan(FileKind::history,
                  "date;kind;number;what;until\n14.03.2026 17:30;document;0412;induction;14.3.2028\n")
            .already_here == 1);
  CHECK(desk.hash() == before);
}

TEST_CASE("Every bad row of a broken file is told with its line, and nothing is changed") {
  Desk desk;
  desk.take(FileKind::people, people);
  const QByteArray before = desk.hash();
  const ImportPlan plan = desk.plan(FileKind::history,
                                    "date,kind,number,what,result,by,minutes,revision\n"
                                    "2026-03-14,document,0412,induction,,,,\n"
                                    "2026-02-30,document,0412,induction,,,,\n"
                                    "2026-03-14,dokument,0412,induction,,,,\n"
                                    "2026-03-14,use,0999,bandsaw,,,,\n"
                                    "2026-03-14,use,0412,bandsew,,,,\n"
                                    "2026-03-14,quiz,0412,tier 1,11 of 10,,,\n"
                                    "2026-03-14,checkout,0412,bandsaw,pased,0007,,\n"
                                    "2026-03-14,checkout,0412,bandsaw,passed,0412,,\n"
                                    "2026-03-14,supervised,0412,bandsaw,,0007,0,\n"
                                    "2026-03-14,lesson,0412,saws,,,,3\n"
                                    "2027-03-14,use,0412,bandsaw,,,,\n"
                                    "2026-03-14,use,0412\n"
                                    "2026-03-14,use,04\"12,bandsaw,,,,\n"
                                    ",use,0412,bandsaw,,,,\n");
  CHECK(places(plan) == std::vector<std::string>{"line 3, date", "line 4, kind", "line 5, number",
                                                 "line 6, what", "line 7, result", "line 8, result",
                                                 "line 9, by", "line 10, minutes", "line 11, revision",
                                                 "line 12, date", "line 13", "line 14", "line 15, date"});
  for (const RowProblem& p : plan.problems) CHECK((!p.problem.what.empty() && !p.problem.remedy.empty()));
  CHECK(plan.commands.size() == 1);
  CHECK_FALSE(plan.ready());
  CHECK_FALSE(run({plan}, desk.store));
  CHECK(desk.hash() == before);
}

TEST_CASE("What only the store refuses is told with its line too, and nothing is changed") {
  Desk desk;
  desk.take(FileKind::people, people);
  const QByteArray before = desk.hash();
  const ImportPlan plan = desk.plan(FileKind::history,
                                    "date,kind,number,what,by,minutes\n"
                                    "2026-03-14 10:00,use,0412,bandsaw,,\n"
                                    "2026-03-14 11:00,supervised,0412,bandsaw,0007,60\n"
                                    "2026-03-14 11:30,supervised,0412,bandsaw,0007,60\n");
  REQUIRE(plan.ready());
  const auto done = run({plan}, desk.store);
  REQUIRE_FALSE(done);
  CHECK(done.error().where == "line 4");
  CHECK(desk.hash() == before);
}

TEST_CASE("An ambiguous date is a question, unless another in its column decides or the user has") {
  Desk desk;
  desk.take(FileKind::people, people);
  const std::string ambiguous =
      "date,kind,number,what\n2026-03-14,use,0412,bandsaw\n3/4/2026,use,0412,bandsaw\n";
  const ImportPlan asks = desk.plan(FileKind::history, ambiguous);
  REQUIRE(asks.question == DateQuestion{3, "date", "3/4/2026"});
  CHECK_FALSE(run({asks}, desk.store));
  const auto day = [](const ImportPlan& plan) { return plan.rows.at(1).cells.at(0); };
  CHECK(day(desk.plan(FileKind::history, ambiguous, {DateOrder::day_first, {}})) == "2026-04-03");
  CHECK(day(desk.plan(FileKind::history, ambiguous, {DateOrder::month_first, {}})) == "2026-03-04");
  const ImportPlan decided = desk.plan(FileKind::history, ambiguous + "25/4/2026,use,0412,bandsaw\n");
  CHECK_FALSE(decided.question);
  CHECK(day(decided) == "2026-04-03");
}

TEST_CASE("Details of somebody who is here stay as they are, and the preview says so") {
  Desk desk;
  desk.take(FileKind::people, people);
  const ImportPlan plan =
      desk.plan(FileKind::people, "number,given,family,email\n412,Jonas,Lindqvist,new@example.org\n");
  CHECK(plan.already_here == 1);
  CHECK(plan.rows[0].remark == "kept as it is here: email");
}

TEST_CASE("Several details that differ are one remark") {
  Desk desk;
  desk.take(FileKind::people, people);
  const ImportPlan plan =
      desk.plan(FileKind::people, "number,given,family,email\n412,Jonas,Lindqvist-Berg,new@example.org\n");
  CHECK(plan.rows[0].remark == "kept as it is here: family, email");
}

TEST_CASE("A number that somebody else has here, by both names, is a mistake") {
  Desk desk;
  desk.take(FileKind::people, people);
  CHECK(places(desk.plan(FileKind::people, "number,given,family\n412,Dario,Conti\n")) ==
        std::vector<std::string>{"line 2, number"});
  CHECK(desk.plan(FileKind::people, "number,given,family\n412,Lindqvist,Jonas\n").already_here == 1);
}

TEST_CASE("Two rows of one number, or one card for two people, are mistakes") {
  Desk desk;
  const ImportPlan plan = desk.plan(
      FileKind::people, "number,name,card\n10,\"Lind, Jo\",77\n10,Jo Other,\n11,Bo Berg,77\n12,,\n");
  CHECK(places(plan) == std::vector<std::string>{"line 3, number", "line 4, card", "line 5, given"});
}

TEST_CASE("A row that was taken in before and has been struck out since adds the strike-out alone") {
  Desk desk;
  desk.take(FileKind::people, people);
  desk.take(FileKind::history, "date,kind,number,what\n2026-03-14,use,0412,bandsaw\n");
  const Committed done = desk.take(FileKind::history,
                                   "date,kind,number,what,struck_out,reason\n"
                                   "2026-03-14,use,0412,bandsaw,2026-03-20,entered twice\n");
  REQUIRE(done.entries.size() == 1);
  CHECK(std::holds_alternative<ShopFact>(done.entries[0].fact));
}

TEST_CASE("A later file ends what an earlier one began, by its number on paper") {
  Desk desk;
  desk.take(FileKind::people, people);
  desk.take(FileKind::history, "date,kind,number,what,ref\n2026-11-01,suspend,0412,all,S7\n");
  desk.take(FileKind::history, "date,kind,ends\n2026-11-02,reinstate,S7\n");
  CHECK(places(desk.plan(FileKind::history, "date,kind,ends\n2026-11-02,reinstate,S8\n")) ==
        std::vector<std::string>{"line 2, ends"});
}

TEST_CASE("A file without a column that is needed says which") {
  Desk desk;
  const ImportPlan plan = desk.plan(FileKind::history, "date,number\n2026-03-14,0412\n");
  CHECK_FALSE(plan.ready());
  CHECK(plan.problems.front().problem.where == "columns");
}

TEST_CASE("A booking of a file names its second assessor, who is neither of the others") {
  Desk desk;
  desk.take(FileKind::people, people);
  const std::string columns = "date,from,to,number,by,machine,what,purpose,Second assessor\n";
  const auto planned = [&](const std::string& row) { return desk.plan(FileKind::bookings, columns + row); };
  const auto second = [](const ImportPlan& plan) {
    REQUIRE(plan.commands.size() == 1);
    return as<Booking>(AnyFact(std::get<EnterShopFact>(plan.commands[0].action).fact))->second;
  };
  const std::string row = "2026-12-01,18:00,19:00,0412,0007,bs-1,bandsaw,check-out,";
  CHECK(second(planned(row + "0001\n")) == "boss");
  CHECK(second(planned(row + "\n")).empty());
  CHECK(planned(row + "0412\n").problems.size() == 1);
  CHECK(planned(row + "0007\n").problems.size() == 1);
  CHECK(planned(row + "9999\n").problems.size() == 1);
}
