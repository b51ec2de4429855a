#include "app/rosters/door_layout.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "app/words/words.h"

namespace wm::app {
namespace {

struct Tr {
  Q_DECLARE_TR_FUNCTIONS(wm::app::Roster)
};

constexpr double u = paper_unit;
constexpr double narrowest_column = 165 * u;  // at 9 points: two names and a day
constexpr double usual_points = 9;
constexpr double column_gap = 10 * u;

/// A name that is written from right to left stands by itself, or it would take its neighbours along.
QString apart(const QString& name) {
  return name.isRightToLeft() ? QChar(0x2068) + name + QChar(0x2069) : name;
}

/// Names one after another, in lines of at most `width`; no name is parted.
QStringList run_in(const QString& before, const QStringList& names, double points, double width) {
  const QFontMetricsF metrics(paper_font(points));
  QStringList lines{before};
  for (qsizetype i = 0; i < names.size(); ++i) {
    const QString name = apart(names[i]);
    const QString next = i + 1 < names.size() ? name + Tr::tr(";", "between names that have commas") : name;
    const QString longer = lines.back().isEmpty() ? next : lines.back() + ' ' + next;
    if (lines.back().isEmpty() || metrics.horizontalAdvance(longer) <= width * 0.99)
      lines.back() = longer;
    else
      lines << next;
  }
  return lines;
}

/// Words in lines of at most `width`.
QStringList wrapped(const QString& words, double points, double width) {
  const QFontMetricsF metrics(paper_font(points));
  QStringList lines{QString()};
  for (const QString& word : words.split(' ')) {
    const QString longer = lines.back().isEmpty() ? word : lines.back() + ' ' + word;
    if (lines.back().isEmpty() || metrics.horizontalAdvance(longer) <= width * 0.99)
      lines.back() = longer;
    else
      lines << word;
  }
  return lines;
}

/// Fills pages of one size with one machine after another.
class Filler {
 public:
  Filler(const RosterTable& table, const QRectF& body, double points)
      : table_(table), width_(body.width()), height_(body.height() - door_legend_height) {
    blank_.points = points;
    const double narrowest = narrowest_column * points / 9;
    blank_.columns = static_cast<std::size_t>(std::max(1.0, std::floor((width_ + column_gap) / narrowest)));
    blank_.column_width = (width_ + column_gap) / static_cast<double>(blank_.columns);
    blank_.row_height = std::ceil(QFontMetricsF(paper_font(points)).height() + 0.5 * u);
  }

  void machine(std::size_t column) {
    const bool first = pages_.empty();
    const bool new_tier = first || table_.columns[column - 1].tier != table_.columns[column].tier;
    if (new_tier || !room(head() + 2 * group() + 2 * blank_.row_height)) begin_page(column, !new_tier);
    add({.kind = DoorPiece::Kind::machine, .column = column}, head());
    const auto on = [&](Rung rung, bool restricted) {
      return rows(column, [=](const RosterCell& cell) {
        return cell.rung == rung && cell.restricted.isEmpty() != restricted;
      });
    };
    const auto free = on(Rung::independent, false), free_restricted = on(Rung::independent, true);
    const auto watched = on(Rung::supervised, false), watched_restricted = on(Rung::supervised, true);
    const auto assess = rows(column, [](const RosterCell& cell) { return cell.assesses; });
    if (!assess.empty()) in_lines(column, {}, Tr::tr("Sign check-outs:"), assess);
    if (!free.empty()) in_columns(column, free);
    if (!free_restricted.empty())
      restricted(column,
                 Tr::tr("Without a supervisor, restricted: %1", "how many").arg(free_restricted.size()),
                 Rung::independent, free_restricted);
    if (!watched.empty())
      in_lines(column, Tr::tr("Only with a supervisor: %1", "how many").arg(watched.size()), {}, watched);
    if (!watched_restricted.empty())
      restricted(column,
                 Tr::tr("Only with a supervisor, restricted: %1", "how many").arg(watched_restricted.size()),
                 Rung::supervised, watched_restricted);
    if (free.empty() && watched.empty() && free_restricted.empty() && watched_restricted.empty())
      in_lines(column, {}, Tr::tr("Nobody may use it."), {});
    y_ += 6 * u;
  }

  std::vector<DoorPage> pages() { return std::move(pages_); }

 private:
  double head() const { return 2.4 * blank_.points * u; }
  double group() const { return 2.1 * blank_.points * u; }
  bool room(double needed) const { return !pages_.empty() && y_ + needed <= height_; }

  template <class Wanted>
  std::vector<std::size_t> rows(std::size_t column, Wanted wanted) const {
    std::vector<std::size_t> found;
    for (std::size_t row = 0; row < table_.rows.size(); ++row)
      if (wanted(table_.rows[row].cells[column])) found.push_back(row);
    return found;
  }

  void add(DoorPiece piece, double height) {
    piece.top = y_;
    piece.height = height;
    pages_.back().pieces.push_back(std::move(piece));
    y_ += height;
  }

  void begin_page(std::size_t column, bool continued) {
    pages_.push_back(blank_);
    y_ = 0;
    add({.kind = DoorPiece::Kind::tier, .column = column, .continued = continued}, 16 * u);
  }

