// Check-outs that two assessors witness, by keyboard: booked, moved, fitted, signed, and on paper.
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QTableWidget>
#include <QtTest>

#include "app/calendars/events.h"
#include "app/checkouts/blank_sheet.h"
#include "app/checkouts/checkouts_page.h"
#include "app/checkouts/paper_entry.h"
#include "app/checkouts/sheet_view.h"
#include "app/desk/desk_page.h"
#include "app/diary/bookings.h"
#include "app/diary/diary_page.h"
#include "app/diary/reminder.h"
#include "app/diary/trouble.h"
#include "app/lists/record_reader.h"
#include "app/words/record_words.h"
#include "db/journal/subject.h"
#include "evening.h"
#include "page_test.h"

namespace two_assessors_test {

using namespace wm;
using namespace wm::app;

/// Samir Haddad assesses too, from six to eight on Thursdays; by the rules of now two witness a check-out.
class TwoAssessorsTest : public QObject {
  Q_OBJECT

 private slots:
  void init() {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    apply_theme(*qApp, Shade::light);
    shop_ = std::make_unique<evening::Shop>();
    shop_->sit_down("odile", "8642");
    shop_->enter(db::EnterPerson{evening::person("samir", "Samir", "Haddad", "0031"), {}});
    shop_->enter(db::EnterShopFact{db::RoleGiven{"samir", db::Role::instructor}});
    shop_->enter(db::ChoosePin{"samir", "9753"});
    shop_->enter(db::EnterFact{Appoint{"samir", Everything{}, true, day_of({2027, 12, 31})}});
    hours_ =
        shop_->session->commit(db::EnterShopFact{db::Hours{"samir", 3, 18 * 60, 20 * 60}})->entries[0].id;
    ask_for_two(true);
    shop_->sit_down("ines", "1357");
    told_.clear();
    refused_.clear();
  }
  void cleanup() {
    page_.reset();
    shop_.reset();
  }

  void a_time_that_fits_both_is_booked_with_both() {
    open_diary();
    type_name("jonas");
    QVERIFY2(row().startsWith("18:00–19:00, Jointer/planer, unit 1, free with Mara Devlin and Samir Haddad"),
             qPrintable(row()));
    QVERIFY2(row().contains("fits: Jonas ready, Mara and Samir able and in 18:00–20:00"), qPrintable(row()));
    evening::grab(*page_, "diary-two-assessors");
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    const db::Booking booked = shop_->facts<db::Booking>().back();
    QCOMPARE(booked.assessor, PersonId("mara"));
    QCOMPARE(booked.second, PersonId("samir"));
    QVERIFY2(told_.join(' ').contains("with Mara Devlin and Samir Haddad."), qPrintable(told_.join(' ')));
    QVERIFY2(row().contains("Jonas Lindqvist with Mara Devlin and Samir Haddad"), qPrintable(row()));
    QVERIFY2(!row().contains("no longer possible"), qPrintable(row()));
    // What is told of it, and in whose calendars it is.
    const BookingLine line = line_of("jonas");
    QVERIFY2(reminder_text(*shop_->session, line).contains("with Mara Devlin and Samir Haddad, at"),
             qPrintable(reminder_text(*shop_->session, line)));
    QVERIFY2(record_sentence(entry(line.id), record_reader(*shop_->session))
                 .contains("Second assessor: Samir Haddad."),
             qPrintable(record_sentence(entry(line.id), record_reader(*shop_->session))));
    for (const char* who : {"jonas", "mara", "samir"}) {
      const auto events = events_of(*shop_->session, OfPerson{who});
      const auto at = std::ranges::find(events, line.booking.from,
                                        [](const calendar::CalendarEvent& each) { return each.when.from; });
      QVERIFY2(at != events.end(), who);
      QVERIFY(at->summary.ends_with("Jonas Lindqvist with Mara Devlin and Samir Haddad"));
      QVERIFY(at->description.find("Witnessed by two assessors: Mara Devlin and Samir Haddad.") !=
              std::string::npos);
    }
  }

  void to_be_taught_one_is_enough() {
    open_diary();
    type_name("jonas");
    auto* purpose = page_->findChild<QComboBox*>("purpose");
    purpose->setFocus();
    QTest::keyClicks(purpose, "te");
    QVERIFY2(today().contains("free with Mara Devlin, ") || today().contains("free with Mara Devlin\n"),
             qPrintable(today()));
    QVERIFY2(!today().contains("Mara Devlin and"), qPrintable(today()));
  }

