// The answer as a sentence: the largest words on the Desk.
#include "app/words/labels.h"
#include "app/words/tr.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

QString buddy_words(const Buddy& buddy) {
  const int n = buddy.count;
  switch (buddy.at_least) {
    case Rung::barred:
      return n == 1 ? Words::tr("one other person is present")
                    : Words::tr("%n other people are present", "", n);
    case Rung::supervised:
      return n == 1 ? Words::tr("one other person who may use it is present")
                    : Words::tr("%n other people who may use it are present", "", n);
    case Rung::independent:
      return n == 1 ? Words::tr("one other qualified person is present")
                    : Words::tr("%n other qualified people are present", "", n);
  }
  return {};
}

QString condition_words(const Condition& condition) {
  if (const auto* buddy = std::get_if<Buddy>(&condition)) return buddy_words(*buddy);
  return Words::tr("staff are in");
}

QString conditions_clause(const std::vector<Condition>& conditions) {
  QStringList parts;
  for (const Condition& condition : conditions)
    if (const QString words = condition_words(condition); !parts.contains(words)) parts << words;
  if (parts.isEmpty()) return {};
  if (parts.size() == 1) return Words::tr(", while %1").arg(parts.first());
  const QString last = parts.takeLast();
  return Words::tr(", while %1 and %2").arg(parts.join(Words::tr(", ", "between parts of a list")), last);
}

bool waits_for_birthday(const Reason& reason, Instant until) {
  if (std::holds_alternative<NeedAge>(reason.need.need) && reason.until == until) return true;
  for (const Reason& part : reason.of)
    if (waits_for_birthday(part, until)) return true;
  return false;
}

QString suspended_sentence(const QString& called, const TargetName& target, const StandingAnswer& answer,
                           const Zone& zone, Instant now) {
  std::optional<Instant> end = answer.suspensions.front().until;
  for (const auto& suspension : answer.suspensions)
    if (!suspension.until || (end && *end < *suspension.until)) end = suspension.until;
  const QString machine = target_phrase(target);
  if (!end) return Words::tr("%1 is paused on %2: please speak to the manager.").arg(called, machine);
  return Words::tr("%1 is paused on %2 through %3: please speak to the manager.")
      .arg(called, machine, last_day(*end, zone, now));
}

}  // namespace

bool until_shows_birthday(const StandingAnswer& answer) {
  if (!answer.until) return false;
  for (const GateAnswer& gate : answer.gates)
    if (waits_for_birthday(gate.reason, *answer.until)) return true;
  return false;
}

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

QString standing_sentence(const QString& called, const TargetName& target, const StandingAnswer& answer,
                          const std::vector<Condition>& conditions, const QStringList& restrictions,
                          const Zone& zone, Instant now) {
  if (!answer.suspensions.empty()) return suspended_sentence(called, target, answer, zone, now);
  const QString machine = target_phrase(target);
  if (answer.standing == Rung::barred) return Words::tr("%1 may not yet use %2.").arg(called, machine);
  QString through;
  if (answer.until && !until_shows_birthday(answer))
    through = Words::tr(", through %1").arg(last_day(*answer.until, zone, now));
  QString sentence =
      Words::tr("%1 may use %2 %3%4%5.", "who, which machine, how, through when, while what")
          .arg(called, machine, standing_words(answer.standing), through, conditions_clause(conditions));
  if (!restrictions.isEmpty())
    sentence +=
        ' ' + Words::tr("Restricted: %1.").arg(restrictions.join(Words::tr("; ", "between restrictions")));
  return sentence;
}

QString problem_sentence(const Problem& problem) {
  const auto closed = [](const std::string& text) {
    QString sentence = QString::fromStdString(text).trimmed();
    if (sentence.isEmpty()) return sentence;
    sentence[0] = sentence[0].toUpper();
    if (!sentence.endsWith('.') && !sentence.endsWith('?') && !sentence.endsWith('!')) sentence += '.';
    return sentence;
  };
  return (closed(problem.what) + ' ' + closed(problem.remedy)).trimmed();
}

QString hindrance_sentence(Hindrance hindrance, const QString& called) {
  switch (hindrance) {
    case Hindrance::barred:
      return Words::tr("%1 may not use it yet.").arg(called);
    case Hindrance::buddy:
      return Words::tr("Too few others are present.");
    case Hindrance::locked_out:
      return Words::tr("The machine is out of service.");
    case Hindrance::no_supervisor:
      return Words::tr("Nobody is here who can supervise.");
    case Hindrance::staffed:
      return Words::tr("No staff are in.");
  }
  return {};
}

QString caution() {
  return Words::tr(
      "This records permission; it does not make a machine safe. Local codes, the maker's manual and a "
      "qualified "
      "instructor come first.");
}

}  // namespace wm::app
