#pragma once
// A store before all of it has been read: enough to answer about one person at a time.
//
// Reading a million records takes many seconds, and somebody stands at the desk. What decides about one
// person are their own records, those of whoever witnessed them, and so on into the past, and what is about
// the whole shop. Only that is read, and the answer is the same. What is asked about others, or entered,
// waits for the store itself.
#include <memory>
#include <vector>

#include "core/decide/decider.h"
#include "db/store.h"

namespace wm::db {

/// Owned by the thread that opened it.
class FirstLook {
 public:
  /// Refuses a file of an earlier version, which the store brings up to date when it opens it, and what
  /// Store::open refuses.
  static Expected<FirstLook> open(const std::string& path, Store::Clock clock);

  FirstLook(FirstLook&&) noexcept;
  FirstLook& operator=(FirstLook&&) noexcept;
  ~FirstLook();

  const ShopDetails& details() const;
  const Zone& zone() const;
  Instant now() const;
  /// As Store::emergency_call.
  EmergencyCall emergency_call() const;
  /// Everybody by their latest details, in the order in which they were entered; of joined entries each.
  const std::vector<Person>& people() const;
  /// Whom the person's records count for.
  PersonId joined(const PersonId& person) const;
  /// Decides about that person as the store would; about others, whose records were not read, it may not.
  /// `entries` has the journal's entries that it rests on, and what was added to them. Good until the next
  /// call.
  struct Answers {
    Decider* decider;
    const std::vector<Entry>* entries;
  };
  Expected<Answers> answers_for(const PersonId& person);

 private:
  struct Impl;
  explicit FirstLook(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace wm::db
