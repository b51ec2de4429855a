// What each computer of a shop is for: said by a manager, by keyboard, and what a computer then shows and
// takes.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QStandardPaths>
#include <QtTest>

#include "app/computers/computers_page.h"
#include "app/frame/main_window.h"
#include "app/start/shop_windows.h"
#include "app/theme/theme.h"
#include "page_test.h"
#include "small_shop.h"

namespace computers_test {

using namespace wm;
using namespace wm::app;

namespace {

/// The small shop's file, opened as one of several computers does.
struct SharedShop {
  QTemporaryDir folder;
  std::string path = folder.filePath("shop.witnessmark").toStdString();
  Instant now = SmallShop::at("2026-11-25T23:20:00Z");

  SharedShop() {
    auto store =
        db::Store::create(path, {"Cedar Street Workshop", "America/Chicago", 0}, clock(), options({}));
    if (!store || !store->found(SmallShop::history())) qFatal("no shop");
  }
  db::Store::Clock clock() {
    return [this] { return now; };
  }
  static db::StoreOptions options(const std::string& login) {
    db::StoreOptions quick;
    quick.pin_operations = 1;
    quick.pin_memory = 8192;
    quick.login = login;
    return quick;
  }
  db::Store open(const std::string& login) {
    auto store = db::Store::open(path, clock(), options(login));
    if (!store) qFatal("%s", store.error().what.c_str());
    return std::move(*store);
  }
  std::unique_ptr<Session> session(const std::string& login) {
    return std::make_unique<Session>(open(login), folder.filePath(QString::fromStdString("at-" + login)));
  }
  void tell(const std::string& login, db::Station station) {
    const auto here = session("bureau");
    if (!here->sit_down("rosa", "1111") || !here->commit(db::EnterShopFact{db::StationTold{login, station}}))
      qFatal("not told");
  }
};

void press(MainWindow& window, Qt::Key key, Qt::KeyboardModifiers with = {}) {
  QWidget* at = QApplication::focusWidget();
  QTest::keyClick(at ? at : &window, key, with);
  QApplication::processEvents();  // what a page wrote anew is shown
}

/// The choice of the form that is open: one that was left goes only once the program is idle.
QComboBox* choice(const MainWindow& window) {
  for (QComboBox* each : window.findChildren<QComboBox*>("station"))
    if (each->isVisible()) return each;
  return nullptr;
}

QStringList shown_pages(const MainWindow& window) {
  QStringList shown;
  for (const char* id : {"desk", "diary", "hours", "checkouts", "sheets", "people", "machines", "lessons",
                         "banks", "figures", "rosters", "journal", "computers", "backups"})
    if (window.findChild<QWidget*>(QString("page_") + id)->isVisible()) shown << id;
  return shown;
}

std::unique_ptr<MainWindow> window_on(Session& session) {
  auto window = std::make_unique<MainWindow>(session);
  window->resize(1366, 768);
  Place desk;
  desk.page = "desk";
  window->go(desk);
  window->show();
  window->activateWindow();
  if (!QTest::qWaitForWindowActive(window.get())) qFatal("no window");
  return window;
}

}  // namespace

class ComputersTest : public QObject {
  Q_OBJECT

 private slots:
  void initTestCase() {
    QStandardPaths::setTestModeEnabled(true);
    apply_theme(*qApp, Shade::light);
  }

