#include "app/words/route_words.h"

#include <algorithm>

#include "app/words/counted.h"
#include "app/words/labels.h"
#include "app/words/standing_words.h"
#include "app/words/step_words.h"
#include "app/words/tr.h"

namespace wm::app {

namespace {

class Telling {
 public:
  Telling(const Route& route, const TargetName& target, Rung to, const AnswerReader& reader)
      : route_(route),
        machine_(target_phrase(target)),
        how_(standing_words(to)),
        reader_(reader),
        secret_(tells_a_birthday()) {}

  RouteWords told() const {
    RouteWords words;
    for (const Record& step : route_.steps) add(words, step);
    for (RouteDay& day : words.days) count_the_same(day.steps);
    words.outcome = outcome();
    if (!route_.shortest)
      words.doubt = Words::tr("There may be a way with fewer steps: that was not worked out to the end.");
    return words;
  }

 private:
  /// The person's, or that of somebody who is waited for. Then no day to come may be told: a step is often
  /// taken as long before the last day as a period of the rules allows.
  bool tells_a_birthday() const {
    std::vector<Instant> days;
    if (route_.reaches) days.push_back(*route_.reaches);
    for (const Record& step : route_.steps) days.push_back(step.at);
    return std::any_of(days.begin(), days.end(), [this](Instant t) {
      return reader_.hides(t) ||
             std::any_of(route_.steps.begin(), route_.steps.end(),
                         [&](const Record& step) { return reader_.hides(t, witness_of(step.fact)); });
    });
  }
  bool today(Instant t) const { return reader_.zone.day(t) == reader_.zone.day(reader_.now); }

  QString heading(Instant t) const {
    if (today(t)) return Words::tr("Today", "from today on");
    if (secret_) return Words::tr("Later", "on a day that is shown to nobody");
    return Words::tr("From %1", "a day").arg(reader_.day(t));
  }

  void add(RouteWords& words, const Record& step) const {
    const QString from = heading(step.at);
    if (words.days.empty() || words.days.back().from != from) words.days.push_back({from, {}});
    words.days.back().steps << step_words(step.fact, reader_);
  }

  /// Steps that read the same stand once, with how often.
  static void count_the_same(QStringList& steps) {
    QStringList counted;
    for (int i = 0; i < steps.size();) {
      const int n = static_cast<int>(steps.count(steps[i]));
      counted << (n == 1 ? steps[i] : Words::tr("%1, %2", "a step, how often").arg(steps[i], times_words(n)));
      const QString done = steps[i];
      steps.removeAll(done);
    }
    steps = counted;
  }

  QString outcome() const {
    const QString& called = reader_.called;
    if (!route_.reaches)
      return Words::tr(
                 "There is no way from here for %1 to use %2 %3: a pause with no end is in force, or "
                 "nobody is able to assess or to supervise what is missing. Please ask a manager.")
          .arg(called, machine_, how_);
    const Instant at = *route_.reaches;
    if (route_.steps.empty()) {
      if (at <= reader_.now) return Words::tr("Nothing more is needed for that.");
      if (secret_) return Words::tr("Nothing is to be done: the day for it is still to come.");
      return Words::tr("Nothing is to be done but wait: from %1 on %2 may use %3 %4.")
          .arg(reader_.from(at), called, machine_, how_);
    }
    if (today(at)) return Words::tr("With that, %1 may use %2 %3 today.").arg(called, machine_, how_);
    if (secret_)
      return Words::tr("With that, %1 may use %2 %3, though not before a day still to come.")
          .arg(called, machine_, how_);
    return Words::tr("With that, %1 may use %2 %3 from %4 on at the earliest.")
        .arg(called, machine_, how_, reader_.day(at));
  }

  const Route& route_;
  QString machine_, how_;
  const AnswerReader& reader_;
  bool secret_;
};

}  // namespace

QString RouteWords::day_sentence(std::size_t day) const {
  return Words::tr("%1: %2.", "from when, which steps")
      .arg(days[day].from, days[day].steps.join(Words::tr("; then ", "between steps")));
}

QStringList RouteWords::sentences() const {
  QStringList all;
  for (std::size_t i = 0; i < days.size(); ++i) all << day_sentence(i);
  all << outcome;
  if (!doubt.isEmpty()) all << doubt;
  return all;
}

RouteWords route_words(const Route& route, const TargetName& target, Rung to, const AnswerReader& reader) {
  return Telling(route, target, to, reader).told();
}

}  // namespace wm::app
