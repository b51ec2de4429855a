// A lesson's parts put together are its page again, and what it shows stands on lines that it has.
#include "core/teach/lesson.h"

#include <algorithm>

#include "tests/fuzz/holds.h"

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  using namespace wm;
  const std::string_view page = fuzz::text(data, size);
  std::string together;
  for (const teach::LessonPart& part : teach::parts_of(page)) together += part.text;
  const bool blank = page.find_first_not_of(" \t\r\n") == page.npos;
  // Blank lines before the first part are no part of it.
  fuzz::holds(blank ? together.empty() : page.ends_with(together), "the parts are the page");
  const auto lines = static_cast<std::size_t>(std::count(page.begin(), page.end(), '\n')) + 1;
  for (const teach::Shown& shown : teach::shown_in(page))
    fuzz::holds(!shown.name.empty() && shown.line >= 1 && shown.line <= lines, "what is shown has a place");
  return 0;
}
