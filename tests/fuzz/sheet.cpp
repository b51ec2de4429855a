// A run sheet that is taken is written out, and read again as the same; one that is not taken is told why.
#include "core/sheet/changes.h"
#include "core/sheet/sheet_text.h"
#include "tests/fuzz/holds.h"

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  using namespace wm;
  const auto sheet = read_sheet(fuzz::text(data, size));
  if (!sheet) {
    fuzz::is_told(sheet.error());
    return 0;
  }
  const auto again = read_sheet(to_text(*sheet));
  fuzz::holds(again.has_value(), "what was written is read again");
  fuzz::holds(*again == *sheet, "what is read again is what was read");
  fuzz::holds(lines_of(*sheet).size() == line_count(*sheet) && line_count(*sheet) > 0,
              "a sheet has its lines");
  fuzz::holds(changes(*sheet, *again) == SheetChanges{}, "what is the same has not changed");
  return 0;
}
