#include <map>
#include <memory>
#include <utility>

#include "core/diary/ready.h"

namespace wm {
namespace {

/// One answer for each question asked before.
template <class Key>
class Kept {
 public:
  template <class Ask>
  bool operator()(const Key& key, const Ask& ask) {
    const auto found = answers_.find(key);
    if (found != answers_.end()) return found->second;
    return answers_[key] = ask();
  }

 private:
  std::map<Key, bool> answers_;
};

using At = std::pair<std::string, Instant>;

/// A yes or no about somebody or something at both ends of a slot, each instant asked about once.
template <class Ask>
auto at_both_ends(Ask ask) {
  return [ask, kept = std::make_shared<Kept<At>>()](const std::string& id, const Interval& when) {
    const auto at = [&](Instant t) { return (*kept)({id, t}, [&] { return ask(id, t); }); };
    return at(when.from) && at(when.to - 1);
  };
}

}  // namespace

void ask_decider(SlotQuestion& question, Decider& decider, const TargetName& target) {
  const auto ready = at_both_ends([&decider, target](const PersonId& person, Instant t) {
    return decider.rung(person, target, t) >= Rung::supervised &&
           ready_for_checkout(decider.standing(person, target, t));
  });
  question.ready = [ready, person = question.person](const Interval& when) { return ready(person, when); };
  question.able = at_both_ends([&decider, target](const PersonId& assessor, Instant t) {
    return decider.able_to_assess(assessor, target, t);
  });
  question.in_service = at_both_ends([&decider](const MachineId& unit, Instant t) {
    return decider.may_start("", unit, "", t, false, {}, {}).lockouts.empty();
  });
}

}  // namespace wm
