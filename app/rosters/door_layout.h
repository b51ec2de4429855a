#pragma once
// A roster for a door: under each machine the names of those who may use it, in columns, with the last day
// that counts.
#include <vector>

#include "app/print/paper.h"
#include "app/rosters/roster_table.h"

namespace wm::app {

/// One thing on a page, from the top down. `column` and `rows` are places in the table; `top` and `height`
/// are paper units from the body's top.
struct DoorPiece {
  enum class Kind { tier, machine, group, names, line };
  Kind kind;
  std::size_t column = 0;
  std::vector<std::size_t> rows{};  // of names: those in this piece; of a line: who is restricted
  QString words{};                  // of a group and of a line
  Rung rung = Rung::barred;         // of a group: the ladder before its words
  bool continued = false;           // from the page before
  double top = 0, height = 0;
};

/// Lengths in paper units. `points` is the size of names.
struct DoorPage {
  double points = 9;
  double column_width = 0, row_height = 0;
  std::size_t columns = 1;
  std::vector<DoorPiece> pieces{};
};

/// Under each machine: who assesses it, who may use it without a supervisor and through which day, and who
/// only with one. The last are run into lines without their days: the paper's foot has the first on which any
/// of it is over. A tier begins a page, and so does a machine where each has a page of its own: then names
/// are as large as that page allows. An empty table gives one empty page.
std::vector<DoorPage> lay_out_door(const RosterTable& table, bool machine_a_page, const QRectF& body);
void draw_door(QPainter& painter, const QRectF& body, const RosterTable& table, const DoorPage& page);

/// What the foot of a page needs for the words that explain it.
inline constexpr double door_legend_height = 16 * paper_unit;

/// The day beside a name: "15 Nov 2027", "no end", "overdue, 15 Dec 2026".
QString door_day(const RosterCell& cell, const RosterTable& table);

}  // namespace wm::app
