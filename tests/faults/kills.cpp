#include "kills.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QTemporaryDir>
#include <array>
#include <csignal>
#include <random>

#include "state.h"
#include "tests/db/small_shop.h"

namespace wm::faults {
namespace {

using namespace wm::db;

constexpr int programs = 2;
/// A store grows, and with it the time to open it: after so many kills another is begun.
constexpr std::int64_t kills_a_store = 150;

/// The n-th command of a program: the same each time it is asked for. Whatever the other enters, it is
/// allowed.
Command command_of(int program, std::int64_t n) {
  const std::string prefix = "program-" + std::to_string(program) + "-";
  Command made;
  made.id = prefix + std::to_string(n);
  made.by = "dee";
  switch (n % 8) {
    case 0: {
      Person person;
      person.id = made.id;
      person.number = made.id;
      person.given = "Noor";
      made.action = EnterPerson{person, Day{9000}};
      return made;
    }
    case 1:
      made.action = own(Presence{"kim", n % 3 == 0});
      made.note = std::string(static_cast<std::size_t>(n % 700), 'n');
      return made;
    case 2:
      made.action = StrikeOutRecord{prefix + std::to_string(n - 1), "the wrong person"};
      return made;
    case 3:
      made.action = PutOutOfService{"b2", std::to_string(n), "3", "blade cracked", "dee"};
      return made;
    case 4: {
      SignCheckout sign;
      sign.checkout = {"kim", "bandsaw", 0, Outcome::passed, "ivo"};
      sign.pin = "2222";
      sign.machine = "b1";
      sign.sheet = "bandsaw";
      sign.marks = {Mark::shown, Mark::shown_when_asked};
      sign.restrictions = {"no resawing"};
      made.by = "ivo";
      made.action = sign;
      return made;
    }
    case 5:
      made.action = fact(Document{"lou", "induction", {}});
      return made;
    case 6: {
      Person person;
      person.id = prefix + std::to_string(n - 6);
      person.number = person.id;
      person.given = "Noor " + std::to_string(n);
      made.action = CorrectPerson{person};
      return made;
    }
    default:
      made.action = fact(Lesson{"kim", "guards", 1});
      return made;
  }
}

Expected<Store> open(const std::string& path, int busy_ms) {
  StoreOptions options = cheap_pins();
  options.busy_ms = busy_ms;
  return Store::open(
      path, [] { return evening; }, options);
}

/// Enters one command after another and tells the number of each that was acknowledged; never returns.
[[noreturn]] void enter_all(const std::string& path, int program, std::int64_t from, int tell) {
  auto store = open(path, 5000);
  for (std::int64_t n = from; store; ++n) {
    const auto done = store->commit(command_of(program, n));
    if (!done)
      store = tl::make_unexpected(done.error());
    else if (write(tell, &n, sizeof n) != static_cast<ssize_t>(sizeof n))
      _exit(1);
  }
  const std::string said = store.error().where + ": " + store.error().what + "\n";
  const std::int64_t refused = -1;
  (void)!write(tell, &refused, sizeof refused);
  (void)!write(STDERR_FILENO, said.data(), said.size());
  _exit(1);
}

class Kills {
 public:
  Kills(std::int64_t kills, std::uint64_t seed) : wanted_(kills), random_(static_cast<unsigned>(seed + 1)) {}

  KillResult run() {
    while (result_.kills < wanted_ && result_.broken.empty()) one_store();
    return std::move(result_);
  }

 private:
  struct Program {
    pid_t id = 0;
    int ear = -1;
    std::int64_t next = 0;     // the first that was not acknowledged
    std::int64_t checked = 0;  // those before have been looked at
  };

  void broken(const std::string& what) { result_.broken.push_back(what); }

  void one_store() {
    QTemporaryDir folder;
    path_ = folder.filePath("shop.wm").toStdString();
    programs_ = {};
    {
      auto store = Store::create(
          path_, {"Hollow Oak Workshop", "America/Chicago", 0}, [] { return evening; }, cheap_pins());
      if (!store || !store->found(small_history())) return broken("no store to begin with");
      base_ = store->last_commit();
    }
    for (std::int64_t i = 0; i < kills_a_store && result_.kills < wanted_ && result_.broken.empty(); ++i) {
      for (int p = 0; p < programs; ++p)
        if (programs_[p].id == 0) start(p);
      usleep(static_cast<useconds_t>(500 + random_() % 60000));
      const auto which = random_() % 3;
      if (which != 1) kill(programs_[0]);
      if (which != 0) kill(programs_[1]);
      if (which == 2) check();
    }
    for (Program& program : programs_)
      if (program.id != 0) kill(program);
    if (result_.broken.empty()) check();
    for (Program& program : programs_) program.checked = 0;
    if (result_.broken.empty()) check();  // all of them once more
  }

  void start(int p) {
    int ends[2];
    if (pipe2(ends, O_CLOEXEC) != 0) return broken("no pipe");
    const pid_t id = fork();
    if (id == 0) enter_all(path_, p, programs_[p].next, ends[1]);
    close(ends[1]);
    programs_[p].id = id;
    programs_[p].ear = ends[0];
  }

  void kill(Program& program) {
    ::kill(program.id, SIGKILL);
    ++result_.kills;
    int status = 0;
    waitpid(program.id, &status, 0);
    std::int64_t n = 0;
    while (read(program.ear, &n, sizeof n) == static_cast<ssize_t>(sizeof n)) {
      if (n != program.next) broken(n < 0 ? "a command was refused" : "acknowledged out of turn");
      program.next = n + 1;
      ++result_.acknowledged;
    }
    close(program.ear);
    program.id = 0;
  }

  /// Neither runs.
  void check() {
    ++result_.checks;
    auto store = open(path_, 0);
    if (!store) return broken("does not open: " + store.error().what);
    if (const std::string found = integrity(path_); found != "ok") return broken("damaged: " + found);
    std::int64_t there = base_;
    for (const Program& program : programs_) there += program.next;
    // Beside what was acknowledged, at most what each had in hand when it was killed.
    if (store->last_commit() < there) return broken("lost: fewer commits than were acknowledged");
    if (store->last_commit() > there + programs) return broken("more commits than were asked for");
    for (int p = 0; p < programs; ++p) {
      Program& program = programs_[p];
      for (std::int64_t n = program.checked; n <= program.next; ++n) {
        const auto again = store->commit(command_of(p, n));
        // What it came to is compared with the command there: one that is half there is refused.
        if (!again) return broken("half done: " + again.error().what);
        if (n < program.next && !again->again) return broken("lost: " + command_of(p, n).id);
        if (n == program.next && again->again) ++result_.in_flight;
      }
      program.checked = ++program.next;
    }
    there += programs;
    if (store->last_commit() != there) broken("not once: another number of commits than of commands");
  }

  std::int64_t wanted_;
  std::minstd_rand random_;
  KillResult result_;
  std::string path_;
  std::int64_t base_ = 0;
  std::array<Program, programs> programs_;
};

}  // namespace

KillResult run_kills(std::int64_t kills, std::uint64_t seed) { return Kills(kills, seed).run(); }

}  // namespace wm::faults
