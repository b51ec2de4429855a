// Machines by keyboard: out of service with its tag, an attempt to reach the owner, back again; changes and
// units.
#include "app/machines/machines_page.h"

#include "app/widgets/person_box.h"
#include "app/words/lock_words.h"
#include "core/time/text.h"
#include "db/journal/subject.h"
#include "lists_shop.h"
#include "page_test.h"

namespace machines_test {

using namespace wm;
using namespace wm::app;

namespace {

bool out_of_service(ListsShop& shop, const MachineId& machine) {
  return !shop.session()
              .decider()
              .may_start("ines", machine, "", shop.session().now(), true, {}, {})
              .lockouts.empty();
}

/// Chooses the unit and puts it out of service as whoever sits there.
void put_out(Page& page, const QString& unit) {
  type(page, unit);
  press(page, Qt::Key_L, Qt::ControlModifier);
  type(page, "Guard cracked");
  press(page, Qt::Key_Tab);
  type(page, "14");
  press(page, Qt::Key_Tab);
  type(page, "red 3");
  press(page, Qt::Key_Return, Qt::ControlModifier);
}

}  // namespace

class MachinesTest : public QObject {
  Q_OBJECT
 private slots:
  void a_lock_that_came_with_the_import_says_so() {
    const RecordReader reader{[](const PersonId& id) { return QString::fromStdString(id); }, {}, {}};
    QCOMPARE(reader.entered_by("dee"), "dee");
    QCOMPARE(reader.entered_by({}), "import");
  }

  void a_machine_goes_out_of_service_with_its_tag_and_who_holds_the_key() {
    Shown<MachinesPage> shop("dee");
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("search"));
    QVERIFY(!out_of_service(shop, "b1"));
    put_out(shop.page, "by the door");
    QVERIFY(out_of_service(shop, "b1"));
    QVERIFY(!out_of_service(shop, "b2"));
    const QString seen = seen_on(shop.page);
    for (const char* words : {"out of service", "tag 14", "put on by Dee Griffith", "key with Dee Griffith",
                              "Guard cracked", "red 3"})
      QVERIFY2(seen.contains(words), words);
    QVERIFY(!seen.contains("is safe"));
    QVERIFY(!seen.contains("locked", Qt::CaseInsensitive));
  }

