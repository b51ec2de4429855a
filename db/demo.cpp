#include "db/demo.h"

#include <QFile>
#include <nlohmann/json.hpp>
#include <set>
#include <string_view>

#include "core/rulebook/json.h"
#include "core/time/text.h"
#include "db/demo_quizzes.h"
#include "db/journal/shop_fact_json.h"

// A static library's resources are found only once they have been asked for by name, outside any namespace.
static void add_demo_files() {
  Q_INIT_RESOURCE(demo);
  Q_INIT_RESOURCE(quizzes);
  Q_INIT_RESOURCE(sheets);
}

namespace wm::db {
namespace {

// By another name: clang-format takes a line that begins with "import" for the beginning of a module.
using FilePlan = import::ImportPlan;

struct DemoFiles {
  ShopDetails details;
  Instant now;
  std::string pin;
  std::vector<std::string> rulebooks;
  FilePlan hours;
};

/// A file that the program carries: that it is missing is a mistake of the build, not of a user.
std::string carried_in(const std::string& folder, const std::string& name) {
  QFile file(QString::fromStdString(":/" + folder + "/" + name));
  if (!file.open(QIODevice::ReadOnly)) qFatal("the program lacks its file %s", name.c_str());
  return file.readAll().toStdString();
}
std::string carried(const std::string& name) { return carried_in("demo", name); }
std::string carried_picture(const std::string& name) { return carried_in("quizzes", name); }

/// When the shop is open, with so many adults on duty: weekdays from 0, Monday.
FilePlan plan_hours(const nlohmann::json& shop) {
  FilePlan plan;
  const Instant since = *parse_instant(shop.at("hours_since").get<std::string>());
  for (const auto& row : shop.at("hours"))
    for (const int weekday : row.at("weekdays"))
      for (const Doing doing : {Doing::open, Doing::staffed}) {
        const std::string id = (doing == Doing::open ? "open-" : "staffed-") + std::to_string(weekday);
        const WeekHours hours{doing, weekday, row.at("from_minute"), row.at("to_minute"), row.at("adults")};
        plan.commands.push_back({id, {}, false, since, false, {}, EnterShopFact{hours}});
        plan.lines.push_back(0);
      }
  return plan;
}

DemoFiles read_files() {
  const auto json = nlohmann::json::parse(carried("shop.json"));
  DemoFiles files{{json.at("name"), json.at("zone"), 0},
                  *parse_instant(json.at("now").get<std::string>()),
                  json.at("pin"),
                  {},
                  plan_hours(json)};
  for (const auto& name : json.at("rulebooks")) files.rulebooks.push_back(carried(name));
  return files;
}

/// Rulebooks are no table: they go in beside the CSV files, as a plan without rows.
Expected<FilePlan> plan_rulebooks(const std::vector<std::string>& texts) {
  FilePlan plan;
  for (const std::string& text : texts) {
    auto rulebook = read_rulebook(text);
    if (!rulebook) return tl::unexpected(rulebook.error().front());
    Command command{"rulebook-" + std::to_string(rulebook->version),
                    {},
                    false,
                    rulebook->recorded,
                    false,
                    {},
                    PublishRulebook{*rulebook}};
    plan.commands.push_back(std::move(command));
    plan.lines.push_back(0);
  }
  return plan;
}

Work work_of(const std::string& word) {
  for (const Work work : {Work::bank, Work::lesson, Work::sheet, Work::card})
    if (db::word(work) == word) return work;
  qFatal("the program's file issued.json has a \"%s\"", word.c_str());
}

/// Cards, lessons, banks and run sheets, each in a file of its own, as issued.json lists them; banks with
/// their pictures.
FilePlan plan_issued() {
  FilePlan plan;
  for (const auto& row : nlohmann::json::parse(carried("issued.json"))) {
    Issued issued{work_of(row.at("work")),
                  row.at("name"),
                  row.at("revision"),
                  row.value("changed", ""),
                  carried_in(row.value("folder", "demo"), row.at("file")),
                  {}};
    if (issued.work == Work::bank) issued.enclosures = pictures_of(issued.text, carried_picture);
    const std::string id = row.at("work").get<std::string>() + "-" + issued.name +
                           (issued.revision == 1 ? "" : "-" + std::to_string(issued.revision));
    plan.commands.push_back({id,
                             {},
                             false,
                             *parse_instant(row.at("at").get<std::string>()),
                             false,
                             {},
                             EnterShopFact{std::move(issued)}});
    plan.lines.push_back(0);
  }
  return plan;
}

/// One PIN for everybody who was ever given a role in `history`.
FilePlan plan_pins(const FilePlan& history, const std::string& pin, Instant now) {
  FilePlan plan;
  std::set<PersonId> done;
  for (const Command& command : history.commands) {
    const auto* entered = std::get_if<EnterShopFact>(&command.action);
    const auto* given = entered ? std::get_if<RoleGiven>(&entered->fact) : nullptr;
    if (!given || !given->role || !done.insert(given->person).second) continue;
    plan.commands.push_back(
        {"pin-" + given->person, {}, false, now, false, {}, ChoosePin{given->person, pin}});
    plan.lines.push_back(0);
  }
  return plan;
}

Expected<FilePlan> plan_file(import::FileKind kind, const std::string& name, import::Ground& ground) {
  const auto table = import::read_table(carried(name));
  if (!table) return tl::unexpected(table.error());
  FilePlan plan = import::plan(kind, *table, import::guess_mapping(*table, kind), {}, ground);
  ground.add(plan);
  return plan;
}

Expected<void> fill(Store& store, const DemoFiles& files) {
  using import::FileKind;
  import::Ground ground = import::Ground::of(store);
  std::vector<FilePlan> plans;
  auto rulebooks = plan_rulebooks(files.rulebooks);
  if (!rulebooks) return tl::unexpected(rulebooks.error());
  ground.add(*rulebooks);
  plans.push_back(std::move(*rulebooks));
  for (const auto& [kind, name] : {std::pair(FileKind::people, "people.csv"),
                                   {FileKind::machines, "machines.csv"},
                                   {FileKind::hours, "hours.csv"},
                                   {FileKind::bookings, "bookings.csv"},
                                   {FileKind::history, "history.csv"}}) {
    auto plan = plan_file(kind, name, ground);
    if (!plan) return tl::unexpected(plan.error());
    plans.push_back(std::move(*plan));
  }
  if (auto sat = sit_quizzes(plans.back(), carried("attempts.jsonl"), ground); !sat) return sat;
  plans.push_back(plan_pins(plans.back(), files.pin, files.now));
  plans.push_back(plan_issued());
  plans.push_back(files.hours);
  const auto committed = import::run(plans, store);
  if (!committed) return tl::unexpected(committed.error());
  return {};
}

}  // namespace

Expected<Store> make_demo(const std::string& path, Store::Clock clock, StoreOptions options) {
  add_demo_files();
  DemoFiles files = read_files();
  files.details.demo_clock = files.now.seconds - clock().seconds;
  auto store = Store::create(path, files.details, std::move(clock), std::move(options));
  if (!store) return store;
  const auto filled = fill(*store, files);
  if (filled) return store;
  store = tl::unexpected(filled.error());
  for (const char* end : {"", "-wal", "-shm"}) QFile::remove(QString::fromStdString(path + end));
  return store;
}

}  // namespace wm::db
