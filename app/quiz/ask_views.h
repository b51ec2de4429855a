#pragma once
// The station's short questions: who is there; whether to hand in; and the desk's PIN for leaving.
#include <QLineEdit>

#include "app/quiz/run.h"
#include "app/quiz/station_type.h"
#include "app/widgets/person_box.h"

namespace wm::app {

/// Who is there: a member's number typed, or their card at the reader.
class WhoView : public QWidget {
  Q_OBJECT
 public:
  explicit WhoView(Session& session, QWidget* parent = nullptr);
  void start(const QString& told = {});
  void take_card(const QString& card);

 signals:
  void known(const wm::PersonId& person);

 private:
  void look();

  Session& session_;
  QLineEdit* number_;
  QLabel* told_;
};

/// Whether to hand in, with what is still open.
class HandInView : public QWidget {
  Q_OBJECT
 public:
  explicit HandInView(QWidget* parent = nullptr);
  void start(const Sitting& sitting);
  void show_problem(const Problem& problem);

 signals:
  void hand_in();
  void back();

 private:
  QLabel *what_, *problem_;
  StationButton *yes_, *no_;
};

/// Leaving takes somebody of the desk and their PIN; the attempt ends and is marked as it stands (why:
/// run.h).
class LeaveView : public QWidget {
  Q_OBJECT
 public:
  explicit LeaveView(Session& session, QWidget* parent = nullptr);
  /// `during`: an attempt is going on.
  void start(bool during);

 signals:
  void allowed();
  void back();

 private:
  void check();

  Session& session_;
  QLabel *what_, *problem_;
  PersonBox* who_;
  QLineEdit* pin_;
};

}  // namespace wm::app
