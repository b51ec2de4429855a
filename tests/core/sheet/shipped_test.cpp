// Every run sheet that comes with the program can be read, is found by its own name, and opens as all of them
// must.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/sheet/sheet_text.h"

namespace {

using namespace wm;

std::vector<std::pair<std::string, std::string>> shipped() {
  std::vector<std::pair<std::string, std::string>> files;
  for (const auto& file :
       std::filesystem::directory_iterator(std::string(WM_TESTS) + "/../resources/sheets")) {
    if (file.path().extension() != ".txt") continue;
    std::ostringstream text;
    text << std::ifstream(file.path()).rdbuf();
    files.emplace_back(file.path().stem().string(), text.str());
  }
  return files;
}

bool has(const std::string& text, const char* word) { return text.find(word) != std::string::npos; }

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
    // The newest revision has the sheet's own name, an earlier one its number too.
    CHECK((sheet->name == name || sheet->name + "-" + std::to_string(sheet->revision) == name));
    CHECK(read_sheet(to_text(*sheet)) == *sheet);
  }
}

TEST_CASE("Every run sheet that comes with the program opens alike, with nothing before it") {
  for (const auto& [name, text] : shipped()) {
    INFO(name);
    const auto sheet = read_sheet(text);
    REQUIRE(sheet);
    REQUIRE(sheet->sections[0].lines.size() >= 5);
    for (std::size_t i = 0; i < sheet_openings.size(); ++i)
      CHECK(sheet->sections[0].lines[i].opens == sheet_openings[i]);
    CHECK(sheet->sections[0].lines[4].text == "The power fails and comes back: what do you do?");
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
    // What the machine's own card allows is asked in each mode, before anything is cut.
    for (const char* mode : {"joint a face", "joint an edge", "plane"}) {
      CHECK(section(*sheet, mode).lines[0].critical);
      CHECK(has(section(*sheet, mode).lines[0].text, "Length, width and thickness within"));
      CHECK(has(section(*sheet, mode).lines[0].text, "limits card"));
    }
    for (const char* mode : {"joint a face", "plane"})
      CHECK(std::ranges::any_of(section(*sheet, mode).lines, [](const SheetLine& line) {
        return line.critical && has(line.text, "what the card allows for this width, never over 1/8 in");
      }));
    CHECK(std::ranges::any_of(section(*sheet, "plane").lines, [](const SheetLine& line) {
      return line.critical && has(line.text, "flat face is down");
    }));
    return;
  }
  FAIL("There is no sheet for the jointer/planer.");
}
