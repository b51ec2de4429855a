#pragma once
// The store: one SQLite file or one database of a PostgreSQL server, one way in (commit), and plain reads
// out.
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/decide/current.h"
#include "core/diary/hours.h"
#include "core/ledger/root.h"
#include "core/ledger/signing.h"
#include "core/problem.h"
#include "core/records/shop.h"
#include "db/command.h"
#include "db/open_sheets.h"

namespace wm::db {

struct Floor;
struct LockOn;
struct StartNow;

/// What a new shop is. `demo_clock` is for the demo shop: how many seconds its clock is ahead of the real
/// one.
struct ShopDetails {
  std::string name;
  std::string zone;
  std::int64_t demo_clock = 0;
  friend bool operator==(const ShopDetails&, const ShopDetails&) = default;
};

/// What a commit appended.
struct Committed {
  std::int64_t number = 0;  // the commit's place in the one order
  std::vector<Entry> entries;
  PersonId person;     // whose details or PIN it was; of EnterPerson: the id chosen
  bool again = false;  // the same command had been committed before; nothing was added
  /// Whose standings became other ones by it, in order of (person, target). Of `found`: none.
  std::vector<Shift> shifts;
};

/// What a test sets otherwise; the program takes it as it is.
struct StoreOptions {
  /// Whether a folder lies on another computer. Nothing: the system is asked.
  std::function<bool(const std::string& folder)> on_network;
  /// Work and memory of one PIN's hash. 0: what libsodium advises for somebody who waits.
  unsigned long long pin_operations = 0;
  std::size_t pin_memory = 0;
  /// What signing keys are sealed with beside a PIN: this computer's own, never in the store. Secret{}: none.
  ledger::Secret secret;
  /// Seconds since some moment, whatever the clock is set to, by which a clock that jumps is found out.
  /// Empty: only whether it lies behind the last entry is looked at.
  std::function<std::int64_t()> passed;
  /// A file outside the store in which the wait after wrong PINs outlives the program; empty: it does not.
  std::string pin_wait;
  /// How long another program's write is waited for.
  int busy_ms = 1500;
  /// This computer's own clock in milliseconds since 1970, which a server's is compared with. Empty: the
  /// system's.
  std::function<std::int64_t()> own_clock_ms = {};
  /// What this computer comes in as. Empty: what the server says; in a file there is no other.
  std::string login = {};
};

/// All that a file holds, read and worked out on any thread, for a store to be opened with.
class ReadAhead {
 public:
  /// Brings an older file up to date; refuses what Store::open refuses.
  static Expected<ReadAhead> read(const std::string& path, const StoreOptions& options = {});
  ReadAhead(ReadAhead&&) noexcept;
  ReadAhead& operator=(ReadAhead&&) noexcept;
  ~ReadAhead();

 private:
  friend class Store;
  struct Content;
  explicit ReadAhead(std::unique_ptr<Content> content);
  std::unique_ptr<Content> content_;
};

/// Named by the path of its file, or by the server's connection URI (postgresql://desk@host/shop).
/// Owned by the thread that opened it; another thread's call is a mistake of the program (asserted).
class Store {
 public:
  /// Gives the real time; a test sets its own.
  using Clock = std::function<Instant()>;

  /// Makes a new file, refuses one that exists; on a server, fills a database that is there and empty.
  static Expected<Store> create(const std::string& path, const ShopDetails& details, Clock clock,
                                StoreOptions options = {});
  /// Opens a store, migrating an older one. Refuses what is not ours, from a newer version, on a network
  /// folder, locked by another program or damaged, in a sentence each.
  static Expected<Store> open(const std::string& path, Clock clock, StoreOptions options = {});
  /// The same with what was read ahead; only what was committed since is read.
  static Expected<Store> open(const std::string& path, Clock clock, StoreOptions options, ReadAhead ahead);
  Store(Store&&) noexcept;
  Store& operator=(Store&&) noexcept;
  ~Store();

  const ShopDetails& details() const;
  /// Where it is, as it was opened: a file's path, or a server's URI.
  const std::string& path() const;
  /// The shop's clock: the real one, or the demo shop's.
  Instant now() const;

  /// The only way in. All of it or nothing; a Problem says what stood in the way and what would lift it.
  Expected<Committed> commit(const Command& command);
  /// Several commands in one transaction, as import needs: all or nothing; the Problem names the first
  /// refused
  /// (`where`: "command N").
  Expected<Committed> commit_all(const std::vector<Command>& commands);
  /// Commands that make a shop out of files of the past: as commit_all, dated by their own `at` and taken in
  /// its order (those without come first), `recorded` then too, by nobody. Only on a store that is empty.
  Expected<Committed> found(const std::vector<Command>& commands);

  /// Whether the file may hold what the last commit said had failed: the disk failed as it was made final,
  /// and nothing could be read since. The same command once more, under the same id, is entered once.
  bool unsure() const;

  /// How many seconds the clock has jumped, ahead or (less than 0) back: nothing but ConfirmClock is entered
  /// then. 0: it can be believed.
  std::int64_t clock_jump() const;
  /// Whether the rulebook in force asks that a second person vouches for this.
  bool asks_for_second(const Action& action) const;

