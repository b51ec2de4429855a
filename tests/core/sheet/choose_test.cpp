// The run sheet of a machine is that of the check-out which its gates ask for.
#include "core/sheet/choose.h"

#include <catch2/catch.hpp>

namespace {

using namespace wm;

NeedCheckout checkout(const char* name) {
  NeedCheckout need;
  need.checkout = name;
  return need;
}

Rulebook rulebook() {
  Rulebook book;
  Tier tier;
  tier.gates.push_back({"a", Rung::supervised, {NeedDocument{"induction", {}, {}}}, {}});
  MachineClass planer;
  planer.name = "planer";
  planer.gates.push_back({"b", Rung::independent, {NeedAnyOf{{{checkout("old")}, {checkout("new")}}}}, {}});
  planer.gates.push_back({"c", Rung::independent, {NeedAllOf{{{checkout("new")}}}}, {}});
  MachineClass saw;
  saw.name = "saw";
  book.tiers = {tier};
  book.classes = {planer, saw};
  return book;
}

Sheet sheet(const char* machine_class, const char* name, int revision) {
  return {std::string(machine_class) + name, revision, machine_class, name, "", {{"x", {{"y", "", false}}}}};
}

}  // namespace

TEST_CASE("Check-outs are found at any depth of a target's gates, each once") {
  CHECK(checkouts_asked(rulebook(), "planer") == std::vector<std::string>{"old", "new"});
  CHECK(checkouts_asked(rulebook(), "saw").empty());
  CHECK(checkouts_asked(rulebook(), "forge").empty());
}

TEST_CASE("Of a machine's sheets the one for its check-out is taken, in its greatest revision") {
  const std::vector<Sheet> all{sheet("saw", "old", 9), sheet("planer", "new", 1), sheet("planer", "new", 3),
                               sheet("planer", "new", 2), sheet("planer", "other", 4)};
  std::vector<const Sheet*> sheets;
  for (const Sheet& each : all) sheets.push_back(&each);
  CHECK(sheet_for(sheets, rulebook(), "planer") == &all[2]);
  CHECK(sheet_for(sheets, rulebook(), "saw") == nullptr);
}
