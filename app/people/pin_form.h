#pragma once
// Somebody chooses a PIN, typed twice, out of sight.
#include "app/lists/form.h"
#include "app/session.h"

namespace wm::app {

class PinForm : public Form {
  Q_OBJECT
 public:
  PinForm(const PersonId& person, const QString& name, QWidget* parent = nullptr);
  /// Refuses two that are not the same, and what the store refuses.
  Expected<db::Committed> choose(Session& session) const;

 private:
  PersonId person_;
  QLineEdit *first_, *again_;
};

}  // namespace wm::app
