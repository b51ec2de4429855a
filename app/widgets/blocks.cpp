#include "app/widgets/blocks.h"

#include <QLabel>

namespace wm::app {

void add_block(QVBoxLayout& column, const QString& title, const QStringList& lines) {
  if (!title.isEmpty()) {
    auto* heading = new QLabel(title);
    heading->setProperty("role", "heading");
    column.addWidget(heading);
  }
  for (const QString& line : lines) {
    auto* label = new QLabel(line);
    label->setWordWrap(true);
    column.addWidget(label);
  }
}

void empty_column(QVBoxLayout& column) {
  while (QLayoutItem* item = column.takeAt(0)) {
    if (QWidget* widget = item->widget()) {
      widget->hide();
      widget->setParent(nullptr);
      widget->deleteLater();
    }
    delete item;
  }
}

}  // namespace wm::app
