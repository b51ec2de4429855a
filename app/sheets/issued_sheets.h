#pragma once
// The run sheets that were issued, from when each revision counts, and which are missing.
#include <vector>

#include "app/sheets/own_sheets.h"
#include "app/works/revisions.h"

namespace wm::app {

struct SheetRevision : Revision {
  Sheet sheet;
};

/// By name, the newest revision first. As known at the session's date.
std::vector<SheetRevision> issued_sheets(const Session& session);
/// The highest revision that was published for the check-out, 0 for none.
int highest_published(const Session& session, const std::string& checkout);

/// A check-out that the rules in force ask for on a class, and for which no sheet has been issued that counts
/// or will count.
struct MissingSheet {
  std::string machine_class, checkout;
  /// The program's own for it, which can be taken over: that of the revision that was published, else its
  /// newest. Null where the program has none.
  const OwnSheet* own = nullptr;
};
std::vector<MissingSheet> missing_sheets(Session& session, const std::vector<SheetRevision>& sheets);

/// A sheet's text for a machine of the shop's own: the lines of `like`, or where there is none how every
/// sheet opens, in the program's words, and a place for the rest.
std::string new_sheet_text(const Session& session, const MissingSheet& missing, const Sheet* like = nullptr);
/// The revision under which a text of that sheet would be issued next: its own where it can be, and one that
/// was published without a text rather than a new one, so that nobody has to be checked out anew for it.
int next_revision(const Session& session, const std::vector<SheetRevision>& sheets, const Sheet& sheet);

/// Issues the program's own as they are, all or none; those published already are not published again.
Expected<db::Committed> take_over(Session& session, const std::vector<SheetRevision>& sheets,
                                  const std::vector<MissingSheet>& missing);

}  // namespace wm::app
