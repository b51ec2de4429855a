#include "app/desk/items.h"

#include <algorithm>

namespace wm::app {

namespace {

struct Collect {
  Items& items;

  void operator()(const NeedDocument& n) const { items.documents.insert(n.document); }
  void operator()(const NeedLesson& n) const { items.lessons.insert(n.lesson); }
  void operator()(const NeedQuiz& n) const { items.quizzes.insert(n.quiz); }
  void operator()(const NeedCheckout& n) const {
    items.checkouts.insert(n.checkout);
    all(n.given);
  }
  void operator()(const NeedAllOf& n) const { all(n.of); }
  void operator()(const NeedAnyOf& n) const { all(n.of); }
  void operator()(const NeedSomeOf& n) const { all(n.of); }
  void operator()(const NeedAge&) const {}
  void operator()(const NeedPractice&) const {}
  void operator()(const NeedRecentUse&) const {}
  void operator()(const NeedStanding&) const {}
  void operator()(const NeedTierStanding&) const {}

  void all(const std::vector<Requirement>& needs) const {
    for (const Requirement& need : needs) std::visit(*this, need.need);
  }
  void gates(const std::vector<Gate>& gates) const {
    for (const Gate& gate : gates) std::visit(*this, gate.need.need);
  }
};

}  // namespace

Items items_of(const Gate& gate) {
  Items items;
  std::visit(Collect{items}, gate.need.need);
  return items;
}

Items items_of(const Rulebook& rulebook) {
  Items items;
  const Collect collect{items};
  for (const Tier& tier : rulebook.tiers) collect.gates(tier.gates);
  for (const MachineClass& c : rulebook.classes) {
    collect.gates(c.gates);
    for (const auto& [mode, gates] : c.mode_gates) collect.gates(gates);
  }
  return items;
}

int published_revision(const Session& session, const std::string& item) {
  int greatest = 0;
  for (const db::Entry* entry : session.store().of_kind("publish")) {
    const auto& publish = std::get<Publish>(std::get<Fact>(entry->fact));
    if (!entry->voided && publish.item == item && entry->at <= session.now())
      greatest = std::max(greatest, publish.revision);
  }
  return greatest;
}

}  // namespace wm::app
