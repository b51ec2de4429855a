// The Diary, used by keyboard as somebody at the desk would.
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QtTest>

#include "app/diary/diary_page.h"
#include "app/diary/slots.h"
#include "evening.h"
#include "page_test.h"

namespace diary_test {

using namespace wm;
using namespace wm::app;

class DiaryTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void cleanup();
  void the_cursor_is_in_the_first_field_and_the_longest_wait_on_top();
  void a_name_then_enter_then_ctrl_enter_books_the_first_time_that_fits();
  void a_booked_time_is_offered_to_nobody_else();
  void what_is_missing_is_said_where_nothing_fits();
  void a_time_that_fits_no_more_is_not_booked();
  void a_booking_is_cancelled_with_a_reason_and_not_without();
  void arrived_late_and_not_come_are_one_key_each();
  void ctrl_g_goes_to_a_day();
  void a_person_is_put_on_the_waiting_list_and_taken_off();
  void nobody_sitting_here_books_nothing();
  void everyone_is_fitted_and_only_what_is_ticked_is_booked();
  void whoever_is_left_out_of_a_proposal_is_told_why();
  void leaving_a_proposal_books_nothing();
  void the_offers_for_the_desk_are_the_same();

 private:
  QString text(const char* name) const { return page_->findChild<QLabel*>(name)->text(); }
  QListView* list() const { return page_->findChild<QListView*>("list"); }
  QLineEdit* field() const { return page_->findChild<QLineEdit*>("person"); }
  QListWidget* waiting() const { return page_->findChild<QListWidget*>("waiting"); }
  QString row() const { return list()->currentIndex().data().toString(); }
  QStringList rows() const;
  void type_name(const char* name) {
    QTest::keyClicks(field(), name);
    QTest::keyClick(field(), Qt::Key_Return);
  }
  /// To wherever the cursor is.
  void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    QTest::keyClick(QApplication::focusWidget(), key, modifiers);
  }
  void choose_row(const QString& part);

  std::unique_ptr<evening::Shop> shop_;
  std::unique_ptr<DiaryPage> page_;
  QStringList told_, refused_;
};

