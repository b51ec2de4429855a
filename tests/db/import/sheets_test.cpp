#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

#include "core/rulebook/json.h"
#include "core/sheet/sheet_text.h"

using namespace wm;

namespace {

std::string text_of(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

}  // namespace

TEST_CASE("Every check-out of the demo's rulebook has a run sheet that opens alike") {
  const std::filesystem::path resources = WM_RESOURCES;
  const auto book = read_rulebook(text_of(resources / "demo/rulebook-2.json"));
  REQUIRE(book);
  std::set<std::string> wanted, found;
  for (const MachineClass& machine : book->classes)
    for (const Gate& gate : machine.gates)
      if (const auto* checkout = std::get_if<NeedCheckout>(&gate.need.need))
        wanted.insert(checkout->checkout);
  for (const auto& file : std::filesystem::directory_iterator(resources / "sheets")) {
    INFO(file.path().string());
    if (file.path().extension() != ".txt") continue;
    const auto sheet = read_sheet(text_of(file.path()));
    REQUIRE(sheet);
    CHECK(file.path().stem().string().starts_with(sheet->name));
    CHECK(find_class(*book, sheet->machine_class));
    CHECK(sheet->sections.front().name == "before");
    CHECK(sheet->sections.front().lines.size() == sheet_openings.size());
    CHECK(sheet->sections.front().lines.back().text == "The power fails and comes back: what do you do?");
    found.insert(sheet->checkout);
  }
  CHECK(found == wanted);
}
