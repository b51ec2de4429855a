#pragma once
// The ledger's head, kept beside a backup.
#include <string>

#include "core/problem.h"

namespace wm::app {

/// Adds the head of a copy's tree to its folder's file of heads, signed by this computer, so that a copy made
/// up later can be told from it. Where that fails the copy itself is as good as ever, and the problem says
/// so.
Expected<void> keep_backup_head(const std::string& copy, const std::string& folder);

}  // namespace wm::app
