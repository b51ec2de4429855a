// Hours by keyboard: a manager enters them, everybody reads them, and the Diary's free times follow.
#include "app/diary/slots.h"
#include "app/hours/hours_page.h"
#include "app/hours/reading.h"
#include "app/widgets/key_button.h"
#include "lists_shop.h"
#include "page_test.h"

namespace hours_test {

using namespace wm;
using namespace wm::app;

namespace {

/// Times that could be booked on the bandsaw in the week from 14 March 2026, a Saturday.
std::vector<Interval> offered(ListsShop& shop, const PersonId& person = "dee") {
  std::vector<Interval> out;
  const Wish wish{person, "bandsaw"};
  const Day today = shop.session().zone().day(shop.session().now());
  for (const Slot& slot : fitting(slot_question(shop.session(), wish, today, 7))) out.push_back(slot.when);
  return out;
}

void choose(QWidget& page, const char* name, const QString& words) {
  auto* box = page.findChild<QComboBox*>(name);
  QVERIFY2(box && box->findText(words) >= 0, name);
  box->setCurrentIndex(box->findText(words));
}
void fill(QWidget& page, const char* name, const QString& words) {
  auto* field = page.findChild<QLineEdit*>(name);
  QVERIFY2(field, name);
  field->setText(words);
}
void save(QWidget& page) { press(page, Qt::Key_Return, Qt::ControlModifier); }

void grab(QWidget& page, const char* name) {
  const QString folder = qEnvironmentVariable("WM_GRABS");
  if (!folder.isEmpty()) page.grab().save(folder + "/" + name + ".png");
}

/// A shop in which Mia, who assesses everything, is in on Mondays from noon to eight.
struct HoursShop : Shown<HoursPage> {
  HoursShop() : Shown<HoursPage>("mia") {
    press(page, Qt::Key_Escape);
    type(page, "mia");
    press(page, Qt::Key_T, Qt::ControlModifier);
    choose(page, "weekday", "Monday");
    fill(page, "from", "12");
    fill(page, "to", "8 pm");
    save(page);
    page.findChild<QLineEdit*>("search")->clear();
  }
};

}  // namespace

class HoursTest : public QObject {
  Q_OBJECT
 private slots:
  void somebody_at_the_desk_reads_hours_and_changes_none() {
    Shown<HoursPage> shop("dee");
    const QString seen = seen_on(shop.page);
    QVERIFY2(seen.contains("no hours entered: at all hours"), qPrintable(seen));
    QVERIFY2(seen.contains("Mia Okafor"), qPrintable(seen));
    QVERIFY2(seen.contains("A manager enters them"), qPrintable(seen));
    QVERIFY(shop.page.findChildren<KeyButton*>().isEmpty());
  }

  void an_assessors_hours_make_times_in_the_diary() {
    HoursShop shop;
    const auto times = offered(shop);
    QCOMPARE(times.size(), std::size_t{29});  // an hour's length, every quarter of an hour from 12 to 19
    QVERIFY(times.front().from == shop.session().zone().instant({day_of({2026, 3, 16}), 12, 0, 0}));
    QVERIFY2(seen_on(shop.page).contains("Mon 12:00–20:00"), qPrintable(seen_on(shop.page)));
  }

  void the_shops_hours_cut_them_for_several_weekdays_at_once() {
    HoursShop shop;
    press(shop.page, Qt::Key_N, Qt::ControlModifier);
    choose(shop.page, "weekday", "Monday to Friday");
    fill(shop.page, "from", "17");
    fill(shop.page, "to", "20:00");
    save(shop.page);
    QVERIFY2(seen_on(shop.page).contains("Mon–Fri 17:00–20:00"), qPrintable(seen_on(shop.page)));
    QCOMPARE(offered(shop).size(), std::size_t{9});
    grab(shop.page, "hours");
    press(shop.page, Qt::Key_N, Qt::ControlModifier);
    grab(shop.page, "hours-form");
    choose(shop.page, "doing", "Somebody is on duty");
    choose(shop.page, "weekday", "Monday");
    fill(shop.page, "from", "18");
    fill(shop.page, "to", "half past");
    save(shop.page);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->isVisible());
    fill(shop.page, "to", "19");
    save(shop.page);
    QCOMPARE(offered(shop).size(), std::size_t{1});
  }

  void a_day_on_which_the_shop_is_closed_has_no_times() {
    HoursShop shop;
    press(shop.page, Qt::Key_O, Qt::ControlModifier | Qt::ShiftModifier);
    type(shop.page, "2026-03-16");
    fill(shop.page, "why", "stocktaking");
    save(shop.page);
    QVERIFY2(seen_on(shop.page).contains("The shop is closed, 16 Mar 2026: stocktaking."),
             qPrintable(seen_on(shop.page)));
    QVERIFY(offered(shop).empty());
    // Struck out, it is open again.
    type(shop.page, "closed");
    QTest::mouseClick(shop.page.findChild<QPushButton*>("strike"), Qt::LeftButton);
    QCOMPARE(offered(shop).size(), std::size_t{29});
  }

