#pragma once
// An attempt again as it was sat: every question with its choices in the order in which they stood.
#include <QComboBox>

#include "app/quiz/end_view.h"

namespace wm::app {

class AsSatView : public QWidget {
  Q_OBJECT
 public:
  explicit AsSatView(Session& session, QWidget* parent = nullptr);
  /// As sat_attempt; whether there is one.
  bool open(const RecordId& record);

 signals:
  void left();

 private:
  void show_text();

  Session& session_;
  std::optional<SatAttempt> sat_;
  QLabel *title_, *quiet_;
  QComboBox* language_;
  AttemptText* text_;
};

}  // namespace wm::app
