// The Desk, worked by keyboard as a person at the desk does.
#include <QAbstractButton>
#include <QSpinBox>
#include <QTableWidget>
#include <QtTest>

#include "app/frame/main_window.h"
#include "app/theme/theme.h"
#include "page_test.h"
#include "small_shop.h"

namespace desk_test {

using namespace wm;
using namespace wm::app;

class DeskTest : public QObject {
  Q_OBJECT

  std::unique_ptr<SmallShop> shop_;
  std::unique_ptr<MainWindow> window_;

  QString text(const char* name) const { return window_->findChild<QLabel*>(name)->text(); }

  /// To whatever has the cursor, as a keyboard does.
  void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) const {
    QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : window_.get(), key, with);
  }
  void type(const QString& words) const { QTest::keyClicks(QApplication::focusWidget(), words); }

  static db::Booking held_until_it_begins() {
    const Instant from = SmallShop::at("2026-11-26T00:30:00Z");
    db::Booking held{"jonas", "mara", "j1", "jointer-planer/jointing", from, from + std::int64_t{3600}};
    held.held_through = from;
    return held;
  }

  template <class T>
  std::vector<T> facts() const {
    std::vector<T> found;
    for (const db::Entry& entry : shop_->session->store().entries()) {
      if (const auto* own = std::get_if<db::ShopFact>(&entry.fact)) {
        if constexpr (std::is_constructible_v<db::ShopFact, T>)
          if (const auto* fact = std::get_if<T>(own)) found.push_back(*fact);
      } else if constexpr (std::is_constructible_v<Fact, T>) {
        if (const auto* fact = std::get_if<T>(&std::get<Fact>(entry.fact))) found.push_back(*fact);
      }
    }
    return found;
  }

 private slots:
  void initTestCase() {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    apply_theme(*qApp, Shade::light);
  }

  void init() {
    shop_ = std::make_unique<SmallShop>();
    QVERIFY(shop_->session->sit_down("ines", "3333"));
    window_ = std::make_unique<MainWindow>(*shop_->session);
    Place desk;
    desk.page = "desk";
    window_->go(desk);
    window_->resize(1366, 768);
    window_->show();
    QVERIFY(QTest::qWaitForWindowActive(window_.get()));
  }
  void cleanup() {
    window_.reset();
    shop_.reset();
  }

  void the_search_field_has_the_cursor_at_first() {
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("desk_search"));
  }

  void from_a_name_typed_to_a_one_on_one_booked_in_at_most_eight_keys() {
    type("jonas li");
    int keys = 0;
    const auto press = [&](Qt::Key k, Qt::KeyboardModifiers with = Qt::NoModifier) { key(k, with), ++keys; };
    press(Qt::Key_Return);
    QCOMPARE(text("person_name"), QString("Jonas Lindqvist"));
    for (const char letter : {'j', 'o', 'i'}) type(QString(letter)), ++keys;
    QCOMPARE(text("answer"),
             QString("Jonas may use the jointer/planer for jointing only with a supervisor, through "
                     "2 March 2028, while staff are in."));
    QVERIFY2(text("answer_now").contains("Mara Devlin"), qPrintable(text("answer_now")));
    QVERIFY2(text("next_step").startsWith("First that fits: Wednesday"), qPrintable(text("next_step")));
    press(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(keys <= 8, qPrintable(QString::number(keys)));
    const auto booked = facts<db::Booking>();
    QCOMPARE(booked.size(), std::size_t(2));
    QCOMPARE(booked.back().person, PersonId("jonas"));
    QCOMPARE(booked.back().assessor, PersonId("mara"));
    QVERIFY2(text("message").startsWith("Booked Jonas Lindqvist"), qPrintable(text("message")));
    QVERIFY2(text("next_step").startsWith("Booked:"), qPrintable(text("next_step")));
  }

  void accents_and_case_do_not_matter() {
    type("LUCJA hofer");
    key(Qt::Key_Return);
    QCOMPARE(text("person_name"), QString::fromUtf8("Łucja Höfer"));
    QVERIFY2(text("answer").contains("not yet"), qPrintable(text("answer")));
  }

  void a_number_finds_its_person() {
    type("0413");
    key(Qt::Key_Return);
    QCOMPARE(text("person_name"), QString::fromUtf8("Łucja Höfer"));
  }

  void a_paper_taken_opens_the_machine() {
    type("lucja");
    key(Qt::Key_Return);
    type("dri");
    key(Qt::Key_R, Qt::ControlModifier);
    key(Qt::Key_Return);
    const auto papers = facts<Document>();
    QCOMPARE(papers.back().person, PersonId("lucja"));
    QCOMPARE(papers.back().document, std::string("waiver"));
    QVERIFY2(text("answer").contains("without a supervisor"), qPrintable(text("answer")));
  }

  void a_papers_last_day_counts_however_the_form_is_saved() {
    for (const auto& [how, last] : {std::pair(Qt::NoModifier, 1), std::pair(Qt::ControlModifier, 2)}) {
      type("lucja");
      key(Qt::Key_Return);
      key(Qt::Key_R, Qt::ControlModifier);
      window_->findChild<QLineEdit*>("last_day")->setFocus();
      type(QString("2027-03-0%1").arg(last));
      key(Qt::Key_Return, how);
      QCOMPARE(facts<Document>().back().until, std::optional(day_of({2027, 3, last})));
      key(Qt::Key_F2);
    }
  }

  void the_answer_of_somebody_under_18_shows_no_age_and_no_birthday() {
    type("pim");
    key(Qt::Key_Return);
    type("joi");
    for (const QLabel* label : window_->findChildren<QLabel*>()) {
      QVERIFY2(!label->text().contains("2009") && !label->text().contains("5 March"),
               qPrintable(label->text()));
      QVERIFY2(!label->text().contains("2027"), qPrintable(label->text()));
    }
  }

  void a_card_opens_its_person_and_presses_no_button() {
    window_->findChild<QPushButton*>("hand_over")->setFocus();
    QTest::keyClicks(QApplication::focusWidget(), ";0698935572?");
    key(Qt::Key_Return);
    QCOMPARE(text("person_name"), QString("Jonas Lindqvist"));
    QVERIFY(shop_->session->seated());
  }

  void one_key_each_says_who_has_come() {
    key(Qt::Key_Down);
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("due"));
    key(Qt::Key_A);
    QCOMPARE(facts<db::Attendance>().size(), std::size_t(1));
    QVERIFY(facts<db::Attendance>().back().turnout == db::Turnout::arrived);
    key(Qt::Key_N);
    QVERIFY(facts<db::Attendance>().back().turnout == db::Turnout::not_come);
    const auto how_it_stands = [this] {
      const auto* due = window_->findChild<QTableWidget*>("due");
      return due->item(due->currentRow(), 4)->text();
    };
    QCOMPARE(how_it_stands(), QString("did not come"));
    key(Qt::Key_Z);
    QVERIFY2(how_it_stands().startsWith("arrived"), qPrintable(how_it_stands()));
    key(Qt::Key_Z);
    QVERIFY2(how_it_stands().startsWith("due"), qPrintable(how_it_stands()));
    key(Qt::Key_Z);  // nothing is left to take back
    QVERIFY(text("message").contains("is taken back"));
  }

  void who_is_booked_here_waits_no_more_and_the_key_for_waiting_goes_both_ways() {
    type("jonas li");
    key(Qt::Key_Return);
    type("joi");
    const auto waits = [this] { return facts<db::Waiting>().size() - facts<db::WaitingEnd>().size(); };
    const auto before = waits();
    key(Qt::Key_L, Qt::ControlModifier);
    QCOMPARE(waits(), before + 1);
    QCOMPARE(window_->findChild<QAbstractButton*>("waiting")->text(), QString("Stop waiting"));
    key(Qt::Key_L, Qt::ControlModifier);
    QCOMPARE(waits(), before);
    key(Qt::Key_L, Qt::ControlModifier);
    key(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY2(text("message").startsWith("Booked Jonas Lindqvist"), qPrintable(text("message")));
    QCOMPARE(waits(), before);
  }

  void what_is_held_says_so_and_is_made_certain_here() {
    QVERIFY(shop_->session->commit(db::EnterShopFact{held_until_it_begins()}));
    const auto* due = window_->findChild<QTableWidget*>("due");
    QStringList states;
    for (int row = 0; row < due->rowCount(); ++row) states << due->item(row, 4)->text();
    QVERIFY2(states.contains("held, not for certain"), qPrintable(states.join(", ")));
    type("jonas li");
    key(Qt::Key_Return);
    type("joi");
    QVERIFY2(text("next_step").startsWith("Held, and not for certain"), qPrintable(text("next_step")));
    key(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(facts<db::Confirmed>().size(), std::size_t{1});
    QVERIFY2(text("next_step").startsWith("Booked:"), qPrintable(text("next_step")));
  }

  void whoever_comes_to_what_was_held_until_it_began_has_it() {
    Session& session = *shop_->session;
    const db::Booking held = held_until_it_begins();
    QVERIFY(session.commit(db::EnterShopFact{held}));
    auto* due = window_->findChild<QTableWidget*>("due");
    const auto row = [&](const QString& state) {
      key(Qt::Key_F2);
      for (int i = 0; i < due->rowCount(); ++i)
        if (due->item(i, 4)->text() == state) return i;
      return -1;
    };
    shop_->now = held.to;
    emit session.changed();
    QCOMPARE(row("held, begun, still free"), -1);
    shop_->now = held.from + 300;
    emit session.changed();
    QVERIFY(row("held, begun, still free") >= 0);
    // Somebody else has it, and then has not.
    db::Booking other = held;
    other.person = "lucja";
    other.from = held.from + 900;
    other.purpose = db::Purpose::teach;
    other.held_through.reset();
    const auto taken = session.commit(db::EnterShopFact{other});
    QVERIFY2(taken, taken ? "" : taken.error().what.c_str());
    QCOMPARE(row("held, begun, still free"), -1);
    QVERIFY(session.commit(db::EnterShopFact{db::Cancel{taken->entries.front().id, "ill"}}));
    due->setCurrentCell(row("held, begun, still free"), 0);
    due->setFocus();
    QTest::keyClick(due, Qt::Key_L);
    QCOMPARE(facts<db::Confirmed>().size(), std::size_t{1});
    QVERIFY(row("came late, check-out open") >= 0);
  }

  void visitors_stand_beside_who_is_here_and_a_host_who_left_is_told() {
    const auto here = [this] {
      QCoreApplication::processEvents();
      QStringList said;
      for (const QLabel* label : window_->findChildren<QLabel*>())
        if (label->isVisible()) said << label->text();
      return said.join('\n');
    };
    QVERIFY(!here().contains("Visitors for the day"));
    // One key leads to the form, from the Desk.
    key(Qt::Key_D, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(window_->current()->id(), QString("people"));
    QCOMPARE(QApplication::focusWidget()->objectName(), QString("visitor_name"));
    type("Ada Quill");
    window_->findChild<QComboBox*>("visitor_paper")->setFocus();
    type("waiver");
    window_->findChild<QComboBox*>("visitor_host")->setFocus();
    type("Mara");
    key(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(facts<db::Visit>().size(), std::size_t(1));
    QVERIFY((facts<db::Visit>()[0] == db::Visit{"Ada Quill", "waiver", "mara"}));
    key(Qt::Key_F2);
    QVERIFY2(here().contains("Visitors for the day") &&
                 here().contains("Ada Quill, visitor, with Mara Devlin, since 5:20 PM; uses nothing"),
             qPrintable(here()));
    QVERIFY(!here().contains("nobody stays with them"));
    // A visitor is none of the shop's people: nobody to find, and nothing to use.
    type("quill");
    key(Qt::Key_Return);
    QVERIFY(!window_->findChild<QLabel*>("person_name")->isVisible());
    key(Qt::Key_F2);
    QVERIFY(shop_->session->commit(db::EnterShopFact{db::Presence{"mara", false, false}}));
    QVERIFY2(here().contains("Mara Devlin has left: nobody stays with them"), qPrintable(here()));
    auto* left = window_->current()->findChild<QPushButton*>("visitor_left");
    QVERIFY(left);
    left->click();
    QVERIFY2(here().contains("The visitor has left."), qPrintable(here()));
    QVERIFY(!here().contains("Ada Quill"));
    QCOMPARE(facts<db::VisitEnd>().size(), std::size_t(1));
  }

  void what_is_said_of_tonight_is_scrolled_where_it_has_no_room() {
    for (const char* each : {"d1", "b1", "j1"})
      for (int i = 0; i < 4; ++i)
        QVERIFY(
            shop_->session->commit(db::PutOutOfService{each, std::to_string(i), "4", "belt torn", "ines"}));
    key(Qt::Key_F2);
    for (int i = 0; i < 4; ++i) QTest::qWait(20);
    int looked_at = 0;
    for (const QLabel* label : window_->current()->findChildren<QLabel*>())
      if (label->isVisible() && label->wordWrap()) {
        ++looked_at;
        QVERIFY2(label->height() >= label->heightForWidth(label->width()), qPrintable(label->text()));
      }
    QVERIFY(looked_at >= 12);
  }

  void a_visitor_is_gone_when_the_day_is() {
    QVERIFY(shop_->session->commit(db::EnterShopFact{db::Visit{"Ada Quill", "waiver", "mara"}}));
    const auto there = [this] {
      QCoreApplication::processEvents();
      for (const QLabel* label : window_->findChildren<QLabel*>())
        if (label->isVisible() && label->text().contains("Ada Quill")) return true;
      return false;
    };
    key(Qt::Key_F2);
    QVERIFY(there());
    shop_->now = shop_->now + 7 * 3600;  // after midnight
    window_->current()->refresh();
    QVERIFY(!there());
  }

  void one_key_blanks_the_answer_and_shows_it_again() {
    type("jonas");
    key(Qt::Key_Return);
    const auto* answer = window_->findChild<QLabel*>("answer");
    QVERIFY(answer->isVisible());
    key(Qt::Key_B, Qt::ControlModifier);
    QVERIFY(!answer->isVisible());
    key(Qt::Key_B, Qt::ControlModifier);
    QVERIFY(answer->isVisible());
  }

  void what_the_desk_may_not_do_is_told_and_nothing_is_entered() {
    shop_->session->hand_over();
    const auto before = shop_->session->store().last_commit();
    type("jonas");
    key(Qt::Key_Return);
    type("joi");
    key(Qt::Key_Return, Qt::ControlModifier);
    QCOMPARE(shop_->session->store().last_commit(), before);
    QVERIFY(!text("message").isEmpty());
  }

  void a_quiz_is_taken_at_its_station_unless_a_manager_enters_a_paper() {
    for (Fact fact : {Fact(Document{"lucja", "waiver", {}}), Fact(Lesson{"lucja", "guards", 1})})
      QVERIFY(shop_->session->commit(db::EnterFact{fact}));
    type("lucja");
    key(Qt::Key_Return);
    type("joi");
    const auto* quiz = window_->findChild<QPushButton*>("quiz");
    QVERIFY(!quiz->isVisible());
    QVERIFY(!window_->findChild<QPushButton*>("do_next")->isVisible());
    // The small shop has issued no bank for it.
    QVERIFY2(text("next_step").contains("No questions have been issued"), qPrintable(text("next_step")));
    QVERIFY(shop_->session->sit_down("rosa", "1111"));
    QVERIFY(quiz->isVisible());
    key(Qt::Key_M, Qt::ControlModifier);
    window_->findChild<QSpinBox*>("correct")->setValue(17);
    window_->findChild<QLineEdit*>("taken")->setFocus();
    type("2026-11-20");
    key(Qt::Key_Return);
    QVERIFY2(text("message").startsWith("Entered"), qPrintable(text("message")));
    const db::Entry& entry = shop_->session->store().entries().back();
    QVERIFY((std::get<Fact>(entry.fact) == Fact(Quiz{"lucja", "cutters", 1, 17, 20, 0})));
    QVERIFY(entry.from_paper);
    QVERIFY(entry.at == SmallShop::at("2026-11-20T18:00:00Z"));
  }

  void one_key_from_anywhere_when_somebody_is_hurt() {
    key(Qt::Key_H, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(window_->current()->id(), QString("emergency"));
    key(Qt::Key_1, Qt::ControlModifier);
    QVERIFY2(text("message").contains("No machine"), qPrintable(text("message")));
    key(Qt::Key_Down);
    key(Qt::Key_1, Qt::ControlModifier);
    QVERIFY2(text("message").contains("reason"), qPrintable(text("message")));
    type("blade guard broken");
    key(Qt::Key_1, Qt::ControlModifier);
    QCOMPARE(facts<Lockout>().size(), std::size_t(1));
    QCOMPARE(window_->findChild<QComboBox*>("broken_machine")->currentIndex(), -1);
    key(Qt::Key_F2);
    QCOMPARE(window_->current()->id(), QString("desk"));
  }
};

}  // namespace desk_test

WM_PAGE_TEST(desk_test, DeskTest)
#include "desk_test.moc"
