#pragma once
// A card for the wall beside a machine: who may use it, without and with a supervisor, what to mind, and whom
// to call. A page a machine class, its modes together.
#include <vector>

#include "app/print/text_paper.h"
#include "app/rosters/roster_table.h"

namespace wm::app {

/// One page, or as many as a long list of names takes.
struct WallCard {
  int tier = 1;
  LaidText text;
};

/// In the table's order. The number to call is the table's; where it is empty the card has room for it.
std::vector<WallCard> lay_out_cards(const RosterTable& table, const PaperText& paper);
void draw_card(QPainter& painter, const QRectF& body, const WallCard& card, int page);

}  // namespace wm::app
