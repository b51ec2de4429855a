#pragma once
// Where somebody takes the quiz that comes next: on a second screen, on this one, or later.
#include <QLabel>
#include <QWidget>

#include "app/desk/shop_now.h"
#include "app/page/page.h"
#include "app/widgets/key_button.h"

namespace wm::app {

class QuizForm : public QWidget {
  Q_OBJECT
 public:
  explicit QuizForm(Session& session, QWidget* parent = nullptr);
  void start(const ShopNow& shop, const PersonId& person, const std::string& quiz);

 signals:
  void closed();
  void go(const wm::app::Place& place);
  void tell(const QString& sentence);

 private:
  /// Who needs the Desk before the quiz would end, in a sentence; empty: nobody.
  QString needed_for(const ShopNow& shop) const;
  void begin();
  void put_off();

  Session& session_;
  PersonId person_;
  std::string quiz_;
  QLabel *title_, *told_, *where_;
  KeyButton *begin_, *later_;
};

}  // namespace wm::app
