#pragma once
// What a check may look at: the store as it is, the time, and how the entry comes in.
#include <functional>
#include <string>

#include "core/decide/decider.h"
#include "db/journal/memory.h"
#include "db/refuse.h"

namespace wm::db {

struct Case {
  const Memory& memory;
  const Zone& zone;
  Instant now;                        // when it is recorded
  Instant at;                         // when it happened
  bool founding = false;              // history that makes a new shop: abilities are not asked about
  bool from_paper = false;            // a paper from the past: nor here
  std::function<Decider&()> decider;  // all that is known now
  Instant shown;                      // by the clock, which may lie behind `now`
  std::int64_t jumped = 0;            // as Store::clock_jump

  bool judges_ability() const { return !founding && !from_paper; }
  bool same(const PersonId& a, const PersonId& b) const {
    return a == b || memory.joined(a) == memory.joined(b);
  }
};

/// "2026-03-14 18:00", by the shop's clock.
std::string said(const Case& c, Instant t);
std::string said(const Zone& zone, Instant t);
std::string said(Day d);

}  // namespace wm::db