void DiaryTest::init() {
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

void DiaryTest::cleanup() {
  page_.reset();
  shop_.reset();
}

QStringList DiaryTest::rows() const {
  QStringList out;
  for (int i = 0; i < list()->model()->rowCount(); ++i) out << list()->model()->index(i, 0).data().toString();
  return out;
}

void DiaryTest::choose_row(const QString& part) {
  for (int i = 0; i < list()->model()->rowCount(); ++i)
    if (rows()[i].contains(part)) return list()->setCurrentIndex(list()->model()->index(i, 0));
  QFAIL(qPrintable("no row has " + part + " among " + rows().join('\n')));
}

void DiaryTest::the_cursor_is_in_the_first_field_and_the_longest_wait_on_top() {
  QCOMPARE(QApplication::focusWidget(), field());
  QCOMPARE(waiting()->count(), 2);
  QCOMPARE(waiting()->item(0)->text(), QString("Ren Nakagawa"));
  QVERIFY(rows().join('\n').contains("Tola Adeyemi with Mara Devlin"));
  evening::grab(*page_, "diary-nobody");
}

void DiaryTest::a_name_then_enter_then_ctrl_enter_books_the_first_time_that_fits() {
  type_name("jonas li");
  QVERIFY2(text("under").contains("Jonas Lindqvist"), qPrintable(text("under")));
  QVERIFY2(row().startsWith("18:00–19:00, Jointer/planer, unit 1, free with Mara Devlin"), qPrintable(row()));
  QVERIFY2(row().contains("fits: Jonas ready, Mara able and in 17:00–20:00, 2 units free"),
           qPrintable(row()));
  evening::grab(*page_, "diary-fits");
  press(Qt::Key_Return, Qt::ControlModifier);
  QCOMPARE(refused_, QStringList());
  const auto booked = shop_->facts<db::Booking>();
  QCOMPARE(booked.size(), std::size_t{2});
  QCOMPARE(booked[1].person, PersonId("jonas"));
  QCOMPARE(booked[1].assessor, PersonId("mara"));
  QVERIFY(booked[1].from == evening::at("2026-11-27T00:00:00Z"));
  QVERIFY(booked[1].to == evening::at("2026-11-27T01:00:00Z"));
  QVERIFY2(told_.join(' ').contains("Jonas Lindqvist is booked"), qPrintable(told_.join(' ')));
  QVERIFY2(row().contains("Jonas Lindqvist with Mara Devlin"), qPrintable(row()));
  // Booked, so no longer waiting.
  QCOMPARE(shop_->facts<db::WaitingEnd>().size(), std::size_t{1});
  QCOMPARE(waiting()->count(), 1);
}

void DiaryTest::a_booked_time_is_offered_to_nobody_else() {
  type_name("jonas");
  // Tola has Mara from five to six, on whichever unit.
  QVERIFY(!rows().join('\n').contains("17:00–18:00, Jointer/planer, unit 2"));
  press(Qt::Key_Return, Qt::ControlModifier);
  const QString after = rows().join('\n');
  QVERIFY(!after.contains("18:00–19:00, Jointer/planer, unit 2, free"));
  QVERIFY2(after.contains("19:00–20:00, Jointer/planer, unit 1, free"), qPrintable(after));
}

void DiaryTest::what_is_missing_is_said_where_nothing_fits() {
  type_name("nakagawa");
  QVERIFY2(text("under").contains("Nothing fits Ren Nakagawa on Shaper"), qPrintable(text("under")));
  QVERIFY2(text("why_not").contains("not ready for a check-out"), qPrintable(text("why_not")));
  QVERIFY2(text("why_not").contains("missing: the paper “Induction”"), qPrintable(text("why_not")));
  evening::grab(*page_, "diary-nothing");
  press(Qt::Key_Return, Qt::ControlModifier);
  QCOMPARE(shop_->facts<db::Booking>().size(), std::size_t{1});
}

void DiaryTest::a_time_that_fits_no_more_is_not_booked() {
  type_name("jonas");
  // The clock runs on past the chosen time while the page is looked at.
  shop_->clock = evening::at("2026-11-27T00:20:00Z");
  press(Qt::Key_Return, Qt::ControlModifier);
  QCOMPARE(shop_->facts<db::Booking>().size(), std::size_t{1});
  QVERIFY2(refused_.join(' ').contains("does not fit any more"), qPrintable(refused_.join(' ')));
}

void DiaryTest::a_booking_is_cancelled_with_a_reason_and_not_without() {
  choose_row("Tola Adeyemi");
  press(Qt::Key_4, Qt::ControlModifier);
  QCOMPARE(QApplication::focusWidget(), page_->findChild<QLineEdit*>("reason"));
  press(Qt::Key_Return);
  QVERIFY(shop_->facts<db::Cancel>().empty());
  QTest::keyClicks(QApplication::focusWidget(), "ill");
  press(Qt::Key_Return);
  QCOMPARE(shop_->facts<db::Cancel>().size(), std::size_t{1});
  QCOMPARE(shop_->facts<db::Cancel>()[0].reason, std::string("ill"));
  QVERIFY(!rows().join('\n').contains("Tola Adeyemi"));
  type_name("jonas");
  QVERIFY2(row().startsWith("17:00–18:00"), qPrintable(row()));
}

void DiaryTest::arrived_late_and_not_come_are_one_key_each() {
  choose_row("Tola Adeyemi");
  press(Qt::Key_1, Qt::ControlModifier);
  QVERIFY2(row().endsWith("arrived"), qPrintable(row()));
  press(Qt::Key_2, Qt::ControlModifier);
  QVERIFY2(row().endsWith("late"), qPrintable(row()));
  press(Qt::Key_3, Qt::ControlModifier);
  QVERIFY2(row().endsWith("not come"), qPrintable(row()));
  QCOMPARE(refused_, QStringList());
  // Their time is free again.
  type_name("jonas");
  const QString now = rows().join('\n');
  QVERIFY2(now.contains("17:00–18:00, Jointer/planer, unit 1, free"), qPrintable(now));
}

void DiaryTest::ctrl_g_goes_to_a_day() {
  type_name("jonas");
  press(Qt::Key_G, Qt::ControlModifier);
  auto* day = page_->findChild<QLineEdit*>("day");
  QCOMPARE(QApplication::focusWidget(), day);
  QTest::keyClicks(day, "2026-12-04");
  press(Qt::Key_Return);
  QVERIFY2(text("heading").startsWith("Friday 4 December"), qPrintable(text("heading")));
  QVERIFY2(row().startsWith("12:00–13:00"), qPrintable(row()));
}

void DiaryTest::a_person_is_put_on_the_waiting_list_and_taken_off() {
  type_name("tola");
  press(Qt::Key_L, Qt::ControlModifier);
  QCOMPARE(refused_, QStringList());
  QCOMPARE(waiting()->count(), 3);
  press(Qt::Key_L, Qt::ControlModifier);
  QCOMPARE(waiting()->count(), 2);
}

void DiaryTest::nobody_sitting_here_books_nothing() {
  shop_->session->hand_over();
  type_name("jonas");
  press(Qt::Key_Return, Qt::ControlModifier);
  QCOMPARE(shop_->facts<db::Booking>().size(), std::size_t{1});
  QCOMPARE(refused_.size(), 1);
}

void DiaryTest::the_offers_for_the_desk_are_the_same() {
  const auto offers = fitting_slots(*shop_->session, "jonas", "jointer-planer/jointing", 6);
  QCOMPARE(offers.size(), std::size_t{4});
  QVERIFY(offers[0].from == evening::at("2026-11-27T00:00:00Z"));
  QVERIFY(offers[2].from == evening::at("2026-11-27T18:00:00Z"));
  QVERIFY(fitting_slots(*shop_->session, "ren", "shaper", 7).empty());
  QVERIFY(fitting_slots(*shop_->session, "nobody", "shaper", 7).empty());
}

void DiaryTest::everyone_is_fitted_and_only_what_is_ticked_is_booked() {
  press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
  auto* proposal = page_->findChild<QListWidget*>("proposal");
  QTRY_COMPARE(proposal->count(), 1);
  QVERIFY2(proposal->item(0)->text().contains("Jonas Lindqvist with Mara Devlin on Jointer/planer, unit"),
           qPrintable(proposal->item(0)->text()));
  // Right after Tola, so that Mara has no gap: she comes that evening anyway.
  QVERIFY2(proposal->item(0)->text().contains("18:00–19:00"), qPrintable(proposal->item(0)->text()));
  QVERIFY2(text("fit_state").contains("1 of 2 who wait are served. There is no better proposal."),
           qPrintable(text("fit_state")));
  evening::grab(*page_, "diary-fit");
  // Unticked, there is nothing to book.
  press(Qt::Key_Space);
  press(Qt::Key_Return, Qt::ControlModifier);
  QCOMPARE(shop_->facts<db::Booking>().size(), std::size_t{1});
  press(Qt::Key_Space);
  press(Qt::Key_Return, Qt::ControlModifier);
  QCOMPARE(refused_, QStringList());
  const auto booked = shop_->facts<db::Booking>();
  QCOMPARE(booked.size(), std::size_t{2});
  QCOMPARE(booked[1].person, PersonId("jonas"));
  QVERIFY(booked[1].from == evening::at("2026-11-27T00:00:00Z"));
  QCOMPARE(shop_->facts<db::WaitingEnd>().size(), std::size_t{1});
  QVERIFY2(told_.join(' ').contains("1 one-on-one is booked."), qPrintable(told_.join(' ')));
  QCOMPARE(QApplication::focusWidget(), field());
}

void DiaryTest::whoever_is_left_out_of_a_proposal_is_told_why() {
  press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
  auto* left = page_->findChild<QListWidget*>("left_out");
  QTRY_COMPARE(left->count(), 1);
  QVERIFY2(left->item(0)->text().startsWith("Ren Nakagawa, Shaper: Ren is not ready for a check-out"),
           qPrintable(left->item(0)->text()));
}

void DiaryTest::leaving_a_proposal_books_nothing() {
  press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
  QTRY_COMPARE(page_->findChild<QListWidget*>("proposal")->count(), 1);
  press(Qt::Key_Escape);
  QCOMPARE(QApplication::focusWidget(), field());
  QCOMPARE(shop_->facts<db::Booking>().size(), std::size_t{1});
  QCOMPARE(waiting()->count(), 2);
}

}  // namespace diary_test

WM_PAGE_TEST(diary_test, DiaryTest)
#include "diary_test.moc"