  void where_no_two_come_together_it_says_so_and_what_would_help() {
    shop_->sit_down("odile", "8642");
    shop_->enter(db::StrikeOutRecord{hours_, "not on Thursdays any more"});
    shop_->enter(db::EnterShopFact{db::Hours{"samir", 1, 18 * 60, 20 * 60}});  // Tuesdays, without Mara
    shop_->sit_down("ines", "1357");
    open_diary();
    type_name("jonas");
    QVERIFY2(text("under").contains("Nothing fits Jonas Lindqvist"), qPrintable(text("under")));
    const QString why = text("why_not");
    QVERIFY2(why.contains("is witnessed by two assessors at once, and in these days no two are in"),
             qPrintable(why));
    QVERIFY2(why.contains("What would help:"), qPrintable(why));
    QVERIFY2(why.contains("a second assessor at a time at which there is one: more hours of Mara Devlin or "
                          "Samir Haddad"),
             qPrintable(why));
  }

  void a_booking_with_one_of_before_is_no_longer_possible_and_is_moved_to_two() {
    open_diary();
    choose_row("Tola Adeyemi");
    QVERIFY2(row().contains("no longer possible"), qPrintable(row()));
    QVERIFY2(text("trouble").contains("Two assessors witness a check-out here, and this booking has one"),
             qPrintable(text("trouble")));
    press(Qt::Key_M, Qt::ControlModifier);
    choose_row("18:00–19:00, Jointer/planer, unit 1, free with Mara Devlin and Samir Haddad");
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    QCOMPARE(shop_->facts<db::Booking>().back().second, PersonId("samir"));
    choose_row("Tola Adeyemi");
    QVERIFY2(!row().contains("no longer possible"), qPrintable(row()));
  }

  void when_the_second_can_not_come_any_more_it_is_shown_at_once() {
    open_diary();
    type_name("jonas");
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(troubles_of("jonas"), QString());
    shop_->sit_down("odile", "8642");
    const auto pause = shop_->session->commit(db::EnterFact{Suspend{"samir", Everything{}, std::nullopt}});
    QVERIFY(troubles_of("jonas").contains("Samir Haddad is not able to assess"));
    choose_row("Jonas Lindqvist");
    QVERIFY2(row().contains("no longer possible: Samir Haddad is not able to assess"), qPrintable(row()));
    shop_->enter(db::StrikeOutRecord{pause->entries[0].id, "was somebody else"});
    QCOMPARE(troubles_of("jonas"), QString());
    shop_->enter(db::StrikeOutRecord{hours_, "not on Thursdays any more"});
    shop_->enter(db::EnterShopFact{db::Hours{"samir", 1, 18 * 60, 20 * 60}});
    QVERIFY(troubles_of("jonas").contains("Samir Haddad is not in, or busy"));
  }

