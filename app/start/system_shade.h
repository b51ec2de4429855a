#pragma once
// Light or dark, as the system has it, and again when that changes.
#include <QApplication>

namespace wm::app {

void follow_system_shade(QApplication& app);

}  // namespace wm::app
