#include "app/diary/helping.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <set>

#include "app/diary/slots.h"
#include "app/words/words.h"
#include "core/diary/wall.h"

namespace wm::app {
namespace {

constexpr std::size_t most_told = 3;

struct HelpWords {
  Q_DECLARE_TR_FUNCTIONS(HelpWords)
};

/// Of each class its best weekday, the most served first.
std::vector<Help> best_of(std::vector<Help> all) {
  std::stable_sort(all.begin(), all.end(), [](const Help& a, const Help& b) { return a.serves > b.serves; });
  std::set<std::string> seen;
  std::erase_if(
      all, [&](const Help& each) { return each.serves == 0 || !seen.insert(each.machine_class).second; });
  if (all.size() > most_told) all.resize(most_told);
  return all;
}

}  // namespace

Helping::Helping(Session& session, QObject* parent) : QObject(parent), session_(session) {
  next_.setInterval(0);
  behind_.setMaxThreadCount(1);
  connect(&next_, &QTimer::timeout, this, &Helping::gather_one);
}

Helping::~Helping() { behind_.waitForDone(); }

void Helping::stop() {
  next_.stop();
  ++begun_;
}

void Helping::begin(std::shared_ptr<const Fitted> fitted, int days) {
  stop();
  fitted_ = std::move(fitted);
  days_ = days;
  taken_ = 0;
  extras_.clear();
  openings_.clear();
  if (!fitted_->left.empty()) next_.start();
}

void Helping::gather_one() {
  if (taken_ == fitted_->left.size()) {
    next_.stop();
    return work_out();
  }
  const std::size_t waiter = fitted_->left[taken_++].waiter;
  const Waiter& who = fitted_->question.waiters[waiter];
  const Day today = session_.zone().day(session_.now());
  for (const Slot& slot :
       fitting_units(question_of_somebody(session_, {who.person, who.target}, today, days_)))
    if (has_somebody(slot)) add(waiter, slot);
}

void Helping::add(std::size_t waiter, const Slot& slot) {
  const std::string machine_class(class_of(fitted_->question.waiters[waiter].target));
  const Kind kind{machine_class, weekday(session_.zone().day(slot.when.from))};
  Extra& extra = extras_[kind];
  extra.fits.resize(fitted_->question.waiters.size());
  const auto next = static_cast<OpeningIndex>(extra.openings.size());
  const auto [place, fresh] =
      openings_.emplace(std::tuple(kind, slot.when.from, slot.unit, slot.assessor), next);
  if (fresh) extra.openings.push_back({slot.when, slot.assessor, slot.unit, slot.second});
  extra.fits[waiter].push_back(place->second);
}

void Helping::work_out() {
  std::vector<Help> helps;
  std::vector<Extra> extras;
  for (auto& [kind, extra] : extras_) {
    helps.push_back({kind.first, kind.second, 0});
    extras.push_back(std::move(extra));
  }
  behind_.start([this, helps, extras, fitted = fitted_, begun = begun_]() mutable {
    const std::vector<std::size_t> served = would_serve(fitted->question, fitted->proposal.placed, extras);
    for (std::size_t i = 0; i < helps.size(); ++i) helps[i].serves = served[i];
    QMetaObject::invokeMethod(
        this,
        [this, begun, found = best_of(std::move(helps))] {
          if (begun == begun_) emit helped(found);
        },
        Qt::QueuedConnection);
  });
}

QString help_words(const std::vector<Help>& helps) {
  QStringList out;
  for (const Help& each : helps) {
    const QString day = QLocale().dayName(each.weekday + 1), machine = class_label(each.machine_class);
    out << (each.serves == 1
                ? HelpWords::tr("Hours every %1 of one more able to assess %2 would serve 1 person.")
                      .arg(day, machine)
                : HelpWords::tr("Hours every %1 of one more able to assess %2 would serve %3 people.")
                      .arg(day, machine)
                      .arg(each.serves));
  }
  return out.join('\n');
}

}  // namespace wm::app
