// Every run sheet that comes with the program can be read, is found by its own name, and opens as all of them
// must.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/sheet/json.h"

namespace {

using namespace wm;

std::vector<std::pair<std::string, std::string>> shipped() {
  std::vector<std::pair<std::string, std::string>> files;
  for (const auto& file :
       std::filesystem::directory_iterator(std::string(WM_TESTS) + "/../resources/sheets")) {
    if (file.path().extension() != ".json") continue;
    std::ostringstream text;
    text << std::ifstream(file.path()).rdbuf();
    files.emplace_back(file.path().stem().string(), text.str());
  }
  return files;
}

bool has(const std::string& text, const char* word) { return text.find(word) != std::string::npos; }

/// Whether a critical line before all others says one of these words.
bool opens_with(const Sheet& sheet, std::initializer_list<const char*> words) {
  const auto& lines = sheet.sections[0].lines;
  return std::any_of(lines.begin(), lines.begin() + 5, [&](const SheetLine& line) {
    return line.critical && std::all_of(words.begin(), words.end(), [&](const char* word) {
             return has(line.text + " " + line.says, word);
           });
  });
}

const SheetSection& section(const Sheet& sheet, const char* name) {
  const auto found = std::find_if(sheet.sections.begin(), sheet.sections.end(),
                                  [&](const SheetSection& section) { return section.name == name; });
  REQUIRE(found != sheet.sections.end());
  return *found;
}

}  // namespace

TEST_CASE(
    "Every run sheet that comes with the program is read without a mistake, and written back as the same") {
  const auto files = shipped();
  CHECK(files.size() >= 15);
  for (const auto& [name, text] : files) {
    INFO(name);
    const auto sheet = read_sheet(text);
    if (!sheet)
      for (const Problem& problem : sheet.error()) FAIL_CHECK(problem.where << ": " << problem.what);
    REQUIRE(sheet);
    CHECK(sheet->name == name);
    CHECK(read_sheet(to_json(*sheet)) == *sheet);
  }
}

TEST_CASE(
    "Every run sheet opens with dress, eyes and ears, stance, stop and isolation, and the power that comes "
    "back") {
  for (const auto& [name, text] : shipped()) {
    INFO(name);
    const auto sheet = read_sheet(text);
    REQUIRE(sheet);
    REQUIRE(sheet->sections[0].lines.size() >= 5);
    CHECK(opens_with(*sheet, {"dress"}));
    CHECK(opens_with(*sheet, {"Eye and ear protection"}));
    CHECK(opens_with(*sheet, {"Stance", "stop within reach"}));
    CHECK(opens_with(*sheet, {"isolates", "tries the switch"}));
    CHECK(opens_with(*sheet, {"The power fails and comes back: what do you do?"}));
  }
}

TEST_CASE(
    "The jointer/planer is shown in both modes, with the isolated change-over between them, and measured in "
    "both") {
  for (const auto& [name, text] : shipped()) {
    if (name != "jointer-planer") continue;
    const auto sheet = read_sheet(text);
    REQUIRE(sheet);
    std::vector<std::string> order;
    for (const SheetSection& section : sheet->sections) order.push_back(section.name);
    CHECK(order == std::vector<std::string>{"before", "joint a face", "joint an edge", "change over", "plane",
                                            "after"});
    const SheetLine& first = section(*sheet, "change over").lines[0];
    CHECK(first.critical);
    CHECK(has(first.text, "Isolated"));
    const auto measures = [&](const char* in) {
      return section(*sheet, in).lines.back().measure.value_or(Measure{}).kind;
    };
    CHECK(measures("joint a face") == MeasureKind::flatness);
    CHECK(measures("joint an edge") == MeasureKind::squareness);
    CHECK(section(*sheet, "plane").lines.back().measure);
    CHECK(measures("plane") == MeasureKind::thickness);
    return;
  }
  FAIL("There is no sheet for the jointer/planer.");
}
