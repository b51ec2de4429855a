#include "db/plan.h"

#include "db/check/checks.h"
#include "db/follow.h"
#include "db/journal/proved_birth.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

AnyFact core(Fact fact) { return fact; }
AnyFact own(ShopFact fact) { return fact; }

/// The first of p1, p2 … that nobody has.
PersonId next_person(const Memory& memory) {
  std::size_t n = memory.people().size() + 1;
  while (memory.person("p" + std::to_string(n)) != nullptr) ++n;
  return "p" + std::to_string(n);
}

struct Planner {
  const Case& c;
  const RecordId& record;
  const PinDesk& pins;

  Expected<Plan> operator()(const EnterPerson& a) const {
    Person person = a.person;
    if (person.id.empty()) person.id = next_person(c.memory);
    if (auto fine = check_new_person(c, person); !fine) return tl::make_unexpected(fine.error());
    const PersonId id = person.id;
    Plan plan{.facts = {own(Details{id, std::move(person)})}};
    if (!a.born) return plan;
    const Fact birth = Birth{id, *a.born};
    // The names are not asked about: this person is only just being entered.
    if (auto fine = check_core_fact(c, birth); !fine) return tl::make_unexpected(fine.error());
    plan.facts.push_back(birth);
    return plan;
  }
  Expected<Plan> operator()(const CorrectPerson& a) const {
    return check_corrected_person(c, a.person).map([&] {
      return Plan{.facts = {own(Details{a.person.id, a.person})}};
    });
  }
  Expected<Plan> operator()(const BlankPerson& a) const {
    return check_blanking(c, a.person).map([&] {
      return Plan{.facts = {own(Erased{a.person, proved_birth(c.memory, c.zone, a.person, c.now)})}};
    });
  }
  Expected<Plan> operator()(const ChoosePin& a) const {
    return check_known_person(c, a.person)
        .and_then([&] { return pins.choose(a.person, a.pin); })
        .map([&](PinChosen chosen) { return Plan{.facts = {own(std::move(chosen))}}; });
  }
  Expected<Plan> operator()(const EnterFact& a) const { return one(core(a.fact)); }
  Expected<Plan> operator()(const EnterShopFact& a) const { return with_what_follows(a.fact); }
  Expected<Plan> operator()(const SignCheckout& a) const {
    if (auto fine = check_signing(c, a); !fine) return tl::make_unexpected(fine.error());
    auto signer = pins.signer(a.checkout.assessor, a.pin);
    if (!signer) return tl::make_unexpected(signer.error());
    Plan plan{.facts = facts_of(a, record)};
    if (a.countersign) {
      auto member = countersigner(a.checkout.person, *a.countersign);
      if (!member) return tl::make_unexpected(member.error());
      plan.countersigner = std::move(*member);
    }
    if (a.second) {
      auto second = pins.signer(a.second->assessor, a.second->pin);
      if (!second) return tl::make_unexpected(second.error());
      plan.second = std::move(*second);
    }
    plan.signer = std::move(*signer);
    add_arrival(a.booking, plan);
    return plan;
  }
  /// Nothing where they have no PIN in it.
  Expected<std::optional<Signer>> countersigner(const PersonId& member, const Countersign& by) const {
    if (by.hand != Hand::pin) return std::nullopt;
    return pins.signer(member, by.proof);
  }
  Expected<Plan> operator()(const CountersignCheckout& a) const {
    if (auto fine = check_countersign_later(c, a); !fine) return tl::make_unexpected(fine.error());
    const PersonId& member = c.memory.live<Checkout>(a.checkout)->person;
    return countersigner(member, a.by).map([&](std::optional<Signer> signer) {
      return Plan{.facts = {own(Countersigned{a.checkout, member, a.by.hand})},
                  .countersigner = std::move(signer)};
    });
  }
  Expected<Plan> operator()(const EnterPaperSheet& a) const {
    return check_paper_sheet(c, a).map([&] {
      Plan plan{.facts = facts_of(a, record)};
      add_arrival(a.sheet.booking, plan);
      return plan;
    });
  }
  Expected<Plan> operator()(const PutOutOfService& a) const {
    return check_out_of_service(c, a).map([&] { return Plan{.facts = facts_of(a, record)}; });
  }
  Expected<Plan> operator()(const RecordIncident& a) const {
    return check_incident(c, a).map([&] { return Plan{.facts = facts_of(a, record)}; });
  }
  Expected<Plan> operator()(const RecordChange& a) const {
    return check_change(c, a).map([&] { return Plan{.facts = facts_of(a, record)}; });
  }
  Expected<Plan> operator()(const TeachGroup& a) const {
    return check_group(c, a).map([&] { return Plan{.facts = facts_of(a, record)}; });
  }
  /// It may always be left: who may supervise was asked when it was started.
  Expected<Plan> operator()(const LeaveMachine& a) const {
    const AnyFact left = own(Left{a.started});
    if (auto fine = check_fact(c, left); !fine) return tl::make_unexpected(fine.error());
    const Started& started = *c.memory.live<Started>(a.started);
    Case then = c;
    then.at = c.memory.find(a.started)->at;
    then.from_paper = true;
    const auto work = worked(started, then.at, c.at);
    if (!work) return Plan{.facts = {left}};
    const AnyFact done = core(*work);
    if (auto fine = check_fact(then, done); !fine) return tl::make_unexpected(fine.error());
    return Plan{.facts = {left, done}, .since = then.at};
  }
  Expected<Plan> operator()(const PublishRulebook& a) const {
    Plan plan{.facts = {own(RulebookIssued{a.rulebook.version})}, .rulebook = a.rulebook};
    plan.rulebook->recorded = c.now;
    return check_rulebook(c, *plan.rulebook).map([&] { return plan; });
  }
  Expected<Plan> operator()(const BlankRecord& a) const {
    return check_blanking_record(c.memory, a.record).map([&] {
      return Plan{.facts = {own(Blanked{a.record})}};
    });
  }
  Expected<Plan> operator()(const HandIn& a) const {
    const auto quiz = marked(c, a);
    if (!quiz) return tl::make_unexpected(quiz.error());
    if (auto fine = check_fact(c, core(*quiz)); !fine) return tl::make_unexpected(fine.error());
    return Plan{.facts = {core(*quiz), own(AttemptSat{quiz->person, a.begun, record, a.attempt})}};
  }
  Expected<Plan> operator()(const ConfirmClock&) const {
    return Plan{.facts = {own(ClockConfirmed{c.shown, c.jumped})}};
  }
  Expected<Plan> operator()(const ScoreApart& a) const {
    if (auto fine = check_scoring(c, a.scored); !fine) return tl::make_unexpected(fine.error());
    auto signer = pins.signer(a.scored.assessor, a.pin);
    if (!signer) return tl::make_unexpected(signer.error());
    return Plan{.facts = {own(a.scored)}, .signer = std::move(*signer)};
  }
  Expected<Plan> operator()(const StrikeOutRecord& a) const {
    return with_what_follows(StrikeOut{a.record, a.reason});
  }
  Expected<Plan> with_what_follows(const ShopFact& fact) const {
    return one(own(fact)).map([&](Plan plan) {
      add_what_follows(c, fact, plan);
      return plan;
    });
  }
  /// Who is checked out has arrived, where that is not marked yet.
  void add_arrival(const std::optional<RecordId>& booking, Plan& plan) const {
    if (!booking || c.memory.about<Attendance>(*booking) != nullptr) return;
    const Attendance arrived{*booking, Turnout::arrived};
    plan.facts.push_back(own(arrived));
    add_what_follows(c, arrived, plan);
  }

