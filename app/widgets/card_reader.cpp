#include "app/widgets/card_reader.h"

#include <QCoreApplication>
#include <QDateTime>

namespace wm::app {

CardBuffer::Verdict CardBuffer::key(const QString& text, std::int64_t at_ms) {
  const bool fast = at_ms - last_ <= fastest_hand_ms;
  if (held_.isEmpty()) {
    last_ = at_ms;
    if (text != prefix) return Verdict::pass;
    held_ = text;
    return Verdict::hold;
  }
  if (!fast) return Verdict::release;
  last_ = at_ms;
  if (text == "\r" || text == "\n") {
    if (held_.size() < 4) return Verdict::release;
    card_ = held_.mid(1);
    // Track 2 ends with '?'; what the person's details hold is what stands between.
    if (card_.endsWith('?')) card_.chop(1);
    held_.clear();
    return Verdict::card;
  }
  held_ += text;
  return Verdict::hold;
}

QString CardBuffer::take() {
  QString held;
  held.swap(held_);
  return held;
}

CardReader::CardReader(QObject* parent) : QObject(parent) {
  wait_.setSingleShot(true);
  wait_.setInterval(static_cast<int>(CardBuffer::fastest_hand_ms) * 2);
  connect(&wait_, &QTimer::timeout, this, &CardReader::release);
  QCoreApplication::instance()->installEventFilter(this);
}

void CardReader::release() {
  const QString held = buffer_.take();
  if (!receiver_) return;
  releasing_ = true;
  for (const QChar c : held) {
    QKeyEvent press(QEvent::KeyPress, 0, Qt::NoModifier, c), up(QEvent::KeyRelease, 0, Qt::NoModifier, c);
    QCoreApplication::sendEvent(receiver_, &press);
    QCoreApplication::sendEvent(receiver_, &up);
  }
  releasing_ = false;
}

bool CardReader::eventFilter(QObject* watched, QEvent* event) {
  const bool override_asked = event->type() == QEvent::ShortcutOverride;
  if (releasing_ || !watched->isWidgetType() || (event->type() != QEvent::KeyPress && !override_asked))
    return false;
  auto* key = static_cast<QKeyEvent*>(event);
  if (key->text().isEmpty() || (key->modifiers() & ~Qt::ShiftModifier & ~Qt::KeypadModifier)) return false;
  // The same key comes again to each parent; a reader's key is judged once, at the first.
  if (override_asked) return false;
  switch (buffer_.key(key->text(), QDateTime::currentMSecsSinceEpoch())) {
    case CardBuffer::Verdict::pass:
      return false;
    case CardBuffer::Verdict::hold:
      receiver_ = watched;
      wait_.start();
      return true;
    case CardBuffer::Verdict::card:
      wait_.stop();
      emit scanned(buffer_.card());
      return true;
    case CardBuffer::Verdict::release:
      wait_.stop();
      release();
      return false;
  }
  return false;
}

}  // namespace wm::app
