#pragma once
// A small shop for the list pages' tests: names of several scripts, a machine with modes, a clock that stands
// still.
#include <QTemporaryDir>
#include <QtTest>
#include <QtWidgets>
#include <memory>

#include "app/page/page.h"
#include "app/theme/theme.h"

namespace wm::app {

/// 14 March 2026, 18:00 in Chicago.
inline constexpr Instant lists_evening{1773529200};

class ListsShop {
 public:
  ListsShop() {
    db::StoreOptions cheap;
    cheap.pin_operations = 1;
    cheap.pin_memory = 8192;
    auto made = db::Store::create(
        folder_.filePath("shop.wm").toStdString(), {"Hollow Oak Workshop", "America/Chicago", 0},
        [now = now_] { return *now; }, cheap);
    if (!made) qFatal("%s", made.error().what.c_str());
    const auto founded = made->found(past());
    if (!founded) qFatal("%s: %s", founded.error().where.c_str(), founded.error().what.c_str());
    session_ = std::make_unique<Session>(std::move(*made));
  }

  Session& session() { return *session_; }
  QString file(const QString& name) const { return folder_.filePath(name); }
  void wait(std::int64_t seconds) { now_->seconds += seconds; }
  void sit(const PersonId& person) {
    const std::string pin = person == "mia" ? "1111" : person == "ivo" ? "2222" : "3333";
    if (const auto sat = session_->sit_down(person, pin); !sat) qFatal("%s", sat.error().what.c_str());
  }
  RecordId enter(db::Action action) {
    const auto done = session_->commit(std::move(action));
    if (!done) qFatal("%s: %s", done.error().where.c_str(), done.error().what.c_str());
    return done->entries.empty() ? RecordId() : done->entries.front().id;
  }
  /// As the window does it: drawn again on every change, opened, with the cursor in its first field.
  void show(Page& page) {
    QObject::connect(session_.get(), &Session::changed, &page, &Page::refresh);
    QObject::connect(session_.get(), &Session::seated_changed, &page, &Page::refresh);
    page.resize(1176, 768);
    page.show();
    page.refresh();
    page.open({});
    QVERIFY(QTest::qWaitForWindowActive(&page));
  }

  /// Publishes the rulebook once more with what `change` makes of it, in force two minutes on. A manager must
  /// sit here.
  template <class Change>
  void change_rules(Change change) {
    Rulebook book = session_->store().rulebooks().back();
    ++book.version;
    book.effective_from = session_->now() + 60;
    change(book);
    enter(db::PublishRulebook{book});
    wait(120);
  }

 private:
  static db::Person named(const PersonId& id, const std::string& given, const std::string& family,
                          const std::string& number, const std::string& nickname = {}) {
    db::Person person;
    person.id = id;
    person.given = given;
    person.family = family;
    person.number = number;
    person.nickname = nickname;
    person.phone = "312 555 01" + number;
    return person;
  }

  static Rulebook rulebook(Instant from) {
    Rulebook book;
    book.effective_from = book.recorded = from;
    book.tiers.resize(3);
    for (int i = 0; i < 3; ++i) book.tiers[static_cast<std::size_t>(i)].tier = i + 1;
    NeedLesson guards;
    guards.lesson = "guards";
    NeedCheckout checkout;
    checkout.checkout = "bandsaw";
    checkout.valid = Period{PeriodUnit::months, 12};
    checkout.grace = Period{PeriodUnit::days, 14};
    NeedAge adult;
    MachineClass bandsaw, combi;
    bandsaw.name = "bandsaw";
    combi.name = "jointer-planer";
    bandsaw.tier = combi.tier = 2;
    combi.modes = {"jointing", "planing"};
    bandsaw.gates = {{"bandsaw-checkout", Rung::independent, {checkout}, {}},
                     {"guards", Rung::supervised, {guards}, {}}};
    combi.gates = {{"adult", Rung::independent, {adult}, {}}};
    book.classes = {bandsaw, combi};
    for (const char* name : {"disc-sander", "drill-press", "hand-tools"})
      book.classes.push_back(plain(name, 1));
    for (const char* name :
         {"bending-brake", "cnc-router", "forge", "foundry", "kiln", "lathe", "metal-lathe",
          "milling-machine", "plasma-cutter", "shaper", "spray-booth", "welding"})
      book.classes.push_back(plain(name, 3));
    return book;
  }

  /// A class that asks for a lesson of its own before anything.
  static MachineClass plain(const std::string& name, int tier) {
    MachineClass made;
    made.name = name;
    made.tier = tier;
    NeedLesson need;
    need.lesson = name;
    made.gates = {{name + "-lesson", Rung::supervised, {need}, {}}};
    return made;
  }

