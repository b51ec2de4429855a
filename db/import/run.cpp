#include <algorithm>
#include <charconv>

#include "db/import/plan.h"

namespace wm::db::import {
namespace {

struct Placed {
  const Command* command;
  int line;
};

/// What has no time of its own comes first (people, machines), since all else may rest on it; a strike-out
/// without one counts from now on, and so comes last.
Instant place_in_time(const Command& command) {
  const bool strikes = std::holds_alternative<StrikeOutRecord>(command.action);
  return command.at.value_or(strikes ? last_instant : first_instant);
}

/// In order of time, and of the files where that is the same.
std::vector<Placed> in_order(const std::vector<ImportPlan>& plans) {
  std::vector<Placed> placed;
  for (const ImportPlan& plan : plans)
    for (std::size_t i = 0; i < plan.commands.size(); ++i)
      placed.push_back({&plan.commands[i], plan.lines[i]});
  std::stable_sort(placed.begin(), placed.end(), [](const Placed& a, const Placed& b) {
    return place_in_time(*a.command) < place_in_time(*b.command);
  });
  return placed;
}

Expected<void> check_ready(const ImportPlan& plan) {
  if (!plan.problems.empty()) {
    const Problem& first = plan.problems.front().problem;
    return tl::unexpected(Problem{first.where, first.what, first.remedy});
  }
  if (plan.question)
    return tl::unexpected(
        Problem{"line " + std::to_string(plan.question->line) + ", " + plan.question->column,
                "\"" + plan.question->text + "\" may be two different days",
                "Choose whether the month or the day comes first"});
  return {};
}

/// The store counts commands from 1, or names nothing; the user knows lines.
Problem placed_problem(Problem problem, const std::vector<Placed>& placed) {
  constexpr std::string_view word = "command ";
  if (!problem.where.starts_with(word)) return problem;
  std::size_t n = 0;
  std::from_chars(problem.where.data() + word.size(), problem.where.data() + problem.where.size(), n);
  if (n >= 1 && n <= placed.size()) problem.where = "line " + std::to_string(placed[n - 1].line);
  return problem;
}

}  // namespace

ImportPlan plan(FileKind kind, const Table& table, const Mapping& mapping, const PlanOptions& options,
                const Ground& ground) {
  switch (kind) {
    case FileKind::people:
      return plan_people(table, mapping, options, ground);
    case FileKind::history:
      return plan_history(table, mapping, options, ground);
    case FileKind::machines:
      return plan_machines(table, mapping, options, ground);
    case FileKind::hours:
      return plan_hours(table, mapping, options, ground);
    case FileKind::bookings:
      return plan_bookings(table, mapping, options, ground);
  }
  return {};
}

Expected<Committed> run(const std::vector<ImportPlan>& plans, Store& store) {
  for (const ImportPlan& plan : plans)
    if (const auto ready = check_ready(plan); !ready) return tl::unexpected(ready.error());
  const std::vector<Placed> placed = in_order(plans);
  if (placed.empty()) return Committed{store.last_commit(), {}, {}, true, {}};
  std::vector<Command> commands;
  commands.reserve(placed.size());
  for (const Placed& p : placed) commands.push_back(*p.command);
  auto committed = store.last_commit() == 0 ? store.found(commands) : store.commit_all(commands);
  if (!committed) return tl::unexpected(placed_problem(committed.error(), placed));
  return committed;
}

}  // namespace wm::db::import
