#include "app/quiz/choice_rows.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "app/quiz/station_type.h"
#include "app/quiz/tr.h"

namespace wm::app {
namespace {

constexpr int padding = 12, gap = 8, mark_room = 58;

QString choice_text(const std::vector<std::string>& choices, std::size_t choice) {
  return choice < choices.size() ? QString::fromStdString(choices[choice]) : QString();
}

}  // namespace

ChoiceRows::ChoiceRows(const AskedQuestion& asked, QWidget* parent)
    : AnswerView(parent), asked_(asked), rows_(asked.order), chosen_(asked.choices.size(), false) {
  setObjectName("choices");
  setFocusPolicy(Qt::StrongFocus);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setAccessibleName(is_order() ? QuizWords::tr("Steps to put in order") : QuizWords::tr("Choices"));
}

void ChoiceRows::show_given(const teach::Given& given) {
  std::fill(chosen_.begin(), chosen_.end(), false);
  if (const auto* one = std::get_if<teach::Chosen>(&given)) chosen_[one->choice] = true;
  if (const auto* ticked = std::get_if<teach::Ticked>(&given))
    for (const std::size_t choice : ticked->choices) chosen_[choice] = true;
  if (const auto* ordered = std::get_if<teach::Ordered>(&given);
      ordered && ordered->steps.size() == rows_.size()) {
    rows_ = ordered->steps;
    moved_ = true;
  }
  if (const auto* one = std::get_if<teach::Chosen>(&given))
    current_ = static_cast<int>(std::find(rows_.begin(), rows_.end(), one->choice) - rows_.begin());
  say_current();
  update();
}

void ChoiceRows::tell() {
  if (is_order()) return emit given(moved_ ? teach::Given(teach::Ordered{rows_}) : teach::Unanswered{});
  std::vector<std::size_t> chosen;
  for (std::size_t i = 0; i < chosen_.size(); ++i)
    if (chosen_[i]) chosen.push_back(i);
  if (chosen.empty()) return emit given(teach::Unanswered{});
  emit given(is_one() ? teach::Given(teach::Chosen{chosen.front()}) : teach::Ticked{chosen});
}

void ChoiceRows::choose(int row) {
  current_ = row;
  if (is_order()) {
    held_ = !held_;
    // Put down where it was: that is the order that was meant.
    if (!held_ && !moved_) moved_ = true, tell();
  } else {
    const std::size_t choice = rows_[static_cast<std::size_t>(row)];
    const bool was = chosen_[choice];
    if (is_one()) std::fill(chosen_.begin(), chosen_.end(), false);
    chosen_[choice] = is_one() || !was;
    tell();
  }
  say_current();
  update();
}

void ChoiceRows::move_to(int row) {
  if (row < 0 || row >= count() || row == current_) return;
  const auto at = [this](int i) { return rows_.begin() + i; };
  if (row < current_)
    std::rotate(at(row), at(current_), at(current_ + 1));
  else
    std::rotate(at(current_), at(current_ + 1), at(row + 1));
  current_ = row;
  moved_ = true;
  tell();
  say_current();
  update();
}

void ChoiceRows::go_to(int row) {
  current_ = std::clamp(row, 0, count() - 1);
  say_current();
  update();
}

void ChoiceRows::say_current() {
  const std::size_t choice = rows_[static_cast<std::size_t>(current_)];
  const QString text = choice_text(asked_.choices, choice);
  const QString place =
      QuizWords::tr("%1 of %2: %3", "a row, of how many, its words").arg(current_ + 1).arg(count());
  QString said = place.arg(text);
  if (chosen_[choice]) said = QuizWords::tr("%1, chosen").arg(said);
  if (held_) said = QuizWords::tr("%1, picked up").arg(said);
  setAccessibleDescription(said);
  QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&changed);
}

void ChoiceRows::keyPressEvent(QKeyEvent* event) {
  const bool with_control = event->modifiers() & Qt::ControlModifier;
  const int step = event->key() == Qt::Key_Up ? -1 : event->key() == Qt::Key_Down ? 1 : 0;
  if (step != 0)
    return is_order() && (held_ || with_control) ? move_to(current_ + step) : go_to(current_ + step);
  if (event->key() == Qt::Key_Space) return choose(current_);
  const int digit = event->key() - Qt::Key_1;
  if (digit >= 0 && digit < std::min(count(), 9) && !with_control)
    return is_order() ? go_to(digit) : choose(digit);
  QWidget::keyPressEvent(event);
}

void ChoiceRows::mousePressEvent(QMouseEvent* event) {
  const int row = row_at(event->position().toPoint());
  if (row < 0) return;
  held_ = false;
  dragged_ = false;
  if (is_order())
    go_to(row);
  else
    choose(row);
}

