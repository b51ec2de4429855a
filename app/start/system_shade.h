#pragma once
// Light or dark, as the system has it, and again when that changes.
#include <QApplication>

#include "app/theme/theme.h"

namespace wm::app {

void follow_system_shade(QApplication& app);
/// Light or dark, whatever the program wears itself.
Shade system_shade(QApplication& app);

}  // namespace wm::app
