#pragma once
// Papers of the shop: their size, title, foot and caution line, and the pages in between, for a printer or a
// PDF.
#include <QFont>
#include <QLocale>
#include <QPagedPaintDevice>
#include <QPainter>
#include <functional>
#include <optional>

#include "core/problem.h"

namespace wm::app {

enum class PaperSize { letter, a4 };

/// What a country's offices print on: Letter in North America and where CLDR says so, A4 elsewhere.
PaperSize usual_paper(const QLocale& locale);
/// As set at this station, or the locale's.
PaperSize paper_size();
/// Nothing: the locale's again.
void set_paper_size(std::optional<PaperSize> size);

/// What stands on every page of one paper. `foot` goes before "Page 1 of 2". `ledger`: the head of the
/// ledger, by which somebody can tell later whether what the paper was made from was changed since.
struct PaperText {
  QString title;
  QString subtitle;
  QString foot;
  QString ledger;
  PaperSize size = PaperSize::a4;
  bool landscape = false;
  bool personal = false;  // a file of it is for its owner's eyes only
};

/// Papers are laid out in tenths of a typographic point (720 to the inch), whatever the device.
inline constexpr double paper_unit = 10;
QFont paper_font(double points, bool heavy = false);
/// The room that head, foot and caution leave, in paper units, from the top left of the printable area.
QRectF paper_body(const PaperText& text);
/// All that can be printed on of one page, in paper units.
QSizeF printable(const PaperText& text);

/// Draws what page `page` (from 0) has between head and foot, in paper units.
using DrawBody = std::function<void(QPainter& painter, const QRectF& body, int page)>;

void set_up(QPagedPaintDevice& device, const PaperText& text);
/// Draws all pages on whatever the painter paints on, which has `dpi` dots to the inch; `new_page` begins
/// another one.
bool draw_paper(QPainter& painter, int dpi, const PaperText& text, int pages, const DrawBody& draw,
                const std::function<bool()>& new_page);
/// False where the device does not take it (no such printer, a full disk).
bool paint_paper(QPagedPaintDevice& device, const PaperText& text, int pages, const DrawBody& draw);
/// All or nothing: what stood at `path` stays until the whole paper is written. Answers the number of pages.
Expected<int> write_pdf(const QString& path, const PaperText& text, int pages, const DrawBody& draw);

}  // namespace wm::app
