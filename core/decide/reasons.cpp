#include "core/decide/reasons.h"

namespace wm {

namespace {

bool is_leaf(const Need& need) {
  return need.kind != NeedKind::standing && need.kind != NeedKind::tier_standing &&
         need.kind != NeedKind::group;
}

/// The covers that carry the need at t; where a single one is enough, the one that lasts longest.
std::vector<Cover> carrying(Standings& standings, const Need& need, NameId person, NameId x, Instant t) {
  std::vector<Cover> carry;
  for (const Cover& cover : covers(standings.known(), need, person, x, t)) {
    if (cover.span(false).covers(t) && standings.counts(cover, need, person, x)) carry.push_back(cover);
  }
  const bool adds_up = need.kind == NeedKind::practice || need.kind == NeedKind::recent_use;
  if (!adds_up && carry.size() > 1) {
    carry = {*std::max_element(carry.begin(), carry.end(),
                               [](const Cover& a, const Cover& b) { return a.to < b.to; })};
  }
  return carry;
}

/// Where nothing carries it: the latest record of the kind, which came nearest, and what took it away.
std::vector<RecordId> nearest(const Known& known, const Need& need, NameId person, NameId x, Instant t) {
  std::vector<RecordId> ids;
  const auto candidates = covers(known, need, person, x, t);
  if (!candidates.empty()) ids.push_back(known.record_id(candidates.back().no));
  if (need.kind == NeedKind::quiz) {
    const auto attempts = counted_attempts(known, need, person, t);
    if (!attempts.empty() && (ids.empty() || known.record_id(attempts.back()->no) != ids.back())) {
      ids.push_back(known.record_id(attempts.back()->no));
    }
  }
  if (need.kind == NeedKind::checkout) {
    for (const auto& checkout : known.facts(person).checkouts) {
      const bool after = candidates.empty() || checkout.at > candidates.back().from;
      if (checkout.checkout == need.item && checkout.at <= t && after &&
          checkout.outcome == Outcome::failed) {
        ids.push_back(known.record_id(checkout.no));
      }
    }
    for (const auto& incident : known.facts(person).incidents) {
      if (!candidates.empty() && incident.at > candidates.back().from && incident.at <= t &&
          incident.severity <= need.renew_after_severity && incident.machine_class == known.class_of(x)) {
        ids.push_back(known.record_id(incident.no));
      }
    }
  }
  return ids;
}

void explain_leaf(Reason& reason, Standings& standings, const Need& need, NameId person, NameId x,
                  Instant t) {
  const auto carry = carrying(standings, need, person, x, t);
  for (const Cover& cover : carry) {
    reason.rests_on.push_back(standings.known().record_id(cover.no));
    reason.minutes += cover.minutes;
    ++reason.sessions;
  }
  if (carry.empty()) reason.rests_on = nearest(standings.known(), need, person, x, t);
  if (need.kind == NeedKind::lesson || need.kind == NeedKind::quiz || need.kind == NeedKind::checkout) {
    reason.revision_needed = revision_needed(standings.known(), need, t);
  }
  if (need.kind != NeedKind::practice && need.kind != NeedKind::recent_use) reason.sessions = 0;
}

}  // namespace

std::optional<Instant> within_years(std::optional<Instant> t) {
  return t && *t <= last_instant ? t : std::nullopt;
}

Reason reason_for(Standings& standings, const Need& need, NameId person, NameId x, Instant t) {
  Reason reason;
  reason.need = *need.source;
  const Times steps = standings.need_times(need, person, x, false);
  reason.holds = steps.at(t);
  reason.since = steps.since(t);
  reason.until = within_years(steps.until(t));
  if (is_leaf(need)) explain_leaf(reason, standings, need, person, x, t);
  for (const Need& part : need.of) reason.of.push_back(reason_for(standings, part, person, x, t));
  if (!reason.holds)
    for (const Need& part : need.given) reason.of.push_back(reason_for(standings, part, person, x, t));
  return reason;
}

}  // namespace wm