  void two_who_change_places_change_assessors_too() {
    shop_->enter(db::EnterShopFact{booked("jonas", "jp2", "2026-11-27T00:00:00Z", "mara", "samir")});
    shop_->sit_down("odile", "8642");
    shop_->enter(db::EnterShopFact{db::Hours{"samir", 4, 12 * 60, 14 * 60}});
    shop_->sit_down("ines", "1357");
    shop_->enter(db::EnterShopFact{booked("tola", "jp1", "2026-11-27T18:00:00Z", "samir", "mara")});
    open_diary();
    choose_row("Jonas Lindqvist with Mara Devlin and Samir Haddad");
    press(Qt::Key_M, Qt::ControlModifier);
    choose_row("Tola Adeyemi with Samir Haddad and Mara Devlin");
    press(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(refused_, QStringList());
    const auto all = shop_->facts<db::Booking>();
    const db::Booking& jonas = all[all.size() - 2];
    QCOMPARE(jonas.person, PersonId("jonas"));
    QCOMPARE(jonas.assessor, PersonId("samir"));
    QCOMPARE(jonas.second, PersonId("mara"));
    QCOMPARE(all.back().assessor, PersonId("mara"));
    QCOMPARE(all.back().second, PersonId("samir"));
  }

  void everyone_is_fitted_with_two_where_two_are_asked_for() {
    open_diary();
    press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
    auto* proposal = page_->findChild<QListWidget*>("proposal");
    QTRY_COMPARE(proposal->count(), 1);
    QVERIFY2(proposal->item(0)->text().contains("Jonas Lindqvist with Mara Devlin and Samir Haddad on"),
             qPrintable(proposal->item(0)->text()));
    press(Qt::Key_Return, Qt::ControlModifier);
    QTRY_COMPARE(shop_->facts<db::Booking>().back().second, PersonId("samir"));
  }

  void one_more_assessor_would_help_beside_those_there_are() {
    shop_->sit_down("odile", "8642");
    shop_->enter(db::StrikeOutRecord{hours_, "not on Thursdays any more"});
    shop_->sit_down("ines", "1357");
    open_diary();
    press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
    auto* helps = page_->findChild<QLabel*>("helps");
    QTRY_VERIFY(helps->isVisible());
    // Only while Mara is in: on Thursdays and Fridays.
    QVERIFY2(
        helps->text().contains("Hours every Thursday of one more able to assess Jointer/planer would serve"),
        qPrintable(helps->text()));
  }

  void the_desk_says_both() {
    shop_->enter(db::EnterShopFact{booked("jonas", "jp2", "2026-11-27T00:00:00Z", "mara", "samir")});
    DeskPage desk(*shop_->session);
    QVERIFY(evening::put_up(desk, *shop_->session, told_, refused_));
    desk.open({});
    auto* due = desk.findChild<QTableWidget*>("due");
    QCOMPARE(due->item(due->rowCount() - 1, 3)->text(), QString("Mara Devlin and Samir Haddad"));
    Place jonas;
    jonas.page = "desk";
    jonas.person = "jonas";
    jonas.target = "jointer-planer/jointing";
    desk.open(jonas);
    QVERIFY2(desk.findChild<QLabel*>("next_step")->text().contains("with Mara Devlin and Samir Haddad"),
             qPrintable(desk.findChild<QLabel*>("next_step")->text()));
  }

  void both_sign_it_at_the_machine() {
    open_checkouts();
    QVERIFY(second()->isVisible());
    QCOMPARE(second()->currentText(), QString("Samir Haddad"));
    mark();
    page_->findChild<QComboBox*>("hand")->setFocus();
    QTest::keyClicks(QApplication::focusWidget(), "not");
    press(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(refused_.join(' ').contains("Samir Haddad has not signed it yet"),
             qPrintable(refused_.join(' ')));
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("second_pin"));
    evening::grab(*page_, "checkouts-two-assessors");
    QTest::keyClicks(QApplication::focusWidget(), "9753");
    press(Qt::Key_Return);
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("pin"));
    // A wrong PIN of the second signs nothing, and what was marked stays.
    field("second_pin")->setText("1111");
    field("pin")->setFocus();
    QTest::keyClicks(QApplication::focusWidget(), "2468");
    refused_.clear();
    press(Qt::Key_Return);
    QVERIFY2(refused_.join(' ').contains("not Samir Haddad's PIN"), qPrintable(refused_.join(' ')));
    QVERIFY(shop_->facts<db::SheetMarks>().empty());
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("second_pin"));
    QTest::keyClicks(QApplication::focusWidget(), "9753");
    press(Qt::Key_Return);
    QTest::keyClicks(QApplication::focusWidget(), "2468");
    refused_.clear();
    press(Qt::Key_Return);
    QCOMPARE(refused_, QStringList());
    const auto witnessed = shop_->facts<db::Witnessed>();
    QCOMPARE(witnessed.size(), std::size_t{1});
    QCOMPARE(witnessed[0].assessor, PersonId("samir"));
    QCOMPARE(shop_->facts<db::Signature>().size(), std::size_t{2});
    QVERIFY(field("second_pin")->text().isEmpty());
    const db::Entry& said = *shop_->session->store().of_kind("witnessed").back();
    QVERIFY2(record_sentence(said, record_reader(*shop_->session))
                 .startsWith("Samir Haddad signed it as the second assessor: "),
             qPrintable(record_sentence(said, record_reader(*shop_->session))));
    // The marks were before the second's eyes: they are not asked to mark it apart; another is.
    shop_->sit_down("samir", "9753");
    page_->refresh();
    QVERIFY(!page_->findChild<QWidget*>("mark_apart")->isVisible());
  }

