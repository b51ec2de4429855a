#include "db/engine.h"

#include "db/refuse.h"
#include "db/sql/dialect.h"

namespace wm::db {

Expected<void> Store::Impl::load() {
  current_.read_anew();
  const auto others = connection->value(dialect::others_commits);
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
  const auto others = connection->value(dialect::others_commits);
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
  auto erased =
      connection->run("SELECT 1 FROM records WHERE kind IN ('erased', 'blanked') AND ord > ? LIMIT 1",
                      {static_cast<qlonglong>(order)});
  if (!erased) return tl::make_unexpected(erased.error());
  const auto row = connection->next(**erased);
  (*erased)->finish();
  return row;
}

Expected<Committed> Store::Impl::in_transaction(const std::vector<const Command*>& commands, bool founding) {
  refused_ = commands.size();  // until one is looked at, none is to blame
  mark_ = memory.mark();
  auto transaction = Transaction::begin(*connection);
  if (!transaction) return tl::make_unexpected(transaction.error());
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
  // Whether the file has it is known only once it has been read again.
  stale_ = stale_ || !kept;
  return kept.map([&] { return std::move(all); });
}

Expected<Committed> Store::Impl::carry_out(const std::vector<const Command*>& commands, bool founding) {
  auto done = in_transaction(commands, founding);
  // Memory must not be ahead of the file, even where the disk cannot be read to put it right.
  if (!done && memory.last_commit() != mark_.commit) {
    memory.back_to(mark_);
    current_.read_anew();
  }
  const auto blanks = [](const Command* c) {
    return std::holds_alternative<BlankPerson>(c->action) || std::holds_alternative<BlankRecord>(c->action);
  };
  if (done && std::any_of(commands.begin(), commands.end(), blanks)) {
    (void)connection->run(QString(dialect::empty_log));
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
