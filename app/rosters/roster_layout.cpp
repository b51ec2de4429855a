#include "app/rosters/roster_layout.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "app/rosters/roster_drawing.h"
#include "app/words/standing_words.h"

namespace wm::app {
namespace {

constexpr double u = paper_unit;
constexpr double gap = 6 * u;           // between one column's words and the next column
constexpr double ladder_room = 14 * u;  // the ladder and the space after it
constexpr double widest_name = 130 * u;
constexpr double widest_stretch = 1.35;

double width_of(const QFont& font, const QString& text) {
  return QFontMetricsF(font).horizontalAdvance(text);
}

double widest_word(const QFont& font, const QString& text) {
  double widest = 0;
  for (const QString& word : text.split(' ')) widest = std::max(widest, width_of(font, word));
  return widest;
}

double cell_width(const RosterTable& table, const RosterCell& cell) {
  const double words = width_of(paper_font(8, cell.rung == Rung::independent), cell_words(cell));
  const double detail = width_of(paper_font(7), cell_detail(cell, table.zone, table.at));
  return ladder_room + std::max(words, detail);
}

double needed_column_width(const RosterTable& table) {
  double needed = 50 * u;
  for (const RosterColumn& column : table.columns)
    needed = std::max(
        {needed, widest_word(paper_font(8, true), column.machine), widest_word(paper_font(7), column.mode)});
  for (const RosterRow& row : table.rows)
    for (const RosterCell& cell : row.cells) needed = std::max(needed, cell_width(table, cell));
  return std::ceil(needed + gap);
}

double needed_name_width(const RosterTable& table) {
  double needed = 60 * u;
  for (const RosterRow& row : table.rows) needed = std::max(needed, width_of(paper_font(9), row.name));
  return std::min(widest_name, std::ceil(needed + gap + 6 * u));
}

/// Lines that the words of a head take when wrapped at the column's width.
double wrapped_height(const QFont& font, const QString& text, double width) {
  if (text.isEmpty()) return 0;
  return QFontMetricsF(font).boundingRect(QRectF(0, 0, width, 1000 * u), Qt::TextWordWrap, text).height();
}

double needed_head_height(const RosterTable& table, double column_width) {
  double needed = 0;
  for (const RosterColumn& column : table.columns)
    needed = std::max(needed, wrapped_height(paper_font(8, true), column.machine, column_width - gap) +
                                  wrapped_height(paper_font(7), column.mode, column_width - gap));
  return 15 * u + needed + 4 * u;  // the tier's line above
}

/// The columns from `from` on that must not be parted: those of one class.
std::size_t class_end(const RosterTable& table, std::size_t from) {
  const std::string_view machine = class_of(table.columns[from].target);
  std::size_t end = from + 1;
  while (end < table.columns.size() && class_of(table.columns[end].target) == machine) ++end;
  return end;
}

std::size_t tier_end(const RosterTable& table, std::size_t from) {
  std::size_t end = from + 1;
  while (end < table.columns.size() && table.columns[end].tier == table.columns[from].tier) ++end;
  return end;
}

/// Groups of at most `most` columns: a tier that fits on one page is not parted, nor is a class.
std::vector<std::vector<std::size_t>> column_groups(const RosterTable& table, std::size_t most) {
  std::vector<std::vector<std::size_t>> groups(1);
  for (std::size_t at = 0; at < table.columns.size();) {
    const bool new_tier = at == 0 || table.columns[at].tier != table.columns[at - 1].tier;
    const std::size_t whole = tier_end(table, at) - at;
    const std::size_t end = std::min(class_end(table, at), at + most);
    const std::size_t room = most - groups.back().size();
    const bool parts_a_tier = new_tier && whole > room && whole <= most;
    if (!groups.back().empty() && (end - at > room || parts_a_tier)) groups.emplace_back();
    for (; at < end; ++at) groups.back().push_back(at);
  }
  return groups;
}

std::vector<std::size_t> rows_for(const RosterTable& table, bool everybody,
                                  const std::vector<std::size_t>& columns) {
  std::vector<std::size_t> rows;
  for (std::size_t row = 0; row < table.rows.size(); ++row)
    if (everybody ||
        std::ranges::any_of(columns, [&](std::size_t c) { return !table.rows[row].cells[c].empty(); }))
      rows.push_back(row);
  return rows;
}

void add_sheets(RosterLayout& layout, const RosterTable& table, const std::vector<std::size_t>& columns,
                const std::vector<std::size_t>& rows, double room) {
  double used = room;
  for (const std::size_t row : rows) {
    const double height = row_height_of(table.rows[row], layout, columns);
    if (used + height > room) {
      layout.sheets.push_back({columns, {}});
      used = 0;
    }
    layout.sheets.back().rows.push_back(row);
    used += height;
  }
}

}  // namespace

double row_height_of(const RosterRow& row, const RosterLayout& layout,
                     const std::vector<std::size_t>& columns) {
  double needed = 0;
  for (const std::size_t column : columns)
    needed =
        std::max(needed, wrapped_height(paper_font(7, true), restricted_words(row.cells[column].restricted),
                                        layout.column_width - gap));
  return layout.row_height + (needed > 0 ? std::ceil(needed + 2 * u) : 0);
}

RosterLayout lay_out(const RosterTable& table, bool everybody, const QRectF& body) {
  RosterLayout layout;
  layout.name_width = needed_name_width(table);
  layout.row_height = 20 * u;
  const double needed = needed_column_width(table);
  const double room = body.width() - layout.name_width;
  const auto most = static_cast<std::size_t>(std::max(1.0, std::floor(room / needed)));
  const auto groups = column_groups(table, most);
  std::size_t widest = 1;
  for (const auto& group : groups) widest = std::max(widest, group.size());
  layout.column_width = std::min(room / static_cast<double>(widest), needed * widest_stretch);
  layout.head_height = needed_head_height(table, layout.column_width);
  const double rows_room = body.height() - layout.head_height - roster_legend_height;
  for (const auto& columns : groups) {
    const auto rows = rows_for(table, everybody, columns);
    if (!rows.empty()) add_sheets(layout, table, columns, rows, rows_room);
  }
  if (layout.sheets.empty()) layout.sheets.push_back({groups.front(), {}});
  return layout;
}

}  // namespace wm::app
