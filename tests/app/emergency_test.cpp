// Somebody hurt, or nearly: who was there with which part, recorded at once by keyboard, and what follows.
#include <QtWidgets>

#include "app/emergency/emergency_page.h"
#include "app/frame/main_window.h"
#include "db/journal/subject.h"
#include "evening.h"
#include "page_test.h"

namespace emergency_test {

using namespace wm;
using namespace wm::app;

class EmergencyTest : public QObject {
  Q_OBJECT
 private:
  std::unique_ptr<evening::Shop> shop_;
  std::unique_ptr<EmergencyPage> page_;
  QStringList told_, refused_;

  template <class T>
  T* find(const char* name) const {
    return page_->findChild<T*>(name);
  }
  void type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    QTest::keyClick(QApplication::focusWidget(), key, modifiers);
    QCoreApplication::processEvents();
  }
  void press(Qt::Key number) {
    QTest::keyClick(page_.get(), number, Qt::ControlModifier);
    QTest::qWait(20);  // what was pressed draws the buttons anew
  }
  void add(const char* name) {
    find<QLineEdit>("incident_person")->setFocus();
    type(name);
    key(Qt::Key_Return);
  }
  QStringList texts(const char* within) const {
    QStringList all;
    for (const QLabel* label : find<QWidget>(within)->findChildren<QLabel*>()) all << label->text();
    return all;
  }
  QStringList texts_of(const char* name) const {
    QStringList all;
    for (const QLabel* label : page_->findChildren<QLabel*>(name)) all << label->text();
    return all;
  }
  template <class T>
  std::vector<T> facts() const {
    std::vector<T> found;
    for (const db::Entry& entry : shop_->session->store().entries())
      if (const T* one = db::as<T>(entry.fact); one && !entry.voided) found.push_back(*one);
    return found;
  }
  /// The shaper at severity `grave`, told.
  void fill(int grave) {
    auto* machine = find<QComboBox>("incident_machine");
    machine->setCurrentIndex(machine->findData("sh1"));
    auto* severity = find<QComboBox>("severity");
    severity->setCurrentIndex(severity->findData(grave));
    find<QPlainTextEdit>("what_happened")->setFocus();
    type("the board kicked back");
  }
  /// Jonas works the shaper without a supervisor, and is checked out again after severity 1 and 2.
  void let_jonas_work() {
    shop_->sit_down("odile", "8642");
    Rulebook book = evening::rulebook();
    book.version = 2;
    book.effective_from = shop_->session->now() + 60;
    std::get<NeedCheckout>(book.classes[1].gates[0].need.need).renew_after_severity = 2;
    shop_->enter(db::PublishRulebook{book});
    QVERIFY(shop_->session->commit(db::EnterFact{Checkout{"jonas", "shaper", 0, Outcome::passed, "mara"}},
                                   evening::at("2026-11-20T18:00:00Z"), {}, true));
    shop_->clock = shop_->clock + 120;
  }

 private slots:
  void initTestCase() { apply_theme(*qApp, Shade::light); }
  void init() {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    shop_ = std::make_unique<evening::Shop>();
    told_.clear();
    refused_.clear();
    let_jonas_work();
    page_ = std::make_unique<EmergencyPage>(*shop_->session);
    QVERIFY(evening::put_up(*page_, *shop_->session, told_, refused_));
    shop_->sit_down("mara", "2468");
  }
  void cleanup() { page_.reset(); }

  void who_is_in_the_building_and_what_is_out_of_service_is_seen_with_whose_lock_it_is() {
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
    shop_->enter(db::EnterShopFact{db::Presence{"jonas", true, false}});
    shop_->enter(db::EnterShopFact{db::Visit{"Ada Quill", "visitor-rules", "mara"}});
    shop_->enter(db::PutOutOfService{"jp1", "T-7", "4", "guard slow", "mara"});
    QString seen = texts("here_now").join('\n');
    for (const char* words : {"2 of the shop's", "Jonas Lindqvist", "Mara Devlin (on duty)",
                              "Visitors in the building: 1", "Ada Quill, visitor, with Mara Devlin",
                              "tag T-7, padlock 4, key with Mara Devlin", "put on by Mara Devlin"})
      QVERIFY2(seen.contains(words), words);
    QVERIFY(find<QPushButton>("take_off"));
    QSignalSpy went(page_.get(), &Page::go);
    find<QPushButton>("take_off")->click();
    QCOMPARE(went.size(), 1);
    QCOMPARE(went[0][0].value<Place>().machine, MachineId("jp1"));
    // It is hers: nobody else is offered it.
    shop_->sit_down("ines", "1357");
    page_->refresh();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QVERIFY(!find<QPushButton>("take_off"));
  }

