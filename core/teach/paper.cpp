#include "core/teach/paper.h"

#include <algorithm>
#include <map>
#include <numeric>

#include "core/teach/blueprint.h"
#include "core/teach/random.h"

namespace wm::teach {
namespace {

/// A topic's questions as places in the bank, those that every paper has first.
struct Pool {
  std::vector<std::size_t> questions;
  std::size_t critical = 0;
};

/// By topic, in order of the bank.
std::map<std::string_view, Pool> pools_of(const Bank& bank) {
  std::map<std::string_view, Pool> pools;
  for (const bool critical : {true, false})
    for (std::size_t i = 0; i < bank.questions.size(); ++i) {
      if (bank.questions[i].critical != critical) continue;
      Pool& pool = pools[bank.questions[i].topic];
      pool.questions.push_back(i);
      pool.critical += critical ? 1 : 0;
    }
  return pools;
}

std::vector<std::size_t> shown_order(const Question& question, Random& random) {
  std::vector<std::size_t> order(choice_count(question));
  std::iota(order.begin(), order.end(), std::size_t{0});
  shuffle(std::span(order), random);
  const bool steps = std::holds_alternative<InOrder>(question.kind) && order.size() > 1;
  while (steps && std::is_sorted(order.begin(), order.end())) shuffle(std::span(order), random);
  return order;
}

Paper drawn(const Bank& bank, std::uint64_t seed) {
  Random random(seed);
  auto pools = pools_of(bank);
  Paper paper;
  for (const Draw& draw : bank.draws) {
    Pool& pool = pools[draw.topic];
    shuffle(std::span(pool.questions).subspan(pool.critical), random);
    for (std::size_t i = 0; i < static_cast<std::size_t>(draw.count); ++i)
      paper.push_back({pool.questions[i], {}});
  }
  shuffle(std::span(paper), random);
  for (Asked& asked : paper) asked.order = shown_order(bank.questions[asked.question], random);
  return paper;
}

bool has_one_set_only(const Bank& bank) {
  const auto pools = pools_of(bank);
  return std::all_of(bank.draws.begin(), bank.draws.end(), [&](const Draw& draw) {
    const Pool& pool = pools.at(draw.topic);
    const auto count = static_cast<std::size_t>(draw.count);
    return count == pool.questions.size() || count == pool.critical;
  });
}

std::vector<std::string> sorted(std::vector<std::string> ids) {
  std::sort(ids.begin(), ids.end());
  return ids;
}

}  // namespace

Expected<Paper> draw_paper(const Bank& bank, std::uint64_t seed) {
  for (auto wrong : {repeated_ids(bank), shortfalls(bank)})
    if (!wrong.empty())
      return tl::unexpected(
          Problem{"the bank " + bank.name, std::move(wrong.front().what), std::move(wrong.front().remedy)});
  return drawn(bank, seed);
}

Expected<std::uint64_t> next_seed(const Bank& bank, std::uint64_t seed,
                                  std::span<const std::string> previous) {
  if (const auto first = draw_paper(bank, seed); !first) return tl::unexpected(first.error());
  const std::vector<std::string> before(previous.begin(), previous.end());
  const bool order_counts = has_one_set_only(bank);
  const auto as_compared = [&](std::vector<std::string> ids) {
    return order_counts ? ids : sorted(std::move(ids));
  };
  // Of two papers or more each seed gives another with a chance of a half at least, so a few are enough.
  while (as_compared(ids_of(bank, drawn(bank, seed))) == as_compared(before)) ++seed;
  return seed;
}

std::vector<std::string> ids_of(const Bank& bank, const Paper& paper) {
  std::vector<std::string> ids;
  for (const Asked& asked : paper) ids.push_back(bank.questions[asked.question].id);
  return ids;
}

}  // namespace wm::teach
