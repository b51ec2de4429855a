#pragma once
// Limits cards as JSON, read strictly and written back; the form stands in core/passes/README.md.
#include <string>
#include <string_view>
#include <vector>

#include "core/passes/card.h"

namespace wm {

/// Every mistake found, each with its JSON pointer. A card may lack the shortest length: it can be kept, but
/// makes no plan.
tl::expected<PlanerCard, std::vector<Problem>> read_planer_card(std::string_view json);
tl::expected<JointerCard, std::vector<Problem>> read_jointer_card(std::string_view json);

/// Written so that reading it again gives an equal card.
std::string to_json(const PlanerCard& card);
std::string to_json(const JointerCard& card);

}  // namespace wm
