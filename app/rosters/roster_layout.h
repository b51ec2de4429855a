#pragma once
// How a roster is cut into pages: columns as wide as their words, kept by tier and machine, people below one
// another.
#include <vector>

#include "app/print/paper.h"
#include "app/rosters/roster_table.h"

namespace wm::app {

/// Columns and rows of one page, as places in the table.
struct RosterSheet {
  std::vector<std::size_t> columns, rows;
};

/// Lengths in paper units; a row is higher where something in it is restricted.
struct RosterLayout {
  double name_width = 0, column_width = 0, head_height = 0, row_height = 0;
  std::vector<RosterSheet> sheets;
};

/// Columns are kept together by class, and by tier where a whole tier fits. Unless `everybody`, a person
/// stands only on pages where they have something. An empty table gives one empty sheet.
RosterLayout lay_out(const RosterTable& table, bool everybody, const QRectF& body);
/// How high a person's row is on a page with these columns: what is restricted stands there in full.
double row_height_of(const RosterRow& row, const RosterLayout& layout,
                     const std::vector<std::size_t>& columns);
/// One page: column heads, people, the key to the words.
void draw_sheet(QPainter& painter, const QRectF& body, const RosterTable& table, const RosterLayout& layout,
                const RosterSheet& sheet);

}  // namespace wm::app
