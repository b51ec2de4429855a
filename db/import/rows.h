#pragma once
// One file being planned: what all its rows share, and one row being read with its mistakes.
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/import/plan.h"

namespace wm::db::import {

/// A table with its mapping, its choices and the order in which each of its columns writes slashed dates.
class Source {
 public:
  Source(FileKind kind, const Table& table, const Mapping& mapping, const PlanOptions& options);

  FileKind kind() const { return kind_; }
  const Table& table() const { return table_; }
  const PlanOptions& options() const { return options_; }
  /// The cell of a field, trimmed; empty where the file does not have it.
  std::string text(const Row& row, std::string_view key) const;
  DateOrder order(std::string_view key) const;
  const std::optional<DateQuestion>& question() const { return question_; }

 private:
  void find_order(const std::string& key);

  FileKind kind_;
  const Table& table_;
  const Mapping& mapping_;
  const PlanOptions& options_;
  std::map<std::string, DateOrder, std::less<>> orders_;
  std::optional<DateQuestion> question_;
};

/// Reads the cells of a row; what is wrong with one is kept, and a harmless value given back.
class RowReader {
 public:
  RowReader(const Source& source, const Row& row, const Ground& ground)
      : source_(source), row_(row), ground_(ground) {}

  const Ground& ground() const { return ground_; }
  const Row& row() const { return row_; }
  const PlanOptions& options() const { return source_.options(); }

  std::string text(std::string_view key) const { return source_.text(row_, key); }
  bool has(std::string_view key) const { return !text(key).empty(); }
  /// As `text`, and a mistake where it is empty.
  std::string needed(std::string_view key);
  std::optional<Day> day(std::string_view key);
  /// The shop's wall clock; noon where no time is given, so that the date is right whatever the zone.
  std::optional<Instant> instant(std::string_view key);
  /// A whole number within bounds; `fallback` where the cell is empty, or a mistake where there is none.
  int number(std::string_view key, int least, int most, std::optional<int> fallback = std::nullopt);
  /// Minutes from midnight of a time HH:MM.
  int clock(std::string_view key);
  /// The person that the cell numbers.
  PersonId person(std::string_view key);
  TargetName target(std::string_view key);
  MachineId machine(std::string_view key);

  void wrong(std::string_view key, std::string what, std::string remedy);
  void remark(const std::string& text);
  const std::string& remarks() const { return remarks_; }
  const std::vector<RowProblem>& problems() const { return problems_; }

 private:
  std::optional<WrittenDate> written(std::string_view key);
  std::optional<Day> meant(std::string_view key, const WrittenDate& date);

  const Source& source_;
  const Row& row_;
  const Ground& ground_;
  std::vector<RowProblem> problems_;
  std::string remarks_;
};

/// The commands that a row comes to; none where it is here already.
using RowPlanner = std::function<std::vector<Command>(RowReader&)>;

/// Plans every row in order of the dates in `by_date` (of the file where it is empty), each on the ground
/// that the ones before it leave.
ImportPlan plan_rows(const Source& source, const Mapping& mapping, const Ground& ground,
                     std::string_view by_date, const RowPlanner& planner);

/// A name for a record made of its content alone, so that the same row gives the same one every time.
RecordId content_id(std::string_view content);

/// A command with what all of an import's have in common.
Command command(const RowReader& row, RecordId id, std::optional<Instant> at, Action action);

}  // namespace wm::db::import
