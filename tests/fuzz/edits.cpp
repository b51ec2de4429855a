#include "tests/fuzz/edits.h"

#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <fstream>
#include <iterator>
#include <vector>

#include "tests/fuzz/holds.h"
#include "tests/fuzz/shop.h"

namespace wm::fuzz {
namespace {

/// The script's bytes one by one; zeros after its end.
class Script {
 public:
  explicit Script(std::string_view bytes) : bytes_(bytes) {}
  bool done() const { return bytes_.empty(); }
  std::size_t byte() {
    if (done()) return 0;
    const auto first = static_cast<unsigned char>(bytes_.front());
    bytes_.remove_prefix(1);
    return first;
  }
  std::size_t number() { return byte() << 8 | byte(); }
  std::string_view some() {
    const std::string_view taken = bytes_.substr(0, byte());
    bytes_.remove_prefix(taken.size());
    return taken;
  }

 private:
  std::string_view bytes_;
};

/// A database in memory with a file's content. In the file two bytes say that it has a log, which memory
/// cannot have.
class Memory {
 public:
  explicit Memory(const std::string& file) {
    sqlite3_open_v2(":memory:", &database_, SQLITE_OPEN_READWRITE, nullptr);
    auto* copy = static_cast<unsigned char*>(sqlite3_malloc64(file.size()));
    std::copy(file.begin(), file.end(), copy);
    copy[18] = copy[19] = 1;
    const auto size = static_cast<sqlite3_int64>(file.size());
    sqlite3_deserialize(database_, "main", copy, size, size,
                        SQLITE_DESERIALIZE_FREEONCLOSE | SQLITE_DESERIALIZE_RESIZEABLE);
  }
  ~Memory() { sqlite3_close(database_); }
  Memory(const Memory&) = delete;
  Memory& operator=(const Memory&) = delete;

  void run(const std::string& sql) { sqlite3_exec(database_, sql.c_str(), nullptr, nullptr, nullptr); }
  std::vector<std::string> column(const std::string& sql) {
    std::vector<std::string> out;
    const auto add = [](void* list, int, char** cells, char**) {
      static_cast<std::vector<std::string>*>(list)->emplace_back(cells[0] == nullptr ? "" : cells[0]);
      return 0;
    };
    sqlite3_exec(database_, sql.c_str(), add, &out, nullptr);
    return out;
  }
  std::string file() {
    sqlite3_int64 size = 0;
    unsigned char* bytes = sqlite3_serialize(database_, "main", &size, 0);
    std::string out(reinterpret_cast<const char*>(bytes), static_cast<std::size_t>(size));
    sqlite3_free(bytes);
    out[18] = out[19] = 2;
    return out;
  }

 private:
  sqlite3* database_ = nullptr;
};

std::string as_blob(std::string_view bytes) {
  constexpr char digits[] = "0123456789abcdef";
  std::string out = "x'";
  for (const char c : bytes) (out += digits[static_cast<unsigned char>(c) >> 4]) += digits[c & 15];
  return out + "'";
}

template <class List>
const auto& one_of(const List& list, std::size_t n) {
  return list[n % std::size(list)];
}

constexpr std::array tables = {"records", "private_values", "tree_edge", "shop", "commits",
                               "people",  "pins",           "rulebooks", "taken"};

/// Edits by SQL. Guards are put back after them as they were.
class Cells {
 public:
  explicit Cells(Memory& memory) : memory_(memory) {
    memory.run("PRAGMA ignore_check_constraints = ON; PRAGMA foreign_keys = OFF");
    guards_ = memory.column("SELECT sql FROM sqlite_master WHERE type = 'trigger'");
    for (const std::string& name : memory.column("SELECT name FROM sqlite_master WHERE type = 'trigger'"))
      memory.run("DROP TRIGGER " + name);
  }
  ~Cells() {
    for (const std::string& guard : guards_) memory_.run(guard);
  }
  Cells(const Cells&) = delete;
  Cells& operator=(const Cells&) = delete;

  void edit(Script& script) {
    const std::string table = one_of(tables, script.byte());
    const std::string row = " WHERE rowid = (SELECT rowid FROM " + table + " LIMIT 1 OFFSET " +
                            std::to_string(script.byte() % rows(table)) + ")";
    switch (script.byte() % 8) {
      case 0:
        return memory_.run("DELETE FROM " + table + row);
      case 1:
        return memory_.run("UPDATE " + table + " SET rowid = " + whole(script) + row);
      case 2:
        return schema(script);
      default:
        return cell(script, table, row);
    }
  }

