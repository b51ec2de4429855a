#pragma once
// The fields in which a second person vouches for what is being entered: who, and their own PIN.
#include "app/lists/form.h"
#include "app/session.h"
#include "app/widgets/person_box.h"

namespace wm::app {

class SecondFields {
 public:
  /// Adds them to the form where the rulebook asks for a second person; else there are none.
  SecondFields(Session& session, Form& form, const db::Action& action);
  /// What has been typed; nothing where there are no fields, a Problem where somebody is missing.
  Expected<std::optional<db::Second>> second() const;

 private:
  PersonBox* who_ = nullptr;
  QLineEdit* pin_ = nullptr;
};

}  // namespace wm::app
