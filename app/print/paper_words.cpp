#include "app/print/paper_words.h"

#include <QPaintEngine>

namespace wm::app {
namespace {

/// Keeps the words and lets the lines go.
class WordEngine : public QPaintEngine {
 public:
  explicit WordEngine(QString& words) : QPaintEngine(AllFeatures), words_(words) {}
  bool begin(QPaintDevice*) override { return true; }
  bool end() override { return true; }
  void updateState(const QPaintEngineState&) override {}
  void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
  void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
  void drawPath(const QPainterPath&) override {}
  void drawTextItem(const QPointF&, const QTextItem& item) override { words_ += item.text() + '\n'; }
  Type type() const override { return User; }

 private:
  QString& words_;
};

class WordPaper : public QPaintDevice {
 public:
  static constexpr int per_inch = 720;

  explicit WordPaper(const PaperText& text) : size_(sheet(text)) {}
  QPaintEngine* paintEngine() const override { return &engine_; }
  void end_page() { words_ += '\f'; }
  const QString& words() const { return words_; }

 protected:
  int metric(PaintDeviceMetric metric) const override {
    switch (metric) {
      case PdmWidth:
        return size_.width();
      case PdmHeight:
        return size_.height();
      case PdmDpiX:
      case PdmDpiY:
      case PdmPhysicalDpiX:
      case PdmPhysicalDpiY:
        return per_inch;
      case PdmDevicePixelRatio:
        return 1;
      case PdmDevicePixelRatioScaled:
        return static_cast<int>(devicePixelRatioFScale());
      default:
        return QPaintDevice::metric(metric);
    }
  }

 private:
  /// Larger than any paper: what does not fit is cut off by the printer's edge, not here.
  static QSize sheet(const PaperText& text) { return (paper_body(text).size() * 2).toSize(); }

  QSize size_;
  QString words_;
  mutable WordEngine engine_{words_};
};

}  // namespace

QString paper_words(const PaperText& text, int pages, const DrawBody& draw) {
  WordPaper paper(text);
  QPainter painter(&paper);
  draw_paper(painter, WordPaper::per_inch, text, pages, draw, [&] {
    paper.end_page();
    return true;
  });
  paper.end_page();
  return paper.words();
}

}  // namespace wm::app
