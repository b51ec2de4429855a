// The colours alone. Every pair in use keeps 4.5 : 1 for text and 3 : 1 for drawings (WCAG 2.2, 1.4.3
// and 1.4.11), which tests/app/theme_test.cpp works out.
#include "app/theme/theme.h"

namespace wm::app {

namespace {
Palette light() {
  return {QColor(0xf7f9fa), QColor(0xffffff), QColor(0xd5dde1), QColor(0xdcecf0),
          QColor(0x1d2b33), QColor(0x53656f), QColor(0x0b5f73), QColor(0x42889b)};
}
Palette dark() {
  return {QColor(0x10181c), QColor(0x182329), QColor(0x2c3a41), QColor(0x1f3a44),
          QColor(0xe6edf0), QColor(0x9fb0b8), QColor(0x7cc4d4), QColor(0x4d97aa)};
}
}  // namespace

const Palette& palette(Shade shade) {
  static const Palette by_day = light(), by_night = dark();
  return shade == Shade::light ? by_day : by_night;
}

}  // namespace wm::app
