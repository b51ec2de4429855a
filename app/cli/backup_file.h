#pragma once
// `witnessmark backup STORE DIR` and `witnessmark restore BACKUP STORE`: no window.
#include <string>

namespace wm::app {

/// Says where the backup is and which older ones went, and returns 0; or says on standard error what stood in
/// the way, and returns 2.
int backup_file(const std::string& store, const std::string& folder);
/// Says what would be lost. Without `yes` that is all, and it returns 1; with it the backup is put back. 2 as
/// above.
int restore_file(const std::string& backup, const std::string& store, bool yes);

}  // namespace wm::app
