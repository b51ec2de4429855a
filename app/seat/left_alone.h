#pragma once
// A station that nobody touches for a while goes back to nobody. What was begun on its pages stays there.
#include <QObject>
#include <QTimer>

#include "app/session.h"

namespace wm::app {

/// After how many minutes, at this computer; 0: never.
int minutes_left_alone();
void set_minutes_left_alone(int minutes);

class LeftAlone : public QObject {
  Q_OBJECT
 public:
  /// Watches every key and click of the program. `minute`: how long one lasts, in milliseconds.
  explicit LeftAlone(Session& session, int minute = 60'000, QObject* parent = nullptr);

 signals:
  /// Somebody sat here, and no longer does.
  void handed_over(int minutes);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void begin();
  void end();

  Session& session_;
  const int minute_;
  QTimer timer_;
};

}  // namespace wm::app
