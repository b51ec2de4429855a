#pragma once
// What an answer's sentence says beside the standing.
#include <QStringList>
#include <functional>
#include <vector>

#include "core/decide/answers.h"
#include "core/rulebook/rulebook.h"
#include "db/facts.h"

namespace wm::app {

/// What must be so while the target is used: its tier's conditions and its class's. None without a rulebook.
std::vector<Condition> conditions_of(const Rulebook* rulebook, const TargetName& target);
/// What the check-outs that the standing rests on left open, each text once; by the entries that count.
QStringList restrictions_of(const StandingAnswer& standing, const std::vector<db::Entry>& entries,
                            const std::function<bool(const db::Entry&)>& counts);

}  // namespace wm::app
