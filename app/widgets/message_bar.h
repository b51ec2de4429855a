#pragma once
// The quiet bar at the foot: one sentence on what was done, or on what stood in the way and what would lift
// it. No box ever takes the screen away.
#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <QTimer>

#include "core/problem.h"

namespace wm::app {

class MessageBar : public QFrame {
  Q_OBJECT
 public:
  explicit MessageBar(QWidget* parent = nullptr);
  /// Shown for a while, then gone.
  void tell(const QString& sentence);
  /// Stays until the next sentence or until it is put away.
  void tell_problem(const Problem& problem);
  void clear();
  QString text() const { return label_->text(); }

 private:
  void show_text(const QString& sentence, bool problem);

  QLabel* label_;
  QPushButton* close_;
  QTimer fade_;
};

}  // namespace wm::app
