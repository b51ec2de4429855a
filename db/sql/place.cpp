#include "db/sql/place.h"

#include <QStorageInfo>
#include <algorithm>
#include <array>
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

}  // namespace wm::db
