#pragma once
// The shop at this moment, or as known then: who is here and at what, by the store; who is due, and the
// units.
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
  RecordId marked;                // the record that says so
  bool check_out_signed = false;  // or nothing to sign
  bool held = false;              // and not yet for certain; once begun, theirs if they come
};

struct ShopNow : db::Floor {
  std::vector<Due> due;         // of today, in order of time
  std::vector<db::LockOn> out;  // in order of when they were put on
  std::map<MachineId, db::MachineAdded> units;

  bool is_present(const PersonId& person) const;
  /// Where somebody is, working or supervising, and who works a unit; null: nobody is. Of several that
  /// somebody supervises, the first.
  const db::AtMachine* machine_of(const PersonId& person) const;
  std::vector<db::AtMachine> machines_of(const PersonId& person) const;
  const db::AtMachine* in_use(const MachineId& machine) const;
  /// "unit 2", as the machine is labelled.
  QString unit_label(const MachineId& machine) const;
};

ShopNow shop_now(const Session& session);

}  // namespace wm::app
