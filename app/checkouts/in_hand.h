#pragma once
// A run sheet in hand, at this station and in the shop's store: what is marked here goes there, and what was
// marked at another station comes from there.
#include "app/checkouts/drafts.h"
#include "core/sheet/typed.h"

namespace wm::app {

/// The sheet that is open for somebody on a machine in the very revision that is marked here; nothing where
/// there is none.
std::optional<db::OpenSheet> in_hand(const Session& session, const OneOnOne& one, const Sheet& sheet);
/// Marks and measures as a sheet of this station shows them.
OnSheet on_sheet_of(const std::vector<Mark>& marks, const std::vector<Mark>& again,
                    const std::vector<LineMeasured>& measured, const Sheet& sheet);

/// Lines that were not marked here since they were last sent become what the store says, and so do
/// restrictions and note. True where one of these was changed here and there: both stand in it then.
bool take_from_store(Draft& draft, const db::OpenSheet& open, const Sheet& sheet);
/// Notes which lines the new marks change.
void note_changed(Draft& draft, const OnSheet& now);
/// Notes that the store has none of it: it was put back as it was before.
void note_lost(Draft& draft);
/// Sends what is not there yet, opening the sheet where it is not open; leaves out the measure of `typing`
/// (from 1 on; 0: none), which is typed just now, and measures that can't be understood. What could not be
/// sent stays noted in the draft.
Expected<void> send(Session& session, Draft& draft, const Sheet& sheet, int typing);

}  // namespace wm::app
