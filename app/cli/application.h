#pragma once
// What Qt needs of a program without a window.
#include <QCoreApplication>

namespace wm::app {

/// Qt finds its database driver only where there is an application object.
struct Application {
  int argc = 1;
  char name[12] = "witnessmark";
  char* argv[2] = {name, nullptr};
  QCoreApplication application{argc, argv};
  Application() { QCoreApplication::setApplicationName(name); }
};

}  // namespace wm::app
