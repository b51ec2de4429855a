// Check-outs, used by keyboard as an instructor at the machine would.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProcess>
#include <QScrollBar>
#include <QScroller>
#include <QtTest>

#include "app/checkouts/blank_sheet.h"
#include "app/checkouts/checkouts_page.h"
#include "app/checkouts/countersign_later.h"
#include "app/checkouts/measure_words.h"
#include "app/checkouts/paper_entry.h"
#include "app/checkouts/result_words.h"
#include "app/checkouts/sheet_view.h"
#include "app/desk/answer.h"
#include "app/desk/tonight_panel.h"
#include "app/lists/record_reader.h"
#include "app/sheets/own_sheets.h"
#include "app/words/record_words.h"
#include "core/sheet/typed.h"
#include "db/journal/subject.h"
#include "evening.h"
#include "page_test.h"

namespace checkouts_test {

using namespace wm;
using namespace wm::app;

class CheckoutsTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void cleanup();
  void tonights_one_on_one_is_open_with_the_cursor_in_its_sheet();
  void marking_every_line_suggests_a_pass();
  void a_mark_is_made_where_a_button_is_let_go_and_not_where_it_moved();
  void a_finger_that_scrolls_marks_nothing();
  void a_finger_that_only_stops_a_sheet_marks_nothing();
  void a_finger_goes_through_all_that_the_second_mark_can_be();
  void the_line_that_is_marked_stays_in_sight_when_something_takes_its_room();
  void a_critical_line_shown_when_asked_must_be_shown_again();
  void a_critical_line_not_shown_can_only_be_failed();
  void nothing_unfinished_is_signed_as_passed();
  void the_assessors_pin_signs_and_the_standing_changes();
  void a_second_assessor_marks_it_apart_without_seeing_the_first();
  void whoever_has_seen_the_marks_does_not_mark_it_apart();
  void whoever_marked_a_line_of_the_first_is_not_asked_to_mark_it_apart();
  void what_was_measured_says_what_to_practise();
  void failing_names_what_to_practise_and_leads_to_the_next_one_on_one();
  void restrictions_that_stand_are_said_and_medical_reasons_are_not_asked();
  void a_wrong_pin_signs_nothing_and_keeps_the_marks();
  void marks_are_kept_when_looking_elsewhere();
  void what_was_marked_survives_the_end_of_the_program_and_another_seat();
  void every_mark_is_in_the_store_at_once_and_another_station_goes_on();
  void what_cannot_go_to_the_store_is_kept_here_and_goes_there_later();
  void what_was_not_sent_of_a_sheet_that_was_signed_elsewhere_stays_to_be_read();
  void what_was_not_sent_of_a_booking_that_was_signed_without_a_sheet_stays_too();
  void a_sheet_that_was_struck_out_or_gave_way_is_told_and_leaves_the_page();
  void a_sheet_left_for_too_long_is_told();
  void marks_that_a_store_put_back_does_not_have_go_there_again();
  void it_is_put_by_and_gone_on_with_on_another_day();
  void what_was_left_open_at_another_station_is_not_lost_by_whoever_signs();
  void the_other_mode_goes_on_with_the_same_sheet();
  void whoever_sits_down_next_does_not_get_the_marks_of_another_second();
  void the_member_countersigns_with_a_pin_of_their_own();
  void the_members_card_countersigns_and_anybody_elses_does_not();
  void a_printed_sheet_countersigns_by_its_number();
  void who_did_not_countersign_is_asked_again_and_does_so_on_another_day();
  void what_was_stopped_asks_for_no_countersignature();
  void a_manager_takes_in_the_paper_that_was_countersigned_later();
  void a_blank_sheet_is_printed_with_a_number_and_taken_in_from_the_paper();
  void no_line_and_no_signature_of_a_blank_sheet_is_broken_over_pages();
  void marks_of_another_sheet_or_a_broken_file_are_not_taken_for_these();
  void a_check_out_without_a_booking_begins_from_the_desk();
  void a_machine_without_a_sheet_says_so();
  void the_desk_cannot_sign();
  void a_measure_is_judged_in_words_while_it_is_typed();
  void enter_leads_into_a_measure_that_is_missing_and_on();
  void an_instrument_too_coarse_to_tell_has_measured_nothing();
  void gaps_and_angles_are_judged_in_their_own_words();
  void what_was_measured_is_signed_as_typed_and_shown_again();
  void what_is_no_measure_is_kept_and_signs_nothing();

 private:
  QString text(const char* name) const { return page_->findChild<QLabel*>(name)->text(); }
  SheetView* sheet() const { return page_->findChild<SheetView*>("sheet"); }
  QPoint place_of(std::size_t line, Mark mark) const { return sheet()->place_of(line, mark).center(); }
  bool nothing_is_marked() const {
    return std::ranges::all_of(sheet()->on_sheet().marks, [](Mark mark) { return mark == Mark::none; });
  }
  void tap(const QPoint& at);
  /// From one to the other in steps that are as far apart in time as a finger's are, and let go.
  void draw_finger(const QPoint& from, const QPoint& to);
  QComboBox* outcome() const { return page_->findChild<QComboBox*>("outcome"); }
  /// The sheet's own first: a paper that is taken in has a sheet too.
  QLineEdit* field(const char* name) const {
    auto* of_sheet = sheet()->findChild<QLineEdit*>(name);
    return of_sheet ? of_sheet : page_->findChild<QLineEdit*>(name);
  }
  void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    QTest::keyClick(QApplication::focusWidget(), key, modifiers);
  }
  /// One key a line from the first on; the last one marked stays the current one.
  void mark(const char* keys) {
    sheet()->setFocus();
    press(Qt::Key_Home);
    for (const char* key = keys; *key; ++key) {
      if (key != keys) press(Qt::Key_Down);
      QTest::keyClick(QApplication::focusWidget(), *key);
    }
  }
  /// Marks that the store has, and then, while nobody sits here, more that it has not; nobody is at the page.
  RecordId mark_and_leave();
  QString left_behind() const {
    const auto* label = page_->findChild<QLabel*>("left_behind");
    return label->isVisible() ? label->text() : QString();
  }
  /// Signed by Mara, and then Odile sits down, who was able to assess it too.
  void sign_and_seat_a_second();
  void make_page(const std::vector<Sheet>& sheets = evening::sheets());
  /// A page whose sheet asks for a thickness in its last line, the eleventh, which is critical.
  void make_measuring_page();
  QString said() const { return sheet()->accessibleDescription(); }
  void measure(const char* typed) {
    sheet()->setFocus();
    press(Qt::Key_End);
    press(Qt::Key_M);
    QTest::keyClicks(QApplication::focusWidget(), typed);
  }
  /// How the member countersigns: by its first letters.
  void countersign(const char* how) {
    page_->findChild<QComboBox*>("hand")->setFocus();
    QTest::keyClicks(QApplication::focusWidget(), how);
  }
  void sign(const char* pin) {
    if (page_->findChild<QComboBox*>("hand")->currentText() == "choose") countersign("not");
    press(Qt::Key_Return, Qt::ControlModifier);  // leads to the PIN
    QTest::keyClicks(QApplication::focusWidget(), pin);
    press(Qt::Key_Return);
  }
  std::vector<Checkout> signed_ones() const;
  Rung rung(const char* person, const char* target) {
    return shop_->session->decider().rung(person, target, shop_->session->now());
  }

  std::unique_ptr<evening::Shop> shop_;
  std::unique_ptr<CheckoutsPage> page_;
  QStringList told_, refused_;
};

void CheckoutsTest::init() {
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  apply_theme(*qApp, Shade::light);
  shop_ = std::make_unique<evening::Shop>();
  shop_->clock = evening::at("2026-11-26T23:50:00Z");
  shop_->sit_down("mara", "2468");
  told_.clear();
  refused_.clear();
  make_page();
}

void CheckoutsTest::make_measuring_page() {
  static const std::vector<Sheet> measuring = [] {
    std::vector<Sheet> out = evening::sheets();
    const auto length = [](long n, long d) { return Length{fraction(n, d), LengthUnit::inch}; };
    out[0].sections.back().lines.push_back(
        {"The practice piece is 1 in thick", "", true,
         Measure{MeasureKind::thickness,
                 SizeToMeasure{length(1, 1), length(1, 100), length(1, 100), length(1, 1000)}}});
    return out;
  }();
  page_.reset();
  make_page(measuring);
}

void CheckoutsTest::make_page(const std::vector<Sheet>& sheets) {
  page_ = std::make_unique<CheckoutsPage>(*shop_->session, nullptr, sheets);
  QVERIFY(evening::put_up(*page_, *shop_->session, told_, refused_));
  page_->open({});
}

void CheckoutsTest::cleanup() {
  page_.reset();
  shop_.reset();
}

