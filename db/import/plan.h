#pragma once
// From the rows of a file to commands for the store: what would be entered, what is here already, and what
// is wrong, before anything is done.
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "db/import/columns.h"
#include "db/import/dates.h"
#include "db/import/ground.h"
#include "db/import/table.h"
#include "db/store.h"

namespace wm::db::import {

/// What the user has chosen about the file's content.
struct PlanOptions {
  std::optional<DateOrder> date_order;  // asked for by `ImportPlan::question`
  PersonId by;                          // the manager who takes the file in; nobody where a shop is founded
};

enum class RowFate { enters, already_here, bad };

/// A row as it was understood: a preview shows these under `ImportPlan::titles`.
struct PlannedRow {
  int line = 0;
  RowFate fate = RowFate::enters;
  std::vector<std::string> cells;  // dates as 2026-03-14, everything trimmed
  std::string remark;              // what the person should know though it stops nothing
  friend bool operator==(const PlannedRow&, const PlannedRow&) = default;
};

/// 3/4/2026 in a column where nothing tells which number is the month.
struct DateQuestion {
  int line = 0;
  std::string column, text;
  friend bool operator==(const DateQuestion&, const DateQuestion&) = default;
};

struct ImportPlan {
  std::vector<Command> commands;
  std::vector<int> lines;  // the line that each command comes from
  std::vector<std::string> titles;
  std::vector<PlannedRow> rows;
  std::vector<RowProblem> problems;  // those of the table too; in order of line
  std::optional<DateQuestion> question;
  int already_here = 0;

  bool ready() const { return problems.empty() && !question; }
};

/// People are matched by number; whoever is here stays as they are, and the row's remark says what differs.
ImportPlan plan_people(const Table& table, const Mapping& mapping, const PlanOptions& options,
                       const Ground& ground);
/// Everything that happened: the kinds are in db/import/README.md.
ImportPlan plan_history(const Table& table, const Mapping& mapping, const PlanOptions& options,
                        const Ground& ground);
ImportPlan plan_machines(const Table& table, const Mapping& mapping, const PlanOptions& options,
                         const Ground& ground);
ImportPlan plan_hours(const Table& table, const Mapping& mapping, const PlanOptions& options,
                      const Ground& ground);
ImportPlan plan_bookings(const Table& table, const Mapping& mapping, const PlanOptions& options,
                         const Ground& ground);
ImportPlan plan(FileKind kind, const Table& table, const Mapping& mapping, const PlanOptions& options,
                const Ground& ground);

/// Commits plans together, in order of time: all of them or nothing. A store without any record is founded by
/// them, others take them as papers from the past. Refuses a plan that is not ready; where the store refuses
/// a command, `where` is the line it came from.
Expected<Committed> run(const std::vector<ImportPlan>& plans, Store& store);

}  // namespace wm::db::import