  void several_people_and_their_parts_are_recorded_by_keyboard_in_one_entry() {
    add("jonas");
    key(Qt::Key_Space);  // was hurt
    key(Qt::Key_Tab);
    key(Qt::Key_Space);  // was working
    add("tola");
    for (int i = 0; i < 3; ++i) key(Qt::Key_Tab);
    key(Qt::Key_Space);  // saw it
    press(Qt::Key_4);
    for (int i = 0; i < 3; ++i) key(Qt::Key_Tab);
    key(Qt::Key_Space);
    fill(2);
    QVERIFY(find<QLabel>("what_it_costs")->text().contains("checked out again"));
    find<QLineEdit>("incident_time")->setText("14:05");
    evening::grab(*page_, "incident");
    const std::size_t before = shop_->session->store().entries().size();
    press(Qt::Key_3);
    QVERIFY2(refused_.isEmpty(), qPrintable(refused_.join(' ')));
    QCOMPARE(shop_->session->store().entries().size(), before + 4);
    const db::Entry& last = shop_->session->store().entries().back();
    QVERIFY(last.at == evening::at("2026-11-26T20:05:00Z"));
    const auto* told = db::as<db::Happened>(last.fact);
    QVERIFY(told);
    QCOMPARE(told->what, std::string("the board kicked back"));
    QVERIFY(told->unnamed == std::vector<Part>{Part::saw});
    QVERIFY((facts<Incident>() == std::vector<Incident>{{"jonas", "shaper", 2, Part::hurt},
                                                        {"jonas", "shaper", 2, Part::operating},
                                                        {"tola", "shaper", 2, Part::saw}}));
    const QString follows = texts("what_follows").join('\n');
    QVERIFY2(follows.contains("Jonas Lindqvist: Shaper only with a supervisor"), qPrintable(follows));
    QVERIFY2(!follows.contains("Tola"), qPrintable(follows));
    evening::grab(*page_, "incident-follows");
  }

  void what_is_offered_afterwards_does_it_with_one_key_and_is_offered_no_longer() {
    add("jonas");
    key(Qt::Key_Tab);
    key(Qt::Key_Space);
    fill(1);
    press(Qt::Key_3);
    QVERIFY(find<QPushButton>("follow_out"));
    press(Qt::Key_4);
    QCOMPARE(facts<Lockout>().size(), std::size_t{1});
    QVERIFY(!find<QPushButton>("follow_out"));
    QVERIFY(find<QPushButton>("follow_pause")->text().contains("Jonas"));
    press(Qt::Key_5);
    QVERIFY2(refused_.isEmpty(), qPrintable(refused_.join(' ')));
    const auto pauses = facts<Suspend>();
    QCOMPARE(pauses.size(), std::size_t{1});
    QCOMPARE(pauses.front().person, PersonId("jonas"));
    QVERIFY(!find<QPushButton>("follow_pause"));
    press(Qt::Key_9);
    QTRY_VERIFY(find<QWidget>("record_incident")->isVisible());
    QVERIFY(find<QPlainTextEdit>("what_happened")->toPlainText().isEmpty());
  }

  void what_nobody_loses_anything_by_needs_no_name_either() {
    shop_->sit_down("mara", "2468");
    fill(3);
    QVERIFY2(find<QLabel>("what_it_costs")->text().contains("Name who was there, or nobody"),
             qPrintable(find<QLabel>("what_it_costs")->text()));
    press(Qt::Key_3);
    QVERIFY2(refused_.isEmpty(), qPrintable(refused_.join(' ')));
    QCOMPARE(facts<db::Happened>().size(), std::size_t{1});
  }

