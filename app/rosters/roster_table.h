#pragma once
// Who may use what on a day: people by machines, worked out once, for the screen and for paper alike.
#include <QString>
#include <optional>
#include <vector>

#include "app/session.h"

namespace wm::app {

/// How a roster lies on paper: people by machines; under each machine its names; the same, a page a machine;
/// a card for the wall beside each machine.
enum class RosterForm { grid, door, machine_a_page, card };

/// Which part of the shop. `tiers`: nothing means all of them. `everybody`: also people with nothing to show
/// (the grid alone has room for them).
struct RosterChoice {
  std::optional<std::vector<int>> tiers;
  bool everybody = false;
  RosterForm form = RosterForm::grid;
  friend bool operator==(const RosterChoice&, const RosterChoice&) = default;
};

struct RosterCell {
  Rung rung = Rung::barred;
  /// The first later instant at which they may do less; nothing: no end is known. A rise is left out: nobody
  /// needs it on a list, and it may be a birthday, which is shown to nobody.
  std::optional<Instant> until;
  bool assesses = false;
  /// It holds by its grace alone: a re-check is overdue.
  bool overdue = false;
  /// What check-outs left open, which stands beside the ladder.
  QStringList restricted{};
  bool empty() const { return rung == Rung::barred && !assesses; }
  friend bool operator==(const RosterCell&, const RosterCell&) = default;
};

struct RosterColumn {
  TargetName target;
  int tier = 0;
  QString machine, mode;     // mode empty where the class has none
  QStringList conditions{};  // of the class and its tier, in words
  friend bool operator==(const RosterColumn&, const RosterColumn&) = default;
};

struct RosterRow {
  PersonId person;
  QString name;  // family name first
  std::vector<RosterCell> cells;
};

struct RosterTable {
  QString shop;
  Zone zone = Zone::utc();
  Instant at, known;
  std::optional<int> rulebook;
  std::vector<RosterColumn> columns;  // by tier, then name; modes of one class together
  std::vector<RosterRow> rows;        // by family name
  /// The first later instant at which somebody on it may do less.
  std::optional<Instant> first_fall;
  /// The ledger's head as known then, in its short form.
  QString ledger;
  /// What cards for the wall say is to be called and said, as it is now; empty: nothing has been entered.
  db::EmergencyCall emergency{};
};

/// On the session's asked date, as known on its date.
RosterTable roster_table(Session& session, const RosterChoice& choice);
/// The tiers of the rulebook in force on the session's date, in order.
std::vector<int> roster_tiers(Session& session);

/// The cell's two lines: "unsupervised" and "through 2 May 2027", "assesses, 19 Jun 2027", "overdue, 11 Dec
/// 2026".
QString cell_words(const RosterCell& cell);
QString cell_detail(const RosterCell& cell, const Zone& zone, Instant at);

}  // namespace wm::app
