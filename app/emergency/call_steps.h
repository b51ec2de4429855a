#pragma once
// What to call and what to do when somebody is hurt, in its usual order: words alone, which need neither a
// seat nor a shop that has been read.
#include <QLabel>

#include "db/facts.h"

namespace wm::app {

class CallSteps : public QWidget {
  Q_OBJECT
 public:
  /// `page`: beside what is entered; `cover`: by itself over a whole window, read from a step away.
  enum class Seen { page, cover };
  explicit CallSteps(Seen seen, QWidget* parent = nullptr);
  /// Where no number is entered: to call the local one, and who can enter it.
  void show_call(const db::EmergencyCall& call);

 private:
  QLabel* line(int pixels, bool heavy);

  const Seen seen_;
  QLabel *call_, *say_, *none_;
};

}  // namespace wm::app
