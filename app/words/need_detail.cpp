#include "app/words/need_detail.h"

#include "app/words/counted.h"
#include "app/words/tr.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

template <class T>
const T* fact(const db::Entry& entry) {
  const auto* core = std::get_if<Fact>(&entry.fact);
  return core ? std::get_if<T>(core) : nullptr;
}

template <class T>
bool is(const Reason& reason) {
  return std::holds_alternative<T>(reason.need.need);
}

int percent(const Quiz& quiz) { return quiz.total > 0 ? 100 * quiz.correct / quiz.total : 0; }

}  // namespace

const db::Entry* NeedDetail::newest(const Reason& reason) const {
  const db::Entry* found = nullptr;
  for (const RecordId& id : reason.rests_on)
    if (const db::Entry* entry = record_of(id); entry && (!found || found->at < entry->at)) found = entry;
  return found;
}

QString NeedDetail::day(Instant t) const {
  // last_day() leaves out this year; asked a day later it says t's own day.
  return last_day(zone.start(zone.day(t) + 1), zone, now);
}

QString NeedDetail::counts(const Reason& reason) const {
  if (!reason.until) return Words::tr("counts with no end");
  return Words::tr("counts through %1").arg(last_day(*reason.until, zone, now));
}

QString NeedDetail::carried(const Reason& reason, const db::Entry& entry) const {
  if (const auto* quiz = fact<Quiz>(entry))
    return Words::tr("%1 % on %2, %3", "percentage, day, how long it counts")
        .arg(percent(*quiz))
        .arg(day(entry.at), counts(reason));
  if (const auto* checkout = fact<Checkout>(entry))
    return Words::tr("passed on %1 with %2, %3", "day, assessor, how long it counts")
        .arg(day(entry.at), name_of(checkout->assessor), counts(reason));
  if (fact<Document>(entry))
    return Words::tr("taken on %1, %2", "day, how long").arg(day(entry.at), counts(reason));
  return Words::tr("on %1, %2", "day, how long it counts").arg(day(entry.at), counts(reason));
}

QString NeedDetail::missed(const Reason& reason, const db::Entry& entry) const {
  const QString when = day(entry.at);
  if (fact<Incident>(entry)) return Words::tr("asked for again by an incident on %1").arg(when);
  if (fact<Change>(entry)) return Words::tr("asked for again by a change of the machine on %1").arg(when);
  if (const auto* quiz = fact<Quiz>(entry)) {
    if (quiz->revision < reason.revision_needed)
      return Words::tr("last tried on %1, revision %2").arg(when).arg(quiz->revision);
    if (quiz->critical_missed > 0)
      return Words::tr("%1 % on %2, a critical question missed").arg(percent(*quiz)).arg(when);
    return Words::tr("%1 % on %2").arg(percent(*quiz)).arg(when);
  }
  if (const auto* checkout = fact<Checkout>(entry)) {
    if (checkout->outcome == Outcome::failed) return Words::tr("not passed on %1").arg(when);
    if (checkout->outcome == Outcome::stopped) return Words::tr("stopped on %1").arg(when);
    return Words::tr("last passed on %1, no longer counts").arg(when);
  }
  if (const auto* lesson = fact<Lesson>(entry); lesson && lesson->revision < reason.revision_needed)
    return Words::tr("last on %1, revision %2").arg(when).arg(lesson->revision);
  return Words::tr("last on %1, no longer counts").arg(when);
}

QString NeedDetail::reached(const Reason& reason) const {
  QStringList parts;
  const auto* practice = std::get_if<NeedPractice>(&reason.need.need);
  if (practice && practice->minutes) parts << minutes_words(reason.minutes);
  if (!practice) parts << times_words(reason.sessions);
  if (practice && (practice->sessions || parts.isEmpty())) parts << sessions_words(reason.sessions);
  QString so_far = Words::tr("%1 so far").arg(parts.join(Words::tr(" in ", "minutes in sessions")));
  if (reason.holds && reason.until)
    so_far += Words::tr(", counts through %1").arg(last_day(*reason.until, zone, now));
  return so_far;
}

QString NeedDetail::of(const Reason& reason) const {
  // Neither an age nor a birthday is shown to anybody at the desk: only whether it holds.
  if (is<NeedAge>(reason)) {
    const int years = std::get<NeedAge>(reason.need.need).years;
    if (reason.holds) return {};
    return reason.rests_on.empty() && !reason.until ? Words::tr("nothing on file that shows it")
                                                    : Words::tr("under %1").arg(years);
  }
  if (is<NeedPractice>(reason) || is<NeedRecentUse>(reason)) return reached(reason);
  if (is<NeedStanding>(reason) || is<NeedTierStanding>(reason)) {
    if (!reason.holds) return Words::tr("not yet");
    return reason.until ? Words::tr("through %1").arg(last_day(*reason.until, zone, now)) : QString();
  }
  if (is<NeedAllOf>(reason) || is<NeedAnyOf>(reason) || is<NeedSomeOf>(reason)) return {};
  const db::Entry* entry = newest(reason);
  if (!entry) return reason.holds ? counts(reason) : Words::tr("nothing on file yet");
  return reason.holds ? carried(reason, *entry) : missed(reason, *entry);
}

}  // namespace wm::app
