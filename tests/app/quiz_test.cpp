// A quiz sat at the station by keyboard: from the member's number to the standing that changes, through a
// killed program, a wrong clock and a damaged file; and shown again as it was sat.
#include <signal.h>

#include <QComboBox>
#include <QProcess>
#include <QtTest>
#include <cstdio>

#include "app/frame/main_window.h"
#include "app/journal/journal_page.h"
#include "app/quiz/choice_rows.h"
#include "app/quiz/place_picker.h"
#include "app/quiz/station.h"
#include "app/theme/theme.h"
#include "db/journal/subject.h"
#include "quiz_shop.h"

using namespace wm;
using namespace wm::app;

namespace {

void type(QWidget& window, const QString& words) { QTest::keyClicks(window.focusWidget(), words); }

constexpr std::size_t answered_before_the_kill = 3;

/// Sits in a program of its own until it is killed.
int sit_until_killed(int argc, char** argv) {
  QApplication app(argc, argv);
  const QString folder(argv[2]);
  db::StoreOptions quick;
  quick.pin_operations = 1;
  quick.pin_memory = 8192;
  auto store = db::Store::open((folder + "/shop").toStdString(),
                               [] { return SmallShop::at("2026-11-25T23:20:00Z"); }, quick);
  if (!store) return 1;
  Session session(std::move(*store), folder);
  QuizStation station(session, true);
  station.take_up();
  station.show();
  if (!QTest::qWaitForWindowExposed(&station)) return 1;
  identify(station, "0412");
  press_key(station, Qt::Key_Return);
  if (!station.run().sitting()) return 1;
  for (std::size_t i = 0; i < answered_before_the_kill; ++i) {
    answer(station);
    press_key(station, Qt::Key_Return);
  }
  std::puts("ready");
  std::fflush(stdout);
  return QApplication::exec();
}

}  // namespace

class QuizTest : public QObject {
  Q_OBJECT

  std::unique_ptr<SmallShop> shop_;
  std::unique_ptr<QuizStation> station_;
  std::int64_t passed_ = 0;  // seconds, whatever the wall clock shows

