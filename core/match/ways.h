#pragma once
// The ways to serve people that the program has columns for: few enough to be solved, with no better proposal
// among those left out. People with the same openings are one kind; units with the same openings are one
// group.
#include <vector>

#include "core/match/board.h"

namespace wm::match {

/// Waiters who can take each other's place: the same openings, and each can be in one proposal only here.
struct Kind {
  std::vector<std::size_t> waiters;  // in Indexed::order: the first are served first
  int person = -1;                   // whose other engagements count too; -1: nobody's
};

/// One of a kind, with an assessor or two, on one unit of a group, at a time.
struct Way {
  std::size_t kind = 0;
  std::int64_t from = 0, to = 0;
  int assessor = 0, second = -1, day = 0;  // as in Spot
  std::size_t group = 0;
  std::vector<OpeningIndex> openings;  // one for each unit of the group
  bool assessed_by(int person) const { return person == assessor || person == second; }
};

struct Ways {
  std::vector<Kind> kinds;
  std::vector<Way> all;
  std::vector<std::size_t> group_sizes;
};
Ways ways(const Indexed& indexed);

/// Stretches of time that openings touch without a pause, in order; no opening reaches from one into another.
std::vector<Interval> blocks(const std::vector<Spot>& spots);

/// One of a run of starts that could as well be another: by its own, who and where, how long.
struct Start {
  std::int64_t from = 0, seconds = 0;
  std::size_t run = 0;  // those of one run have the same assessors, unit and people
};
/// Of the starts of one block, those between which none needs to lie: where a run begins or ends, and what
/// follows or precedes it by one-on-ones back to back. Any proposal can be moved onto them without losing
/// anything, since with its order kept what it weighs is linear in the starts (every vertex of those
/// constraints, which are differences, has each start tied to the end of a run by a chain of back-to-back
/// ones).
std::vector<std::int64_t> starts_needed(const std::vector<Start>& starts);

}  // namespace wm::match
