#include "app/cli/refusal.h"

#include <cctype>
#include <iostream>
#include <string>

namespace wm::app {
namespace {

std::string closed(std::string sentence) {
  if (!sentence.empty())
    sentence[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(sentence[0])));
  if (!sentence.empty() && sentence.back() != '.' && sentence.back() != '?') sentence += '.';
  return sentence;
}

}  // namespace

int refuse(const Problem& problem) {
  std::cerr << problem.where << ": " << closed(problem.what);
  if (!problem.remedy.empty()) std::cerr << ' ' << closed(problem.remedy);
  std::cerr << '\n';
  return 2;
}

}  // namespace wm::app
