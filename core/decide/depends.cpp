#include "core/decide/depends.h"

namespace wm {

namespace {

template <class F>
const std::size_t kind_of = Fact(F()).index();

}  // namespace

Depends::Depends(Known& known, const std::vector<Book>& books, const std::vector<NameId>& targets)
    : known_(known),
      books_(books),
      targets_(targets),
      rest_on_(targets.size(), TargetSet(targets.size())),
      none_(targets.size()),
      all_(targets.size(), true) {
  for (std::size_t i = 0; i < targets_.size(); ++i) places_[targets_[i]] = i;
  for (const Book& book : books_) {
    for (std::size_t place = 0; place < targets_.size(); ++place) {
      // The standing on a target is that on what it stands for, by another rulebook perhaps its modes.
      for (const NameId x : book.stands_for(targets_[place], known_)) {
        for (const BookGate* gate : book.find(x)->gates) {
          note(gate->need, place, x);
          if (gate->spared_until > beginning) note_standing(x, place);
        }
      }
    }
  }
  // What rests on a target rests on what that target's own standing rests on.
  for (bool grown = true; grown;) {
    grown = false;
    for (std::size_t i = 0; i < targets_.size(); ++i)
      for (std::size_t j = 0; j < targets_.size(); ++j)
        if (rest_on_[i].has(j)) grown = rest_on_[i].add(rest_on_[j]) || grown;
  }
  for (auto& [key, set] : by_) {
    for (std::size_t i = 0; i < targets_.size(); ++i)
      if (set.has(i)) set.add(rest_on_[i]);
  }
}

void Depends::note(const Need& need, std::size_t target, NameId x) {
  const NameId looks_at = need.target == no_name ? x : need.target;
  for (const Need& part : need.of) note(part, target, x);
  for (const Need& part : need.given) note(part, target, x);
  switch (need.kind) {
    case NeedKind::document:
      at(kind_of<Document>, need.item).add(target);
      break;
    case NeedKind::age:
      at(kind_of<Birth>, no_name).add(target);
      break;
    case NeedKind::lesson:
      at(kind_of<Lesson>, need.item).add(target);
      break;
    case NeedKind::quiz:
      at(kind_of<Quiz>, need.item).add(target);
      break;
    case NeedKind::checkout:
      at(kind_of<Checkout>, need.item).add(target);
      assessed_.try_emplace(need.item, targets_.size()).first->second.add(places_.at(x));
      if (need.renew_after_severity > 0) at(kind_of<Incident>, known_.class_of(x)).add(target);
      if (need.renew_after_change) note_on_both(kind_of<Change>, x, target);
      break;
    case NeedKind::recent_use:
      note_on_both(kind_of<Use>, looks_at, target);
      // Uses count where they were permitted, by the person's own standing.
      note_standing(looks_at, target);
      note_standing(known_.class_of(looks_at), target);
      [[fallthrough]];
    case NeedKind::practice:
      note_on_both(kind_of<Supervised>, looks_at, target);
      break;
    case NeedKind::standing:
      note_standing(need.target, target);
      break;
    case NeedKind::tier_standing:
      for (const Book& book : books_) {
        const auto tier = book.tiers.find(need.tier);
        if (tier == book.tiers.end()) continue;
        for (const NameId each : tier->second) note_standing(each, target);
      }
      break;
    case NeedKind::group:
      break;
  }
  if (need.current_revision) at(kind_of<Publish>, need.item).add(target);
}

void Depends::note_standing(NameId x, std::size_t target) {
  for (const Book& book : books_)
    for (const NameId each : book.stands_for(x, known_)) rest_on_[places_.at(each)].add(target);
}

/// Records on the target, and those on its class.
void Depends::note_on_both(std::size_t kind, NameId x, std::size_t target) {
  at(kind, x).add(target);
  if (known_.class_of(x) != x) at(kind, known_.class_of(x)).add(target);
}

const TargetSet& Depends::on(std::size_t kind, NameId about) const {
  if (kind == kind_of<Suspend> || kind == kind_of<Reinstate>) return all_;
  const auto found = by_.find({kind, about});
  return found == by_.end() ? none_ : found->second;
}

const TargetSet& Depends::assessed_by(NameId checkout) const {
  const auto found = assessed_.find(checkout);
  return found == assessed_.end() ? none_ : found->second;
}

}  // namespace wm
