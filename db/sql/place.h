#pragma once
// Where a file lies.
#include <string>

namespace wm::db {

/// Whether a folder lies on another computer (nfs, cifs, sshfs, 9p and the like), where a database's locks
/// and its shared memory cannot be relied on: sqlite.org/wal.html and sqlite.org/howtocorrupt.html.
bool on_network(const std::string& folder);
/// The same by the file system's name alone, as the system's list of mounts has it.
bool is_network_type(const std::string& type);

/// Makes the names of a folder's files safe: without it a power cut may take a file that was made a moment
/// ago, whole as it is. False where the disk fails.
bool sync_folder(const std::string& folder);
/// The same of what is in a file.
bool sync_file(const std::string& path);

}  // namespace wm::db
