#pragma once
// A paper: which of a bank's questions somebody is asked, and in which order they and their choices stand.
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "core/problem.h"
#include "core/teach/bank.h"

namespace wm::teach {

/// `question` is a place in the bank's list; `order` the places of its choices as they are shown, empty where
/// it has none. Steps are never shown in their right order.
struct Asked {
  std::size_t question = 0;
  std::vector<std::size_t> order;
  friend bool operator==(const Asked&, const Asked&) = default;
};
using Paper = std::vector<Asked>;

/// The paper of that seed: the same for ever, while the bank is. Refuses a bank that can't fill its
/// blueprint.
Expected<Paper> draw_paper(const Bank& bank, std::uint64_t seed);

/// The first seed from `seed` on whose paper is another than the one sat before: another set of questions
/// where the bank has more than one set, else another order. `previous` are that one's questions by id, as
/// they were asked; of none, `seed` itself. Refuses what `draw_paper` refuses.
Expected<std::uint64_t> next_seed(const Bank& bank, std::uint64_t seed,
                                  std::span<const std::string> previous);

/// The ids of a paper's questions, as they are asked.
std::vector<std::string> ids_of(const Bank& bank, const Paper& paper);

}  // namespace wm::teach
