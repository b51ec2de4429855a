#pragma once
// By what the member says that they were shown the machine's cautions.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <optional>

#include "app/session.h"

namespace wm::app {

/// Nothing is chosen for the member that they have not at hand: a PIN where they have chosen one, else their
/// card where they have one, else nothing.
class CountersignFields : public QWidget {
  Q_OBJECT
 public:
  explicit CountersignFields(Session& session, QWidget* parent = nullptr);
  /// Beside PIN and card: that they signed a printed sheet, and that they don't countersign. At first both.
  struct Offers {
    bool paper = true, not_at_all = true;
  };
  void offer(Offers offers);

  /// Another member begins anew; the same one keeps what they have done.
  void set_member(const PersonId& person);
  /// Forgets what was typed or held to the reader.
  void clear();
  /// Whether the card is the member's, and takes it for their word.
  bool take_card(const QString& card);
  /// What is missing, as a sentence for whoever stands there; nothing where it is complete.
  std::optional<Problem> missing() const;
  /// Nothing where the member does not countersign.
  std::optional<db::Countersign> value() const;
  void take_cursor();

 signals:
  void changed();
  /// Enter, in the member's field.
  void done();

 private:
  enum Choice { choose = -1, by_pin, by_card, on_paper, not_at_all };
  Choice chosen() const { return static_cast<Choice>(hand_->currentData().toInt()); }
  void show_choice();

  Session& session_;
  PersonId person_;
  QComboBox* hand_;
  QLineEdit *pin_, *form_;
  QLabel* card_words_;
  QString card_;  // what the reader made of it
};

}  // namespace wm::app
