#pragma once
// A paper that is a running text, broken into as many pages as it takes.
#include "app/print/paper.h"

class QTextDocument;

namespace wm::app {

struct LaidText {
  int pages = 1;
  DrawBody draw;
};

/// Draws what `part` of a document has, in black whatever the screen's colours are.
void draw_text(QPainter& painter, QTextDocument& document, const QRectF& part);

/// `html`: what QTextDocument takes; its lengths are paper units. `above`: room that is left for something
/// else at the top of each page's body.
LaidText lay_out_text(const PaperText& text, const QString& html, double above = 0);

}  // namespace wm::app
