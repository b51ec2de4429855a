#pragma once
// What cards for the wall and the page for emergencies say is to be called and said: entered by a manager,
// for the whole shop; read by everybody else.
#include <QLabel>
#include <QLineEdit>
#include <QWidget>

#include "app/session.h"

namespace wm::app {

class KeyButton;

class CallFields : public QWidget {
  Q_OBJECT
 public:
  explicit CallFields(Session& session, QWidget* parent = nullptr);
  /// What is typed and not entered stays.
  void refresh();

 signals:
  void tell(const QString& sentence);
  void tell_problem(const wm::Problem& problem);

 private:
  void enter();
  db::EmergencyCall typed() const;

  Session& session_;
  QLineEdit *number_, *where_;
  KeyButton* enter_;
  QLabel* said_;
  std::optional<db::EmergencyCall> shown_;  // what the fields were filled with
};

}  // namespace wm::app
