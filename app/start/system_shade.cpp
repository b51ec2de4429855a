#include "app/start/system_shade.h"

#include <QEvent>
#include <QPalette>
#include <QStyle>

namespace wm::app {

namespace {

bool dark(const QPalette& p) {
  return p.color(QPalette::Window).lightness() < p.color(QPalette::WindowText).lightness();
}

/// A desktop that goes dark in the evening says so to every window.
class FollowSystem : public QObject {
 public:
  explicit FollowSystem(QApplication& app) : QObject(&app), app_(app) {}

  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::ThemeChange && !busy_) {
      busy_ = true;
      const Shade wanted = system_shade(app_);
      apply_theme(app_, wanted);
      busy_ = false;
    }
    return QObject::eventFilter(watched, event);
  }

 private:
  QApplication& app_;
  bool busy_ = false;
};

}  // namespace

// Qt 6.4 has no question for it: a system whose windows are darker than their words is dark. With the
// program's own palette taken off, the system's is seen.
Shade system_shade(QApplication& app) {
  app.setPalette(QPalette());
  return dark(QApplication::palette()) || dark(QApplication::style()->standardPalette()) ? Shade::dark
                                                                                         : Shade::light;
}

void follow_system_shade(QApplication& app) {
  apply_theme(app, system_shade(app));
  app.installEventFilter(new FollowSystem(app));
}

}  // namespace wm::app
