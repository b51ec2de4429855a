#include "small_shop.h"

#include <QCoreApplication>

namespace wm::db {
namespace {

constexpr Instant week_before = evening - 7 * day;

Person named(const PersonId& id, const std::string& given, const std::string& family,
             const std::string& number) {
  Person person;
  person.id = id;
  person.given = given;
  person.family = family;
  person.number = number;
  return person;
}

Gate gate(const std::string& id, Rung guards, Requirement need) { return {id, guards, std::move(need), {}}; }

Requirement checkout(const std::string& name) {
  NeedCheckout need;
  need.checkout = name;
  return {need};
}

Requirement lesson(const std::string& name) {
  NeedLesson need;
  need.lesson = name;
  return {need};
}

MachineClass plain_class(const std::string& name, int tier) {
  MachineClass made;
  made.name = name;
  made.tier = tier;
  return made;
}

}  // namespace

StoreOptions cheap_pins() {
  StoreOptions options;
  options.pin_operations = 1;
  options.pin_memory = 8192;
  options.busy_ms = 50;
  return options;
}

Rulebook small_rulebook(int version, Instant from) {
  Rulebook book;
  book.version = version;
  book.effective_from = from;
  book.recorded = from;
  book.tiers.resize(2);
  book.tiers[0].tier = 1;
  book.tiers[1].tier = 2;
  MachineClass bandsaw = plain_class("bandsaw", 2), combi = plain_class("combi", 2);
  bandsaw.gates = {gate("bandsaw-checkout", Rung::independent, checkout("bandsaw")),
                   gate("guards", Rung::supervised, lesson("guards"))};
  combi.modes = {"joint", "plane"};
  combi.gates = {gate("combi-checkout", Rung::independent, checkout("combi"))};
  book.classes = {bandsaw, combi, plain_class("sander", 1)};
  return book;
}

std::vector<Command> small_history() {
  std::vector<Command> commands;
  const auto add = [&](Action action) {
    Command command;
    command.id = "past-" + std::to_string(commands.size() + 1);
    command.at = week_before;
    command.action = std::move(action);
    commands.push_back(std::move(command));
  };
  add(EnterPerson{named("mia", "Mia", "Okafor", "1"), Day{4000}});
  add(EnterPerson{named("ivo", "Ivo", "Lindqvist", "2"), Day{5000}});
  add(EnterPerson{named("dee", "Dee", "Castellano", "3"), std::nullopt});
  add(EnterPerson{named("kim", "Kim", "Abara", "4"), Day{11000}});
  add(EnterPerson{named("lou", "Lou", "Brandt", "5"), std::nullopt});
  add(PublishRulebook{small_rulebook(1, week_before)});
  for (const auto& [id, machine_class] : std::vector<std::pair<std::string, std::string>>{
           {"b1", "bandsaw"}, {"b2", "bandsaw"}, {"s1", "sander"}, {"c1", "combi"}})
    add(own(MachineAdded{id, machine_class, "Unit " + id}));
  add(own(RoleGiven{"mia", Role::manager}));
  add(own(RoleGiven{"ivo", Role::instructor}));
  add(own(RoleGiven{"dee", Role::desk}));
  add(ChoosePin{"mia", "1111"});
  add(ChoosePin{"ivo", "2222"});
  add(ChoosePin{"dee", "3333"});
  for (const char* assessor : {"mia", "ivo"}) add(fact(Appoint{assessor, Everything{}, true, Day{21000}}));
  add(fact(Publish{"guards", 1}));
  return commands;
}

void make_application() {
  static int argc = 1;
  static char name[] = "db_tests";
  static char* argv[] = {name, nullptr};
  static QCoreApplication application(argc, argv);
}

Issued small_bank(int revision) {
  return {Work::bank,
          "guards",
          revision,
          "",
          "bank: guards\nrevision: " + std::to_string(revision) + R"(
languages: en
pass: 80 %
time: none
draw: 2 of guards

question: before-cutting
kind: one
topic: guards
critical: yes
[en]
When is the guard set?
* Before the machine is switched on.
- While it runs down.
> Nobody reaches near a blade that turns.

question: gap
kind: number
topic: guards
answer: 1/4 in
within: 1/16 in
[en]
How far above the stock does the guard of the bandsaw stand?
> Common practice, no source.
)",
          {}};
}

Issued small_sheet(int revision) {
  return {Work::sheet,
          "bandsaw",
          revision,
          "",
          "sheet: bandsaw\nrevision: " + std::to_string(revision) + R"(
class: bandsaw
checkout: bandsaw

[before]
* Close sleeves
opens: dress
* Eyes and ears
opens: eyes and ears
* Stance
opens: stance
* Stops and isolates it
opens: isolation
* The power comes back
opens: power
[cut]
* Guard just above the stock
- Plans relief cuts
- The piece is 1 in thick
measure: thickness
nominal: 1 in
below: 0.01 in
above: 0.01 in
instrument: 0.001 in
)",
          {}};
}

AttemptBegun begun_by(const PersonId& person) { return {person, "guards", 1, 7, "en", {}}; }

std::string small_attempt() {
  return R"({"bank": "guards", "revision": 1, "seed": "0000000000000007", "language": "en", "answers": [
    {"question": "before-cutting", "chosen": 0, "seconds": 4}, {"question": "gap", "typed": "1/4", "seconds": 9}]})";
}

}  // namespace wm::db
