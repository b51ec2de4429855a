#pragma once
// The limits cards of the shop's machines, as issued.
#include <optional>
#include <variant>
#include <vector>

#include "app/lists/issued.h"
#include "core/passes/card.h"

namespace wm::app {

using AnyCard = std::variant<PlanerCard, JointerCard>;
const LimitsCard& limits_of(const AnyCard& card);
std::string to_json(const AnyCard& card);
/// A planer's where it has a wheel; nothing where the text is neither.
std::optional<AnyCard> read_any_card(const std::string& text);

struct IssuedCard {
  TargetName target;
  int revision = 0;  // 0: none was issued
  Instant at;
  PersonId by;
  QString changed;
  AnyCard card;
};

/// The latest of each target, in order of targets.
std::vector<IssuedCard> issued_cards(const Session& session);
std::optional<IssuedCard> card_of(const Session& session, const TargetName& target);

}  // namespace wm::app
