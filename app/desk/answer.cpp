#include "app/desk/answer.h"

#include <algorithm>
#include <set>

#include "app/desk/tr.h"
#include "app/diary/bookings.h"
#include "app/diary/not_countersigned.h"
#include "app/lists/answer_reader.h"
#include "app/words/answer_parts.h"
#include "app/words/grace_words.h"
#include "app/words/listed_name.h"
#include "app/words/pause_words.h"
#include "app/words/route_words.h"
#include "app/words/start_words.h"
#include "app/words/words.h"

namespace wm::app {

namespace {

class Answering {
 public:
  Answering(Session& session, const ShopNow& shop, const PersonId& person, const TargetName& target)
      : session_(session),
        shop_(shop),
        person_(person),
        target_(target),
        standing_(session.decider().standing(person, target, session.at())),
        reader_(answer_reader(session, person)) {}

  DeskAnswer answer() {
    DeskAnswer a;
    a.machine = target_label(target_);
    a.rung = standing_.standing;
    a.sentence = standing_sentence(target_, standing_, conditions(), restrictions(), reader_);
    if (!paused())
      a.since = (since_sentence(standing_, reader_) + ' ' + next_sentence(standing_, reader_)).trimmed();
    a.since = (a.since + ' ' + to_countersign()).trimmed();
    a.now = paused() ? pause_sentences(standing_, knows_reasons(), reader_).join(' ') : now();
    a.needs_title = needs_title();
    a.needs = needs();
    add_next(a);
    return a;
  }

 private:
  bool paused() const { return !standing_.suspensions.empty(); }
  bool knows_reasons() const { return session_.role() >= db::Role::instructor; }

  std::vector<Condition> conditions() const {
    return conditions_of(session_.decider().in_force(session_.at()), target_);
  }
  QStringList restrictions() const {
    return wm::app::restrictions(session_).on(session_.decider(), person_, target_, session_.at());
  }

  // No standing rests on it: it is said to whoever can let the member do so.
  QString to_countersign() const {
    if (session_.asked_at() || !session_.seated()) return {};
    for (const NotCountersigned& missing : not_countersigned(session_)) {
      if (missing.machine_class != class_of(target_) ||
          session_.joined(missing.checkout->person) != session_.joined(person_))
        continue;
      return DeskWords::tr("The check-out of %1 is not countersigned yet; %2 can still do so, on Check-outs.")
          .arg(short_day(missing.entry->at, session_.zone()), reader_.name_of(person_));
    }
    return {};
  }

  // Who is here now says nothing about another day, nor what was known then about who is here.
  QString now() const {
    if (session_.asked_at() || session_.known() || standing_.standing == Rung::barred) return {};
    const std::string machine = unit();
    if (machine.empty()) return DeskWords::tr("The shop has no unit of this machine.");
    if (const db::AtMachine* at = shop_.machine_of(session_.joined(person_))) return at_machine(*at);
    const StartAnswer start = may_start(machine);
    if (start.possible) return may_start_sentence(start.may, standing_.standing, restrictions(), reader_);
    return DeskWords::tr("Not now: %1").arg(start.hindrances.join(' '));
  }

 public:
  StartAnswer may_start(const MachineId& machine) const {
    const db::StartNow now = session_.start_now(person_, machine, target_);
    StartAnswer answer{now.may, now.possible(), now.needs_supervisor, {}, {}};
    const StartReader start{reader_, [this](const RecordId& lockout) { return lock_of(lockout); },
                            [this] { return could_supervise(); }};
    answer.hindrances = hindrance_sentences(answer.may, start);
    if (now.unit_in_use)
      answer.hindrances.prepend(
          DeskWords::tr("%1 is at %2 since %3: enter first that they have left it.")
              .arg(reader_.name_of(now.unit_in_use->person), unit_words(shop_, machine),
                   time_words(now.unit_in_use->since, session_.zone(), session_.now())));
    for (const auto& taken : {now.unit_taken, now.in_one_on_one})
      if (taken) answer.hindrances.prepend(in_one_on_one(*taken));
    if (now.booked_for)
      answer.warning = DeskWords::tr("%1 has it booked with %2 from %3 to %4. Ask them first.")
                           .arg(reader_.name_of(now.booked_for->person),
                                names_of(session_, now.booked_for->assessor, now.booked_for->second),
                                clock_time(now.booked_for->when.from, session_.zone()),
                                clock_time(now.booked_for->when.to, session_.zone()));
    return answer;
  }

 private:
  QString in_one_on_one(const Booked& taken) const {
    return DeskWords::tr(
               "%1 is in a one-on-one with %2 on %3; it ends at %4. Where it has ended before its time, "
               "cancel it in the Diary.")
        .arg(reader_.name_of(taken.person), names_of(session_, taken.assessor, taken.second),
             unit_words(shop_, taken.machine), clock_time(taken.when.to, session_.zone()));
  }

