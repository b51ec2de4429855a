#pragma once
// A block of the page: a heading and its fields, framed.
#include <QFrame>
#include <QLabel>
#include <QVBoxLayout>

namespace wm::app {

struct Block {
  QFrame* frame;
  QVBoxLayout* column;

  explicit Block(const QString& title, QFrame* into = new QFrame);
  /// A quiet line above the field, which it names for whoever listens to the screen too; "&" gives it a key.
  void field(const QString& words, QWidget* widget) { field(words, widget, column); }
  static void field(const QString& words, QWidget* widget, QVBoxLayout* column);
  void finish(QWidget* button);
};

}  // namespace wm::app
