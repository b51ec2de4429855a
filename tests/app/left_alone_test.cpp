// A station that nobody touches goes back to nobody.
#include "app/seat/left_alone.h"

#include "lists_shop.h"
#include "page_test.h"

namespace left_alone_test {

using namespace wm;
using namespace wm::app;

class LeftAloneTest : public QObject {
  Q_OBJECT
 private slots:
  void a_station_left_alone_goes_back_to_nobody() {
    ListsShop shop;
    set_minutes_left_alone(10);
    LeftAlone watch(shop.session(), 40);  // a minute of 40 ms
    QSignalSpy told(&watch, &LeftAlone::handed_over);
    shop.sit("dee");
    QWidget somewhere;
    for (int i = 0; i < 20; ++i) {
      QTest::qWait(40);
      QTest::keyClick(&somewhere, Qt::Key_A);
    }
    QVERIFY(shop.session().seated());  // twice the time has gone by, but somebody was there
    QTRY_COMPARE(told.size(), 1);
    QVERIFY(!shop.session().seated());
    QVERIFY(!shop.session().role());
  }

  void where_it_is_set_so_it_waits_for_ever() {
    ListsShop shop;
    set_minutes_left_alone(0);
    LeftAlone watch(shop.session(), 1);
    shop.sit("dee");
    QTest::qWait(200);
    QVERIFY(shop.session().seated());
  }

  void cleanup() { QSettings().remove("hand_over_minutes"); }
};

}  // namespace left_alone_test

WM_PAGE_TEST(left_alone_test, LeftAloneTest)
#include "left_alone_test.moc"
