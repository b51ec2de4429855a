#include "work.h"

#include <QFile>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <set>

#include <sqlite3.h>

#include "db/backup/backup.h"
#include "db/import/plan.h"
#include "db/sql/dialect.h"
#include "db/sql/migrate.h"
#include "tests/db/small_shop.h"

namespace wm::faults {
namespace {

using namespace wm::db;

StoreOptions options() {
  StoreOptions options = cheap_pins();
  options.busy_ms = 0;
  options.on_network = [](const std::string&) { return false; };
  return options;
}

[[noreturn]] void stop(const std::string& what, const Problem& problem) {
  std::fprintf(stderr, "%s: %s: %s\n", what.c_str(), problem.where.c_str(), problem.what.c_str());
  std::exit(2);
}

Command command(const std::string& id, const PersonId& by, Action action) {
  Command made;
  made.id = id;
  made.by = by;
  made.action = std::move(action);
  return made;
}

Person person(const PersonId& id, const std::string& given) {
  Person made;
  made.id = id;
  made.number = "n" + id;
  made.given = given;
  made.family = "Winterbourne";
  made.email = given + "@example.org";
  return made;
}

SignCheckout signing() {
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  sign.pin = "2222";
  sign.machine = "b1";
  sign.sheet = "bandsaw";
  sign.sheet_revision = 1;
  sign.marks = {Mark::shown, Mark::shown_when_asked, Mark::shown};
  sign.measured = {{3, "63/64\"", "63/64 in", "1/64 in"}};
  sign.restrictions = {"no resawing", "with a push stick"};
  sign.booking = "booked";
  return sign;
}

/// Signed before, so that a second assessor can mark it apart.
SignCheckout watched_by_two() {
  SignCheckout sign = signing();
  sign.booking.reset();
  return sign;
}

SignCheckout countersigned() {
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
  sign.pin = "2222";
  sign.machine = "b1";
  sign.sheet = "bandsaw";
  sign.sheet_revision = 1;
  sign.marks = {Mark::shown};
  sign.opened = "in-hand";
  sign.countersign = Countersign{Hand::pin, "7777"};
  return sign;
}

/// Tier 2 with the combi, whose check-outs two witness.
SignCheckout signed_by_two() {
  SignCheckout sign;
  sign.checkout = {"kim", "combi", 0, Outcome::passed, "ivo"};
  sign.pin = "2222";
  sign.machine = "c1";
  sign.second = SecondAssessor{"mia", "1111"};
  return sign;
}

Booking booked_with_two() {
  Booking booking{"lou", "ivo", "c1", "combi/joint", evening + 3 * hour, evening + 4 * hour};
  booking.second = "mia";
  return booking;
}

Rulebook two_assess_the_combi() {
  Rulebook rulebook = small_rulebook(2, evening);
  rulebook.tiers.push_back(rulebook.tiers[1]);
  rulebook.tiers.back().tier = 3;
  rulebook.tiers.back().two_assessors = true;
  for (MachineClass& each : rulebook.classes)
    if (each.name == "combi") each.tier = 3;
  return rulebook;
}

EnterPaperSheet marked_on_paper() {
  SignCheckout sheet = countersigned();
  sheet.pin.clear();
  sheet.opened.clear();
  sheet.countersign = Countersign{Hand::paper, {}};
  return {sheet, "7K2Q9X"};
}

Command from_a_paper(Command command) {
  command.from_paper = true;
  return command;
}

Command noted(Command command, const std::string& note) {
  command.note = note;
  return command;
}

Command vouched(Command command) {
  command.second = Second{"ivo", "2222"};
  return command;
}

Command at_station(Command command) {
  command.quiz_station = true;
  return command;
}

/// What the commands below refer to.
std::vector<Command> groundwork() {
  return {
      command("lock", "dee", PutOutOfService{"b2", "6", "2", "fence loose", "dee"}),
      command("booked", "dee",
              own(Booking{"kim", "ivo", "b1", "bandsaw", evening + hour, evening + 2 * hour})),
      command("came", "dee", own(Presence{"lou"})),
      noted(command("induction", "dee", fact(Document{"lou", "induction", {}})), "signed in pencil"),
      command("here", "dee", own(Presence{"mia"})),
      command("begun", "dee", own(Started{"ivo", "s1", "sander", ""})),
      noted(command("remark", "dee", own(Presence{"kim"})), "limps a little"),
      command("bank", "mia", own(small_bank())),
      at_station(command("sitting", "kim", own(begun_by("kim")))),
      command("watched", "ivo", watched_by_two()),
      command("member-pin", "dee", ChoosePin{"kim", "7777"}),
      command("in-hand", "ivo", own(SheetOpened{"kim", "b1", "bandsaw", "bandsaw", 1})),
      command("other-in-hand", "ivo", own(SheetOpened{"mia", "b1", "bandsaw", "bandsaw", 1})),
      command("line-1", "ivo", own(LineMarked{"in-hand", 1, Mark::shown, Mark::none, {}})),
      command("by-two", "mia", PublishRulebook{two_assess_the_combi()}),
      command("blank", "dee", own(Printed{"Run sheet", 2, std::string(64, 'b'), "7K2Q9X", "bandsaw", 1}))};
}

/// Every alternative of Action but one, so that all that a command can write is written.
std::vector<std::pair<std::string, Command>> commands() {
  return {
      {"enter a person with a birth date", command("c1", "dee", EnterPerson{person("", "Noor"), Day{9000}})},
      {"correct a person", command("c2", "dee", CorrectPerson{person("kim", "Kimberly")})},
      {"blank a person", command("c3", "mia", BlankPerson{"lou"})},
      {"choose a PIN", command("c4", "dee", ChoosePin{"dee", "4444"})},
      {"enter a lesson with a note", noted(command("c5", "dee", fact(Lesson{"kim", "guards", 1})), "late")},
      {"enter a place on the waiting list", command("c6", "dee", own(Waiting{"kim", "bandsaw"}))},
      {"close the shop on a day",
       command("c18", "mia", own(OtherHours{"", Doing::open, Day{20600}, Day{20601}, {}, 1, "holidays"}))},
      {"take in busy times",
       command("c19", "ivo", own(Busy{"ivo", evening, evening + day, {{evening, evening + hour}}}))},
      {"give a role", command("c7", "mia", own(RoleGiven{"kim", Role::desk}))},
      {"sign a check-out", command("c8", "ivo", signing())},
      {"mark a performance apart",
       command("c23", "mia", ScoreApart{{"watched", "mia", "bandsaw", 1, signing().marks}, "1111"})},
      {"take a run sheet in hand",
       command("c24", "ivo", own(SheetOpened{"lou", "b1", "bandsaw", "bandsaw", 1}))},
      {"mark a line with its measure",
       command("c25", "ivo",
               own(LineMarked{"other-in-hand", 3, Mark::shown, Mark::none,
                              LineMeasured{3, "63/64\"", "63/64 in", "1/64 in"}}))},
      {"put a run sheet by",
       command("c26", "ivo", own(SheetPutBy{"other-in-hand", "the edge is left", {"no resawing"}}))},
      {"sign what is in hand, countersigned with a PIN", command("c27", "ivo", countersigned())},
      {"countersign later with a PIN",
       command("c39", "ivo", CountersignCheckout{"watched", {Hand::pin, "7777"}})},
      {"sign with a second assessor", command("c37", "ivo", signed_by_two())},
      {"book with a second assessor", command("c38", "dee", own(booked_with_two()))},
      {"enter a marked sheet from paper", from_a_paper(command("c28", "mia", marked_on_paper()))},
      {"say what a computer is for", command("c34", "mia", own(StationTold{"bureau", Station::office}))},
      {"say what to call in an emergency", command("c35", "mia", own(EmergencyCall{"112", "Mill Road 12"}))},
      {"note that a contact was shown while nobody sat there", command("c36", "", own(ContactShown{"kim"}))},
      {"put a machine out of service",
       command("c9", "dee", PutOutOfService{"b1", "7", "3", "blade cracked", "dee"})},
      {"start a machine", command("c21", "dee", own(Started{"kim", "c1", "combi/joint", "mia"}))},
      {"leave a machine", command("c22", "dee", LeaveMachine{"begun"})},
      {"record what happened", command("c20", "ivo",
                                       RecordIncident{"bandsaw",
                                                      "b1",
                                                      2,
                                                      {{"kim", Part::operating}, {"lou", Part::hurt}},
                                                      {Part::saw},
                                                      "the blade jumped off"})},
      {"change a machine",
       command("c31", "ivo", RecordChange{"bandsaw", "b1", Alteration::cutter, "a wider blade"})},
      {"teach a group", command("c33", "dee", TeachGroup{"guards", 1, {"ivo"}, {"kim", "lou"}})},
      {"let a visitor in", command("c32", "dee", own(Visit{"Ada Quill", "visitor's paper", "mia"}))},
      {"publish a rulebook", command("c10", "mia", PublishRulebook{small_rulebook(3, evening + 2 * day)})},
      {"strike a record out", command("c11", "dee", StrikeOutRecord{"came", "it was kim"})},
      {"strike a record out with a second",
       vouched(command("c12", "mia", StrikeOutRecord{"induction", "it was kim"}))},
      {"erase the text of one record", command("c14", "mia", BlankRecord{"remark"})},
      {"issue a question bank", command("c15", "mia", own(small_bank(2)))},
      {"begin a quiz", at_station(command("c16", "kim", own(begun_by("kim"))))},
      {"hand a quiz in", at_station(command("c17", "kim", HandIn{"sitting", small_attempt()}))},
      {"note a printed paper", command("c13", "dee", own(Printed{"Roster", 2, std::string(64, 'a')}))}};
}

/// More than fits into little memory.
std::vector<Command> many_commands(int notes) {
  std::vector<Command> all;
  for (const auto& [name, command] : commands())
    if (std::holds_alternative<EnterFact>(command.action) ||
        std::holds_alternative<PutOutOfService>(command.action) ||
        std::holds_alternative<EnterPerson>(command.action))
      all.push_back(command);
  for (int i = 0; i < notes; ++i)
    all.push_back(noted(command("more-" + std::to_string(i), "dee", own(Presence{"kim", i % 2 == 0})),
                        std::string(900, static_cast<char>('a' + i % 26))));
  return all;
}

std::function<Expected<void>(Bench&)> entering(std::vector<Command> commands) {
  return [commands](Bench& bench) {
    auto done =
        commands.size() == 1 ? bench.store->commit(commands.front()) : bench.store->commit_all(commands);
    return done.map([](const Committed&) {});
  };
}

constexpr std::string_view people_csv =
    "number,given,family,born,card,joined\n"
    "101,Anneke,Sorrel,1990-02-03,778101,2026-02-20\n"
    "102,Bram,Tansy,1984-11-30,778102,2026-02-21\n"
    "103,Cleo,Yarrow,,778103,2026-02-22\n";
constexpr std::string_view history_csv =
    "date,kind,number,what,revision,note\n"
    "2026-03-01 10:00,document,101,induction,,seen\n"
    "2026-03-02 11:00,document,102,induction,,\n"
    "2026-03-09 18:30,lesson,101,guards,1,with Ivo\n"
    "2026-03-10 18:30,lesson,102,guards,1,\n"
    "2026-03-11 18:30,use,101,sander,,\n"
    "2026-03-12 18:30,use,103,sander,,\n";

/// Into a shop that runs, as papers from the past; or, without `by`, as the past that a shop is made of.
std::function<Expected<void>(Bench&)> importing(const PersonId& by) {
  return [by](Bench& bench) -> Expected<void> {
    import::Ground ground = import::Ground::of(*bench.store);
    std::vector<import::ImportPlan> plans;
    if (by.empty() && bench.store->last_commit() == 0) {
      import::ImportPlan before;
      for (const Command& one : small_history()) {
        before.commands.push_back(one);
        before.lines.push_back(0);
      }
      ground.add(before);
      plans.push_back(std::move(before));
    }
    for (const auto& [kind, text] :
         {std::pair(import::FileKind::people, people_csv), {import::FileKind::history, history_csv}}) {
      const auto table = import::read_table(text);
      if (!table) return tl::make_unexpected(table.error());
      import::ImportPlan plan =
          import::plan(kind, *table, import::guess_mapping(*table, kind), {{}, by}, ground);
      ground.add(plan);
      plans.push_back(std::move(plan));
    }
    return import::run(plans, *bench.store).map([](const Committed&) {});
  };
}

/// A time that no earlier backup or replaced file has.
Instant later() {
  static std::int64_t n = 0;
  return evening + 100 * ++n;
}

std::vector<std::string> named(Disk& disk, const std::string& begins, const std::string& ends) {
  std::vector<std::string> found;
  for (const auto& [name, bytes] : disk.files())
    if (name.starts_with(begins) && name.ends_with(ends)) found.push_back(disk.folder() + "/" + name);
  return found;
}

/// While the program has the store open.
Work backing_up(Disk& disk, const Files& shop) {
  Work work{.name = "back up", .start = shop};
  work.start["backups/letter.txt"] = "not ours";
  work.steps = {[&disk](Bench& bench) {
    return back_up(bench.path, disk.folder() + "/backups", later()).map([](const BackupMade&) {});
  }};
  work.also = [&disk](const std::string& file, bool acknowledged) -> std::string {
    const auto made = named(disk, "backups/", ".backup");
    if (acknowledged && made.empty()) return "the backup is not there";
    for (const std::string& path : made)
      if (integrity(path) != "ok" || dump(path) != file) return "a backup is not whole";
    return disk.files().contains("backups/letter.txt") ? "" : "a file that is not ours was removed";
  };
  return work;
}

/// A backup of before, over a store that has gone on.
Work restoring(Disk& disk, const std::string& path, const Files& shop) {
  disk.put(shop);
  Bench bench{path, evening, {}};
  if (auto done = bench.open(); !done) stop("restore", done.error());
  std::filesystem::create_directory(disk.folder() + "/backups");
  const auto made = back_up(path, disk.folder() + "/backups", evening);
  if (!made) stop("restore", made.error());
  for (const auto& [name, command] : commands())
    if (auto done = bench.store->commit(command); !done) stop("restore", done.error());
  Work work{.name = "put a backup back", .start = disk.files(), .opened = false, .in_doubt = true};
  const std::string newer = dump(path);
  work.steps = {[backup = made->path](Bench& bench) {
    bench.store.reset();
    return restore(backup, bench.path, later()).map([&](const std::string&) { (void)bench.open(); });
  }};
  work.also = [&disk, newer](const std::string& file, bool) -> std::string {
    if (file == newer) return "";
    for (const std::string& kept : named(disk, "shop-replaced-", ".wm"))
      if (integrity(kept) == "ok" && dump(kept) == newer) return "";
    return "what was replaced is not there";
  };
  return work;
}

Files opened_and_closed(Disk& disk, Bench& bench) {
  bench.store.reset();
  return disk.files();
}

/// Runs the work without a fault and keeps what each step comes to.
Work rehearsed(Disk& disk, const std::string& path, Work work) {
  disk.put(work.start);
  Bench bench{path, evening, {}};
  if (!work.opens)
    if (auto done = bench.open(); !done) stop(work.name, done.error());
  const auto now = [&] {
    State state;
    state.file = work.start.empty() && disk.files().empty() ? "" : dump(path);
    if (bench.store) state = state_of(path, *bench.store);
    return state;
  };
  work.states.push_back(now());
  if (!work.opened) bench.store.reset();
  for (std::size_t i = 0; i < work.steps.size(); ++i) {
    if (auto done = step(work, i, bench); !done) stop(work.name, done.error());
    work.states.push_back(now());
  }
  return work;
}

void raw(const std::string& path, const std::string& sql) {
  sqlite3* file = nullptr;
  char* error = nullptr;
  if (sqlite3_open(path.c_str(), &file) != SQLITE_OK ||
      sqlite3_exec(file, sql.c_str(), nullptr, nullptr, &error))
    stop("raw", {path, error == nullptr ? "" : error, ""});
  sqlite3_close(file);
}

/// A shop as the program of an earlier version kept it.
Files of_version(Disk& disk, const std::string& path, int version) {
  disk.put({});
  QFile file(QString(WM_TESTS "/db/stores/version-%1.sql").arg(version));
  if (!file.open(QIODevice::ReadOnly)) stop(file.fileName().toStdString(), {"", "cannot be read", ""});
  raw(path, file.readAll().toStdString());
  return disk.files();
}

}  // namespace

Expected<void> Bench::open() {
  auto opened = Store::open(
      path, [this] { return now; }, options());
  if (!opened) return tl::make_unexpected(opened.error());
  store.emplace(std::move(*opened));
  return {};
}

Expected<void> Bench::create() {
  auto made = Store::create(
      path, {"Hollow Oak Workshop", "America/Chicago", 0}, [this] { return now; }, options());
  if (!made) return tl::make_unexpected(made.error());
  store.emplace(std::move(*made));
  return {};
}

Expected<void> step(const Work& work, std::size_t number, Bench& bench) {
  bench.now = evening + 60 * static_cast<std::int64_t>(number);
  seed_randomness(number);
  return work.steps[number](bench);
}

std::vector<Work> all_work(Disk& disk, const std::string& path) {
  std::vector<Work> all;
  const auto add = [&](Work work) { all.push_back(rehearsed(disk, path, std::move(work))); };
  const auto opening = [](Bench& bench) -> Expected<void> {
    return bench.store ? Expected<void>{} : bench.open();
  };
  const auto making = [&disk, opening](Bench& bench) -> Expected<void> {
    auto done = bench.store ? Expected<void>{} : bench.create();
    // It may be there whole though nobody was told.
    return done ? done : bench.open().map_error([&](const Problem&) { return done.error(); });
  };

  disk.put({});
  Bench bench{path, evening, {}};
  seed_randomness(1000);
  if (auto done = bench.create(); !done) stop("create", done.error());
  const Files empty = opened_and_closed(disk, bench);
  if (auto done = bench.open(); !done) stop("open", done.error());
  if (auto done = bench.store->found(small_history()); !done) stop("found", done.error());
  if (auto done = bench.store->commit_all(groundwork()); !done) stop("groundwork", done.error());
  const Files logged = disk.files();  // as a program leaves it that was killed
  const Files shop = opened_and_closed(disk, bench);
  if (auto done = bench.open(); !done) stop("open", done.error());
  if (auto done = bench.store->commit_all(many_commands(60)); !done) stop("many", done.error());
  const Files large = opened_and_closed(disk, bench);

  add({.name = "make a store", .opens = true, .opened = false, .steps = {making}});
  add({.name = "open a store", .start = shop, .opens = true, .opened = false, .steps = {opening}});
  add({.name = "open a store with a log",
       .start = logged,
       .opens = true,
       .opened = false,
       .steps = {opening}});
  // With little memory pages are read again and again, and written before the end of the transaction.
  add({.name = "open a store, with little memory",
       .start = large,
       .opens = true,
       .opened = false,
       .memory_pages = 5,
       .steps = {opening}});
  // Version 1 was never in use.
  add({.name = "migrate from version 2",
       .start = of_version(disk, path, 2),
       .opens = true,
       .opened = false,
       .steps = {opening}});
  const Command confirm = command("c14", "mia", ConfirmClock{});
  add({.name = "confirm a clock that was set back", .start = shop, .steps = {[confirm](Bench& bench) {
                                                                     bench.now = evening - 3 * hour;
                                                                     return entering({confirm})(bench);
                                                                   }}});
  std::set<std::size_t> alternatives = {confirm.action.index()};
  Work evening{.name = "an evening, the log moved every few pages", .start = shop, .log_pages = 20};
  for (const auto& [name, command] : commands()) {
    alternatives.insert(command.action.index());
    add({.name = name, .start = shop, .steps = {entering({command})}});
    evening.steps.push_back(entering({command}));
  }
  if (alternatives.size() != kinds_in<Action>)
    stop("commands", {"", "not every kind of command is tried", ""});
  add({.name = "several commands at once",
       .start = shop,
       .steps = {entering({commands()[0].second, commands()[4].second, commands()[8].second})}});
  add({.name = "several commands at once, with little memory",
       .start = shop,
       .memory_pages = 5,
       .steps = {entering(many_commands(12))}});
  add({.name = "import into a shop that runs", .start = shop, .steps = {importing("mia")}});
  add({.name = "import that makes a shop", .start = empty, .steps = {importing("")}});
  add(evening);
  add(backing_up(disk, shop));
  add(restoring(disk, path, shop));
  return all;
}

}  // namespace wm::faults
