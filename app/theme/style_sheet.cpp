#include "app/theme/style_sheet.h"

namespace wm::app {

namespace {
// @name@ stands for a colour of the palette.
const char* const sheet = R"(
QLabel[role="quiet"] { color: @quiet@; font-size: 12px; }
QLabel[role="large"] { font-size: 20px; font-weight: 600; }
QLabel[role="heading"] { color: @quiet@; font-weight: 600; }
QFrame[role="paper"] { background: @paper@; border: 1px solid @line@; border-radius: 6px; }
QFrame#side { background: @paper@; border: none; border-right: 1px solid @line@; }
QFrame[role="banner"] { background: @chosen@; border: none; border-bottom: 2px solid @full@; }
QFrame#message_bar { background: @chosen@; border: none; border-top: 1px solid @line@; }
QFrame#message_bar[problem="true"] { border-top: 3px solid @full@; }
QFrame[role="rule"] { background: @line@; border: none; max-height: 1px; min-height: 1px; }

QLineEdit, QDateEdit, QDateTimeEdit, QTimeEdit, QSpinBox, QComboBox, QPlainTextEdit {
  background: @paper@; border: 1px solid @quiet@; border-radius: 5px; padding: 5px 9px;
  selection-background-color: @chosen@; selection-color: @text@; }
QLineEdit:focus, QDateEdit:focus, QDateTimeEdit:focus, QTimeEdit:focus, QSpinBox:focus, QComboBox:focus,
QPlainTextEdit:focus { border: 2px solid @full@; padding: 4px 8px; }
QComboBox::drop-down { border: none; width: 24px; }
QComboBox::down-arrow { image: url(:/theme/arrow-@shade@.svg); width: 12px; height: 8px; }
QComboBox QAbstractItemView { background: @paper@; border: 1px solid @quiet@; }

QPushButton { background: @paper@; color: @text@; border: 1px solid @quiet@; border-radius: 5px; padding: 6px 12px; }
QPushButton:hover { background: @chosen@; }
QPushButton:focus { border: 2px solid @full@; padding: 5px 11px; outline: none; }
QPushButton:disabled { color: @quiet@; border-color: @line@; }
QPushButton[role="primary"] { background: @full@; color: @paper@; border-color: @full@; font-weight: 600; }
QPushButton[role="primary"]:focus { border: 2px solid @text@; }
QPushButton[role="primary"]:disabled { background: @line@; color: @quiet@; border-color: @line@; }
QPushButton[role="plain"] { background: transparent; border: none; color: @full@; padding: 2px 0; text-align: left; }
QPushButton[role="plain"]:focus { border: 2px solid @full@; padding: 0 0; }

QTableView, QListView, QTreeView { background: @paper@; border: 1px solid @line@; border-radius: 6px;
  gridline-color: @line@; outline: none; selection-background-color: @chosen@; selection-color: @text@; }
QTableView:focus, QListView:focus, QTreeView:focus { border: 2px solid @full@; }
QTableView::item, QListView::item, QTreeView::item { border: none; padding: 0 7px; }
QListView#strips, QListView#strips:focus { border: none; background: transparent; }
QAbstractItemView::item:selected { background: @chosen@; color: @text@; }
QHeaderView { background: @paper@; }
QHeaderView::section { background: @paper@; color: @quiet@; border: none; border-bottom: 1px solid @quiet@;
  padding: 5px 8px; font-size: 12px; font-weight: 600; }
QTableCornerButton::section { background: @paper@; border: none; }

QScrollArea { border: none; background: transparent; }
QFrame[role="paper"] QScrollArea > QWidget > QWidget { background: transparent; }
QScrollBar:vertical { width: 8px; background: transparent; margin: 0; }
QScrollBar:horizontal { height: 9px; background: transparent; margin: 0; }
QScrollBar::handle { background: @quiet@; border-radius: 4px; min-height: 30px; min-width: 30px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }

QToolTip { background: @paper@; color: @text@; border: 1px solid @quiet@; padding: 5px; }
QCheckBox:focus, QRadioButton:focus { outline: 2px solid @full@; }
QCheckBox::indicator, QListView::indicator, QRadioButton::indicator { width: 14px; height: 14px; border: 1px solid @quiet@;
    border-radius: 3px; background: @paper@; }
QRadioButton::indicator { border-radius: 8px; }
QCheckBox::indicator:checked, QListView::indicator:checked { background: @full@; border-color: @full@; image: url(:/theme/tick-@shade@.svg); }
QRadioButton::indicator:checked { width: 6px; height: 6px; border: 5px solid @full@; background: @paper@; }
QCalendarWidget QWidget { background: @paper@; }
)";
}  // namespace

QString style_sheet(const Palette& p) {
  QString text = QString::fromLatin1(sheet);
  const std::pair<const char*, QColor> colours[] = {
      {"@ground@", p.ground}, {"@paper@", p.paper}, {"@line@", p.line}, {"@chosen@", p.chosen},
      {"@text@", p.text},     {"@quiet@", p.quiet}, {"@full@", p.full}, {"@half@", p.half}};
  for (const auto& [name, colour] : colours) text.replace(QLatin1String(name), colour.name());
  text.replace(QLatin1String("@shade@"),
               p.paper.lightness() < 128 ? QLatin1String("dark") : QLatin1String("light"));
  return text;
}

}  // namespace wm::app
