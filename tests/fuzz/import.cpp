// A table that is read without a mistake is written out, and read again as the same. A plan that is ready
// goes in or is refused with a reason; and once it is in, the same file has nothing more to add.
#include "db/import/decode.h"
#include "db/import/plan.h"
#include "tests/db/small_shop.h"
#include "tests/fuzz/holds.h"
#include "tests/fuzz/shop.h"

namespace {

using namespace wm;
using namespace wm::db;
using namespace wm::db::import;

/// The small shop's file, made once, and what its rows can name.
struct Base {
  std::string bytes;
  Ground ground;

  Base() {
    const std::string path = fuzz::folder() + "/base";
    make_application();
    StoreOptions options = cheap_pins();
    options.on_network = [](const std::string&) { return false; };
    {
      auto store = Store::create(path, {"Hollow Oak Workshop", "America/Chicago"}, fuzz::now, options);
      fuzz::holds(store && store->found(small_history()), "the small shop can be made");
      ground = Ground::of(*store);
    }
    bytes = fuzz::bytes_of(path);
  }
};
const Base& base() {
  static const Base made;
  return made;
}

std::string quoted(const std::string& cell) {
  std::string out = "\"";
  for (const char c : cell) out += c == '"' ? "\"\"" : std::string(1, c);
  return out + "\"";
}

std::string written(const std::vector<std::string>& cells) {
  std::string out;
  for (const std::string& cell : cells) out += (out.empty() ? "" : ",") + quoted(cell);
  return out + "\r\n";
}

void is_written_and_read(const Table& table) {
  std::string text = written(table.header);
  for (const Row& row : table.rows) text += written(row.cells);
  const auto again = read_table(text, {Encoding::utf8, ','});
  fuzz::holds(again && again->problems.empty(), "a table that was written is read again");
  fuzz::holds(again->header == table.header && again->rows.size() == table.rows.size(),
              "a table that is read again has the same rows");
  for (std::size_t i = 0; i < table.rows.size(); ++i)
    fuzz::holds(again->rows[i].cells == table.rows[i].cells, "a row that is read again has the same cells");
}

void are_told(const std::vector<RowProblem>& problems) {
  for (const RowProblem& problem : problems) fuzz::is_told(problem.problem);
}

ImportPlan planned(FileKind kind, const Table& table, const Ground& ground) {
  PlanOptions options{{}, "mia"};
  const Mapping mapping = guess_mapping(table, kind);
  ImportPlan made = plan(kind, table, mapping, options, ground);
  if (made.question) {
    options.date_order = DateOrder::day_first;
    made = plan(kind, table, mapping, options, ground);
    fuzz::holds(!made.question, "a question that was answered is not asked again");
  }
  return made;
}

void goes_in(FileKind kind, const Table& table, const ImportPlan& plan) {
  const std::string path = fuzz::folder() + "/import";
  fuzz::put(path, base().bytes);
  auto store = fuzz::opened(path);
  fuzz::holds(store.has_value(), "the small shop opens");
  if (const auto done = run({plan}, *store); !done) return fuzz::is_told(done.error());
  const ImportPlan again = planned(kind, table, Ground::of(*store));
  are_told(again.problems);
  fuzz::holds(again.problems.empty(), "a file that went in has no mistake the second time");
  fuzz::holds(again.commands.empty(), "a file that went in has nothing to add the second time");
}

void is_planned(FileKind kind, const Table& table) {
  if (!mistakes_in(guess_mapping(table, kind), table, kind).empty()) return;
  const ImportPlan plan = planned(kind, table, base().ground);
  are_told(plan.problems);
  fuzz::holds(plan.rows.size() == table.rows.size(), "each row is shown");
  fuzz::holds(plan.commands.size() == plan.lines.size(), "each command comes from a line");
  if (plan.ready() && !plan.commands.empty()) goes_in(kind, table, plan);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  const auto table = read_table(fuzz::text(data, size));
  if (!table) {
    fuzz::is_told(table.error());
    return 0;
  }
  are_told(table->problems);
  if (table->problems.empty()) is_written_and_read(*table);
  for (const FileKind kind :
       {FileKind::people, FileKind::history, FileKind::machines, FileKind::hours, FileKind::bookings})
    is_planned(kind, *table);
  return 0;
}
