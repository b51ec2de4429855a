#pragma once
// A shop in memory that is kept current: everybody's standings over all time, and what one more record
// changes.
#include <memory>
#include <optional>
#include <string_view>
#include <vector>

#include "core/decide/answers.h"
#include "core/decide/changes.h"
#include "core/decide/decider.h"
#include "core/records/shop.h"

namespace wm {

/// A standing that became another: from the first instant at which it did, to the first from which it is
/// again what it was (nothing: never).
struct Shift {
  PersonId person;
  TargetName target;
  Instant from;
  std::optional<Instant> until;
  friend bool operator==(const Shift&, const Shift&) = default;
};

/// All answers are those of a Decider over the same records. Names that the shop does not have are nobody and
/// nothing. Not safe for use from two threads at once.
class Current {
 public:
  /// As known at `known`; nothing: all that is known, less what has been struck out.
  explicit Current(const Shop& shop, std::optional<Instant> known = std::nullopt);
  ~Current();
  Current(Current&&) noexcept;
  Current& operator=(Current&&) noexcept;

  /// Every other question, answered from what is kept here: good for as long as this lives, its references
  /// until the next call of anything else here.
  Decider& decider();

  Rung rung(std::string_view person, std::string_view target, Instant at);
  /// The whole answer with its reasons. It stays where it is until the next call of anything here; asking
  /// again for an instant at which nothing has changed since is cheap.
  const StandingAnswer& standing(std::string_view person, std::string_view target, Instant at);
  Steps<Rung> standing_steps(std::string_view person, std::string_view target);
  /// The same from the records, without looking it up.
  Steps<Rung> standing_steps_anew(std::string_view person, std::string_view target);
  /// Everyone of the shop and every target that any known rulebook has, both sorted, and the standing at `at`
  /// of each on each: all of the first person's, then all of the second's.
  std::vector<PersonId> people() const;
  std::vector<TargetName> targets() const;
  std::vector<Rung> everyone(Instant at) const;
  bool able_to_assess(std::string_view person, std::string_view target, Instant at);
  bool able_to_supervise(std::string_view person, std::string_view target, Instant at);
  /// Everyone whose standing is at least `at_least`, sorted.
  std::vector<PersonId> who(std::string_view target, Instant at, Rung at_least);

  /// Takes in a record that was entered, and works out what it changes: for the person, and for everybody
  /// whose check-outs and sessions rest on that. Its id must be new, and what it names be there, as in Shop.
  /// In order of (person, target).
  std::vector<Shift> take(const Record& record);
  /// The same for a record that is struck out. Nothing where there is no such record.
  std::vector<Shift> strike_out(std::string_view record);
  /// Nothing happens where they are here already.
  void add_person(const PersonId& person);
  /// A machine that is new, or of another class from now on: no standing rests on it.
  void set_machine(const Machine& machine);
  /// What `take` would say, without taking it in.
  std::vector<Shift> if_taken(const Record& record);
  /// What differs from another shop, for whoever is in both, on all targets of either; in the same order.
  std::vector<Shift> shifts_from(Current& before);

  /// Whose standing at `at` would differ were that record struck out; on the targets of the rulebook in force
  /// at `at`, in order of (person, target).
  std::vector<StandingChange> rests_on(std::string_view record, Instant at);
  /// Whose standing at `at` would differ were `rulebook` in force from `at` on in place of any other, earlier
  /// instants keeping theirs; on the targets of it and of the one in force, in order of (person, target).
  std::vector<StandingChange> what_if(const Rulebook& rulebook, Instant at);

  /// What the timelines take, in bytes.
  std::size_t timeline_bytes() const;

 private:
  struct Engine;
  std::unique_ptr<Engine> engine_;
};

}  // namespace wm
