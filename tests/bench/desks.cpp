// One desk among several on one store, as a program of its own: see README.md, "Several desks".
//   desks make STORE PART          world W cut to that part, in a file
//   desks take FROM TO             the same in another place
//   desks work STORE DESK SECONDS  the shop's mixed work, one command after the other; says "ready", begins
//   at a line
//                                  of its input, and prints one line a command: its kind, and the seconds it
//                                  took
//   desks bare FILE SECONDS        what no desk on a file can be faster than: as many bytes, committed by
//   SQLite
#include <sodium.h>

#include <QCoreApplication>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <random>

#include "db/move.h"
#include "db/sql/connection.h"
#include "db/store.h"
#include "store_file.h"

using namespace wm;
using namespace wm::bench;
using Seconds = std::chrono::duration<double>;
using std::chrono::steady_clock;

namespace {

template <class T>
T must(Expected<T> done) {
  if (done) return std::move(*done);
  std::fprintf(stderr, "%s: %s\n", done.error().where.c_str(), done.error().what.c_str());
  std::exit(1);
}

const PersonId manager = "desk-manager";

/// An evening after the last record of W, which every desk's clock begins at.
Instant evening_of(const db::Store& store) { return store.entries().back().recorded + 86400; }

/// W, and somebody who may sit down; times of the day at which everybody can be booked.
int make(const std::string& path, double part) {
  const World world = make_world(WorldSize::part_of(part));
  write_store(path, world);
  auto store = must(db::Store::open(path, [&] { return world.now + 7 * 86400; }));
  const auto enter = [&](const std::string& id, const PersonId& by, db::Action action) {
    db::Command command;
    command.id = id;
    command.by = by;
    command.action = std::move(action);
    must(store.commit(command));
  };
  db::Person person;
  person.id = person.number = manager;
  person.given = "Desk";
  enter("desk-person", "", db::EnterPerson{person, std::nullopt});
  enter("desk-role", "", db::EnterShopFact{db::RoleGiven{manager, db::Role::manager}});
  enter("desk-pin", "", db::ChoosePin{manager, "845210"});
  return 0;
}

/// What one desk does: of twenty commands of an evening, and for whom, by a seed of its own.
class Desk {
 public:
  Desk(db::Store& store, const std::string& name)
      : store_(store), name_(name), random_(std::hash<std::string>()(name)) {
    for (const db::Person& person : store.people())
      if (person.id != manager) people_.push_back(person.id);
    for (const db::Entry* entry : store.of_kind("machine_added")) {
      const auto& shop_fact = std::get<db::ShopFact>(entry->fact);
      machines_.push_back(std::get<db::MachineAdded>(shop_fact));
    }
    for (const db::Entry* entry : store.of_kind("appoint"))
      assessors_.push_back(std::get<Appoint>(std::get<Fact>(entry->fact)).person);
  }

  /// The kind of what was done; false where it was refused, as some of an evening's work is.
  std::pair<const char*, bool> one() {
    const auto kind = random_() % 20;
    if (kind < 8) return enter("presence", own(db::Presence{any(people_), random_() % 2 == 0}));
    if (kind < 11) return enter("paper", db::EnterFact{Document{any(people_), "induction", std::nullopt}});
    if (kind < 14) return enter("waiting", own(db::Waiting{any(people_), any(machines_).machine_class}));
    if (kind < 15 && !bookings_.empty()) return cancel();
    if (kind < 18) return book();
    return enter("use", db::EnterFact{Use{any(people_), any(machines_).machine_class}});
  }

