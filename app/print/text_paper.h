#pragma once
// A paper that is a running text, broken into as many pages as it takes.
#include "app/print/paper.h"

namespace wm::app {

struct LaidText {
  int pages = 1;
  DrawBody draw;
};

/// `html`: what QTextDocument takes; its lengths are paper units.
LaidText lay_out_text(const PaperText& text, const QString& html);

}  // namespace wm::app
