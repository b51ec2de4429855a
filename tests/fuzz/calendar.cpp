// A calendar that is taken gives stretches in order, which are the same again when they are written as a
// calendar; one that is not taken is told why.
#include "core/calendar/busy.h"
#include "core/calendar/write.h"
#include "tests/fuzz/holds.h"

namespace {

using namespace wm;

const Zone& shop() {
  static const Zone zone = Zone::named("America/New_York").value();
  return zone;
}

const Interval spring{{1772323200}, {1777593600}};  // March and April 2026

std::string written(const std::vector<Interval>& busy) {
  calendar::CalendarFile file;
  file.organizer = "mailto:desk@shop.example";
  for (const Interval& each : busy)
    file.events.push_back({std::to_string(file.events.size()), 0, false, each, "busy", "", ""});
  return calendar::write_calendar(file);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  const auto busy = calendar::read_busy(fuzz::text(data, size), shop(), spring);
  if (!busy) {
    fuzz::is_told(busy.error());
    return 0;
  }
  for (std::size_t i = 0; i < busy->size(); ++i) {
    const Interval& each = (*busy)[i];
    fuzz::holds(each.from < each.to && overlap(each, spring),
                "a stretch lasts, and overlaps the time asked about");
    fuzz::holds(i == 0 || (*busy)[i - 1].to < each.from, "stretches that touch are one");
  }
  if (!busy->empty())
    fuzz::holds(calendar::read_busy(written(*busy), shop(), spring) == *busy,
                "what is read again is what was read");
  return 0;
}
