// A run sheet that is taken is written out, and read again as the same; one that is not taken is told why.
#include "core/json/writing.h"
#include "core/sheet/json.h"
#include "tests/fuzz/holds.h"

namespace {

using namespace wm;
using json::in_quotes;

std::string written(const SheetLine& line) {
  std::vector<json::Member> members{{"text", in_quotes(line.text)}};
  if (!line.says.empty()) members.emplace_back("says", in_quotes(line.says));
  if (line.critical) members.emplace_back("critical", "true");
  return json::compact(members);
}

template <class T>
std::string all_written(const std::vector<T>& items);

std::string written(const SheetSection& section) {
  return json::compact({{"section", in_quotes(section.name)}, {"lines", all_written(section.lines)}});
}

template <class T>
std::string all_written(const std::vector<T>& items) {
  std::vector<std::string> all;
  for (const T& item : items) all.push_back(written(item));
  return json::compact(all);
}

std::string written(const Sheet& sheet) {
  std::vector<json::Member> members{{"sheet", in_quotes(sheet.name)},
                                    {"revision", std::to_string(sheet.revision)},
                                    {"class", in_quotes(sheet.machine_class)},
                                    {"checkout", in_quotes(sheet.checkout)},
                                    {"sections", all_written(sheet.sections)}};
  if (!sheet.title.empty()) members.emplace_back("title", in_quotes(sheet.title));
  return json::compact(members);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  const auto sheet = read_sheet(fuzz::text(data, size));
  if (!sheet) {
    fuzz::is_told(sheet.error());
    return 0;
  }
  const auto again = read_sheet(written(*sheet));
  fuzz::holds(again.has_value(), "what was written is read again");
  fuzz::holds(*again == *sheet, "what is read again is what was read");
  fuzz::holds(lines_of(*sheet).size() == line_count(*sheet) && line_count(*sheet) > 0,
              "a sheet has its lines");
  return 0;
}
