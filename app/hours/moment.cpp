#include "app/hours/moment.h"

#include <QCoreApplication>

#include "app/hours/reading.h"
#include "app/hours/weekly.h"
#include "core/diary/wall.h"

namespace wm::app {
namespace {

struct Moment {
  Q_DECLARE_TR_FUNCTIONS(Moment)
};

tl::unexpected<Problem> wrong(QLineEdit& field, const QString& where, const QString& what,
                              const QString& remedy) {
  field.setFocus();
  return mistyped(where, what, remedy);
}

}  // namespace

Expected<std::optional<Instant>> read_moment(const Session& session, DateField& day, QLineEdit& time) {
  if (!day.is_good())
    return wrong(day, Moment::tr("day"), Moment::tr("“%1” is no day").arg(day.text()),
                 Moment::tr("Type it as 26 November, or leave it empty"));
  const auto typed_day = day.typed();
  const QString typed = time.text().trimmed();
  if (typed.isEmpty() && !typed_day) return std::optional<Instant>();
  if (typed.isEmpty())
    return wrong(time, Moment::tr("time"), Moment::tr("It is not said at what time"),
                 Moment::tr("Type it as 17:30"));
  const auto minute = read_minute(typed);
  if (!minute || *minute == 24 * 60)
    return wrong(time, Moment::tr("time"), Moment::tr("“%1” is no time of day").arg(typed),
                 Moment::tr("Type it as 17:30"));
  return std::optional(
      on_wall(session.zone(), typed_day.value_or(session.zone().day(session.now())), *minute));
}

Instant moment_so_far(const Session& session, const DateField& day, const QLineEdit& time) {
  const auto minute = read_minute(time.text().trimmed());
  if (!day.is_good() || !minute || *minute == 24 * 60) return session.now();
  return on_wall(session.zone(), day.typed().value_or(session.zone().day(session.now())), *minute);
}

}  // namespace wm::app
