// One evening at the demo shop by keyboard alone: from a name typed at the Desk to a signed check-out and the
// roster that hangs on the door.
#include <QDateTime>
#include <QLabel>
#include <QLineEdit>
#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>

#include "app/checkouts/sheet_view.h"
#include "app/frame/main_window.h"
#include "app/rosters/roster_paper.h"
#include "app/theme/theme.h"
#include "db/demo.h"

#include "page_test.h"

namespace day_test {

using namespace wm;
using namespace wm::app;

class DayTest : public QObject {
  Q_OBJECT

  QTemporaryDir folder_;
  Instant real_{1'800'000'000};  // what the real clock shows; the test moves it on
  std::unique_ptr<Session> session_;
  std::unique_ptr<MainWindow> window_;

  void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) const {
    QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : window_.get(), key, with);
  }
  void type(const QString& words) const { QTest::keyClicks(QApplication::focusWidget(), words); }
  QString text(const char* name) const { return window_->findChild<QLabel*>(name)->text(); }

  const db::Person* person(const QString& given, const QString& family) const {
    for (const db::Person& one : session_->store().people()) {
      if (QString::fromStdString(one.given) == given && QString::fromStdString(one.family) == family)
        return &one;
    }
    return nullptr;
  }

  void sit_down(const PersonId& who) const {
    key(Qt::Key_F10);
    QCOMPARE(window_->current()->id(), QString("seat"));
    type(QString::fromStdString(session_->store().person(who)->number));
    key(Qt::Key_Return);
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("pin"));
    type("2468");
    key(Qt::Key_Return);
    QVERIFY(session_->seated());
    QCOMPARE(session_->seated()->id, who);
  }

  std::optional<db::Booking> booking_of(const PersonId& who) const {
    std::optional<db::Booking> last;
    for (const db::Entry& entry : session_->store().entries()) {
      const auto* fact = std::get_if<db::ShopFact>(&entry.fact);
      const auto* booking = fact ? std::get_if<db::Booking>(fact) : nullptr;
      if (booking && booking->person == who) last = *booking;
    }
    return last;
  }

  PersonId somebody_at(db::Role role) const {
    for (const db::Person& one : session_->store().people()) {
      if (session_->store().role_of(one.id) == role) return one.id;
    }
    return {};
  }

 private slots:
  void one_whole_evening();
};

void DayTest::one_whole_evening() {
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
  apply_theme(*qApp, Shade::light);
  auto store = db::make_demo(folder_.filePath("day").toStdString(), [this] { return real_; });
  QVERIFY(store);
  session_ = std::make_unique<Session>(std::move(*store));
  window_ = std::make_unique<MainWindow>(*session_);
  window_->resize(1366, 768);
  window_->show();
  QVERIFY(QTest::qWaitForWindowActive(window_.get()));
  Place desk;
  desk.page = "desk";
  window_->go(desk);
  const db::Person* jonas = person("Jonas", "Lindqvist");
  QVERIFY(jonas);
  const PersonId id = jonas->id;
  const TargetName jointing = "jointer-planer/jointing";
  QCOMPARE(session_->decider().rung(id, jointing, session_->now()), Rung::supervised);

  // The desk: name, answer, booked; eight keys at most after the name.
  sit_down(somebody_at(db::Role::desk));
  key(Qt::Key_F2);
  type("jonas lind");
  int keys = 0;
  const auto press = [&](Qt::Key k, Qt::KeyboardModifiers with = Qt::NoModifier) { key(k, with), ++keys; };
  press(Qt::Key_Return);
  QCOMPARE(text("person_name"), QString("Jonas Lindqvist"));
  for (const char letter : {'j', 'o', 'i'}) type(QString(letter)), ++keys;
  QVERIFY2(text("answer").contains("only with a supervisor"), qPrintable(text("answer")));
  press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY2(keys <= 8, qPrintable(QString::number(keys)));
  const auto booking = booking_of(id);
  QVERIFY2(booking && booking->from > session_->now(), qPrintable(text("message")));

  // The instructor, when the time has come.
  real_ = real_ + (booking->from.seconds + 20 * 60 - session_->now().seconds);
  sit_down(booking->assessor);
  key(Qt::Key_F2);
  type("jonas lind");
  key(Qt::Key_Return);
  key(Qt::Key_F4);
  Place place;
  place.page = "checkouts";
  place.person = id;
  place.target = booking->target;
  window_->go(place);
  auto* sheet = window_->findChild<SheetView*>("sheet");
  QVERIFY(sheet && sheet->isVisible());
  sheet->setFocus();
  key(Qt::Key_Home);
  const int lines = static_cast<int>(sheet->on_sheet().marks.size());
  QVERIFY(lines > 5);
  for (int line = 0; line < lines; ++line) {
    if (line > 0) key(Qt::Key_Down);
    key(Qt::Key_1);
  }
  for (int line = 0; line < lines; ++line) {
    sheet->go_to(line);
    key(Qt::Key_M);
    if (QApplication::focusWidget()->objectName() != "measure") continue;
    type(sheet->accessibleDescription().contains("thickness") ? "1 in" : "0");
    key(Qt::Key_Escape);
  }
  // Jonas countersigns with his card, as the reader types it; then the assessor signs.
  const QString card = QString::fromStdString(session_->person(id)->card);
  QVERIFY(!card.isEmpty());
  type(";" + card);
  key(Qt::Key_Return);
  QVERIFY2(text("member_card") == "held to the reader", qPrintable(text("member_card") + text("message")));
  key(Qt::Key_Return, Qt::ControlModifier);
  type("2468");
  key(Qt::Key_Return);
  QVERIFY2(text("after").contains("without a supervisor"), qPrintable(text("after") + text("message")));
  QCOMPARE(session_->decider().rung(id, jointing, session_->now()), Rung::independent);

  // The standing has changed before their eyes.
  key(Qt::Key_D, Qt::ControlModifier);
  QCOMPARE(window_->current()->id(), QString("desk"));
  QVERIFY2(text("answer").contains("without a supervisor"), qPrintable(text("answer")));

  // The roster for the door, read back from the PDF.
  RosterChoice choice;
  const QString path = folder_.filePath("roster.pdf");
  QVERIFY(write_roster_pdf(*session_, choice, path));
  QProcess reader;
  reader.start("pdftotext", {"-layout", path, "-"});
  QVERIFY(reader.waitForFinished());
  const QString roster = QString::fromUtf8(reader.readAllStandardOutput());
  QVERIFY2(roster.contains("Lindqvist, Jonas"), qPrintable(roster.left(2000)));
  QVERIFY(roster.contains("unsupervised"));

  // Another program finds the file sound, and may change nothing in it.
  const QString file = folder_.filePath("day");
  QProcess sqlite;
  sqlite.start("sqlite3", {file, "PRAGMA integrity_check;"});
  QVERIFY(sqlite.waitForFinished());
  QCOMPARE(sqlite.readAllStandardOutput().trimmed(), QByteArray("ok"));
  for (const char* attempt : {"UPDATE records SET recorded_at = 0;", "DELETE FROM records;"}) {
    sqlite.start("sqlite3", {file, attempt});
    QVERIFY(sqlite.waitForFinished());
    QVERIFY2(sqlite.exitCode() != 0, attempt);
  }
}

}  // namespace day_test

WM_PAGE_TEST(day_test, DayTest)
#include "day_test.moc"
