#include "core/measure/folded.h"

#include <utility>

namespace wm {
namespace {

constexpr std::size_t most_bytes = 60;

constexpr std::pair<std::string_view, std::string_view> folds[] = {
    {"½", " 1/2"},    {"⅓", " 1/3"},     {"⅔", " 2/3"},   {"¼", " 1/4"},   {"¾", " 3/4"},
    {"⅕", " 1/5"},    {"⅖", " 2/5"},     {"⅗", " 3/5"},   {"⅘", " 4/5"},   {"⅙", " 1/6"},
    {"⅚", " 5/6"},    {"⅐", " 1/7"},     {"⅛", " 1/8"},   {"⅜", " 3/8"},   {"⅝", " 5/8"},
    {"⅞", " 7/8"},    {"⅑", " 1/9"},     {"⅒", " 1/10"},  {"\u2044", "/"},  // fraction slash
    {"\u2215", "/"},                                                        // division slash
    {"\u2010", "-"},                                                        // hyphen
    {"\u2011", "-"},                                                        // non-breaking hyphen
    {"\u2012", "-"},                                                        // figure dash
    {"\u2013", "-"},                                                        // en dash
    {"\u2212", "-"},                                                        // minus
    {"\u2033", "\""},                                                       // double prime
    {"\u201c", "\""},                                                       // what a tablet makes of a '"'
    {"\u201d", "\""}, {"\u2032", "'"},                                      // prime
    {"\u2019", "'"},  {"\u00b0", "deg"}, {"\u00a0", " "},  // no-break, thin and narrow no-break space
    {"\u2009", " "},  {"\u202f", " "},   {"\t", " "},
};

bool plain(char c) {
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
         std::string_view(" .,/-\"'").find(c) != std::string_view::npos;
}

/// What stands at the front of `rest`: how many bytes of it, and what they are folded into. No bytes: nothing
/// that we know.
std::pair<std::size_t, std::string> front_of(std::string_view rest) {
  if (plain(rest[0])) return {1, {rest[0] >= 'A' && rest[0] <= 'Z' ? char(rest[0] - 'A' + 'a') : rest[0]}};
  for (const auto& [typed, means] : folds)
    if (rest.starts_with(typed)) return {typed.size(), std::string(means)};
  return {0, ""};
}

void trim(Folded& folded) {
  const std::size_t end = folded.text.find_last_not_of(' ') + 1;
  folded.text.resize(end);
  folded.place.resize(end + 1);
  const std::size_t begin = std::min(folded.text.find_first_not_of(' '), folded.text.size());
  folded.text.erase(0, begin);
  folded.place.erase(folded.place.begin(), folded.place.begin() + static_cast<std::ptrdiff_t>(begin));
}

}  // namespace

Expected<Folded> folded(std::string_view typed) {
  Folded out;
  std::size_t place = 1;
  if (typed.size() > most_bytes)
    return tl::unexpected(
        Problem{"character 1", "This is too long to be a number.", "Write only the number and its unit."});
  for (std::size_t i = 0; i < typed.size(); ++place) {
    const auto [bytes, means] = front_of(typed.substr(i));
    if (bytes == 0) {
      out.place.push_back(place);
      return tl::unexpected(problem_at(out, out.text.size(), "There is a character here that no number has.",
                                       "Write it as 1 3/8, 0.992 or 25.2 mm."));
    }
    out.text += means;
    out.place.insert(out.place.end(), means.size(), place);
    i += bytes;
  }
  out.place.push_back(place);
  trim(out);
  return out;
}

Problem problem_at(const Folded& folded, std::size_t at, std::string what, std::string remedy) {
  return {"character " + std::to_string(folded.place[at]), std::move(what), std::move(remedy)};
}

}  // namespace wm