  Expected<Plan> one(AnyFact fact) const {
    const auto* checkout = as<Checkout>(fact);
    auto fine = check_fact(c, fact);
    if (fine && checkout != nullptr)
      fine = check_assessor(c, *checkout, {}).and_then([&] { return check_one_is_enough(c, *checkout); });
    return fine.map([&] { return Plan{.facts = {fact}}; });
  }
};

}  // namespace

namespace {

std::vector<AnyFact> sheet_facts(const SignCheckout& a, const RecordId& record, const std::string& form) {
  std::vector<AnyFact> facts = {core(a.checkout)};
  if (!a.sheet.empty() || !a.machine.empty() || !a.marks.empty() || !a.measured.empty())
    facts.push_back(own(SheetMarks{record, a.sheet, a.sheet_revision, a.marks, a.again, a.machine, a.measured,
                                   a.opened, form}));
  if (a.second) facts.push_back(own(Witnessed{record, a.second->assessor}));
  if (a.countersign) {
    const bool on_paper = a.countersign->hand == Hand::paper;
    facts.push_back(own(Countersigned{record, a.checkout.person, a.countersign->hand,
                                      on_paper ? a.countersign->proof : std::string()}));
  }
  for (const std::string& text : a.restrictions) facts.push_back(own(Restriction{record, text}));
  return facts;
}

}  // namespace

std::vector<AnyFact> facts_of(const SignCheckout& a, const RecordId& record) {
  return sheet_facts(a, record, {});
}

std::vector<AnyFact> facts_of(const EnterPaperSheet& a, const RecordId& record) {
  return sheet_facts(a.sheet, record, a.form);
}

std::vector<AnyFact> facts_of(const PutOutOfService& a, const RecordId& record) {
  return {core(Lockout{a.machine}), own(Tag{record, a.tag, a.padlock, a.reason, a.key_holder, a.put_on_by})};
}

std::vector<AnyFact> facts_of(const RecordIncident& a, const RecordId& record) {
  std::vector<AnyFact> facts;
  std::vector<RecordId> incidents;
  for (const Involved& one : a.people) {
    incidents.push_back(record_at(record, facts.size()));
    facts.push_back(core(Incident{one.person, a.target, a.severity, one.part}));
  }
  facts.push_back(own(told_of(a, std::move(incidents))));
  return facts;
}

std::vector<AnyFact> facts_of(const RecordChange& a, const RecordId& record) {
  if (a.as_before) return {own(Altered{{}, a.machine, a.kind, a.what, a.target})};
  return {core(Change{a.target}), own(Altered{record, a.machine, a.kind, a.what})};
}

std::vector<AnyFact> facts_of(const TeachGroup& a, const RecordId& record) {
  std::vector<AnyFact> facts;
  std::vector<RecordId> lessons;
  for (const PersonId& person : a.people) {
    lessons.push_back(record_at(record, facts.size()));
    facts.push_back(core(Lesson{person, a.lesson, a.revision}));
  }
  facts.push_back(own(GroupTaught{a.lesson, a.instructors, std::move(lessons)}));
  return facts;
}

RecordId record_at(const RecordId& first, std::size_t place) {
  return place == 0 ? first : first + "." + std::to_string(place + 1);
}

Expected<Plan> plan(const Case& c, const Action& action, const RecordId& record, const PinDesk& pins) {
  return std::visit(Planner{c, record, pins}, action);
}

}  // namespace wm::db
