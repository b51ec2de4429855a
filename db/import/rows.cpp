#include "db/import/rows.h"

#include <QCryptographicHash>
#include <algorithm>

#include "core/time/text.h"

namespace wm::db::import {
namespace {

constexpr std::string_view date_fields[] = {"date",   "until", "struck_out", "born",
                                            "joined", "since", "booked"};

std::string trimmed(std::string_view text) {
  // U+00A0 too: spreadsheets leave it behind.
  const auto is_space = [](std::string_view s) {
    return s.starts_with("\xC2\xA0") ? 2u : (s.starts_with(' ') || s.starts_with('\t')) ? 1u : 0u;
  };
  while (const auto size = is_space(text)) text.remove_prefix(size);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t' || text.ends_with("\xC2\xA0")))
    text.remove_suffix(text.ends_with("\xC2\xA0") ? 2 : 1);
  return std::string(text);
}

void count_problems(ImportPlan& plan, const std::vector<RowProblem>& problems) {
  plan.problems.insert(plan.problems.end(), problems.begin(), problems.end());
}

/// The rows' places in the order in which they are to be planned.
std::vector<const Row*> in_order(const Source& source, const Ground& ground, std::string_view by_date) {
  std::vector<std::pair<Instant, const Row*>> dated;
  for (const Row& row : source.table().rows) {
    RowReader reader(source, row, ground);
    dated.emplace_back(by_date.empty() ? Instant{} : reader.instant(by_date).value_or(first_instant), &row);
  }
  std::stable_sort(dated.begin(), dated.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<const Row*> rows;
  for (const auto& pair : dated) rows.push_back(pair.second);
  return rows;
}

/// The row as understood, field by field.
std::vector<std::string> understood(const Source& source, const Mapping& mapping, const Row& row,
                                    const Ground& ground) {
  std::vector<std::string> cells;
  for (const Field& field : fields_of(source.kind())) {
    if (!mapping.contains(field.key)) continue;
    const bool dated =
        std::find(std::begin(date_fields), std::end(date_fields), field.key) != std::end(date_fields);
    std::string cell = source.text(row, field.key);
    if (const auto date = dated ? read_date(cell) : std::nullopt) {
      RowReader reader(source, row, ground);
      const std::size_t time = cell.find(':');
      if (const auto day = reader.day(field.key))
        cell = to_text(*day) + (date->time ? " " + trimmed(std::string_view(cell).substr(time - 2)) : "");
    }
    cells.push_back(std::move(cell));
  }
  return cells;
}

}  // namespace

Source::Source(FileKind kind, const Table& table, const Mapping& mapping, const PlanOptions& options)
    : kind_(kind), table_(table), mapping_(mapping), options_(options) {
  for (const std::string_view key : date_fields) find_order(std::string(key));
}

std::string Source::text(const Row& row, std::string_view key) const {
  const auto found = mapping_.find(std::string(key));
  return found == mapping_.end() ? std::string()
                                 : trimmed(row.cells.at(static_cast<std::size_t>(found->second)));
}

DateOrder Source::order(std::string_view key) const {
  const auto found = orders_.find(key);
  return found == orders_.end() ? DateOrder::month_first : found->second;
}

/// What the user chose; else what the first date shows that shows something; else a question, if one of the
/// dates needs it.
void Source::find_order(const std::string& key) {
  std::optional<DateOrder> order = options_.date_order;
  std::optional<DateQuestion> question;
  for (const Row& row : table_.rows) {
    if (order) break;
    const std::string cell = text(row, key);
    const auto date = read_date(cell);
    if (!date) continue;
    order = order_shown(*date);
    if (is_ambiguous(*date) && !question) question = DateQuestion{row.line, key, cell};
  }
  if (order)
    orders_[key] = *order;
  else if (question && !question_)
    question_ = question;
}

std::string RowReader::needed(std::string_view key) {
  std::string value = text(key);
  if (value.empty()) wrong(key, "is empty", "Write it, or take the row out");
  return value;
}

std::optional<WrittenDate> RowReader::written(std::string_view key) {
  const std::string cell = text(key);
  if (cell.empty()) return std::nullopt;
  auto date = read_date(cell);
  if (!date) wrong(key, "\"" + cell + "\" is not a date", "Write it like 2026-03-14 or 2026-03-14 17:30");
  return date;
}

std::optional<Day> RowReader::meant(std::string_view key, const WrittenDate& date) {
  const auto day = day_meant(date, source_.order(key));
  if (!day) {
    const char* order = !date.slashed                                  ? ""
                        : source_.order(key) == DateOrder::month_first ? ", month first"
                                                                       : ", day first";
    wrong(key, "there is no day \"" + text(key) + "\"" + order, "Write a date that exists, like 2026-03-14");
  }
  return day;
}

std::optional<Day> RowReader::day(std::string_view key) {
  const auto date = written(key);
  return date ? meant(key, *date) : std::nullopt;
}

std::optional<Instant> RowReader::instant(std::string_view key) {
  const auto date = written(key);
  const auto day = date ? meant(key, *date) : std::nullopt;
  if (!day) return std::nullopt;
  const auto [hour, minute] = date->time.value_or(std::pair(12, 0));
  return ground_.zone.instant({*day, hour, minute, 0});
}

int RowReader::number(std::string_view key, int least, int most, std::optional<int> fallback) {
  const std::string cell = text(key);
  if (cell.empty() && fallback) return *fallback;
  const bool digits = !cell.empty() && cell.size() <= 6 && cell.find_first_not_of("0123456789") == cell.npos;
  const int value = digits ? std::stoi(cell) : -1;
  if (digits && value >= least && value <= most) return value;
  wrong(key, cell.empty() ? "is empty" : "\"" + cell + "\" is not a number that can stand here",
        "Write a whole number from " + std::to_string(least) + " to " + std::to_string(most));
  return least;
}

int RowReader::clock(std::string_view key) {
  const auto date = read_date("2000-01-01 " + text(key));
  if (date && date->time) return date->time->first * 60 + date->time->second;
  wrong(key, "\"" + text(key) + "\" is not a time", "Write it like 17:30");
  return 0;
}

PersonId RowReader::person(std::string_view key) {
  const std::string number = needed(key);
  if (number.empty()) return {};
  if (const auto id = ground_.person_numbered(number)) return *id;
  wrong(key, "nobody here has the number \"" + number + "\"",
        "Take in the file of people first, or correct the number");
  return {};
}

TargetName RowReader::target(std::string_view key) {
  std::string name = needed(key);
  if (!name.empty() && !ground_.is_target(name))
    wrong(key, "no rulebook has the machine class \"" + name + "\"",
          "Write a class of the rulebook, or class/mode");
  return name;
}

MachineId RowReader::machine(std::string_view key) {
  const std::string name = needed(key);
  if (name.empty()) return {};
  if (const auto id = ground_.machine_named(name)) return *id;
  wrong(key, "there is no machine \"" + name + "\"",
        "Take in the file of machines first, or correct the name");
  return {};
}

void RowReader::wrong(std::string_view key, std::string what, std::string remedy) {
  std::string where = "line " + std::to_string(row_.line);
  if (!key.empty()) where += ", " + std::string(key);
  problems_.push_back({row_.line, {std::move(where), std::move(what), std::move(remedy)}});
}

void RowReader::remark(const std::string& text) {
  if (!remarks_.empty()) remarks_ += "; ";
  remarks_ += text;
}

ImportPlan plan_rows(const Source& source, const Mapping& mapping, const Ground& ground,
                     std::string_view by_date, const RowPlanner& planner) {
  ImportPlan plan;
  plan.problems = source.table().problems;
  for (Problem& mistake : mistakes_in(mapping, source.table(), source.kind()))
    plan.problems.push_back({0, std::move(mistake)});
  plan.question = source.question();
  for (const Field& field : fields_of(source.kind()))
    if (mapping.contains(field.key)) plan.titles.push_back(field.key);
  Ground grown = ground;
  for (const Row* row : in_order(source, ground, by_date)) {
    RowReader reader(source, *row, grown);
    std::vector<Command> commands = planner(reader);
    RowFate fate = commands.empty() ? RowFate::already_here : RowFate::enters;
    if (!reader.problems().empty()) fate = RowFate::bad;
    count_problems(plan, reader.problems());
    if (fate == RowFate::already_here) ++plan.already_here;
    plan.rows.push_back({row->line, fate, understood(source, mapping, *row, ground), reader.remarks()});
    if (fate != RowFate::enters) continue;
    for (Command& command : commands) {
      grown.add(command);
      plan.commands.push_back(std::move(command));
      plan.lines.push_back(row->line);
    }
  }
  const auto by_line = [](const auto& a, const auto& b) { return a.line < b.line; };
  std::stable_sort(plan.rows.begin(), plan.rows.end(), by_line);
  std::stable_sort(plan.problems.begin(), plan.problems.end(), by_line);
  return plan;
}

RecordId content_id(std::string_view content) {
  const QByteArray hash = QCryptographicHash::hash(
      QByteArrayView(content.data(), static_cast<qsizetype>(content.size())), QCryptographicHash::Sha256);
  return "i-" + hash.toHex().left(24).toStdString();
}

Command command(const RowReader& row, RecordId id, std::optional<Instant> at, Action action) {
  const bool founds = row.options().by.empty();
  return {std::move(id), row.options().by, false, at, !founds, row.text("note"), std::move(action)};
}

}  // namespace wm::db::import
