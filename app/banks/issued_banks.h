#pragma once
// The question banks that were issued, and which revision of each is in force.
#include <vector>

#include "app/session.h"
#include "core/teach/bank.h"

namespace wm::app {

struct BankRevision {
  RecordId record;
  Instant issued;
  db::Issued text;
  teach::Bank bank;
  std::optional<Instant> from;  // since when it counts, or from when it will; nothing: not published
  bool in_force = false;        // at the session's present
};

/// By name, the newest revision first. As known at the session's date.
std::vector<BankRevision> issued_banks(const Session& session);
/// The one in force, else the newest that was issued; null where none of that name was.
const BankRevision* current_bank(const std::vector<BankRevision>& banks, const std::string& name);
/// The highest revision that was issued, 0 for none.
int highest_issued(const std::vector<BankRevision>& banks, const std::string& name);

}  // namespace wm::app
