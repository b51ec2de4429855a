#include "app/seat/left_alone.h"

#include <QCoreApplication>
#include <QEvent>
#include <QSettings>
#include <QWidget>
#include <algorithm>

namespace wm::app {
namespace {

constexpr int usual_minutes = 10;
const char* const kept_under = "hand_over_minutes";

bool by_somebody(const QEvent& event) {
  switch (event.type()) {
    case QEvent::KeyPress:
    case QEvent::MouseButtonPress:
    case QEvent::MouseMove:
    case QEvent::Wheel:
    case QEvent::TouchBegin:
      return true;
    default:
      return false;
  }
}

/// A member at a quiz is nobody at the desk: what they touch keeps no seat. (Qt names a window's own object
/// after its widget.)
bool at_quiz_station(const QObject* watched) {
  const auto* widget = qobject_cast<const QWidget*>(watched);
  return (widget ? widget->window()->objectName() : watched->objectName()).startsWith("quiz_station");
}

}  // namespace

int minutes_left_alone() {
  bool number = false;
  const int minutes = QSettings().value(kept_under, usual_minutes).toInt(&number);
  return number ? std::clamp(minutes, 0, 24 * 60) : usual_minutes;
}

void set_minutes_left_alone(int minutes) { QSettings().setValue(kept_under, minutes); }

LeftAlone::LeftAlone(Session& session, int minute, QObject* parent)
    : QObject(parent), session_(session), minute_(minute) {
  timer_.setSingleShot(true);
  connect(&timer_, &QTimer::timeout, this, &LeftAlone::end);
  connect(&session, &Session::seated_changed, this, &LeftAlone::begin);
  QCoreApplication::instance()->installEventFilter(this);
  begin();
}

bool LeftAlone::eventFilter(QObject* watched, QEvent* event) {
  if (timer_.isActive() && by_somebody(*event) && !at_quiz_station(watched)) begin();
  return QObject::eventFilter(watched, event);
}

void LeftAlone::begin() {
  const int minutes = minutes_left_alone();
  if (session_.seated() && minutes > 0)
    timer_.start(minutes * minute_);
  else
    timer_.stop();
}

void LeftAlone::end() {
  if (!session_.seated()) return;
  session_.hand_over();
  emit handed_over(minutes_left_alone());
}

}  // namespace wm::app
