#pragma once
// A supervised session of the past, entered by hand: what nobody noted at the machine, or what stands on
// paper.
#include <QVBoxLayout>
#include <QWidget>

#include "app/lists/form.h"
#include "app/session.h"
#include "app/widgets/date_field.h"
#include "app/widgets/person_box.h"

namespace wm::app {

class SessionForm : public QWidget {
  Q_OBJECT
 public:
  explicit SessionForm(Session& session, QWidget* parent = nullptr);
  /// Of this person, on this target.
  void begin(const PersonId& person, const TargetName& target);

 signals:
  /// Entered or left: the form is done with.
  void closed();
  void tell(const QString& sentence);

 private:
  void enter();
  Expected<Supervised> read(const std::optional<Instant>& at) const;

  Session& session_;
  PersonId person_;
  TargetName target_;
  QVBoxLayout* column_;
  Form* form_ = nullptr;
  QLineEdit* time_ = nullptr;
  DateField* day_ = nullptr;
  QLineEdit* minutes_ = nullptr;
  PersonBox* supervisor_ = nullptr;
  QComboBox* from_ = nullptr;  // of managers
};

}  // namespace wm::app