  void go_on(std::size_t column) {
    begin_page(column, true);
    add({.kind = DoorPiece::Kind::machine, .column = column, .continued = true}, head());
  }

  void heading(std::size_t column, const QString& words, Rung rung) {
    add({.kind = DoorPiece::Kind::group, .column = column, .words = words, .rung = rung}, group());
  }

  std::size_t lines_for(std::size_t names) const { return (names + blank_.columns - 1) / blank_.columns; }

  /// Names go down the first column, then down the next; what does not fit goes on under the same heads.
  void in_columns(std::size_t column, const std::vector<std::size_t>& all) {
    const QString words =
        Tr::tr("Without a supervisor, through the day shown: %1", "how many").arg(all.size());
    for (auto next = all.begin(); next != all.end();) {
      const auto left = static_cast<std::size_t>(all.end() - next);
      const auto wanted = static_cast<double>(std::min<std::size_t>(lines_for(left), 2));
      if (next != all.begin() || !room(group() + wanted * blank_.row_height)) go_on(column);
      heading(column, words, Rung::independent);
      const double lines = std::max(1.0, std::floor((height_ - y_) / blank_.row_height));
      const std::size_t here = std::min(left, static_cast<std::size_t>(lines) * blank_.columns);
      const auto end = next + static_cast<std::ptrdiff_t>(here);
      add({.kind = DoorPiece::Kind::names, .column = column, .rows = {next, end}},
          static_cast<double>(lines_for(here)) * blank_.row_height);
      next = end;
    }
  }

  void in_lines(std::size_t column, const QString& title, const QString& before,
                const std::vector<std::size_t>& people) {
    QStringList names;
    for (const std::size_t row : people) names << table_.rows[row].name;
    std::vector<Line> lines;
    for (const QString& words : run_in(before, names, blank_.points, width_)) lines.push_back({words, {}});
    put_lines(column, title, Rung::supervised, lines);
  }

  /// Each by themselves, with the day and with what is restricted in full.
  void restricted(std::size_t column, const QString& title, Rung rung,
                  const std::vector<std::size_t>& people) {
    std::vector<Line> lines;
    for (const std::size_t row : people) {
      const RosterCell& cell = table_.rows[row].cells[column];
      const QStringList all = wrapped(Tr::tr("%1, %2: %3", "name, day, what is restricted")
                                          .arg(apart(table_.rows[row].name), door_day(cell, table_),
                                               cell.restricted.join(Tr::tr("; ", "between restrictions"))),
                                      blank_.points, width_);
      for (const QString& words : all)
        lines.push_back({words, &words == &all.front() ? std::vector{row} : std::vector<std::size_t>()});
    }
    put_lines(column, title, rung, lines);
  }

  struct Line {
    QString words;
    std::vector<std::size_t> rows;
  };
  void put_lines(std::size_t column, const QString& title, Rung rung, const std::vector<Line>& lines) {
    if (!room((title.isEmpty() ? 0 : group()) +
              static_cast<double>(std::min<std::size_t>(2, lines.size())) * blank_.row_height))
      go_on(column);
    if (!title.isEmpty()) heading(column, title, rung);
    for (const Line& line : lines) {
      if (!room(blank_.row_height)) {
        go_on(column);
        if (!title.isEmpty()) heading(column, title, rung);
      }
      add({.kind = DoorPiece::Kind::line, .column = column, .rows = line.rows, .words = line.words},
          blank_.row_height);
    }
  }

  const RosterTable& table_;
  const double width_, height_;
  DoorPage blank_;
  std::vector<DoorPage> pages_;
  double y_ = 0;
};

/// On one page as large as it goes, else on several at the usual size.
std::vector<DoorPage> pages_of(const RosterTable& table, std::size_t column, const QRectF& body) {
  std::vector<DoorPage> pages;
  for (const double points : {16.0, 14.0, 12.0, 10.5, usual_points}) {
    Filler filler(table, body, points);
    filler.machine(column);
    pages = filler.pages();
    if (pages.size() == 1) break;
  }
  return pages;
}

}  // namespace

std::vector<DoorPage> lay_out_door(const RosterTable& table, bool machine_a_page, const QRectF& body) {
  if (table.columns.empty()) return {DoorPage{}};
  Filler filler(table, body, usual_points);
  std::vector<DoorPage> pages;
  for (std::size_t column = 0; column < table.columns.size(); ++column) {
    if (!machine_a_page) {
      filler.machine(column);
      continue;
    }
    for (DoorPage& page : pages_of(table, column, body)) pages.push_back(std::move(page));
  }
  return machine_a_page ? pages : filler.pages();
}

QString door_day(const RosterCell& cell, const RosterTable& table) {
  RosterCell plain = cell;
  plain.assesses = false;
  if (!plain.until || plain.overdue) return cell_detail(plain, table.zone, table.at);
  const Day covered = table.zone.day(*plain.until) + -1;
  if (covered < table.zone.day(table.at)) return cell_detail(plain, table.zone, table.at);
  return short_day(table.zone.start(covered), table.zone);
}

}  // namespace wm::app
