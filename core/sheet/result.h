#pragma once
// What the marks on a run sheet come to.
#include <cstddef>
#include <span>
#include <vector>

#include "core/records/record.h"
#include "core/sheet/mark.h"
#include "core/sheet/sheet.h"

namespace wm {

enum class Suggested { not_finished, failed, passed };

/// Line numbers from 0 on, in order.
struct SheetResult {
  Suggested suggested = Suggested::not_finished;
  std::vector<std::size_t> critical_missed;  // critical and not shown: any one means failed
  std::vector<std::size_t> unmarked;
  std::vector<std::size_t> show_again;  // critical, shown when asked, and not yet shown unasked since
  std::vector<std::size_t> missed;      // not critical and not shown: to be noted, no bar to a pass
  std::vector<std::size_t>
      to_measure;  // shown or not yet marked, and not measured by an instrument that can tell
  friend bool operator==(const SheetResult&, const SheetResult&) = default;
};

/// What was measured at a line, the last time it was.
using MaybeMeasured = std::optional<Measured>;

/// `marks`, `again` and `measured` go by line; what is missing at their ends counts as none, what is over as
/// nothing. A second mark counts only where the first is `shown_when_asked`, a measure only where the line
/// asks for one. The rule stands in core/sheet/README.md.
SheetResult result_of(const Sheet& sheet, std::span<const Mark> marks, std::span<const Mark> again,
                      std::span<const MaybeMeasured> measured);
/// By the marks alone, for whoever keeps no measures: a line that asks for one goes by its mark.
SheetResult result_of(const Sheet& sheet, std::span<const Mark> marks, std::span<const Mark> again);

/// What was seen at the first showing of each line of the sheet: its mark, or where it has none what its
/// measure says by itself, within tolerance or not.
std::vector<Mark> first_seen(const Sheet& sheet, std::span<const Mark> marks,
                             std::span<const MaybeMeasured> measured);

/// Whether an assessor may sign this outcome for such a sheet: after a critical miss only `failed`; `passed`
/// only where it is suggested.
bool may_sign(const SheetResult& result, Outcome outcome);

}  // namespace wm