  void a_manager_says_it_by_keyboard() {
    SharedShop shop;
    const auto session = shop.session("bureau");
    QVERIFY(session->sit_down("rosa", "1111"));
    const auto window = window_on(*session);
    press(*window, Qt::Key_F5);
    QCOMPARE(window->current()->id(), QString("computers"));
    press(*window, Qt::Key_T, Qt::ControlModifier);
    auto* what = choice(*window);
    QVERIFY(what);
    for (int down = 0; down < 4; ++down) QTest::keyClick(what, Qt::Key_Down);
    QCOMPARE(what->currentText(), QString("office"));
    QTest::keyClick(what, Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(session->store().station(), db::Station::office);
    press(*window, Qt::Key_N, Qt::ControlModifier);
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("login"));
    press(*window, Qt::Key_Return);  // no login: told, and nothing entered
    QVERIFY(window->findChild<QLabel*>("problem")->isVisible());
    QTest::keyClicks(QApplication::focusWidget(), "tablet");
    for (int down = 0; down < 2; ++down) QTest::keyClick(choice(*window), Qt::Key_Down);
    press(*window, Qt::Key_Return);
    QCOMPARE(session->store().stations(), (std::vector<db::StationTold>{{"bureau", db::Station::office},
                                                                        {"tablet", db::Station::machine}}));
    // The only one that may say what the others are stays it.
    press(*window, Qt::Key_T, Qt::ControlModifier);
    what = choice(*window);
    QCOMPARE(what->currentText(), QString("office"));
    for (int up = 0; up < 3; ++up) QTest::keyClick(what, Qt::Key_Up);
    QCOMPARE(what->currentText(), QString("front desk"));
    QTest::keyClick(what, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(choice(*window));  // the form is still there, and says why
    QCOMPARE(session->store().station(), db::Station::office);
  }

  void each_shows_what_it_is_for() {
    SharedShop shop;
    shop.tell("bureau", db::Station::office);
    shop.tell("tablet", db::Station::machine);
    shop.tell("counter", db::Station::front);
    const QStringList everywhere = {"desk", "diary", "checkouts", "machines"};
    {
      const auto session = shop.session("tablet");
      QVERIFY(session->sit_down("rosa", "1111"));
      const auto window = window_on(*session);
      QCOMPARE(shown_pages(*window), everywhere);
      press(*window, Qt::Key_F6);  // People
      QCOMPARE(window->current()->id(), QString("desk"));
      Place people;
      people.page = "people";
      window->go(people);
      QCOMPARE(window->current()->id(), QString("desk"));
      QVERIFY(window->messages().text().contains("not used at this computer"));
      press(*window, Qt::Key_H, Qt::ControlModifier | Qt::ShiftModifier);
      QCOMPARE(window->current()->id(), QString("emergency"));
      Place quiz;
      quiz.page = "quiz";
      quiz.person = "jonas";
      quiz.item = "cutters";
      window->go(quiz);
      QVERIFY(window->messages().text().contains("No quiz is taken"));
    }
    const auto at_counter = shop.session("counter"), in_office = shop.session("bureau");
    QVERIFY(!shown_pages(*window_on(*at_counter)).contains("banks"));
    QVERIFY(shown_pages(*window_on(*at_counter)).contains("people"));
    QCOMPARE(shown_pages(*window_on(*in_office)).size(), 14);
    // One computer by itself is asked nothing of all this.
    SmallShop file;
    QVERIFY(!shown_pages(*window_on(*file.session)).contains("computers"));
    QCOMPARE(shown_pages(*window_on(*file.session)).size(), 13);
  }

  void what_is_said_elsewhere_holds_here_within_a_second() {
    SharedShop shop;
    shop.tell("bureau", db::Station::office);
    const auto session = shop.session("loft");
    QVERIFY(session->sit_down("rosa", "1111"));
    const auto window = window_on(*session);
    QCOMPARE(shown_pages(*window).size(), 14);
    shop.tell("loft", db::Station::machine);
    QTRY_COMPARE_WITH_TIMEOUT(shown_pages(*window).size(), 4, 1000);
    QVERIFY(!session->commit(db::EnterShopFact{db::RoleGiven{"jonas", db::Role::desk}}));
  }

  void the_quiz_station_is_nothing_else() {
    SharedShop shop;
    shop.tell("bureau", db::Station::office);
    ShopWindows windows(shop.path, shop.clock(), SharedShop::options("sofa"));
    windows.open(shop.open("sofa"));
    QVERIFY(windows.window() && !windows.station());
    shop.tell("sofa", db::Station::quiz);
    QTRY_VERIFY(windows.station() && !windows.window());
    QVERIFY(windows.station()->isVisible());
    ShopWindows again(shop.path, shop.clock(), SharedShop::options("sofa"));
    again.open(shop.open("sofa"));
    QVERIFY(again.station() && !again.window());
  }
};

}  // namespace computers_test

WM_PAGE_TEST(computers_test, ComputersTest)
#include "computers_test.moc"
