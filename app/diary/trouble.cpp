#include "app/diary/trouble.h"

#include <QCoreApplication>

#include "app/words/words.h"
#include "core/diary/ready.h"

namespace wm::app {
namespace {

struct TroubleWords {
  Q_DECLARE_TR_FUNCTIONS(TroubleWords)
};

bool is_ready(Decider& decider, const PersonId& person, const db::Booking& b, Instant at) {
  return decider.rung(person, b.target, at) >= Rung::supervised &&
         (b.purpose != db::Purpose::check_out || ready_for_checkout(decider.standing(person, b.target, at)));
}

}  // namespace

std::optional<Problem> not_ready_for(Session& session, const db::Booking& b) {
  Decider& decider = session.decider(std::nullopt);
  const PersonId person = session.joined(b.person);
  if (is_ready(decider, person, b, std::max(b.from, session.now())) && is_ready(decider, person, b, b.to - 1))
    return std::nullopt;
  return Problem{
      "person",
      TroubleWords::tr("%1 will not be ready then: something that it needs is missing or lapses.")
          .arg(called(session, b.person))
          .toStdString(),
      TroubleWords::tr("The Desk says what is missing; let them do it before, or move the booking.")
          .toStdString()};
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
