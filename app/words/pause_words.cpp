#include "app/words/pause_words.h"

#include "app/words/tr.h"

namespace wm::app {

namespace {

QString pause_sentence(const SuspensionAnswer& pause, const AnswerReader& reader) {
  const QString since = reader.day(pause.since);
  if (!pause.until) return Words::tr("Paused since %1, with no end set.").arg(since);
  return Words::tr("Paused since %1, through %2.").arg(since, reader.last(*pause.until));
}

QString reason_sentence(const SuspensionAnswer& pause, const AnswerReader& reader) {
  const db::Entry* entry = reader.record_of(pause.suspension);
  const QString note = entry ? QString::fromStdString(entry->note).trimmed() : QString();
  if (note.isEmpty()) return {};
  const bool closed = note.endsWith('.') || note.endsWith('!') || note.endsWith('?');
  return Words::tr("Reason: %1").arg(closed ? note : note + '.');
}

}  // namespace

QStringList pause_sentences(const StandingAnswer& answer, bool with_reasons, const AnswerReader& reader) {
  QStringList sentences;
  for (const SuspensionAnswer& pause : answer.suspensions) {
    const QString reason = with_reasons ? reason_sentence(pause, reader) : QString();
    sentences << pause_sentence(pause, reader) + (reason.isEmpty() ? reason : ' ' + reason);
  }
  if (!sentences.isEmpty()) sentences << Words::tr("A manager can end a pause.");
  return sentences;
}

}  // namespace wm::app
