#pragma once
// A person's standings, one row a machine, by tier: what the list of strips shows.
#include <QString>
#include <vector>

#include "app/session.h"

namespace wm::app {

struct StripRow {
  int tier = 0;
  TargetName target;  // empty: the tier's heading
  Rung rung = Rung::barred;
  bool paused = false;
  std::vector<TimelineStep> steps;
  QString through;          // "13 Mar 2027", "no end", or nothing
  QString spoken;           // the strip as a sentence
  QString restricted = {};  // "restricted: no dado", or nothing

  bool heading() const { return target.empty(); }
};

struct Strips {
  std::vector<StripRow> rows;
  Instant from, to, today;
  int independent = 0, supervised = 0;
};

Strips strips_of(Session& session, const PersonId& person);

/// Why the standing was what it was at t, in a few lines: for the tip at the pointer on that row's strip.
QString why_at(Session& session, const PersonId& person, const StripRow& row, Instant t);

}  // namespace wm::app
