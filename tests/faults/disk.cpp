#include "disk.h"

#include <dirent.h>
#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <cstring>
#include <filesystem>

namespace wm::faults {
namespace {

/// Whether the call changes what a power cut would leave.
bool changes(Call call) {
  return call == Call::write || call == Call::sync || call == Call::truncate || call == Call::remove ||
         call == Call::sync_folder;
}

int error_of(Call call) {
  switch (call) {
    case Call::open:
      return SQLITE_CANTOPEN;
    case Call::read:
      return SQLITE_IOERR_READ;
    case Call::write:
      return SQLITE_IOERR_WRITE;
    case Call::sync:
      return SQLITE_IOERR_FSYNC;
    case Call::truncate:
      return SQLITE_IOERR_TRUNCATE;
    case Call::size:
      return SQLITE_IOERR_FSTAT;
    case Call::lock:
      return SQLITE_IOERR_LOCK;
    case Call::shm_map:
      return SQLITE_IOERR_SHMMAP;
    case Call::shm_lock:
      return SQLITE_IOERR_SHMLOCK;
    case Call::remove:
      return SQLITE_IOERR_DELETE;
    case Call::access:
      return SQLITE_IOERR_ACCESS;
    case Call::sync_folder:
      return SQLITE_IOERR_DIR_FSYNC;
  }
  return SQLITE_IOERR;
}

void make_change(std::string& to, const Change& change) {
  const auto offset = static_cast<std::size_t>(change.offset);
  if (change.truncates) {
    to.resize(offset);
    return;
  }
  if (to.size() < offset + change.bytes.size()) to.resize(offset + change.bytes.size());
  std::memcpy(to.data() + offset, change.bytes.data(), change.bytes.size());
}

}  // namespace

Node::~Node() {
  if (held >= 0) close(held);
}

Disk::Disk(std::string folder) : folder_(std::move(folder)) {
  the_disk() = this;
  settle({});
}

Disk::~Disk() {
  settle({});
  the_disk() = nullptr;
}

bool Disk::has(const std::string& path) const {
  return path.size() > folder_.size() && path[folder_.size()] == '/' && path.starts_with(folder_);
}

bool Disk::chance(int of) { return static_cast<int>((random_() >> 8) % static_cast<unsigned>(of)) == 0; }

std::shared_ptr<Node> Disk::node_of(int fd) {
  struct stat about;
  if (fstat(fd, &about) != 0) return nullptr;
  auto& found = nodes_[about.st_ino];
  if (!found) {
    found = std::make_shared<Node>();
    found->held = dup(fd);
    found->number = about.st_ino;
  }
  return found;
}

std::shared_ptr<Node> Disk::node(const std::string& path, bool make) {
  const int fd = ::open(path.c_str(), O_RDWR | O_CLOEXEC | (make ? O_CREAT : 0), 0600);
  if (fd < 0) return nullptr;
  auto found = node_of(fd);
  close(fd);
  return found;
}

Disk::Names Disk::names() {
  Names found;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder_)) {
    if (!entry.is_regular_file()) continue;
    const std::string path = entry.path().string();
    found[path.substr(folder_.size() + 1)] = node(path, false);
  }
  return found;
}

Files Disk::files() {
  Files found;
  for (const auto& [name, node] : names()) found[name] = node->now;
  return found;
}

void Disk::put(const Files& files) {
  trouble_ = {};
  came_ = cut_ = false;
  settle(files);
}

void Disk::settle(const Files& files) {
  nodes_.clear();
  safe_names_.clear();
  for (const auto& entry : std::filesystem::directory_iterator(folder_))
    if (!entry.is_directory() || files.empty()) std::filesystem::remove_all(entry.path());
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder_))
    if (entry.is_regular_file()) unlink(entry.path().c_str());
  for (const auto& [name, bytes] : files) {
    std::filesystem::create_directories(std::filesystem::path(folder_ + "/" + name).parent_path());
    auto made = node(folder_ + "/" + name, true);
    made->now = made->safe = bytes;
    safe_names_[name] = made;
  }
}

void Disk::trouble(const Trouble& trouble) {
  trouble_ = trouble;
  calls_ = 0;
  came_ = cut_ = false;
}

void Disk::mend() {
  if (cut_) settle(left_);
  trouble_ = {};
  cut_ = false;
}

void Disk::cut(Left left, std::uint64_t seed) {
  trouble({Fault::power_cut, 0, left, seed});
  left_ = leftovers();
  came_ = cut_ = true;
}

std::string Disk::left_of(const Node& node, const std::string& name) {
  random_.seed(static_cast<unsigned>(trouble_.seed * 2654435761u + std::hash<std::string>()(name) + 1));
  random_.discard(3);
  std::string left = node.safe;
  const std::size_t count = node.changes.size();
  const std::size_t whole = trouble_.left == Left::torn && count > 0 ? random_() % count : count;
  for (std::size_t i = 0; i < count; ++i) {
    Change change = node.changes[i];
    bool part = false;
    switch (trouble_.left) {
      case Left::nothing:
        return left;
      case Left::all:
        break;
      case Left::torn:
        part = i == whole;
        break;
      case Left::reordered:
        if (chance(2)) continue;
        part = chance(4);
        break;
    }
    if (part && !change.truncates) {
      // The beginning of it, or the end.
      const std::size_t kept = random_() % (change.bytes.size() + 1);
      if (chance(2)) {
        change.bytes.resize(kept);
      } else {
        change.offset += static_cast<std::int64_t>(change.bytes.size() - kept);
        change.bytes.erase(0, change.bytes.size() - kept);
      }
    }
    if (!(part && change.truncates) && !(part && change.bytes.empty())) make_change(left, change);
    if (trouble_.left == Left::torn && i == whole) break;
  }
  return left;
}

