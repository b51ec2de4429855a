// A machine started at the Desk and left again, by keyboard.
#include <QtWidgets>

#include "app/desk/desk_page.h"
#include "app/widgets/date_field.h"
#include "app/widgets/person_box.h"
#include "db/journal/subject.h"
#include "evening.h"
#include "page_test.h"

namespace starts_test {

using namespace wm;
using namespace wm::app;

class StartsTest : public QObject {
  Q_OBJECT
 private:
  std::unique_ptr<evening::Shop> shop_;
  std::unique_ptr<DeskPage> page_;
  QStringList told_, refused_;

  template <class T>
  T* find(const char* name) const {
    return page_->findChild<T*>(name);
  }
  void open(const char* person, const char* target) {
    Place place;
    place.person = person;
    place.target = target;
    page_->open(place);
  }
  void press(Qt::Key key) {
    QTest::keyClick(QApplication::focusWidget(), key, Qt::ControlModifier);
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  RecordId booked() const {
    for (const db::Entry& entry : shop_->session->store().entries())
      if (db::as<db::Booking>(entry.fact)) return entry.id;
    return {};
  }
  QString shown() const {
    QCoreApplication::processEvents();
    QStringList said;
    for (const QLabel* label : page_->findChildren<QLabel*>())
      if (label->isVisible()) said << label->text();
    return said.join('\n');
  }
  template <class T>
  std::vector<T> facts() const {
    std::vector<T> found;
    for (const db::Entry& entry : shop_->session->store().entries())
      if (const T* one = db::as<T>(entry.fact); one && !entry.voided) found.push_back(*one);
    return found;
  }

 private slots:
  void initTestCase() { apply_theme(*qApp, Shade::light); }
  void init() {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    shop_ = std::make_unique<evening::Shop>();
    told_.clear();
    page_ = std::make_unique<DeskPage>(*shop_->session);
    QVERIFY(evening::put_up(*page_, *shop_->session, told_, refused_));
    shop_->sit_down("ines", "1357");
  }
  void cleanup() { page_.reset(); }

  void what_stands_in_the_way_is_said_with_who_can_lift_it() {
    open("jonas", "shaper");
    press(Qt::Key_G);
    const QString said = find<QLabel>("start_said")->text();
    QVERIFY2(said.contains("No staff are in") && said.contains("Mara Devlin could"), qPrintable(said));
    press(Qt::Key_Return);
    QVERIFY(facts<db::Started>().empty());
    QCOMPARE(find<QLabel>("problem")->text(), said);
  }

  void somebody_starts_under_who_is_here_and_the_minutes_are_worked_out_when_they_leave() {
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
    open("jonas", "shaper");
    press(Qt::Key_G);
    QCOMPARE(find<QComboBox>("start_supervisor")->currentText(), QString("Mara Devlin"));
    evening::grab(*page_, "start");
    press(Qt::Key_Return);
    QVERIFY((facts<db::Started>() == std::vector<db::Started>{{"jonas", "sh1", "shaper", "mara"}}));
    const Instant began = shop_->clock;
    QVERIFY(find<QLabel>("answer_now")->text().contains("At work on"));
    evening::grab(*page_, "started");
    // Mara is taken meanwhile, and so is the unit.
    open("tola", "shaper");
    press(Qt::Key_G);
    const QString said = find<QLabel>("start_said")->text();
    QVERIFY2(said.contains("Jonas Lindqvist is at Shaper") && said.contains("free who can supervise"),
             qPrintable(said));
    page_->open({});
    shop_->clock = shop_->clock + 25 * 60 + 30;
    open("jonas", "shaper");
    press(Qt::Key_G);
    press(Qt::Key_Return);
    QVERIFY((facts<Supervised>() == std::vector<Supervised>{{"jonas", "shaper", 25, "mara"}}));
    QVERIFY(shop_->session->store().entries().back().at == began);
    QVERIFY2(told_.back().contains("25 min"), qPrintable(told_.join(' ')));
  }

  void a_unit_that_is_booked_for_somebody_else_now_is_started_with_a_word_of_warning() {
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
    const Instant now = shop_->clock;
    shop_->clock = now + -3600;
    const Day today = shop_->session->zone().day(now);
    QVERIFY(shop_->manage(db::OtherHours{"mara", db::Doing::open, today, today, {{0, 1440}}, 1, ""}));
    QVERIFY(shop_->manage(
        db::Booking{"tola", "mara", "sh1", "shaper", now + -60, now + 1800, db::Purpose::practise}));
    shop_->clock = now;
    open("jonas", "shaper");
    press(Qt::Key_G);
    QVERIFY2(find<QLabel>("start_said")->text().contains("Tola Adeyemi has it booked with Mara Devlin"),
             qPrintable(find<QLabel>("start_said")->text()));
    QVERIFY(find<QPushButton>("save")->text().contains("all the same"));
    press(Qt::Key_Return);
    QCOMPARE(facts<db::Started>().size(), std::size_t{1});
  }

  void who_supervises_several_is_asked_which_of_them_has_left() {
    shop_->sit_down("odile", "8642");
    Rulebook book = evening::rulebook();
    book.version = 2;
    book.effective_from = shop_->clock + 60;
    for (Tier& tier : book.tiers) tier.supervises_at_once = 2;
    shop_->enter(db::PublishRulebook{book});
    shop_->clock = shop_->clock + 120;
    shop_->sit_down("ines", "1357");
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
    shop_->enter(db::EnterShopFact{db::Started{"jonas", "sh1", "shaper", "mara"}});
    shop_->enter(db::EnterShopFact{db::Started{"tola", "jp2", "jointer-planer/jointing", "mara"}});
    shop_->clock = shop_->clock + 60;
    open("mara", "shaper");
    press(Qt::Key_G);
    auto* whose = find<QComboBox>("who_leaves");
    QVERIFY(whose);
    QCOMPARE(whose->count(), 2);
    whose->setCurrentIndex(1);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    QCOMPARE(facts<db::Left>().size(), std::size_t{1});
    QCOMPARE(facts<Supervised>().front().person, PersonId("tola"));
  }

  void what_was_forgotten_in_the_evening_is_asked_for_the_next_morning() {
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
    shop_->enter(db::EnterShopFact{db::Started{"jonas", "sh1", "shaper", "mara"}});  // 16:30 on the 26th
    shop_->clock = shop_->clock + 16 * 3600;
    QTest::keyClick(page_.get(), Qt::Key_Escape);
    page_->refresh();
    QVERIFY2(shown().contains("Jonas Lindqvist: Shaper, unit 1, since 26 November, 4:30 PM"),
             qPrintable(shown()));
    open("jonas", "shaper");
    press(Qt::Key_G);
    QVERIFY2(shown().contains("26 November, 4:30 PM"), qPrintable(shown()));
    press(Qt::Key_Return);
    QVERIFY(facts<db::Left>().empty());
    QVERIFY2(find<QLabel>("problem")->text().contains("Type at what time it was left"),
             qPrintable(find<QLabel>("problem")->text()));
    find<QLineEdit>("left_at")->setText("17:10");
    press(Qt::Key_Return);
    QCOMPARE(facts<Supervised>().front().minutes, 40);
  }

  void who_goes_while_at_a_machine_is_told_to_say_when_it_was_left() {
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
    shop_->enter(db::EnterShopFact{db::Started{"jonas", "sh1", "shaper", "mara"}});
    shop_->clock = shop_->clock + 30 * 60;
    open("mara", "shaper");
    press(Qt::Key_I);
    QVERIFY2(told_.back().contains("Still noted as at a machine with them: Jonas Lindqvist: Shaper, unit 1"),
             qPrintable(told_.back()));
    shop_->clock = shop_->clock + 30 * 60;
    QTest::keyClick(page_.get(), Qt::Key_Escape);
    page_->refresh();
    QVERIFY2(shown().contains("Mara Devlin is noted as gone since 5:00 PM: enter when the machine was left"),
             qPrintable(shown()));
    open("jonas", "shaper");
    QVERIFY(find<QLabel>("answer_now")->text().contains("noted as gone since 5:00 PM"));
    press(Qt::Key_G);
    press(Qt::Key_Return);
    QVERIFY(facts<db::Left>().empty());
    find<QLineEdit>("left_at")->setText("17:20");
    press(Qt::Key_Return);
    QVERIFY2(find<QLabel>("problem")->text().contains("Mara Devlin was noted as gone at 2026-11-26 17:00"),
             qPrintable(find<QLabel>("problem")->text()));
    find<QLineEdit>("left_at")->setText("17:00");
    press(Qt::Key_Return);
    QCOMPARE(facts<Supervised>().front().minutes, 30);
    // Whoever is at no machine just goes.
    open("mara", "shaper");
    press(Qt::Key_I);
    press(Qt::Key_I);
    QCOMPARE(told_.back(), QString("Mara Devlin has left."));
  }

  void less_than_a_minute_is_no_session() {
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
    shop_->enter(db::EnterShopFact{db::Started{"jonas", "sh1", "shaper", "mara"}});
    shop_->clock = shop_->clock + 20;
    open("jonas", "shaper");
    press(Qt::Key_G);
    press(Qt::Key_Return);
    QCOMPARE(facts<db::Left>().size(), std::size_t{1});
    QVERIFY(facts<Supervised>().empty());
    QVERIFY2(told_.back().contains("less than a minute"), qPrintable(told_.back()));
  }

  void who_has_a_role_says_by_its_key_whether_they_come_in_on_duty() {
    auto* duty = find<QPushButton>("duty");
    open("jonas", "shaper");
    QVERIFY(!duty->isVisible());
    press(Qt::Key_I);
    QVERIFY((facts<db::Presence>().back() == db::Presence{"jonas", true, false}));
    open("mara", "shaper");
    QVERIFY(duty->isVisible());
    QCOMPARE(duty->text(), QString("On duty"));
    press(Qt::Key_I);
    QCOMPARE(told_.back(), QString("Mara Devlin is here, off duty."));
    QVERIFY((facts<db::Presence>().back() == db::Presence{"mara", true, false}));
    QCOMPARE(duty->text(), QString("On duty"));
    const auto on_duty = [] {
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
    };
    on_duty();
    QVERIFY((facts<db::Presence>().back() == db::Presence{"mara", true, true}));
    QCOMPARE(duty->text(), QString("Off duty"));
    evening::grab(*page_, "duty");
    on_duty();
    QVERIFY((facts<db::Presence>().back() == db::Presence{"mara", true, false}));
    press(Qt::Key_I);
    QVERIFY((facts<db::Presence>().back() == db::Presence{"mara", false, false}));
    on_duty();
    QVERIFY((facts<db::Presence>().back() == db::Presence{"mara", true, true}));
  }

  void who_has_come_to_a_one_on_one_starts_nothing_else_and_nobody_else_its_unit() {
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
    shop_->clock = evening::at("2026-11-26T23:01:00Z");  // Tola is booked with Mara at jp1 from 17:00
    shop_->enter(db::EnterShopFact{db::Attendance{booked(), db::Turnout::arrived}});
    open("tola", "shaper");
    const QString now = find<QLabel>("answer_now")->text();
    QVERIFY2(now.contains("Tola Adeyemi is in a one-on-one with Mara Devlin") && now.contains("6:00 PM"),
             qPrintable(now));
    press(Qt::Key_G);
    press(Qt::Key_Return);
    QVERIFY(facts<db::Started>().empty());
  }

  void a_session_of_the_past_is_entered_by_hand_by_instructors_and_managers() {
    auto* button = find<QPushButton>("session");
    open("jonas", "shaper");
    QVERIFY(!button->isVisible());
    shop_->sit_down("mara", "2468");
    open("jonas", "shaper");
    QVERIFY(button->isVisible());
    const auto begin = [] {
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_O, Qt::ControlModifier);
      QCoreApplication::processEvents();
      QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    };
    begin();
    QVERIFY(!find<QComboBox>("session_from"));
    const auto problem = [this] { return find<QLabel>("problem")->text(); };
    press(Qt::Key_Return);
    QVERIFY2(problem().contains("not said when"), qPrintable(problem()));
    find<QLineEdit>("session_time")->setText("16:15");
    press(Qt::Key_Return);
    QVERIFY2(problem().contains("for how long"), qPrintable(problem()));
    find<QLineEdit>("session_minutes")->setText("45");
    press(Qt::Key_Return);
    QVERIFY2(problem().contains("not be over yet"), qPrintable(problem()));
    find<DateField>("session_day")->setText("25 November 2026");
    press(Qt::Key_Return);
    QVERIFY2(problem().contains("who supervised"), qPrintable(problem()));
    find<PersonBox>("session_supervisor")->set_person(PersonId("tola"));
    press(Qt::Key_Return);
    QVERIFY2(problem().contains("could not supervise"), qPrintable(problem()));
    find<PersonBox>("session_supervisor")->set_person(PersonId("mara"));
    evening::grab(*page_, "session");
    press(Qt::Key_Return);
    QVERIFY((facts<Supervised>() == std::vector<Supervised>{{"jonas", "shaper", 45, "mara"}}));
    QVERIFY(shop_->session->store().entries().back().at == evening::at("2026-11-25T22:15:00Z"));
    QVERIFY2(told_.back().contains("45 min"), qPrintable(told_.back()));
    // An older one, under somebody of whom no more is known, from paper.
    shop_->sit_down("odile", "8642");
    open("jonas", "shaper");
    begin();
    find<QLineEdit>("session_time")->setText("10:00");
    find<DateField>("session_day")->setText("2026-03-03");
    find<QLineEdit>("session_minutes")->setText("1:30");
    find<PersonBox>("session_supervisor")->set_person(PersonId("tola"));
    press(Qt::Key_Return);
    QVERIFY2(problem().contains("from the past"), qPrintable(problem()));
    find<QComboBox>("session_from")->setCurrentIndex(1);
    press(Qt::Key_Return);
    QCOMPARE(facts<Supervised>().size(), std::size_t{2});
    QVERIFY(shop_->session->store().entries().back().from_paper);
    QCOMPARE(facts<Supervised>().back().minutes, 90);
  }

  void when_it_was_left_may_be_said_and_a_mistake_keeps_the_form() {
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
    shop_->enter(db::EnterShopFact{db::Started{"jonas", "sh1", "shaper", "mara"}});  // 16:30
    shop_->clock = shop_->clock + 2 * 3600;
    open("jonas", "shaper");
    press(Qt::Key_G);
    find<QLineEdit>("left_at")->setText("soon");
    press(Qt::Key_Return);
    QVERIFY(find<QLabel>("problem")->text().contains("no time of day"));
    find<QLineEdit>("left_at")->setText("17:10");
    press(Qt::Key_Return);
    QCOMPARE(facts<Supervised>().front().minutes, 40);
  }
};

}  // namespace starts_test

WM_PAGE_TEST(starts_test, StartsTest)
#include "starts_test.moc"
