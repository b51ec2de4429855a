// How long whoever presses "Fit everyone" waits, from the key to the words about those left out, on a shop of
// many records: what is gathered before anything is worked out is a figure of its own.
//   fit_bench [PART [PEOPLE]]   World W cut to that part (0.2: 1,000 people); so many wait
#include <QApplication>
#include <QEventLoop>
#include <QTemporaryDir>
#include <QTimer>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <random>

#include "app/diary/fit_view.h"
#include "app/theme/theme.h"
#include "core/diary/ready.h"
#include "db/store.h"
#include "store_file.h"

using namespace wm;
using namespace wm::bench;
using std::chrono::steady_clock;

namespace {

constexpr std::ptrdiff_t most_in = 12;

template <class T>
T must(Expected<T> done) {
  if (done) return std::move(*done);
  std::fprintf(stderr, "%s: %s\n", done.error().where.c_str(), done.error().what.c_str());
  std::exit(1);
}

double since(steady_clock::time_point then) {
  return std::chrono::duration<double>(steady_clock::now() - then).count();
}

class Filling {
 public:
  explicit Filling(db::Store& store) : store_(store) {}
  void enter(db::ShopFact fact) { enter(db::Action(db::EnterShopFact{std::move(fact)})); }
  void enter(db::Action action) {
    db::Command command;
    command.id = "filled-" + std::to_string(++n_);
    command.by = n_ > 3 ? "desk-manager" : "";
    command.action = std::move(action);
    must(store_.commit(command));
  }

 private:
  db::Store& store_;
  int n_ = 0;
};

/// Two evenings a week of three hours for each assessor, and for every third a Saturday.
void give_hours(Filling& filling, const std::vector<PersonId>& assessors, std::mt19937_64& random) {
  for (std::size_t i = 0; i < assessors.size(); ++i) {
    const int first = static_cast<int>(random() % 5),
              second = (first + 1 + static_cast<int>(random() % 4)) % 5;
    for (const int weekday : {first, second}) {
      const int from = 17 * 60 + 30 * static_cast<int>(random() % 3);
      filling.enter(db::Hours{assessors[i], weekday, from, from + 180});
    }
    if (i % 3 == 0) filling.enter(db::Hours{assessors[i], 5, 10 * 60, 14 * 60});
  }
}

/// Those for whom a check-out would be the last that is missing, as whoever is put on a list; a few for whom
/// it is not.
void let_wait(Filling& filling, db::Store& store, const World& world, int people, std::mt19937_64& random) {
  Decider& decider = store.current().decider();
  std::vector<db::Person> all = store.people();
  int waiting = 0, others = 0;
  for (int tried = 0; waiting < people && tried < 400'000; ++tried) {
    const PersonId& person = all[random() % all.size()].id;
    const TargetName& target = world.targets[random() % world.targets.size()].name;
    const Rung rung = decider.rung(person, target, store.now());
    if (rung >= Rung::independent) continue;
    const bool ready =
        rung >= Rung::supervised && ready_for_checkout(decider.standing(person, target, store.now()));
    if (!ready && ++others > people / 10) continue;
    db::Command command;
    command.id = "waits-" + std::to_string(tried);
    command.by = "desk-manager";
    command.action = db::EnterShopFact{db::Waiting{person, target}};
    if (store.commit(command)) ++waiting;
  }
  std::printf("%d wait, %d of them are not ready\n", waiting, std::min(others, people / 10));
}

/// The longest time for which the window would have answered nobody.
class Beats : public QTimer {
 public:
  Beats() {
    setInterval(0);
    connect(this, &QTimer::timeout, this, [this] {
      longest = std::max(longest, since(last_));
      last_ = steady_clock::now();
    });
    start();
  }
  double longest = 0;
  double since_last() const { return since(last_); }

 private:
  steady_clock::time_point last_ = steady_clock::now();
};

void fit(app::Session& session) {
  app::FitView view(session);
  auto* fitting = view.findChild<app::Fitting*>();
  QEventLoop loop;
  const auto began = steady_clock::now();
  double gathered = 0;
  Beats beats;
  std::size_t left = 0;
  QObject::connect(fitting, &app::Fitting::gathered, &loop, [&] { gathered = since(began); });
  QObject::connect(
      fitting, &app::Fitting::done, &loop, [&](const std::shared_ptr<const app::Fitted>& fitted) {
        left = fitted->left.size();
        std::printf("served %lld of %zu, %zu openings%s\n",
                    static_cast<long long>(fitted->proposal.measures.served), fitted->question.waiters.size(),
                    fitted->question.openings.size(), fitted->proposal.open ? "" : ", best in all");
        // The view has its own answer to it first.
        std::printf("gathered %.2f s, shown by %.2f s, of which showing at most %.2f s", gathered,
                    since(began), beats.since_last());
        loop.quit();
      });
  view.begin();
  loop.exec();
  std::printf("; %zu left out; longest without an answer before that %.2f s\n", left, beats.longest);
}

}  // namespace

int main(int count, char** arguments) {
  QApplication qt(count, arguments);
  app::apply_theme(qt, app::Shade::light);
  const double part = count > 1 ? std::atof(arguments[1]) : 0.2;
  const int people = count > 2 ? std::atoi(arguments[2]) : 200;
  QTemporaryDir folder;
  const std::string path = folder.filePath("w").toStdString();
  const World world = make_world(WorldSize::part_of(part));
  write_store(path, world);
  Instant now = world.now + 86400;
  auto store = must(db::Store::open(path, [&] { return now; }));
  now = store.entries().back().recorded + 86400;
  std::mt19937_64 random(1);
  Filling filling(store);
  db::Person person;
  person.id = person.number = "desk-manager";
  person.given = "Desk";
  filling.enter(db::Action(db::EnterPerson{person, std::nullopt}));
  filling.enter(db::RoleGiven{"desk-manager", db::Role::manager});
  filling.enter(db::Action(db::ChoosePin{"desk-manager", "845210"}));
  std::vector<PersonId> assessors;
  for (const db::Entry* entry : store.of_kind("appoint")) {
    const PersonId& each = std::get<Appoint>(std::get<Fact>(entry->fact)).person;
    if (std::find(assessors.begin(), assessors.end(), each) == assessors.end()) assessors.push_back(each);
  }
  // The latest: earlier ones are in no more.
  if (std::ssize(assessors) > most_in) assessors.erase(assessors.begin(), assessors.end() - most_in);
  std::printf("%zu people, %zu assessors in, %zu entries\n", store.people().size(), assessors.size(),
              store.entries().size());
  give_hours(filling, assessors, random);
  let_wait(filling, store, world, people, random);
  app::Session session(std::move(store), folder.path());
  for (int i = 0; i < 2; ++i) fit(session);  // as after opening, and once more
}
