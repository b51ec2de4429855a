#include "app/cli/answer_file.h"

#include <fstream>
#include <iostream>
#include <iterator>
#include <optional>

#include "app/cli/refusal.h"
#include "core/scenario/scenario.h"

namespace wm::app {

namespace {

std::optional<std::string> read(const std::string& file) {
  if (file == "-") return std::string(std::istreambuf_iterator<char>(std::cin), {});
  std::ifstream in(file, std::ios::binary);
  if (!in) return std::nullopt;
  std::string text(std::istreambuf_iterator<char>(in), {});
  return in.bad() ? std::nullopt : std::optional(std::move(text));
}

}  // namespace

int answer_file(const std::string& file) {
  const auto text = read(file);
  if (!text)
    return refuse(
        {file, "The file cannot be read", "Give the path of a scenario file, or - for standard input"});
  const auto scenario = read_scenario(*text);
  if (!scenario) {
    for (const Problem& problem : scenario.error()) refuse(problem);
    return 2;
  }
  for (const std::string& line : answer(*scenario)) std::cout << line << '\n';
  std::cout.flush();
  return std::cout
             ? 0
             : refuse({"standard output", "The answers cannot be written", "See whether the disk is full"});
}

}  // namespace wm::app
