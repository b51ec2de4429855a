#include "app/rosters/call_fields.h"

#include <QHBoxLayout>
#include <QSettings>

#include "app/widgets/key_button.h"
#include "app/widgets/role_label.h"

namespace wm::app {

namespace {

// Earlier versions kept a number on each computer: it is proposed where the shop has none, and forgotten with
// the first that is entered here.
const QString earlier = QStringLiteral("emergency_number");

db::EmergencyCall proposal(const db::EmergencyCall& entered) {
  db::EmergencyCall call = entered;
  if (call == db::EmergencyCall{})
    call.number = QSettings().value(earlier).toString().simplified().toStdString();
  return call;
}

}  // namespace

CallFields::CallFields(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      number_(new QLineEdit),
      where_(new QLineEdit),
      enter_(new KeyButton(tr("Enter it"), Qt::CTRL | Qt::Key_Return)),
      said_(role_label("")) {
  number_->setObjectName("emergency_number");
  number_->setAccessibleName(tr("Number to call in an emergency"));
  number_->setPlaceholderText(tr("number to call"));
  number_->setMaximumWidth(170);
  where_->setObjectName("emergency_where");
  where_->setAccessibleName(tr("Where the shop is, as a caller says it"));
  where_->setPlaceholderText(tr("where the shop is, as a caller says it: street, door, how one comes in"));
  enter_->setObjectName("enter_emergency");
  said_->setObjectName("emergency_said");
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(10);
  row->addWidget(role_label("quiet", tr("In an emergency")));
  row->addWidget(number_);
  row->addWidget(where_, 1);
  row->addWidget(enter_);
  row->addWidget(said_, 1);
  setFocusProxy(number_);
  connect(enter_, &KeyButton::clicked, this, &CallFields::enter);
}

db::EmergencyCall CallFields::typed() const {
  return {number_->text().simplified().toStdString(), where_->text().simplified().toStdString()};
}

void CallFields::refresh() {
  const bool may = session_.permitted(db::EnterShopFact{db::EmergencyCall{}}).has_value();
  for (QWidget* each :
       {static_cast<QWidget*>(number_), static_cast<QWidget*>(where_), static_cast<QWidget*>(enter_)})
    each->setVisible(may);
  said_->setVisible(!may);
  const db::EmergencyCall entered = session_.store().emergency_call();
  const QString number = QString::fromStdString(entered.number),
                where = QString::fromStdString(entered.where);
  said_->setText(number.isEmpty() ? tr("No number is entered: a manager enters it here.")
                 : where.isEmpty()
                     ? tr("Call %1.", "a number").arg(number)
                     : tr("Call %1. Say: %2.", "a number, where the shop is").arg(number, where));
  const db::EmergencyCall filled = proposal(entered);
  if (shown_ == filled || (shown_ && typed() != *shown_)) return;
  shown_ = filled;
  number_->setText(QString::fromStdString(filled.number));
  where_->setText(QString::fromStdString(filled.where));
}

void CallFields::enter() {
  const db::EmergencyCall call = typed();
  if (call == session_.store().emergency_call()) return emit tell(tr("It is entered like that already."));
  // As typed, so that what is shown anew after it is this.
  shown_ = call;
  const auto done = session_.commit(db::EnterShopFact{call});
  if (!done) {
    number_->setFocus();
    return emit tell_problem(done.error());
  }
  QSettings().remove(earlier);
  refresh();
  emit tell(call.number.empty() ? tr("No number is entered any more.")
                                : tr("Entered. Cards for the wall that hang somewhere say what was entered "
                                     "before: print them anew."));
}

}  // namespace wm::app
