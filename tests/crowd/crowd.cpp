// One desk of a crowd, and what is looked at once the crowd has gone: see README.md.
//   crowd make STORE          a small shop
//   crowd work STORE DESK COMMANDS NOTES
//                             enters that many commands, notes after each what was said; goes on where the
//                             notes end
//   crowd check STORE NOTES…  what of it all is wrong, one a line
//   crowd holds STORE NOTES…  the same where the store may have more than the notes say
#include <QCoreApplication>
#include <QTemporaryDir>
#include <chrono>
#include <fstream>
#include <iostream>
#include <random>
#include <set>
#include <thread>

#include "db/journal/subject.h"
#include "db/move.h"
#include "db/sql/server.h"
#include "db/verify/verify.h"
#include "tests/db/small_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

constexpr Instant opened = evening + hour;
const auto clock_of_day = [] { return opened; };

Expected<Store> open(const std::string& name) { return Store::open(name, clock_of_day, cheap_pins()); }

int refused(const Problem& problem) {
  std::cerr << problem.where << ": " << problem.what << " " << problem.remedy << "\n";
  return 1;
}

int make(const std::string& name) {
  auto store = Store::create(name, {"Hollow Oak Workshop", "America/Chicago", 0}, clock_of_day, cheap_pins());
  if (!store) return refused(store.error());
  const auto done = store->found(small_history());
  return done ? 0 : refused(done.error());
}

RecordId id_of(const std::string& desk, int n) { return "desk" + desk + "-" + std::to_string(n); }

template <class T>
const T& one_of(const std::vector<T>& list, std::mt19937_64& random) {
  return list[random() % list.size()];
}

/// Two assessors, three machines and few hours, so that desks are at the same things; the same command
/// whenever it is asked for.
Command command_of(const std::string& desk, int n, int commands) {
  std::mt19937_64 random(std::hash<std::string>()(id_of(desk, n)));
  static const std::vector<PersonId> assessors = {"mia", "ivo"}, members = {"kim", "lou", "dee"};
  static const std::vector<MachineId> machines = {"b1", "b2"};
  Command command;
  command.id = id_of(desk, n);
  command.by = "dee";
  const auto hours = static_cast<std::uint64_t>(std::max(24, commands / 4));
  const Instant from = opened + static_cast<std::int64_t>(random() % (2 * hours)) * (hour / 2) + hour;
  const auto kind = random() % 10;
  if (kind < 4)
    command.action = own(Presence{one_of(members, random), random() % 2 == 0});
  else if (kind < 8)
    command.action = own(Booking{one_of(members, random), one_of(assessors, random), one_of(machines, random),
                                 "bandsaw", from, from + hour});
  else if (n > 0)
    command.action = own(Cancel{id_of(desk, static_cast<int>(random() % static_cast<unsigned>(n))), "moved"});
  else
    command.action = own(Presence{"kim"});
  return command;
}

/// Lines "yes ID" and "no ID"; the last one may be cut off, and is then not counted.
std::vector<std::pair<std::string, RecordId>> notes_in(const std::string& file) {
  std::vector<std::pair<std::string, RecordId>> notes;
  std::ifstream in(file);
  for (std::string line; std::getline(in, line) && !in.eof();)
    notes.emplace_back(line.substr(0, line.find(' ')), line.substr(line.find(' ') + 1));
  return notes;
}

/// Whether the store or the way to it stood in the way, and not what was asked for.
bool is_of_the_store(const Problem& problem, const std::string& name) {
  return problem.where == shown_name(name);
}

/// Nothing while the store cannot be opened: a server that was killed is a while in coming back.
Store opened_at_last(const std::string& name) {
  for (;;) {
    auto store = open(name);
    if (store) return std::move(*store);
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
  }
}

int work(const std::string& name, const std::string& desk, int commands, const std::string& file) {
  const int begin = static_cast<int>(notes_in(file).size());
  std::ofstream notes(file, std::ios::app);
  Store store = opened_at_last(name);
  for (int n = begin; n < commands;) {
    const Command command = command_of(desk, n, commands);
    const auto done = store.commit(command);
    if (!done && is_of_the_store(done.error(), name)) {
      std::this_thread::sleep_for(std::chrono::milliseconds(20));
      continue;
    }
    notes << (done ? "yes " : "no ") << command.id << std::endl;  // written before the next is begun
    ++n;
  }
  return 0;
}

