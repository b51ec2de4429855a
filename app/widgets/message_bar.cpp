#include "app/widgets/message_bar.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QStyle>

#include "app/theme/theme.h"
#include "app/words/words.h"

namespace wm::app {

MessageBar::MessageBar(QWidget* parent)
    : QFrame(parent), label_(new QLabel), close_(new QPushButton(tr("Close"))) {
  setObjectName("message_bar");
  label_->setObjectName("message");
  label_->setWordWrap(true);
  label_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  close_->setProperty("role", "plain");
  close_->setFocusPolicy(Qt::NoFocus);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(14, 7, 14, 7);
  row->addWidget(label_, 1);
  row->addWidget(close_);
  fade_.setSingleShot(true);
  fade_.setInterval(15000);
  connect(&fade_, &QTimer::timeout, this, &MessageBar::clear);
  connect(close_, &QPushButton::clicked, this, &MessageBar::clear);
  hide();
}

void MessageBar::tell(const QString& sentence) { show_text(sentence, false); }
void MessageBar::tell_problem(const Problem& problem) { show_text(problem_sentence(problem), true); }

void MessageBar::clear() {
  fade_.stop();
  label_->clear();
  hide();
}

void MessageBar::show_text(const QString& sentence, bool problem) {
  // The colours are the program's style sheet's, so that they follow when the system's shade changes.
  setProperty("problem", problem);
  style()->unpolish(this);
  style()->polish(this);
  label_->setFont(type(TypeSize::body, problem));
  label_->setText(sentence);
  setAccessibleName(sentence);
  show();
  problem ? fade_.stop() : fade_.start();
  QAccessibleEvent alert(this, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

}  // namespace wm::app
