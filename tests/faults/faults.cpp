// Every fault at every call of every piece of work; see README.md.
#include <sqlite3.h>
#include <unistd.h>

#include <QTemporaryDir>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <map>

#include "kills.h"
#include "tests/db/small_shop.h"
#include "trial.h"

namespace wm::faults {
namespace {

struct Kind {
  const char* name;
  Fault fault;
  Left left;
  After after;
  int seeds = 1;
};

constexpr Kind kinds[] = {
    {"one call fails, the program goes on", Fault::fails_once, Left::nothing, After::goes_on},
    {"one call fails, then the file is opened anew", Fault::fails_once, Left::nothing, After::reopens},
    {"a sync fails and its writes are forgotten", Fault::sync_lost, Left::nothing, After::goes_on},
    {"all calls fail from there on, then the disk is well again", Fault::fails_on, Left::nothing,
     After::goes_on},
    {"all calls fail from there on, then the file is opened anew", Fault::fails_on, Left::nothing,
     After::reopens},
    {"the disk is full, then there is room again", Fault::full, Left::nothing, After::goes_on},
    {"the disk is full, then the file is opened anew", Fault::full, Left::nothing, After::reopens},
    {"power cut, unsynced writes lost", Fault::power_cut, Left::nothing, After::reopens},
    {"power cut, unsynced writes kept (a kill)", Fault::power_cut, Left::all, After::reopens},
    {"power cut, the last write torn", Fault::power_cut, Left::torn, After::reopens, 2},
    {"power cut, writes reordered and torn", Fault::power_cut, Left::reordered, After::reopens, 4}};

// What is done to the store to see that the harness finds it.
enum class Spoil { nothing, no_sync, no_transaction };
Spoil spoil = Spoil::nothing;
int log_pages = 0, memory_pages = 0;

int ignore_transactions(void*, int action, const char*, const char*, const char*, const char*) {
  return action == SQLITE_TRANSACTION ? SQLITE_IGNORE : SQLITE_OK;
}
int ignore_synchronous(void*, int action, const char* what, const char* value, const char*, const char*) {
  return action == SQLITE_PRAGMA && value != nullptr && std::strcmp(what, "synchronous") == 0 ? SQLITE_IGNORE
                                                                                              : SQLITE_OK;
}

int on_every_connection(sqlite3* connection, const char**, const sqlite3_api_routines*) {
  if (log_pages > 0) sqlite3_wal_autocheckpoint(connection, log_pages);
  if (memory_pages > 0)
    sqlite3_exec(connection, ("PRAGMA cache_size = " + std::to_string(memory_pages)).c_str(), nullptr,
                 nullptr, nullptr);
  if (spoil == Spoil::no_transaction) sqlite3_set_authorizer(connection, ignore_transactions, nullptr);
  if (spoil == Spoil::no_sync) {
    sqlite3_exec(connection, "PRAGMA synchronous = OFF", nullptr, nullptr, nullptr);
    sqlite3_set_authorizer(connection, ignore_synchronous, nullptr);
  }
  return SQLITE_OK;
}

struct Totals {
  std::int64_t points = 0, in_doubt = 0;
  std::map<std::string, std::int64_t> broken;
  std::int64_t all_broken() const {
    std::int64_t n = 0;
    for (const auto& [what, count] : broken) n += count;
    return n;
  }
};

long long as(std::int64_t n) { return n; }
double seconds_since(std::chrono::steady_clock::time_point then) {
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - then).count();
}

struct Words {
  std::int64_t every = 1;  // of so many points one is tried
  std::uint64_t seed = 1;
  std::int64_t kills = 0;
  std::string only;  // a part of the name of the work that is tried; empty: all
  bool quiet = false;
};

void try_kind(Disk& disk, const std::string& path, const Work& work, const Kind& kind, const Words& words,
              Totals& totals) {
  log_pages = work.log_pages;
  memory_pages = work.memory_pages;
  std::int64_t shown = 0;
  for (std::int64_t at =
           1 + static_cast<std::int64_t>((words.seed * 7919 + std::hash<std::string>()(work.name)) %
                                         static_cast<std::uint64_t>(words.every));
       ; at += words.every) {
    bool came = false;
    for (int s = 0; s < kind.seeds; ++s) {
      const Trouble trouble{
          kind.fault, at, kind.left,
          words.seed * 1000003 + static_cast<std::uint64_t>(at) * 101 + static_cast<std::uint64_t>(s)};
      const Trial trial = run_trial(disk, path, work, trouble, kind.after);
      came = came || trial.came;
      if (!trial.came) break;
      ++totals.points;
      totals.in_doubt += trial.in_doubt;
      for (const Broken& broken : trial.broken) {
        ++totals.broken[broken.what];
        if (!words.quiet && ++shown <= 3)
          std::printf("  %s; %s; call %lld, seed %llu: %s: %s\n", work.name.c_str(), kind.name,
                      static_cast<long long>(at), static_cast<unsigned long long>(trouble.seed),
                      broken.what.c_str(), broken.detail.substr(0, 200).c_str());
      }
    }
    if (!came) return;
  }
}

std::optional<Words> words_of(int argc, char** argv) {
  Words words;
  for (int i = 1; i < argc; i += 2) {
    const std::string word = argv[i];
    const long long number = i + 1 < argc ? std::strtoll(argv[i + 1], nullptr, 10) : -1;
    if (word == "--only" && i + 1 < argc)
      words.only = argv[i + 1];
    else if (number < 0)
      return std::nullopt;
    else if (word == "--every")
      words.every = std::max(1ll, number);
    else if (word == "--seed")
      words.seed = static_cast<std::uint64_t>(number);
    else if (word == "--kills")
      words.kills = number;
    else
      return std::nullopt;
  }
  return words;
}

std::int64_t of(const Totals& totals, std::initializer_list<const char*> names) {
  std::int64_t n = 0;
  for (const char* name : names)
    if (const auto found = totals.broken.find(name); found != totals.broken.end()) n += found->second;
  return n;
}

/// The counts that matter; whether all is well.
bool print(const Totals& totals) {
  const std::int64_t lost = of(totals, {"lost"}), half = of(totals, {"half done", "entered though refused"}),
                     shut = of(totals, {"does not open", "damaged"});
  std::printf("%lld points: %lld lost, %lld half done, %lld that do not open, %lld otherwise wrong",
              as(totals.points), as(lost), as(half), as(shut), as(totals.all_broken() - lost - half - shut));
  std::printf("; %lld refused in doubt, and there\n", as(totals.in_doubt));
  return totals.broken.empty();
}

/// The same trials of a store that is spoilt: that they find it is what makes them worth anything.
bool catches(Disk& disk, const std::string& path, const std::vector<Work>& all, Spoil how, const char* what,
             const Words& words) {
  Words some = words;
  some.every = std::max<std::int64_t>(words.every, 40);
  some.quiet = true;
  Totals totals;
  spoil = how;
  for (const Work& work : all)
    if (work.opened && work.name.find("import") == std::string::npos)
      for (const Kind& kind : kinds) try_kind(disk, path, work, kind, some, totals);
  spoil = Spoil::nothing;
  std::printf("With %s: ", what);
  print(totals);
  const bool caught = of(totals, {"lost", "half done"}) > 0;
  std::printf("%s\n", caught ? "  … and so it is caught." : "  … and so these trials are worth nothing.");
  return caught;
}

int kill_run(const Words& words) {
  const auto at = std::chrono::steady_clock::now();
  const KillResult result = run_kills(words.kills, words.seed);
  std::printf(
      "%lld kills, seed %llu: %lld commands acknowledged, %lld there though nobody was told, %lld checks, "
      "%zu wrong; %.0f s\n",
      as(result.kills), static_cast<unsigned long long>(words.seed), as(result.acknowledged),
      as(result.in_flight), as(result.checks), result.broken.size(), seconds_since(at));
  for (const std::string& broken : result.broken) std::printf("  %s\n", broken.c_str());
  return result.broken.empty() ? 0 : 1;
}

int fault_run(const Words& words) {
  fix_randomness();
  QTemporaryDir folder;
  Disk disk(folder.path().toStdString());
  install();
  sqlite3_auto_extension(reinterpret_cast<void (*)()>(on_every_connection));
  const std::string path = disk.folder() + "/shop.wm";
  const auto begun = std::chrono::steady_clock::now();
  const std::vector<Work> all = all_work(disk, path);
  // Qt's own connection, not only ours, must reach the disk that fails.
  if (disk.files().at("shop.wm").empty()) {
    std::fprintf(stderr, "Qt's driver does not use the SQLite library that this program is linked with.\n");
    return 2;
  }
  Totals totals;
  for (const Work& work : all) {
    if (work.name.find(words.only) == std::string::npos) continue;
    const std::int64_t before = totals.points;
    for (const Kind& kind : kinds) try_kind(disk, path, work, kind, words, totals);
    std::printf("%-45s %7lld points\n", work.name.c_str(), as(totals.points - before));
    std::fflush(stdout);
  }
  std::printf("One of every %lld calls, seed %llu, %zu pieces of work:\n", as(words.every),
              static_cast<unsigned long long>(words.seed), all.size());
  bool well = print(totals);
  if (!words.only.empty()) return well ? 0 : 1;
  well = catches(disk, path, all, Spoil::no_sync, "synchronous = OFF", words) && well;
  well = catches(disk, path, all, Spoil::no_transaction, "BEGIN and COMMIT left out", words) && well;
  std::printf("%.0f s\n", seconds_since(begun));
  return well ? 0 : 1;
}

int main_of(int argc, char** argv) {
  const auto words = words_of(argc, argv);
  if (!words) {
    std::fprintf(stderr, "usage: faults [--every N] [--seed S] [--kills N] [--only WORK]\n");
    return 2;
  }
  db::make_application();
  return words->kills > 0 ? kill_run(*words) : fault_run(*words);
}

}  // namespace
}  // namespace wm::faults

int main(int argc, char** argv) { return wm::faults::main_of(argc, argv); }
