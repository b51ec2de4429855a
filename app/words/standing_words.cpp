#include "app/words/standing_words.h"

#include "app/words/condition_words.h"
#include "app/words/labels.h"
#include "app/words/tr.h"

namespace wm::app {

namespace {

QString paused_sentence(const TargetName& target, const StandingAnswer& answer, const AnswerReader& reader) {
  std::optional<Instant> end = answer.suspensions.front().until;
  for (const auto& suspension : answer.suspensions)
    if (!suspension.until || (end && *end < *suspension.until)) end = suspension.until;
  const QString machine = target_phrase(target);
  if (!end) return Words::tr("%1 is paused on %2: please speak to the manager.").arg(reader.called, machine);
  return Words::tr("%1 is paused on %2 through %3: please speak to the manager.")
      .arg(reader.called, machine, reader.last(*end));
}

}  // namespace

QString standing_words(Rung rung) {
  switch (rung) {
    case Rung::barred:
      return Words::tr("not yet");
    case Rung::supervised:
      return Words::tr("only with a supervisor");
    case Rung::independent:
      return Words::tr("without a supervisor");
  }
  return {};
}

QString standing_cell(Rung rung) {
  switch (rung) {
    case Rung::barred:
      return Words::tr("no", "may not use it, in a narrow cell");
    case Rung::supervised:
      return Words::tr("supervised");
    case Rung::independent:
      return Words::tr("unsupervised");
  }
  return {};
}

Rung rung_above(Rung rung) { return rung == Rung::barred ? Rung::supervised : Rung::independent; }

QString asked_standing_words(Rung at_least) {
  switch (at_least) {
    case Rung::barred:
      return Words::tr("whatever the standing");
    case Rung::supervised:
      return Words::tr("at least with a supervisor");
    case Rung::independent:
      return Words::tr("without a supervisor");
  }
  return {};
}

std::optional<Instant> shown_end(const StandingAnswer& answer, const AnswerReader& reader) {
  const bool rises = answer.next && *answer.next > answer.standing;
  return answer.until && rises && reader.hides(*answer.until) ? std::nullopt : answer.until;
}

namespace {

QString unrestricted_sentence(const TargetName& target, const StandingAnswer& answer,
                              const std::vector<Condition>& conditions, const AnswerReader& reader) {
  if (!answer.suspensions.empty()) return paused_sentence(target, answer, reader);
  const QString machine = target_phrase(target);
  if (answer.standing == Rung::barred) return Words::tr("%1 may not yet use %2.").arg(reader.called, machine);
  const auto end = shown_end(answer, reader);
  const QString through = end ? Words::tr(", through %1").arg(reader.last(*end)) : QString();
  return Words::tr("%1 may use %2 %3%4%5.", "who, which machine, how, through when, while what")
      .arg(reader.called, machine, standing_words(answer.standing), through, conditions_clause(conditions));
}

}  // namespace

QString restricted_sentence(const QStringList& restrictions) {
  return restrictions.isEmpty()
             ? QString()
             : Words::tr("Restricted: %1.").arg(restrictions.join(Words::tr("; ", "between restrictions")));
}

QString restricted_words(const QStringList& restrictions) {
  return restrictions.isEmpty() ? QString()
                                : Words::tr("restricted: %1", "in a cell")
                                      .arg(restrictions.join(Words::tr("; ", "between restrictions")));
}

QString standing_sentence(const TargetName& target, const StandingAnswer& answer,
                          const std::vector<Condition>& conditions, const QStringList& restrictions,
                          const AnswerReader& reader) {
  const QString sentence = unrestricted_sentence(target, answer, conditions, reader);
  return restrictions.isEmpty() ? sentence : sentence + ' ' + restricted_sentence(restrictions);
}

QString since_sentence(const StandingAnswer& answer, const AnswerReader& reader) {
  if (!answer.since || reader.hides(*answer.since)) return {};
  return Words::tr("That has been so since %1.").arg(reader.day(*answer.since));
}

QString next_sentence(const StandingAnswer& answer, const AnswerReader& reader) {
  const auto end = shown_end(answer, reader);
  if (!end || !answer.next) return {};
  if (*answer.next == Rung::barred) return Words::tr("From %1 on not at all.").arg(reader.from(*end));
  return Words::tr("From %1 on %2.", "a day, a standing")
      .arg(reader.from(*end), standing_words(*answer.next));
}

}  // namespace wm::app