std::vector<Checkout> CheckoutsTest::signed_ones() const {
  std::vector<Checkout> out;
  for (const db::Entry& entry : shop_->session->store().entries())
    if (const auto* fact = std::get_if<Fact>(&entry.fact))
      if (const auto* checkout = std::get_if<Checkout>(fact)) out.push_back(*checkout);
  return out;
}

void CheckoutsTest::tonights_one_on_one_is_open_with_the_cursor_in_its_sheet() {
  QCOMPARE(QApplication::focusWidget(), sheet());
  QCOMPARE(text("heading"), QString("Check-out: Jointer/planer, both modes"));
  QVERIFY2(text("under").startsWith("Tola Adeyemi, Jointer/planer, unit 1"), qPrintable(text("under")));
  QCOMPARE(text("suggested"), QString("Not finished. 10 lines are still to be marked."));
}

void CheckoutsTest::marking_every_line_suggests_a_pass() {
  mark("1111111111");
  QCOMPARE(text("suggested"), QString("Suggested: passed."));
  QCOMPARE(outcome()->currentText(), QString("passed"));
  press(Qt::Key_0);  // the last line, back to no mark
  QCOMPARE(text("suggested"), QString("Not finished. Line 10 is still to be marked."));
  press(Qt::Key_Z, Qt::ControlModifier);
  QCOMPARE(text("suggested"), QString("Suggested: passed."));
  for (int i = 0; i < 9; ++i) press(Qt::Key_Z, Qt::ControlModifier);
  QCOMPARE(sheet()->line(), 1);
  QVERIFY((sheet()->on_sheet().marks[0] == Mark::shown && sheet()->on_sheet().marks[1] == Mark::none));
  press(Qt::Key_1);
  for (int i = 2; i < 9; ++i) sheet()->go_to(i), press(Qt::Key_1);
  sheet()->go_to(9);
  QCOMPARE(text("suggested"), QString("Not finished. Line 10 is still to be marked."));
  QCOMPARE(outcome()->currentText(), QString("choose"));
}

void CheckoutsTest::a_mark_is_made_where_a_button_is_let_go_and_not_where_it_moved() {
  QWidget* on = sheet()->viewport();
  const QPoint at = place_of(1, Mark::shown);
  QTest::mousePress(on, Qt::LeftButton, {}, at);
  QVERIFY(nothing_is_marked());
  QTest::mouseRelease(on, Qt::LeftButton, {}, at + QPoint(2, 1));
  QVERIFY(sheet()->on_sheet().marks[1] == Mark::shown);
  QCOMPARE(sheet()->line(), 1);
  QTest::mouseClick(on, Qt::LeftButton, {}, at);
  QVERIFY(nothing_is_marked());
  const QPoint away = at + QPoint(0, 3 * QApplication::startDragDistance());
  QTest::mousePress(on, Qt::LeftButton, {}, at);
  QTest::mouseRelease(on, Qt::LeftButton, {}, away);
  QVERIFY(nothing_is_marked());
  // Away and back is no click either, and a drag scrolls nothing.
  QTest::mousePress(on, Qt::LeftButton, {}, at);
  QMouseEvent move(QEvent::MouseMove, away, on->mapToGlobal(away), Qt::NoButton, Qt::LeftButton, {});
  QApplication::sendEvent(on, &move);
  QTest::mouseRelease(on, Qt::LeftButton, {}, at);
  QVERIFY(nothing_is_marked());
  QCOMPARE(sheet()->verticalScrollBar()->value(), 0);
  QTest::mouseClick(on, Qt::RightButton, {}, at);
  QVERIFY(nothing_is_marked());
}

static QPointingDevice* finger() {
  static QPointingDevice* device = QTest::createTouchDevice();
  return device;
}

void CheckoutsTest::tap(const QPoint& at) {
  QWindow* on = page_->windowHandle();
  const QPoint there = sheet()->viewport()->mapTo(page_.get(), at);
  QTest::touchEvent(on, finger()).press(0, there, on);
  QTest::touchEvent(on, finger()).release(0, there, on);
}

void CheckoutsTest::draw_finger(const QPoint& from, const QPoint& to) {
  QWindow* on = page_->windowHandle();
  constexpr int steps = 6;
  const QPoint first = sheet()->viewport()->mapTo(page_.get(), from);
  QTest::touchEvent(on, finger()).press(0, first, on);
  for (int i = 1; i <= steps; ++i) {
    QTest::qWait(15);
    QTest::touchEvent(on, finger()).move(0, first + (to - from) * i / steps, on);
  }
  QTest::touchEvent(on, finger()).release(0, first + to - from, on);
}

void CheckoutsTest::a_finger_that_scrolls_marks_nothing() {
  page_->resize(1216, 600);
  QCoreApplication::processEvents();
  const auto* bar = sheet()->verticalScrollBar();
  QVERIFY(bar->maximum() > 40);
  QCOMPARE(bar->value(), 0);
  const QPoint low = place_of(4, Mark::shown);
  draw_finger(low, low - QPoint(0, 120));
  QVERIFY(bar->value() > 20);
  QVERIFY(nothing_is_marked());
  QTRY_COMPARE(QScroller::scroller(sheet()->viewport())->state(), QScroller::Inactive);
  QVERIFY(nothing_is_marked());
  // One that stays where it is marks, where the line has come to.
  tap(place_of(5, Mark::shown_when_asked));
  QVERIFY(sheet()->on_sheet().marks[5] == Mark::shown_when_asked);
  press(Qt::Key_Z, Qt::ControlModifier);
  QVERIFY(nothing_is_marked());
}

void CheckoutsTest::a_finger_that_only_stops_a_sheet_marks_nothing() {
  page_->resize(1216, 600);
  QCoreApplication::processEvents();
  QScroller* scroller = QScroller::scroller(sheet()->viewport());
  tap(place_of(3, Mark::not_shown));
  press(Qt::Key_Z, Qt::ControlModifier);
  QVERIFY(nothing_is_marked());
  scroller->scrollTo(QPointF(0, sheet()->verticalScrollBar()->maximum()), 3000);
  QTRY_VERIFY(sheet()->verticalScrollBar()->value() > 0);
  QCOMPARE(scroller->state(), QScroller::Scrolling);
  tap(place_of(4, Mark::shown));
  QVERIFY(nothing_is_marked());
  QCOMPARE(scroller->state(), QScroller::Inactive);
  tap(place_of(4, Mark::shown));
  QVERIFY(sheet()->on_sheet().marks[4] == Mark::shown);
}

void CheckoutsTest::a_finger_goes_through_all_that_the_second_mark_can_be() {
  tap(place_of(4, Mark::shown_when_asked));
  QVERIFY(sheet()->on_sheet().marks[4] == Mark::shown_when_asked);
  // Tap after tap, as fast as they come.
  for (const Mark next : {Mark::shown, Mark::shown_when_asked, Mark::not_shown, Mark::none, Mark::shown}) {
    tap(place_of(4, Mark::none));
    QCOMPARE(static_cast<int>(sheet()->on_sheet().again[4]), static_cast<int>(next));
    QVERIFY(sheet()->on_sheet().marks[4] == Mark::shown_when_asked);
  }
  // Where nothing was asked there is no second mark.
  tap(place_of(5, Mark::none));
  QVERIFY(sheet()->on_sheet().again[5] == Mark::none);
  QCOMPARE(sheet()->line(), 5);
}

void CheckoutsTest::the_line_that_is_marked_stays_in_sight_when_something_takes_its_room() {
  mark("1111111111");
  page_->resize(1216, 600);
  QCoreApplication::processEvents();
  const auto* bar = sheet()->verticalScrollBar();
  QVERIFY(bar->maximum() > 40);
  QVERIFY2(bar->maximum() - bar->value() < 12, qPrintable(QString::number(bar->value())));
}

void CheckoutsTest::a_critical_line_shown_when_asked_must_be_shown_again() {
  mark("11112111");
  QCOMPARE(text("suggested"), QString("Not finished. 2 lines are still to be marked. Line 5 must be shown "
                                      "again, unasked, before a pass."));
  evening::grab(*page_, "checkouts-marking");
  mark("1111211111");
  // Enter leads to what is open: line 5. Right is its second mark.
  press(Qt::Key_Return);
  QCOMPARE(sheet()->line(), 4);
  press(Qt::Key_Right);
  press(Qt::Key_1);
  QCOMPARE(text("suggested"), QString("Suggested: passed."));
  QVERIFY(sheet()->on_sheet().marks[4] == Mark::shown_when_asked);
  QVERIFY(sheet()->on_sheet().again[4] == Mark::shown);
}