  QString at_machine(const db::AtMachine& at) const {
    const QString where = unit_words(shop_, at.machine);
    const auto time = [this](Instant t) { return time_words(t, session_.zone(), session_.now()); };
    const QString said = at.person == session_.joined(person_)
                             ? DeskWords::tr("At work on %1 since %2.").arg(where, time(at.since))
                             : DeskWords::tr("Supervising %3 on %1 since %2.")
                                   .arg(where, time(at.since), reader_.name_of(at.person));
    if (!at.gone) return said;
    return said + ' ' +
           DeskWords::tr("%1 is noted as gone since %2: enter when the machine was left.")
               .arg(reader_.name_of(at.gone->person), time(at.gone->at));
  }

  const db::LockOn* lock_of(const RecordId& lockout) const {
    for (const db::LockOn& out : shop_.out)
      if (out.lockout == lockout) return &out;
    return nullptr;
  }

  // Assessors before others, who are asked for only where there is none.
  QStringList could_supervise() const {
    Decider& decider = session_.decider();
    std::vector<PersonId> able = decider.assessors(target_, session_.now());
    std::erase(able, person_);
    if (able.empty()) {
      able = decider.who(target_, session_.now(), Rung::independent);
      std::erase_if(able, [&](const PersonId& id) {
        return id == person_ || !decider.able_to_supervise(id, target_, session_.now());
      });
    }
    QStringList names;
    for (const PersonId& id : able) names << reader_.name_of(id);
    return names;
  }

  // The first unit that is in service and free, else any.
  std::string unit() const {
    std::string found;
    for (const auto& [id, added] : shop_.units) {
      if (added.machine_class != class_of(target_)) continue;
      const bool out = std::any_of(shop_.out.begin(), shop_.out.end(),
                                   [&id = id](const db::LockOn& o) { return o.machine == id; });
      if (!out && !shop_.in_use(id)) return id;
      found = id;
    }
    return found;
  }

  Rung next_rung() const { return rung_above(standing_.standing); }

  QString needs_title() const {
    if (standing_.standing == Rung::independent) return DeskWords::tr("What this rests on");
    return next_rung() == Rung::supervised ? DeskWords::tr("To work with a supervisor")
                                           : DeskWords::tr("To work without a supervisor");
  }

  // What is missing first; what is there after it.
  std::vector<NeedLine> needs() const {
    std::vector<NeedLine> missing, there;
    for (const GateAnswer& gate : standing_.gates) {
      if (gate.guards > next_rung()) continue;
      const auto lines = need_lines(gate, reader_);
      auto& part = gate.state == GateState::unmet ? missing : there;
      part.insert(part.end(), lines.begin(), lines.end());
    }
    missing.insert(missing.end(), there.begin(), there.end());
    return missing;
  }

  // What is due comes first, then the way up; where there is none, what falls due next.
  void add_next(DeskAnswer& a) const {
    if (paused()) return;
    a.way = due_sentences(standing_, reader_);
    a.step = next_renewal(standing_);
    if (standing_.standing == Rung::independent) {
      if (const QString due = next_due_sentence(standing_, reader_); a.way.isEmpty() && !due.isEmpty())
        a.way << due;
      a.next = a.way.join(' ');
    } else {
      add_route(a);
    }
  }

  void add_route(DeskAnswer& a) const {
    const Route route = session_.decider().route(person_, target_, next_rung(), session_.at());
    if (a.step.step == NextStep::nothing) a.step = next_on(route);
    const RouteWords words = route_words(route, target_, next_rung(), reader_);
    QStringList said = a.way;
    // Of a lone one-on-one the booking that fits says more.
    const bool lone = a.step.step == NextStep::one_on_one && route.steps.size() == 1 && route.reaches;
    if (!lone) said << in_short(words);
    a.next = said.join(' ');
    a.way << words.sentences();
  }

  // As much as the panel has room for.
  static QStringList in_short(const RouteWords& words) {
    constexpr std::size_t most_days = 2;
    if (words.days.size() <= most_days) return words.sentences();
    QStringList said;
    for (std::size_t day = 0; day < most_days; ++day) said << words.day_sentence(day);
    said << DeskWords::tr("More steps follow: print this for all of them.") << words.outcome;
    if (!words.doubt.isEmpty()) said << words.doubt;
    return said;
  }

  Session& session_;
  const ShopNow& shop_;
  PersonId person_;
  TargetName target_;
  StandingAnswer standing_;
  AnswerReader reader_;
};

}  // namespace

QString unit_words(const ShopNow& shop, const MachineId& id) {
  const auto unit = shop.units.find(id);
  return unit == shop.units.end() ? QString::fromStdString(id)
                                  : unit_name(unit->second.machine_class, unit->second.label);
}

StartAnswer may_start_now(Session& session, const ShopNow& shop, const PersonId& person,
                          const TargetName& target, const MachineId& machine) {
  return Answering(session, shop, person, target).may_start(machine);
}

DeskAnswer desk_answer(Session& session, const ShopNow& shop, const PersonId& person,
                       const TargetName& target) {
  return Answering(session, shop, person, target).answer();
}

}  // namespace wm::app
