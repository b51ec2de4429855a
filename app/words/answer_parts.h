#pragma once
// What an answer's sentence says beside the standing.
#include <QStringList>
#include <map>
#include <vector>

#include "core/decide/decider.h"
#include "core/rulebook/rulebook.h"
#include "db/facts.h"

namespace wm::app {

/// What must be so while the target is used: its tier's conditions and its class's. None without a rulebook.
std::vector<Condition> conditions_of(const Rulebook* rulebook, const TargetName& target);

/// What check-outs left open ("no dado", "with the adapted jig"): wherever a standing is said, these stand
/// beside it. They end with a new check-out of the same name that is passed and counts, and with nothing
/// else.
class Restrictions {
 public:
  /// Takes an entry in where it is a restriction; for the caller to leave out those that do not count.
  void add(const db::Entry& entry);
  /// Those of the person on the target at `at`, each text once.
  QStringList on(Decider& decider, const PersonId& person, const TargetName& target, Instant at) const;

 private:
  std::map<RecordId, QStringList> of_checkout_;
};

}  // namespace wm::app
