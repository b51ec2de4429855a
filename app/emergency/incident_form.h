#pragma once
// What happened: who was there, at which machine, how grave, when, in a few words; recorded at once or not at
// all.
#include <QComboBox>
#include <QPlainTextEdit>

#include "app/desk/shop_now.h"
#include "app/emergency/those_there.h"
#include "app/widgets/date_field.h"

namespace wm::app {

/// What was recorded, and what the store says came of it.
struct Recorded {
  db::RecordIncident incident;
  Instant at;
  std::vector<Shift> shifts;
};

class IncidentForm : public QFrame {
  Q_OBJECT
 public:
  explicit IncidentForm(Session& session, QWidget* parent = nullptr);
  /// What is typed stays.
  void refresh(const ShopNow& shop);
  void choose(const MachineId& unit);
  /// Somebody was hurt: with them in the list, as that.
  void add_hurt(const PersonId& person) { there_->add_hurt(person); }

 signals:
  /// As ThoseThere::hurt_changed.
  void hurt_changed(const std::vector<wm::PersonId>& people);
  void recorded(const wm::app::Recorded& what);
  void tell_problem(const wm::Problem& problem);

 private:
  QWidget* where_and_when();
  QString costs() const;
  TargetName target() const;
  int severity() const { return severity_->currentData().toInt(); }
  Expected<db::RecordIncident> read();
  void say_costs();
  void record();
  void clear();

  Session& session_;
  ShopNow shop_;
  QLabel* costs_;
  ThoseThere* there_;
  QComboBox* machine_;
  QComboBox* severity_;
  QLineEdit* time_;
  DateField* day_;
  QPlainTextEdit* what_;
};

}  // namespace wm::app
