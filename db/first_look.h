#pragma once
// A store before all of it has been read: enough to answer about one person at a time.
//
// Reading a million records takes many seconds, and somebody stands at the desk. What decides about one
// person are their own records, those of whoever witnessed them, and so on into the past, and what is about
// the whole shop. Only that is read, and the answer is the same. What is asked about others, or entered,
// waits for the store itself.
#include <map>
#include <memory>
#include <set>
#include <vector>

#include "core/decide/decider.h"
#include "db/journal/memory.h"
#include "db/journal/some_rows.h"
#include "db/store.h"

namespace wm::db {

/// Owned by the thread that opened it.
class FirstLook {
 public:
  /// Refuses a file of an earlier version, which the store brings up to date when it opens it, and what
  /// Store::open refuses.
  static Expected<FirstLook> open(const std::string& path, Store::Clock clock);

  const ShopDetails& details() const { return details_; }
  const Zone& zone() const { return zone_; }
  Instant now() const { return clock_() + details_.demo_clock; }
  /// Everybody by their latest details, in the order in which they were entered; of joined entries each.
  const std::vector<Person>& people() const { return people_; }
  /// Whom the person's records count for.
  PersonId joined(const PersonId& person) const;
  /// Decides about that person as the store would; about others, whose records were not read, it may not.
  /// Good until the next call.
  Expected<Decider*> decider_for(const PersonId& person);

 private:
  FirstLook(std::unique_ptr<Connection> connection, ShopDetails details, Zone zone, Store::Clock clock);
  Expected<void> read_shop();
  /// The person's records and those of everybody they rest on.
  Expected<void> read(const PersonId& person);
  Memory memory() const;

  std::unique_ptr<Connection> connection_;
  ShopDetails details_;
  Zone zone_;
  Store::Clock clock_;
  Proved proved_;
  std::map<std::int64_t, LeafContent> read_;  // by order
  std::set<PersonId> persons_;                // whose records are among them
  std::vector<Person> people_;
  std::map<PersonId, std::vector<PersonId>> aliases_;  // of those with several entries
  std::unique_ptr<Decider> decider_;
};

}  // namespace wm::db
