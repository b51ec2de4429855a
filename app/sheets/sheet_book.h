#pragma once
// The run sheets that people are checked out on now, and every earlier revision that marks or papers are of.
#include <QString>
#include <map>
#include <vector>

#include "app/session.h"
#include "core/sheet/sheet.h"

namespace wm::app {

/// What it answers with stays where it is for as long as the book is there: a text that was issued never
/// becomes another.
class SheetBook {
 public:
  explicit SheetBook(Session& session) : session_(session) {}
  /// Of these sheets alone, as if they had been issued and published.
  SheetBook(Session& session, const std::vector<Sheet>& instead);

  /// The sheet that somebody is checked out on now, by all that is known: issued, and counting already. Null
  /// where there is none.
  const Sheet* for_target(const TargetName& target);
  /// Why there is none, and what to do.
  QString why_none(const TargetName& target);
  /// A revision as it was issued, else as it came with the program; null where it is not known.
  const Sheet* revision(const std::string& name, int revision);
  /// Every revision that counts or has counted, by name, the newest first: a paper may be of any.
  std::vector<const Sheet*> on_paper();

 private:
  using Key = std::pair<std::string, int>;
  const Sheet* keep(const Sheet& sheet);
  /// Issued and counting by now.
  std::vector<const Sheet*> counting();

  Session& session_;
  std::map<Key, Sheet> kept_;
  bool instead_ = false;
};

}  // namespace wm::app
