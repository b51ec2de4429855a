// A machine started at the Desk and left again, by keyboard.
#include <QtWidgets>

#include "app/desk/desk_page.h"
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
