#pragma once
// Run sheets taken in hand at a machine and not signed yet, as they are marked by now.
#include <optional>
#include <string>
#include <vector>

#include "db/facts.h"

namespace wm::db {

class Memory;

/// Days for which a sheet stays in hand after its last mark: what was shown longer ago is shown again, on a
/// new one. Common practice, no source.
inline constexpr int days_in_hand = 30;

struct OpenSheet {
  RecordId id;  // of the record that opened it
  SheetOpened sheet;
  Instant since;
  /// As far as a line was ever marked; later lines have no mark. `measured` in order of the lines.
  std::vector<Mark> marks, again;
  std::vector<LineMeasured> measured;
  Instant last_marked;  // or opened, where no line is
  PersonId marked_by;   // who sat at the station then
  /// When it was put by last, and what was said then; nothing where a line was marked since.
  std::optional<Instant> put_by;
  std::string note;
  std::vector<std::string> restrictions;
};

/// One that is open at `now`: neither signed nor struck out, nor left for too long.
std::optional<OpenSheet> open_sheet(const Memory& memory, const RecordId& id, Instant now);
/// All of them, in the order in which they were opened; for each person and target the latest alone, since a
/// new one takes the place of one on a sheet that has become another.
std::vector<OpenSheet> open_sheets(const Memory& memory, Instant now);

/// Whether the check-out's marks were made, put by or typed in where that person sat, so that they had them
/// before their eyes.
bool saw_marks(const Memory& memory, const RecordId& checkout, const PersonId& person);

}  // namespace wm::db
