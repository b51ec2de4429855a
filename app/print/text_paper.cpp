#include "app/print/text_paper.h"

#include <QAbstractTextDocumentLayout>
#include <QTextDocument>
#include <QTextTable>
#include <algorithm>
#include <cmath>
#include <memory>

namespace wm::app {
namespace {

/// Tables that take less of a page are not broken.
constexpr double small_table = 0.35;
/// Longer ones are broken as Qt does it: whenever a row is moved it lays all of a table out anew.
constexpr int most_rows = 150;

struct Extent {
  double top, bottom;
};

Extent of_row(const QTextDocument& document, const QTextTable& table, int row) {
  Extent out{1e9, 0};
  for (int column = 0; column < table.columns(); ++column) {
    const QTextTableCell cell = table.cellAt(row, column);
    if (cell.row() != row || cell.column() != column) continue;
    const auto rect = [&](const QTextCursor& at) {
      return document.documentLayout()->blockBoundingRect(at.block());
    };
    out.top = std::min(out.top, rect(cell.firstCursorPosition()).top());
    out.bottom = std::max(out.bottom, rect(cell.lastCursorPosition()).bottom());
  }
  return out;
}

/// The next row begins on another page once this one is so much taller: Qt breaks rows wherever a page ends.
void make_taller(QTextTable& table, int row, double by) {
  for (int column = 0; column < table.columns(); ++column) {
    QTextTableCell cell = table.cellAt(row, column);
    if (cell.row() != row || cell.column() != column) continue;
    QTextTableCellFormat format = cell.format().toTableCellFormat();
    format.setBottomPadding(std::max(table.format().cellPadding(), format.bottomPadding()) + by);
    cell.setFormat(format);
  }
}

void begin_on_next_page(QTextTable& table) {
  QTextTableFormat format = table.format();
  format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
  table.setFormat(format);
}

void keep_rows_whole(QTextDocument& document, QTextTable& table) {
  const double page = document.pageSize().height(), padding = table.format().cellPadding();
  const auto page_of = [page](double y) { return std::floor(y / page); };
  const auto broken = [&](const Extent& part) {
    return page_of(part.top - padding) != page_of(part.bottom + padding) && part.bottom - part.top < page / 2;
  };
  const Extent whole{of_row(document, table, 0).top, of_row(document, table, table.rows() - 1).bottom};
  if (broken(whole) && whole.bottom - whole.top < small_table * page) return begin_on_next_page(table);
  for (int row = 0; row < table.rows(); ++row) {
    const Extent part = of_row(document, table, row);
    if (!broken(part)) continue;
    if (row <= table.format().headerRowCount())
      begin_on_next_page(table);
    else
      make_taller(table, row - 1, (page_of(part.top - padding) + 1) * page - (part.top - padding));
  }
}

}  // namespace

void draw_text(QPainter& painter, QTextDocument& document, const QRectF& part) {
  QAbstractTextDocumentLayout::PaintContext ink;
  ink.palette.setColor(QPalette::Text, Qt::black);
  ink.clip = part;
  painter.setClipRect(part);
  document.documentLayout()->draw(&painter, ink);
}

LaidText lay_out_text(const PaperText& text, const QString& html, double above) {
  const auto document = std::make_shared<QTextDocument>();
  document->setDocumentMargin(0);
  document->setDefaultFont(paper_font(9.5));
  document->setDefaultStyleSheet("p { margin: 0 0 45px 0 } h2 { margin: 160px 0 60px 0 }");
  document->setHtml(html);
  document->setPageSize(paper_body(text).adjusted(0, above, 0, 0).size());
  for (QTextFrame* frame : document->rootFrame()->childFrames())
    if (auto* table = qobject_cast<QTextTable*>(frame); table && table->rows() <= most_rows)
      keep_rows_whole(*document, *table);
  const DrawBody draw = [document](QPainter& painter, const QRectF& body, int page) {
    painter.save();
    painter.translate(body.topLeft() - QPointF(0, page * body.height()));
    draw_text(painter, *document, QRectF(QPointF(0, page * body.height()), body.size()));
    painter.restore();
  };
  return {document->pageCount(), draw};
}

}  // namespace wm::app
