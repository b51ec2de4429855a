#pragma once
// A label that says plain words in one of the theme's roles ("large", "body", "quiet", "problem"), broken
// where the room ends.
#include <QLabel>

namespace wm::app {

inline QLabel* role_label(const char* role, const QString& words = {}) {
  auto* label = new QLabel(words);
  label->setProperty("role", role);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  return label;
}

}  // namespace wm::app