  void a_near_miss_needs_no_name_costs_nobody_anything_and_the_desk_records_it() {
    shop_->sit_down("ines", "1357");
    fill(4);
    QVERIFY(find<QLabel>("what_it_costs")->text().contains("takes nothing away"));
    press(Qt::Key_3);
    QVERIFY2(refused_.isEmpty(), qPrintable(refused_.join(' ')));
    QCOMPARE(facts<db::Happened>().size(), std::size_t{1});
    QVERIFY(facts<Incident>().empty());
    QVERIFY(texts("what_follows").contains("Nobody's standing changed."));
    QVERIFY(!find<QPushButton>("follow_pause"));
  }

  void what_is_typed_stays_where_somebody_else_has_to_record_it() {
    shop_->sit_down("ines", "1357");
    add("jonas");
    key(Qt::Key_Space);
    fill(2);
    QVERIFY(find<QLabel>("what_it_costs")->text().contains("let them sit down"));
    press(Qt::Key_3);
    QVERIFY2(refused_.join(' ').contains("only a near miss"), qPrintable(refused_.join(' ')));
    QVERIFY(facts<db::Happened>().empty());
    shop_->sit_down("mara", "2468");
    press(Qt::Key_3);
    QCOMPARE(facts<Incident>().size(), std::size_t{1});
    QCOMPARE(facts<db::Happened>().front().what, std::string("the board kicked back"));
  }

  void what_is_missing_is_said_and_the_cursor_goes_there() {
    add("jonas");
    fill(2);
    press(Qt::Key_3);
    QVERIFY2(refused_.back().contains("what part they had: Jonas Lindqvist"), qPrintable(refused_.back()));
    QVERIFY(qobject_cast<QCheckBox*>(QApplication::focusWidget()));
    key(Qt::Key_Space);
    find<QLineEdit>("incident_person")->setFocus();
    type("tol");
    press(Qt::Key_3);
    QVERIFY2(refused_.back().contains("“tol” is typed"), qPrintable(refused_.back()));
    QCOMPARE(QApplication::focusWidget(), find<QLineEdit>("incident_person"));
    find<QLineEdit>("incident_person")->clear();
    find<QLineEdit>("incident_time")->setText("25:61");
    press(Qt::Key_3);
    QVERIFY2(refused_.back().contains("no time of day"), qPrintable(refused_.back()));
    find<QLineEdit>("incident_time")->setText("23:00");
    press(Qt::Key_3);
    QVERIFY2(refused_.back().contains("still ahead"), qPrintable(refused_.back()));
    QVERIFY(facts<db::Happened>().empty());
    find<QLineEdit>("incident_time")->setText("16:00");
    press(Qt::Key_3);
    QCOMPARE(facts<db::Happened>().size(), std::size_t{1});
  }

