#include "app/diary/trouble.h"

#include <QCoreApplication>

#include "app/words/need_words.h"
#include "app/words/words.h"
#include "core/diary/ready.h"

namespace wm::app {
namespace {

struct TroubleWords {
  Q_DECLARE_TR_FUNCTIONS(TroubleWords)
};

constexpr std::size_t most_named = 2;

bool is_ready(Decider& decider, const PersonId& person, const db::Booking& b, Instant at) {
  return decider.rung(person, b.target, at) >= Rung::supervised &&
         (b.purpose != db::Purpose::check_out || ready_for_checkout(decider.standing(person, b.target, at)));
}

Problem not_ready(const StandingAnswer& then, const QString& name, bool for_checkout) {
  const auto problem = [](const QString& what, const QString& remedy) {
    return Problem{"person", what.toStdString(), remedy.toStdString()};
  };
  if (!then.suspensions.empty())
    return problem(TroubleWords::tr("%1 will not be ready then: they are paused.").arg(name),
                   TroubleWords::tr("Send them to the manager, or move the booking."));
  const QString missing = missing_phrase(missing_for(then, for_checkout), most_named);
  return problem(missing.isEmpty()
                     ? TroubleWords::tr("%1 will not be ready then.").arg(name)
                     : TroubleWords::tr("%1 will not be ready then; missing: %2.").arg(name, missing),
                 TroubleWords::tr("Let them do it before, or move the booking."));
}

}  // namespace

std::optional<Problem> not_ready_for(Session& session, const db::Booking& b) {
  Decider& decider = session.decider(std::nullopt);
  const PersonId person = session.joined(b.person);
  // At the beginning, and at the last second, since the check-out is signed when it is over.
  for (const Instant at : {std::max(b.from, session.now()), b.to + -1})
    if (!is_ready(decider, person, b, at))
      return not_ready(decider.standing(person, b.target, at), called(session, b.person),
                       b.purpose == db::Purpose::check_out);
  return std::nullopt;
}

std::optional<Problem> trouble_of(Session& session, const BookingLine& line) {
  const db::Booking& b = line.booking;
  const bool stayed_away = line.turnout == db::Turnout::not_come;
  if (session.known() || b.to <= session.now() || line.signed_as || stayed_away) return std::nullopt;
  if (const auto stands = session.still_stands(line.id); !stands) return stands.error();
  return not_ready_for(session, b);
}

std::vector<Trouble> troubles(Session& session, Instant from) {
  std::vector<Trouble> out;
  if (session.known()) return out;
  for (const BookingLine& line : bookings(session, {from, last_instant}))
    if (auto problem = trouble_of(session, line)) out.push_back({line, std::move(*problem)});
  return out;
}

QString trouble_words(const Problem& problem) {
  return TroubleWords::tr("no longer possible: %1").arg(QString::fromStdString(problem.what));
}

QString trouble_sentence(const Problem& problem) {
  return TroubleWords::tr("This booking is no longer possible: %1").arg(problem_sentence(problem));
}

}  // namespace wm::app
