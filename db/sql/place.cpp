#include "db/sql/place.h"

#include <fcntl.h>
#include <unistd.h>

#include <QStorageInfo>
#include <algorithm>
#include <array>
#include <cerrno>
#include <string_view>

#include "db/sql/connection.h"

namespace wm::db {

bool is_network_type(const std::string& type) {
  static constexpr std::array<std::string_view, 18> names = {
      "nfs",    "nfs4",      "cifs",       "smb",         "smbfs",       "smb2",
      "smb3",   "9p",        "afs",        "ceph",        "ncpfs",       "davfs",
      "lustre", "glusterfs", "fuse.sshfs", "fuse.davfs2", "fuse.rclone", "fuse.glusterfs"};
  return std::find(names.begin(), names.end(), type) != names.end();
}

bool on_network(const std::string& folder) {
  return is_network_type(QStorageInfo(text(folder)).fileSystemType().toStdString());
}

bool sync_file(const std::string& path) {
  const int opened = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (opened < 0) return false;
  const bool safe = ::fsync(opened) == 0;
  // What is read next comes from the disk itself, where the system can do that.
  (void)::posix_fadvise(opened, 0, 0, POSIX_FADV_DONTNEED);
  ::close(opened);
  return safe;
}

bool sync_folder(const std::string& folder) {
  const int opened = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (opened < 0) return false;
  // EINVAL: a file system that keeps names safe by itself, or cannot be asked.
  const bool safe = ::fsync(opened) == 0 || errno == EINVAL;
  ::close(opened);
  return safe;
}

}  // namespace wm::db
