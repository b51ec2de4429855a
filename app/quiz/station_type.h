#pragma once
// Type and buttons of the quiz station: read from a step away, and larger still where somebody asks for it.
#include <QLabel>
#include <QPushButton>

#include "app/theme/theme.h"
#include "app/widgets/at_once.h"

namespace wm::app {

/// In pixels.
struct StationType {
  int question = 27, body = 20, small = 15;
};
inline StationType station_type(bool large) { return large ? StationType{44, 33, 22} : StationType{}; }

inline QFont sized(int pixels, bool heavy = false) {
  QFont font = type(TypeSize::body, heavy);
  font.setPixelSize(pixels);
  return font;
}

inline QLabel* station_label(int pixels, bool heavy = false, const QString& words = {}) {
  auto* label = new QLabel(words);
  label->setFont(sized(pixels, heavy));
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  return label;
}

/// A large button with its key below its words.
class StationButton : public QPushButton {
  Q_OBJECT
 public:
  StationButton(const QString& words, const QKeySequence& key, bool primary = false,
                QWidget* parent = nullptr);
  void say(const QString& words);
  void set_size(int pixels);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  bool event(QEvent* event) override { return click_at_once(*this, event) || QPushButton::event(event); }
  void paintEvent(QPaintEvent* event) override;

 private:
  QString key_words() const { return shortcut().toString(QKeySequence::NativeText); }
  QFont key_font() const { return sized(pixels_ * 7 / 10); }

  int pixels_ = StationType().body;
};

}  // namespace wm::app
