#pragma once
// What stands behind Store: the file, its content in memory, and the one way in.
#include <memory>
#include <thread>

#include "db/clock_watch.h"
#include "db/journal/current_shop.h"
#include "db/journal/rows.h"
#include "db/pin.h"
#include "db/plan.h"
#include "db/store.h"

namespace wm::db {

struct Store::Impl {
  std::unique_ptr<Connection> connection;
  ShopDetails details;
  Zone zone = Zone::utc();
  Clock clock;
  StoreOptions options;
  Memory memory;
  PinDelay delay;
  ClockWatch watch;
  std::thread::id owner = std::this_thread::get_id();

  /// Reads the whole file. Inside a transaction, so that all of it is of one moment.
  Expected<void> load();
  /// The same in a transaction of its own.
  Expected<void> load_again();
  /// Reads what other programs have added; true where there was something. Inside a transaction.
  Expected<bool> load_new();
  /// As load_new, in a transaction of its own.
  Expected<bool> catch_up();
  /// Begins with what was read before, and reads on from there.
  Expected<void> adopt(Memory read, CurrentShop worked_out);
  /// By the server's clock where the store is on one: what desks' clocks differ by then does not matter.
  Instant now() const { return clock() + server_ahead_ + details.demo_clock; }
  /// Finds out how far the server's clock is ahead of this computer's.
  Expected<void> compare_clocks();

  /// Whom the server knows this computer as, and what it is for.
  std::string login;
  Station station() const;
  Station entered_at(const Command& command) const;

  /// The shop as known now.
  Current& current() { return current_.of(memory, zone); }

  /// All commands or none, in this order.
  Expected<Committed> carry_out(const std::vector<const Command*>& commands, bool founding);
  /// The place in the list of the command that was refused last.
  std::size_t refused() const { return refused_; }
  std::int64_t clock_jump() const;
  bool unsure() const { return stale_; }
  Expected<Role> role_at_station(const PersonId& person, const std::string& pin);

 private:
  /// As in_transaction; memory is never left ahead of the store.
  Expected<Committed> attempt(const std::vector<const Command*>& commands, bool founding);
  Expected<Committed> in_transaction(const std::vector<const Command*>& commands, bool founding);
  Expected<Committed> enter(const Command& command, bool founding);
  Expected<Committed> write(const Command& command, const Case& c, Plan plan);
  /// Refuses a command that is not the one entered under its id.
  Expected<void> check_same(const Command& command, const CommitLine& line,
                            const std::vector<Entry>& entries);
  Expected<void> check_command(const Command& command, Instant at) const;
  Expected<void> check_permission(const Command& command, Instant at, Instant recorded);
  /// Whether nobody can sit down as a manager yet: then the first one comes in by nobody.
  bool without_manager(Instant t) const;
  /// Refuses all but its confirmation while the clock can't be believed.
  Expected<void> check_clock(const Command& command, Instant clock_now) const;
  /// That whoever must vouch for it too does, with their PIN.
  Expected<void> check_vouched(const Command& command, Instant recorded);
  /// Whose of the person's entries the PIN is; wrong ones slow the station down.
  Expected<PersonId> verify_pin(const PersonId& person, const std::string& pin);
  Expected<PinChosen> choose_pin(const PersonId& person, const std::string& pin) const;
  Expected<std::optional<Signer>> signer(const PersonId& person, const std::string& pin);
  /// Writes an entry and takes note of its leaf.
  Expected<ledger::Hash> add(const Entry& entry, const Origin& origin, const Rulebook* rulebook);
  /// Whether the file says that somebody was erased later in the order.
  Expected<bool> erased_since(std::int64_t order);

  std::int64_t server_ahead_ = 0;  // seconds
  QVariant others_;                // changes when another program commits
  /// Memory may differ from the file, which could not be read: all of it is read before it is used.
  bool stale_ = false;
  std::vector<ledger::Hash> leaves_;  // entered in this transaction
  Memory::Mark mark_;                 // what memory goes back to where the transaction fails
  CurrentShop current_;
  std::size_t refused_ = 0;
};

}  // namespace wm::db
