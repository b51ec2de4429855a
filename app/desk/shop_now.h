#pragma once
// The shop at this moment, or as known then, read from the journal: who is due, who is here, what is out of
// service. Nothing of it decides anything.
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "app/session.h"

namespace wm::app {

struct Due {
  RecordId id;
  db::Booking booking;
  std::optional<db::Turnout> turnout;
  bool check_out_signed = false;  // or nothing to sign
};

struct OutOfService {
  MachineId machine;
  Instant since;
  PersonId put_by;
  std::optional<db::Tag> tag;
};

struct ShopNow {
  std::vector<Due> due;           // of today, in order of time
  std::vector<PersonId> present;  // came in today and has not left, sorted
  std::vector<PersonId> staff;    // of those, on duty
  std::vector<PersonId> busy;     // with somebody, or at a machine, by a booking that is under way
  std::vector<OutOfService> out;
  std::map<MachineId, db::MachineAdded> units;

  bool is_present(const PersonId& person) const;
  /// "unit 2", as the machine is labelled.
  QString unit_label(const MachineId& machine) const;
};

ShopNow shop_now(const Session& session);

}  // namespace wm::app
