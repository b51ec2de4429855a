// Requirements as lines: what is asked, and below it what is there or missing.
#include "app/words/counted.h"
#include "app/words/labels.h"
#include "app/words/need_detail.h"
#include "app/words/tr.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

QString within(const std::optional<Period>& period) {
  return period ? Words::tr(" within %1", "a period").arg(period_words(*period)) : QString();
}

QString on_target(const std::optional<TargetName>& target) {
  return target ? Words::tr(" on %1", "a machine").arg(target_phrase(*target)) : QString();
}

QString revision_words(RevisionRule rule, int needed) {
  if (rule == RevisionRule::any || needed == 0) return {};
  return Words::tr(", revision %1").arg(needed);
}

/// What is asked, in one line.
struct What {
  const Reason& reason;

  QString operator()(const NeedDocument& n) const {
    return Words::tr("Paper: %1").arg(item_label(n.document));
  }
  QString operator()(const NeedAge& n) const { return Words::tr("Not for people under %1").arg(n.years); }
  QString operator()(const NeedLesson& n) const {
    return Words::tr("Lesson: %1%2", "name, revision")
        .arg(item_label(n.lesson), revision_words(n.revision, reason.revision_needed));
  }
  QString operator()(const NeedQuiz& n) const {
    return Words::tr("Quiz: %1%2, %3 % needed", "name, revision, percentage")
        .arg(item_label(n.quiz), revision_words(n.revision, reason.revision_needed))
        .arg(n.pass_percent);
  }
  QString operator()(const NeedCheckout& n) const {
    return Words::tr("Check-out: %1%2", "name, revision")
        .arg(item_label(n.checkout), revision_words(n.revision, reason.revision_needed));
  }
  QString operator()(const NeedPractice& n) const {
    QStringList parts;
    if (n.minutes) parts << minutes_words(*n.minutes);
    if (n.sessions) parts << sessions_words(*n.sessions);
    return Words::tr("Supervised practice%1: %2%3", "where, how much, within what time")
        .arg(on_target(n.target), parts.join(Words::tr(" in ", "minutes in sessions")), within(n.within));
  }
  QString operator()(const NeedRecentUse& n) const {
    return Words::tr("Used%1 %2 within %3", "where, how often, within what time")
        .arg(on_target(n.target), times_words(n.count), period_words(n.within));
  }
  QString operator()(const NeedStanding& n) const {
    return Words::tr("%1: %2", "a machine, how").arg(target_label(n.target), standing_words(n.at_least));
  }
  QString operator()(const NeedTierStanding& n) const {
    if (!n.count)
      return Words::tr("Every machine of tier %1: %2").arg(n.tier).arg(standing_words(n.at_least));
    const QString words = *n.count == 1 ? Words::tr("One machine of tier %1: %2")
                                        : Words::tr("%n machines of tier %1: %2", "", *n.count);
    return words.arg(n.tier).arg(standing_words(n.at_least));
  }
  QString operator()(const NeedAllOf&) const { return Words::tr("All of these"); }
  QString operator()(const NeedAnyOf&) const { return Words::tr("One of these"); }
  QString operator()(const NeedSomeOf& n) const { return Words::tr("At least %n of these", "", n.count); }
};

void add_lines(std::vector<NeedLine>& lines, const Reason& reason, int depth, const NeedDetail& detail) {
  lines.push_back({reason.holds, std::visit(What{reason}, reason.need.need), detail.of(reason), depth});
  // Of what must be given for a check-out only what is missing is worth a line.
  const bool checkout = std::holds_alternative<NeedCheckout>(reason.need.need);
  for (const Reason& part : reason.of)
    if (!checkout || !part.holds) add_lines(lines, part, depth + 1, detail);
}

QString gate_note(const GateAnswer& gate, const Zone& zone, Instant now) {
  if (gate.state != GateState::in_grace) return {};
  if (gate.spared && gate.lapses)
    return Words::tr("counts through %1 for people who were here before")
        .arg(last_day(*gate.lapses, zone, now));
  if (gate.lapses)
    return Words::tr("due now, still counts through %1").arg(last_day(*gate.lapses, zone, now));
  return Words::tr("due now");
}

}  // namespace

std::vector<NeedLine> need_lines(const GateAnswer& gate,
                                 const std::function<const db::Entry*(const RecordId&)>& record_of,
                                 const std::function<QString(const PersonId&)>& name_of, const Zone& zone,
                                 Instant now) {
  std::vector<NeedLine> lines;
  add_lines(lines, gate.reason, 0, NeedDetail{record_of, name_of, zone, now});
  if (const QString note = gate_note(gate, zone, now); !note.isEmpty()) {
    lines.front().detail = note;
    lines.front().holds = true;
  }
  return lines;
}

}  // namespace wm::app