/// By what stands in the journal alone.
std::vector<const Entry*> standing_bookings(const Store& store) {
  std::set<RecordId> ended;
  for (const Entry& entry : store.entries())
    if (const auto* cancel = as<Cancel>(entry.fact); cancel != nullptr && !entry.voided)
      ended.insert(cancel->booking);
  std::vector<const Entry*> standing;
  for (const Entry& entry : store.entries())
    if (as<Booking>(entry.fact) != nullptr && !entry.voided && !ended.contains(entry.id))
      standing.push_back(&entry);
  return standing;
}

int double_bookings(const Store& store) {
  const auto standing = standing_bookings(store);
  int twice = 0;
  for (const Entry* one : standing) {
    for (const Entry* other : standing) {
      if (one->order >= other->order) continue;
      const Booking &a = *as<Booking>(one->fact), &b = *as<Booking>(other->fact);
      const bool meet = a.from < b.to && b.from < a.to;
      const bool shared = a.machine == b.machine || a.person == b.person || a.assessor == b.assessor ||
                          a.person == b.assessor || a.assessor == b.person;
      if (meet && shared) {
        std::cout << "booked twice: " << one->id << " and " << other->id << "\n";
        ++twice;
      }
    }
  }
  return twice;
}

int order_mistakes(const Store& store) {
  int wrong = 0;
  std::int64_t order = 0, commit = 0;
  Instant recorded = first_instant;
  for (const Entry& entry : store.entries()) {
    if (entry.order != order + 1 || entry.commit < commit || entry.commit > commit + 1 ||
        entry.recorded < recorded) {
      std::cout << "out of order: " << entry.id << "\n";
      ++wrong;
    }
    order = entry.order, commit = entry.commit, recorded = entry.recorded;
  }
  return wrong;
}

/// What the verifier finds, which knows files alone: a shop on a server is moved into one first.
int findings(const std::string& name) {
  QTemporaryDir folder;
  std::string file = name;
  if (is_on_server(name)) {
    file = folder.filePath("shop.wm").toStdString();
    if (const auto moved = move_store(name, file, cheap_pins()); !moved) return refused(moved.error());
  }
  const auto report = verify::look_through(file, {});
  if (!report) return refused(report.error());
  for (const auto& one : report->findings.kept()) std::cout << "found by the verifier: " << one.place << "\n";
  return static_cast<int>(report->findings.kept().size());
}

int check(const std::string& name, const std::vector<std::string>& files, bool may_have_more) {
  const auto store = open(name);
  if (!store) return refused(store.error());
  int lost = 0, unasked = 0;
  std::size_t yes = 0, no = 0, entered = 0;
  for (const std::string& file : files) {
    for (const auto& [said, id] : notes_in(file)) {
      const bool there = store->entry(id) != nullptr;
      (said == "yes" ? yes : no) += 1;
      lost += said == "yes" && !there ? 1 : 0;
      unasked += said == "no" && there ? 1 : 0;
    }
  }
  for (const Entry& entry : store->entries()) entered += entry.id.rfind("desk", 0) == 0 ? 1 : 0;
  const auto more = may_have_more ? 0 : static_cast<std::int64_t>(entered) - static_cast<std::int64_t>(yes);
  const int twice = double_bookings(*store), order = order_mistakes(*store), found = findings(name);
  std::cout << yes + no << " commands, " << yes << " entered, " << no << " refused; " << lost << " lost, "
            << more + unasked << " twice or unasked, " << twice << " double bookings of "
            << standing_bookings(*store).size() << ", " << order << " out of order, " << found
            << " found by the verifier\n";
  return lost == 0 && more == 0 && unasked == 0 && twice == 0 && order == 0 && found == 0 ? 0 : 1;
}

}  // namespace

int main(int argc, char** argv) {
  make_application();
  const std::vector<std::string> words(argv + 1, argv + argc);
  if (words.size() == 2 && words[0] == "make") return make(words[1]);
  if (words.size() == 5 && words[0] == "work") return work(words[1], words[2], std::stoi(words[3]), words[4]);
  if (words.size() >= 3 && (words[0] == "check" || words[0] == "holds"))
    return check(words[1], {words.begin() + 2, words.end()}, words[0] == "holds");
  std::cerr << "crowd make STORE | work STORE DESK COMMANDS NOTES | check|holds STORE NOTES…\n";
  return 2;
}
