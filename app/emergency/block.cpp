#include "app/emergency/block.h"

#include "app/theme/theme.h"

namespace wm::app {

Block::Block(const QString& title, QFrame* into) : frame(into), column(new QVBoxLayout(into)) {
  frame->setProperty("role", "paper");
  column->setContentsMargins(18, 14, 18, 16);
  column->setSpacing(4);
  auto* heading = new QLabel(title);
  heading->setFont(type(TypeSize::body, true));
  column->addWidget(heading);
  column->addSpacing(4);
}

void Block::field(const QString& words, QWidget* widget, QVBoxLayout* column) {
  auto* label = new QLabel(words);
  label->setProperty("role", "quiet");
  label->setWordWrap(true);
  label->setBuddy(widget);
  widget->setAccessibleName(QString(words).remove('&'));
  column->addWidget(label);
  column->addWidget(widget);
}

void Block::finish(QWidget* button) {
  column->addSpacing(8);
  column->addStretch(1);
  column->addWidget(button);
}

}  // namespace wm::app
