#include "app/people/pin_form.h"

namespace wm::app {

PinForm::PinForm(const PersonId& person, const QString& name, QWidget* parent)
    : Form(tr("A PIN for %1").arg(name), tr("Take this PIN"), parent), person_(person) {
  first_ = line(tr("PIN"), "pin_first");
  again_ = line(tr("The same again"), "pin_again");
  for (QLineEdit* field : {first_, again_}) field->setEchoMode(QLineEdit::Password);
  say(tr("Let %1 type it, out of sight.").arg(name));
  say(tr(
      "Four digits are enough for this station, which wrong ones slow down. Whoever takes the shop's file "
      "away tries all of them within minutes; each digit more makes that ten times as long. What is signed "
      "with the PIN stays safe even then: its key needs this computer's own secret too, which is not in "
      "that file."));
}

Expected<db::Committed> PinForm::choose(Session& session) const {
  if (first_->text() == again_->text())
    return session.commit(db::ChoosePin{person_, first_->text().toStdString()});
  return tl::unexpected(Problem{tr("PIN").toStdString(), tr("The two are not the same").toStdString(),
                                tr("Type both again").toStdString()});
}

}  // namespace wm::app
