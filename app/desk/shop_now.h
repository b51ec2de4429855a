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

/// A machine that somebody has started and not left.
struct AtMachine {
  RecordId id;
  db::Started started;
  Instant since;
};

struct ShopNow {
  std::vector<Due> due;                                 // of today, in order of time
  std::vector<PersonId> present;                        // came in today and has not left, sorted
  std::vector<PersonId> staff;                          // of those, on duty
  std::vector<std::pair<PersonId, PersonId>> together;  // member and assessor of bookings under way
  std::vector<AtMachine> at_machines;                   // in order of when they were started
  std::vector<OutOfService> out;
  std::map<MachineId, db::MachineAdded> units;

  bool is_present(const PersonId& person) const;
  /// Who has no hand free for somebody: at a machine, supervising there, or in a one-on-one with another.
  std::vector<PersonId> busy_for(const PersonId& person) const;
  /// Where somebody is, working or supervising, and who works a unit; null: nobody is.
  const AtMachine* machine_of(const PersonId& person) const;
  const AtMachine* in_use(const MachineId& machine) const;
  /// "unit 2", as the machine is labelled.
  QString unit_label(const MachineId& machine) const;
};

ShopNow shop_now(const Session& session);

}  // namespace wm::app
