#include "app/diary/fit_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "app/diary/diary_rows.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct FitEveryone {
  Q_DECLARE_TR_FUNCTIONS(FitEveryone)
};

QString names(const Session& session, const Fitted& fitted, const std::vector<std::size_t>& waiters) {
  constexpr std::size_t most = 3;
  QStringList out;
  for (std::size_t i = 0; i < std::min(most, waiters.size()); ++i)
    out << name_of(session, fitted.question.waiters[waiters[i]].person);
  if (waiters.size() > most)
    return FitEveryone::tr("%1 and %2 more").arg(out.join(", ")).arg(waiters.size() - most);
  return out.join(", ");
}

QString taken_words(const Session& session, const Fitted& fitted, const AllTaken& taken) {
  QStringList out;
  if (!taken.before.empty())
    out << FitEveryone::tr("Every time that fits is taken by somebody who comes before: %1.")
               .arg(names(session, fitted, taken.before));
  if (!taken.instead.empty())
    out << FitEveryone::tr(
               "So that more people are served altogether, these have a time instead, who have waited less: "
               "%1.")
               .arg(names(session, fitted, taken.instead));
  if (taken.beyond_limits > 0)
    out << FitEveryone::tr("At other times an assessor would give more than they take on.");
  return out.join(' ');
}

QString better_words(const Proposal& proposal) {
  if (!proposal.open) return FitEveryone::tr("There is no better proposal.");
  const auto bound = proposal.open->bound;
  switch (proposal.open->aim) {
    case Aim::first:
      return bound ? FitEveryone::tr(
                         "The best found in the time given: %1 of those who come first are served, no more "
                         "than %2 can be.")
                         .arg(proposal.measures.first)
                         .arg(*bound)
                   : FitEveryone::tr("The best found so far; there may be a better one.");
    case Aim::served:
      return bound ? FitEveryone::tr("The best found in the time given; no more than %1 can be served.")
                         .arg(*bound)
                   : FitEveryone::tr("The best found so far; there may be a better one.");
    case Aim::waited:
      return bound ? FitEveryone::tr(
                         "Nobody more can be served. They have waited %1 days together; those who waited %2 "
                         "might be served instead, and nobody longer.")
                         .arg(proposal.measures.waited)
                         .arg(*bound)
                   : FitEveryone::tr("Nobody more can be served; longer waits might be.");
    case Aim::trips:
      return bound ? FitEveryone::tr(
                         "Nobody more can be served; whether on fewer than these days was not settled, on "
                         "fewer than %1 is impossible.")
                         .arg(*bound)
                   : FitEveryone::tr("Nobody more can be served; whether on fewer days was not settled.");
    case Aim::gaps:
      return bound
                 ? FitEveryone::tr(
                       "Nobody more can be served; between one-on-ones assessors wait %1 minutes, and fewer "
                       "than %2 are impossible.")
                       .arg(proposal.measures.gaps)
                       .arg(*bound)
                 : FitEveryone::tr("Nobody more can be served; shorter waits for assessors may be possible.");
  }
  return {};
}

}  // namespace

QString placed_words(const Session& session, const Fitted& fitted, const Placed& placed) {
  const Opening& opening = fitted.question.openings[placed.opening];
  return FitEveryone::tr("%1, %2: %3 with %4 on %5", "day; times; member; assessor; machine")
      .arg(day_heading(session.zone().day(opening.when.from), session),
           time_span(opening.when, session.zone()),
           name_of(session, fitted.question.waiters[placed.waiter].person),
           names_of(session, opening.assessor, opening.second), unit_label(units(session), opening.unit));
}

QString proposal_words(const Fitted& fitted) {
  const Measures& m = fitted.proposal.measures;
  if (fitted.question.waiters.empty()) return FitEveryone::tr("Nobody waits.");
  const QString served =
      FitEveryone::tr("%1 of %2 who wait are served.").arg(m.served).arg(fitted.question.waiters.size());
  return served + ' ' + better_words(fitted.proposal);
}

QString left_out_words(const Session& session, const Fitted& fitted, const LeftOut& left) {
  if (const auto* taken = std::get_if<AllTaken>(&left.why)) return taken_words(session, fitted, *taken);
  if (const auto* lapses = std::get_if<NothingBefore>(&left.why))
    return FitEveryone::tr("Something that it needs lapses on %1, before the first time there is.")
        .arg(day_heading(session.zone().day(lapses->lapses), session));
  const auto none = fitted.none.find(left.waiter);
  return none != fitted.none.end() ? none->second : QString();
}

}  // namespace wm::app
