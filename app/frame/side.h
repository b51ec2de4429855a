#pragma once
// The left edge: the shop's name, the pages, the two dates that every page shares, the way out when somebody
// is hurt, and who sits here.
#include <QFrame>
#include <QLabel>
#include <vector>

#include "app/frame/page_link.h"
#include "app/session.h"
#include "app/widgets/date_field.h"
#include "app/widgets/key_button.h"

namespace wm::app {

class Side : public QFrame {
  Q_OBJECT
 public:
  explicit Side(Session& session, QWidget* parent = nullptr);
  void show_current(const QString& page);

 signals:
  void go(const QString& page);
  void refused(const wm::Problem& problem);

 private:
  QWidget* pages_list();
  QWidget* dates();
  QWidget* seat();
  void show_pages();
  void show_seat();
  void set_dates();
  void show_dates();

  Session& session_;
  std::vector<std::pair<QString, PageLink*>> links_;
  DateField* on_;
  DateField* known_;
  QLabel* who_;
  KeyButton* hand_over_;
};

}  // namespace wm::app