 private:
  static db::Action own(db::ShopFact fact) { return db::EnterShopFact{std::move(fact)}; }
  template <class T>
  const T& any(const std::vector<T>& list) {
    return list[random_() % list.size()];
  }
  std::pair<const char*, bool> enter(const char* kind, db::Action action) {
    db::Command command;
    command.id = name_ + "-" + std::to_string(++n_);
    command.by = manager;
    command.action = std::move(action);
    return {kind, store_.commit(command).has_value()};
  }
  std::pair<const char*, bool> cancel() {
    const RecordId id = bookings_.back();
    bookings_.pop_back();
    return enter("cancel", own(db::Cancel{id, "ill"}));
  }
  std::pair<const char*, bool> book() {
    const db::MachineAdded& unit = any(machines_);
    const Instant from = store_.now() + 3600 * static_cast<std::int64_t>(1 + random_() % 2000);
    db::Booking booking{any(people_), any(assessors_), unit.machine, unit.machine_class, from, from + 3600};
    booking.purpose = db::Purpose::teach;
    const auto done = enter("booking", own(booking));
    if (done.second) bookings_.push_back(name_ + "-" + std::to_string(n_));
    return done;
  }

  db::Store& store_;
  std::string name_;
  std::mt19937_64 random_;
  std::vector<PersonId> people_, assessors_;
  std::vector<db::MachineAdded> machines_;
  std::vector<RecordId> bookings_;
  int n_ = 0;
};

int work(const std::string& name, const std::string& desk, double seconds) {
  Instant now{};
  db::StoreOptions options;
  options.busy_ms = 60'000;  // a desk waits its turn here, however many there are
  auto store = must(db::Store::open(
      name, [&] { return now; }, options));
  now = evening_of(store);
  (void)store.current();
  Desk at(store, desk);
  std::cout << "ready" << std::endl;
  std::string go;
  std::getline(std::cin, go);
  const auto began = steady_clock::now();
  std::vector<std::pair<std::string, double>> took;
  while (Seconds(steady_clock::now() - began).count() < seconds) {
    const auto start = steady_clock::now();
    const auto [kind, entered] = at.one();
    took.emplace_back(entered ? kind : std::string(kind) + "-refused",
                      Seconds(steady_clock::now() - start).count());
  }
  for (const auto& [kind, one] : took) std::printf("%s %.6f\n", kind.c_str(), one);
  return 0;
}

/// A table with one index, a row a commit, by SQLite as it is asked to keep the shop's file.
int bare(const std::string& file, double seconds) {
  db::Connection connection(file, 60'000);
  must(connection.settle().map([] { return true; }));
  must(connection
           .run(QString("CREATE TABLE IF NOT EXISTS rows (n INTEGER PRIMARY KEY, id TEXT UNIQUE, leaf TEXT)"))
           .map([] { return true; }));
  std::cout << "ready" << std::endl;
  std::string go;
  std::getline(std::cin, go);
  const auto began = steady_clock::now();
  std::vector<double> took;
  std::mt19937_64 random(std::random_device{}());
  const QString leaf(300, 'w');
  while (Seconds(steady_clock::now() - began).count() < seconds) {
    const auto start = steady_clock::now();
    auto transaction = must(db::Transaction::begin(connection));
    must(connection.run("INSERT INTO rows (id, leaf) VALUES (?, ?)",
                        {QString::number(random()) + QString::number(random()), leaf}));
    must(transaction.commit().map([] { return true; }));
    took.push_back(Seconds(steady_clock::now() - start).count());
  }
  for (const double one : took) std::printf("row %.6f\n", one);
  return 0;
}

int take(const std::string& from, const std::string& to) {
  must(db::move_store(from, to));
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  int count = 1;
  char* first[] = {argv[0], nullptr};
  const QCoreApplication application(count, first);
  if (sodium_init() < 0) return 2;
  const std::vector<std::string> words(argv + 1, argv + argc);
  if (words.size() == 3 && words[0] == "make") return make(words[1], std::atof(words[2].c_str()));
  if (words.size() == 3 && words[0] == "take") return take(words[1], words[2]);
  if (words.size() == 4 && words[0] == "work") return work(words[1], words[2], std::atof(words[3].c_str()));
  if (words.size() == 3 && words[0] == "bare") return bare(words[1], std::atof(words[2].c_str()));
  std::cerr << "desks make STORE PART | take FROM TO | work STORE DESK SECONDS | bare FILE SECONDS\n";
  return 2;
}