  /// The role of whoever knows this PIN; wrong ones slow the station down.
  Expected<Role> sit_down(const PersonId& person, const std::string& pin);
  /// What this computer is for, by whom the server knows it as (empty: it is the shop's only one), and what
  /// was said of the others.
  Station station() const;
  const std::string& login() const;
  /// Whether quizzes are taken at this one, or where they are.
  Expected<void> quiz_here() const;
  std::vector<StationTold> stations() const;
  /// What is said in an emergency, as it was entered last; empty fields: nothing was.
  EmergencyCall emergency_call() const;
  /// Whether somebody has chosen a PIN.
  bool has_pin(const PersonId& person) const;
  /// Hours, and how the shop books, as all that counts now says; people by whom they count for.
  ShopHours hours() const;
  DiaryRules diary_rules() const;
  /// What takes time within [from, to) now: bookings that stand, but for those to which nobody came.
  std::vector<Booked> booked(const Interval& within) const;
  /// The shop at one moment, and locks that are on then (db/floor.h), by all that counts or as known then.
  Floor floor(Instant at, std::optional<Instant> known = std::nullopt) const;
  std::vector<LockOn> locks_on(Instant at, std::optional<Instant> known = std::nullopt) const;
  /// Whether somebody may start a unit now, for that target.
  StartNow start_now(const PersonId& person, const MachineId& machine, const TargetName& target);
  /// Whether somebody's role lets them enter this, or who may; nothing else about it is looked at.
  Expected<void> permitted(const PersonId& by, const Action& action) const;
  /// Whether a booking that was entered could still be made as it is; what has come between, if not.
  Expected<void> still_stands(const RecordId& booking);
  /// The days of bookings to which somebody did not come, and the last on which the shop's rule about that
  /// lets nothing be booked for them, if it does.
  std::vector<Day> days_not_come(const PersonId& person) const;
  std::optional<Day> rests_through(const PersonId& person) const;
  /// From when somebody is 18; nothing where no birth date is known.
  std::optional<Instant> turns_18(const PersonId& person) const;
  /// When an assessor first teaches somebody there, past or to come; and whether the rules of that moment ask
  /// that another checks them out from then on.
  std::optional<Instant> first_taught(const PersonId& assessor, const PersonId& person,
                                      const TargetName& target) const;
  bool another_checks_out(const TargetName& target, Instant at);

  /// Whether a check-out there, at that time, is witnessed by two assessors.
  bool two_check_out(const TargetName& target, Instant at);

  /// Run sheets in hand and not signed yet, in the order in which they were opened; for each person and
  /// target the latest.
  std::vector<OpenSheet> open_sheets() const;
  /// As db::saw_marks.
  bool saw_marks(const RecordId& checkout, const PersonId& person) const;

  /// The role somebody has now, or had at `known` as was known then.
  std::optional<Role> role_of(const PersonId& person, std::optional<Instant> known = std::nullopt) const;

  /// What decisions rest on, with joined entries of one person made one, as known at `known` (or all).
  Shop shop(std::optional<Instant> known = std::nullopt) const;
  /// The same as all that is known now, kept in memory and brought up to every commit. Its references are
  /// good until the next commit or refresh.
  Current& current();
  /// The journal, in order.
  const std::vector<Entry>& entries() const;
  /// Those of a kind ("issued"), struck out or not, in order, found without looking through the others. Good
  /// until the next commit or refresh.
  std::vector<const Entry*> of_kind(std::string_view kind) const;
  const std::vector<Person>& people() const;
  const std::vector<Rulebook>& rulebooks() const;
  /// With `known`: their details as they were known then; nothing where they were not known yet.
  std::optional<Person> person(const PersonId& id, std::optional<Instant> known = std::nullopt) const;
  /// Everybody as known then, in the order in which they were entered.
  std::vector<Person> people_known(Instant known) const;
  /// The journal's entry of that id, or null. Good until the next commit or refresh.
  const Entry* entry(const RecordId& id) const;
  /// Every birth date that was entered, those struck out too, with whom it counts for now.
  std::vector<std::pair<PersonId, Day>> births() const;
  /// Whether BlankRecord would find anything in it: a note, free text, details that have been corrected
  /// since.
  bool has_text_to_erase(const RecordId& record) const;
  /// The id that a person's records count for: itself, or what it was joined to.
  PersonId joined(const PersonId& id, std::optional<Instant> known = std::nullopt) const;

  /// The head of the ledger's tree, as it is or as it was with all that had been recorded by `known`.
  Expected<ledger::Head> head(std::optional<Instant> known = std::nullopt) const;
  /// A number that grows with every commit, by whatever program, as of the last read.
  std::int64_t last_commit() const;
  /// Reads what other programs have committed since; true where there was something.
  Expected<bool> refresh();
  /// Calls back from the owning thread's event loop as soon as another desk has committed, so that refresh
  /// has something to read; false where the store can't tell, and is to be looked at now and then.
  bool listen(std::function<void()> told);

 private:
  struct Impl;
  /// Without what the file holds.
  static Expected<std::unique_ptr<Impl>> connect(const std::string& path, Clock clock, StoreOptions options);
  explicit Store(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace wm::db