void CheckoutsTest::a_critical_line_not_shown_can_only_be_failed() {
  mark("1311111111");
  QCOMPARE(text("suggested"), QString("Suggested: failed. Critical and not shown: line 2."));
  QCOMPARE(outcome()->currentText(), QString("failed"));
  outcome()->setFocus();
  press(Qt::Key_P);
  QCOMPARE(outcome()->currentText(), QString("passed"));
  countersign("not");
  field("pin")->setFocus();
  QTest::keyClicks(QApplication::focusWidget(), "2468");
  press(Qt::Key_Return);
  QVERIFY(signed_ones().empty());
  QVERIFY2(refused_.join(' ').contains("cannot be signed as passed"), qPrintable(refused_.join(' ')));
  outcome()->setFocus();
  press(Qt::Key_Down);
  QCOMPARE(outcome()->currentText(), QString("failed"));
  press(Qt::Key_Return, Qt::ControlModifier);
  QCOMPARE(signed_ones().size(), std::size_t{1});
  QVERIFY(signed_ones()[0].outcome == Outcome::failed);
  QVERIFY2(text("after").contains("Nothing changes"), qPrintable(text("after")));
}

void CheckoutsTest::nothing_unfinished_is_signed_as_passed() {
  mark("11111");
  press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY(signed_ones().empty());
  QVERIFY2(refused_.join(' ').contains("No result is chosen"), qPrintable(refused_.join(' ')));
}

void CheckoutsTest::the_assessors_pin_signs_and_the_standing_changes() {
  QCOMPARE(rung("tola", "jointer-planer/planing"), Rung::supervised);
  mark("1111111111");
  field("restrictions")->setFocus();
  QTest::keyClicks(QApplication::focusWidget(), "no dado; stock up to 8 in");
  sign("2468");
  QCOMPARE(refused_.mid(1), QStringList());  // the first only asked for the PIN
  const auto done = signed_ones();
  QCOMPARE(done.size(), std::size_t{1});
  QVERIFY((done[0] == Checkout{"tola", "jointer-planer", 4, Outcome::passed, "mara"}));
  QCOMPARE(shop_->facts<db::Restriction>().size(), std::size_t{2});
  const auto marks = shop_->facts<db::SheetMarks>();
  QCOMPARE(marks.size(), std::size_t{1});
  QCOMPARE(marks[0].machine, MachineId("jp1"));
  QVERIFY(marks[0].marks == std::vector<Mark>(10, Mark::shown));
  QCOMPARE(rung("tola", "jointer-planer/planing"), Rung::independent);
  QVERIFY2(text("after").contains("without a supervisor"), qPrintable(text("after")));
  QVERIFY2(told_.join(' ').contains("signed: passed"), qPrintable(told_.join(' ')));
  QVERIFY2(!told_.join(' ').contains("was signed on"), qPrintable(told_.join(' ')));
  QVERIFY(field("pin")->text().isEmpty());
  evening::grab(*page_, "checkouts-signed");
  // Back to the Desk, on the same person.
  QSignalSpy goes(page_.get(), &Page::go);
  press(Qt::Key_D, Qt::ControlModifier);
  QCOMPARE(goes.size(), 1);
  const auto place = goes[0][0].value<Place>();
  QCOMPARE(place.page, QString("desk"));
  QCOMPARE(place.person, PersonId("tola"));
}

void CheckoutsTest::sign_and_seat_a_second() {
  shop_->sit_down("odile", "8642");
  shop_->enter(db::EnterFact{Appoint{"odile", Everything{}, true, day_of({2027, 12, 31})}});
  shop_->clock = shop_->clock + 60;
  shop_->sit_down("mara", "2468");
  mark("1111111113");
  sign("2468");
  QCOMPARE(signed_ones().size(), std::size_t{1});
  QVERIFY(sheet()->isVisible());
  QVERIFY(!page_->findChild<QPushButton*>("mark_apart")->isVisible());
  shop_->clock = shop_->clock + 60;
  shop_->sit_down("odile", "8642");
}

void CheckoutsTest::a_second_assessor_marks_it_apart_without_seeing_the_first() {
  sign_and_seat_a_second();
  QVERIFY(!sheet()->isVisible());
  QVERIFY2(text("after").contains("The marks are covered"), qPrintable(text("after")));
  evening::grab(*page_, "checkouts-covered");
  QCoreApplication::processEvents();
  const auto* under = page_->findChild<QLabel*>("under");
  QVERIFY(under->y() < 120);  // beside nothing else, words stay where they are
  press(Qt::Key_M, Qt::ControlModifier);
  QVERIFY(sheet()->isVisible());
  QVERIFY(std::ranges::all_of(sheet()->on_sheet().marks, [](Mark mark) { return mark == Mark::none; }));
  QVERIFY(!field("restrictions")->isVisible());
  QVERIFY(!outcome()->isVisible());
  mark("12");
  // What asking left open is the first assessor's to see shown again.
  QVERIFY(!sheet()->on_sheet().marks.empty());
  press(Qt::Key_Right);
  press(Qt::Key_1);
  QVERIFY(std::ranges::all_of(sheet()->on_sheet().again, [](Mark each) { return each == Mark::none; }));
  press(Qt::Key_2);
  // Neither the end of the program nor another seat takes it.
  page_.reset();
  make_page();
  press(Qt::Key_M, Qt::ControlModifier);
  QVERIFY(sheet()->on_sheet().marks[1] == Mark::shown_when_asked);
  mark("1231111111");
  evening::grab(*page_, "checkouts-apart");
  const auto before = rung("tola", "jointer-planer/planing");
  press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY2(refused_.join(' ').contains("second assessor types their own PIN"),
           qPrintable(refused_.join(' ')));
  QTest::keyClicks(QApplication::focusWidget(), "8642");
  press(Qt::Key_Return);
  const auto scored = shop_->facts<db::ScoredApart>();
  QCOMPARE(scored.size(), std::size_t{1});
  QCOMPARE(scored[0].assessor, PersonId("odile"));
  QVERIFY(scored[0].marks[1] == Mark::shown_when_asked && scored[0].marks[2] == Mark::not_shown &&
          scored[0].marks[9] == Mark::shown);
  QVERIFY(rung("tola", "jointer-planer/planing") == before);
  QCOMPARE(signed_ones().size(), std::size_t{1});
  // What the first marked is shown now, and nothing is to be marked a second time.
  QVERIFY(sheet()->isVisible());
  QVERIFY(sheet()->on_sheet().marks[9] == Mark::not_shown);
  QVERIFY(!page_->findChild<QPushButton*>("mark_apart")->isVisible());
}

void CheckoutsTest::whoever_has_seen_the_marks_does_not_mark_it_apart() {
  sign_and_seat_a_second();
  press(Qt::Key_M, Qt::ControlModifier | Qt::ShiftModifier);
  QVERIFY(sheet()->isVisible());
  QVERIFY(sheet()->on_sheet().marks[9] == Mark::not_shown);
  press(Qt::Key_M, Qt::ControlModifier);
  QVERIFY(sheet()->on_sheet().marks[9] == Mark::not_shown);
  QVERIFY(!field("pin")->isVisible());
}

void CheckoutsTest::whoever_marked_a_line_of_the_first_is_not_asked_to_mark_it_apart() {
  shop_->sit_down("odile", "8642");
  shop_->enter(db::EnterFact{Appoint{"odile", Everything{}, true, day_of({2027, 12, 31})}});
  shop_->clock = shop_->clock + 60;
  page_->refresh();
  mark("1");
  shop_->sit_down("mara", "2468");
  mark("1111111113");
  sign("2468");
  QCOMPARE(signed_ones().size(), std::size_t{1});
  shop_->clock = shop_->clock + 60;
  shop_->sit_down("odile", "8642");
  QVERIFY(sheet()->isVisible());
  QVERIFY(!page_->findChild<QPushButton*>("mark_apart")->isVisible());
}

void CheckoutsTest::what_was_measured_says_what_to_practise() {
  const Length inch{fraction(1), LengthUnit::inch};
  const auto part = [](long of) { return Length{fraction(1, of), LengthUnit::inch}; };
  const Measure thick{MeasureKind::thickness, SizeToMeasure{inch, part(100), part(100), part(1000)}};
  const Sheet sheet{"piece",   1,
                    "piece",   "piece",
                    "A piece", {{"plane", {{"It feeds", "", true}, {"It is 1 in thick", "", true, thick}}}}};
  const auto words = [&](Mark mark, const char* typed, const char* marks = "") {
    db::SheetMarks marked;
    marked.marks = {Mark::shown, mark};
    if (*typed) marked.measured = {*understood(thick, 2, typed, marks)};
    return practise_words(sheet, marked, Outcome::failed);
  };
  const char* const practise = "Worth practising, with somebody beside: It is 1 in thick (line 2).";
  // Out of its tolerance, whatever the mark.
  for (const Mark mark : {Mark::none, Mark::shown, Mark::not_shown}) {
    QVERIFY2(words(mark, "0.97").contains(practise), qPrintable(words(mark, "0.97")));
    QVERIFY2(words(mark, "0.97").contains("Shown well: 1 of 2 lines."), qPrintable(words(mark, "0.97")));
  }
  for (const Mark mark : {Mark::none, Mark::shown}) {
    QVERIFY2(!words(mark, "0.995").contains("Worth"), qPrintable(words(mark, "0.995")));
    QVERIFY2(words(mark, "0.995").contains("Shown well: 2 of 2 lines."), qPrintable(words(mark, "0.995")));
  }
  QVERIFY(words(Mark::not_shown, "0.995").contains(practise));
  // Nothing was told by no measure, nor by one that is too coarse.
  QVERIFY(words(Mark::none, "").contains("Shown well: 1 of 2 lines."));
  QVERIFY(words(Mark::none, "1", "1/2").contains("Shown well: 1 of 2 lines."));
  QVERIFY(!words(Mark::none, "1", "1/2").contains("Worth"));
}

