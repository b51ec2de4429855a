// Machines by keyboard: out of service with its tag, an attempt to reach the owner, back again; changes and
// units.
#include "app/machines/machines_page.h"
#include "lists_shop.h"

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
  void a_machine_goes_out_of_service_with_its_tag_and_who_holds_the_key() {
    ListsShop shop;
    shop.sit("dee");
    MachinesPage page(shop.session());
    shop.show(page);
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("search"));
    QVERIFY(!out_of_service(shop, "b1"));
    put_out(page, "by the door");
    QVERIFY(out_of_service(shop, "b1"));
    QVERIFY(!out_of_service(shop, "b2"));
    const QString seen = seen_on(page);
    for (const char* words : {"out of service", "tag 14", "put on by Dee Griffith", "key with Dee Griffith",
                              "Guard cracked", "red 3"})
      QVERIFY2(seen.contains(words), words);
    QVERIFY(!seen.contains("is safe"));
    QVERIFY(!seen.contains("locked", Qt::CaseInsensitive));
  }

  void the_desk_may_not_take_off_its_lock_but_an_instructor_takes_off_their_own() {
    ListsShop shop;
    shop.sit("ivo");
    MachinesPage page(shop.session());
    shop.show(page);
    put_out(page, "by the door");
    QVERIFY(out_of_service(shop, "b1"));
    press(page, Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    type(page, "New guard fitted");
    press(page, Qt::Key_Return);
    QVERIFY(!out_of_service(shop, "b1"));
    QVERIFY(seen_on(page).contains("New guard fitted"));
  }

  void a_manager_takes_anothers_lock_off_only_after_an_attempt_to_reach_them() {
    ListsShop shop;
    shop.sit("ivo");
    MachinesPage page(shop.session());
    shop.show(page);
    put_out(page, "by the door");
    shop.sit("mia");
    press(page, Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    press(page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(page.findChild<QLabel*>("problem")->isVisible());
    QVERIFY(out_of_service(shop, "b1"));
    press(page, Qt::Key_Escape);
    press(page, Qt::Key_R, Qt::ControlModifier);
    type(page, "telephoned twice, no answer");
    press(page, Qt::Key_Return);
    QVERIFY(seen_on(page).contains("telephoned twice, no answer"));
    press(page, Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    press(page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(!out_of_service(shop, "b1"));
  }

  void a_change_says_what_was_changed_and_stands_in_the_history() {
    ListsShop shop;
    shop.sit("mia");
    MachinesPage page(shop.session());
    shop.show(page);
    type(page, "old combination");
    press(page, Qt::Key_G, Qt::ControlModifier);
    press(page, Qt::Key_Return);
    QVERIFY(page.findChild<QLabel*>("problem")->isVisible());
    type(page, "New cutterhead");
    press(page, Qt::Key_Return);
    const auto* change = std::get_if<Change>(&std::get<Fact>(shop.session().store().entries().back().fact));
    QVERIFY(change);
    QCOMPARE(change->target, TargetName("jointer-planer"));
    QVERIFY(seen_on(page).contains("New cutterhead"));
  }

  void a_manager_enters_a_unit_and_nobody_else_is_offered_it() {
    ListsShop shop;
    shop.sit("dee");
    MachinesPage page(shop.session());
    shop.show(page);
    QVERIFY(!page.findChild<QPushButton*>("new"));
    shop.sit("mia");
    press(page, Qt::Key_N, Qt::ControlModifier);
    type(page, "Lathe by the window");
    auto* machine = page.findChild<QComboBox*>("class");
    machine->setCurrentIndex(machine->findText("Lathe"));
    page.findChild<QLineEdit*>("number")->setText("l1");
    press(page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(seen_on(page).contains("Lathe by the window"));
  }
};

QTEST_MAIN(MachinesTest)
#include "machines_test.moc"
