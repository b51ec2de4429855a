// Gives files to a fuzzer, once each: what a build without libFuzzer can do.
// usage: fuzz_NAME (FILE | FOLDER)…
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size);

namespace {

namespace fs = std::filesystem;

std::vector<fs::path> files_in(const fs::path& path) {
  if (!fs::is_directory(path)) return {path};
  std::vector<fs::path> files;
  for (const auto& entry : fs::directory_iterator(path))
    if (entry.is_regular_file()) files.push_back(entry.path());
  return files;
}

void replay(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  if (!in) {
    std::fprintf(stderr, "%s cannot be read.\n", path.c_str());
    std::exit(1);
  }
  const std::string bytes{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
  // Said beforehand and not kept back, so that the last line names the file at which all ends.
  std::printf("%s\n", path.c_str());
  std::fflush(stdout);
  LLVMFuzzerTestOneInput(reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
}

}  // namespace

int main(int count, char** arguments) {
  std::size_t replayed = 0;
  for (int i = 1; i < count; ++i)
    for (const fs::path& path : files_in(arguments[i])) {
      replay(path);
      ++replayed;
    }
  std::printf("%zu files replayed\n", replayed);
  return replayed == 0 ? 1 : 0;
}
