// What the store takes with the records of world W: opening it for one person, opening all of it, a commit,
// looking it through, a backup. Nothing here passes or fails by time.
//   store_bench FOLDER [--part=0.02] [what Google Benchmark takes]
#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <sodium.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QFileInfo>
#include <cstdio>
#include <filesystem>

#include "db/backup/backup.h"
#include "db/first_look.h"
#include "db/verify/verify.h"
#include "samples.h"
#include "store_file.h"

using namespace wm;
using namespace wm::bench;

namespace {

double part = 1;
std::filesystem::path folder;

const World& w() {
  static const World world = make_world(part < 1 ? WorldSize::part_of(part) : WorldSize{});
  return world;
}

std::string file() {
  static const std::string path = [] {
    const std::string made = folder / "w.witnessmark";
    write_store(made, w());
    return made;
  }();
  return path;
}

db::Store::Clock clock_of() {
  return [] { return w().now + 7 * 86400; };
}

template <class T>
T must(Expected<T> done) {
  if (done) return std::move(*done);
  std::fprintf(stderr, "%s: %s\n", done.error().where.c_str(), done.error().what.c_str());
  std::exit(1);
}

const PersonId& somebody(std::size_t i) { return w().shop.people[i * 7919 % w().shop.people.size()]; }

/// The whole answer about somebody on every target, from the file as it lies on the disk.
void first_look(benchmark::State& state) {
  file();
  Samples samples(state);
  std::size_t i = 0;
  for (auto _ : state) {
    samples.take([&] {
      auto look = must(db::FirstLook::open(file(), clock_of()));
      const PersonId& person = somebody(i++);
      const auto answers = must(look.answers_for(person));
      for (const WorldTarget& target : w().targets)
        benchmark::DoNotOptimize(answers.decider->standing(person, target.name, w().now));
    });
  }
}

/// And about one more, once that is open.
void next_look(benchmark::State& state) {
  auto look = must(db::FirstLook::open(file(), clock_of()));
  Samples samples(state);
  std::size_t i = 100;
  for (auto _ : state) {
    samples.take([&] {
      const PersonId& person = somebody(i++);
      const auto answers = must(look.answers_for(person));
      for (const WorldTarget& target : w().targets)
        benchmark::DoNotOptimize(answers.decider->standing(person, target.name, w().now));
    });
  }
}

void all_read(benchmark::State& state) {
  file();
  for (auto _ : state) benchmark::DoNotOptimize(must(db::ReadAhead::read(file())));
  state.counters["bytes"] = static_cast<double>(QFileInfo(QString::fromStdString(file())).size());
  state.counters["records"] = static_cast<double>(w().shop.records.size());
}

/// As many bytes as a commit of one record adds to the log: a page of the table, of each index and of the
/// tree, about.
constexpr std::size_t commit_bytes = 8 * 4096;

/// What no commit can be faster than: the bytes written and synced.
void bare_write_and_sync(benchmark::State& state) {
  const int out = ::open((folder / "bare").c_str(), O_CREAT | O_WRONLY | O_APPEND, 0600);
  const std::string bytes(commit_bytes, 'w');
  Samples samples(state);
  for (auto _ : state)
    samples.take([&] {
      if (::write(out, bytes.data(), bytes.size()) < 0 || ::fdatasync(out) != 0) std::abort();
    });
  ::close(out);
}

void one_commit(benchmark::State& state) {
  auto store = must(db::Store::open(file(), clock_of()));
  store.current();
  Samples samples(state);
  int i = 0;
  for (auto _ : state) {
    db::Command command;
    command.id = "bench-" + std::to_string(++i);
    command.action = db::EnterShopFact{db::Printed{"Roster", 1, std::string(64, 'a')}};
    samples.take([&] { benchmark::DoNotOptimize(must(store.commit(command))); });
  }
}

void looked_through(benchmark::State& state) {
  file();
  for (auto _ : state)
    if (!must(verify::look_through(file(), {})).findings.empty()) std::abort();
}

void backed_up(benchmark::State& state) {
  const std::filesystem::path copies = folder / "copies";
  std::filesystem::create_directory(copies);
  for (auto _ : state) benchmark::DoNotOptimize(must(db::back_up(file(), copies, w().now)));
}

}  // namespace

int main(int argc, char** argv) {
  benchmark::Initialize(&argc, argv);
  int count = 1;
  char* first[] = {argv[0], nullptr};
  const QCoreApplication application(count, first);
  if (sodium_init() < 0 || argc < 2) return 2;
  folder = argv[1];
  for (int i = 2; i < argc; ++i)
    if (const std::string word = argv[i]; word.starts_with("--part=")) part = std::atof(word.c_str() + 7);
  const auto sampled = [](const char* name, void (*row)(benchmark::State&), int times) {
    benchmark::RegisterBenchmark(name, row)->UseManualTime()->Iterations(times);
  };
  const auto once = [](const char* name, void (*row)(benchmark::State&)) {
    benchmark::RegisterBenchmark(name, row)->UseRealTime()->Iterations(1);
  };
  sampled("first_look", first_look, 20);
  sampled("next_look", next_look, 100);
  once("all_read", all_read);
  once("looked_through", looked_through);
  once("backed_up", backed_up);
  sampled("bare_write_and_sync", bare_write_and_sync, 1000);
  sampled("one_commit", one_commit, 1000);
  benchmark::RunSpecifiedBenchmarks();
}
