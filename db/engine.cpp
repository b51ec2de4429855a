#include "db/engine.h"

#include <chrono>
#include <thread>

#include "db/refuse.h"

namespace wm::db {
namespace {

constexpr int most_attempts = 20;

std::int64_t now_ms() {
  return std::chrono::duration_cast<std::chrono::milliseconds>(
             std::chrono::system_clock::now().time_since_epoch())
      .count();
}

}  // namespace

Expected<void> Store::Impl::compare_clocks() {
  const QString question = connection->dialect().clock;
  if (question.isEmpty()) return {};
  const auto own = options.own_clock_ms ? options.own_clock_ms : now_ms;
  const std::int64_t before = own();
  const auto theirs = connection->value(question);
  if (!theirs) return tl::make_unexpected(theirs.error());
  const std::int64_t ahead = theirs->toLongLong() - (before + (own() - before) / 2);
  server_ahead_ = (ahead + (ahead < 0 ? -500 : 500)) / 1000;
  return {};
}

Expected<void> Store::Impl::load() {
  current_.read_anew();
  const auto others = connection->value(connection->dialect().others_commits);
  if (!others) return tl::make_unexpected(others.error());
  Memory fresh;
  if (auto done = read_new(*connection, fresh); !done) return done;
  memory = std::move(fresh);
  others_ = *others;
  stale_ = false;
  return {};
}

Expected<void> Store::Impl::load_again() {
  auto reading = Transaction::begin_reading(*connection);
  if (!reading) return tl::make_unexpected(reading.error());
  if (auto done = load(); !done) return done;
  return reading->commit();
}

Expected<bool> Store::Impl::load_new() {
  const auto others = connection->value(connection->dialect().others_commits);
  if (!others) return tl::make_unexpected(others.error());
  if (*others == others_ && !stale_) return false;
  const std::int64_t before = memory.last_commit();
  const auto blanked = erased_since(memory.last_order());
  if (!blanked) return tl::make_unexpected(blanked.error());
  // What is blanked lies before: only reading all of it again takes it out.
  if (*blanked || stale_) {
    if (auto done = load(); !done) return tl::make_unexpected(done.error());
    return memory.last_commit() != before;
  }
  const Memory::Mark mark = memory.mark();
  if (auto done = read_new(*connection, memory); !done) {
    memory.back_to(mark);
    return tl::make_unexpected(done.error());
  }
  others_ = *others;
  return memory.last_commit() != before;
}

Expected<bool> Store::Impl::catch_up() {
  auto reading = Transaction::begin_reading(*connection);
  if (!reading) return tl::make_unexpected(reading.error());
  auto added = load_new();
  if (!added) return added;
  return reading->commit().map([&] { return *added; });
}

Expected<void> Store::Impl::adopt(Memory read, CurrentShop worked_out) {
  memory = std::move(read);
  current_ = std::move(worked_out);
  return catch_up().map([](bool) {});
}

Expected<bool> Store::Impl::erased_since(std::int64_t order) {
  // The kinds are compared here: asked for these two alone, PostgreSQL looks for them among all records there
  // are.
  auto later =
      connection->run("SELECT kind FROM records WHERE ord > ? ORDER BY ord", {static_cast<qlonglong>(order)});
  if (!later) return tl::make_unexpected(later.error());
  auto row = connection->next(**later);
  bool erased = false;
  for (; row && *row && !erased; row = connection->next(**later)) {
    const QString kind = (*later)->value(0).toString();
    erased = kind == "erased" || kind == "blanked";
  }
  (*later)->finish();
  return row.map([&](bool) { return erased; });
}

Expected<Committed> Store::Impl::in_transaction(const std::vector<const Command*>& commands, bool founding) {
  refused_ = commands.size();  // until one is looked at, none is to blame
  mark_ = memory.mark();
  auto transaction = Transaction::begin(*connection);
  if (!transaction) return tl::make_unexpected(transaction.error());
  if (auto compared = compare_clocks(); !compared) return tl::make_unexpected(compared.error());
  if (auto fresh = load_new(); !fresh) return tl::make_unexpected(fresh.error());
  mark_ = memory.mark();
  if (!founding) {  // what others changed is not this one's doing
    (void)current();
    (void)current_.take_shifts();
  }
  if (founding && memory.last_commit() != 0)
    return refuse("store", "The shop has entries already.", "Make a new shop to bring in its history.");
  leaves_.clear();
  Committed all;
  all.again = true;
  for (refused_ = 0; refused_ < commands.size(); ++refused_) {
    auto one = enter(*commands[refused_], founding);
    if (!one) return one;
    all.number = one->number;
    all.again = all.again && one->again;
    if (!one->person.empty()) all.person = one->person;
    std::move(one->entries.begin(), one->entries.end(), std::back_inserter(all.entries));
  }
  if (auto grown = grow_tree(*connection, leaves_); !grown) return tl::make_unexpected(grown.error());
  auto kept = transaction->commit();
  // Whether the store has it is known only once it has been read again; a server says which came first.
  stale_ = stale_ || (!kept && !connection->crossed());
  if (kept && connection->on_server()) others_ = static_cast<qlonglong>(memory.last_order() + 1);
  return kept.map([&] { return std::move(all); });
}

Expected<Committed> Store::Impl::attempt(const std::vector<const Command*>& commands, bool founding) {
  auto done = in_transaction(commands, founding);
  // Memory must not be ahead of the file, even where the disk cannot be read to put it right.
  if (!done && memory.last_commit() != mark_.commit) {
    memory.back_to(mark_);
    current_.read_anew();
  }
  return done;
}

Expected<Committed> Store::Impl::carry_out(const std::vector<const Command*>& commands, bool founding) {
  auto done = attempt(commands, founding);
  // The same commands once more are entered once: their ids see to that, even where the first time it went
  // well and only the server's word got lost.
  const auto patience = std::chrono::steady_clock::now() + std::chrono::milliseconds(options.busy_ms);
  for (int n = 1; !done && (connection->crossed() || connection->lost()) && n < most_attempts; ++n) {
    if (std::chrono::steady_clock::now() > patience) break;
    std::this_thread::sleep_for(std::chrono::milliseconds(connection->lost() ? 10 * n : n));
    done = attempt(commands, founding);
  }
  const auto blanks = [](const Command* c) {
    return std::holds_alternative<BlankPerson>(c->action) || std::holds_alternative<BlankRecord>(c->action);
  };
  if (done && std::any_of(commands.begin(), commands.end(), blanks)) {
    if (const QString empty = connection->dialect().after_blanking; !empty.isEmpty())
      (void)connection->run(empty);
    // Memory must not know what was blanked either.
    if (!load_again()) stale_ = true;
  }
  if (done && !founding) {
    (void)current();
    done->shifts = current_.take_shifts();
  }
  return done;
}

}  // namespace wm::db
