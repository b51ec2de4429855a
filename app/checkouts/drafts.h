#pragma once
// What has been marked on run sheets and is not signed yet, kept by this station: in memory, and in a file
// where there is a folder for it, so that neither a power cut nor a hand-over costs an assessor their marks.
#include <QStringList>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "app/checkouts/on_sheet.h"
#include "app/checkouts/one_on_ones.h"

namespace wm::app {

/// What has been marked and written for one one-on-one.
struct Draft {
  OneOnOne one;  // where there is no booking to find it again by
  std::string sheet;
  int sheet_revision = 0;
  OnSheet on_sheet;
  QString restrictions, note;
  QString known_restrictions, known_note;  // as the store had them when it was last looked at
  std::optional<Outcome> outcome;          // chosen by hand
  std::optional<PersonId> assessor, with;  // who signs it with the assessor
  PersonId marked_by;                      // who sat here when it was last changed
  Instant changed;
  PersonId second;       // whose marks these are, of one that is signed already; empty: the first's
  RecordId opened;       // the sheet in hand in the shop's store; empty: not there yet
  std::set<int> unsent;  // lines, from 1 on, that were marked here and are not in the store yet

  bool apart() const { return !second.empty(); }
  std::string key() const { return key_of(one.key(), second); }
  /// Each second assessor's draft stands beside the first's.
  static std::string key_of(const std::string& one_on_one, const PersonId& second) {
    return second.empty() ? one_on_one : one_on_one + "\napart\n" + second;
  }
};

/// A draft is no record: nothing counts before it is signed. It is gone once signed, or when it is left for
/// too long. What of one that had to go is in no store stays as a sentence, for somebody to read.
class Drafts {
 public:
  static constexpr int days_kept = 14;
  /// `folder` empty: in memory only.
  explicit Drafts(const QString& folder);
  /// Reads what was kept. A file that cannot be read is put aside under another name and told, never
  /// overwritten.
  std::optional<Problem> read(Instant now);

  Draft* find(const std::string& key);
  Draft& at(const std::string& key) { return all_[key]; }
  const std::map<std::string, Draft>& all() const { return all_; }
  void drop(const std::string& key);
  /// Whether it was last changed more than `days_kept` days ago.
  static bool too_old(const Draft& draft, Instant now);
  /// In the order in which they were left.
  const QStringList& left_behind() const { return left_behind_; }
  void leave_behind(const QString& sentence) { left_behind_ << sentence; }
  void forget_left_behind() { left_behind_.clear(); }
  /// Writes all of them, or leaves the file as it was and says so.
  std::optional<Problem> write() const;

 private:
  QString path_;
  std::map<std::string, Draft> all_;
  QStringList left_behind_;
};

}  // namespace wm::app
