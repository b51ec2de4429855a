#pragma once
// Tonight: who is due, with one key each for arrived, late and not come; and at the right, who is here and
// what is out of service.
#include <QFrame>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/desk/shop_now.h"
#include "app/page/page.h"

namespace wm::app {

class TonightPanel : public QWidget {
  Q_OBJECT
 public:
  explicit TonightPanel(Session& session, QWidget* parent = nullptr);
  void show_shop(const ShopNow& shop);

 signals:
  void go(const wm::app::Place& place);
  void tell(const QString& sentence);
  void tell_problem(const wm::Problem& problem);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void mark(db::Turnout turnout);
  void unmark();
  void open_person();
  QString state(const Due& due) const;

  Session& session_;
  std::vector<Due> due_;
  QLabel* title_;
  QTableWidget* table_;
  QLabel* keys_;
};

class TonightSide : public QFrame {
  Q_OBJECT
 public:
  explicit TonightSide(Session& session, QWidget* parent = nullptr);
  void show_shop(const ShopNow& shop);

 signals:
  void tell(const QString& sentence);
  void tell_problem(const wm::Problem& problem);

 private:
  void offer_to_leave(const db::VisitorIn& visitor);
  QStringList to_countersign(const ShopNow& shop) const;
  void add_block(const QString& title, const QStringList& lines, const QString& none);

  Session& session_;
  QVBoxLayout* column_;
};

}  // namespace wm::app
