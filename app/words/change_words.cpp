#include "app/words/change_words.h"

#include "app/words/labels.h"
#include "app/words/listing.h"
#include "app/words/standing_words.h"
#include "app/words/tr.h"

namespace wm::app {

namespace {

QString whose(const PersonId& person, const TargetName& target, const AnswerReader& reader) {
  return Words::tr("%1's standing on %2", "a person, a machine")
      .arg(reader.name_of(person), target_phrase(target));
}

QString quoted(Rung rung) { return Words::tr("“%1”").arg(standing_words(rung)); }

}  // namespace

QString drop_sentence(const Drop& drop, const AnswerReader& reader) {
  return Words::tr("%1 falls from %2 to %3 on %4.", "whose standing, a standing, a standing, a day")
      .arg(whose(drop.person, drop.target, reader), quoted(drop.before), quoted(drop.after),
           reader.from(drop.at));
}

QString standing_change_sentence(const StandingChange& change, Were were, const AnswerReader& reader) {
  const bool falls = change.after < change.before;
  QString words;
  switch (were) {
    case Were::struck_out:
      words = falls ? Words::tr("Were it struck out, %1 would fall from %2 to %3.")
                    : Words::tr("Were it struck out, %1 would rise from %2 to %3.");
      break;
    case Were::in_force:
      words = falls ? Words::tr("Were it in force, %1 would fall from %2 to %3.")
                    : Words::tr("Were it in force, %1 would rise from %2 to %3.");
      break;
  }
  return words.arg(whose(change.person, change.target, reader), quoted(change.before), quoted(change.after));
}

QStringList standing_change_sentences(const std::vector<StandingChange>& changes, Were were,
                                      const AnswerReader& reader) {
  QStringList sentences;
  for (const StandingChange& change : changes) sentences << standing_change_sentence(change, were, reader);
  if (sentences.isEmpty()) sentences << Words::tr("Nobody's standing would change.");
  return sentences;
}

QString shift_sentence(const Shift& shift, const AnswerReader& reader) {
  const QString who = whose(shift.person, shift.target, reader);
  // What was so from the beginning of time on has no day.
  const bool from = shift.from > first_instant && !reader.hides(shift.from, shift.person);
  const bool end = shift.until && !reader.hides(*shift.until, shift.person);
  if (from && end)
    return Words::tr("%1 is another from %2 through %3.", "whose standing, a day, a day")
        .arg(who, reader.from(shift.from), reader.last(*shift.until));
  if (from && shift.until)
    return Words::tr("%1 is another from %2 on, for a time.").arg(who, reader.from(shift.from));
  if (from) return Words::tr("%1 is another from %2 on.").arg(who, reader.from(shift.from));
  if (end) return Words::tr("%1 is another for a time, through %2.").arg(who, reader.last(*shift.until));
  if (shift.until) return Words::tr("%1 is another for a time.").arg(who);
  return Words::tr("%1 becomes another.").arg(who);
}

QStringList shift_sentences(const std::vector<Shift>& shifts, const AnswerReader& reader) {
  QStringList sentences;
  for (const Shift& shift : shifts) sentences << shift_sentence(shift, reader);
  if (sentences.isEmpty()) sentences << Words::tr("Nobody's standing changes.");
  return sentences;
}

QString timeline_sentence(const std::vector<TimelineStep>& steps, const AnswerReader& reader) {
  QStringList parts;
  for (const TimelineStep& step : steps)
    parts << (parts.isEmpty() ? standing_words(step.standing)
                              : Words::tr("from %1 on %2", "a day, a standing")
                                    .arg(reader.from(step.at), standing_words(step.standing)));
  return Words::tr("%1.", "a sentence").arg(capital(parts.join(Words::tr("; ", "between standings"))));
}

}  // namespace wm::app
