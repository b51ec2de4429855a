// What becomes of a booking, by keyboard: held, for certain, moved, changed places, reminded of, no longer
// possible.
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QtTest>

#include "app/desk/desk_page.h"
#include "app/diary/diary_page.h"
#include "app/diary/fit_view.h"
#include "app/diary/fitting.h"
#include "app/diary/reminder.h"
#include "evening.h"
#include "page_test.h"

namespace diary_life_test {

using namespace wm;
using namespace wm::app;

class DiaryLifeTest : public QObject {
  Q_OBJECT

 private slots:
  void init() {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    apply_theme(*qApp, Shade::light);
    shop_ = std::make_unique<evening::Shop>();
    shop_->sit_down("ines", "1357");
    page_ = std::make_unique<DiaryPage>(*shop_->session);
    told_.clear();
    refused_.clear();
    QVERIFY(evening::put_up(*page_, *shop_->session, told_, refused_));
    page_->open({});
  }
  void cleanup() {
    page_.reset();
    shop_.reset();
  }

  void a_time_is_held_and_then_for_certain() {
    type_name("jonas");
    press(Qt::Key_J, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    const db::Booking held = shop_->facts<db::Booking>().back();
    // Through its beginning, since that comes sooner than two days.
    QVERIFY(held.held_through == std::optional(held.from));
    QVERIFY2(row().contains("held through 26 Nov 2026, 18:00; not for certain"), qPrintable(row()));
    QVERIFY(shop_->facts<db::WaitingEnd>().empty());
    evening::grab(*page_, "diary-held");
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    QCOMPARE(shop_->facts<db::Confirmed>().size(), std::size_t{1});
    QCOMPARE(shop_->facts<db::WaitingEnd>().size(), std::size_t{1});
    QVERIFY2(!row().contains("held"), qPrintable(row()));
  }

  void what_is_held_is_given_up_by_itself_and_offered_again() {
    hold_for(1);
    const auto rows_then = rows();
    QVERIFY2(rows_then.join('\n').contains("held through"), qPrintable(rows_then.join('\n')));
    shop_->clock = shop_->clock + 3600;
    page_->refresh();
    QVERIFY2(!rows().join('\n').contains("held through"), qPrintable(rows().join('\n')));
    QVERIFY2(rows().join('\n').contains("18:00–19:00, Jointer/planer, unit 1, free"),
             qPrintable(rows().join('\n')));
  }

  void whoever_has_a_time_held_is_offered_no_other() {
    type_name("jonas");
    press(Qt::Key_J, Qt::ControlModifier);
    press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
    auto* left = page_->findChild<QListWidget*>("left_out");
    QTRY_COMPARE(left->count(), 1);  // Ren
    QCOMPARE(page_->findChild<QListWidget*>("proposal")->count(), 0);
  }

  void a_booking_is_moved_and_leaves_its_time_free() {
    choose_row("Tola Adeyemi");
    press(Qt::Key_M, Qt::ControlModifier);
    QVERIFY2(text("under").contains("Choose another time for Tola Adeyemi"), qPrintable(text("under")));
    // Where it is already is no move.
    QVERIFY2(!today().contains("17:00–18:00, Jointer/planer, unit 1, free"), qPrintable(today()));
    choose_row("18:00–19:00, Jointer/planer, unit 1, free");
    evening::grab(*page_, "diary-move");
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    const auto all = shop_->facts<db::Booking>();
    QCOMPARE(all.size(), std::size_t{2});
    QVERIFY(!all[1].instead_of.empty());
    QVERIFY2(told_.join(' ').contains("Tola Adeyemi is moved"), qPrintable(told_.join(' ')));
    type_name("jonas");
    const QString now = today();
    QVERIFY2(now.contains("17:00–18:00, Jointer/planer, unit 1, free"), qPrintable(now));
    QVERIFY2(now.contains("18:00–19:00, Jointer/planer, unit 1, Tola"), qPrintable(now));
  }

  void esc_keeps_its_time() {
    choose_row("Tola Adeyemi");
    press(Qt::Key_M, Qt::ControlModifier);
    press(Qt::Key_Escape);
    QVERIFY(!page_->findChild<QPushButton*>("keep")->isVisible());
    QVERIFY2(row().contains("Tola Adeyemi with Mara Devlin"), qPrintable(row()));
    QCOMPARE(shop_->facts<db::Booking>().size(), std::size_t{1});
  }

  void two_change_places() {
    type_name("jonas");
    press(Qt::Key_Return, Qt::ControlModifier);
    choose_row("Tola Adeyemi with");
    press(Qt::Key_M, Qt::ControlModifier);
    choose_row("Jonas Lindqvist with");
    QVERIFY2(page_->findChild<QPushButton*>("book")->text().contains("Change places with Jonas"),
             qPrintable(page_->findChild<QPushButton*>("book")->text()));
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    const QString now = rows().join('\n');
    QVERIFY2(now.contains("17:00–18:00, Jointer/planer, unit 1, Jonas Lindqvist"), qPrintable(now));
    QVERIFY2(now.contains("18:00–19:00, Jointer/planer, unit 1, Tola Adeyemi"), qPrintable(now));
    QVERIFY2(told_.join(' ').contains("Tell both"), qPrintable(told_.join(' ')));
  }

  void what_is_held_stays_held_where_it_is_moved_or_changes_places() {
    type_name("jonas");
    press(Qt::Key_J, Qt::ControlModifier);
    choose_row("Jonas Lindqvist with");
    press(Qt::Key_M, Qt::ControlModifier);
    choose_row("Tola Adeyemi with");
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    const auto all = shop_->facts<db::Booking>();
    const auto of = [&](const char* who) {
      return *std::find_if(all.rbegin(), all.rend(), [&](const auto& each) { return each.person == who; });
    };
    // To the earlier beginning, and no longer.
    QVERIFY(of("jonas").held_through == std::optional(of("jonas").from));
    QVERIFY(!of("tola").held_through);
    QVERIFY(shop_->facts<db::Confirmed>().empty());
    QVERIFY(shop_->facts<db::WaitingEnd>().empty());
    choose_row("Jonas Lindqvist with");
    press(Qt::Key_M, Qt::ControlModifier);
    choose_row("19:00–20:00, Jointer/planer, unit 1, free");
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    QVERIFY(shop_->facts<db::Booking>().back().held_through);
    QVERIFY(shop_->facts<db::WaitingEnd>().empty());
  }

  void nobody_changes_places_with_a_time_for_which_they_are_not_ready() {
    type_name("jonas");
    choose_row_after("27 November", "free");
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    // Of her last day she has today.
    const Day tomorrow = shop_->session->zone().day(evening::now) + 1;
    shop_->sit_down("odile", "8642");
    QVERIFY(shop_->session->commit(db::EnterFact{Suspend{"tola", Everything{}, tomorrow}},
                                   shop_->session->zone().start(tomorrow)));
    shop_->sit_down("ines", "1357");
    choose_row("Tola Adeyemi with");
    press(Qt::Key_M, Qt::ControlModifier);
    choose_row("Jonas Lindqvist with");
    press(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(refused_.join(' ').contains("Tola will not be ready then"), qPrintable(refused_.join(' ')));
    QCOMPARE(shop_->facts<db::Booking>().size(), std::size_t{2});
  }

  void whose_booking_is_cancelled_waits_again() {
    type_name("jonas");
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(shop_->facts<db::WaitingEnd>().size(), std::size_t{1});
    choose_row("Jonas Lindqvist with");
    press(Qt::Key_4, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), "the assessor is ill");
    press(Qt::Key_Return);
    QVERIFY2(told_.last().contains("on the waiting list again, since 24 Nov 2026"), qPrintable(told_.last()));
  }

  void a_time_across_midnight_is_booked() {
    const Day today = shop_->session->zone().day(evening::now);
    QVERIFY(shop_->manage(
        db::OtherHours{"mara", db::Doing::open, today, today, {{23 * 60 + 30, 24 * 60}}, 1, ""}));
    QVERIFY(shop_->manage(db::OtherHours{"mara", db::Doing::open, today + 1, today + 1, {{0, 60}}, 1, ""}));
    type_name("jonas");
    choose_row("23:30–00:30");
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    QVERIFY(shop_->facts<db::Booking>().back().person == "jonas");
  }

  void whoever_is_to_teach_is_not_offered_for_the_check_out_after_it() {
    Rulebook book = evening::rulebook();
    book.version = 2;
    book.tiers[0].other_checks_out = true;
    shop_->sit_down("odile", "8642");
    book.effective_from = shop_->clock + std::int64_t{60};
    shop_->enter(db::PublishRulebook{book});
    shop_->clock = shop_->clock + 120;
    shop_->sit_down("ines", "1357");
    shop_->enter(db::EnterShopFact{db::Booking{"jonas", "mara", "jp2", "jointer-planer/jointing",
                                               evening::at("2026-11-27T00:00:00Z"),
                                               evening::at("2026-11-27T01:00:00Z"), db::Purpose::teach}});
    type_name("jonas");
    // All that Mara has to offer lies after it.
    QVERIFY2(!rows().join('\n').contains("free"), qPrintable(rows().join('\n')));
    QVERIFY2(text("why_not").contains("another assessor than who taught Jonas"), qPrintable(text("why_not")));
  }

  void a_reminder_is_copied() {
    choose_row("Tola Adeyemi");
    press(Qt::Key_R, Qt::ControlModifier);
    const QString copied = QApplication::clipboard()->text();
    QVERIFY2(copied.startsWith("Tola,\n\nYour check-out is on Jointer/planer, unit 1: "), qPrintable(copied));
    QVERIFY2(copied.contains("Thursday 26 November 2026, 17:00–18:00, with Mara Devlin, at Cedar Street "
                             "Workshop."),
             qPrintable(copied));
    QVERIFY2(copied.contains("If you can't come"), qPrintable(copied));
  }

  void reminders_of_a_day_are_printed_and_noted() {
    choose_row("Tola Adeyemi");
    press(Qt::Key_P, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    QVERIFY2(shop_->facts<db::Printed>().back().title.starts_with("Reminders for Thursday 26 November 2026"),
             shop_->facts<db::Printed>().back().title.c_str());
  }

  void a_booking_that_is_no_longer_possible_is_shown_with_what_to_do_here_and_at_the_desk() {
    shop_->enter(db::PutOutOfService{"jp1", "7", "3", "blade guard loose", "ines"});
    choose_row("Tola Adeyemi");
    QVERIFY2(row().contains("no longer possible: The machine 'unit 1' (jointer-planer) is out of service."),
             qPrintable(row()));
    QVERIFY2(text("trouble").contains("Choose another machine."), qPrintable(text("trouble")));
    QVERIFY2(text("under").contains("No longer possible: 1 of these"), qPrintable(text("under")));
    evening::grab(*page_, "diary-trouble");
    seen_at_the_desk(
        {"Bookings that are no longer possible", "Tola Adeyemi, Thu 26 Nov, 17:00: The machine"});
    // Moved to the other unit it is possible.
    press(Qt::Key_M, Qt::ControlModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    QVERIFY2(row().contains("unit 2, Tola Adeyemi"), qPrintable(row()));
    QVERIFY2(!row().contains("no longer possible"), qPrintable(row()));
  }

  void somebody_has_arrived_and_then_it_is_no_longer_possible() {
    choose_row("Tola Adeyemi");
    press(Qt::Key_1, Qt::ControlModifier);
    shop_->clock = evening::at("2026-11-26T23:05:00Z");
    shop_->enter(db::PutOutOfService{"jp1", "7", "3", "blade guard loose", "ines"});
    choose_row("Tola Adeyemi");
    QVERIFY2(row().contains("no longer possible: The machine 'unit 1'"), qPrintable(row()));
    seen_at_the_desk(
        {"Bookings that are no longer possible", "Tola Adeyemi, Thu 26 Nov, 17:00: The machine"});
  }

  void whoever_will_not_be_ready_is_said_so() {
    const auto done = shop_->session->commit(
        db::EnterFact{Suspend{"tola", Everything{}, shop_->session->zone().day(evening::now)}});
    QVERIFY(done);
    QVERIFY2(rows().join('\n').contains("no longer possible: Tola will not be ready then: they are paused."),
             qPrintable(rows().join('\n')));
  }

  void what_is_missing_for_a_booking_is_said_with_it() {
    RecordId paper;
    for (const db::Entry* entry : shop_->session->store().of_kind("document"))
      if (db::as<Document>(entry->fact)->person == "tola") paper = entry->id;
    shop_->sit_down("odile", "8642");
    shop_->enter(db::StrikeOutRecord{paper, "another's"});
    shop_->sit_down("ines", "1357");
    choose_row("Tola Adeyemi");
    QVERIFY2(row().contains("no longer possible: Tola will not be ready then; missing: the paper “"),
             qPrintable(row()));
    QVERIFY2(text("trouble").contains("Let them do it before, or move the booking."),
             qPrintable(text("trouble")));
  }

  void times_not_come_are_counted() {
    choose_row("Tola Adeyemi");
    press(Qt::Key_3, Qt::ControlModifier);
    type_name("tola");
    QVERIFY2(text("under").contains("Booked and not come: 1 times, the last on 26 Nov 2026."),
             qPrintable(text("under")));
  }

  void somebody_is_booked_to_be_taught() {
    auto* purpose = page_->findChild<QComboBox*>("purpose");
    type_name("jonas");
    purpose->setCurrentIndex(purpose->findText("teaching"));
    emit purpose->activated(purpose->currentIndex());
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    QVERIFY(shop_->facts<db::Booking>().back().purpose == db::Purpose::teach);
    // Taught is not checked out: still waiting.
    QVERIFY(shop_->facts<db::WaitingEnd>().empty());
  }

  void fitting_everyone_keeps_to_the_longest_wait_and_to_what_assessors_take_on() {
    db::DiaryRules rules;
    rules.longest_wait = 20;
    QVERIFY(shop_->manage(rules));
    QVERIFY(shop_->manage(db::TakesOn{"mara", 60, {}, {}}));
    Fitting fitting(*shop_->session);
    std::shared_ptr<const Fitted> found;
    connect(&fitting, &Fitting::done, this, [&](std::shared_ptr<const Fitted> fitted) { found = fitted; });
    fitting.begin(7);
    QTRY_VERIFY(found);
    QCOMPARE(found->question.longest_wait, 20);
    QVERIFY(comes_first(found->question, found->question.waiters[0]));   // Ren, 23 days
    QVERIFY(!comes_first(found->question, found->question.waiters[1]));  // Jonas, 2 days
    // Mara gives an hour tonight already, so that Jonas comes on another day.
    QCOMPARE(found->proposal.placed.size(), std::size_t{1});
    const Instant from = found->question.openings[found->proposal.placed[0].opening].when.from;
    QVERIFY(from == evening::at("2026-11-27T18:00:00Z") || from == evening::at("2026-11-27T19:00:00Z"));
  }

  void one_more_assessor_would_serve_whom_a_proposal_leaves_out() {
    // Mara is away for all of the four weeks.
    const Day today = shop_->session->zone().day(evening::now);
    const auto away = shop_->manage(db::OtherHours{"mara", db::Doing::open, today, today + 40, {}, 1, ""});
    QVERIFY(away);
    press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
    QTRY_COMPARE(page_->findChild<QListWidget*>("left_out")->count(), 2);
    auto* helps = page_->findChild<QLabel*>("helps");
    QTRY_VERIFY(helps->isVisible());
    // Jonas is ready; Ren is not, whoever is in.
    QCOMPARE(helps->text(),
             QString("Hours every Monday of one more able to assess Jointer/planer would serve 1 person."));
    evening::grab(*page_, "diary-helps");
  }

 private:
  void seen_at_the_desk(const QStringList& words) {
    {
      DeskPage desk(*shop_->session);
      desk.resize(1216, 740);
      desk.show();
      desk.refresh();
      desk.open({});
      QStringList seen;
      for (const QLabel* label : desk.findChildren<QLabel*>()) seen << label->text();
      for (const QString& each : words) QVERIFY2(seen.join('\n').contains(each), qPrintable(seen.join('\n')));
      evening::grab(desk, "desk-trouble");
    }
    page_->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(page_.get()));
    list()->setFocus();
  }
  QString text(const char* name) const { return page_->findChild<QLabel*>(name)->text(); }
  QListView* list() const { return page_->findChild<QListView*>("list"); }
  QLineEdit* field() const { return page_->findChild<QLineEdit*>("person"); }
  QString row() const { return list()->currentIndex().data().toString(); }
  QStringList rows() const {
    QStringList out;
    for (int i = 0; i < list()->model()->rowCount(); ++i)
      out << list()->model()->index(i, 0).data().toString();
    return out;
  }
  /// The rows before the next day's.
  QString today() const { return rows().join('\n').section("Friday 27 November", 0, 0); }
  void type_name(const char* name) {
    QTest::keyClicks(field(), name);
    QTest::keyClick(field(), Qt::Key_Return);
  }
  void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    QTest::keyClick(QApplication::focusWidget(), key, modifiers);
  }
  void choose_row(const QString& part) {
    for (int i = 0; i < list()->model()->rowCount(); ++i)
      if (rows()[i].contains(part)) return list()->setCurrentIndex(list()->model()->index(i, 0));
    QFAIL(qPrintable("no row has " + part + " among " + rows().join('\n')));
  }
  void choose_row_after(const QString& day, const QString& part) {
    const QStringList all = rows();
    for (int i = 0, seen = -1; i < static_cast<int>(all.size()); ++i) {
      if (all[i].contains(day)) seen = i;
      if (seen >= 0 && i > seen && all[i].contains(part))
        return list()->setCurrentIndex(list()->model()->index(i, 0));
    }
    QFAIL(qPrintable("no row after " + day + " has " + part));
  }
  /// By the shop's own rule a time is held for so many hours.
  void hold_for(int hours) {
    db::DiaryRules rules;
    rules.hold_hours = hours;
    QVERIFY(shop_->manage(rules));
    type_name("jonas");
    press(Qt::Key_J, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
  }

  std::unique_ptr<evening::Shop> shop_;
  std::unique_ptr<DiaryPage> page_;
  QStringList told_, refused_;
};

}  // namespace diary_life_test

WM_PAGE_TEST(diary_life_test, DiaryLifeTest)
#include "diary_life_test.moc"
