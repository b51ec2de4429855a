#include "core/decide/covers.h"

#include <absl/container/inlined_vector.h>

#include <span>

namespace wm {

bool passed(const KnownQuiz& attempt, int pass_percent) {
  return 100 * attempt.correct >= pass_percent * attempt.total && attempt.critical_missed == 0;
}

namespace {

/// The facts of one name, of a list in order of (name, at).
template <class Fact>
std::span<const Fact> named(const std::vector<Fact>& facts, NameId Fact::*name, NameId wanted) {
  const auto first =
      std::partition_point(facts.begin(), facts.end(), [&](const Fact& fact) { return fact.*name < wanted; });
  const auto last =
      std::partition_point(first, facts.end(), [&](const Fact& fact) { return fact.*name == wanted; });
  return {first, last};
}

/// Those of one name without those that lapse by `since`, as far as it is seen from when they happened.
template <class Fact>
std::span<const Fact> named_since(const std::vector<Fact>& facts, NameId Fact::*name, NameId wanted,
                                  const Need& need, Instant since) {
  if (facts.empty()) return {};
  const std::span<const Fact> all = named(facts, name, wanted);
  if (need.ends == nullptr || since <= beginning) return all;
  const Instant from = since - need.ends->longest();
  const auto first =
      std::partition_point(all.begin(), all.end(), [&](const Fact& fact) { return fact.at < from; });
  return {first, all.end()};
}

/// When a publication of the item comes into force.
Instant in_force_from(const Need& need, const Publication& publication) {
  return need.changeover_ends != nullptr ? need.changeover_ends->of(publication.day).due : publication.at;
}

/// From when a revision is no longer enough: the first publication in force of a greater one.
Instant outdated_from(const Known& known, const Need& need, int revision) {
  Instant first = forever;
  if (!need.current_revision) return first;
  for (const Publication& publication : known.publications(need.item)) {
    if (publication.revision > revision) first = std::min(first, in_force_from(need, publication));
  }
  return first;
}

/// A cover from `at`, on that day, for the need's period and grace, cut off at `ends`, which has no grace.
Cover cover(const Need& need, Instant at, Day day, RecordNo no, Instant ends) {
  Cover made{at, ends, ends, no};
  if (need.ends == nullptr) return made;
  const CoverEnds::Ends of_period = need.ends->of(day);
  made.due = std::min(of_period.due, ends);
  made.to = std::min(of_period.lapses, ends);
  return made;
}

/// The first instant after `at` at which something takes the check-out away.
Instant taken_away(const Known& known, const Need& need, const PersonFacts& facts,
                   std::span<const KnownCheckout> same_name, NameId x, Instant at) {
  Instant first = forever;
  const auto earlier = [&](Instant t) {
    if (t > at && t < first) first = t;
  };
  for (const KnownCheckout& other : same_name) {
    if (other.outcome == Outcome::failed) earlier(other.at);
  }
  for (const KnownIncident& incident : facts.incidents) {
    if (incident.severity <= need.renew_after_severity && incident.machine_class == known.class_of(x)) {
      earlier(incident.at);
    }
  }
  if (need.renew_after_change) {
    for (const KnownChange& change : known.changes(x)) earlier(change.at);
    for (const KnownChange& change : known.changes(known.class_of(x))) earlier(change.at);
  }
  return first;
}

constexpr std::int64_t hour = 3600;

/// Attempts at a quiz in their order, by its retry rule.
class Attempts {
 public:
  explicit Attempts(const Need& need) : need_(need) {}

  bool counts(Instant at) {
    if (!need_.retry) return true;
    const Retry& retry = *need_.retry;
    if (retry.wait_hours && !missed_.empty() && at < missed_.back() + *retry.wait_hours * hour) return false;
    return !retry.most || left(at) > 0;
  }
  /// How many more may go wrong at `at`; of a rule that says how many.
  int left(Instant at) {
    const Retry& retry = *need_.retry;
    while (in_window_ < missed_.size() && missed_[in_window_] <= at - *retry.in_hours * hour) ++in_window_;
    return *retry.most - static_cast<int>(missed_.size() - in_window_);
  }
  void take(const KnownQuiz& counted) {
    if (!passed(counted, need_.pass_percent)) missed_.push_back(counted.at);
  }

 private:
  const Need& need_;
  absl::InlinedVector<Instant, 8> missed_;  // counted ones that were not passed
  std::size_t in_window_ = 0;               // the first of them that still weighs
};

/// Those that count, up to `horizon`, for as long as `each` answers yes.
template <class Each>
void for_each_counted(const PersonFacts& facts, const Need& need, Instant horizon, Each each) {
  Attempts attempts(need);
  for (const KnownQuiz& attempt : named(facts.quizzes, &KnownQuiz::quiz, need.item)) {
    if (attempt.at > horizon) return;
    if (!attempts.counts(attempt.at)) continue;
    if (!each(attempt)) return;
    attempts.take(attempt);
  }
}

class CoverTeller {
 public:
  using Each = absl::FunctionRef<bool(const Cover&)>;
  CoverTeller(const Known& known, const Need& need, NameId person, NameId x, Instant since, Instant horizon,
              Each each)
      : known_(known),
        need_(need),
        facts_(known.facts(person)),
        x_(x),
        since_(since),
        horizon_(horizon),
        each_(each) {}