Files Disk::leftovers() {
  // A file's new names and the loss of its old ones come together, as a rename does.
  const Names now = names();
  std::map<std::shared_ptr<Node>, std::pair<std::vector<std::string>, std::vector<std::string>>> of;
  for (const auto& [name, node] : safe_names_) of[node].first.push_back(name);
  for (const auto& [name, node] : now) of[node].second.push_back(name);
  Files left;
  for (const bool newer : {false, true}) {
    for (const auto& [node, both] : of) {
      bool takes_new = false;
      if (both.first != both.second) {
        std::minstd_rand own(static_cast<unsigned>(
            trouble_.seed * 31 +
            std::hash<std::string>()((both.second.empty() ? both.first : both.second).front()) + 1));
        own.discard(3);
        takes_new = trouble_.left == Left::all || (trouble_.left != Left::nothing && own() % 2 == 0);
      }
      if (takes_new != newer) continue;
      for (const std::string& name : takes_new ? both.second : both.first) left[name] = left_of(*node, name);
    }
  }
  // A name that another file takes is never nobody's in between: rename replaces it in one (POSIX.1-2017,
  // rename).
  for (const auto& [name, node] : safe_names_)
    if (!left.contains(name) && now.contains(name)) left[name] = left_of(*node, name);
  return left;
}

int Disk::before(Call call, bool grows) {
  if (cut_) return error_of(call);
  const auto hits = [&] {
    switch (trouble_.fault) {
      case Fault::none:
        return false;
      case Fault::full:
        return grows;
      case Fault::power_cut:
        return changes(call);
      default:
        return true;
    }
  };
  if (!hits()) return SQLITE_OK;
  ++calls_;
  if (calls_ < trouble_.at) return SQLITE_OK;
  const bool once = trouble_.fault == Fault::fails_once || trouble_.fault == Fault::sync_lost;
  if (once && calls_ > trouble_.at) return SQLITE_OK;
  came_ = true;
  return trouble_.fault == Fault::full ? SQLITE_FULL : error_of(call);
}

int Disk::write(Node& node, std::int64_t offset, const char* bytes, std::int64_t count) {
  const int error = before(Call::write, offset + count > static_cast<std::int64_t>(node.now.size()));
  if (cut_) return error;
  Change change{offset, std::string(bytes, static_cast<std::size_t>(count)), false};
  const bool cut_here = error != SQLITE_OK && trouble_.fault == Fault::power_cut;
  if (error != SQLITE_OK && !cut_here) change.bytes.resize(change.bytes.size() / 2);
  make_change(node.now, change);
  node.changes.push_back(std::move(change));
  if (cut_here) {
    left_ = leftovers();
    cut_ = true;
  }
  return error;
}

int Disk::truncate(Node& node, std::int64_t size) {
  const int error = before(Call::truncate, size > static_cast<std::int64_t>(node.now.size()));
  if (cut_) return error;
  const bool cut_here = error != SQLITE_OK && trouble_.fault == Fault::power_cut;
  if (error != SQLITE_OK && !cut_here) return error;
  const Change change{size, {}, true};
  make_change(node.now, change);
  node.changes.push_back(change);
  if (cut_here) {
    left_ = leftovers();
    cut_ = true;
  }
  return error;
}

int Disk::sync(Node& node) {
  const int error = before(Call::sync);
  if (cut_) return error;
  if (error == SQLITE_OK) {
    for (const Change& change : node.changes) make_change(node.safe, change);
    node.changes.clear();
  } else if (trouble_.fault == Fault::power_cut) {
    left_ = leftovers();
    cut_ = true;
  } else if (trouble_.fault == Fault::sync_lost) {
    // The system has forgotten that these pages are not written yet.
    node.changes.clear();
    node.safe.resize(node.now.size());
  }
  return error;
}

int Disk::sync_folder(const std::string& path) {
  const int error = before(Call::sync_folder);
  if (cut_) return error;
  if (error == SQLITE_OK) {
    const std::string under = path == folder_ ? "" : path.substr(folder_.size() + 1) + "/";
    const auto inside = [&](const std::string& name) {
      return name.starts_with(under) && name.find('/', under.size()) == std::string::npos;
    };
    std::erase_if(safe_names_, [&](const auto& entry) { return inside(entry.first); });
    for (const auto& [name, node] : names())
      if (inside(name)) safe_names_[name] = node;
  } else if (trouble_.fault == Fault::power_cut) {
    left_ = leftovers();
    cut_ = true;
  }
  return error;
}

int Disk::remove(const std::string& path) {
  const int error = before(Call::remove);
  if (cut_) return error;
  if (error == SQLITE_OK || trouble_.fault == Fault::power_cut) {
    if (access(path.c_str(), F_OK) != 0) return error == SQLITE_OK ? SQLITE_IOERR_DELETE_NOENT : error;
    names();  // what is removed is known by then, and stays while it is safe
    unlink(path.c_str());
  }
  if (error != SQLITE_OK && trouble_.fault == Fault::power_cut) {
    left_ = leftovers();
    cut_ = true;
  }
  return error;
}

Disk*& the_disk() {
  static Disk* disk = nullptr;
  return disk;
}

}  // namespace wm::faults
