#include "app/desk/strip_rows.h"

#include <QStringList>
#include <algorithm>

#include "app/desk/tr.h"
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

// A step that would show somebody's birthday is left out: from it on the strip goes on as it is.
void hide_birthday(std::vector<TimelineStep>& steps, const StandingAnswer& answer) {
  if (!until_shows_birthday(answer)) return;
  std::erase_if(steps, [&](const TimelineStep& step) { return step.at >= *answer.until; });
}

StripRow row(Session& session, const PersonId& person, int tier, const TargetName& target, Instant from,
             Instant to) {
  Decider& decider = session.decider();
  const Instant at = session.at();
  const StandingAnswer answer = decider.standing(person, target, at);
  StripRow row{
      tier, target, answer.standing, !answer.suspensions.empty(), decider.timeline(person, target, from, to),
      {}};
  hide_birthday(row.steps, answer);
  if (answer.standing == Rung::barred) return row;
  if (!answer.until)
    row.through = DeskWords::tr("no end");
  else if (!until_shows_birthday(answer))
    row.through = short_day(*answer.until - day_seconds, session.zone());
  return row;
}

Instant first_change(const std::vector<StripRow>& rows, Instant otherwise) {
  Instant first = otherwise;
  for (const StripRow& row : rows)
    for (std::size_t i = 1; i < row.steps.size(); ++i) {
      first = std::min(first, row.steps[i].at);
      break;
    }
  return first;
}

}  // namespace

Strips strips_of(Session& session, const PersonId& person) {
  Strips strips;
  const Instant at = session.at();
  strips.today = at;
  strips.to = at + 400 * day_seconds;
  const Instant earliest = at - 6 * 365 * day_seconds;
  const Rulebook* rulebook = session.decider().in_force(at);
  if (!rulebook) return strips;
  int tier = -1;
  for (const auto& [of_tier, target] : by_tier(*rulebook)) {
    if (of_tier != tier) strips.rows.push_back({of_tier, {}, Rung::barred, false, {}, {}});
    tier = of_tier;
    strips.rows.push_back(row(session, person, tier, target, earliest, strips.to));
    strips.independent += strips.rows.back().rung == Rung::independent;
    strips.supervised += strips.rows.back().rung == Rung::supervised;
  }
  strips.from = std::min(first_change(strips.rows, at), at - 365 * day_seconds) - 20 * day_seconds;
  return strips;
}

QString why_at(Session& session, const PersonId& person, const TargetName& target, Instant t) {
  const StandingAnswer answer = session.decider().standing(person, target, t);
  const Zone& zone = session.zone();
  QStringList lines{DeskWords::tr("%1: %2", "a day, a standing")
                        .arg(long_day(t, zone), answer.suspensions.empty() ? standing_words(answer.standing)
                                                                           : DeskWords::tr("paused"))};
  const auto record_of = [&](const RecordId& id) { return session.entry(id); };
  const auto name_of = [&](const PersonId& id) { return person_name(session.store().person(id)); };
  for (const GateAnswer& gate : answer.gates) {
    const bool beyond = gate.guards > answer.standing;
    if (beyond == gate.reason.holds) continue;
    const auto need = need_lines(gate, record_of, name_of, zone, t);
    const QString detail =
        need.front().detail.isEmpty() ? QString() : QStringLiteral(" – ") + need.front().detail;
    lines << (beyond ? DeskWords::tr("missing: %1") : QStringLiteral("%1")).arg(need.front().what + detail);
  }
  return lines.join('\n');
}

}  // namespace wm::app