 private:
  std::size_t rows(const std::string& table) {
    const auto count = memory_.column("SELECT count(*) FROM " + table);
    return count.empty() ? 1 : std::max<std::size_t>(1, std::stoul(count.front()));
  }

  void schema(Script& script) {
    const std::size_t what = script.byte(), which = script.byte();
    if (what % 4 == 0) return memory_.run("PRAGMA user_version = " + std::to_string(which % 8));
    if (what % 4 == 1 && !guards_.empty()) {
      guards_.erase(guards_.begin() + static_cast<std::ptrdiff_t>(which % guards_.size()));
      return;
    }
    if (what % 4 == 2) return memory_.run("DROP TABLE " + std::string(one_of(tables, which)));
    memory_.run("ALTER TABLE " + std::string(one_of(tables, which)) + " ADD COLUMN more");
  }

  void cell(Script& script, const std::string& table, const std::string& row) {
    const auto columns = memory_.column("SELECT name FROM pragma_table_info('" + table + "')");
    if (columns.empty()) return;
    const std::string& column = one_of(columns, script.byte());
    memory_.run("UPDATE " + table + " SET " + column + " = " + value(script, table, column) + row);
  }

  std::string value(Script& script, const std::string& table, const std::string& column) {
    switch (script.byte() % 8) {
      case 0:
        return "NULL";
      case 1:
        return whole(script);
      case 2:
        return "CAST(" + as_blob(script.some()) + " AS TEXT)";
      case 3:
        return as_blob(script.some());
      case 4:
        return "(SELECT " + column + " FROM " + table + " LIMIT 1 OFFSET " +
               std::to_string(script.byte() % rows(table)) + ")";
      case 5:
        return "CAST(" + column + " AS BLOB)";
      default:
        return spliced(script, column);
    }
  }

  static std::string whole(Script& script) {
    static constexpr std::array<std::int64_t, 10> edges = {
        0, 1, -1, 2, INT32_MAX, INT64_MAX, INT64_MIN, 1773529260, -2208988800, 32503680000};
    const std::size_t n = script.byte();
    return n < 128 ? std::to_string(n) : std::to_string(edges[n % edges.size()]);
  }

  /// A piece of the text in it is replaced.
  static std::string spliced(Script& script, const std::string& column) {
    const std::string at = std::to_string(script.number() % 4096), gone = std::to_string(script.byte() % 8);
    return "CAST(substr(CAST(" + column + " AS BLOB), 1, " + at + ") || CAST(" + as_blob(script.some()) +
           " AS TEXT) || substr(CAST(" + column + " AS BLOB), " + at + " + 1 + " + gone + ") AS TEXT)";
  }

  Memory& memory_;
  std::vector<std::string> guards_;
};

void edit_bytes(Script& script, std::string& file) {
  const std::size_t at = (script.byte() << 16 | script.number()) % file.size();
  const std::size_t what = script.byte();
  if (what < 4) return file.resize(std::max<std::size_t>(100, at));
  if (what < 8)
    return void(std::fill_n(file.begin() + static_cast<std::ptrdiff_t>(at),
                            std::min<std::size_t>(512, file.size() - at), '\0'));
  file[at] = static_cast<char>(script.byte());
}

}  // namespace

std::string store_of(std::string_view dump_file) {
  std::ifstream in{std::string(dump_file)};
  const std::string sql{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
  const std::string path = folder() + "/dumped";
  put(path, "");
  sqlite3* database = nullptr;
  sqlite3_open_v2(path.c_str(), &database, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr);
  const int done = sqlite3_exec(database, sql.c_str(), nullptr, nullptr, nullptr);
  sqlite3_close(database);
  holds(done == SQLITE_OK && !sql.empty(), "a dumped store can be read back");
  return bytes_of(path);
}

std::string edited(const std::string& store, std::string_view bytes) {
  Script script(bytes);
  std::string file = store;
  const std::size_t cells = script.byte() % 8;
  if (cells > 0) {
    Memory memory(file);
    {
      Cells edits(memory);
      for (std::size_t i = 0; i < cells && !script.done(); ++i) edits.edit(script);
    }
    file = memory.file();
  }
  while (!script.done()) edit_bytes(script, file);
  return file;
}

}  // namespace wm::fuzz