  void tell() {
    switch (need_.kind) {
      case NeedKind::document:
        documents();
        break;
      case NeedKind::age:
        ages();
        break;
      case NeedKind::lesson:
        lessons();
        break;
      case NeedKind::quiz:
        quizzes();
        break;
      case NeedKind::checkout:
        checkouts();
        break;
      case NeedKind::practice:
        sessions_and_uses(false);
        break;
      case NeedKind::recent_use:
        sessions_and_uses(true);
        break;
      case NeedKind::standing:
      case NeedKind::tier_standing:
      case NeedKind::group:
        break;
    }
  }

 private:
  void documents() {
    for (const auto& paper :
         named_since(facts_.documents, &KnownDocument::document, need_.item, need_, since_)) {
      if (paper.at > horizon_ || !each_(cover(need_, paper.at, paper.day, paper.no, paper.until))) break;
    }
  }

  /// Each birth record is believed until the next one.
  void ages() {
    const auto& births = facts_.births;
    for (std::size_t i = 0; i < births.size() && births[i].at <= horizon_; ++i) {
      const Instant of_age = known_.zone().start(birthday(births[i].born, need_.years));
      const bool another = i + 1 < births.size() && births[i + 1].at <= horizon_;
      const Instant believed = another ? births[i + 1].at : forever;
      if (!each_({std::max(births[i].at, of_age), believed, believed, births[i].no})) break;
    }
  }

  void lessons() {
    for (const auto& lesson : named_since(facts_.lessons, &KnownLesson::lesson, need_.item, need_, since_)) {
      if (lesson.at > horizon_) break;
      const Instant ends = outdated_from(known_, need_, lesson.revision);
      if (!each_(cover(need_, lesson.at, lesson.day, lesson.no, ends))) break;
    }
  }

  void quizzes() {
    for_each_counted(facts_, need_, horizon_, [&](const KnownQuiz& attempt) {
      if (!passed(attempt, need_.pass_percent)) return true;
      const Instant ends = outdated_from(known_, need_, attempt.revision);
      return each_(cover(need_, attempt.at, attempt.day, attempt.no, ends));
    });
  }

  void checkouts() {
    const auto same_name = named(facts_.checkouts, &KnownCheckout::checkout, need_.item);
    for (const KnownCheckout& checkout : same_name) {
      if (checkout.at > horizon_) break;
      if (checkout.outcome != Outcome::passed) continue;
      const Instant ends = std::min(outdated_from(known_, need_, checkout.revision),
                                    taken_away(known_, need_, facts_, same_name, x_, checkout.at));
      Cover made = cover(need_, checkout.at, checkout.day, checkout.no, ends);
      made.witness = checkout.assessor;
      made.counts = Cover::Counts::checkout;
      if (!each_(made)) break;
    }
  }

  bool tell(const KnownSupervised& session) {
    Cover made = cover(need_, session.at, session.day, session.no, forever);
    made.minutes = session.minutes;
    made.witness = session.supervisor;
    made.target = session.target;
    made.counts = Cover::Counts::supervised;
    return each_(made);
  }

  bool tell(const KnownUse& use) {
    Cover made = cover(need_, use.at, use.day, use.no, forever);
    made.target = use.target;
    made.counts = Cover::Counts::use;
    return each_(made);
  }

  /// Those on the target and those on its class, in order of time.
  void sessions_and_uses(bool uses_too) {
    const NameId target = need_.target == no_name ? x_ : need_.target;
    const NameId machine_class = known_.class_of(target);
    const NameId other = machine_class == target ? no_name : machine_class;
    auto sessions = named_since(facts_.supervised, &KnownSupervised::target, target, need_, since_);
    auto class_sessions = named_since(facts_.supervised, &KnownSupervised::target, other, need_, since_);
    auto uses = named_since(facts_.uses, &KnownUse::target, uses_too ? target : no_name, need_, since_);
    auto class_uses = named_since(facts_.uses, &KnownUse::target, uses_too ? other : no_name, need_, since_);
    const auto at_of = [](const auto& facts) { return facts.empty() ? forever : facts.front().at; };
    for (;;) {
      const Instant at = std::min({at_of(sessions), at_of(class_sessions), at_of(uses), at_of(class_uses)});
      if (at > horizon_ || at == forever) return;
      const auto next = [&](auto& facts) {
        if (at_of(facts) != at) return true;
        const bool go_on = tell(facts.front());
        facts = facts.subspan(1);
        return go_on;
      };
      if (!next(sessions) || !next(class_sessions) || !next(uses) || !next(class_uses)) return;
    }
  }

