#include "app/words/answer_parts.h"

#include "db/journal/subject.h"

namespace wm::app {
std::vector<Condition> conditions_of(const Rulebook* rulebook, const TargetName& target) {
  const MachineClass* c = rulebook ? find_class(*rulebook, class_of(target)) : nullptr;
  const Tier* tier = c ? find_tier(*rulebook, c->tier) : nullptr;
  std::vector<Condition> all = tier ? tier->conditions : std::vector<Condition>();
  if (c) all.insert(all.end(), c->conditions.begin(), c->conditions.end());
  return all;
}

void Restrictions::add(const db::Entry& entry) {
  if (const auto* restriction = db::as<db::Restriction>(entry.fact))
    of_checkout_[restriction->checkout] << QString::fromStdString(restriction->text);
}

QStringList Restrictions::on(Decider& decider, const PersonId& person, const TargetName& target,
                             Instant at) const {
  QStringList texts;
  if (of_checkout_.empty()) return texts;
  for (const RecordId& checkout : decider.last_checkouts(person, target, at))
    if (const auto left = of_checkout_.find(checkout); left != of_checkout_.end()) texts << left->second;
  texts.removeDuplicates();
  return texts;
}

}  // namespace wm::app
