// What the engine does on world W, beside what cannot be beaten (a plain scan of the records) and what most
// would write instead (SQL). Nothing here passes or fails by time; that W is a sane world and that SQL and
// engine give the same answers does.
//   world_bench [--part=0.02] [--file=PATH] [what Google Benchmark takes]
#include <benchmark/benchmark.h>
#include <malloc.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <memory>
#include <string>

#include "core/decide/current.h"
#include "plain_scan.h"
#include "samples.h"
#include "sql_decisions.h"
#include "world.h"

using namespace wm;
using namespace wm::bench;

namespace {

double part = 1;
std::string file;

const World& w() {
  static const World world = make_world(part < 1 ? WorldSize::part_of(part) : WorldSize{});
  return world;
}

/// Kept over all rows.
std::unique_ptr<Current> kept;
Current& current() {
  if (!kept) kept = std::make_unique<Current>(w().shop);
  return *kept;
}

/// Resident memory of this process in MiB.
double resident() {
  malloc_trim(0);
  std::ifstream statm("/proc/self/statm");
  long size = 0, pages = 0;
  statm >> size >> pages;
  return static_cast<double>(pages) * static_cast<double>(sysconf(_SC_PAGESIZE)) / (1 << 20);
}

/// Some pair, another each time, spread over everybody.
struct Pair {
  const PersonId& person;
  const TargetName& target;
};
Pair pair(std::size_t i) {
  return {w().shop.people[i * 7919 % w().shop.people.size()], w().targets[i * 31 % w().targets.size()].name};
}

/// In order of the world's people and targets.
std::vector<Rung> everyone() {
  std::vector<Rung> rungs;
  for (const PersonId& person : w().shop.people)
    for (const WorldTarget& target : w().targets)
      rungs.push_back(current().rung(person, target.name, w().now));
  return rungs;
}

// --- rows --------------------------------------------------------------------------------------------------

void plain_scan(benchmark::State& state) {
  const auto records = plain_records(w().shop);
  const PlainSums zero{std::vector<std::uint32_t>(w().shop.people.size() + 1),
                       std::vector<std::int64_t>(w().shop.people.size() + 1)};
  PlainSums sums = zero;
  const auto use = static_cast<std::uint8_t>(Fact(Use{}).index());
  for (auto _ : state) {
    scan(records, w().now.seconds, use, sums);
    benchmark::DoNotOptimize(sums.count.data());
    benchmark::DoNotOptimize(sums.latest.data());
    benchmark::ClobberMemory();
  }
}

/// From the records to everybody's timelines.
void loading(benchmark::State& state) {
  kept.reset();
  const double before = resident();
  for (auto _ : state) current();
  state.counters["mib"] = resident() - before;
}

void all_decisions(benchmark::State& state) {
  std::array<int, 3> of{};
  for (auto _ : state) {
    const std::vector<Rung> rungs = current().everyone(w().now);
    for (std::size_t i = 0; i < of.size(); ++i)
      of[i] = static_cast<int>(std::count(rungs.begin(), rungs.end(), static_cast<Rung>(i)));
  }
  const double all = of[0] + of[1] + of[2];
  state.counters["barred"] = of[0] / all;
  state.counters["supervised"] = of[1] / all;
  state.counters["independent"] = of[2] / all;
}

/// A decision with its reasons for somebody who was asked about before: what the desk asks again and again.
void one_decision(benchmark::State& state) {
  constexpr std::size_t known = 100;
  for (std::size_t i = 0; i < known; ++i) current().standing(pair(i).person, pair(i).target, w().now);
  Samples samples(state);
  std::size_t i = 0;
  for (auto _ : state) {
    const Pair asked = pair(i++ % known);
    samples.take([&] { benchmark::DoNotOptimize(&current().standing(asked.person, asked.target, w().now)); });
  }
}

/// The same for somebody who was not.
void first_decision(benchmark::State& state) {
  Samples samples(state);
  std::size_t i = 1000;
  for (auto _ : state) {
    const Pair asked = pair(i++);
    samples.take([&] { benchmark::DoNotOptimize(&current().standing(asked.person, asked.target, w().now)); });
  }
}

void timeline(benchmark::State& state) {
  Samples samples(state);
  std::size_t i = 1000;
  for (auto _ : state) {
    const Pair asked = pair(i++);
    samples.take(
        [&] { benchmark::DoNotOptimize(current().standing_steps_anew(asked.person, asked.target)); });
  }
}

/// The same a second time, when nothing has to come from memory any more.
void timeline_again(benchmark::State& state) {
  Samples samples(state);
  std::size_t i = 1000;
  for (auto _ : state) {
    const Pair asked = pair(i++);
    benchmark::DoNotOptimize(current().standing_steps_anew(asked.person, asked.target));
    samples.take(
        [&] { benchmark::DoNotOptimize(current().standing_steps_anew(asked.person, asked.target)); });
  }
}

/// At instants that were not asked about before.
void who(benchmark::State& state) {
  Samples samples(state);
  std::size_t i = 0;
  for (auto _ : state) {
    const TargetName& target = w().targets[i * 7 % w().targets.size()].name;
    const Instant t = w().now - static_cast<std::int64_t>(i++);
    samples.take([&] { benchmark::DoNotOptimize(current().who(target, t, Rung::supervised)); });
  }
}

/// Records spread over the ten years.
void what_rests_on_a_record(benchmark::State& state) {
  const auto& records = w().shop.records;
  Samples samples(state);
  std::size_t i = 0;
  for (auto _ : state) {
    const RecordId& record = records[records.size() * (i++ % 997 + 1) / 1000].id;
    samples.take([&] { benchmark::DoNotOptimize(current().rests_on(record, w().now)); });
  }
}

void an_edit_tried(benchmark::State& state) {
  const Rulebook other = edited(w().shop.rulebooks.back());
  std::size_t changes = 0;
  for (auto _ : state) changes = current().what_if(other, w().now).size();
  state.counters["changes"] = static_cast<double>(changes);
}

/// Records like those of the ten years, entered now, one after another. The last row that asks `current()`:
/// it is made anew afterwards.
void a_record_taken_in(benchmark::State& state) {
  const auto& records = w().shop.records;
  Samples samples(state);
  std::size_t i = 0, shifts = 0;
  for (auto _ : state) {
    Record record = records[i * 104'729 % records.size()];
    record.id = "taken-" + std::to_string(i);
    record.at = record.recorded = w().now + static_cast<std::int64_t>(++i);
    record.voided.reset();
    samples.take([&] { shifts += current().take(record).size(); });
  }
  state.counters["shifts"] = static_cast<double>(shifts);
  kept.reset();
}

SqlDecisions& sql() {
  static SqlDecisions decisions(w(), current(), file);
  return decisions;
}

void all_decisions_by_sql(benchmark::State& state) {
  sql();  // filled before anything is measured
  for (auto _ : state) benchmark::DoNotOptimize(sql().everyone());
}

void one_decision_by_sql(benchmark::State& state) {
  Samples samples(state);
  std::size_t i = 0;
  for (auto _ : state) {
    const Pair asked = pair(i++);
    samples.take([&] { benchmark::DoNotOptimize(sql().standing(asked.person, asked.target)); });
  }
}

void who_by_sql(benchmark::State& state) {
  Samples samples(state);
  std::size_t i = 0;
  for (auto _ : state) {
    const TargetName& target = w().targets[i++ * 7 % w().targets.size()].name;
    samples.take([&] { benchmark::DoNotOptimize(sql().who(target, Rung::supervised)); });
  }
}

// --- that the same job is done -----------------------------------------------------------------------------

void complain(const std::string& what) {
  std::fprintf(stderr, "%s\n", what.c_str());
  std::exit(1);
}

bool nobody_assesses(const TargetName& target) {
  return std::none_of(w().shop.people.begin(), w().shop.people.end(),
                      [&](const PersonId& each) { return current().able_to_assess(each, target, w().now); });
}

void check_world() {
  const std::vector<Rung> rungs = everyone();
  for (const Rung rung : {Rung::barred, Rung::supervised, Rung::independent}) {
    const auto of = static_cast<double>(std::count(rungs.begin(), rungs.end(), rung));
    if (part >= 1 && of < 0.1 * static_cast<double>(rungs.size())) {
      complain("Fewer than a tenth of the decisions are " + std::string(word(rung)));
    }
  }
  for (const WorldTarget& target : w().targets) {
    if (part >= 1 && nobody_assesses(target.name)) complain("Nobody assesses " + target.name);
  }
}

void check_sql() {
  const std::vector<Rung> by_sql = sql().everyone(), by_engine = everyone();
  if (by_sql != by_engine) {
    std::size_t wrong = 0, first = by_sql.size();
    for (std::size_t i = 0; i < by_engine.size(); ++i) {
      if (by_sql[i] != by_engine[i] && wrong++ == 0) first = i;
    }
    const std::size_t targets = w().targets.size();
    complain("SQL and engine differ in " + std::to_string(wrong) + " decisions, first for " +
             w().shop.people[first / targets] + " on " + w().targets[first % targets].name + ": " +
             std::string(word(by_sql[first])) + " and " + std::string(word(by_engine[first])));
  }
  for (std::size_t i = 0; i < 50; ++i) {
    const Pair asked = pair(i);
    if (sql().standing(asked.person, asked.target) != current().rung(asked.person, asked.target, w().now)) {
      complain("SQL for one person differs for " + asked.person + " on " + asked.target);
    }
  }
  for (std::size_t i = 0; i < w().targets.size(); i += 13) {
    const TargetName& target = w().targets[i].name;
    if (sql().who(target, Rung::supervised) != current().who(target, w().now, Rung::supervised)) {
      complain("SQL and engine differ about who may use " + target);
    }
  }
}

}  // namespace

int main(int argc, char** argv) {
  benchmark::Initialize(&argc, argv);
  for (int i = 1; i < argc; ++i) {
    const std::string word = argv[i];
    if (word.starts_with("--part="))
      part = std::atof(word.c_str() + 7);
    else if (word.starts_with("--file="))
      file = word.substr(7);
    else
      complain("“" + word + "” is not known; try --part=0.02 or --file=PATH");
  }
  const double before = resident();
  w();
  benchmark::AddCustomContext("records_mib", std::to_string(resident() - before));
  const auto add = [](const char* name, void (*row)(benchmark::State&)) {
    return benchmark::RegisterBenchmark(name, row)->UseRealTime();
  };
  const auto sampled = [&](const char* name, void (*row)(benchmark::State&), int times) {
    return benchmark::RegisterBenchmark(name, row)->UseManualTime()->Iterations(times);
  };
  const bool large = part >= 0.1;
  add("loading", loading)->Iterations(1);
  add("all_decisions", all_decisions);
  sampled("one_decision", one_decision, 10'000);
  sampled("first_decision", first_decision, 300);
  sampled("timeline", timeline, large ? 5000 : 300);
  sampled("timeline_again", timeline_again, large ? 5000 : 300);
  sampled("who", who, 100);
  add("plain_scan", plain_scan);
  add("all_decisions_by_sql", all_decisions_by_sql)->Iterations(3);
  sampled("one_decision_by_sql", one_decision_by_sql, 50);
  sampled("who_by_sql", who_by_sql, 10);
  sampled("rests_on", what_rests_on_a_record, large ? 500 : 20);
  add("what_if", an_edit_tried)->Iterations(1);
  sampled("taken_in", a_record_taken_in, large ? 1000 : 50);
  check_world();
  check_sql();
  benchmark::RunSpecifiedBenchmarks();
}