void CheckoutsTest::failing_names_what_to_practise_and_leads_to_the_next_one_on_one() {
  mark("1111311211");
  sign("2468");
  QCOMPARE(signed_ones().size(), std::size_t{1});
  QVERIFY(signed_ones()[0].outcome == Outcome::failed);
  const QString after = text("practise");
  QVERIFY2(
      after.startsWith("Not this time, and there is a next one. Shown well: 8 of 10 lines. Worth practising, "
                       "with somebody beside: Guard covers all of the cutterhead not in use (line 5); "),
      qPrintable(after));
  QVERIFY2(after.contains("(line 8)") && !after.contains("(line 4)"), qPrintable(after));
  QVERIFY2(text("after").contains("Tola may use the jointer/planer"), qPrintable(text("after")));
  QVERIFY(page_->findChild<QPushButton*>("next")->isVisible());
  evening::grab(*page_, "checkouts-failed");
  QSignalSpy goes(page_.get(), &Page::go);
  press(Qt::Key_O, Qt::ControlModifier);
  QCOMPARE(goes.size(), 1);
  const auto place = goes[0][0].value<Place>();
  QCOMPARE(place.page, QString("diary"));
  QCOMPARE(place.person, PersonId("tola"));
  QCOMPARE(place.target, TargetName("jointer-planer/jointing"));
}

void CheckoutsTest::restrictions_that_stand_are_said_and_medical_reasons_are_not_asked() {
  QVERIFY2(text("never_medical").contains("Never a medical reason"), qPrintable(text("never_medical")));
  QVERIFY(page_->findChild<QLabel*>("never_medical")->isVisible());
  QVERIFY(!text("under").contains("Restricted"));
  db::SignCheckout earlier;
  earlier.checkout = {"tola", "jointer-planer", 4, Outcome::passed, "mara"};
  earlier.pin = "2468";
  earlier.restrictions = {"with the adapted jig"};
  shop_->enter(earlier);
  QVERIFY2(text("under").contains("Restricted: with the adapted jig."), qPrintable(text("under")));
}

void CheckoutsTest::a_wrong_pin_signs_nothing_and_keeps_the_marks() {
  mark("1111111111");
  sign("9999");
  QVERIFY(signed_ones().empty());
  QCOMPARE(refused_.size(), 2);
  QVERIFY(sheet()->on_sheet().marks == std::vector<Mark>(10, Mark::shown));
  QCOMPARE(QApplication::focusWidget(), field("pin"));
  QVERIFY(field("pin")->text().isEmpty());
}

void CheckoutsTest::marks_are_kept_when_looking_elsewhere() {
  mark("112");
  Place other;
  other.person = "jonas";
  other.target = "jointer-planer/planing";
  page_->open(other);
  QVERIFY2(text("under").startsWith("Jonas Lindqvist"), qPrintable(text("under")));
  QVERIFY(sheet()->on_sheet().marks == std::vector<Mark>(10, Mark::none));
  page_->hide();
  page_->show();
  Place back;
  back.person = "tola";
  page_->open(back);
  QVERIFY2(text("under").startsWith("Tola Adeyemi"), qPrintable(text("under")));
  QVERIFY(sheet()->on_sheet().marks[0] == Mark::shown);
  QVERIFY(sheet()->on_sheet().marks[2] == Mark::shown_when_asked);
}

void CheckoutsTest::what_was_marked_survives_the_end_of_the_program_and_another_seat() {
  mark("112");
  field("note")->setFocus();
  QTest::keyClicks(QApplication::focusWidget(), "left-handed");
  page_->open({{}, "jonas", "jointer-planer/jointing", {}, {}});
  mark("3");
  // As after a power cut: nothing of the page is left but the folder. Ivo of the desk sits there now.
  page_.reset();
  shop_->session->hand_over();
  shop_->sit_down("ines", "1357");
  make_page();
  page_->open({{}, "tola", {}, {}, {}});
  QVERIFY((sheet()->on_sheet().marks[1] == Mark::shown &&
           sheet()->on_sheet().marks[2] == Mark::shown_when_asked));
  QCOMPARE(field("note")->text(), QString("left-handed"));
  QVERIFY2(text("under").contains("marked by Mara Devlin"), qPrintable(text("under")));
  page_->open({{}, "jonas", "jointer-planer/jointing", {}, {}});
  QVERIFY(sheet()->on_sheet().marks[0] == Mark::not_shown);
  QVERIFY(signed_ones().empty());
  // Signed, it is kept no longer.
  shop_->session->hand_over();
  shop_->sit_down("mara", "2468");
  page_->open({{}, "tola", {}, {}, {}});
  mark("1111111111");
  sign("2468");
  QCOMPARE(signed_ones().size(), std::size_t{1});
  Drafts kept(shop_->session->station());
  QVERIFY(!kept.read(shop_->clock));
  QCOMPARE(kept.all().size(), std::size_t{1});
  QCOMPARE(kept.all().begin()->second.one.person, PersonId("jonas"));
}

void CheckoutsTest::every_mark_is_in_the_store_at_once_and_another_station_goes_on() {
  mark("112");
  auto open = shop_->session->store().open_sheets();
  QCOMPARE(open.size(), std::size_t{1});
  QVERIFY((open[0].marks == std::vector{Mark::shown, Mark::shown, Mark::shown_when_asked}));
  QVERIFY(!page_->findChild<QLabel*>("kept")->isVisible());
  QVERIFY2(text("under").contains("in the shop's store"), qPrintable(text("under")));
  // Another station: nothing of this one's folder is there.
  page_.reset();
  QVERIFY(QFile::remove(shop_->session->station() + "/unsigned-check-outs.json"));
  make_page();
  QVERIFY(sheet()->on_sheet().marks[2] == Mark::shown_when_asked);
  QVERIFY2(text("under").contains("In hand since"), qPrintable(text("under")));
  // What is marked elsewhere meanwhile comes in while the cursor stays.
  sheet()->go_to(4);
  shop_->enter(db::EnterShopFact{db::LineMarked{open[0].id, 4, Mark::not_shown, Mark::none, {}}});
  QVERIFY(sheet()->on_sheet().marks[3] == Mark::not_shown);
  QCOMPARE(sheet()->line(), 4);
  mark("1111111111");
  sign("2468");
  QCOMPARE(signed_ones().size(), std::size_t{1});
  QCOMPARE(shop_->facts<db::SheetMarks>()[0].opened, open[0].id);
  QVERIFY(shop_->session->store().open_sheets().empty());
}

void CheckoutsTest::what_cannot_go_to_the_store_is_kept_here_and_goes_there_later() {
  shop_->session->hand_over();
  page_->refresh();
  mark("11");
  QVERIFY(shop_->session->store().open_sheets().empty());
  QVERIFY2(text("kept").startsWith("Kept at this station, not in the shop's store yet"),
           qPrintable(text("kept")));
  page_.reset();
  make_page();
  QVERIFY(sheet()->on_sheet().marks[1] == Mark::shown);
  shop_->sit_down("mara", "2468");
  page_->refresh();
  QCOMPARE(shop_->session->store().open_sheets().size(), std::size_t{1});
  QVERIFY((shop_->session->store().open_sheets()[0].marks == std::vector{Mark::shown, Mark::shown}));
}

RecordId CheckoutsTest::mark_and_leave() {
  mark("11");
  const RecordId opened = shop_->session->store().open_sheets()[0].id;
  shop_->session->hand_over();
  page_->refresh();
  sheet()->go_to(2), press(Qt::Key_2);
  sheet()->go_to(4), press(Qt::Key_3);
  page_.reset();
  shop_->sit_down("mara", "2468");
  return opened;
}