void ChoiceRows::mouseMoveEvent(QMouseEvent* event) {
  if (!is_order() || !(event->buttons() & Qt::LeftButton)) return;
  const int row = row_at(event->position().toPoint());
  if (row < 0 || row == current_) return;
  // Only once it would still lie under the pointer: rows of other heights would jump to and fro.
  const int before = current_;
  move_to(row);
  dragged_ = true;
  if (!row_rect(current_).contains(event->position().toPoint())) move_to(before);
}

void ChoiceRows::mouseReleaseEvent(QMouseEvent*) { dragged_ = false; }

void ChoiceRows::resizeEvent(QResizeEvent* event) {
  AnswerView::resizeEvent(event);
  updateGeometry();
}

int ChoiceRows::text_height(int width, int row) const {
  const std::size_t choice = rows_[static_cast<std::size_t>(row)];
  const int columns = !asked_.beside.empty() ? 2 : 1;
  const int room = (width - mark_room - padding - (columns - 1) * 2 * padding) / columns;
  const QFontMetrics metrics(sized(asked_.size));
  int height = metrics.height();
  for (const auto* choices : {&asked_.choices, &asked_.beside})
    height = std::max(height, metrics
                                  .boundingRect(QRect(0, 0, std::max(40, room), 10000), Qt::TextWordWrap,
                                                choice_text(*choices, choice))
                                  .height());
  return height;
}

int ChoiceRows::heightForWidth(int width) const {
  int height = 4;
  for (int row = 0; row < count(); ++row) height += text_height(width, row) + 2 * padding + gap;
  return height;
}

QRect ChoiceRows::row_rect(int row) const {
  int top = 2;
  for (int i = 0; i < row; ++i) top += text_height(width(), i) + 2 * padding + gap;
  return {2, top, width() - 4, text_height(width(), row) + 2 * padding};
}

int ChoiceRows::row_at(const QPoint& point) const {
  for (int row = 0; row < count(); ++row)
    if (row_rect(row).contains(point)) return row;
  return -1;
}

void ChoiceRows::paint_mark(QPainter& painter, const QRect& box, int row) const {
  const Palette& p = wm::app::palette();
  const bool chosen = chosen_[rows_[static_cast<std::size_t>(row)]];
  if (is_order()) {
    painter.setFont(sized(asked_.size, true));
    painter.setPen(moved_ ? p.text : p.quiet);
    painter.drawText(box, Qt::AlignCenter, QString::number(row + 1));
    return;
  }
  const int side = std::min(26, asked_.size + 4);
  QRectF mark(0, 0, side, side);
  mark.moveCenter(QRectF(box).center());
  painter.setPen(QPen(chosen ? p.full : p.quiet, 2));
  painter.setBrush(chosen ? p.full : p.paper);
  is_one() ? painter.drawEllipse(mark) : painter.drawRoundedRect(mark, 4, 4);
  if (!chosen) return;
  painter.setPen(QPen(p.paper, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(QPolygonF({mark.topLeft() + QPointF(side * 0.24, side * 0.54),
                                  mark.topLeft() + QPointF(side * 0.43, side * 0.72),
                                  mark.topLeft() + QPointF(side * 0.77, side * 0.3)}));
}

void ChoiceRows::paint_row(QPainter& painter, int row) const {
  const Palette& p = wm::app::palette();
  const QRect box = row_rect(row);
  const std::size_t choice = rows_[static_cast<std::size_t>(row)];
  const bool current = row == current_ && hasFocus(), lifted = current && held_;
  painter.setPen(QPen(current ? p.full : p.line, current ? 3 : 1));
  painter.setBrush(chosen_[choice] || lifted ? p.chosen : p.paper);
  painter.drawRoundedRect(QRectF(box).adjusted(1, 1, -1, -1), 7, 7);
  paint_mark(painter, {box.left(), box.top(), mark_room, box.height()}, row);
  painter.setFont(sized(asked_.size));
  painter.setPen(p.text);
  const QRect words(box.left() + mark_room, box.top() + padding, box.width() - mark_room - padding,
                    box.height() - 2 * padding);
  const int room = !asked_.beside.empty() ? (words.width() - 2 * padding) / 2 : words.width();
  painter.drawText(QRect(words.left(), words.top(), room, words.height()),
                   Qt::TextWordWrap | Qt::AlignVCenter, choice_text(asked_.choices, choice));
  if (asked_.beside.empty()) return;
  painter.drawText(QRect(words.left() + room + 2 * padding, words.top(), room, words.height()),
                   Qt::TextWordWrap | Qt::AlignVCenter, choice_text(asked_.beside, choice));
}

void ChoiceRows::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  for (int row = 0; row < count(); ++row) paint_row(painter, row);
}

}  // namespace wm::app
