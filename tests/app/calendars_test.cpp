// One-on-ones out as iCalendar files, and busy times in, by keyboard.
#include <QtTest>

#include "app/calendars/events.h"
#include "app/calendars/forms.h"
#include "app/diary/slots.h"
#include "app/hours/hours_page.h"
#include "app/machines/machines_page.h"
#include "app/people/people_page.h"
#include "lists_shop.h"
#include "page_test.h"

namespace calendars_test {

using namespace wm;
using namespace wm::app;

namespace {

/// Monday 16 March 2026 in Chicago.
Instant monday(int hour) { return lists_evening + (30 + hour) * 3600; }

struct BookedShop : ListsShop {
  RecordId first;
  BookedShop() {
    sit("mia");
    first = enter(db::EnterShopFact{booking("dee", 12)});
  }
  static db::Booking booking(const PersonId& person, int hour) {
    return {person, "mia", "b1", "bandsaw", monday(hour), monday(hour + 1)};
  }
  calendar::CalendarEvent only_of(const Whose& whose) {
    const auto all = events_of(session(), whose);
    if (all.size() != 1) qFatal("%zu events", all.size());
    return all.front();
  }
};

void write(const QString& path, const QByteArray& text) {
  QFile file(path);
  QVERIFY(file.open(QFile::WriteOnly));
  file.write(text);
}

constexpr auto busy_file =
    "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//x//y//EN\r\nBEGIN:VEVENT\r\nUID:a\r\n"
    "DTSTART:20260316T120000\r\nDTEND:20260316T180000\r\nRRULE:FREQ=WEEKLY;COUNT=3\r\n"
    "SUMMARY:dentist\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";

std::size_t offered(ListsShop& shop) {
  const Day today = shop.session().zone().day(shop.session().now());
  return fitting(slot_question(shop.session(), {"dee", "bandsaw"}, today, 4)).size();
}

}  // namespace

class CalendarsTest : public QObject {
  Q_OBJECT
 private slots:
  void an_event_keeps_its_uid_through_moves_and_its_sequence_goes_up() {
    BookedShop shop;
    const auto before = shop.only_of(OfPerson{"dee"});
    QVERIFY(before.uid.starts_with(shop.first + "@HollowOakWorkshop."));
    QCOMPARE(before.sequence, 0);
    QVERIFY(!before.cancelled && !before.tentative);
    QVERIFY(before.when.from == monday(12));
    db::Booking moved = BookedShop::booking("dee", 15);
    moved.instead_of = shop.first;
    const RecordId second = shop.enter(db::EnterShopFact{moved});
    const auto after = shop.only_of(OfPerson{"dee"});
    QCOMPARE(after.uid, before.uid);
    QCOMPARE(after.sequence, 1);
    QVERIFY(after.when.from == monday(15));
    shop.enter(db::EnterShopFact{db::Cancel{second, "ill"}});
    const auto off = shop.only_of(OfPerson{"dee"});
    QCOMPARE(off.uid, before.uid);
    QCOMPARE(off.sequence, 2);
    QVERIFY(off.cancelled);
  }

  void a_strike_out_is_a_change_too() {
    BookedShop shop;
    const RecordId cancel = shop.enter(db::EnterShopFact{db::Cancel{shop.first, "ill"}});
    shop.enter(db::StrikeOutRecord{cancel, "well again"});
    const auto event = shop.only_of(OfPerson{"dee"});
    QVERIFY(!event.cancelled);
    QCOMPARE(event.sequence, 2);
    shop.enter(db::StrikeOutRecord{shop.first, "by mistake"});
    QVERIFY(shop.only_of(OfPerson{"dee"}).cancelled);
    QCOMPARE(shop.only_of(OfPerson{"dee"}).sequence, 3);
  }

  void whoever_is_in_it_no_longer_has_it_called_off() {
    BookedShop shop;
    shop.enter(db::EnterFact{Appoint{"ivo", Everything{}, true, Day{21000}}});
    shop.wait(60);
    db::Booking moved = BookedShop::booking("dee", 15);
    moved.instead_of = shop.first;
    moved.assessor = "ivo";
    moved.machine = "b2";
    shop.enter(db::EnterShopFact{moved});
    QVERIFY(shop.only_of(OfPerson{"mia"}).cancelled);
    QVERIFY(!shop.only_of(OfPerson{"ivo"}).cancelled);
    QVERIFY(shop.only_of(OfUnit{"b1"}).cancelled);
    QVERIFY(!shop.only_of(OfUnit{"b2"}).cancelled);
    QCOMPARE(shop.only_of(OfPerson{"mia"}).uid, shop.only_of(OfPerson{"ivo"}).uid);
    QVERIFY(events_of(shop.session(), OfPerson{"olga"}).empty());
  }

  void what_is_held_is_tentative_and_given_up_it_is_called_off() {
    BookedShop shop;
    db::Booking held = BookedShop::booking("olga", 18);
    held.held_through = shop.session().now() + 3600;
    shop.enter(db::EnterShopFact{held});
    QVERIFY(shop.only_of(OfPerson{"olga"}).tentative);
    QCOMPARE(shop.only_of(OfPerson{"olga"}).sequence, 0);
    shop.wait(3600);
    QVERIFY(shop.only_of(OfPerson{"olga"}).cancelled);
    QVERIFY(!shop.only_of(OfPerson{"olga"}).tentative);
    QCOMPARE(shop.only_of(OfPerson{"olga"}).sequence, 1);
  }

