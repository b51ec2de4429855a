#pragma once
// A question with numbers for names, and a board on which placements are tried: whole numbers only, so that
// what is proposed is known to be allowed whatever a solver rounds.
#include <vector>

#include "core/match/answer.h"

namespace wm::match {

/// Something somebody takes part in. Seconds as in Instant.
struct Engagement {
  std::int64_t from = 0, to = 0;
  bool gives = false;  // as the assessor
  bool fresh = false;  // proposed, not booked
};

struct Spot {
  std::int64_t from = 0, to = 0;
  int assessor = 0, unit = 0;
  int second = -1;  // -1: none
  int day = 0;      // civil day on which it begins
  bool assesses(int person) const { return person == assessor || person == second; }
};

/// People and units by number. People who assess some opening are those whose days are looked at.
struct Indexed {
  explicit Indexed(const FitQuestion& question);

  const FitQuestion& question;
  std::vector<Spot> spots;         // as openings
  std::vector<int> person;         // as waiters
  std::vector<char> first;         // as waiters: comes first
  std::vector<std::size_t> order;  // waiters: those who come first, then by days waited, then as they stand
  std::vector<char> assesses;      // by person
  std::vector<const AssessorLimits*> limits;    // by person; may be null
  std::vector<std::vector<Engagement>> booked;  // by person, in order of time
  std::size_t units = 0;
};

class Board {
 public:
  explicit Board(const Indexed& indexed);
  /// Places it if that is allowed beside all that is placed already.
  bool place(Placed placed);
  bool served(std::size_t waiter) const { return served_[waiter]; }
  /// In order of time, then assessor.
  std::vector<Placed> placed() const;
  /// What somebody takes part in, in order of time.
  const std::vector<Engagement>& of(int person) const { return people_[person]; }

 private:
  bool stretch_holds(int person, const Engagement& added) const;
  bool day_holds(int person, const Spot& spot) const;
  /// Whether an assessor is free for it and takes it on.
  bool can_give(int person, const Spot& spot) const;

  const Indexed& indexed_;
  std::vector<char> served_;
  std::vector<std::vector<Engagement>> people_, units_;
  std::vector<Placed> placed_;
};

}  // namespace wm::match