  void whoever_is_chosen_twice_is_told_and_another_choice_is_kept() {
    open_checkouts();
    mark();
    page_->findChild<QComboBox*>("hand")->setFocus();
    QTest::keyClicks(QApplication::focusWidget(), "not");
    second()->setFocus();
    QTest::keyClicks(second(), "Mara");
    emit second()->activated(second()->currentIndex());
    press(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(refused_.join(' ').contains("Mara Devlin is chosen twice"), qPrintable(refused_.join(' ')));
    QCOMPARE(QApplication::focusWidget(), second());
    // As chosen, after something else was committed too, and after the program was started anew.
    page_->refresh();
    QCOMPARE(second()->currentText(), QString("Mara Devlin"));
    page_.reset();
    put_up(std::make_unique<CheckoutsPage>(*shop_->session, nullptr, evening::sheets()));
    QCOMPARE(second()->currentText(), QString("Mara Devlin"));
  }

  void where_one_is_enough_no_second_is_asked_for() {
    shop_->sit_down("odile", "8642");
    ask_for_two(false);
    open_checkouts();
    QVERIFY(!second()->isVisible());
    QVERIFY(!field("second_pin")->isVisible());
    mark();
    page_->findChild<QComboBox*>("hand")->setFocus();
    QTest::keyClicks(QApplication::focusWidget(), "not");
    press(Qt::Key_Return, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), "2468");
    press(Qt::Key_Return);
    QCOMPARE(shop_->facts<db::Signature>().size(), std::size_t{1});
    QVERIFY(shop_->facts<db::Witnessed>().empty());
  }

