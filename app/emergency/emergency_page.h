#pragma once
// Somebody is hurt, or a machine is broken: what to do in its usual order, then what to enter.
#include <QComboBox>
#include <QLineEdit>

#include "app/page/page.h"
#include "app/widgets/date_field.h"
#include "app/widgets/key_button.h"
#include "app/widgets/person_box.h"

namespace wm::app {

class EmergencyPage : public Page {
  Q_OBJECT
 public:
  explicit EmergencyPage(Session& session, QWidget* parent = nullptr);
  QString id() const override { return "emergency"; }
  QString title() const override { return tr("Somebody hurt, machine broken"); }
  void refresh() override;
  void open(const Place& place) override;

 private:
  QWidget* steps();
  QWidget* machine_block();
  QWidget* stop_block();
  QWidget* incident_block();
  /// Puts the cursor into that list.
  static Problem nothing_chosen(QComboBox* box, const QString& what);
  void put_out_of_service();
  void stop_somebody();
  void record_incident();

  QComboBox* machine_;
  QLineEdit* tag_;
  QLineEdit* reason_;
  PersonBox* stopped_;
  QLineEdit* why_;
  PersonBox* who_;
  QComboBox* target_;
  QComboBox* severity_;
  QComboBox* part_;
  QLineEdit* what_;
  QWidget* incident_ = nullptr;
};

}  // namespace wm::app