  void whom_to_call_is_shown_at_once_in_the_first_field_and_noted_where_nobody_sits() {
    db::Person jonas = *shop_->session->store().person("jonas");
    jonas.emergency_contact = "Elin Lindqvist, 312 555 0188";
    shop_->enter(db::CorrectPerson{jonas});
    page_->open({});
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("hurt_person"));
    type("jonas");
    key(Qt::Key_Return);
    QVERIFY(find<QLabel>("hurt_contact"));
    QVERIFY(find<QLabel>("hurt_contact")->isVisible());
    QCOMPARE(find<QLabel>("hurt_contact")->text(), QString("Elin Lindqvist, 312 555 0188"));
    QVERIFY(find<QLabel>("hurt_contact")->font().pixelSize() > QApplication::font().pixelSize());
    // In the record below they are hurt already; the cursor stays for the next.
    QVERIFY(find<QWidget>("there_0")->findChildren<QCheckBox*>()[0]->isChecked());
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("hurt_person"));
    type("tola");
    key(Qt::Key_Return);
    const QString both = texts_of("hurt_contact").join('\n');
    QVERIFY2(both.contains("Elin") && both.contains("Nobody is entered"), qPrintable(both));
    QTest::qWait(20);
    QVERIFY(facts<db::ContactShown>().empty());

    shop_->session->hand_over();
    QVERIFY(texts_of("hurt_contact").join('\n').contains("Elin Lindqvist, 312 555 0188"));
    QTRY_COMPARE(facts<db::ContactShown>().size(), std::size_t{2});
    QCOMPARE(facts<db::ContactShown>()[0].person, PersonId("jonas"));
    page_->refresh();
    QTest::qWait(20);
    QCOMPARE(facts<db::ContactShown>().size(), std::size_t{2});
    QVERIFY(shop_->session->store().entries().back().entered_by.empty());

    // Who is recorded as hurt is still called for while what follows is read.
    shop_->sit_down("mara", "2468");
    fill(2);
    find<QLineEdit>("incident_person")->setFocus();
    type("ren");
    key(Qt::Key_Return);
    key(Qt::Key_Tab);
    key(Qt::Key_Space);
    press(Qt::Key_3);
    QCOMPARE(facts<Incident>().size(), std::size_t{3});
    QVERIFY(texts_of("hurt_contact").join('\n').contains("Elin"));
    press(Qt::Key_9);
    QVERIFY(texts_of("hurt_contact").isEmpty());
  }

  void with_nobody_seated_all_can_be_read_and_what_needs_a_seat_is_said() {
    QVERIFY(!find<QLabel>("nobody_sits")->isVisible());
    shop_->session->hand_over();
    QVERIFY(find<QLabel>("nobody_sits")->isVisible());
    auto* machine = find<QComboBox>("broken_machine");
    machine->setCurrentIndex(0);
    machine->setFocus();
    key(Qt::Key_Tab);
    type("the guard hangs");
    press(Qt::Key_1);
    QVERIFY2(refused_.join(' ').contains("Sit down with your PIN"), qPrintable(refused_.join(' ')));
    QVERIFY(facts<Lockout>().empty());
    shop_->sit_down("ines", "1357");
    QVERIFY(!find<QLabel>("nobody_sits")->isVisible());
    press(Qt::Key_1);
    QCOMPARE(facts<Lockout>().size(), std::size_t{1});
  }

  void the_shops_number_stands_largest_and_whoever_may_is_led_to_where_it_is_entered() {
    const auto* call = find<QLabel>("emergency_call");
    QVERIFY(call->text().contains("Call the local emergency number"));
    QVERIFY(find<QLabel>("emergency_none")->text().contains("A manager enters it"));
    QVERIFY(!find<QPushButton>("to_emergency_number")->isVisible());
    shop_->sit_down("odile", "8642");
    QVERIFY(find<QPushButton>("to_emergency_number")->isVisible());
    QSignalSpy went(page_.get(), &Page::go);
    find<QPushButton>("to_emergency_number")->click();
    QCOMPARE(went[0][0].value<Place>().page, QString("rosters"));
    QCOMPARE(went[0][0].value<Place>().item, std::string("emergency"));
    shop_->enter(db::EnterShopFact{db::EmergencyCall{"9-911", "Cedar Street 12, the door to the yard"}});
    QVERIFY2(call->text().contains("Call 9-911"), qPrintable(call->text()));
    QVERIFY(find<QLabel>("emergency_say")->text().contains("Cedar Street 12, the door to the yard"));
    QVERIFY(!find<QLabel>("emergency_none")->isVisible());
    for (const QLabel* other : page_->findChildren<QLabel*>())
      QVERIFY(other == call || other->font().pixelSize() < call->font().pixelSize());
    shop_->session->hand_over();
    QVERIFY(call->text().contains("9-911"));
  }

  void it_is_always_about_now_whatever_day_was_being_looked_at() {
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
    shop_->session->set_asked_at(shop_->session->now() - 86400);
    shop_->session->set_known(shop_->session->now() - 86400);
    const QString seen = texts("here_now").join('\n');
    QVERIFY2(seen.contains("Mara Devlin (on duty)"), qPrintable(seen));
    QVERIFY(!shop_->session->known() && !shop_->session->asked_at());
    QVERIFY2(told_.join(' ').contains("about now"), qPrintable(told_.join(' ')));
  }

  void what_follows_tells_all_bookings_everybody_and_who_is_still_at_a_machine() {
    for (int week = 1; week <= 8; ++week)
      shop_->enter(db::EnterShopFact{
          db::Booking{"tola", "mara", "sh1", "shaper", evening::at("2026-11-26T23:00:00Z") + week * 7 * 86400,
                      evening::at("2026-11-27T00:00:00Z") + week * 7 * 86400, db::Purpose::practise}});
    shop_->enter(db::EnterShopFact{db::Presence{"mara", true, true}});
    shop_->enter(db::EnterShopFact{db::Started{"jonas", "sh1", "shaper", ""}});
    shop_->enter(db::EnterShopFact{db::Started{"tola", "jp1", "jointer-planer/jointing", "mara"}});
    add("jonas");
    key(Qt::Key_Tab);
    key(Qt::Key_Space);  // was working
    add("mara");
    key(Qt::Key_Space);  // was hurt
    fill(2);
    press(Qt::Key_3);
    QVERIFY2(refused_.isEmpty(), qPrintable(refused_.join(' ')));
    QString seen = texts("what_follows").join('\n');
    QVERIFY2(seen.contains("Jonas Lindqvist at Shaper, unit 1, since"), qPrintable(seen));
    QVERIFY2(seen.contains("Tola Adeyemi at Jointer") && seen.contains("supervised by Mara Devlin"),
             qPrintable(seen));
    QStringList offered;
    for (const auto* each : page_->findChildren<QPushButton*>("follow_desk")) offered << each->text();
    QCOMPARE(offered,
             (QStringList{"What Jonas Lindqvist needs now", "Note that Tola Adeyemi left the machine"}));
    press(Qt::Key_4);
    seen = texts("what_follows").join('\n');
    QCOMPARE(seen.count("Tola Adeyemi, "), 6);
    QVERIFY2(seen.contains("And 2 more"), qPrintable(seen));
  }

  void nothing_is_cut_off_or_scrolls_sideways_in_the_smallest_window() {
    page_.reset();
    shop_->sit_down("odile", "8642");
    shop_->enter(
        db::EnterShopFact{db::EmergencyCall{"9-911", "Cedar Street 12, the door to the yard, second floor"}});
    MainWindow window(*shop_->session);
    window.show();
    Place place;
    place.page = "emergency";
    window.go(place);
    const auto* scroll = window.findChild<QScrollArea*>("emergency_scroll");
    const auto fits = [&](const char* when) {
      for (const QSize size : {QSize(1024, 768), QSize(1216, 740), QSize(1366, 768), QSize(1920, 1080)}) {
        window.resize(size);
        QTest::qWait(20);
        QVERIFY2(window.size() == size, when);
        QVERIFY2(scroll->horizontalScrollBar()->maximum() == 0,
                 qPrintable(QString("%1 at %2: %3 too wide")
                                .arg(when, QString::number(size.width()),
                                     QString::number(scroll->horizontalScrollBar()->maximum()))));
        for (const auto* box : scroll->findChildren<QAbstractButton*>())
          if (box->isVisible() && box->property("role") != "plain" && !qobject_cast<const QPushButton*>(box))
            QVERIFY2(box->width() >= box->sizeHint().width(), qPrintable(box->text()));
      }
    };
    fits("empty");
    for (const char* name : {"jonas", "tola"}) {
      window.findChild<QLineEdit*>("hurt_person")->setFocus();
      type(name);
      key(Qt::Key_Return);
    }
    auto* machine = window.findChild<QComboBox*>("incident_machine");
    machine->setCurrentIndex(machine->findData("sh1"));
    window.findChild<QComboBox*>("severity")->setCurrentIndex(1);
    QTest::keyClicks(window.findChild<QPlainTextEdit*>("what_happened"), "the board kicked back");
    window.findChild<QWidget*>("there_0")->findChildren<QCheckBox*>()[1]->click();
    fits("filled in");
    QTest::keyClick(&window, Qt::Key_3, Qt::ControlModifier);
    QTest::qWait(20);
    QVERIFY(window.findChild<QPushButton*>("follow_over"));
    fits("what follows");
  }
};

}  // namespace emergency_test

WM_PAGE_TEST(emergency_test, EmergencyTest)
#include "emergency_test.moc"