  void the_paper_has_a_line_for_the_second_and_both_names_are_typed_in() {
    const QString paper = blank_sheet_html(evening::sheets()[0], true);
    QVERIFY2(paper.contains("Second assessor: I watched it too, and say the same"), qPrintable(paper));
    QVERIFY(!blank_sheet_html(evening::sheets()[0], false).contains("Second assessor"));
    shop_->enter(db::EnterShopFact{db::Printed{"Run sheet", 1, std::string(64, 'a'), "7K2Q9X"}});
    shop_->clock = shop_->clock + 86400;
    open_checkouts();
    shop_->sit_down("odile", "8642");
    page_->refresh();
    press(Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
    auto* entry = page_->findChild<PaperEntry*>();
    const auto type_in = [&](const char* name, const QString& words) {
      auto* at = entry->findChild<QWidget*>(name);
      at->setFocus();
      QTest::keyClicks(at, words);
    };
    type_in("form", "7k2q9x");
    type_in("paper_sheet", "Joi");
    QVERIFY(entry->findChild<QWidget*>("paper_second")->isVisible());
    type_in("paper_member", "tola");
    press(Qt::Key_Return);
    type_in("paper_unit", "Joi");
    type_in("paper_assessor", "mara");
    press(Qt::Key_Return);
    type_in("paper_outcome", "pas");
    type_in("paper_day", "26 November 2026");
    type_in("paper_time", "18:30");
    auto* lines = entry->findChild<SheetView*>();
    lines->setFocus();
    press(Qt::Key_Home);
    for (int line = 0; line < 10; ++line) {
      if (line > 0) press(Qt::Key_Down);
      press(Qt::Key_1);
    }
    refused_.clear();
    press(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(refused_.join(' ').contains("Two assessors sign a check-out on this machine, and one is named"),
             qPrintable(refused_.join(' ')));
    QCOMPARE(QApplication::focusWidget(), entry->findChild<QWidget*>("paper_second"));
    type_in("paper_second", "samir");
    press(Qt::Key_Return);
    evening::grab(*page_, "checkouts-paper-by-two");
    press(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(told_.join(' ').contains("entered: the check-out of Tola Adeyemi was passed"),
             qPrintable(told_.join(' ') + refused_.join(' ')));
    QCOMPARE(shop_->facts<db::Witnessed>()[0].assessor, PersonId("samir"));
    QVERIFY(shop_->facts<db::Signature>().empty());
    QTest::qWait(QApplication::keyboardInputInterval() + 50);
    type_in("paper_sheet", "Joi");
    entry->findChild<QCheckBox*>("paper_apart")->setChecked(true);
    QVERIFY(!entry->findChild<QWidget*>("paper_second")->isVisible());
  }

 private:
  /// By a manager, who sits here.
  void ask_for_two(bool two) {
    Rulebook rulebook = evening::rulebook();
    rulebook.version = shop_->session->store().rulebooks().back().version + 1;
    rulebook.effective_from = shop_->clock + 1;
    rulebook.tiers[0].two_assessors = two;
    shop_->enter(db::PublishRulebook{rulebook});
    shop_->clock = shop_->clock + 60;
  }
  static db::Booking booked(const char* person, const char* unit, const char* from, const char* assessor,
                            const char* second) {
    db::Booking out{
        person, assessor, unit, "jointer-planer/jointing", evening::at(from), evening::at(from) + 3600};
    out.second = second;
    return out;
  }

  void put_up(std::unique_ptr<Page> page) {
    page_ = std::move(page);
    QVERIFY(evening::put_up(*page_, *shop_->session, told_, refused_));
    page_->open({});
  }
  void open_diary() { put_up(std::make_unique<DiaryPage>(*shop_->session)); }
  /// Mara sits at the machine, with Tola, who is booked with both of them.
  void open_checkouts() {
    const bool two = shop_->session->two_check_out("jointer-planer", shop_->clock);
    shop_->sit_down("odile", "8642");
    db::Booking again = booked("tola", "jp1", "2026-11-27T00:00:00Z", "samir", two ? "mara" : "");
    again.instead_of = line_of("tola").id;
    if (!again.instead_of.empty()) shop_->enter(db::EnterShopFact{again});
    if (shop_->clock < evening::at("2026-11-27T00:10:00Z"))
      shop_->clock = evening::at("2026-11-27T00:10:00Z");
    shop_->sit_down("mara", "2468");
    put_up(std::make_unique<CheckoutsPage>(*shop_->session, nullptr, evening::sheets()));
    if (two && !again.instead_of.empty())
      QVERIFY2(text("under").contains("with Samir Haddad and Mara Devlin"), qPrintable(text("under")));
  }
  BookingLine line_of(const PersonId& person) const {
    for (const BookingLine& line : bookings(*shop_->session, {shop_->clock, last_instant}))
      if (line.booking.person == person) return line;
    return {};
  }
  const db::Entry& entry(const RecordId& id) const { return *shop_->session->entry(id); }
  QString troubles_of(const PersonId& person) const {
    for (const Trouble& each : troubles(*shop_->session, shop_->session->now()))
      if (each.line.booking.person == person) return QString::fromStdString(each.problem.what);
    return {};
  }
  QString text(const char* name) const { return page_->findChild<QLabel*>(name)->text(); }
  QLineEdit* field(const char* name) const { return page_->findChild<QLineEdit*>(name); }
  QComboBox* second() const { return page_->findChild<QComboBox*>("second"); }
  QListView* list() const { return page_->findChild<QListView*>("list"); }
  QString row() const { return list()->currentIndex().data().toString(); }
  QStringList rows() const {
    QStringList out;
    for (int i = 0; i < list()->model()->rowCount(); ++i)
      out << list()->model()->index(i, 0).data().toString();
    return out;
  }
  QString today() const { return rows().join('\n').section("Friday 27 November", 0, 0); }
  void choose_row(const QString& part) {
    for (int i = 0; i < list()->model()->rowCount(); ++i)
      if (rows()[i].contains(part)) {
        list()->setCurrentIndex(list()->model()->index(i, 0));
        return list()->setFocus();
      }
    QFAIL(qPrintable("no row has " + part + " among " + rows().join('\n')));
  }
  void type_name(const char* name) {
    QTest::keyClicks(field("person"), name);
    QTest::keyClick(field("person"), Qt::Key_Return);
  }
  void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    QTest::keyClick(QApplication::focusWidget(), key, modifiers);
  }
  void mark() {
    auto* sheet = page_->findChild<SheetView*>("sheet");
    sheet->setFocus();
    press(Qt::Key_Home);
    for (int line = 0; line < 10; ++line) {
      if (line > 0) press(Qt::Key_Down);
      press(Qt::Key_1);
    }
  }

  std::unique_ptr<evening::Shop> shop_;
  std::unique_ptr<Page> page_;
  RecordId hours_;
  QStringList told_, refused_;
};

}  // namespace two_assessors_test

WM_PAGE_TEST(two_assessors_test, TwoAssessorsTest)
#include "two_assessors_test.moc"
