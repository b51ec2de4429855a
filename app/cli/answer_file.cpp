#include "app/cli/answer_file.h"

#include <cctype>
#include <fstream>
#include <iostream>
#include <iterator>
#include <optional>

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

std::string closed(std::string sentence) {
  if (!sentence.empty())
    sentence[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(sentence[0])));
  if (!sentence.empty() && sentence.back() != '.' && sentence.back() != '?') sentence += '.';
  return sentence;
}

int refuse(const Problem& problem) {
  std::cerr << problem.where << ": " << closed(problem.what);
  if (!problem.remedy.empty()) std::cerr << ' ' << closed(problem.remedy);
  std::cerr << '\n';
  return 2;
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
