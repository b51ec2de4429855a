#pragma once
// Everything that the right side of the Desk says about one person and one machine, as words.
#include <QString>
#include <QStringList>
#include <vector>

#include "app/desk/next_step.h"
#include "app/desk/shop_now.h"
#include "app/words/needs.h"

namespace wm::app {

struct DeskAnswer {
  QString machine;  // heading
  Rung rung = Rung::barred;
  QString sentence;  // the largest words
  QString since;     // since when that has been so, and what comes then
  QString now;       // who is here that can supervise, or what stands in the way now
  QString needs_title;
  std::vector<NeedLine> needs;
  Next step;        // what the large button does
  QString next;     // what to do next and from which date, or what is to be renewed
  QStringList way;  // all of that, a sentence each: for paper
};

/// Whether somebody may start a unit now; what stands in the way, and what would lift it, a sentence each.
struct StartAnswer {
  MayStart may;
  bool possible = false;
  bool needs_supervisor = false;
  QStringList hindrances;
  QString warning;  // what hinders nothing and is to be thought of; or nothing
};
StartAnswer may_start_now(Session& session, const ShopNow& shop, const PersonId& person,
                          const TargetName& target, const MachineId& machine);
/// "Bandsaw, unit 2"
QString unit_words(const ShopNow& shop, const MachineId& id);

DeskAnswer desk_answer(Session& session, const ShopNow& shop, const PersonId& person,
                       const TargetName& target);

}  // namespace wm::app
