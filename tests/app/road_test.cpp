// The whole road by keyboard: somebody the shop has never seen is entered, brings their paper, goes through
// the lesson, sits the quiz, waits, is given a time, is checked out with what was measured, and may use the
// machine; she starts it and leaves it, and an incident takes it back. Nothing is done but press keys, and
// wait.
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QtTest>

#include "app/checkouts/sheet_view.h"
#include "app/frame/main_window.h"
#include "app/quiz/station.h"
#include "app/sheets/issued_sheets.h"
#include "app/theme/theme.h"
#include "db/journal/subject.h"
#include "evening.h"
#include "page_test.h"
#include "quiz_shop.h"

namespace road_test {

using namespace wm;
using namespace wm::app;

namespace {

/// The lesson's text issued, and the check-out the one of the program's own run sheet, taken back by an
/// incident.
void prepare(SmallShop& shop) {
  issue_cutters(shop);
  Session& session = *shop.session;
  const auto enter = [&](db::Action action) {
    const auto done = session.commit(std::move(action));
    if (!done) qFatal("%s", done.error().what.c_str());
  };
  if (!session.sit_down("rosa", "1111")) qFatal("nobody sits there");
  enter(db::EnterShopFact{db::Issued{db::Work::lesson,
                                     "guards",
                                     1,
                                     "",
                                     "# Guards\nWhat they are for.\n\n## Before you begin\nLook whether it "
                                     "is there.\n",
                                     {}}});
  Rulebook book = *session.decider().in_force(session.now());
  book.version = 3;
  shop.now = shop.now + std::int64_t{60};
  book.effective_from = shop.now;
  NeedCheckout need;
  need.checkout = "jointer-planer";
  need.renew_after_severity = 2;
  book.classes[2].gates = {SmallShop::gate("jointer-planer", Rung::independent, {need})};
  enter(db::PublishRulebook{book});
  const auto issued = issued_sheets(session);
  if (const auto taken = take_over(session, issued, missing_sheets(session, issued)); !taken)
    qFatal("%s", taken.error().what.c_str());
  session.hand_over();
}

}  // namespace

class RoadTest : public QObject {
  Q_OBJECT

  std::unique_ptr<SmallShop> shop_;
  std::unique_ptr<MainWindow> window_;
  PersonId wilma_;

  Session& session() const { return *shop_->session; }
  /// What has the cursor, as a keyboard finds it.
  QWidget* focus() const { return QApplication::focusWidget() ? QApplication::focusWidget() : window_.get(); }
  void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) const {
    QCoreApplication::processEvents();  // nobody presses before what they aim at is there
    QTest::keyClick(focus(), key, with);
  }
  void type(const QString& words) const { QTest::keyClicks(focus(), words); }
  /// Goes on with Tab until the cursor is there: what no Tab reaches, no keyboard reaches.
  void tab_to(const char* name) const {
    constexpr int most = 60;  // no page has more that takes a cursor
    for (int tabs = 0; focus()->objectName() != name; ++tabs) {
      QVERIFY2(tabs < most, name);
      key(Qt::Key_Tab);
    }
  }
  void fill(const char* name, const QString& words) const {
    tab_to(name);
    type(words);
  }
  QString text(const char* name) const {
    for (const QLabel* label : window_->findChildren<QLabel*>(name))
      if (label->isVisible()) return label->text();
    return {};
  }
  Rung rung() const { return session().decider().rung(wilma_, "jointer-planer/jointing", session().now()); }