  const Known& known_;
  const Need& need_;
  const PersonFacts& facts_;
  NameId x_;
  Instant since_;
  Instant horizon_;
  Each each_;
};

}  // namespace

std::vector<const KnownQuiz*> counted_attempts(const Known& known, const Need& need, NameId person,
                                               Instant horizon) {
  std::vector<const KnownQuiz*> counted;
  for_each_counted(known.facts(person), need, horizon, [&](const KnownQuiz& attempt) {
    counted.push_back(&attempt);
    return true;
  });
  return counted;
}

namespace {

/// Those that one more at `at`, entered after those whose id lies before "step-", would come after.
Attempts attempts_before(const Known& known, const Need& need, NameId person, Instant at) {
  Attempts attempts(need);
  for (const auto& attempt : named(known.facts(person).quizzes, &KnownQuiz::quiz, need.item)) {
    if (attempt.at > at || (attempt.at == at && known.record_id(attempt.no) > "step-")) break;
    if (attempts.counts(attempt.at)) attempts.take(attempt);
  }
  return attempts;
}

}  // namespace

bool attempt_would_count(const Known& known, const Need& need, NameId person, Instant at) {
  return attempts_before(known, need, person, at).counts(at);
}

/// Whether one counts changes at no other moment than these; after the last of them all waits are over.
NextAttempt next_attempt_at(const Known& known, const Need& need, NameId person, Instant at) {
  std::vector<Instant> moments = supposed_moments(known, need, person, no_name);
  std::erase_if(moments, [at](Instant moment) { return moment <= at; });
  moments.push_back(at);
  std::sort(moments.begin(), moments.end());
  NextAttempt next{at, std::nullopt};
  for (const Instant moment : moments) {
    Attempts attempts = attempts_before(known, need, person, moment);
    if (!attempts.counts(moment)) continue;
    next.from = moment;
    if (need.retry && need.retry->most) next.left = attempts.left(moment);
    break;
  }
  return next;
}

int revision_needed(const Known& known, const Need& need, Instant t) {
  int revision = 0;
  if (!need.current_revision) return revision;
  for (const Publication& publication : known.publications(need.item)) {
    if (in_force_from(need, publication) <= t) revision = std::max(revision, publication.revision);
  }
  return revision;
}

int revision_published(const Known& known, const Need& need, Instant t) {
  int revision = 0;
  for (const Publication& publication : known.publications(need.item)) {
    if (publication.at <= t) revision = std::max(revision, publication.revision);
  }
  return revision;
}

Cover supposed_cover(const Known& known, const Need& need, NameId person, NameId x, Instant at) {
  const bool has_revision =
      need.kind == NeedKind::lesson || need.kind == NeedKind::quiz || need.kind == NeedKind::checkout;
  Instant ends = has_revision ? outdated_from(known, need, revision_published(known, need, at)) : forever;
  if (need.kind == NeedKind::checkout) {
    const PersonFacts& facts = known.facts(person);
    const auto same_name = named(facts.checkouts, &KnownCheckout::checkout, need.item);
    ends = std::min(ends, taken_away(known, need, facts, same_name, x, at));
  }
  return cover(need, at, known.zone().day(at), RecordNo{}, ends);
}

std::vector<Instant> supposed_moments(const Known& known, const Need& need, NameId person, NameId x) {
  std::vector<Instant> moments;
  const PersonFacts& facts = known.facts(person);
  for (const Publication& publication : known.publications(need.item)) {
    moments.push_back(publication.at);
    moments.push_back(in_force_from(need, publication));
  }
  if (need.kind == NeedKind::quiz && need.retry) {
    for (const auto& attempt : named(facts.quizzes, &KnownQuiz::quiz, need.item)) {
      moments.push_back(attempt.at);
      moments.push_back(attempt.at + 1);
      if (need.retry->wait_hours) moments.push_back(attempt.at + *need.retry->wait_hours * hour);
      if (need.retry->in_hours) moments.push_back(attempt.at + *need.retry->in_hours * hour);
    }
  }
  if (need.kind == NeedKind::checkout) {
    for (const auto& other : named(facts.checkouts, &KnownCheckout::checkout, need.item))
      moments.push_back(other.at);
    for (const auto& incident : facts.incidents) moments.push_back(incident.at);
    for (const NameId changed : {x, known.class_of(x)}) {
      for (const KnownChange& change : known.changes(changed)) moments.push_back(change.at);
    }
  }
  return moments;
}

void for_each_cover(const Known& known, const Need& need, NameId person, NameId x, Instant since,
                    Instant horizon, absl::FunctionRef<bool(const Cover&)> each) {
  CoverTeller(known, need, person, x, since, horizon, each).tell();
}

std::vector<Cover> covers(const Known& known, const Need& need, NameId person, NameId x, Instant horizon) {
  std::vector<Cover> found;
  for_each_cover(known, need, person, x, beginning, horizon, [&](const Cover& cover) {
    found.push_back(cover);
    return true;
  });
  return found;
}

}  // namespace wm
