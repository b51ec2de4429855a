#include "app/print/text_paper.h"

#include <QAbstractTextDocumentLayout>
#include <QTextDocument>
#include <memory>

namespace wm::app {

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
  const DrawBody draw = [document](QPainter& painter, const QRectF& body, int page) {
    painter.save();
    painter.translate(body.topLeft() - QPointF(0, page * body.height()));
    draw_text(painter, *document, QRectF(QPointF(0, page * body.height()), body.size()));
    painter.restore();
  };
  return {document->pageCount(), draw};
}

}  // namespace wm::app
