#pragma once
// What Qt needs of a program without a window.
#include <QApplication>

namespace wm::app {

/// Qt finds its database driver only where there is an application object.
struct Application {
  int argc = 1;
  char name[12] = "witnessmark";
  char* argv[2] = {name, nullptr};
  QCoreApplication application{argc, argv};
  Application() { QCoreApplication::setApplicationName(name); }
};

/// With fonts, to draw papers with, and no screen.
struct DrawingApplication {
  int argc = 3;
  char name[12] = "witnessmark", option[10] = "-platform", platform[10] = "offscreen";
  char* argv[4] = {name, option, platform, nullptr};
  QApplication application{argc, argv};
  DrawingApplication() { QCoreApplication::setApplicationName(name); }
};

}  // namespace wm::app
