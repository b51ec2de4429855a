#include "app/start/system_shade.h"

#include <QPalette>
#include <QStyle>

#include "app/theme/theme.h"

namespace wm::app {

namespace {

// Qt 6.4 has no question for it: a system whose windows are darker than their words is dark.
Shade system_shade() {
  const QPalette system = QApplication::style()->standardPalette();
  const QPalette own = QApplication::palette();
  const auto dark = [](const QPalette& p) {
    return p.color(QPalette::Window).lightness() < p.color(QPalette::WindowText).lightness();
  };
  return dark(own) || dark(system) ? Shade::dark : Shade::light;
}

}  // namespace

// Asked before the program's own palette is set; a change while it runs is seen at the next start.
void follow_system_shade(QApplication& app) { apply_theme(app, system_shade()); }

}  // namespace wm::app
