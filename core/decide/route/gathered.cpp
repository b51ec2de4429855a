#include "core/decide/route/gathered.h"

#include <algorithm>

namespace wm {

void Gathered::standing(NameId x) {
  note_target(x);
  work_through();
}

void Gathered::need(const Need& need, NameId x) {
  note_need(need, x);
  work_through();
}

void Gathered::note_target(NameId x) {
  if (known_targets_.insert(x).second) targets_.push_back(x);
}

void Gathered::work_through() {
  while (worked_through_ < targets_.size()) gates_of(targets_[worked_through_++]);
}

void Gathered::gates_of(NameId x) {
  for (const Book& book : standings_.books()) {
    if (book.span.to <= from_) continue;
    for (const NameId target : book.stands_for(x, standings_.known())) {
      for (const BookGate* gate : book.find(target)->gates) {
        note_need(gate->need, target);
        if (gate->spared_until <= std::max(from_, gate->spared_by)) continue;
        note_target(target);
        if (gate->spared_by >= from_) spared_.insert({target, gate->gate->guards, gate->spared_by});
      }
    }
  }
}

void Gathered::note_need(const Need& need, NameId x) {
  switch (need.kind) {
    case NeedKind::group:
      for (const Need& part : need.of) note_need(part, x);
      return;
    case NeedKind::standing:
      note_target(need.target);
      return;
    case NeedKind::tier_standing:
      for (const Book& book : standings_.books()) {
        const auto tier = book.tiers.find(need.tier);
        if (book.span.to <= from_ || tier == book.tiers.end()) continue;
        for (const NameId target : tier->second) note_target(target);
      }
      return;
    default:
      break;
  }
  const Asked asked{&need, x};
  if (!known_asked_.insert(asked).second) return;
  asked_.push_back(asked);
  for (const Need& given : need.given) note_need(given, x);
  if (need.kind == NeedKind::recent_use)
    for (const NameId target : recordable_for(standings_.known(), asked)) note_target(target);
}

}  // namespace wm
