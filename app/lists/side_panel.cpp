#include "app/lists/side_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/lists/form.h"
#include "app/theme/theme.h"
#include "app/widgets/key_button.h"

namespace wm::app {
namespace {

QLabel* label(const QString& words, const char* role) {
  auto* label = new QLabel(words);
  label->setProperty("role", role);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

}  // namespace

SidePanel::SidePanel(QWidget* parent) : QFrame(parent), stack_(new QStackedWidget(this)) {
  setProperty("role", "paper");
  setFixedWidth(380);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(4, 4, 4, 4);
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFocusPolicy(Qt::NoFocus);
  stack_->setContentsMargins(16, 14, 16, 14);
  scroll->setWidget(stack_);
  scroll->viewport()->setAutoFillBackground(false);
  stack_->setAutoFillBackground(false);
  layout->addWidget(scroll);
  start();
}

void SidePanel::start() {
  delete details_;
  details_ = new QWidget;
  lines_ = new QVBoxLayout(details_);
  lines_->setContentsMargins(0, 0, 0, 0);
  lines_->setSpacing(6);
  lines_->addStretch(1);
  stack_->insertWidget(0, details_);
  give_room();
  if (stack_->count() == 1) stack_->setCurrentIndex(0);
}

void SidePanel::heading(const QString& words) {
  lines_->insertWidget(lines_->count() - 1, label(words, "large"));
}
void SidePanel::quiet(const QString& words) {
  lines_->insertWidget(lines_->count() - 1, label(words, "quiet"));
}

void SidePanel::section(const QString& words) {
  lines_->insertSpacing(lines_->count() - 1, 8);
  lines_->insertWidget(lines_->count() - 1, label(words, "heading"));
}

void SidePanel::paragraph(const QString& words) {
  lines_->insertWidget(lines_->count() - 1, label(words, "body"));
}

void SidePanel::line(const QString& name, const QString& value) {
  if (value.isEmpty()) return;
  auto* row = new QHBoxLayout;
  QLabel* left = label(name, "quiet");
  left->setFixedWidth(110);
  left->setAlignment(Qt::AlignTop);
  left->setContentsMargins(0, 2, 0, 0);
  row->addWidget(left);
  row->addWidget(label(value, "body"), 1);
  lines_->insertLayout(lines_->count() - 1, row);
}

KeyButton* SidePanel::button(const QString& words, const QKeySequence& key,
                             const std::function<void()>& act) {
  auto* button = new KeyButton(words, key, false, details_);
  // A long name is cut short rather than making all of the panel wider than it is seen.
  button->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  button->setToolTip(words);
  connect(button, &QPushButton::clicked, this, act);
  lines_->insertWidget(lines_->count() - 1, button);
  return button;
}

void SidePanel::show_form(Form* form) {
  close_form();
  stack_->addWidget(form);
  stack_->setCurrentWidget(form);
  give_room();
  connect(form, &Form::left, this, &SidePanel::close_form);
  form->take_cursor();
}

void SidePanel::close_form() {
  if (!form_open()) return;
  QWidget* form = stack_->widget(1);
  stack_->removeWidget(form);
  form->deleteLater();
  stack_->setCurrentIndex(0);
  give_room();
  emit form_closed();
}

/// What is not seen takes no room, or a short form could be scrolled into nothing.
void SidePanel::give_room() { details_->setMaximumHeight(form_open() ? 0 : QWIDGETSIZE_MAX); }

bool SidePanel::form_open() const { return stack_->count() > 1; }

}  // namespace wm::app
