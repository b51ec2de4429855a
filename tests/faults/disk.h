#pragma once
// A folder on a disk that can fail, fill up, or lose its power. Names are real files, empty ones, so that a
// program's own file calls see them; what is in them is kept here, as what was last made safe and what was
// written since. SQLite reaches it through vfs.cpp; fsync(2) of the whole program does too.
#include <cstdint>
#include <map>
#include <memory>
#include <random>
#include <string>
#include <vector>

namespace wm::faults {

/// What is asked of the disk.
enum class Call {
  open,
  read,
  write,
  sync,
  truncate,
  size,
  lock,
  shm_map,
  shm_lock,
  remove,
  access,
  sync_folder
};

/// What goes wrong, from the call of a number on (counted among those that this can hit).
enum class Fault {
  none,
  fails_once,  // that call gives an input/output error, half of a write done
  sync_lost,   // as fails_once, and what a failed sync had to make safe never becomes safe by a later one
  fails_on,    // that call and all after it
  full,        // no file grows any more
  power_cut    // nothing happens any more; see Left
};

/// What is found after a power cut of that which was not yet made safe.
enum class Left {
  nothing,   // none of it
  all,       // all of it: as after a kill of the program
  torn,      // what was written first, the last write in part
  reordered  // some of it, any writes before others, some in part; and so with names made and removed
};

struct Trouble {
  Fault fault = Fault::none;
  std::int64_t at = 0;  // 1: the first call
  Left left = Left::nothing;
  std::uint64_t seed = 0;
};

/// A write or a truncation (`truncates`: to `offset`) that is not safe yet.
struct Change {
  std::int64_t offset = 0;
  std::string bytes;
  bool truncates = false;
};

struct Node {
  std::string now;              // as programs see it
  std::string safe;             // as it is on the disk for certain
  std::vector<Change> changes;  // what leads from `safe` to `now`, in order
  int held = -1;                // keeps the real file's number from being given to another
  std::uint64_t number = 0;
  // Of connections that are open: gone with them.
  int shared = 0;
  const void *reserved = nullptr, *pending = nullptr;
  bool exclusive = false;
  std::vector<std::unique_ptr<char[]>> shm;
  int shm_users = 0;
  int shm_locks[8] = {};
  ~Node();
};

/// Files by name, whole and safe.
using Files = std::map<std::string, std::string>;

class Disk {
 public:
  explicit Disk(std::string folder);
  ~Disk();
  const std::string& folder() const { return folder_; }

  /// The folder holds these files, safe, and nothing else. No file may be open.
  void put(const Files& files);
  /// What programs see now.
  Files files();
  /// From now on. Counting begins anew.
  void trouble(const Trouble& trouble);
  /// The disk is well again. After a power cut the folder holds what was left: no file may be open.
  void mend();
  /// Cuts the power here and now.
  void cut(Left left, std::uint64_t seed);
  /// Whether the trouble has come.
  bool came() const { return came_; }

  // What the file system asks.
  bool has(const std::string& path) const;
  /// SQLITE_OK, or the error that this call is to give. `grows` is of a write.
  int before(Call call, bool grows = false);
  std::shared_ptr<Node> node(const std::string& path, bool make);
  std::shared_ptr<Node> node_of(int fd);
  /// Does as much as the disk does; the error of the call.
  int write(Node& node, std::int64_t offset, const char* bytes, std::int64_t count);
  int truncate(Node& node, std::int64_t size);
  int sync(Node& node);
  int sync_folder(const std::string& path);
  int remove(const std::string& path);

 private:
  using Names = std::map<std::string, std::shared_ptr<Node>>;
  Names names();
  Files leftovers();
  std::string left_of(const Node& node, const std::string& name);
  bool chance(int of);
  void settle(const Files& files);

  std::string folder_;
  std::map<std::uint64_t, std::shared_ptr<Node>> nodes_;
  Names safe_names_;
  Trouble trouble_;
  std::int64_t calls_ = 0;
  bool came_ = false, cut_ = false;
  Files left_;
  std::minstd_rand random_;
};

/// The one that SQLite and fsync reach; null: none.
Disk*& the_disk();
/// Makes the file system over the_disk() SQLite's default one, for all connections opened from now on.
void install();

}  // namespace wm::faults
