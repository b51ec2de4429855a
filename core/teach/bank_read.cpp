#include <algorithm>

#include "core/teach/bank_text.h"
#include "core/teach/blueprint.h"
#include "core/teach/reading.h"

namespace wm::teach {
namespace {

constexpr std::size_t largest_text = 16u << 20;

bool begins_question(const Line& line) { return line.text.starts_with(question_key); }

/// Reads one question after another; gives the lines at which they begin.
std::vector<std::size_t> read_questions(std::span<const Line> lines, Bank& bank, Mistakes& mistakes) {
  std::vector<std::size_t> titles;
  while (!lines.empty()) {
    const auto next = std::find_if(lines.begin() + 1, lines.end(), begins_question);
    if (titles.size() == most_questions) {
      mistakes.add(lines.front().number, "The bank has more than 10,000 questions.", "Make two banks of it.");
      break;
    }
    titles.push_back(lines.front().number);
    bank.questions.push_back(read_question({lines.begin(), next}, bank.languages, mistakes));
    lines = {next, lines.end()};
  }
  return titles;
}

void tell(std::vector<Shortfall> shortfalls, const Top& top, const std::vector<std::size_t>& titles,
          Mistakes& mistakes) {
  for (Shortfall& each : shortfalls) {
    const std::size_t line = each.of == Shortfall::Of::draw       ? top.draws[each.at]
                             : each.of == Shortfall::Of::question ? titles[each.at]
                                                                  : top.first_line;
    mistakes.add(line, std::move(each.what), std::move(each.remedy));
  }
}

}  // namespace

tl::expected<Bank, std::vector<Problem>> read_bank(std::string_view text) {
  if (text.size() > largest_text)
    return tl::unexpected(std::vector{Problem{"", "The file is larger than 16 MiB.",
                                              "Keep a bank's text in a file and its pictures beside it."}});
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);  // a byte order mark, which some editors write
  Mistakes mistakes;
  const std::vector<Line> lines = lines_of(text, mistakes);
  const auto first = std::find_if(lines.begin(), lines.end(), begins_question);
  Top top = read_top({lines.begin(), first}, mistakes);
  const auto titles = read_questions({first, lines.end()}, top.bank, mistakes);
  tell(repeated_ids(top.bank), top, titles, mistakes);
  // What a mistake left out would be missing here a second time.
  if (mistakes.none()) tell(shortfalls(top.bank), top, titles, mistakes);
  if (!mistakes.none()) return tl::unexpected(std::move(mistakes).in_order());
  return std::move(top.bank);
}

}  // namespace wm::teach
