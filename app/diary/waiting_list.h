#pragma once
// Who waits for a one-on-one, the longest wait on top.
#include <QListWidget>

#include "app/diary/bookings.h"

namespace wm::app {

class WaitingList : public QListWidget {
  Q_OBJECT
 public:
  explicit WaitingList(QWidget* parent = nullptr);
  void set(const Session& session, const std::vector<WaitingLine>& lines);
  /// "11 people, longest 23 days"
  static QString summary(const Session& session, const std::vector<WaitingLine>& lines);

 signals:
  void chosen(const wm::PersonId& person, const wm::TargetName& target);

 private:
  std::vector<WaitingLine> lines_;
};

}  // namespace wm::app