  void other_hours_of_a_day_take_the_place_of_the_weeks() {
    HoursShop shop;
    type(shop.page, "mia");
    press(shop.page, Qt::Key_A, Qt::ControlModifier | Qt::ShiftModifier);
    type(shop.page, "16 Mar 2026");
    fill(shop.page, "parts", "9-10:30, 10-12");
    save(shop.page);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->text().contains("overlap"));
    fill(shop.page, "parts", "9-10:30, 11-12");
    save(shop.page);
    const auto times = offered(shop);
    QCOMPARE(times.size(), std::size_t{4});
    QVERIFY(times.back().from == shop.session().zone().instant({day_of({2026, 3, 16}), 11, 0, 0}));
  }

  void breaks_and_what_an_assessor_takes_on_are_kept_to() {
    HoursShop shop;
    type(shop.page, "mia");
    press(shop.page, Qt::Key_B, Qt::ControlModifier);
    choose(shop.page, "weekday", "Monday");
    fill(shop.page, "from", "13");
    fill(shop.page, "to", "19");
    save(shop.page);
    QCOMPARE(offered(shop).size(), std::size_t{2});
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    fill(shop.page, "longest_day", "0:59");
    save(shop.page);
    QVERIFY2(seen_on(shop.page).contains("at most 59 minutes a day"), qPrintable(seen_on(shop.page)));
    QVERIFY(offered(shop).empty());
  }

  void a_length_is_said_for_a_class_and_counts_for_its_times() {
    HoursShop shop;
    type(shop.page, "one-on-one bandsaw");
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    fill(shop.page, "minutes", "soon");
    save(shop.page);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->isVisible());
    fill(shop.page, "minutes", "1:30");
    save(shop.page);
    QVERIFY2(seen_on(shop.page).contains("90 minutes"), qPrintable(seen_on(shop.page)));
    const auto times = offered(shop);
    QCOMPARE(times.size(), std::size_t{27});
    QCOMPARE(times.front().to.seconds - times.front().from.seconds, std::int64_t{5400});
  }

  void maintenance_takes_a_unit_out_of_the_times() {
    HoursShop shop;
    for (const char* unit : {"b1", "b2"}) {
      press(shop.page, Qt::Key_M, Qt::ControlModifier);
      auto* machine = shop.page.findChild<QComboBox*>("machine");
      machine->setCurrentIndex(machine->findData(unit));
      fill(shop.page, "first", "2026-03-16");
      fill(shop.page, "from", "13:00");
      fill(shop.page, "to", "20:00");
      save(shop.page);
    }
    QVERIFY2(seen_on(shop.page).contains("Maintenance of"), qPrintable(seen_on(shop.page)));
    QCOMPARE(offered(shop).size(), std::size_t{1});
  }

  void how_the_shop_books_is_said_whole() {
    HoursShop shop;
    press(shop.page, Qt::Key_R, Qt::ControlModifier);
    fill(shop.page, "longest_wait", "60");
    fill(shop.page, "not_come", "3");
    save(shop.page);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->text().contains("not whole"));
    fill(shop.page, "not_come_days", "90");
    fill(shop.page, "rest_days", "30");
    save(shop.page);
    QCOMPARE(shop.session().store().diary_rules(), (db::DiaryRules{60, {}, 3, 90, 30}));
    QVERIFY2(seen_on(shop.page).contains("Nobody is to wait longer than 60 days."),
             qPrintable(seen_on(shop.page)));
  }

  void somebody_under_18_has_times_only_while_two_adults_are_in() {
    HoursShop shop;
    QVERIFY(offered(shop, "luk").empty());
    shop.enter(db::EnterShopFact{db::Hours{"ivo", 0, 18 * 60, 19 * 60}});
    const auto times = offered(shop, "luk");
    QCOMPARE(times.size(), std::size_t{1});
    QVERIFY(times.front().from == shop.session().zone().instant({day_of({2026, 3, 16}), 18, 0, 0}));
  }

  void an_instructor_says_when_they_are_away_and_nothing_of_others() {
    Shown<HoursPage> shop("ivo");
    type(shop.page, "mia");
    QVERIFY(!shop.page.findChild<QPushButton*>("away"));
    shop.sit("mia");
    shop.enter(db::EnterShopFact{db::Hours{"ivo", 0, 18 * 60, 19 * 60}});
    shop.sit("ivo");
    shop.page.findChild<QLineEdit*>("search")->setText("ivo");
    QVERIFY(!shop.page.findChild<QPushButton*>("hours"));
    press(shop.page, Qt::Key_A, Qt::ControlModifier | Qt::ShiftModifier);
    type(shop.page, "16 Mar 2026");
    save(shop.page);
    QVERIFY2(seen_on(shop.page).contains("Ivo Lindqvist is away, 16 Mar 2026."),
             qPrintable(seen_on(shop.page)));
  }

  void hours_are_read_as_people_type_them() {
    using Parts = std::vector<db::DayPart>;
    QVERIFY(read_parts("") == Parts{});
    QVERIFY(read_parts("17:30–20, 12 - 14:00") == (Parts{{720, 840}, {1050, 1200}}));
    QVERIFY(read_parts("9-24") == (Parts{{540, 1440}}));
    for (const char* wrong : {"9", "9-9", "10-9", "9-25", "9-10-11", "closed", "9-11, 10-12"})
      QVERIFY2(!read_parts(wrong), wrong);
    QVERIFY(read_minutes("90", "").value() == 90);
    QVERIFY(read_minutes("1:30", "").value() == 90);
    QVERIFY(read_minutes("2 h", "").value() == 120);
    QVERIFY(!read_minutes(" ", "").value());
    for (const char* wrong : {"soon", "-5", "1:3", "1.5"}) QVERIFY2(!read_minutes(wrong, ""), wrong);
  }
};

}  // namespace hours_test

WM_PAGE_TEST(hours_test, HoursTest)
#include "hours_test.moc"
