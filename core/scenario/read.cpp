#include <utility>

#include "core/records/form.h"
#include "core/rulebook/read.h"
#include "core/scenario/asks.h"
#include "core/scenario/ends.h"
#include "core/scenario/names.h"
#include "core/scenario/scenario.h"

namespace wm {

namespace {

std::optional<Zone> zone(json::Reading& reading, json::Value value) {
  const auto name = json::text(reading, value);
  if (!name) return std::nullopt;
  auto zone = Zone::named(*name);
  if (!zone) {
    reading.mistake(value, zone.error().what, zone.error().remedy);
    return std::nullopt;
  }
  return *zone;
}

std::optional<PersonId> person(json::Reading& reading, json::Value value) {
  PersonId id;
  json::Fields fields(reading, value);
  fields.define("id", id, json::Names::person, json::text);
  fields.finish();
  return id;
}

std::optional<Machine> machine(json::Reading& reading, json::Value value) {
  Machine machine;
  json::Fields fields(reading, value);
  fields.define("id", machine.id, json::Names::machine, json::text);
  fields.need("class", machine.machine_class, json::name_of(json::Names::machine_class));
  fields.finish();
  return machine;
}

class Reader {
 public:
  explicit Reader(const json::Tree& tree) : root_(tree.root()) { reading_.repeated_keys(tree); }

  tl::expected<Scenario, std::vector<Problem>> read() {
    read_parts();
    reading_.repeated_names();
    const DefinedNames defined(reading_.names, scenario_.shop.rulebooks, proposed_, names_known_);
    defined.check(reading_);
    for (const auto& [value, ask] : may_starts_)
      defined.check_mode(reading_, value, ask, scenario_.shop.machines);
    check_ends(reading_, records_);
    if (reading_.mistakes() > 0) return tl::unexpected(std::move(reading_).in_order());
    return std::move(scenario_);
  }

 private:
  void read_parts() {
    using json::Reading, json::Value, json::Names;
    Shop& shop = scenario_.shop;
    json::Fields fields(reading_, root_);
    fields.need("zone", shop.zone, zone);
    if (!fields.need("people", shop.people, json::list_of(person))) fields.unreadable(Names::person);
    if (!fields.may("machines", shop.machines, json::list_of(machine)) && fields.has("machines"))
      fields.unreadable(Names::machine);
    const auto rulebook = [this](Reading&, Value value) { return std::optional(this->rulebook(value)); };
    if (!fields.need("rulebooks", shop.rulebooks, json::list_of(rulebook))) names_known_ = false;
    const auto record = [this](Reading&, Value value) { return std::optional(this->record(value)); };
    if (!fields.need("records", shop.records, json::list_of(record))) fields.unreadable(Names::record);
    const auto ask = [this](Reading&, Value value) { return std::optional(this->ask(value)); };
    fields.need("asks", scenario_.asks, json::list_of(ask));
    fields.finish();
  }

  Rulebook rulebook(json::Value value) {
    RulebookRead read = read_rulebook(reading_, value);
    names_known_ = names_known_ && read.names_known;
    const auto version = value.find("version");
    if (version && version->kind() == json::Kind::whole)
      reading_.names.definitions.push_back(
          {*version, json::Names::version, std::to_string(version->whole())});
    return std::move(read.rulebook);
  }

  Record record(json::Value value) {
    const std::size_t before = reading_.mistakes();
    Record record = read_record(reading_, value);
    if (reading_.mistakes() == before) records_.push_back({value, record});
    return record;
  }

  Ask ask(json::Value value) {
    const std::size_t before = reading_.mistakes();
    Ask ask = read_ask(reading_, value, {proposed_, names_known_});
    const auto* may_start = std::get_if<AskMayStart>(&ask.what);
    if (may_start && reading_.mistakes() == before) may_starts_.emplace_back(value, *may_start);
    return ask;
  }

  json::Value root_;
  json::Reading reading_;
  Scenario scenario_;
  std::vector<Rulebook> proposed_;
  // Those without a mistake so far, to be looked at again when all names are known.
  std::vector<RecordRead> records_;
  std::vector<std::pair<json::Value, AskMayStart>> may_starts_;
  bool names_known_ = true;
};

}  // namespace

tl::expected<Scenario, std::vector<Problem>> read_scenario(std::string_view json) {
  const auto tree = json::Tree::parse(json);
  if (!tree) return tl::unexpected(std::vector{tree.error()});
  return Reader(*tree).read();
}

}  // namespace wm
