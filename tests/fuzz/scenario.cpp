// A scenario that is taken is answered, line by line; its shop is written out, and read again as the same.
#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/json/writing.h"
#include "core/records/json.h"
#include "core/rulebook/json.h"
#include "core/scenario/scenario.h"
#include "tests/fuzz/holds.h"

namespace {

using namespace wm;
using json::in_quotes;

/// The shop alone; it is asked nothing.
std::string written(const Shop& shop) {
  std::vector<std::string> people, machines, rulebooks, records;
  for (const PersonId& id : shop.people) {
    const std::vector<json::Member> person{{"id", in_quotes(id)}};
    people.push_back(json::compact(person));
  }
  for (const Machine& m : shop.machines)
    machines.push_back(json::compact({{"id", in_quotes(m.id)}, {"class", in_quotes(m.machine_class)}}));
  for (const Rulebook& rulebook : shop.rulebooks) rulebooks.push_back(to_json(rulebook));
  for (const Record& record : shop.records) records.push_back(to_json(record));
  return json::compact({{"zone", in_quotes(shop.zone.name())},
                        {"people", json::compact(people)},
                        {"machines", json::compact(machines)},
                        {"rulebooks", json::compact(rulebooks)},
                        {"records", json::compact(records)},
                        {"asks", "[]"}});
}

bool same(const Shop& a, const Shop& b) {
  return a.zone.name() == b.zone.name() && a.people == b.people && a.machines == b.machines &&
         a.rulebooks == b.rulebooks && a.records == b.records;
}

bool is_what_if(const Ask& ask) { return std::holds_alternative<AskWhatIf>(ask.what); }

void is_written_and_read(const Scenario& scenario) {
  // Names that only a proposed rulebook has are not known without it.
  if (std::any_of(scenario.asks.begin(), scenario.asks.end(), is_what_if)) return;
  const auto again = read_scenario(written(scenario.shop));
  fuzz::holds(again.has_value(), "a shop that was written is read again");
  fuzz::holds(same(again->shop, scenario.shop), "a shop that is read again is the one that was read");
}

void is_answered(Scenario scenario) {
  // A route is searched for within a bound of its own, which sanitizers stretch from a tenth of a second to
  // many.
  std::erase_if(scenario.asks, [](const Ask& ask) { return std::holds_alternative<AskRoute>(ask.what); });
  const std::vector<std::string> lines = answer(scenario);
  fuzz::holds(lines.size() == scenario.asks.size(), "each question has one answer");
  for (const std::string& line : lines)
    fuzz::holds(nlohmann::json::accept(line) && line.find('\n') == line.npos, "an answer is a line of JSON");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  const auto scenario = read_scenario(fuzz::text(data, size));
  if (!scenario) {
    fuzz::is_told(scenario.error());
    return 0;
  }
  is_written_and_read(*scenario);
  is_answered(*scenario);
  return 0;
}
