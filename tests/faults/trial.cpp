#include "trial.h"

#include <algorithm>

#include "tests/db/small_shop.h"

namespace wm::faults {
namespace {

struct Judge {
  Disk& disk;
  const std::string& path;
  const Work& work;
  const Trouble& trouble;
  Trial trial;
  std::size_t acknowledged = 0, attempted = 0;

  void broken(const std::string& what, const std::string& detail) { trial.broken.push_back({what, detail}); }

  std::optional<std::size_t> place_of(const std::string& file) const {
    for (std::size_t i = work.states.size(); i-- > 0;)
      if (work.states[i].file == file) return i;
    return std::nullopt;
  }

  void steps(Bench& bench) {
    for (std::size_t i = 0; i < work.steps.size(); ++i) {
      attempted = i + 1;
      auto done = step(work, i, bench);
      if (!done) {
        check_sentence(done.error());
        return;
      }
      acknowledged = i + 1;
    }
  }

  void check_sentence(const Problem& problem) {
    if (problem.where.empty() || problem.what.empty() || problem.remedy.empty() ||
        !problem.what.ends_with('.'))
      broken("no sentence", problem.where + " | " + problem.what + " | " + problem.remedy);
  }

  /// All again, on a disk that is well: what was there stays as it was, what was not is entered once.
  void all_again(Bench& bench, const char* when) {
    for (std::size_t i = 0; i < work.steps.size(); ++i) {
      auto done = step(work, i, bench);
      if (!done)
        return broken("not entered again",
                      std::string(when) + ": " + done.error().where + ": " + done.error().what);
    }
    if (!bench.store && !bench.open()) return broken("does not open", when);
    const State& last = work.states.back();
    if (dump(path) != last.file)
      return broken("not once", std::string(when) + ": another state than without the fault");
    if (!same_memory(last, *bench.store))
      broken("memory differs from the file", std::string(when) + ", entered again");
  }

  void check_state(const std::string& file, const char* when) {
    for (std::size_t i = acknowledged; i <= attempted; ++i) {
      if (work.states[i].file != file) continue;
      if (i > acknowledged) doubt(when);
      return;
    }
    const auto place = place_of(file);
    if (!place) return broken("half done", std::string(when) + ": no state that any step leaves");
    if (*place < acknowledged) return broken("lost", std::string(when) + ": acknowledged, and not there");
    broken("half done", std::string(when) + ": more than was asked for");
  }

  void doubt(const char* when) {
    // A disk that fails on cannot be made to forget what it took; see README.md.
    if (work.in_doubt || trouble.fault == Fault::power_cut || trouble.fault == Fault::fails_on)
      trial.in_doubt = true;
    else
      broken("entered though refused", when);
  }

  void check_also(const std::string& file) {
    if (!work.also) return;
    if (const std::string wrong = work.also(file, acknowledged == work.steps.size()); !wrong.empty())
      broken("wrong beside the store", wrong);
  }

  void check_file(const char* when, bool stands) {
    if (!stands) return;
    if (const std::string found = integrity(path); found != "ok")
      return broken("damaged", std::string(when) + ": " + found);
  }
};

}  // namespace

Trial run_trial(Disk& disk, const std::string& path, const Work& work, const Trouble& trouble, After after) {
  Judge judge{disk, path, work, trouble, {}};
  disk.put(work.start);
  Bench bench{path, db::evening, {}};
  if (work.opened && !bench.open()) {
    judge.broken("does not open", "before the fault");
    return judge.trial;
  }
  disk.trouble(trouble);
  judge.steps(bench);
  if (after == After::goes_on && !disk.came()) {
    bench.store.reset();
    disk.mend();
    return judge.trial;
  }
  if (after == After::goes_on) {
    disk.mend();
    if (bench.store) {
      // What the program shows is what the file has, whatever it was that failed.
      const auto seen = bench.store->refresh();
      const auto place = judge.place_of(dump(path));
      if (!seen)
        judge.broken("not read again", seen.error().what);
      else if (!place)
        judge.broken("half done", "while the program runs");
      else if (!same_memory(work.states[*place], *bench.store))
        judge.broken("memory differs from the file", "while the program runs");
    }
    judge.all_again(bench, "while the program runs");
    disk.cut(Left::nothing, trouble.seed);
    judge.acknowledged = judge.attempted = work.steps.size();
  }
  bench.store.reset();
  judge.trial.came = disk.came();
  disk.mend();
  if (!judge.trial.broken.empty()) return judge.trial;

  Bench again{path, db::evening, {}};
  const bool stands = !(work.start.empty() && judge.acknowledged == 0);
  if (stands) {
    seed_randomness(0);  // what a migration salts is salted as it was in the rehearsal
    if (const auto opened = again.open(); !opened) {
      judge.broken("does not open", opened.error().what);
      return judge.trial;
    }
    judge.check_file("after opening it anew", true);
    if (work.opens) judge.acknowledged = judge.attempted = 1;
    const std::string file = dump(path);
    judge.check_state(file, "after opening it anew");
    judge.check_also(file);
    if (const auto place = judge.place_of(file); place && !same_memory(work.states[*place], *again.store))
      judge.broken("memory differs from the file", "after opening it anew");
  }
  if (judge.trial.broken.empty()) judge.all_again(again, "after opening it anew");
  judge.check_file("at last", judge.trial.broken.empty());
  return judge.trial;
}

}  // namespace wm::faults
