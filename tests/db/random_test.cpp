// Whatever is entered in whatever order, the journal stays whole and the file holds what memory holds.
#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "core/decide/decider.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

const std::vector<PersonId> everybody = {"mia", "ivo", "dee", "kim", "lou"};
const std::vector<MachineId> machines = {"b1", "b2", "s1", "c1"};
const std::vector<TargetName> targets = {"bandsaw", "sander", "combi", "combi/joint"};

template <class T>
T one_of(const std::vector<T>& list) {
  return *rc::gen::elementOf(list);
}

/// The id of any record so far, or of none.
RecordId any_record(const Store& store) {
  const auto n = *rc::gen::inRange<std::size_t>(0, store.entries().size() + 1);
  return n == store.entries().size() ? "none" : store.entries()[n].id;
}

Action random_action(const TestShop& shop, const Store& store) {
  const PersonId person = one_of(everybody), other = one_of(everybody);
  const Instant soon = shop.now() + 600 * *rc::gen::inRange(-2, 40);
  switch (*rc::gen::inRange(0, 17)) {
    case 0:
      return fact(Lesson{person, "guards", *rc::gen::inRange(0, 3)});
    case 1:
      return fact(Supervised{person, one_of(targets), *rc::gen::inRange(0, 90), other});
    case 2:
      return fact(Checkout{person, "bandsaw", 0, Outcome::passed, other});
    case 3:
      return fact(Lockout{one_of(machines)});
    case 4:
      return fact(Release{any_record(store)});
    case 5:
      return fact(Suspend{person, Everything{}, Day{20526 + *rc::gen::inRange(-1, 3)}});
    case 6:
      return fact(Reinstate{any_record(store)});
    case 7:
      return fact(Appoint{person, TargetScope{one_of(targets)}, false, std::nullopt});
    case 8:
      return fact(Dismiss{any_record(store)});
    case 9:
      return own(Booking{person, other, one_of(machines), one_of(targets), soon, soon + 1800});
    case 10:
      return own(Cancel{any_record(store), "ill"});
    case 11:
      return own(Join{person, other});
    case 12:
      return own(RoleGiven{person, one_of<std::optional<Role>>({std::nullopt, Role::desk, Role::manager})});
    case 13:
      return own(Reached{any_record(store), "phoned"});
    case 14:
      return EnterPerson{Person{"", "", *rc::gen::arbitrary<std::string>(), "X", "", "", "", "", ""},
                         Day{9000}};
    case 15:
      return BlankPerson{person};
    default:
      return StrikeOutRecord{any_record(store), "a mistake"};
  }
}

void check_numbers(const Store& store) {
  std::int64_t order = 0, commit = 0;
  Instant recorded = first_instant;
  for (const Entry& entry : store.entries()) {
    RC_ASSERT(entry.order > order);
    RC_ASSERT(entry.commit >= commit);
    RC_ASSERT(entry.recorded >= recorded);
    RC_ASSERT(!entry.voided || *entry.voided >= entry.recorded);
    order = entry.order;
    commit = entry.commit;
    recorded = entry.recorded;
  }
  RC_ASSERT(commit <= store.last_commit());
}

/// Counted over all pairs, by what stands in the journal alone.
void check_sessions(const Store& store) {
  std::vector<std::pair<Instant, Supervised>> sessions;
  for (const Entry& entry : store.entries())
    if (const auto* core = std::get_if<Fact>(&entry.fact); core && !entry.voided)
      if (const auto* session = std::get_if<Supervised>(core)) sessions.emplace_back(entry.at, *session);
  for (std::size_t i = 0; i < sessions.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      const auto& [at, a] = sessions[i];
      const auto& [other, b] = sessions[j];
      const bool meet = at < other + 60 * b.minutes && other < at + 60 * a.minutes;
      const bool shared = a.person == b.person || a.supervisor == b.supervisor || a.person == b.supervisor ||
                          a.supervisor == b.person;
      RC_ASSERT(!meet || !shared);
    }
  }
}

void check_ended_once(const Store& store) {
  std::vector<RecordId> ended;
  for (const Entry& entry : store.entries()) {
    const auto* core = std::get_if<Fact>(&entry.fact);
    if (core == nullptr || entry.voided) continue;
    if (const auto* release = std::get_if<Release>(core)) ended.push_back(release->lockout);
    if (const auto* reinstate = std::get_if<Reinstate>(core)) ended.push_back(reinstate->suspension);
    if (const auto* dismiss = std::get_if<Dismiss>(core)) ended.push_back(dismiss->appointment);
  }
  std::sort(ended.begin(), ended.end());
  RC_ASSERT(std::adjacent_find(ended.begin(), ended.end()) == ended.end());
}

bool has_manager(const Store& store) {
  return std::any_of(store.people().begin(), store.people().end(),
                     [&](const Person& person) { return store.role_of(person.id) == Role::manager; });
}

}  // namespace

TEST_CASE("Random evenings keep the journal whole, and opening the file again gives what memory had") {
  TestShop prepared;
  prepared.close();
  const bool holds = rc::check("random commands", [&] {
    TestShop shop = prepared.copy();
    const int count = *rc::gen::inRange(1, 60);
    for (int i = 0; i < count; ++i) {
      shop.wait(*rc::gen::inRange(-60, 900));
      Command command = shop.command(one_of(everybody), random_action(shop, shop.store()));
      command.from_paper = *rc::gen::weightedElement<bool>({{4, false}, {1, true}});
      if (*rc::gen::inRange(0, 3) == 0) command.at = shop.now() + *rc::gen::inRange(-7200, 60);
      const auto last = shop.store().last_commit();
      const auto done = shop.store().commit(command);
      RC_ASSERT(shop.store().last_commit() == last + (done ? 1 : 0));
    }
    check_numbers(shop.store());
    check_sessions(shop.store());
    check_ended_once(shop.store());
    RC_ASSERT(has_manager(shop.store()));
    const auto entries = shop.store().entries();
    const auto everybody = shop.store().people();
    const auto last = shop.store().last_commit();
    shop.reopen();
    RC_ASSERT(shop.store().entries() == entries);
    RC_ASSERT(shop.store().people() == everybody);
    RC_ASSERT(shop.store().last_commit() == last);
  });
  CHECK(holds);
}
