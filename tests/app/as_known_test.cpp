// Every page as known on a day of the past says what it said then, whatever was entered, renamed, struck out
// or erased in ten years since.
#include <QtTest>
#include <algorithm>
#include <map>

#include "app/frame/main_window.h"
#include "app/frame/pages.h"
#include "app/lists/list_view.h"
#include "app/theme/theme.h"
#include "app/words/words.h"
#include "db/demo.h"
#include "db/journal/subject.h"
#include "lists_shop.h"
#include "page_test.h"

namespace as_known_test {

using namespace wm;
using namespace wm::app;

namespace {

/// All words on a page, each of its rows chosen once; sorted, since an erased name sorts elsewhere.
QStringList words_on(MainWindow& window, const QString& id, const std::vector<PersonId>& people) {
  QStringList all;
  Place place;
  place.page = id;
  const auto take = [&] { all << seen_on(*window.current()).split('\n'); };
  window.go(place);
  if (id == "desk") {
    for (const PersonId& person : people) {
      place.person = person;
      window.go(place);
      take();
    }
  } else if (auto* list = window.current()->findChild<ListView*>("list")) {
    for (const ListRow& row : list->rows()) {
      list->choose(row.id);
      take();
    }
  } else {
    take();
  }
  all.sort();
  return all;
}

}  // namespace

class AsKnownTest : public QObject {
  Q_OBJECT

  QTemporaryDir folder_;
  Instant now_{QDateTime::currentSecsSinceEpoch()};
  std::unique_ptr<Session> session_;

  void enter(db::Action action) {
    now_ = now_ + 60;
    const auto done = session_->commit(std::move(action));
    if (!done) qFatal("%s", done.error().what.c_str());
  }
  /// What may be refused, such as a lesson that has a newer revision already.
  void try_to_enter(db::Action action) {
    now_ = now_ + 60;
    (void)session_->commit(std::move(action));
  }

  /// A year's entries of every sort, and names that change.
  void a_year() {
    now_ = now_ + 365 * 86400;
    const auto people = session_->store().people();
    for (std::size_t i = 0; i < people.size(); i += 3) {
      if (people[i] == db::nameless(people[i].id)) continue;
      db::Person renamed = people[i];
      renamed.family += " Renamed";
      renamed.phone = "555-9999";
      enter(db::CorrectPerson{renamed});
    }
    int units = 0, struck = 0;
    for (const db::Entry& entry : std::vector(session_->store().entries())) {
      if (const auto* unit = db::as<db::MachineAdded>(entry.fact); unit && ++units <= 4)
        enter(db::EnterShopFact{db::MachineAdded{unit->machine, unit->machine_class, "moved"}});
      if (const auto* item = db::as<Publish>(entry.fact); item && entry.order % 3 == 0)
        try_to_enter(db::EnterFact{Publish{item->item, item->revision + 1}});
      const bool some = entry.order % 89 == 0 && !entry.voided && struck < 20;
      if (some && (db::as<Lesson>(entry.fact) || db::as<Use>(entry.fact) || db::as<Checkout>(entry.fact)) &&
          ++struck)
        enter(db::StrikeOutRecord{entry.id, "another person's"});
    }
    try_to_enter(db::EnterFact{Suspend{people[9].id, Everything{}, std::nullopt}});
    try_to_enter(db::PutOutOfService{a_machine(), "99", "P9", "moved", people[1].id});
    try_to_enter(db::EnterShopFact{db::Waiting{people[10].id, "bandsaw"}});
  }

  MachineId a_machine() const {
    for (const db::Entry& entry : session_->store().entries())
      if (const auto* unit = db::as<db::MachineAdded>(entry.fact)) return unit->machine;
    return {};
  }

  /// The pages, as known then and on that day; without the lines that have one of these words.
  std::map<QString, QStringList> seen(MainWindow& window, Instant then, const std::vector<PersonId>& people,
                                      const QStringList& without) {
    session_->set_known(then);
    session_->set_asked_at(then);
    std::map<QString, QStringList> all;
    for (const char* id : {"desk", "diary", "machines", "lessons", "rosters"}) {
      QStringList words = words_on(window, id, people);
      words.removeIf([&](const QString& line) {
        return std::ranges::any_of(without, [&](const QString& word) { return line.contains(word); });
      });
      all[id] = words;
    }
    session_->set_known({});
    session_->set_asked_at({});
    return all;
  }

 private slots:
  void every_page_says_what_it_said_then() {
    apply_theme(*qApp, Shade::light);
    auto store = db::make_demo(folder_.filePath("demo").toStdString(), [this] { return now_; });
    QVERIFY(store);
    session_ = std::make_unique<Session>(std::move(*store));
    for (const db::Person& person : session_->store().people())
      if (session_->store().role_of(person.id) == db::Role::manager && !session_->seated())
        QVERIFY(session_->sit_down(person.id, "2468"));
    MainWindow window(*session_);
    window.show();
    const auto people = session_->store().people();
    const std::vector<PersonId> looked_up{people[3].id, people[9].id, people[10].id, people[12].id};
    const db::Person erased = people[20];
    QVERIFY(!session_->store().role_of(erased.id));
    // Whose details are erased is only a number on every page; nothing else may differ.
    QStringList apart{QString::fromStdString(erased.given), QString::fromStdString(erased.family),
                      person_name(db::nameless(erased.id)), QString::fromStdString(erased.id)};
    apart.removeAll(QString());
    const Instant then = session_->now();
    now_ = now_ + 60;
    const auto before = seen(window, then, looked_up, apart);
    std::vector<Rung> rungs;
    for (const TargetName& target : session_->decider(then).targets())
      rungs.push_back(session_->decider(then).standing(erased.id, target, then).standing);
    for (int year = 1; year <= 10; ++year) a_year();
    enter(db::BlankPerson{erased.id});
    QVERIFY(seen(window, session_->now(), looked_up, apart) != before);
    const auto after = seen(window, then, looked_up, apart);
    for (const auto& [id, words] : before) {
      QVERIFY2(words.size() > 20, qPrintable(id));
      const QStringList& now = after.at(id);
      for (qsizetype i = 0; i < std::min(words.size(), now.size()); ++i)
        QVERIFY2(now[i] == words[i], qPrintable(id + ": " + now[i] + " | was: " + words[i]));
      QCOMPARE(now.size(), words.size());
    }
    // An erased person stands where the ages that had been proved let them stand.
    std::size_t i = 0;
    for (const TargetName& target : session_->decider(then).targets())
      QCOMPARE(session_->decider(then).standing(erased.id, target, then).standing, rungs[i++]);
  }
};

}  // namespace as_known_test

WM_PAGE_TEST(as_known_test, AsKnownTest)
#include "as_known_test.moc"