  void hand_over() const {
    key(Qt::Key_F10);
    QVERIFY(!session().seated());
  }
  void sit_down(const char* number, const char* pin, const char* grabbed = nullptr) const {
    key(Qt::Key_F10);
    type(number);
    key(Qt::Key_Return);
    type(pin);
    if (grabbed) evening::grab(*window_, grabbed);
    key(Qt::Key_Return);
    QVERIFY(session().seated());
  }
  void show_wilma() const {
    key(Qt::Key_F2);
    key(Qt::Key_Escape);
    type("wilma");
    key(Qt::Key_Return);
    QCOMPARE(text("person_name"), QString("Wilma Quist"));
  }
  /// As she does herself, at the station beside the desk.
  void lesson_and_quiz() {
    QuizStation station(session(), true, [this] { return ClockReading{shop_->now, "this start", 0}; });
    station.resize(1366, 768);
    station.show();
    QVERIFY(QTest::qWaitForWindowActive(&station));
    identify(station, "0500");
    press_key(station, Qt::Key_Return);
    for (int screen = 0; screen < 6; ++screen) {
      QCoreApplication::processEvents();
      press_key(station, Qt::Key_Return, Qt::ControlModifier);
    }
    evening::grab(station, "road-3-lesson");
    QVERIFY(!shop_->facts<Lesson>().empty());
    QCOMPARE(shop_->facts<Lesson>().back().person, wilma_);
    press_key(station, Qt::Key_Escape);
    press_key(station, Qt::Key_Return);
    QVERIFY(station.run().sitting());
    evening::grab(station, "road-4-question");
    sit_whole(station);
    QCOMPARE(station.findChild<QLabel*>("result")->text(), QString("Passed: 5 of 5 right."));
    evening::grab(station, "road-5-passed");
    press_key(station, Qt::Key_1, Qt::ControlModifier);
    QCOMPARE(shop_->facts<db::Waiting>().back().person, wilma_);
    press_key(station, Qt::Key_Return, Qt::ControlModifier);
  }
  /// Hers in the list of that evening, and onto its sheet.
  void open_the_check_out() const {
    key(Qt::Key_F4);
    tab_to("one_on_ones");
    key(Qt::Key_Home);
    const auto* list = qobject_cast<QListWidget*>(focus());
    QVERIFY(list);
    for (int row = 0; row < list->count() && !text("under").contains("Wilma Quist"); ++row) key(Qt::Key_Down);
    QVERIFY2(text("under").contains("Wilma Quist"), qPrintable(text("under")));
    tab_to("sheet");
  }
  void mark_measure_and_sign() const {
    auto* sheet = qobject_cast<SheetView*>(focus());
    QVERIFY2(sheet, qPrintable(focus()->objectName()));
    key(Qt::Key_Home);
    const int lines = static_cast<int>(sheet->on_sheet().marks.size());
    for (int line = 0; line < lines; ++line) {
      if (line > 0) key(Qt::Key_Down);
      key(Qt::Key_1);
    }
    int measured = 0;
    key(Qt::Key_Home);
    for (int line = 0; line < lines; ++line) {
      if (line > 0) key(Qt::Key_Down);
      key(Qt::Key_M);
      if (focus()->objectName() != "measure") continue;
      ++measured;
      type(sheet->accessibleDescription().contains("thickness") ? "0.996 in" : "0");
      key(Qt::Key_Escape);
    }
    QVERIFY(measured >= 3);
    QVERIFY2(text("under").contains("in the shop's store"), qPrintable(text("under")));
    evening::grab(*window_, "road-8-check-out");
    // She chooses a PIN and countersigns with it: she was shown the cautions.
    key(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    type("7777");
    key(Qt::Key_Tab);
    type("7777");
    evening::grab(*window_, "road-8b-own-pin");
    key(Qt::Key_Return);
    type("7777");
    key(Qt::Key_Return);
    QCOMPARE(focus()->objectName(), QString("pin"));
    type("2222");
    evening::grab(*window_, "road-9-countersigned");
    key(Qt::Key_Return);
  }
  /// She starts it while staff are in, and leaves it forty minutes later.
  void start_and_leave() {
    show_wilma();
    type("joi");
    QVERIFY2(text("answer").contains("without a supervisor"), qPrintable(text("answer")));
    key(Qt::Key_G, Qt::ControlModifier);
    evening::grab(*window_, "road-11-start");
    key(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(!shop_->facts<db::Started>().empty(), qPrintable(text("start_said") + text("problem")));
    QCOMPARE(shop_->facts<db::Started>().back().person, wilma_);
    shop_->now = shop_->now + std::int64_t{40 * 60};
    show_wilma();
    type("joi");
    key(Qt::Key_G, Qt::ControlModifier);
    key(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(shop_->facts<Use>().back().person, wilma_);
    evening::grab(*window_, "road-12-left");
  }
  /// Told by whoever sits there; the rulebook takes it back.
  void incident_takes_it_back() {
    key(Qt::Key_H, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(focus()->objectName(), QString("hurt_person"));
    evening::grab(*window_, "road-12b-emergency");
    fill("incident_person", "wilma");
    key(Qt::Key_Return);
    key(Qt::Key_Tab);
    key(Qt::Key_Space);  // was working
    fill("incident_machine", "Joi");
    fill("severity", "2");
    fill("what_happened", "the board kicked back, nobody stood behind it");
    evening::grab(*window_, "road-13-incident");
    key(Qt::Key_3, Qt::ControlModifier);
    QVERIFY2(!shop_->facts<Incident>().empty(), qPrintable(text("message")));
    QCOMPARE(shop_->facts<Incident>().back().person, wilma_);
    QCOMPARE(rung(), Rung::supervised);
    evening::grab(*window_, "road-14-what-follows");
    show_wilma();
    type("joi");
    QTRY_VERIFY2(text("answer").contains("only with a supervisor"), qPrintable(text("answer")));
    evening::grab(*window_, "road-15-taken-back");
  }

 private slots:
  void from_nothing_to_the_machine_and_back() {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    apply_theme(*qApp, Shade::light);
    shop_ = std::make_unique<SmallShop>();
    prepare(*shop_);
    window_ = std::make_unique<MainWindow>(session());
    window_->resize(1366, 768);
    window_->show();
    QVERIFY(QTest::qWaitForWindowActive(window_.get()));

    // Entered, with nothing.
    sit_down("0020", "3333", "road-0a-sit-down");
    key(Qt::Key_F6);
    key(Qt::Key_N, Qt::ControlModifier);
    fill("given", "Wilma");
    fill("family", "Quist");
    fill("number", "0500");
    fill("born", "14 March 1998");
    evening::grab(*window_, "road-0b-new-person");
    key(Qt::Key_Return, Qt::ControlModifier);
    const db::Person& entered = session().store().people().back();
    QCOMPARE(entered.number, std::string("0500"));
    wilma_ = entered.id;
    QCOMPARE(rung(), Rung::barred);
    show_wilma();
    evening::grab(*window_, "road-1-nothing");

    // The paper that she brings.
    key(Qt::Key_R, Qt::ControlModifier);
    evening::grab(*window_, "road-1b-paper-form");
    key(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(!shop_->facts<Document>().empty() && shop_->facts<Document>().back().person == wilma_,
             qPrintable(text("message")));
    evening::grab(*window_, "road-2-paper");

    hand_over();
    lesson_and_quiz();
    QCOMPARE(rung(), Rung::supervised);

    // Everybody who waits is fitted, and what is proposed is taken.
    window_->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(window_.get()));
    sit_down("0020", "3333");
    key(Qt::Key_F3);
    key(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
    auto* proposal = window_->findChild<QListWidget*>("proposal");
    QTRY_COMPARE(proposal->count(), 1);
    QVERIFY2(proposal->item(0)->text().startsWith("Wilma Quist") ||
                 proposal->item(0)->text().contains("Wilma Quist"),
             qPrintable(proposal->item(0)->text()));
    evening::grab(*window_, "road-6-fit-everyone");
    key(Qt::Key_Return, Qt::ControlModifier);
    const db::Booking booking = shop_->facts<db::Booking>().back();
    QCOMPARE(booking.person, wilma_);
    QCOMPARE(booking.assessor, PersonId("mara"));
    QCOMPARE(shop_->facts<db::WaitingEnd>().size(), std::size_t{1});
    evening::grab(*window_, "road-7-booked");

    // The check-out, when its time has come.
    hand_over();
    shop_->now = booking.from + std::int64_t{20 * 60};
    sit_down("0007", "2222");
    open_the_check_out();
    mark_measure_and_sign();
    QVERIFY2(text("after").contains("without a supervisor"), qPrintable(text("after") + text("message")));
    QCOMPARE(rung(), Rung::independent);
    QCOMPARE(shop_->facts<db::SheetMarks>().back().measured.size(), std::size_t{3});
    QCOMPARE(shop_->facts<db::Countersigned>().back().hand, db::Hand::pin);
    evening::grab(*window_, "road-10-signed");

    shop_->now = shop_->now + std::int64_t{60};
    start_and_leave();
    incident_takes_it_back();
  }
};

}  // namespace road_test

WM_PAGE_TEST(road_test, RoadTest)
#include "road_test.moc"
