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

  void the_desk_may_not_take_off_its_lock_but_an_instructor_takes_off_their_own() {
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
    shop.sit("mia");
    press(shop.page, Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->isVisible());
    QVERIFY(out_of_service(shop, "b1"));
    press(shop.page, Qt::Key_Escape);
    press(shop.page, Qt::Key_R, Qt::ControlModifier);
    type(shop.page, "telephoned twice, no answer");
    press(shop.page, Qt::Key_Return);
    QVERIFY(seen_on(shop.page).contains("telephoned twice, no answer"));
    press(shop.page, Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    press(shop.page, Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(!out_of_service(shop, "b1"));
  }

  void a_change_says_what_was_changed_and_stands_in_the_history() {
    Shown<MachinesPage> shop("mia");
    type(shop.page, "old combination");
    press(shop.page, Qt::Key_G, Qt::ControlModifier);
    press(shop.page, Qt::Key_Return);
    QVERIFY(shop.page.findChild<QLabel*>("problem")->isVisible());
    type(shop.page, "New cutterhead");
    press(shop.page, Qt::Key_Return);
    const auto* change = std::get_if<Change>(&std::get<Fact>(shop.session().store().entries().back().fact));
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

QTEST_MAIN(MachinesTest)
#include "machines_test.moc"
