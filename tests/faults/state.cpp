#include "state.h"

#include <sodium.h>
#include <sqlite3.h>

#include <cstdlib>
#include <random>

namespace wm::faults {
namespace {

class Raw {
 public:
  explicit Raw(const std::string& path) {
    error_ = sqlite3_open_v2(path.c_str(), &raw_, SQLITE_OPEN_READWRITE, nullptr);
  }
  ~Raw() { sqlite3_close(raw_); }
  /// All that a statement gives, cells apart by a byte that no text here has.
  std::string all(const std::string& sql) {
    std::string out;
    if (error_ != SQLITE_OK) return "cannot be opened";
    sqlite3_stmt* statement = nullptr;
    int step = sqlite3_prepare_v2(raw_, sql.c_str(), -1, &statement, nullptr);
    if (step == SQLITE_OK) {
      while ((step = sqlite3_step(statement)) == SQLITE_ROW) {
        for (int i = 0; i < sqlite3_column_count(statement); ++i) {
          out += static_cast<char>('0' + sqlite3_column_type(statement, i));
          const auto* bytes = sqlite3_column_text(statement, i);
          if (bytes != nullptr)
            out.append(reinterpret_cast<const char*>(bytes), sqlite3_column_bytes(statement, i));
          out += '\x1f';
        }
        out += '\n';
      }
    }
    sqlite3_finalize(statement);
    if (step != SQLITE_DONE) out += sqlite3_errmsg(raw_);
    return out;
  }

 private:
  sqlite3* raw_ = nullptr;
  int error_ = 0;
};

std::minstd_rand& numbers() {
  static std::minstd_rand random;
  return random;
}

}  // namespace

std::string dump(const std::string& path) {
  Raw raw(path);
  std::string out = raw.all("PRAGMA application_id") + raw.all("PRAGMA user_version") +
                    raw.all("SELECT type, name, sql FROM sqlite_master ORDER BY type, name");
  const std::string tables = raw.all("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name");
  for (std::size_t at = 0; at < tables.size();) {
    const std::size_t end = tables.find('\x1f', at);
    if (end == std::string::npos) return out + tables;
    const std::string name = tables.substr(at + 1, end - at - 1);
    out += name + '\n' + raw.all("SELECT * FROM \"" + name + "\" ORDER BY 1, 2");
    at = end + 2;
  }
  return out;
}

State state_of(const std::string& path, const db::Store& store) {
  return {dump(path), store.entries(), store.people(), store.rulebooks()};
}

std::string integrity(const std::string& path) {
  Raw raw(path);
  const std::string found = raw.all("PRAGMA integrity_check") + raw.all("PRAGMA foreign_key_check");
  return found == "3ok\x1f\n" ? "ok" : found;
}

bool same_memory(const State& state, const db::Store& store) {
  return state.entries == store.entries() && state.people == store.people() &&
         state.rulebooks == store.rulebooks();
}

void fix_randomness() {
  static randombytes_implementation fixed = {[] { return "fixed"; },
                                             [] { return static_cast<std::uint32_t>(numbers()()); },
                                             [] {},
                                             nullptr,
                                             [](void* to, std::size_t count) {
                                               for (std::size_t i = 0; i < count; ++i)
                                                 static_cast<unsigned char*>(to)[i] =
                                                     static_cast<unsigned char>(numbers()() >> 8);
                                             },
                                             [] { return 0; }};
  randombytes_set_implementation(&fixed);
  if (sodium_init() < 0) std::abort();
}

void seed_randomness(std::uint64_t seed) { numbers().seed(static_cast<unsigned>(seed * 7919 + 1)); }

}  // namespace wm::faults
