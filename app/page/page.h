#pragma once
// A page of the program: one folder of app/ each, shown by the frame.
#include <QWidget>

#include "app/session.h"

namespace wm::app {

/// Where to go, and what to look at there. Empty fields: as the page finds best.
struct Place {
  QString page;  // "desk", "diary", "checkouts", "people", "machines", "lessons", "banks", "sheets",
                 // "figures", "rosters", "journal", "backups"
  PersonId person;
  TargetName target;
  MachineId machine;
  RecordId record;
  /// Of "quiz", which is the station and no page: the quiz that `person` takes. Of "people": "visitor", to
  /// enter one. Of "rosters": "emergency", for what is to be called.
  std::string item;
};

class Page : public QWidget {
  Q_OBJECT
 public:
  explicit Page(Session& session, QWidget* parent = nullptr) : QWidget(parent), session_(session) {}

  virtual QString id() const = 0;
  /// The name in the list of pages.
  virtual QString title() const = 0;
  /// Draws again from the session; called when the page is shown and, while it is, on every change.
  virtual void refresh() = 0;
  /// Goes to what `place` names; the first field has the cursor afterwards.
  virtual void open(const Place& place) = 0;
  /// Whether a card that the reader has just read is of use to what is done here; otherwise the person is
  /// opened at the Desk.
  virtual bool take_card(const QString&) { return false; }

 signals:
  void go(const wm::app::Place& place);
  /// A sentence for the bar at the foot: what was done, or why not.
  void tell(const QString& sentence);
  void tell_problem(const wm::Problem& problem);

 protected:
  Session& session() const { return session_; }

 private:
  Session& session_;
};

}  // namespace wm::app
