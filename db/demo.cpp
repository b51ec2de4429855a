#include "db/demo.h"

#include <QDir>
#include <QFile>
#include <nlohmann/json.hpp>
#include <set>
#include <string_view>

#include "core/rulebook/json.h"
#include "core/teach/bank_text.h"
#include "core/time/text.h"
#include "db/import/plan.h"

// A static library's resources are found only once they have been asked for by name, outside any namespace.
static void add_demo_files() {
  Q_INIT_RESOURCE(demo);
  Q_INIT_RESOURCE(quizzes);
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
};

/// A file that the program carries: that it is missing is a mistake of the build, not of a user.
QByteArray carried_in(const char* folder, const std::string& name) {
  QFile file(QString(":/%1/%2").arg(folder, QString::fromStdString(name)));
  if (!file.open(QIODevice::ReadOnly)) qFatal("the program lacks its file %s", name.c_str());
  return file.readAll();
}
std::string carried(const std::string& name) { return carried_in("demo", name).toStdString(); }

DemoFiles read_files() {
  const auto json = nlohmann::json::parse(carried("shop.json"));
  DemoFiles files{{json.at("name"), json.at("zone"), 0},
                  *parse_instant(json.at("now").get<std::string>()),
                  json.at("pin"),
                  {}};
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

/// Cards and lessons, each in a file of its own, as issued.json lists them.
FilePlan plan_issued() {
  FilePlan plan;
  for (const auto& row : nlohmann::json::parse(carried("issued.json"))) {
    Issued issued{work_of(row.at("work")),  row.at("name"),          row.at("revision"),
                  row.value("changed", ""), carried(row.at("file")), {}};
    const std::string id = row.at("work").get<std::string>() + "-" + issued.name;
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

/// When `history` publishes that revision of the item; nothing where it does not.
std::optional<Instant> published(const FilePlan& history, const std::string& item, int revision) {
  for (const Command& command : history.commands) {
    const auto* entered = std::get_if<EnterFact>(&command.action);
    const auto* publish = entered ? std::get_if<Publish>(&entered->fact) : nullptr;
    if (publish && publish->item == item && publish->revision == revision) return command.at;
  }
  return std::nullopt;
}

std::vector<Enclosure> pictures_of(const teach::Bank& bank) {
  std::vector<Enclosure> pictures;
  std::set<std::string> names;
  for (const teach::Question& question : bank.questions)
    if (!question.picture.empty() && names.insert(question.picture).second)
      pictures.push_back(
          {question.picture, carried_in("quizzes", question.picture).toBase64().toStdString()});
  return pictures;
}

/// Each bank is issued as its revision is published: an earlier revision's text is not carried along.
Expected<FilePlan> plan_banks(const FilePlan& history, Instant now) {
  FilePlan plan;
  for (const QString& name : QDir(":/quizzes").entryList({"*.txt"}, QDir::Files, QDir::Name)) {
    const std::string text = carried_in("quizzes", name.toStdString()).toStdString();
    const auto bank = teach::read_bank(text);
    if (!bank) return tl::unexpected(bank.error().front());
    Command command;
    command.id = "bank-" + bank->name;
    command.at = published(history, bank->name, bank->revision).value_or(now);
    command.action =
        EnterShopFact{Issued{Work::bank, bank->name, bank->revision, {}, text, pictures_of(*bank)}};
    plan.commands.push_back(std::move(command));
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
  auto banks = plan_banks(plans.back(), files.now);
  if (!banks) return tl::unexpected(banks.error());
  plans.push_back(plan_pins(plans.back(), files.pin, files.now));
  plans.push_back(plan_issued());
  plans.push_back(std::move(*banks));
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
