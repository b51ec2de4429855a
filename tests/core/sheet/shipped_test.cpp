// Every run sheet that comes with the program can be read, and is found by its own name.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/sheet/json.h"

TEST_CASE("Every run sheet that comes with the program is read without a mistake") {
  const std::filesystem::path folder = std::string(WM_TESTS) + "/../resources/sheets";
  if (!std::filesystem::exists(folder)) return;
  for (const auto& file : std::filesystem::directory_iterator(folder)) {
    if (file.path().extension() != ".json") continue;
    INFO(file.path().filename().string());
    std::ostringstream text;
    text << std::ifstream(file.path()).rdbuf();
    const auto sheet = wm::read_sheet(text.str());
    if (!sheet)
      for (const wm::Problem& problem : sheet.error()) FAIL_CHECK(problem.where << ": " << problem.what);
    else
      CHECK(sheet->name == file.path().stem().string());
  }
}
