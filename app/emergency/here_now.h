#pragma once
// Who is in the building, members and visitors, and which machines are out of service: for whoever has to
// count heads, or to know what not to touch.
#include <QFrame>
#include <QVBoxLayout>

#include "app/desk/shop_now.h"
#include "app/page/page.h"

namespace wm::app {

class HereNow : public QFrame {
  Q_OBJECT
 public:
  explicit HereNow(Session& session, QWidget* parent = nullptr);
  void refresh(const ShopNow& shop);

 signals:
  void go(const wm::app::Place& place);

 private:
  void say(const QString& title, const QStringList& lines, const QString& none);
  void offer(const ShopNow& shop);

  Session& session_;
  QVBoxLayout* column_;
};

}  // namespace wm::app
