#include "app/theme/theme.h"

#include <QFontDatabase>
#include <QPalette>
#include <QStyleFactory>

#include "app/theme/style_sheet.h"

// A resource of a static library is there only once it has been asked for by name, outside of any namespace.
static void have_resources() { Q_INIT_RESOURCE(theme); }

namespace wm::app {

namespace {

Shade in_use = Shade::light;

QPalette qt_palette(const Palette& p) {
  QPalette q;
  q.setColor(QPalette::Window, p.ground);
  q.setColor(QPalette::Base, p.paper);
  q.setColor(QPalette::AlternateBase, p.ground);
  q.setColor(QPalette::Button, p.paper);
  for (auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::BrightText})
    q.setColor(role, p.text);
  q.setColor(QPalette::PlaceholderText, p.quiet);
  q.setColor(QPalette::Highlight, p.chosen);
  q.setColor(QPalette::HighlightedText, p.text);
  q.setColor(QPalette::Link, p.full);
  q.setColor(QPalette::LinkVisited, p.full);
  q.setColor(QPalette::ToolTipBase, p.paper);
  q.setColor(QPalette::ToolTipText, p.text);
  q.setColor(QPalette::Mid, p.line);
  for (auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    q.setColor(QPalette::Disabled, role, p.quiet);
  return q;
}

// In device-independent pixels: the system's scale is applied by Qt.
int pixels(TypeSize size) {
  switch (size) {
    case TypeSize::small:
      return 12;
    case TypeSize::body:
      return 14;
    case TypeSize::large:
      return 20;
  }
  return 14;
}

}  // namespace

const Palette& palette() { return palette(in_use); }
Shade shade() { return in_use; }

void apply_theme(QApplication& app, Shade shade) {
  have_resources();
  in_use = shade;
  app.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  app.setPalette(qt_palette(palette(shade)));
  app.setFont(type(TypeSize::body));
  app.setStyleSheet(style_sheet(palette(shade)));
}

QFont type(TypeSize size, bool heavy) {
  QFont font = QFontDatabase::systemFont(QFontDatabase::GeneralFont);
  font.setPixelSize(pixels(size));
  font.setWeight(heavy ? QFont::DemiBold : QFont::Normal);
  return font;
}

int row_height() { return 36; }

}  // namespace wm::app
