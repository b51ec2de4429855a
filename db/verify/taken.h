#pragma once
// The times that bookings take, derived again from what was entered about bookings.
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "db/verify/file.h"
#include "db/verify/findings.h"
#include "db/verify/leaf_content.h"

namespace wm::verify {

/// Walks along the records, in their order.
class Taken {
 public:
  explicit Taken(Findings& findings) : findings_(findings) {}
  void check(const LeafContent& leaf);
  /// After the last record, which was entered at `last`: every time that is taken has its row, and no other
  /// is there but what time alone has ended.
  void finish(const File& file, Instant last);

 private:
  struct Time {
    Instant from, until;
    std::optional<Instant> held_through;
    bool at_an_end(Instant t) const { return until <= t || (held_through && *held_through <= t); }
    friend bool operator==(const Time&, const Time&) = default;
  };
  struct Booked {
    std::int64_t order = 0;
    std::string id;
    std::vector<std::string> what;
    Time time;
  };
  /// What was entered about a booking.
  struct About {
    std::string id, booking, kind, turnout;
  };
  using Place = std::pair<std::int64_t, std::string>;  // a record's order, and what it takes

  void book(const LeafContent& leaf);
  std::map<Place, Time> times_that_stand() const;
  void found(const Place& place, std::string says, std::string should);

  Findings& findings_;
  std::vector<Booked> bookings_;
  std::vector<About> about_;
  std::set<std::string> struck_out_;
};

}  // namespace wm::verify
