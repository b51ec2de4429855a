#include "app/passes/plan_paper.h"

#include <QCoreApplication>
#include <QTextDocument>
#include <algorithm>
#include <memory>

#include "app/print/text_paper.h"

namespace wm::app {
namespace {

struct PlanPapers {
  Q_DECLARE_TR_FUNCTIONS(Passes)
};

constexpr double words_part = 0.6, gap = 0.03;  // of the width; the drawing has the rest

QString cell(const QString& words) { return "<td>" + words.toHtmlEscaped() + "</td>"; }
QString head(const QString& words) { return "<th align=left>" + words.toHtmlEscaped() + "</th>"; }

QString rows(const std::vector<PassLine>& lines) {
  QString out = "<tr>" + head({}) + head(PlanPapers::tr("How")) + head(PlanPapers::tr("Set to")) +
                head(PlanPapers::tr("Wheel, divisions")) + head(PlanPapers::tr("Cuts at most")) +
                head(PlanPapers::tr("Measure")) + "</tr>";
  int number = 0;
  for (const PassLine& line : lines)
    out += "<tr>" + cell(QString::number(++number)) + cell(line.how) + cell(line.setting) + cell(line.wheel) +
           cell(line.most) + cell(line.measure) + "</tr>";
  return "<table cellpadding=24 cellspacing=0 style=\"margin-top: 60px\">" + out + "</table>";
}

QString html_of(const ShownPlan& plan) {
  QString out;
  for (const QString& each : plan.sentences) out += "<p>" + each.toHtmlEscaped() + "</p>";
  if (!plan.lines.empty()) out += rows(plan.lines);
  out += "<p>&nbsp;</p>";
  for (const QString& each : plan.cautions) out += "<p><b>" + each.toHtmlEscaped() + "</b></p>";
  return out;
}

}  // namespace

PlanPaper plan_paper(const ShownPlan& plan, const QString& shop, const QString& card, PaperSize size) {
  PaperText text{plan.title, card, shop, {}, size, true, false};
  const QSizeF room = paper_body(text).size();
  const auto document = std::make_shared<QTextDocument>();
  document->setDocumentMargin(0);
  document->setDefaultFont(paper_font(9.5));
  document->setDefaultStyleSheet(
      "p { margin: 0 0 45px 0 } td, th { padding-right: 40px; white-space: nowrap }");
  document->setHtml(html_of(plan));
  document->setPageSize({room.width() * words_part, room.height()});
  const DrawBody draw = [document, picture = plan.picture](QPainter& painter, const QRectF& body, int page) {
    const QRectF part(QPointF(0, page * body.height()), QSizeF(body.width() * words_part, body.height()));
    painter.save();
    painter.translate(body.topLeft() - part.topLeft());
    draw_text(painter, *document, part);
    painter.restore();
    if (page > 0) return;
    const double left = body.left() + body.width() * (words_part + gap);
    const QSizeF room(body.right() - left, std::min(body.height(), (body.right() - left) * 0.9));
    draw_plan(painter, QRectF(QPointF(left, body.top()), room), picture, paper_ink(), paper_font(9),
              paper_unit * 0.6);
  };
  return {text, document->pageCount(), draw};
}

}  // namespace wm::app
