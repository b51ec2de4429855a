#include "app/words/need_detail.h"

#include "app/words/counted.h"
#include "app/words/tr.h"

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

bool adds_up(const Reason& reason) { return is<NeedPractice>(reason) || is<NeedRecentUse>(reason); }
bool of_standings(const Reason& reason) { return is<NeedStanding>(reason) || is<NeedTierStanding>(reason); }
bool of_parts(const Reason& reason) {
  return is<NeedAllOf>(reason) || is<NeedAnyOf>(reason) || is<NeedSomeOf>(reason);
}

QString percent(const Quiz& quiz) {
  return QString::number(quiz.total > 0 ? 100 * quiz.correct / quiz.total : 0);
}

/// Neither an age nor a birthday is shown to anybody at the desk: only whether it holds.
QString age(const Reason& reason) {
  if (reason.holds) return {};
  if (reason.rests_on.empty() && !reason.until) return Words::tr("nothing on file that shows it");
  return Words::tr("under %1").arg(std::get<NeedAge>(reason.need.need).years);
}

QString with_end(const QString& words, const QString& end) {
  if (words.isEmpty() || end.isEmpty()) return words + end;
  return Words::tr("%1, %2", "what there is, how long").arg(words, end);
}

}  // namespace

const db::Entry* NeedDetail::newest(const Reason& reason) const {
  const db::Entry* found = nullptr;
  for (const RecordId& id : reason.rests_on)
    if (const db::Entry* entry = reader.record_of(id); entry && (!found || found->at < entry->at))
      found = entry;
  return found;
}

QString NeedDetail::end(const Reason& reason) const {
  if (is<NeedAge>(reason)) return {};
  if (!reason.holds) {
    if (!reason.until || reader.hides(*reason.until)) return {};
    return Words::tr("holds from %1", "a day").arg(reader.from(*reason.until));
  }
  if (reason.until) return Words::tr("counts through %1").arg(reader.last(*reason.until));
  return adds_up(reason) || of_standings(reason) || of_parts(reason) ? QString()
                                                                     : Words::tr("counts with no end");
}

QString NeedDetail::carried(const db::Entry& entry) const {
  const QString when = reader.day(entry.at);
  if (const auto* quiz = fact<Quiz>(entry))
    return Words::tr("%1 % on %2", "percentage, day").arg(percent(*quiz), when);
  if (const auto* checkout = fact<Checkout>(entry))
    return Words::tr("passed on %1 with %2", "day, assessor").arg(when, reader.name_of(checkout->assessor));
  if (fact<Document>(entry)) return Words::tr("taken on %1").arg(when);
  return Words::tr("on %1", "a day").arg(when);
}

/// Since when nothing counts, or that this never did. (What counted last may have been another record.)
QString NeedDetail::lost(const Reason& reason, const db::Entry& entry) const {
  if (!reason.since || *reason.since <= entry.at) return Words::tr("does not count");
  return Words::tr("missing since %1").arg(reader.day(*reason.since));
}

QString NeedDetail::missed(const Reason& reason, const db::Entry& entry) const {
  const QString when = reader.day(entry.at);
  if (fact<Incident>(entry)) return Words::tr("asked for again by an incident on %1").arg(when);
  if (fact<Change>(entry)) return Words::tr("asked for again by a change of the machine on %1").arg(when);
  if (const auto* quiz = fact<Quiz>(entry)) {
    if (quiz->revision < reason.revision_needed)
      return Words::tr("last tried on %1, revision %2").arg(when, QString::number(quiz->revision));
    if (quiz->critical_missed > 0)
      return Words::tr("%1 % on %2, a critical question missed").arg(percent(*quiz), when);
    const auto* need = std::get_if<NeedQuiz>(&reason.need.need);
    const bool enough = need && 100 * quiz->correct >= need->pass_percent * quiz->total;
    const QString words = carried(entry);
    return enough ? with_end(words, lost(reason, entry)) : words;
  }
  if (const auto* checkout = fact<Checkout>(entry)) {
    if (checkout->outcome == Outcome::failed) return Words::tr("not passed on %1").arg(when);
    if (checkout->outcome == Outcome::stopped) return Words::tr("stopped on %1").arg(when);
    if (checkout->revision < reason.revision_needed)
      return Words::tr("last passed on %1, revision %2").arg(when, QString::number(checkout->revision));
    return with_end(Words::tr("last passed on %1").arg(when), lost(reason, entry));
  }
  if (const auto* lesson = fact<Lesson>(entry); lesson && lesson->revision < reason.revision_needed)
    return Words::tr("last on %1, revision %2").arg(when, QString::number(lesson->revision));
  return with_end(Words::tr("last on %1").arg(when), lost(reason, entry));
}

QString NeedDetail::reached(const Reason& reason) const {
  QStringList parts;
  const auto* practice = std::get_if<NeedPractice>(&reason.need.need);
  if (practice && practice->minutes) parts << minutes_words(reason.minutes);
  if (!practice) parts << times_words(reason.sessions);
  if (practice && (practice->sessions || parts.isEmpty())) parts << sessions_words(reason.sessions);
  return Words::tr("%1 so far").arg(parts.join(Words::tr(" in ", "minutes in sessions")));
}

QString NeedDetail::without_end(const Reason& reason) const {
  if (is<NeedAge>(reason)) return age(reason);
  if (adds_up(reason)) return reached(reason);
  if (of_standings(reason)) {
    if (!reason.holds) return Words::tr("not yet");
    return reason.since && !reader.hides(*reason.since)
               ? Words::tr("since %1", "a day").arg(reader.day(*reason.since))
               : QString();
  }
  if (of_parts(reason)) return {};
  const db::Entry* entry = newest(reason);
  if (!entry) return reason.holds ? QString() : Words::tr("nothing on file yet");
  return reason.holds ? carried(*entry) : missed(reason, *entry);
}

QString NeedDetail::of(const Reason& reason) const { return with_end(without_end(reason), end(reason)); }

}  // namespace wm::app
