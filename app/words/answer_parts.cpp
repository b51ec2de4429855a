#include "app/words/answer_parts.h"

#include <set>

namespace wm::app {
namespace {

void collect_checkouts(const Reason& reason, std::set<RecordId>& records) {
  if (std::holds_alternative<NeedCheckout>(reason.need.need))
    records.insert(reason.rests_on.begin(), reason.rests_on.end());
  for (const Reason& part : reason.of) collect_checkouts(part, records);
}

}  // namespace

std::vector<Condition> conditions_of(const Rulebook* rulebook, const TargetName& target) {
  const MachineClass* c = rulebook ? find_class(*rulebook, class_of(target)) : nullptr;
  const Tier* tier = c ? find_tier(*rulebook, c->tier) : nullptr;
  std::vector<Condition> all = tier ? tier->conditions : std::vector<Condition>();
  if (c) all.insert(all.end(), c->conditions.begin(), c->conditions.end());
  return all;
}

QStringList restrictions_of(const StandingAnswer& standing, const std::vector<db::Entry>& entries,
                            const std::function<bool(const db::Entry&)>& counts) {
  std::set<RecordId> checkouts;
  for (const GateAnswer& gate : standing.gates) collect_checkouts(gate.reason, checkouts);
  QStringList texts;
  for (const db::Entry& entry : entries) {
    const auto* fact = std::get_if<db::ShopFact>(&entry.fact);
    const auto* restriction = fact ? std::get_if<db::Restriction>(fact) : nullptr;
    if (restriction && checkouts.contains(restriction->checkout) && counts(entry))
      texts << QString::fromStdString(restriction->text);
  }
  texts.removeDuplicates();
  return texts;
}

}  // namespace wm::app
