#pragma once
// Where the quiz station is shown: a second screen, where there is one.
#include <QGuiApplication>
#include <QScreen>
#include <QWidget>

namespace wm::app {

/// Another screen than the one that the window is on; null where there is none.
inline const QScreen* second_screen(const QWidget& window) {
  for (const QScreen* screen : QGuiApplication::screens())
    if (screen != window.window()->screen()) return screen;
  return nullptr;
}

}  // namespace wm::app
