#include "app/desk/answer.h"

#include <algorithm>
#include <set>

#include "app/desk/next_step.h"
#include "app/desk/tr.h"
#include "app/words/labels.h"

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
        called_(called(session.store().person(person))) {}

  DeskAnswer answer() {
    DeskAnswer a;
    a.machine = target_label(target_);
    a.rung = standing_.standing;
    a.sentence = standing_sentence(called_, target_, standing_, conditions(), restrictions(), session_.zone(),
                                   session_.at());
    if (!session_.asked_at()) a.now = now();
    a.needs_title = needs_title();
    a.needs = needs();
    add_next(a);
    return a;
  }

 private:
  QString name(const PersonId& id) const { return person_name(session_.store().person(id)); }
  bool knows_reasons() const { return session_.role() >= db::Role::instructor; }

  std::vector<Condition> conditions() const {
    const Rulebook* book = session_.decider().in_force(session_.at());
    const MachineClass* c = book ? find_class(*book, class_of(target_)) : nullptr;
    const Tier* tier = c ? find_tier(*book, c->tier) : nullptr;
    std::vector<Condition> all = tier ? tier->conditions : std::vector<Condition>();
    if (c) all.insert(all.end(), c->conditions.begin(), c->conditions.end());
    return all;
  }

  // Those of the check-outs that the standing rests on.
  QStringList restrictions() const {
    std::set<RecordId> checkouts;
    for (const GateAnswer& gate : standing_.gates) collect(gate.reason, checkouts);
    QStringList texts;
    for (const db::Entry& entry : session_.store().entries()) {
      const auto* fact = std::get_if<db::ShopFact>(&entry.fact);
      const auto* restriction = fact ? std::get_if<db::Restriction>(fact) : nullptr;
      if (restriction && !entry.voided && checkouts.contains(restriction->checkout))
        texts << QString::fromStdString(restriction->text);
    }
    texts.removeDuplicates();
    return texts;
  }

  static void collect(const Reason& reason, std::set<RecordId>& records) {
    if (std::holds_alternative<NeedCheckout>(reason.need.need))
      records.insert(reason.rests_on.begin(), reason.rests_on.end());
    for (const Reason& part : reason.of) collect(part, records);
  }

  QString now() const {
    if (!standing_.suspensions.empty()) return paused_because();
    if (standing_.standing == Rung::barred) return {};
    const std::string machine = unit();
    if (machine.empty()) return DeskWords::tr("The shop has no unit of this machine.");
    const auto slash = target_.find('/');
    const std::string mode = slash == std::string::npos ? std::string() : target_.substr(slash + 1);
    std::vector<PersonId> others = shop_.present;
    std::erase(others, person_);
    const MayStart may = session_.decider().may_start(person_, machine, mode, session_.now(),
                                                      !shop_.staff.empty(), others, shop_.busy);
    if (!may.may) return hindered(may);
    if (standing_.standing == Rung::independent) return DeskWords::tr("All of that is so now.");
    QStringList names;
    for (const PersonId& id : may.can_supervise) names << name(id);
    return DeskWords::tr("Here now who can supervise: %1.").arg(names.join(DeskWords::tr(", ")));
  }

  QString hindered(const MayStart& may) const {
    QStringList sentences;
    for (const Hindrance h : may.because) sentences << hindrance_sentence(h, called_);
    return DeskWords::tr("Not now: %1").arg(sentences.join(' '));
  }

  // The first unit that is in service, else any.
  std::string unit() const {
    std::string found;
    for (const auto& [id, added] : shop_.units) {
      if (added.machine_class != class_of(target_)) continue;
      const bool out = std::any_of(shop_.out.begin(), shop_.out.end(),
                                   [&id = id](const OutOfService& o) { return o.machine == id; });
      if (!out) return id;
      found = id;
    }
    return found;
  }

  QString paused_because() const {
    if (!knows_reasons()) return {};
    QStringList lines;
    for (const SuspensionAnswer& suspension : standing_.suspensions)
      if (const db::Entry* entry = session_.entry(suspension.suspension); entry && !entry->note.empty())
        lines << DeskWords::tr("Reason: %1").arg(QString::fromStdString(entry->note));
    return lines.join('\n');
  }

  Rung next_rung() const { return standing_.standing == Rung::barred ? Rung::supervised : Rung::independent; }

  QString needs_title() const {
    if (standing_.standing == Rung::independent) return DeskWords::tr("What this rests on");
    return next_rung() == Rung::supervised ? DeskWords::tr("To work with a supervisor")
                                           : DeskWords::tr("To work without a supervisor");
  }

  // What is missing first; what is there after it.
  std::vector<NeedLine> needs() const {
    std::vector<NeedLine> missing, there;
    const auto record_of = [this](const RecordId& id) { return session_.entry(id); };
    const auto name_of = [this](const PersonId& id) { return name(id); };
    for (const GateAnswer& gate : standing_.gates) {
      if (gate.guards > next_rung()) continue;
      const auto lines = need_lines(gate, record_of, name_of, session_.zone(), session_.at());
      auto& part = gate.state == GateState::unmet ? missing : there;
      part.insert(part.end(), lines.begin(), lines.end());
    }
    missing.insert(missing.end(), there.begin(), there.end());
    return missing;
  }

  void add_next(DeskAnswer& a) const {
    if (!standing_.suspensions.empty()) {
      a.step = NextStep::manager;
      return;
    }
    const Missing missing = first_missing(standing_, next_rung());
    a.step = missing.step;
    a.item = missing.item;
    switch (missing.step) {
      case NextStep::paper:
        a.next = DeskWords::tr("Take the paper: %1.").arg(item_label(missing.item));
        break;
      case NextStep::lesson:
        a.next = DeskWords::tr("The lesson first: %1.").arg(item_label(missing.item));
        break;
      case NextStep::quiz:
        a.next = DeskWords::tr("The quiz first: %1.").arg(item_label(missing.item));
        break;
      case NextStep::one_on_one:
      case NextStep::manager:
      case NextStep::nothing:
        break;
    }
  }

  Session& session_;
  const ShopNow& shop_;
  PersonId person_;
  TargetName target_;
  StandingAnswer standing_;
  QString called_;
};

}  // namespace

QString called(const std::optional<db::Person>& person) {
  if (person && !person->nickname.empty()) return QString::fromStdString(person->nickname);
  if (person && !person->given.empty()) return QString::fromStdString(person->given);
  return person_name(person);
}

DeskAnswer desk_answer(Session& session, const ShopNow& shop, const PersonId& person,
                       const TargetName& target) {
  return Answering(session, shop, person, target).answer();
}

}  // namespace wm::app
