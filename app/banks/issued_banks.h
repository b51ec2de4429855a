#pragma once
// The question banks that were issued, and which revision of each is in force.
#include <vector>

#include "app/works/revisions.h"
#include "core/teach/bank.h"

namespace wm::app {

struct BankRevision : Revision {
  teach::Bank bank;
};

/// By name, the newest revision first. As known at the session's date.
std::vector<BankRevision> issued_banks(const Session& session);

}  // namespace wm::app