void CheckoutsTest::what_was_not_sent_of_a_sheet_that_was_signed_elsewhere_stays_to_be_read() {
  db::SignCheckout elsewhere;
  elsewhere.opened = mark_and_leave();
  elsewhere.checkout = {"tola", "jointer-planer", 4, Outcome::stopped, "mara"};
  elsewhere.pin = "2468";
  elsewhere.machine = "jp1";
  elsewhere.sheet = "jointer-planer";
  elsewhere.sheet_revision = 4;
  elsewhere.marks = {Mark::shown, Mark::shown};
  elsewhere.again = {Mark::none, Mark::none};
  shop_->enter(elsewhere);
  make_page();
  QVERIFY2(refused_.join(' ').contains("was signed on Thursday 26 November 2026 by Mara Devlin: stopped"),
           qPrintable(refused_.join(' ')));
  QVERIFY2(
      left_behind().startsWith("The run sheet of Tola Adeyemi, Jointer/planer, unit 1 was signed on ") &&
          left_behind().endsWith("Marked here and not sent: line 3, shown when asked; line 5, not shown."),
      qPrintable(left_behind()));
  QCOMPARE(page_->width(), 1216);
  evening::grab(*page_, "checkouts-left-behind");
  // Neither the end of the program nor somebody else's refresh takes it; whoever has read it does.
  page_.reset();
  refused_.clear();
  make_page();
  QVERIFY(left_behind().contains("line 5, not shown"));
  QVERIFY(refused_.isEmpty());
  press(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
  QCOMPARE(left_behind(), QString());
  page_.reset();
  make_page();
  QCOMPARE(left_behind(), QString());
}

void CheckoutsTest::what_was_not_sent_of_a_booking_that_was_signed_without_a_sheet_stays_too() {
  shop_->session->hand_over();
  page_->refresh();
  mark("13");
  page_.reset();
  shop_->sit_down("mara", "2468");
  db::SignCheckout elsewhere;
  elsewhere.checkout = {"tola", "jointer-planer", 4, Outcome::passed, "mara"};
  elsewhere.pin = "2468";
  elsewhere.machine = "jp1";
  elsewhere.booking = shop_->session->store().of_kind("booking").back()->id;
  shop_->enter(elsewhere);
  make_page();
  QVERIFY2(left_behind().endsWith("Marked here and not sent: line 1, shown; line 2, not shown."),
           qPrintable(left_behind()));
}

void CheckoutsTest::a_sheet_that_was_struck_out_or_gave_way_is_told_and_leaves_the_page() {
  mark("11");
  field("note")->setFocus();
  QTest::keyClicks(QApplication::focusWidget(), "left-handed");
  const RecordId opened = shop_->session->store().open_sheets()[0].id;
  shop_->sit_down("odile", "8642");
  shop_->enter(db::StrikeOutRecord{opened, "it was another person's"});
  shop_->sit_down("mara", "2468");
  QVERIFY2(left_behind().endsWith("was struck out on Thursday 26 November 2026. "
                                  "Typed here and not sent: left-handed."),
           qPrintable(left_behind()));
  // What is marked from now on is another one, and nothing of the first stands on it.
  QVERIFY(sheet()->on_sheet().marks == std::vector<Mark>(10, Mark::none));
  press(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
  mark("1");
  told_.clear();
  shop_->enter(
      db::EnterShopFact{db::SheetOpened{"tola", "jp1", "jointer-planer/jointing", "jointer-planer", 5}});
  QVERIFY2(told_.join(' ').contains("gave way to another that was begun on Thursday 26 November 2026."),
           qPrintable(told_.join(' ')));
  QCOMPARE(left_behind(), QString());  // its one mark is in the store
}

void CheckoutsTest::a_sheet_left_for_too_long_is_told() {
  mark("11");
  told_.clear();
  shop_->clock = shop_->clock + 31 * std::int64_t{86400};
  page_->refresh();
  QVERIFY2(told_.join(' ').contains("was left for more than 30 days, so what was shown is shown again"),
           qPrintable(told_.join(' ')));
  QVERIFY(!sheet()->isVisible());  // its booking is long gone too
  shop_->session->hand_over();
  page_->refresh();
  page_->open({{}, "jonas", "jointer-planer/jointing", {}, {}});
  mark("3");
  page_.reset();
  shop_->clock = shop_->clock + 14 * std::int64_t{86400};
  make_page();
  QCOMPARE(left_behind(), QString());
  page_.reset();
  shop_->clock = shop_->clock + 1;
  make_page();
  QVERIFY2(left_behind().startsWith("The run sheet of Jonas Lindqvist, ") &&
               left_behind().endsWith("was marked at this station more than 14 days ago and not signed. "
                                      "Marked here and not sent: line 1, not shown."),
           qPrintable(left_behind()));
}

void CheckoutsTest::marks_that_a_store_put_back_does_not_have_go_there_again() {
  shop_->session->hand_over();
  page_->refresh();
  mark("12");
  page_.reset();
  Drafts kept(shop_->session->station());
  QVERIFY(!kept.read(shop_->clock));
  Draft& draft = kept.at(kept.all().begin()->first);
  draft.opened = "gone with the disk";
  draft.unsent.clear();
  QVERIFY(!kept.write());
  shop_->sit_down("mara", "2468");
  make_page();
  QCOMPARE(shop_->session->store().open_sheets().size(), std::size_t{1});
  QVERIFY(
      (shop_->session->store().open_sheets()[0].marks == std::vector{Mark::shown, Mark::shown_when_asked}));
}

void CheckoutsTest::it_is_put_by_and_gone_on_with_on_another_day() {
  mark("1111");
  field("note")->setFocus();
  QTest::keyClicks(QApplication::focusWidget(), "the edge is left");
  QSignalSpy goes(page_.get(), &Page::go);
  press(Qt::Key_D, Qt::ControlModifier | Qt::ShiftModifier);
  QCOMPARE(goes.size(), 1);
  QCOMPARE(goes[0][0].value<Place>().page, QString("diary"));
  page_.reset();
  QVERIFY(QFile::remove(shop_->session->station() + "/unsigned-check-outs.json"));
  shop_->clock = shop_->clock + 20 * 86400;  // the booking is long gone from the list
  make_page();
  page_->open({{}, "tola", {}, {}, {}});
  QVERIFY2(text("under").contains("Put by on") && text("under").contains("the edge is left"),
           qPrintable(text("under")));
  QVERIFY(sheet()->on_sheet().marks[3] == Mark::shown);
  QCOMPARE(field("note")->text(), QString("the edge is left"));
  evening::grab(*page_, "checkouts-put-by");
}

void CheckoutsTest::what_was_left_open_at_another_station_is_not_lost_by_whoever_signs() {
  mark("111");
  const RecordId opened = shop_->session->store().open_sheets()[0].id;
  shop_->enter(db::EnterShopFact{db::SheetPutBy{opened, "the edge is left", {"no dado"}}});
  QCOMPARE(field("restrictions")->text(), QString("no dado"));
  QCOMPARE(field("note")->text(), QString("the edge is left"));
  // Both were changed: both stand.
  field("restrictions")->setFocus();
  press(Qt::Key_End);
  QTest::keyClicks(QApplication::focusWidget(), "; with an interpreter");
  shop_->enter(db::EnterShopFact{db::SheetPutBy{opened, "the edge is left", {"no rabbet"}}});
  QCOMPARE(field("restrictions")->text(), QString("no rabbet; no dado; with an interpreter"));
  QVERIFY2(told_.join(' ').contains("both stand here now"), qPrintable(told_.join(' ')));
  // Put back as it is here, it stays so; taken back elsewhere, it goes.
  field("restrictions")->setFocus();
  press(Qt::Key_A, Qt::ControlModifier);
  QTest::keyClicks(QApplication::focusWidget(), "no rabbet");
  shop_->enter(db::EnterShopFact{db::SheetPutBy{opened, "", {}}});
  QCOMPARE(field("restrictions")->text(), QString());
  // Another start of the program knows what of it is its own.
  field("restrictions")->setFocus();
  QTest::keyClicks(QApplication::focusWidget(), "no dado");
  page_.reset();
  make_page();
  QCOMPARE(field("restrictions")->text(), QString("no dado"));
  mark("1111111111");
  sign("2468");
  QCOMPARE(shop_->facts<db::Restriction>().back().text, std::string("no dado"));
}

void CheckoutsTest::the_other_mode_goes_on_with_the_same_sheet() {
  mark("1113");
  shop_->enter(db::EnterShopFact{db::Cancel{shop_->session->store().of_kind("booking").back()->id, "ill"}});
  page_.reset();
  QVERIFY(QFile::remove(shop_->session->station() + "/unsigned-check-outs.json"));
  make_page();
  page_->open({{}, "tola", "jointer-planer/planing", {}, {}});
  QVERIFY2(text("under").contains("In hand since"), qPrintable(text("under")));
  QVERIFY(sheet()->on_sheet().marks[3] == Mark::not_shown);
  const auto second = shop_->session->commit(
      db::EnterShopFact{db::SheetOpened{"tola", "jp1", "jointer-planer/planing", "jointer-planer", 4}});
  QVERIFY(!second);
  QVERIFY2(second.error().what.find("has this run sheet in hand") != std::string::npos,
           second.error().what.c_str());
}

void CheckoutsTest::whoever_sits_down_next_does_not_get_the_marks_of_another_second() {
  shop_->sit_down("odile", "8642");
  shop_->enter(db::EnterFact{Appoint{"ren", Everything{}, true, day_of({2027, 12, 31})}});
  shop_->enter(db::EnterShopFact{db::RoleGiven{"ren", db::Role::instructor}});
  shop_->enter(db::ChoosePin{"ren", "9753"});
  shop_->sit_down("mara", "2468");
  sign_and_seat_a_second();
  press(Qt::Key_M, Qt::ControlModifier);
  mark("1233");
  QVERIFY(!text("how").contains("the second time"));
  QCOMPARE(shop_->facts<db::ScoredApart>().size(), std::size_t{0});
  // The first did; whoever was there looks at nothing of it.
  shop_->sit_down("mara", "2468");
  QVERIFY2(!text("heading").contains("Marked apart"), qPrintable(text("heading")));
  shop_->sit_down("ren", "9753");
  press(Qt::Key_M, Qt::ControlModifier);
  if (page_->findChild<QPushButton*>("show_marks")->isVisible() || sheet()->isVisible())
    for (const Mark each : sheet()->on_sheet().marks) QVERIFY(each != Mark::shown_when_asked);
  shop_->sit_down("odile", "8642");
  press(Qt::Key_M, Qt::ControlModifier);
  QVERIFY(sheet()->on_sheet().marks[1] == Mark::shown_when_asked);
}

void CheckoutsTest::the_member_countersigns_with_a_pin_of_their_own() {
  mark("1111111111");
  press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY2(refused_.back().contains("how Tola"), qPrintable(refused_.back()));
  QCOMPARE(QApplication::focusWidget(), page_->findChild<QComboBox*>("hand"));
  press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
  QTest::keyClicks(QApplication::focusWidget(), "7777");
  press(Qt::Key_Tab);
  QTest::keyClicks(QApplication::focusWidget(), "7777");
  press(Qt::Key_Return);
  QCOMPARE(QApplication::focusWidget(), field("member_pin"));
  QVERIFY(!page_->findChild<QPushButton*>("choose_member_pin")->isVisible());
  QTest::keyClicks(QApplication::focusWidget(), "7777");
  evening::grab(*page_, "checkouts-countersign");
  press(Qt::Key_Return);
  QCOMPARE(QApplication::focusWidget(), field("pin"));
  QTest::keyClicks(QApplication::focusWidget(), "2468");
  press(Qt::Key_Return);
  QCOMPARE(signed_ones().size(), std::size_t{1});
  QVERIFY(shop_->facts<db::Countersigned>()[0].hand == db::Hand::pin);
  QCOMPARE(shop_->facts<db::Signature>().size(), std::size_t{2});
}

void CheckoutsTest::the_members_card_countersigns_and_anybody_elses_does_not() {
  db::Person tola = *shop_->session->store().person("tola");
  tola.card = "0042";
  shop_->enter(db::CorrectPerson{tola});
  QVERIFY(!page_->take_card("0043"));
  QVERIFY(page_->take_card("0042"));
  QCOMPARE(text("member_card"), QString("held to the reader"));
  mark("1111111111");
  sign("2468");
  QCOMPARE(signed_ones().size(), std::size_t{1});
  QVERIFY(shop_->facts<db::Countersigned>()[0].hand == db::Hand::card);
  QVERIFY(!page_->take_card("0042"));  // signed: the card opens the person again
}

void CheckoutsTest::a_printed_sheet_countersigns_by_its_number() {
  mark("1111111111");
  countersign("on");
  press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY2(refused_.back().contains("number of the sheet"), qPrintable(refused_.back()));
  QCOMPARE(QApplication::focusWidget(), field("countersigned_form"));
  QTest::keyClicks(QApplication::focusWidget(), "7k2q9x");
  sign("2468");
  QVERIFY2(refused_.back().contains("No blank sheet"), qPrintable(refused_.back()));
  QVERIFY(signed_ones().empty());
  press(Qt::Key_P, Qt::ControlModifier);
  const std::string form = shop_->facts<db::Printed>().back().form;
  QTest::keyClicks(field("countersigned_form"), QString::fromStdString(form).toLower());
  sign("2468");
  QCOMPARE(signed_ones().size(), std::size_t{1});
  QVERIFY(shop_->facts<db::Countersigned>()[0].hand == db::Hand::paper);
  QCOMPARE(shop_->facts<db::Countersigned>()[0].form, form);
}

void CheckoutsTest::who_did_not_countersign_is_asked_again_and_does_so_on_another_day() {
  const auto* list = page_->findChild<QListWidget*>("one_on_ones");
  const auto* box = page_->findChild<CountersignLater*>();
  const auto desk = [&] {
    return desk_answer(*shop_->session, shop_now(*shop_->session), "tola", "jointer-planer/plane").since;
  };
  mark("1111111111");
  QVERIFY(!box->isVisible());
  sign("2468");
  QCOMPARE(signed_ones().size(), std::size_t{1});
  QVERIFY(box->isVisible());
  QVERIFY2(text("not_countersigned").startsWith("Tola Adeyemi has not countersigned it"),
           qPrintable(text("not_countersigned")));
  QVERIFY(box->findChild<QComboBox*>("hand")->findText("not countersigned") < 0);
  QVERIFY2(desk().contains("is not countersigned yet"), qPrintable(desk()));
  evening::grab(*page_, "checkouts-not-countersigned");
  const auto tonight = [&] {
    TonightSide side(*shop_->session);
    side.show_shop(shop_now(*shop_->session));
    QStringList lines;
    for (const QLabel* label : side.findChildren<QLabel*>()) lines << label->text();
    return lines.join('\n');
  };
  const QString to_do = "Tola Adeyemi, Jointer/planer, on 26 Nov 2026: on Check-outs";
  shop_->enter(db::EnterShopFact{db::Presence{"tola", false}});
  QVERIFY2(!tonight().contains("have not countersigned"), qPrintable(tonight()));
  shop_->enter(db::EnterShopFact{db::Presence{"tola", true}});
  QVERIFY2(tonight().contains(to_do), qPrintable(tonight()));
  // On another day, at another page, whoever sits at the desk lets her do it.
  shop_->clock = shop_->clock + 3 * 86400;
  shop_->sit_down("ines", "1357");
  make_page();
  box = page_->findChild<CountersignLater*>();
  list = page_->findChild<QListWidget*>("one_on_ones");
  int at = -1;
  for (int i = 0; i < list->count(); ++i)
    if (list->item(i)->data(Qt::UserRole).toString().contains("not countersigned")) at = i;
  QVERIFY(at >= 0);
  const_cast<QListWidget*>(list)->setCurrentRow(at);
  QVERIFY(box->isVisible());
  QVERIFY(box->findChild<QComboBox*>("hand")->findText("on the printed sheet") < 0);
  page_->findChild<QWidget*>("desk")->setFocus();
  press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
  QTest::keyClicks(QApplication::focusWidget(), "7777");
  press(Qt::Key_Tab);
  QTest::keyClicks(QApplication::focusWidget(), "7777");
  press(Qt::Key_Return);
  QCOMPARE(QApplication::focusWidget(), box->findChild<QLineEdit*>("member_pin"));
  QTest::keyClicks(QApplication::focusWidget(), "7770");
  press(Qt::Key_Return);
  QVERIFY(shop_->facts<db::Countersigned>().empty());
  QTest::keyClicks(QApplication::focusWidget(), "7777");
  press(Qt::Key_Return);
  QVERIFY2(told_.back().contains("has countersigned"), qPrintable(told_.back() + refused_.join(' ')));
  QCOMPARE(shop_->facts<db::Countersigned>().size(), std::size_t{1});
  for (int i = 0; i < list->count(); ++i)
    QVERIFY(!list->item(i)->data(Qt::UserRole).toString().contains("not countersigned"));
  QVERIFY2(!desk().contains("countersigned"), qPrintable(desk()));
}

void CheckoutsTest::what_was_stopped_asks_for_no_countersignature() {
  mark("11");
  outcome()->setFocus();
  press(Qt::Key_S);
  sign("2468");
  QCOMPARE(signed_ones().size(), std::size_t{1});
  QVERIFY(signed_ones()[0].outcome == Outcome::stopped);
  QVERIFY(!page_->findChild<CountersignLater*>()->isVisible());
}

void CheckoutsTest::a_manager_takes_in_the_paper_that_was_countersigned_later() {
  mark("1111111111");
  sign("2468");
  press(Qt::Key_P, Qt::ControlModifier);
  const std::string form = shop_->facts<db::Printed>().back().form;
  shop_->sit_down("odile", "8642");
  page_->refresh();
  press(Qt::Key_M, Qt::ControlModifier | Qt::ShiftModifier);  // she looks at the marks
  const auto* box = page_->findChild<CountersignLater*>();
  QVERIFY(box->isVisible());
  auto* hand = box->findChild<QComboBox*>("hand");
  hand->setFocus();
  QTest::keyClicks(hand, "on");
  auto* number = box->findChild<QLineEdit*>("countersigned_form");
  number->setFocus();
  QTest::keyClicks(number, QString::fromStdString(form));
  refused_.clear();
  press(Qt::Key_Return);
  QVERIFY2(refused_.isEmpty(), qPrintable(refused_.join(' ')));
  QCOMPARE(shop_->facts<db::Countersigned>().size(), std::size_t{1});
  QCOMPARE(shop_->facts<db::Countersigned>()[0].form, form);
  QVERIFY(shop_->session->store().of_kind("countersigned").back()->from_paper);
  QVERIFY(!box->isVisible());
}

void CheckoutsTest::a_blank_sheet_is_printed_with_a_number_and_taken_in_from_the_paper() {
  press(Qt::Key_P, Qt::ControlModifier);
  press(Qt::Key_P, Qt::ControlModifier);  // one for a second assessor
  const auto printed = shop_->facts<db::Printed>();
  QCOMPARE(printed.size(), std::size_t{2});
  QCOMPARE(printed[0].form.size(), std::size_t{6});
  QVERIFY(printed[0].form != printed[1].form);
  shop_->clock = shop_->clock + 86400;
  shop_->sit_down("odile", "8642");
  page_->refresh();
  press(Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
  QCOMPARE(QApplication::focusWidget(), field("form"));
  auto* entry = page_->findChild<PaperEntry*>();
  const auto type_in = [&](const char* name, const QString& words) {
    auto* at = entry->findChild<QWidget*>(name);
    at->setFocus();
    QTest::keyClicks(at, words);
  };
  const auto type_paper = [&](const std::string& form, const QString& assessor) {
    type_in("form", QString::fromStdString(form).toLower());
    type_in("paper_member", "tola");  // which sheet it is, its number says
    press(Qt::Key_Return);
    type_in("paper_unit", "Joi");
    type_in("paper_assessor", assessor);
    press(Qt::Key_Return);
  };
  type_paper(printed[0].form, "mara");
  type_in("paper_outcome", "pas");
  entry->findChild<QCheckBox*>("paper_countersigned")->setChecked(true);
  auto* lines = entry->findChild<SheetView*>();
  lines->setFocus();
  press(Qt::Key_Home);
  for (int line = 0; line < 10; ++line) {
    if (line > 0) press(Qt::Key_Down);
    press(Qt::Key_1);
  }
  refused_.clear();
  press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY2(refused_.join(' ').contains("missing when it was"), qPrintable(refused_.join(' ')));
  type_in("paper_day", "26 November 2026");
  type_in("paper_time", "17:30");
  evening::grab(*page_, "checkouts-from-paper");
  press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY2(told_.join(' ').contains("entered: the check-out of Tola Adeyemi was passed"),
           qPrintable(told_.join(' ') + refused_.join(' ')));
  QCOMPARE(signed_ones().size(), std::size_t{1});
  const db::Entry& entered = *shop_->session->store().of_kind("checkout").back();
  QVERIFY(entered.from_paper);
  QCOMPARE(entered.entered_by, PersonId("odile"));
  QVERIFY(entered.at == evening::at("2026-11-26T23:30:00Z"));
  QCOMPARE(shop_->facts<db::SheetMarks>()[0].form, printed[0].form);
  QVERIFY(shop_->facts<db::Countersigned>()[0].hand == db::Hand::paper);

  const RecordId first = entered.id;
  const Day that_day = shop_->session->zone().day(entered.at);
  // What a second assessor marked on the other paper is no check-out: nobody is asked for a result.
  // Else a list takes what is typed for more of the same word.
  QTest::qWait(QApplication::keyboardInputInterval() + 50);
  entry->findChild<QCheckBox*>("paper_apart")->setChecked(true);
  QVERIFY(!entry->findChild<QWidget*>("paper_outcome")->isVisible());
  QVERIFY(!entry->findChild<QWidget*>("paper_restrictions")->isVisible());
  type_paper(printed[1].form, "odile");
  type_in("paper_day", "25 November 2026");
  type_in("paper_time", "17:40");
  refused_.clear();
  press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY2(
      refused_.join(' ').contains("No check-out of Tola Adeyemi on this sheet and unit was signed that day"),
      qPrintable(refused_.join(' ')));
  entry->findChild<DateField*>("paper_day")->set_day(that_day);
  refused_.clear();
  press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY2(refused_.join(' ').contains("No line is marked"), qPrintable(refused_.join(' ')));
  lines->setFocus();
  press(Qt::Key_Home);
  press(Qt::Key_2);
  evening::grab(*page_, "checkouts-apart-from-paper");
  press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY2(told_.join(' ').contains("marked apart by Odile"),
           qPrintable(told_.join(' ') + refused_.join(' ')));
  const auto apart = shop_->facts<db::ScoredApart>();
  QCOMPARE(apart.size(), std::size_t{1});
  QCOMPARE(apart[0].checkout, first);
  QCOMPARE(apart[0].form, printed[1].form);
  QVERIFY(apart[0].marks[0] == Mark::shown_when_asked && apart[0].marks[1] == Mark::none);
  QCOMPARE(signed_ones().size(), std::size_t{1});
  QVERIFY(!entry->findChild<QCheckBox*>("paper_apart")->isChecked());
  press(Qt::Key_Escape);
  QVERIFY(!entry->isVisible());
}

/// The last words of each line stand on the page on which it begins, as a reader of PDFs finds them.
void CheckoutsTest::no_line_and_no_signature_of_a_blank_sheet_is_broken_over_pages() {
  QTemporaryDir folder;
  int longest = 0;
  for (const OwnSheet& own : own_sheets())
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
      const BlankSheet blank = blank_sheet(*shop_->session, own.sheet, "7K2Q9X", size);
      const QString path = folder.filePath("blank.pdf");
      QVERIFY(write_pdf(path, blank.text, blank.laid.pages, blank.laid.draw));
      longest = std::max(longest, blank.laid.pages);
      const auto lines = lines_of(own.sheet);
      int measured = 0, signatures = 0;
      for (int page = 1; page <= blank.laid.pages; ++page) {
        QProcess reader;
        reader.start("pdftotext",
                     {"-raw", "-f", QString::number(page), "-l", QString::number(page), path, "-"});
        QVERIFY2(reader.waitForFinished(), "pdftotext is missing: install poppler-utils");
        const QString words = QString::fromUtf8(reader.readAllStandardOutput()).simplified();
        const auto has = [&](const std::string& text) {
          return words.contains(QString::fromStdString(text));
        };
        const int to_measure = static_cast<int>(words.count("measured: __"));
        measured += to_measure;
        int asked = 0;
        for (const SheetLine* line : lines) {
          if (line->measure && has(line->text)) ++asked;
          const auto as_here = [&](const SheetLine* other) {
            return other->text == line->text || other->says == line->says;
          };
          if (!line->says.empty() && std::ranges::count_if(lines, as_here) == 1)
            QVERIFY2(has(line->text) == has(line->says), line->text.c_str());
        }
        QVERIFY2(asked == to_measure, qPrintable(words));
        const bool signs = words.contains("Result, put a ring");
        signatures += signs ? 1 : 0;
        QCOMPARE(words.contains("Assessor: this is what I watched"), signs);
      }
      QCOMPARE(signatures, 1);
      QCOMPARE(measured, static_cast<int>(std::ranges::count_if(
                             lines, [](const SheetLine* line) { return line->measure.has_value(); })));
    }
  QVERIFY(longest > 1);
}

void CheckoutsTest::marks_of_another_sheet_or_a_broken_file_are_not_taken_for_these() {
  shop_->session->hand_over();  // so that they are here and nowhere else
  page_->refresh();
  mark("111");
  Drafts kept(shop_->session->station());
  QVERIFY(!kept.read(shop_->clock));
  Draft other = kept.all().begin()->second;
  other.sheet_revision += 1;
  kept.at(other.one.key()) = other;
  QVERIFY(!kept.write());
  page_.reset();
  make_page();
  QVERIFY(sheet()->on_sheet().marks == std::vector<Mark>(10, Mark::none));
  QVERIFY2(left_behind().endsWith("has become another revision since it was marked, so it is marked again. "
                                  "Marked here and not sent: line 1, shown; line 2, shown; line 3, shown."),
           qPrintable(left_behind()));
  QFile file(shop_->session->station() + "/unsigned-check-outs.json");
  QVERIFY(file.open(QFile::WriteOnly));
  file.write("[{\"person\": \"to");
  file.close();
  page_.reset();
  refused_.clear();
  make_page();
  QVERIFY2(refused_.join(' ').contains("could not be read"), qPrintable(refused_.join(' ')));
  QVERIFY(!file.exists());  // put aside, not overwritten
  QCOMPARE(QDir(shop_->session->station()).entryList({"*.unreadable"}).size(), 1);
}

void CheckoutsTest::a_check_out_without_a_booking_begins_from_the_desk() {
  Place place;
  place.person = "jonas";
  place.target = "jointer-planer/jointing";
  page_->open(place);
  mark("1111111111");
  sign("2468");
  QCOMPARE(signed_ones().size(), std::size_t{1});
  QCOMPARE(signed_ones()[0].person, PersonId("jonas"));
  QCOMPARE(rung("jonas", "jointer-planer/jointing"), Rung::independent);
}

void CheckoutsTest::a_machine_without_a_sheet_says_so() {
  Place place;
  place.person = "jonas";
  place.target = "shaper";
  page_->open(place);
  QVERIFY2(text("under").contains("No run sheet has been issued for this machine"),
           qPrintable(text("under")));
  QVERIFY(!page_->findChild<QPushButton*>("blank")->isVisible());
  QVERIFY(!sheet()->isVisibleTo(page_.get()));
}

void CheckoutsTest::the_desk_cannot_sign() {
  shop_->session->hand_over();
  shop_->sit_down("ines", "1357");
  mark("1111111111");
  sign("2468");
  QVERIFY(signed_ones().empty());
  QCOMPARE(refused_.size(), 2);
}

void CheckoutsTest::a_measure_is_judged_in_words_while_it_is_typed() {
  make_measuring_page();
  mark("1111111111");
  QCOMPARE(text("suggested"), QString("Not finished. Line 11 is still to be measured."));
  press(Qt::Key_Down);
  QVERIFY2(said().contains("thickness, 0.990 to 1.010 in"), qPrintable(said()));
  measure("0.992");
  QVERIFY2(said().contains("0.992 in is within 0.990 to 1.010 in, no mark"), qPrintable(said()));
  QCOMPARE(text("suggested"), QString("Suggested: passed."));
  evening::grab(*page_, "checkouts-measured");
  field("measure")->clear();
  QTest::keyClicks(field("measure"), "25.7 mm");
  QVERIFY2(said().contains("25.7 mm (1.012 in) is over 0.990 to 1.010 in, by about 0.002 in"),
           qPrintable(said()));
  QCOMPARE(text("suggested"), QString("Suggested: failed. Critical and not shown: line 11."));
  evening::grab(*page_, "checkouts-measured-out");
  field("measure")->clear();
  QTest::keyClicks(field("measure"), "0.99");
  QVERIFY2(said().contains("0.99 in is within 0.990 to 1.010 in; so near the edge, marks of 0.001 in cannot "
                           "tell for sure"),
           qPrintable(said()));
  QCOMPARE(text("suggested"), QString("Suggested: passed."));
  // A line of its own is still to be marked as not shown, whatever was measured.
  press(Qt::Key_Escape);
  QCOMPARE(QApplication::focusWidget(), sheet());
  press(Qt::Key_3);
  QCOMPARE(text("suggested"), QString("Suggested: failed. Critical and not shown: line 11."));
}

void CheckoutsTest::enter_leads_into_a_measure_that_is_missing_and_on() {
  make_measuring_page();
  mark("111111111");
  press(Qt::Key_Return);
  QCOMPARE(sheet()->line(), 9);
  QCOMPARE(QApplication::focusWidget(), sheet());
  press(Qt::Key_Return);
  QCOMPARE(sheet()->line(), 10);
  QCOMPARE(QApplication::focusWidget(), field("measure"));
  QTest::keyClicks(QApplication::focusWidget(), "1.005");
  press(Qt::Key_Return);
  QCOMPARE(sheet()->line(), 9);
  QCOMPARE(QApplication::focusWidget(), sheet());
  press(Qt::Key_1);
  QCOMPARE(text("suggested"), QString("Suggested: passed."));
  // Up and Down leave a field for the lines beside it.
  press(Qt::Key_Down);
  press(Qt::Key_M);
  press(Qt::Key_Up);
  QCOMPARE(sheet()->line(), 9);
  QVERIFY(!field("measure")->isVisible());
}

void CheckoutsTest::an_instrument_too_coarse_to_tell_has_measured_nothing() {
  make_measuring_page();
  mark("1111111111");
  measure("1");
  press(Qt::Key_Tab);
  QCOMPARE(QApplication::focusWidget(), field("instrument"));
  QTest::keyClicks(QApplication::focusWidget(), "1/16");
  QVERIFY2(said().contains("Marks of 1/16 in are too coarse to tell 0.990 to 1.010 in"), qPrintable(said()));
  QCOMPARE(text("suggested"), QString("Not finished. Line 11 is still to be measured."));
  field("instrument")->clear();
  QTest::keyClicks(field("instrument"), "0.1 mm");
  QCOMPARE(text("suggested"), QString("Suggested: passed."));
}

void CheckoutsTest::gaps_and_angles_are_judged_in_their_own_words() {
  const auto in = [](long n, long d) { return Length{fraction(n, d), LengthUnit::inch}; };
  const Measure gap{MeasureKind::squareness, GapToMeasure{in(3, 1000), in(1, 1), in(1, 1000)}};
  const Measure fence{MeasureKind::angle,
                      AngleToMeasure{{fraction(90)}, {fraction(1, 4)}, {fraction(1, 4)}, {fraction(1, 10)}}};
  const Measure metric{MeasureKind::thickness, SizeToMeasure{{fraction(254, 10), LengthUnit::millimetre},
                                                             {fraction(4, 10), LengthUnit::millimetre},
                                                             {fraction(0), LengthUnit::millimetre},
                                                             {fraction(1, 10), LengthUnit::millimetre}}};
  QCOMPARE(asked_words(gap), QString("gap under the square, at most 0.003 in along 1 in"));
  QCOMPARE(judged_words(gap, {1, "0.005", "0.005 in", "0.001 in"}),
           QString("0.005 in is over 0.003 in along 1 in, by 0.002 in"));
  QCOMPARE(asked_words(fence), QString("angle, 89.75 to 90.25°"));
  QCOMPARE(judged_words(fence, {1, "89.5", "89.5 deg", "0.1 deg"}),
           QString("89.5° is under 89.75 to 90.25°, by 0.25°"));
  QCOMPARE(judged_words(metric, {1, "25.2", "25.2 mm", "0.1 mm"}),
           QString("25.2 mm is within 25.0 to 25.4 mm"));
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  QCOMPARE(judged_words(metric, {1, "25,2", "25.2 mm", "0.1 mm"}),
           QString("25,2 mm is within 25,0 to 25,4 mm"));
}

void CheckoutsTest::what_was_measured_is_signed_as_typed_and_shown_again() {
  make_measuring_page();
  mark("1111111111");
  measure("25.5mm");
  press(Qt::Key_Tab);
  QTest::keyClicks(QApplication::focusWidget(), "0.05 mm");
  sign("2468");
  QCOMPARE(signed_ones().size(), std::size_t{1});
  const auto marks = shop_->facts<db::SheetMarks>();
  QVERIFY(marks[0].measured == (std::vector<LineMeasured>{{11, "25.5mm", "25.5 mm", "0.05 mm"}}));
  QVERIFY(marks[0].marks.back() == Mark::none);
  for (const db::Entry& entry : shop_->session->store().entries())
    if (db::as<db::SheetMarks>(entry.fact))
      QVERIFY2(record_sentence(entry, record_reader(*shop_->session))
                   .contains("Measured: line 11, typed “25.5mm”: 25.5 mm, by marks of 0.05 mm."),
               qPrintable(record_sentence(entry, record_reader(*shop_->session))));
  // Nothing but the store knows of it now.
  make_measuring_page();
  QVERIFY(sheet()->on_sheet().marks[9] == Mark::shown);
  QCOMPARE(sheet()->on_sheet().typed[10].measure, QString("25.5mm"));
  sheet()->setFocus();
  press(Qt::Key_End);
  QVERIFY(!field("measure")->isVisible());
}

void CheckoutsTest::what_is_no_measure_is_kept_and_signs_nothing() {
  make_measuring_page();
  mark("1111111111");
  measure("a bit under");
  outcome()->setFocus();
  press(Qt::Key_S);
  QCOMPARE(outcome()->currentText(), QString("stopped"));
  sign("2468");
  QVERIFY(signed_ones().empty());
  make_measuring_page();
  QCOMPARE(sheet()->on_sheet().typed[10].measure, QString("a bit under"));
  measure("");
  field("measure")->clear();
  QTest::keyClicks(field("measure"), "1");
  QCOMPARE(text("suggested"), QString("Suggested: passed."));
}

}  // namespace checkouts_test

WM_PAGE_TEST(checkouts_test, CheckoutsTest)
#include "checkouts_test.moc"
