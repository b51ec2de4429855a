#include "app/print/text_paper.h"

#include <QTextDocument>
#include <memory>

namespace wm::app {

LaidText lay_out_text(const PaperText& text, const QString& html) {
  const auto document = std::make_shared<QTextDocument>();
  document->setDocumentMargin(0);
  document->setDefaultFont(paper_font(9.5));
  document->setDefaultStyleSheet("p { margin: 0 0 45px 0 } h2 { margin: 160px 0 60px 0 }");
  document->setHtml(html);
  document->setPageSize(paper_body(text).size());
  const DrawBody draw = [document](QPainter& painter, const QRectF& body, int page) {
    painter.setPen(Qt::black);
    painter.translate(body.topLeft() - QPointF(0, page * body.height()));
    document->drawContents(&painter, QRectF(QPointF(0, page * body.height()), body.size()));
  };
  return {document->pageCount(), draw};
}

}  // namespace wm::app
