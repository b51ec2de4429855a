#include "app/emergency/call_steps.h"

#include <QVBoxLayout>

#include "app/theme/theme.h"

namespace wm::app {

namespace {

/// In pixels; read with shaking hands, so larger than any other words of the program.
struct Sizes {
  int call, say, step, between;
};
constexpr Sizes sizes_of(CallSteps::Seen seen) {
  return seen == CallSteps::Seen::cover ? Sizes{56, 24, 22, 14} : Sizes{34, 17, 14, 5};
}

}  // namespace

// The order is common practice, no source; the local plan of the shop comes first.
CallSteps::CallSteps(Seen seen, QWidget* parent) : QWidget(parent), seen_(seen) {
  const Sizes sizes = sizes_of(seen);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(sizes.between);
  call_ = line(sizes.call, true);
  call_->setObjectName("emergency_call");
  call_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  say_ = line(sizes.say, true);
  say_->setObjectName("emergency_say");
  none_ = line(sizes.step, false);
  none_->setObjectName("emergency_none");
  const QString steps[] = {
      tr("Stop the machine at its emergency stop. Isolate it from its supply before anybody reaches into "
         "it."),
      tr("Help as you were taught. Stay with whoever is hurt, and send somebody to the door."),
      tr("Keep the scene as it is once everybody is cared for: nothing moved, nothing cleaned, nothing "
         "restarted."),
      tr("Tell the manager. Local law may ask for a report within hours: see the notice beside this desk."),
      seen == Seen::cover
          ? tr("Only then enter it at the desk: the machine out of service, and what happened.")
          : tr("Only then enter it here: the machine out of service, and what happened."),
  };
  int number = 1;  // the call
  for (const QString& step : steps)
    line(sizes.step, number == 1)->setText(tr("%1.  %2", "number, step").arg(++number).arg(step));
}

QLabel* CallSteps::line(int pixels, bool heavy) {
  auto* label = new QLabel;
  QFont font = type(TypeSize::body, heavy);
  font.setPixelSize(pixels);
  label->setFont(font);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  layout()->addWidget(label);
  return label;
}

void CallSteps::show_call(const db::EmergencyCall& call) {
  const QString number = QString::fromStdString(call.number), where = QString::fromStdString(call.where);
  call_->setText(number.isEmpty() ? tr("1.  Call the local emergency number")
                                  : tr("1.  Call %1").arg(number));
  say_->setText(where.isEmpty()
                    ? tr("Say where you are, what happened, how many are hurt. Let them end the call.")
                    : tr("Say: %1. What happened, how many are hurt. Let them end the call.").arg(where));
  none_->setText(tr("No number is entered for this shop. A manager enters it on the page Rosters."));
  none_->setVisible(number.isEmpty());
}

}  // namespace wm::app
