#pragma once
// Colours, sizes and type: one hue, light or dark, so that every page looks alike.
#include <QApplication>
#include <QColor>
#include <QFont>

namespace wm::app {

struct Palette {
  QColor ground, paper, line, chosen, text, quiet, full, half;
};

enum class Shade { light, dark };

const Palette& palette(Shade shade);
/// The palette in use.
const Palette& palette();
Shade shade();
/// Sets palette, style sheet and type for the whole program; safe to call again when the system's changes.
void apply_theme(QApplication& app, Shade shade);

enum class TypeSize { small, body, large };
QFont type(TypeSize size, bool heavy = false);
/// A row's height in device-independent pixels at the present type size (36 at 100 %).
int row_height();

}  // namespace wm::app