  static std::vector<db::Command> past() {
    const Instant then = lists_evening - 400 * 86400;
    std::vector<db::Command> commands;
    const auto add = [&](db::Action action, std::int64_t days = 0) {
      db::Command command;
      command.id = "past-" + std::to_string(commands.size() + 1);
      command.at = then + days * 86400;
      command.action = std::move(action);
      commands.push_back(std::move(command));
    };
    add(db::EnterPerson{named("mia", "Mia", "Okafor", "01"), Day{4000}});
    add(db::EnterPerson{named("ivo", "Ivo", "Lindqvist", "02"), Day{5000}});
    add(db::EnterPerson{named("dee", "Dee", "Griffith", "03"), Day{6000}});
    add(db::EnterPerson{named("ines", "Inés", "Castellanos", "04", "Nena"), Day{7000}});
    add(db::EnterPerson{named("olga", "Ольга", "Иванова", "05"), Day{8000}});
    add(db::EnterPerson{named("luk", "Łukasz", "Żółkiewski", "06"), Day{16000}});  // turns 18 in 2031
    add(db::EnterPerson{named("huong", "Thị Hương", "Nguyễn", "07"), std::nullopt});
    add(db::EnterPerson{named("eleni", "Ελένη", "Παπαδοπούλου", "08"), std::nullopt});
    add(db::PublishRulebook{rulebook(then)});
    for (const auto& [id, machine_class, label] :
         std::vector<std::tuple<std::string, std::string, std::string>>{
             {"b1", "bandsaw", "Bandsaw by the door"},
             {"b2", "bandsaw", "Bandsaw two"},
             {"c1", "jointer-planer", "Old combination"}})
      add(db::EnterShopFact{db::MachineAdded{id, machine_class, label}});
    add(db::EnterShopFact{db::RoleGiven{"mia", db::Role::manager}});
    add(db::EnterShopFact{db::RoleGiven{"ivo", db::Role::instructor}});
    add(db::EnterShopFact{db::RoleGiven{"dee", db::Role::desk}});
    add(db::ChoosePin{"mia", "1111"});
    add(db::ChoosePin{"ivo", "2222"});
    add(db::ChoosePin{"dee", "3333"});
    add(db::EnterFact{Appoint{"mia", Everything{}, true, Day{21000}}});
    for (const char* item : {"guards", "forge", "lathe", "shaper"}) add(db::EnterFact{Publish{item, 1}});
    int day = 1;
    for (const char* person : {"ines", "olga", "luk", "huong", "dee"}) {
      add(db::EnterFact{Lesson{person, "guards", 1}}, day);
      add(db::EnterFact{Lesson{person, "lathe", 1}}, day++);
    }
    add(db::EnterFact{Lesson{"eleni", "shaper", 1}}, day);
    // Good for twelve months and two weeks more: overdue on the evening.
    add(db::EnterFact{Checkout{"ines", "bandsaw", 0, Outcome::passed, "mia"}}, 28);
    add(db::EnterFact{Checkout{"olga", "bandsaw", 0, Outcome::passed, "mia"}}, 300);
    return commands;
  }

  QTemporaryDir folder_;
  std::shared_ptr<Instant> now_ = std::make_shared<Instant>(lists_evening);
  std::unique_ptr<Session> session_;
};

/// The shop with one of its pages shown, and somebody sitting there.
template <class P>
struct Shown : ListsShop {
  P page{session()};
  explicit Shown(const PersonId& who = {}) {
    if (!who.empty()) sit(who);
    show(page);
  }
};

/// All that a page shows in words, one text.
inline QString seen_on(const QWidget& page) {
  QCoreApplication::processEvents();
  QStringList words;
  for (const QLabel* label : page.findChildren<QLabel*>())
    if (label->isVisible()) words << label->text();
  for (const QAbstractItemView* view : page.findChildren<QAbstractItemView*>()) {
    const QAbstractItemModel* model = view->model();
    if (!view->isVisible() || !model) continue;
    for (int row = 0; row < model->rowCount(); ++row)
      for (int column = 0; column < model->columnCount(); ++column)
        words << model->index(row, column).data(Qt::AccessibleTextRole).toString();
  }
  return words.join('\n');
}

/// Whoever has the cursor once the page has come to rest, as a person waits for it.
inline QWidget* at_cursor(QWidget& page) {
  QCoreApplication::processEvents();
  return QApplication::focusWidget() ? QApplication::focusWidget() : &page;
}

inline void type(QWidget& page, const QString& text) { QTest::keyClicks(at_cursor(page), text); }

inline void press(QWidget& page, Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
  QTest::keyClick(at_cursor(page), key, with);
  QCoreApplication::processEvents();
}

}  // namespace wm::app