  void what_was_moved_to_a_time_that_is_over_is_told_while_the_time_before_is_to_come() {
    BookedShop shop;
    db::Booking moved = BookedShop::booking("dee", 10);
    moved.instead_of = shop.first;
    shop.enter(db::EnterShopFact{moved});
    while (shop.session().now() < monday(11)) shop.wait(3600);
    QVERIFY(shop.only_of(OfPerson{"dee"}).when.from == monday(10));
    QCOMPARE(shop.only_of(OfPerson{"dee"}).sequence, 1);
  }

  void what_is_over_is_left_out() {
    BookedShop shop;
    shop.wait(3 * 86400);
    QVERIFY(events_of(shop.session(), OfPerson{"dee"}).empty());
  }

  void a_members_calendar_is_written_from_people_with_what_was_called_off_beside_it() {
    BookedShop shop;
    shop.enter(db::EnterShopFact{BookedShop::booking("dee", 18)});
    PeoplePage page(shop.session());
    shop.show(page);
    QSignalSpy told(&page, &Page::tell);
    const auto save = [&] {
      type(page, "griffith");
      press(page, Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
      page.findChild<QLineEdit*>("folder")->setText(shop.file({}));
      press(page, Qt::Key_Return, Qt::ControlModifier);
      page.findChild<QLineEdit*>("search")->clear();
    };
    save();
    QVERIFY2(told.last().front().toString().contains("Dee-Griffith.ics"),
             qPrintable(told.last().front().toString()));
    QFile file(shop.file("Dee-Griffith.ics"));
    QVERIFY(file.open(QFile::ReadOnly));
    const QString text = file.readAll();
    QVERIFY(text.contains("METHOD:PUBLISH"));
    QCOMPARE(text.count("BEGIN:VEVENT"), 2);
    QVERIFY2(text.contains("DTSTART:20260316T1"), qPrintable(text));
    QVERIFY(!QFile::exists(shop.file("Dee-Griffith-called-off.ics")));
    shop.enter(db::EnterShopFact{db::Cancel{shop.first, "ill"}});
    save();
    QFile off(shop.file("Dee-Griffith-called-off.ics"));
    QVERIFY(off.open(QFile::ReadOnly));
    const QString called_off = off.readAll();
    QVERIFY(called_off.contains("METHOD:CANCEL"));
    QCOMPARE(called_off.count("BEGIN:VEVENT"), 1);
    QVERIFY(called_off.contains("STATUS:CANCELLED"));
    // Why somebody does not come is nobody else's.
    QVERIFY(!called_off.contains("ill"));
  }

  void a_units_calendar_is_written_from_machines() {
    BookedShop shop;
    MachinesPage page(shop.session());
    shop.show(page);
    type(page, "by the door");
    press(page, Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
    page.findChild<QLineEdit*>("folder")->setText(shop.file("nowhere"));
    press(page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(page.findChild<QLabel*>("problem")->text().contains("no such folder"));
    page.findChild<QLineEdit*>("folder")->setText(shop.file({}));
    press(page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(QFile::exists(shop.file("Bandsaw-by-the-door.ics")));
  }

  void busy_times_are_taken_in_and_no_time_is_offered_in_them() {
    ListsShop shop;
    shop.sit("mia");
    shop.enter(db::EnterShopFact{db::Hours{"mia", 0, 12 * 60, 20 * 60}});
    HoursPage page(shop.session());
    shop.show(page);
    QCOMPARE(offered(shop), std::size_t{29});
    const QString path = shop.file("mia.ics");
    write(path, busy_file);
    type(page, "mia");
    press(page, Qt::Key_I, Qt::ControlModifier);
    page.findChild<QLineEdit*>("file")->setText(path);
    press(page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(seen_on(page).contains("busy times from a calendar: 3"), qPrintable(seen_on(page)));
    QCOMPARE(offered(shop), std::size_t{5});  // from six to eight
    for (const db::Entry& entry : shop.session().store().entries())
      QVERIFY(!QString::fromStdString(entry.note).contains("dentist"));
    // The next one takes its place.
    write(path, QByteArray(busy_file).replace("T180000", "T130000"));
    press(page, Qt::Key_I, Qt::ControlModifier);
    page.findChild<QLineEdit*>("file")->setText(path);
    press(page, Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(offered(shop), std::size_t{25});
  }

  void a_hostile_file_is_refused_line_by_line_and_nothing_is_taken_in() {
    ListsShop shop;
    shop.sit("mia");
    HoursPage page(shop.session());
    shop.show(page);
    const QString path = shop.file("bad.ics");
    const auto refused = [&](const QByteArray& text) {
      write(path, text);
      page.findChild<QLineEdit*>("file")->setText(path);
      press(page, Qt::Key_Return, Qt::ControlModifier);
      auto* problem = page.findChild<QLabel*>("problem");
      return problem && problem->isVisible() ? problem->text() : QString();
    };
    type(page, "mia");
    press(page, Qt::Key_I, Qt::ControlModifier);
    for (const QByteArray& wrong :
         {QByteArray("no calendar at all"), QByteArray("\xff\xfe\x00\x01", 4), QByteArray(8'100'000, 'x'),
          QByteArray(busy_file).replace("FREQ=WEEKLY", "FREQ=SECONDLY"),
          QByteArray(busy_file).replace("20260316T180000", "20260316T110000")}) {
      const QString said = refused(wrong);
      QVERIFY2(said.contains("Nothing was taken in."), qPrintable(said));
      QVERIFY2(said.size() < 2000, qPrintable(said));
    }
    QVERIFY(shop.session().store().of_kind("busy").empty());
    page.findChild<QLineEdit*>("file")->setText(shop.file("none.ics"));
    press(page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(page.findChild<QLabel*>("problem")->text().contains("can't be opened"));
  }
};

}  // namespace calendars_test

WM_PAGE_TEST(calendars_test, CalendarsTest)
#include "calendars_test.moc"
