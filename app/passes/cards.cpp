#include "app/passes/cards.h"

#include <algorithm>

#include "core/passes/json.h"

namespace wm::app {

const LimitsCard& limits_of(const AnyCard& card) {
  return std::visit([](const auto& any) -> const LimitsCard& { return any.limits; }, card);
}

std::string to_json(const AnyCard& card) {
  return std::visit([](const auto& any) { return wm::to_json(any); }, card);
}

std::optional<AnyCard> read_any_card(const std::string& text) {
  if (auto planer = read_planer_card(text)) return *std::move(planer);
  if (auto jointer = read_jointer_card(text)) return *std::move(jointer);
  return std::nullopt;
}

std::vector<IssuedCard> issued_cards(const Session& session) {
  std::vector<IssuedCard> out;
  for (const IssuedRevision& one : latest_issued(session, db::Work::card))
    if (auto card = read_any_card(one.work->text))
      out.push_back({one.work->name, one.work->revision, one.at, one.by,
                     QString::fromStdString(one.work->changed), *std::move(card)});
  return out;
}

std::optional<IssuedCard> card_of(const Session& session, const TargetName& target) {
  std::vector<IssuedCard> all = issued_cards(session);
  const auto found = std::ranges::find(all, target, &IssuedCard::target);
  return found == all.end() ? std::nullopt : std::optional(std::move(*found));
}

}  // namespace wm::app
