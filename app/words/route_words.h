#pragma once
// What to do next: a route as steps that a person at the desk can act on, day by day.
#include <QString>
#include <QStringList>
#include <vector>

#include "app/words/reader.h"
#include "core/decide/answers.h"

namespace wm::app {

/// What can be done from one day on, in its order.
struct RouteDay {
  QString from;  // "Today", "From 3 December", or "Later" where a day would tell somebody's birthday
  QStringList steps;
};

struct RouteWords {
  std::vector<RouteDay> days;
  QString outcome;  // a sentence: what all of it leads to and when at the earliest, or that there is no way
  QString doubt;    // a sentence where it is not proved that there are no fewer steps, else empty

  /// "Today: the paper “Waiver”; then the lesson “Guards”."
  QString day_sentence(std::size_t day) const;
  /// All of it.
  QStringList sentences() const;
};

/// The route to at least `to` on `target`, as asked at reader.now.
RouteWords route_words(const Route& route, const TargetName& target, Rung to, const AnswerReader& reader);

}  // namespace wm::app
