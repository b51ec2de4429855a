#include "tests/fuzz/shop.h"

#include <QDir>
#include <QTemporaryDir>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "tests/db/small_shop.h"
#include "tests/fuzz/holds.h"

namespace wm::fuzz {

const std::string& folder() {
  static const QTemporaryDir made(
      (std::filesystem::is_directory("/dev/shm") ? QStringLiteral("/dev/shm") : QDir::tempPath()) +
      QStringLiteral("/witnessmark-fuzz-XXXXXX"));
  static const std::string path = made.path().toStdString();
  return path;
}

std::string bytes_of(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

void put(const std::string& path, const std::string& bytes) {
  for (const char* end : {"-wal", "-shm", "-journal"}) std::filesystem::remove(path + end);
  std::ofstream out(path, std::ios::binary | std::ios::trunc);
  out << bytes;
  holds(static_cast<bool>(out.flush()), "a file can be written");
}

Instant now() { return db::evening + 4 * db::hour; }

Expected<db::Store> opened(const std::string& path) {
  db::make_application();
  db::StoreOptions options = db::cheap_pins();
  options.on_network = [](const std::string&) { return false; };
  return db::Store::open(path, now, options);
}

}  // namespace wm::fuzz
