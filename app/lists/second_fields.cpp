#include "app/lists/second_fields.h"

#include <QCoreApplication>

namespace wm::app {
namespace {

struct Tr {
  Q_DECLARE_TR_FUNCTIONS(wm::app::SecondFields)
};

}  // namespace

SecondFields::SecondFields(Session& session, Form& form, const db::Action& action) {
  if (!session.store().asks_for_second(action)) return;
  const auto may_vouch = [&session](const db::Person& p) {
    const auto role = session.store().role_of(p.id);
    return (role == db::Role::instructor || role == db::Role::manager) &&
           !(session.seated() && session.seated()->id == p.id);
  };
  who_ = new PersonBox(session, may_vouch);
  who_->setObjectName("second");
  form.say(Tr::tr(
      "The rulebook asks for two: another instructor or manager looks at this and enters their own PIN."));
  form.add_field(Tr::tr("The second person"), who_);
  pin_ = form.line(Tr::tr("Their PIN"), "second_pin");
  pin_->setEchoMode(QLineEdit::Password);
}

Expected<std::optional<db::Second>> SecondFields::second() const {
  if (who_ == nullptr) return std::optional<db::Second>();
  if (!who_->person())
    return tl::unexpected(Problem{Tr::tr("second person").toStdString(),
                                  Tr::tr("Nobody is chosen yet").toStdString(),
                                  Tr::tr("Type part of a name and choose with Enter").toStdString()});
  const std::string pin = pin_->text().toStdString();
  pin_->clear();
  return std::optional(db::Second{*who_->person(), pin});
}

}  // namespace wm::app
