#include "app/desk/strip_rows.h"

#include <QStringList>
#include <algorithm>

#include "app/desk/tr.h"
#include "app/lists/answer_reader.h"
#include "app/words/change_words.h"
#include "app/words/pause_words.h"
#include "app/words/shown_timeline.h"
#include "app/words/why_words.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

constexpr std::int64_t day_seconds = 86400;

std::vector<std::pair<int, TargetName>> by_tier(const Rulebook& rulebook) {
  std::vector<std::pair<int, TargetName>> targets;
  for (const TargetName& target : targets_of(rulebook))
    if (const MachineClass* c = find_class(rulebook, class_of(target))) targets.emplace_back(c->tier, target);
  std::stable_sort(targets.begin(), targets.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  return targets;
}

StripRow row(Session& session, const AnswerReader& reader, const Restrictions& left_open, int tier,
             const TargetName& target, Instant from, Instant to) {
  Decider& decider = session.decider();
  const StandingAnswer answer = decider.standing(reader.person, target, reader.now);
  StripRow row{tier, target, answer.standing, !answer.suspensions.empty(), {}, {}, {}};
  row.steps = shown_timeline(decider.timeline(reader.person, target, before_month_of(from, reader.zone), to),
                             from, reader);
  const QStringList restricted = left_open.on(decider, reader.person, target, reader.now);
  row.restricted = restricted_words(restricted);
  row.spoken = timeline_sentence(row.steps, reader);
  if (!restricted.isEmpty()) row.spoken += ' ' + restricted_sentence(restricted);
  if (answer.standing == Rung::barred) return row;
  if (!answer.until)
    row.through = DeskWords::tr("no end");
  else if (const auto end = shown_end(answer, reader))
    row.through = short_last_day(*end, reader.zone, reader.now);
  return row;
}

bool asks_age(const Reason& reason) {
  return std::holds_alternative<NeedAge>(reason.need.need) ||
         std::any_of(reason.of.begin(), reason.of.end(), asks_age);
}

/// An age that is missing on one day and there on the next would tell the birthday to whoever goes along the
/// strip.
StandingAnswer without_ages(StandingAnswer answer) {
  std::erase_if(answer.gates, [](const GateAnswer& gate) { return asks_age(gate.reason); });
  return answer;
}

Instant first_change(const std::vector<StripRow>& rows, Instant otherwise) {
  Instant first = otherwise;
  for (const StripRow& row : rows)
    if (row.steps.size() > 1) first = std::min(first, row.steps[1].at);
  return first;
}

}  // namespace

Strips strips_of(Session& session, const PersonId& person) {
  Strips strips;
  const Instant at = session.at();
  const AnswerReader reader = answer_reader(session, person);
  strips.today = at;
  strips.to = at + 400 * day_seconds;
  const Instant earliest = at - std::int64_t{6} * 365 * day_seconds;
  const Rulebook* rulebook = session.decider().in_force(at);
  if (!rulebook) return strips;
  const Restrictions left_open = restrictions(session);
  int tier = -1;
  for (const auto& [of_tier, target] : by_tier(*rulebook)) {
    if (of_tier != tier) strips.rows.push_back({of_tier, {}, Rung::barred, false, {}, {}, {}});
    tier = of_tier;
    strips.rows.push_back(row(session, reader, left_open, tier, target, earliest, strips.to));
    strips.independent += strips.rows.back().rung == Rung::independent;
    strips.supervised += strips.rows.back().rung == Rung::supervised;
  }
  strips.from = std::min(first_change(strips.rows, at), at - 365 * day_seconds) - 20 * day_seconds;
  return strips;
}

QString why_at(Session& session, const PersonId& person, const StripRow& row, Instant t) {
  const AnswerReader reader = answer_reader(session, person);
  const StandingAnswer answer = session.decider().standing(person, row.target, t);
  const Rung shown = rung_in(row.steps, t);
  const auto line = [&](const QString& standing) {
    return DeskWords::tr("%1: %2", "a day, a standing").arg(long_day(t, session.zone()), standing);
  };
  const QStringList restricted = restrictions(session).on(session.decider(), person, row.target, t);
  const auto with_restricted = [&](QStringList lines) {
    if (!restricted.isEmpty()) lines.insert(1, restricted_sentence(restricted));
    return lines.join('\n');
  };
  // Where the strip keeps something from sight, so does its tip.
  if (answer.suspensions.empty() && answer.standing != shown)
    return with_restricted({line(standing_words(shown))});
  QStringList lines{
      line(answer.suspensions.empty() ? standing_words(answer.standing) : DeskWords::tr("paused"))};
  const bool instructor = session.role() >= db::Role::instructor;
  const StandingAnswer told = without_ages(answer);
  lines << (told.gates.empty() && !answer.gates.empty()
                ? pause_sentences(answer, instructor, reader)
                : why_sentences(row.target, told, instructor, reader));
  return with_restricted(lines);
}

}  // namespace wm::app
