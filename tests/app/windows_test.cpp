// Two windows of two desks at one server: a check-out signed at the one fills the ladder at the other,
// without anybody asking there; also after the server was stopped and started. WM_SERVER names a server with
// an empty database, WM_SERVER_CONTROL what stops and starts it.
#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QProcess>

#include "app/checkouts/checkouts_page.h"
#include "app/checkouts/sheet_view.h"
#include "app/frame/main_window.h"
#include "app/widgets/ladder_view.h"
#include "db/move.h"
#include "evening.h"
#include "page_test.h"

namespace windows_test {

using namespace wm;
using namespace wm::app;

class WindowsTest : public QObject {
  Q_OBJECT

  QTemporaryDir folder_;
  Instant clock_ = evening::at("2026-11-26T23:50:00Z");

  static void control(const char* word) {
    QProcess program;
    program.start(qEnvironmentVariable("WM_SERVER_CONTROL"), {word});
    if (!program.waitForFinished(60'000) || program.exitCode() != 0)
      qFatal("the server does not %s: %s", word, program.readAllStandardError().constData());
  }
  std::unique_ptr<Session> desk(const char* name) {
    db::StoreOptions quick;
    quick.pin_operations = 1;
    quick.pin_memory = 8192;
    auto store = db::Store::open(
        qEnvironmentVariable("WM_SERVER").toStdString(), [this] { return clock_; }, quick);
    if (!store) qFatal("%s", store.error().what.c_str());
    return std::make_unique<Session>(std::move(*store), folder_.filePath(name));
  }
  /// Every line shown, and signed, by keyboard.
  static void mark_and_sign(CheckoutsPage& page) {
    page.activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(&page));
    auto* sheet = page.findChild<SheetView*>("sheet");
    QVERIFY(sheet && sheet->isVisible());
    sheet->setFocus();
    const auto press = [](Qt::Key key, Qt::KeyboardModifiers with = {}) {
      QTest::keyClick(QApplication::focusWidget(), key, with);
    };
    press(Qt::Key_Home);
    for (int line = 0; line < 10; ++line) {
      if (line > 0) press(Qt::Key_Down);
      press(Qt::Key_1);
    }
    page.findChild<QComboBox*>("hand")->setFocus();
    QTest::keyClicks(QApplication::focusWidget(), "not");  // it is not countersigned
    press(Qt::Key_Return, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), "2468");
    press(Qt::Key_Return);
  }
  static QString ladder(const MainWindow& window) {
    for (const auto* view : window.findChildren<LadderView*>())
      if (view->isVisible()) return view->accessibleName();
    return {};
  }

 private slots:
  void a_check_out_signed_in_one_window_fills_the_ladder_in_the_other_data() {
    QTest::addColumn<bool>("stopped");
    QTest::addRow("as they stand") << false;
    QTest::addRow("after the server was stopped and started") << true;
  }
  void a_check_out_signed_in_one_window_fills_the_ladder_in_the_other() {
    QFETCH(bool, stopped);
    QVERIFY2(!qEnvironmentVariable("WM_SERVER").isEmpty(), "WM_SERVER names no server");
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    apply_theme(*qApp, Shade::light);
    if (!stopped) {  // the first: the shop is taken to the server
      evening::Shop shop;
      const std::string file = shop.session->store().path();
      shop.session.reset();
      const auto moved = db::move_store(file, qEnvironmentVariable("WM_SERVER").toStdString());
      QVERIFY2(moved, moved ? "" : moved.error().what.c_str());
    }
    const auto assessors = desk("assessor"), front = desk("front");
    QVERIFY(assessors->sit_down("mara", "2468"));
    CheckoutsPage page(*assessors, nullptr, evening::sheets());
    QStringList told, refused;
    QVERIFY(evening::put_up(page, *assessors, told, refused));
    MainWindow window(*front);
    window.resize(1366, 768);
    window.show();
    const PersonId member = stopped ? "jonas" : "tola";
    Place there;
    there.page = "desk", there.person = member, there.target = "jointer-planer/planing";
    window.go(there);
    QTRY_COMPARE(ladder(window), standing_words(Rung::supervised));
    if (stopped) {
      control("stop");
      QTest::qWait(100);
      control("start");
    }
    Place place;  // nothing: the one-on-one of the evening
    if (stopped) place.person = member, place.target = "jointer-planer/jointing";
    page.open(place);
    mark_and_sign(page);
    QElapsedTimer timer;
    timer.start();
    QVERIFY2(told.join(' ').contains("signed: passed"), qPrintable(told.join(' ') + refused.join(' ')));
    QTRY_COMPARE_WITH_TIMEOUT(ladder(window), standing_words(Rung::independent), 5000);
    qInfo("seen after %lld ms", static_cast<long long>(timer.elapsed()));
    QVERIFY(!front->seated());
  }
};

}  // namespace windows_test

WM_PAGE_TEST(windows_test, WindowsTest)
#include "windows_test.moc"
