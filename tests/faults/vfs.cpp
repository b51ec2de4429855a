// SQLite's way to the disk (sqlite.org/c3ref/vfs.html, io_methods.html): files of the_disk()'s folder are
// ours, all others go to the system's own file system.
#include <sqlite3.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <algorithm>
#include <climits>
#include <cstring>

#include "disk.h"

namespace wm::faults {
namespace {

constexpr int region_bytes = 32768, slots = 8;

struct Open {
  std::shared_ptr<Node> node;
  std::string path;
  int lock = SQLITE_LOCK_NONE;
  bool names_folder = false;  // its first sync makes its name safe, as SQLite's own file system does
  bool removes = false;
  bool maps = false;
  unsigned shared_slots = 0, own_slots = 0;
};

struct File {
  sqlite3_file base;
  Open* open;
};

Open& of(sqlite3_file* file) { return *reinterpret_cast<File*>(file)->open; }
Disk& disk() { return *the_disk(); }
sqlite3_vfs* system_vfs = nullptr;

int unmap(sqlite3_file* file, int) {
  Open& open = of(file);
  if (!open.maps) return SQLITE_OK;
  open.maps = false;
  for (unsigned i = 0; i < slots; ++i) {
    if (open.own_slots & (1u << i)) open.node->shm_locks[i] = 0;
    if (open.shared_slots & (1u << i)) --open.node->shm_locks[i];
  }
  open.shared_slots = open.own_slots = 0;
  // Shared memory does not outlive those who share it: whoever comes first afterwards reads the log anew.
  if (--open.node->shm_users == 0) open.node->shm.clear();
  return SQLITE_OK;
}

void let_go(Open& open, int level) {
  Node& node = *open.node;
  if (level < SQLITE_LOCK_RESERVED) {
    if (node.reserved == &open) node.reserved = nullptr;
    if (node.pending == &open) {
      node.pending = nullptr;
      node.exclusive = false;
    }
  }
  if (level == SQLITE_LOCK_NONE && open.lock >= SQLITE_LOCK_SHARED) --node.shared;
  open.lock = level;
}

int close(sqlite3_file* file) {
  Open& open = of(file);
  unmap(file, 0);
  let_go(open, SQLITE_LOCK_NONE);
  if (open.removes) ::unlink(open.path.c_str());
  delete &open;
  reinterpret_cast<File*>(file)->open = nullptr;
  return SQLITE_OK;
}

int read(sqlite3_file* file, void* to, int count, sqlite3_int64 offset) {
  if (const int error = disk().before(Call::read)) return error;
  const std::string& bytes = of(file).node->now;
  const auto size = static_cast<sqlite3_int64>(bytes.size());
  const sqlite3_int64 there = std::clamp<sqlite3_int64>(size - offset, 0, count);
  std::memcpy(to, bytes.data() + std::min(offset, size), static_cast<std::size_t>(there));
  if (there == count) return SQLITE_OK;
  std::memset(static_cast<char*>(to) + there, 0, static_cast<std::size_t>(count - there));
  return SQLITE_IOERR_SHORT_READ;
}

int write(sqlite3_file* file, const void* from, int count, sqlite3_int64 offset) {
  return disk().write(*of(file).node, offset, static_cast<const char*>(from), count);
}

int truncate(sqlite3_file* file, sqlite3_int64 size) { return disk().truncate(*of(file).node, size); }

int sync(sqlite3_file* file, int) {
  Open& open = of(file);
  if (const int error = disk().sync(*open.node)) return error;
  if (!open.names_folder) return SQLITE_OK;
  open.names_folder = false;
  (void)disk().sync_folder(open.path.substr(0, open.path.rfind('/')));  // nor does SQLite's own look
  return SQLITE_OK;
}

int file_size(sqlite3_file* file, sqlite3_int64* size) {
  if (const int error = disk().before(Call::size)) return error;
  *size = static_cast<sqlite3_int64>(of(file).node->now.size());
  return SQLITE_OK;
}

int lock(sqlite3_file* file, int level) {
  Open& open = of(file);
  Node& node = *open.node;
  if (open.lock >= level) return SQLITE_OK;
  if (const int error = disk().before(Call::lock)) return error;
  if (node.pending != nullptr && node.pending != &open) return SQLITE_BUSY;
  if (level == SQLITE_LOCK_SHARED) {
    ++node.shared;
  } else if (level == SQLITE_LOCK_RESERVED) {
    if (node.reserved != nullptr) return SQLITE_BUSY;
    node.reserved = &open;
  } else {
    node.pending = &open;
    if (node.shared > 1) {
      open.lock = SQLITE_LOCK_PENDING;
      return SQLITE_BUSY;
    }
    node.exclusive = true;
  }
  open.lock = level;
  return SQLITE_OK;
}

int unlock(sqlite3_file* file, int level) {
  if (of(file).lock > level) let_go(of(file), level);
  return SQLITE_OK;
}

int check_reserved(sqlite3_file* file, int* held) {
  if (const int error = disk().before(Call::lock)) return error;
  *held = of(file).node->reserved != nullptr;
  return SQLITE_OK;
}

int control(sqlite3_file*, int, void*) { return SQLITE_NOTFOUND; }
int sector(sqlite3_file*) { return 4096; }
/// As SQLite's own file system on Debian: a write touches no byte beside its own, even where it is cut off.
int traits(sqlite3_file*) { return SQLITE_IOCAP_POWERSAFE_OVERWRITE; }

int shm_map(sqlite3_file* file, int region, int bytes, int extend, void volatile** at) {
  Open& open = of(file);
  *at = nullptr;
  if (bytes != region_bytes) return SQLITE_IOERR_SHMMAP;
  auto& shm = open.node->shm;
  const auto wanted = static_cast<std::size_t>(region);
  if (const int error = disk().before(Call::shm_map, extend && shm.size() <= wanted))
    return error == SQLITE_FULL ? SQLITE_IOERR_SHMSIZE : error;
  if (!open.maps) {
    open.maps = true;
    ++open.node->shm_users;
  }
  if (shm.size() <= wanted && !extend) return SQLITE_OK;
  while (shm.size() <= wanted) shm.push_back(std::make_unique<char[]>(region_bytes));
  *at = shm[wanted].get();
  return SQLITE_OK;
}

int shm_lock(sqlite3_file* file, int first, int count, int flags) {
  Open& open = of(file);
  int* const slot = open.node->shm_locks;
  const unsigned mask = ((1u << count) - 1) << first;
  if (flags & SQLITE_SHM_UNLOCK) {
    for (int i = first; i < first + count; ++i) {
      if (open.own_slots & (1u << i)) slot[i] = 0;
      if (open.shared_slots & (1u << i)) --slot[i];
    }
    open.own_slots &= ~mask;
    open.shared_slots &= ~mask;
    return SQLITE_OK;
  }
  if (const int error = disk().before(Call::shm_lock)) return error;
  if (flags & SQLITE_SHM_SHARED) {
    if (open.shared_slots & mask) return SQLITE_OK;
    if (slot[first] < 0) return SQLITE_BUSY;
    ++slot[first];
    open.shared_slots |= mask;
    return SQLITE_OK;
  }
  for (int i = first; i < first + count; ++i)
    if (slot[i] != 0) return SQLITE_BUSY;
  for (int i = first; i < first + count; ++i) slot[i] = -1;
  open.own_slots |= mask;
  return SQLITE_OK;
}

void shm_barrier(sqlite3_file*) { __sync_synchronize(); }

const sqlite3_io_methods methods = {
    2,       close,  read,   write,   truncate, sync,        file_size, lock,    unlock, check_reserved,
    control, sector, traits, shm_map, shm_lock, shm_barrier, unmap,     nullptr, nullptr};

bool ours(const char* path) { return path != nullptr && the_disk() != nullptr && disk().has(path); }

int vfs_open(sqlite3_vfs*, const char* path, sqlite3_file* file, int flags, int* out_flags) {
  if (!ours(path)) return system_vfs->xOpen(system_vfs, path, file, flags, out_flags);
  file->pMethods = nullptr;
  if (const int error = disk().before(Call::open)) return error;
  const bool there = ::access(path, F_OK) == 0;
  if (there && (flags & SQLITE_OPEN_EXCLUSIVE)) return SQLITE_CANTOPEN;
  auto node = disk().node(path, (flags & SQLITE_OPEN_CREATE) != 0);
  if (!node) return SQLITE_CANTOPEN;
  auto* open = new Open{node, path};
  open->names_folder =
      (flags & SQLITE_OPEN_CREATE) != 0 &&
      (flags & (SQLITE_OPEN_WAL | SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_SUPER_JOURNAL)) != 0;
  open->removes = (flags & SQLITE_OPEN_DELETEONCLOSE) != 0;
  reinterpret_cast<File*>(file)->open = open;
  file->pMethods = &methods;
  if (out_flags != nullptr) *out_flags = flags;
  return SQLITE_OK;
}

int vfs_delete(sqlite3_vfs*, const char* path, int sync_folder) {
  if (!ours(path)) return system_vfs->xDelete(system_vfs, path, sync_folder);
  if (const int error = disk().remove(path)) return error;
  const std::string p = path;
  return sync_folder ? disk().sync_folder(p.substr(0, p.rfind('/'))) : SQLITE_OK;
}

int vfs_access(sqlite3_vfs*, const char* path, int flags, int* there) {
  if (!ours(path)) return system_vfs->xAccess(system_vfs, path, flags, there);
  if (const int error = disk().before(Call::access)) return error;
  *there = ::access(path, F_OK) == 0;
  // As SQLite's own file system: an empty log or journal is none.
  if (*there && flags == SQLITE_ACCESS_EXISTS) *there = !disk().node(path, false)->now.empty();
  return SQLITE_OK;
}

int vfs_full_path(sqlite3_vfs*, const char* path, int count, char* out) {
  return system_vfs->xFullPathname(system_vfs, path, count, out);
}

/// The same each time, so that a run can be repeated.
int vfs_random(sqlite3_vfs*, int count, char* out) {
  static std::minstd_rand random(1);
  for (int i = 0; i < count; ++i) out[i] = static_cast<char>(random() >> 8);
  return count;
}

}  // namespace

void install() {
  static sqlite3_vfs vfs;
  system_vfs = sqlite3_vfs_find(nullptr);
  vfs = *system_vfs;
  vfs.zName = "faults";
  vfs.szOsFile = std::max(system_vfs->szOsFile, static_cast<int>(sizeof(File)));
  vfs.xOpen = vfs_open;
  vfs.xDelete = vfs_delete;
  vfs.xAccess = vfs_access;
  vfs.xFullPathname = vfs_full_path;
  vfs.xRandomness = vfs_random;
  sqlite3_vfs_register(&vfs, 1);
}

}  // namespace wm::faults

// The program's own fsync(2), of a file or a folder on the disk, is the disk's; any other is the system's.
extern "C" int fsync(int fd) {
  using namespace wm::faults;
  char path[PATH_MAX];
  const std::string link = "/proc/self/fd/" + std::to_string(fd);
  const ssize_t length = the_disk() == nullptr ? -1 : readlink(link.c_str(), path, sizeof path - 1);
  const std::string name(path, static_cast<std::size_t>(std::max<ssize_t>(length, 0)));
  if (length <= 0 || (name != the_disk()->folder() && !the_disk()->has(name)))
    return static_cast<int>(syscall(SYS_fsync, fd));
  struct stat about;
  fstat(fd, &about);
  const int error =
      S_ISDIR(about.st_mode) ? the_disk()->sync_folder(name) : the_disk()->sync(*the_disk()->node_of(fd));
  if (error == SQLITE_OK) return 0;
  errno = EIO;
  return -1;
}