  void whoever_put_a_lock_on_takes_it_off_at_the_desk_too() {
    Shown<MachinesPage> shop("dee");
    put_out(shop.page, "by the door");
    QVERIFY(out_of_service(shop, "b1"));
    shop.wait(24 * 3600);
    shop.page.refresh();
    QVERIFY(shop.page.findChild<QPushButton*>("take_off"));
    shop.sit("ivo");
    QVERIFY(!shop.page.findChild<QPushButton*>("take_off"));
    shop.sit("dee");
    press(shop.page, Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    type(shop.page, "New guard fitted");
    press(shop.page, Qt::Key_Return);
    QVERIFY(!out_of_service(shop, "b1"));
  }

  void where_no_padlock_was_put_on_nobody_is_said_to_have_its_key() {
    Shown<MachinesPage> shop("dee");
    type(shop.page, "by the door");
    press(shop.page, Qt::Key_L, Qt::ControlModifier);
    type(shop.page, "Guard cracked");
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(out_of_service(shop, "b1"));
    const QString seen = seen_on(shop.page);
    QVERIFY2(seen.contains("no padlock noted") && seen.contains("put on by Dee Griffith"), qPrintable(seen));
    QVERIFY2(!seen.contains("key with", Qt::CaseInsensitive), qPrintable(seen));
  }

  void an_instructor_takes_off_their_own_lock() {
    Shown<MachinesPage> shop("ivo");
    put_out(shop.page, "by the door");
    QVERIFY(out_of_service(shop, "b1"));
    press(shop.page, Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    type(shop.page, "New guard fitted");
    press(shop.page, Qt::Key_Return);
    QVERIFY(!out_of_service(shop, "b1"));
    QVERIFY(seen_on(shop.page).contains("New guard fitted"));
  }

  void a_manager_takes_anothers_lock_off_only_after_an_attempt_to_reach_them() {
    Shown<MachinesPage> shop("ivo");
    put_out(shop.page, "by the door");
    shop.sit("dee");
    QVERIFY(!shop.page.findChild<QPushButton*>("take_off"));
    QVERIFY(!shop.page.findChild<QPushButton*>("attempt"));
    QVERIFY(seen_on(shop.page).contains("Ask the one who put it on"));
    shop.sit("mia");
    QVERIFY(!shop.page.findChild<QPushButton*>("take_off"));
    QVERIFY(seen_on(shop.page).contains("nobody has tried to reach them"));
    press(shop.page, Qt::Key_R, Qt::ControlModifier);
    type(shop.page, "telephoned twice, no answer");
    press(shop.page, Qt::Key_Return);
    QVERIFY(seen_on(shop.page).contains("telephoned twice, no answer"));
    press(shop.page, Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(!out_of_service(shop, "b1"));
  }

  void a_lock_that_the_desk_enters_for_somebody_is_theirs_to_take_off() {
    Shown<MachinesPage> shop("dee");
    type(shop.page, "by the door");
    press(shop.page, Qt::Key_L, Qt::ControlModifier);
    type(shop.page, "Guard cracked");
    shop.page.findChild<PersonBox*>("key_holder")->set_person(PersonId("ivo"));
    shop.page.findChild<PersonBox*>("put_on_by")->set_person(PersonId("ivo"));
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(out_of_service(shop, "b1"));
    QVERIFY(seen_on(shop.page).contains("put on by Ivo Lindqvist"));
    QVERIFY(!shop.page.findChild<QPushButton*>("take_off"));
    shop.sit("ivo");
    QVERIFY(shop.page.findChild<QPushButton*>("take_off"));
  }

  void who_put_a_lock_on_is_not_called_import_where_it_is_not_known() {
    const auto name = [](const PersonId& id) { return QString::fromStdString(id); };
    db::LockOn lock;
    lock.tag = {"l", "T-31", "padlock 5", "belt slips", "ivo", {}};
    QVERIFY(whose_lock_words(lock, name).contains("not known"));
    QVERIFY(!lock_words(lock, name, Zone::utc()).contains("import"));
    QVERIFY(lock_words(lock, name, Zone::utc()).contains("tag T-31, padlock 5, key with ivo"));
    lock.whose = "mia";
    QCOMPARE(whose_lock_words(lock, name), QString("mia"));
  }

  void a_change_says_beforehand_whose_check_outs_it_has_renewed_and_afterwards_whom_it_still_holds() {
    Shown<MachinesPage> shop("mia");
    shop.change_rules([](Rulebook& book) {
      for (MachineClass& machine : book.classes)
        if (machine.name == "bandsaw")
          std::get<NeedCheckout>(machine.gates[0].need.need).renew_after_change = true;
    });
    type(shop.page, "by the door");
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    const QString effect = shop.page.findChild<QLabel*>("effect")->text();
    QVERIFY2(
        effect.contains("asked for again") && effect.contains("Bandsaw") && effect.contains("Ольга Иванова"),
        qPrintable(effect));
    QVERIFY2(effect.contains("2 people") && effect.contains("Castellanos"), qPrintable(effect));
    type(shop.page, "A wider blade");
    shop.page.findChild<QComboBox*>("kind")->setCurrentIndex(0);
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    const auto& entries = shop.session().store().entries();
    const auto* altered = db::as<db::Altered>(entries.back().fact);
    QVERIFY(altered);
    QVERIFY((*altered ==
             db::Altered{entries[entries.size() - 2].id, "b1", db::Alteration::cutter, "A wider blade"}));
    shop.wait(60);
    shop.page.refresh();
    const QString seen = seen_on(shop.page);
    QVERIFY2(seen.contains("A wider blade") && seen.contains("Not checked out again since: ") &&
                 seen.contains("Ольга Иванова") && seen.contains("Castellanos"),
             qPrintable(seen));
  }

  void a_change_of_yesterday_is_entered_with_its_day_and_time() {
    Shown<MachinesPage> shop("mia");
    type(shop.page, "by the door");
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    type(shop.page, "A wider blade");
    const Instant now = shop.session().now();
    const Zone& zone = shop.session().zone();
    shop.page.findChild<QLineEdit*>("changed_day")
        ->setText(QString::fromStdString(to_text(zone.day(now) + -1)));
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->text().contains("not said at what time"));
    shop.page.findChild<QLineEdit*>("changed_time")->setText("10:15");
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    const auto& entries = shop.session().store().entries();
    QVERIFY(db::as<db::Altered>(entries.back().fact));
    const LocalTime at = zone.local(entries.back().at);
    QVERIFY(at.day == zone.day(now) + -1 && at.hour == 10 && at.minute == 15);
    QVERIFY(db::as<Change>(entries[entries.size() - 2].fact));
  }

  void a_manager_says_of_a_repair_that_using_the_machine_is_as_before() {
    Shown<MachinesPage> shop("ivo");
    type(shop.page, "by the door");
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    QVERIFY(!shop.page.findChild<QComboBox*>("use"));
    press(shop.page, Qt::Key_Escape);
    shop.sit("mia");
    shop.change_rules([](Rulebook& book) {
      for (MachineClass& machine : book.classes)
        if (machine.name == "bandsaw")
          std::get<NeedCheckout>(machine.gates[0].need.need).renew_after_change = true;
    });
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    type(shop.page, "A new lamp");
    auto* use = shop.page.findChild<QComboBox*>("use");
    auto* kind = shop.page.findChild<QComboBox*>("kind");
    auto* effect = shop.page.findChild<QLabel*>("effect");
    use->setCurrentIndex(1);
    QVERIFY(!use->isEnabled());  // of what cuts
    QVERIFY(effect->text().contains("asked for again, on every unit"));
    kind->setCurrentIndex(static_cast<int>(db::Alteration::repair));
    QVERIFY(use->isEnabled());
    QVERIFY2(effect->text().contains("No check-out is asked for again"), qPrintable(effect->text()));
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    const auto* told = db::as<db::Altered>(shop.session().store().entries().back().fact);
    QVERIFY(told);
    QVERIFY((*told == db::Altered{{}, "b1", db::Alteration::repair, "A new lamp", "bandsaw"}));
    const QString seen = seen_on(shop.page);
    QVERIFY2(seen.contains("A new lamp") && seen.contains("used as before"), qPrintable(seen));
    QVERIFY(!seen.contains("Not checked out again since"));
  }

  void a_change_that_no_rule_asks_about_says_so_and_the_desk_is_offered_none() {
    Shown<MachinesPage> shop("mia");
    type(shop.page, "old combination");
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    QVERIFY(shop.page.findChild<QLabel*>("effect")->text().contains("ask nobody"));
    press(shop.page, Qt::Key_Escape);
    shop.sit("dee");
    QVERIFY(!shop.page.findChild<QPushButton*>("change"));
  }

  void a_change_says_what_was_changed_and_stands_in_the_history() {
    Shown<MachinesPage> shop("mia");
    type(shop.page, "old combination");
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    press(shop.page, Qt::Key_Return);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->isVisible());
    type(shop.page, "New cutterhead");
    press(shop.page, Qt::Key_Return);
    const auto& entries = shop.session().store().entries();
    const auto* change = db::as<Change>(entries[entries.size() - 2].fact);
    QVERIFY(change);
    QCOMPARE(change->target, TargetName("jointer-planer"));
    QVERIFY(seen_on(shop.page).contains("New cutterhead"));
  }

  void a_manager_enters_a_unit_and_nobody_else_is_offered_it() {
    Shown<MachinesPage> shop("dee");
    QVERIFY(!shop.page.findChild<QPushButton*>("new"));
    shop.sit("mia");
    press(shop.page, Qt::Key_N, Qt::ControlModifier);
    type(shop.page, "Lathe by the window");
    auto* machine = shop.page.findChild<QComboBox*>("class");
    machine->setCurrentIndex(machine->findText("Lathe"));
    shop.page.findChild<QLineEdit*>("number")->setText("l1");
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(seen_on(shop.page).contains("Lathe by the window"));
  }
};

}  // namespace machines_test

WM_PAGE_TEST(machines_test, MachinesTest)
#include "machines_test.moc"
