#pragma once
// A card reader that types: told from a person by its prefix and its speed, and kept from pressing any
// button.
#include <QKeyEvent>
#include <QObject>
#include <QPointer>
#include <QString>
#include <QTimer>
#include <optional>
#include <vector>

namespace wm::app {

/// Decides, key by key, whether a reader is typing. No clock of its own: each key comes with its time.
class CardBuffer {
 public:
  /// ';' is the start sentinel of track 2 (ISO/IEC 7813), which readers of other cards are set to send too.
  static constexpr QChar prefix = ';';
  /// A reader's keys follow one another faster than a hand's.
  static constexpr std::int64_t fastest_hand_ms = 35;

  enum class Verdict { pass, hold, card, release };
  /// `text` is what the key types, "\r" for Enter. hold: keep the key from everybody; card: card() is
  /// complete; release: no reader after all, the keys held (this one not among them) are to be typed as they
  /// were.
  Verdict key(const QString& text, std::int64_t at_ms);
  /// Nothing more came: a key held by itself was a person's.
  bool expired(std::int64_t at_ms) const { return !held_.isEmpty() && at_ms - last_ > fastest_hand_ms; }
  /// What is held, and nothing is from then on.
  QString take();
  const QString& card() const { return card_; }

 private:
  QString held_, card_;
  std::int64_t last_ = 0;
};

/// Listens to the whole program.
class CardReader : public QObject {
  Q_OBJECT
 public:
  explicit CardReader(QObject* parent = nullptr);
  bool eventFilter(QObject* watched, QEvent* event) override;

 signals:
  void scanned(const QString& card);

 private:
  void release();

  CardBuffer buffer_;
  QTimer wait_;
  QPointer<QObject> receiver_;
  bool releasing_ = false;
};

}  // namespace wm::app