  Session& session() const { return *shop_->session; }
  QString text(const char* name) const { return station_->findChild<QLabel*>(name)->text(); }
  bool seen(const char* name) const { return station_->findChild<QWidget*>(name)->isVisible(); }
  void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) const {
    press_key(*station_, key, with);
  }
  QString told_before() const {
    QStringList all;
    for (const QLabel* label : station_->findChildren<QLabel*>())
      if (label->isVisible()) all << label->text();
    return all.join('\n');
  }

  void open(bool own = true) {
    station_ = std::make_unique<QuizStation>(session(), own, [this] {
      return ClockReading{shop_->now, "this start", passed_};
    });
    station_->resize(1366, 768);
    station_->take_up();
    station_->show();
    QVERIFY(QTest::qWaitForWindowActive(station_.get()));
  }
  void lucja_is_ready() {
    QVERIFY(session().sit_down("ines", "3333"));
    for (Fact fact : {Fact(Document{"lucja", "waiver", {}}), Fact(Lesson{"lucja", "guards", 1})})
      QVERIFY(session().commit(db::EnterFact{fact}));
    session().hand_over();
  }
  static void show_lucja(MainWindow& desk) {
    Place at_desk;
    at_desk.page = "desk";
    at_desk.person = "lucja";
    at_desk.target = "jointer-planer/jointing";
    desk.go(at_desk);
    desk.show();
  }
  /// Whole sentences of somebody's start page, for the quiz.
  QString not_now(const char* person) {
    const auto offer = quiz_offer(session(), person, "cutters");
    return offer ? offer->not_now : QString("no offer");
  }

 private slots:
  void initTestCase() {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    apply_theme(*qApp, Shade::light);
  }
  void init() {
    shop_ = std::make_unique<SmallShop>();
    issue_cutters(*shop_);
    passed_ = 0;
  }
  void cleanup() {
    station_.reset();
    shop_.reset();
  }

  void a_whole_quiz_by_keyboard_changes_the_standing_and_asks_for_the_one_on_one() {
    lucja_is_ready();
    MainWindow desk(session());
    show_lucja(desk);
    const auto needs = [&desk] { return desk.findChild<QLabel*>("next_step")->text(); };
    QVERIFY2(needs().contains("quiz"), qPrintable(needs()));
    open();
    identify(*station_, "0413");
    const QString told = told_before();
    for (const char* said : {"80 % of them right", "20 minutes", "24 hours after one that is not passed",
                             "3 that are not passed within 30 days"})
      QVERIFY2(told.contains(said), qPrintable(told));
    key(Qt::Key_Return);
    QCOMPARE(text("place_in_paper"), QString("Question 1 of 5"));
    sit_whole(*station_);
    QCOMPARE(text("result"), QString("Passed: 5 of 5 right."));
    QVERIFY(shop_->facts<Quiz>().back() == (Quiz{"lucja", "cutters", 1, 5, 5, 0}));
    QVERIFY(shop_->facts<db::AttemptSat>().back().person == "lucja");
    // The Desk beside it has moved on to the one-on-one.
    QVERIFY2(!needs().contains("quiz"), qPrintable(needs()));
    QVERIFY2(station_->findChild<QTextBrowser*>("reasons")->toPlainText().contains("An eighth of an inch."),
             "no reasons");
    key(Qt::Key_1, Qt::ControlModifier);
    QVERIFY(shop_->facts<db::Waiting>().back() == (db::Waiting{"lucja", "jointer-planer/jointing"}));
    QVERIFY2(text("asked").startsWith("You are on the waiting list"), qPrintable(text("asked")));
    key(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(seen("member_number"));
    QVERIFY(!QFile::exists(shop_->folder.filePath("quiz.json")));
  }

  void a_ladder_at_the_desk_moves_at_once_where_the_quiz_was_all_that_was_missing() {
    QVERIFY(session().sit_down("rosa", "1111"));
    lucja_is_ready();
    QVERIFY(session().sit_down("rosa", "1111"));
    db::Command paper;
    QVERIFY(session().commit(db::EnterFact{Checkout{"lucja", "jointing", 1, Outcome::passed, "mara"}},
                             std::nullopt, {}, true));
    const auto rung = [this] {
      return session().decider().rung("lucja", "jointer-planer/jointing", session().now());
    };
    QVERIFY(rung() == Rung::supervised);
    MainWindow desk(session());
    show_lucja(desk);
    open();
    identify(*station_, "0413");
    key(Qt::Key_Return);
    sit_whole(*station_);
    QVERIFY(rung() == Rung::independent);
    const QString answer = desk.findChild<QLabel*>("answer")->text();
    QVERIFY2(answer.contains("without a supervisor"), qPrintable(answer));
  }

  void what_the_desk_starts_is_for_the_person_shown_and_leaves_nobody_seated() {
    lucja_is_ready();
    QVERIFY(session().sit_down("ines", "3333"));
    MainWindow desk(session());
    Place at_desk;
    at_desk.page = "desk";
    at_desk.person = "lucja";
    at_desk.target = "jointer-planer/jointing";
    desk.go(at_desk);
    desk.resize(1366, 768);
    desk.show();
    auto* next = desk.findChild<QPushButton*>("do_next");
    QCOMPARE(next->text(), QString("Start the quiz at the station"));
    next->click();
    // One screen, and Pim is due in ten minutes: it isn't laid over the Desk, only offered.
    auto* begin = desk.findChild<QPushButton*>("quiz_begin");
    QVERIFY(!begin->isVisible());
    QVERIFY2(desk.findChild<QLabel*>("quiz_where")->text().contains("Pim Abara is due"),
             "not told who waits");
    desk.findChild<QPushButton*>("quiz_later")->click();
    desk.go(Place{"desk", {}, {}, {}, {}, {}});
    QStringList said;
    for (const QLabel* label : desk.findChildren<QLabel*>()) said << label->text();
    QVERIFY(said.contains(QString::fromUtf8("Łucja Höfer, Cutters")));
    // Pim has come in: nobody waits any more.
    QVERIFY(session().commit(db::EnterShopFact{db::Attendance{facts_of_booking(), db::Turnout::not_come}}));
    desk.go(at_desk);
    next->click();
    QVERIFY(begin->isVisible());
    begin->click();
    QVERIFY(desk.quiz() && desk.quiz()->isVisible());
    QVERIFY(!session().seated());
    QVERIFY2(desk.quiz()->findChild<QLabel*>("quiz_person")->text().startsWith("Łucja"), "for somebody else");
    QVERIFY(QTest::qWaitForWindowActive(desk.quiz()));
    press_key(*desk.quiz(), Qt::Key_Escape);
    QTRY_VERIFY(!desk.quiz());
  }

  void what_is_missing_is_told_with_the_day_from_which_it_can_be_tried() {
    QCOMPARE(
        not_now("lucja"),
        QString("First comes the lesson “Guards”, revision 1. Once that is entered the quiz can be tried, "
                "from today on."));
    lucja_is_ready();
    QCOMPARE(not_now("lucja"), QString());
    open();
    for (int attempt = 1; attempt <= 3; ++attempt) {
      const auto offer = quiz_offer(session(), "lucja", "cutters");
      const QString left = std::find_if(offer->told.begin(), offer->told.end(), [](const auto& t) {
                             return t.first == "Attempts left";
                           })->second;
      QCOMPARE(left, QString::number(4 - attempt));
      identify(*station_, "0413");
      key(Qt::Key_Return);
      sit_whole(*station_, true);
      QVERIFY2(text("result").startsWith("Not passed yet: 0 of 5 right"), qPrintable(text("result")));
      key(Qt::Key_Return, Qt::ControlModifier);
      if (attempt < 3) {
        // 24 hours after 17:20 on that day, and again.
        const char* from = attempt == 1 ? "26 November, 5:20 PM" : "27 November, 5:20 PM";
        QCOMPARE(not_now("lucja"),
                 QString("The last attempt was not passed and the waiting time is not over. The "
                         "next one counts from %1 on.")
                     .arg(from));
        shop_->now = shop_->now + 24 * 3600;
        QCOMPARE(not_now("lucja"), QString());
      }
    }
    // 720 hours after the first.
    QCOMPARE(not_now("lucja"),
             QString("No attempt is left for now. The next one counts from 25 December, 5:20 PM on."));
    identify(*station_, "0413");
    QCOMPARE(text("not_now"), not_now("lucja"));
    QVERIFY(!seen("begin"));
    key(Qt::Key_Return);
    QVERIFY(!station_->run().sitting());
  }

  void a_killed_program_comes_back_to_the_same_question_with_the_time_gone() {
    // Another program has the shop's file, in the same folder.
    QProcess other;
    other.start(QCoreApplication::applicationFilePath(), {"--sit", shop_->folder.path()});
    QVERIFY(other.waitForReadyRead(30'000));
    // Two programs, one file: here it is told, and nothing is taken.
    open();
    QVERIFY(!station_->run().sitting());
    QVERIFY2(text("told").contains("another window"), qPrintable(text("told")));
    identify(*station_, "0412");
    key(Qt::Key_Return);
    QVERIFY(!station_->run().sitting());
    QVERIFY2(text("not_now").contains("another window"), qPrintable(text("not_now")));
    station_.reset();
    ::kill(static_cast<pid_t>(other.processId()), SIGKILL);
    QVERIFY(other.waitForFinished(30'000));
    QCOMPARE(other.exitStatus(), QProcess::CrashExit);
    // This computer was started anew, and the clock says that four minutes have gone by.
    shop_->now = shop_->now + 240;
    QVERIFY(session().store().entries().size() > 0);
    QTRY_COMPARE(shop_->facts<db::AttemptBegun>().size(), std::size_t(1));
    open();
    const Sitting* sitting = station_->run().sitting();
    QVERIFY(sitting);
    QCOMPARE(sitting->at(), answered_before_the_kill);
    QCOMPARE(text("place_in_paper"), QString("Question 4 of 5"));
    QVERIFY(sitting->state().gone >= 240 && sitting->state().gone < 300);
    QVERIFY2(text("time_left").startsWith("16 minutes") || text("time_left").startsWith("15 minutes"),
             qPrintable(text("time_left")));
    QCOMPARE(sitting->open_count(), std::size_t(2));
    for (int i = 0; i < 2; ++i) {
      answer(*station_);
      key(Qt::Key_Return);
    }
    key(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(text("result"), QString("Passed: 5 of 5 right."));
    QVERIFY(shop_->facts<Quiz>().back() == (Quiz{"jonas", "cutters", 1, 5, 5, 0}));
  }

  void somebody_hurt_has_one_key_here_too_and_the_quiz_goes_on_behind_it_and_loses_nothing() {
    QVERIFY(session().sit_down("rosa", "1111"));
    QVERIFY(session().commit(db::EnterShopFact{db::EmergencyCall{"9-911", "Cedar Street 12"}}));
    session().hand_over();
    open();
    auto* cover = station_->findChild<QWidget*>("emergency_cover");
    const auto hurt = [&] { key(Qt::Key_H, Qt::ControlModifier | Qt::ShiftModifier); };
    hurt();  // with nobody known here
    QVERIFY(cover->isVisible());
    QVERIFY(text("emergency_call").contains("9-911"));
    QVERIFY(text("emergency_say").contains("Cedar Street 12"));
    key(Qt::Key_Escape);
    QVERIFY(!cover->isVisible());
    identify(*station_, "0412");
    key(Qt::Key_Return);
    answer(*station_);
    key(Qt::Key_Return);
    const Sitting& sitting = *station_->run().sitting();
    const std::size_t at = sitting.at();
    const QPointer<QWidget> before = station_->focusWidget();
    hurt();
    hurt();
    QVERIFY(cover->isVisible());
    QCOMPARE(cover->size(), station_->size());
    // No key reaches what lies behind.
    for (const Qt::Key each : {Qt::Key_1, Qt::Key_Return, Qt::Key_Tab, Qt::Key_Space}) key(each);
    key(Qt::Key_Return, Qt::ControlModifier);
    key(Qt::Key_Q, Qt::ControlModifier);
    QCOMPARE(sitting.at(), at);
    QVERIFY(std::holds_alternative<teach::Unanswered>(sitting.given()));
    QVERIFY(seen("question"));
    passed_ += 90;
    QTRY_COMPARE(sitting.state().gone, std::int64_t{90});
    key(Qt::Key_Escape);
    QVERIFY(!cover->isVisible());
    QCOMPARE(station_->focusWidget(), before.data());
    for (std::size_t i = at; i < sitting.size(); ++i) {
      answer(*station_);
      if (i + 1 < sitting.size()) key(Qt::Key_Return);
    }
    // What comes by itself meanwhile is there afterwards.
    hurt();
    passed_ = 20 * 60;
    QTRY_VERIFY(!station_->run().sitting());
    QVERIFY(cover->isVisible());
    QCOMPARE(station_->focusWidget(), cover);
    key(Qt::Key_Escape);
    QVERIFY2(text("result").contains("5 of 5 right"), qPrintable(text("result")));
    QVERIFY(seen("result"));
  }

  void the_time_that_is_over_hands_in_what_there_is() {
    open();
    identify(*station_, "0412");
    key(Qt::Key_Return);
    answer(*station_);
    passed_ = 20 * 60 - 1;
    key(Qt::Key_Return);
    QVERIFY(station_->run().sitting());
    passed_ = 20 * 60;
    // A second goes by, the clock set back by a day meanwhile.
    shop_->now = shop_->now - 600;
    QTRY_VERIFY(!station_->run().sitting());
    QVERIFY2(text("result").startsWith("The time is over. Not passed yet: 1 of 5 right"),
             qPrintable(text("result")));
  }

  void a_damaged_file_is_told_and_the_same_questions_come_again_with_the_time_left() {
    open();
    identify(*station_, "0412");
    key(Qt::Key_Return);
    const auto seed = station_->run().sitting()->state().attempt.seed;
    answer(*station_);
    station_.reset();
    QFile file(shop_->folder.filePath("quiz.json"));
    QVERIFY(file.open(QFile::ReadWrite) && file.resize(40));
    file.close();
    shop_->now = shop_->now + 300;
    open();
    QVERIFY2(text("told").startsWith("What was answered at this station could not be read."),
             qPrintable(text("told")));
    QCOMPARE(QDir(shop_->folder.path()).entryList({"quiz.json.*.unreadable"}).size(), 1);
    identify(*station_, "0412");
    QVERIFY2(text("not_now").startsWith("This quiz has been begun"), qPrintable(text("not_now")));
    key(Qt::Key_Return);
    QCOMPARE(station_->run().sitting()->state().attempt.seed, seed);
    QCOMPARE(station_->run().sitting()->state().gone, std::int64_t(300));
    QCOMPARE(shop_->facts<db::AttemptBegun>().size(), std::size_t(1));
  }

  void what_was_begun_and_never_handed_in_is_not_begun_beside_itself() {
    open();
    identify(*station_, "0412");
    key(Qt::Key_Return);
    station_.reset();
    QVERIFY(QFile::remove(shop_->folder.filePath("quiz.json")));
    shop_->now = shop_->now + 20 * 60;
    QVERIFY2(not_now("jonas").contains("never handed in"), qPrintable(not_now("jonas")));
    QVERIFY(session().sit_down("rosa", "1111"));
    const RecordId begun = session().store().entries().back().id;
    QVERIFY(session().commit(db::StrikeOutRecord{begun, "the computer broke"}));
    QCOMPARE(not_now("jonas"), QString());
  }

  void leaving_takes_the_desks_pin_and_marks_what_there_is() {
    open();
    identify(*station_, "0412");
    key(Qt::Key_Return);
    answer(*station_);
    station_->close();
    QVERIFY(station_->isVisible());
    QVERIFY2(text("leave_words").startsWith("Leaving ends this attempt"), qPrintable(text("leave_words")));
    // A member has no role, and is not among those who can be chosen.
    type(*station_, "jonas");
    key(Qt::Key_Return);
    key(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(text("leave_problem").startsWith("Nobody is chosen"), qPrintable(text("leave_problem")));
    station_->findChild<QLineEdit*>("leave_person")->clear();
    type(*station_, "ines");
    key(Qt::Key_Return);
    type(*station_, "0000");
    key(Qt::Key_Return);
    QVERIFY(station_->run().sitting());
    QVERIFY2(text("leave_problem").contains("PIN"), qPrintable(text("leave_problem")));
    key(Qt::Key_Escape);
    QVERIFY(seen("question"));
    key(Qt::Key_Escape);
    type(*station_, "ines");
    key(Qt::Key_Return);
    type(*station_, "3333");
    key(Qt::Key_Return);
    QVERIFY(!station_->run().sitting());
    QVERIFY2(text("result").startsWith("Left with the desk's help. Not passed yet: 1 of 5"),
             qPrintable(text("result")));
    QVERIFY(shop_->facts<Quiz>().back() ==
            (Quiz{"jonas", "cutters", 1, 1, 5, shop_->facts<Quiz>().back().critical_missed}));
    QVERIFY(!session().seated());
  }

  void languages_stand_side_by_side_and_helps_are_recorded() {
    open();
    identify(*station_, "0412");
    auto* language = station_->findChild<QComboBox*>("language");
    language->setCurrentIndex(language->findData("es"));
    auto* beside = station_->findChild<QComboBox*>("language_beside");
    beside->setCurrentIndex(beside->findData("en"));
    for (const char* help : {"interpreter", "large_type"})
      station_->findChild<QCheckBox*>(help)->setChecked(true);
    station_->findChild<QPushButton*>("begin")->click();
    const auto begun = shop_->facts<db::AttemptBegun>().back();
    QCOMPARE(begun.language, std::string("es"));
    QVERIFY(begun.helps == (std::vector<db::Help>{db::Help::interpreter, db::Help::large_type}));
    const teach::Question& question = station_->run().sitting()->question();
    QCOMPARE(text("question"), QString::fromStdString(teach::wording_of(question, "es")->text));
    QCOMPARE(text("question_beside"), QString::fromStdString(teach::wording_of(question, "en")->text));
    const int large = station_->findChild<QLabel*>("question")->font().pixelSize();
    key(Qt::Key_F9);
    QVERIFY(large >= 3 * station_->findChild<QLabel*>("question")->font().pixelSize() / 2);
    key(Qt::Key_F8);
    QVERIFY(!seen("question_beside"));
  }

  void a_number_is_judged_only_for_whether_it_can_be_read() {
    open();
    identify(*station_, "0412");
    key(Qt::Key_Return);
    while (station_->run().sitting()->question().id != "depth") key(Qt::Key_PageDown);
    type(*station_, "1/");
    QVERIFY2(text("judged").startsWith("This can't be read yet."), qPrintable(text("judged")));
    type(*station_, "8 in");
    QCOMPARE(text("judged"), QString("Read as 1/8 in."));
    station_->findChild<QLineEdit*>("number")->clear();
    type(*station_, "40 in");
    QCOMPARE(text("judged"), QString("Read as 40 in."));
  }

  void steps_are_dragged_and_places_pointed_at_with_the_mouse() {
    open();
    identify(*station_, "0412");
    key(Qt::Key_Return);
    while (station_->run().sitting()->question().id != "change-over") key(Qt::Key_PageDown);
    auto* rows = station_->findChild<ChoiceRows*>("choices");
    const auto before = station_->run().sitting()->asked().order;
    QVERIFY(std::holds_alternative<teach::Unanswered>(station_->run().sitting()->given()));
    QTest::mousePress(rows, Qt::LeftButton, {}, rows->row_rect(0).center());
    QMouseEvent move(QEvent::MouseMove, rows->row_rect(2).center(),
                     rows->mapToGlobal(rows->row_rect(2).center()), Qt::NoButton, Qt::LeftButton,
                     Qt::NoModifier);
    QCoreApplication::sendEvent(rows, &move);
    QTest::mouseRelease(rows, Qt::LeftButton, {}, rows->row_rect(2).center());
    QVERIFY(station_->run().sitting()->given() ==
            teach::Given(teach::Ordered{{before[1], before[2], before[0]}}));
    while (station_->run().sitting()->question().id != "where-stop") key(Qt::Key_PageDown);
    auto* place = station_->findChild<PlacePicker*>("place");
    QTest::mouseClick(place, Qt::LeftButton, {}, place->picture().center());
    const auto pointed = std::get<teach::Pointed>(station_->run().sitting()->given()).point;
    QVERIFY(std::abs(pointed.x - 500) <= 3 && std::abs(pointed.y - 500) <= 3);
  }

  void come_back_to_this_one_and_back_and_forth() {
    open();
    identify(*station_, "0412");
    key(Qt::Key_Return);
    answer(*station_);
    key(Qt::Key_F6);
    key(Qt::Key_PageDown);
    key(Qt::Key_PageUp);
    QCOMPARE(text("place_in_paper"), QString("Question 1 of 5"));
    key(Qt::Key_PageDown);
    for (int i = 0; i < 4; ++i) {
      answer(*station_);
      key(Qt::Key_Return);
    }
    // Nothing is open, so it leads back to the one put off; from there to the end.
    QCOMPARE(text("place_in_paper"), QString("Question 1 of 5"));
    key(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(text("what_is_open").contains("You wanted to come back to 1."),
             qPrintable(text("what_is_open")));
    key(Qt::Key_Escape);
    QVERIFY(seen("question"));
  }

  void an_attempt_is_shown_as_it_was_sat_whatever_the_bank_says_now() {
    open();
    identify(*station_, "0412");
    key(Qt::Key_Return);
    sit_whole(*station_);
    QVERIFY(session().sit_down("rosa", "1111"));
    QString next =
        QString(cutters_bank).replace("revision: 1", "revision: 2").replace("power fails", "light fails");
    QVERIFY(session().commit(
        db::EnterShopFact{db::Issued{db::Work::bank,
                                     "cutters",
                                     2,
                                     "reworded",
                                     next.toStdString(),
                                     {{"panel.svg", QByteArray(panel_picture).toBase64().toStdString()}}}}));
    JournalPage journal(session());
    journal.resize(1216, 740);
    journal.show();
    journal.refresh();
    Place place;
    place.page = "journal";
    place.record = session().store().entry(shop_->facts<db::AttemptSat>().back().quiz)->id;
    journal.open(place);
    auto* show = journal.findChild<QPushButton*>("show_as_sat");
    QVERIFY(show);
    show->click();
    const QString shown = journal.findChild<QTextBrowser*>("as_sat")->toPlainText();
    QVERIFY2(shown.contains("The power fails in a cut."), qPrintable(shown));
    QVERIFY(!shown.contains("light fails"));
    QVERIFY2(journal.findChild<QLabel*>("as_sat_told")->text().contains("5 of 5 right"), "no marks");
    // The choices stand in the order in which they stood.
    const auto sat = sat_attempt(session(), place.record);
    for (std::size_t i = 0; i < sat->paper.size(); ++i) {
      const auto& question = sat->bank.bank.questions[sat->paper[i].question];
      qsizetype before = -1;
      for (const std::size_t choice : sat->paper[i].order) {
        const auto at = shown.indexOf(QString::fromStdString(question.wordings[0].choices[choice]));
        QVERIFY2(at > before, question.id.c_str());
        before = at;
      }
    }
    // Who passes by an empty seat reads nobody's answers.
    session().hand_over();
    journal.open(place);
    QVERIFY(!journal.findChild<QPushButton*>("show_as_sat") ||
            !journal.findChild<QPushButton*>("show_as_sat")->isVisible());
  }

  void the_next_attempt_has_another_paper() {
    open();
    identify(*station_, "0412");
    key(Qt::Key_Return);
    const auto first = teach::ids_of(station_->run().sitting()->bank(), station_->run().sitting()->paper());
    sit_whole(*station_);
    key(Qt::Key_Return, Qt::ControlModifier);
    identify(*station_, "0412");
    key(Qt::Key_Return);
    QVERIFY2(station_->run().sitting(), qPrintable(told_before()));
    QVERIFY(teach::ids_of(station_->run().sitting()->bank(), station_->run().sitting()->paper()) != first);
  }

  void nobody_is_known_by_a_number_that_nobody_has() {
    open();
    identify(*station_, "9999");
    QVERIFY2(text("told").startsWith("Nobody here has the number 9999."), qPrintable(text("told")));
    QVERIFY(seen("member_number"));
  }

 private:
  RecordId facts_of_booking() const {
    for (const db::Entry& entry : session().store().entries())
      if (db::as<db::Booking>(entry.fact)) return entry.id;
    return {};
  }
};

int main(int argc, char** argv) {
  if (argc == 3 && QByteArray(argv[1]) == "--sit") return sit_until_killed(argc, argv);
  QApplication app(argc, argv);
  QuizTest test;
  return QTest::qExec(&test, argc, argv);
}
#include "quiz_test.moc"
