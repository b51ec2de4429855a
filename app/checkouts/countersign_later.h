#pragma once
// Below a check-out that was signed without the member's word: they give it now.
#include <QLabel>
#include <QWidget>

#include "app/session.h"

namespace wm::app {

class CountersignFields;
class KeyButton;

class CountersignLater : public QWidget {
  Q_OBJECT
 public:
  explicit CountersignLater(Session& session, QWidget* parent = nullptr);

  /// Hides itself where nothing is missing, and where `checkout` is empty. The same check-out keeps what its
  /// member has done.
  void show_missing(const RecordId& checkout);
  /// Whether the card is the member's, and takes it for their word.
  bool take_card(const QString& card);
  /// The cursor to where the member gives it.
  void take_cursor();

 signals:
  /// They have no PIN, and want one.
  void choose_pin();
  void tell(const QString& sentence);
  void tell_problem(const wm::Problem& problem);

 private:
  void enter();

  Session& session_;
  RecordId checkout_;
  PersonId member_;
  QLabel* missing_;
  CountersignFields* fields_;
  KeyButton* pin_;
};

}  // namespace wm::app
