#include "core/scenario/asks.h"

#include <array>

#include "core/json/kinds.h"
#include "core/rulebook/form.h"
#include "core/rulebook/read.h"

namespace wm {

using What = decltype(Ask::what);

std::string_view ask_word(const What& what) {
  static constexpr std::array<std::string_view, std::variant_size_v<What>> words = {
      "standing", "timeline", "may_start", "who", "assessors", "drops", "rests_on", "what_if", "route"};
  return words[what.index()];
}

namespace {

const auto ask_target = json::name_of(json::Names::standing_on);

void from_and_to(json::Fields& f, Instant& from, Instant& to) {
  const bool begins = f.need("from", from, json::instant);
  const bool ends = f.need("to", to, json::instant);
  f.refuse(begins && ends && to < from, "to", "The end lies before the beginning.",
           "Write an instant that is not before \"from\".");
}

void read(json::Fields& f, AskStanding& a, AskContext) {
  f.need("person", a.person, forms::person);
  f.need("target", a.target, ask_target);
  f.need("at", a.at, json::instant);
}

void read(json::Fields& f, AskTimeline& a, AskContext) {
  f.need("person", a.person, forms::person);
  f.need("target", a.target, ask_target);
  from_and_to(f, a.from, a.to);
}

void read(json::Fields& f, AskMayStart& a, AskContext) {
  f.need("person", a.person, forms::person);
  f.need("machine", a.machine, forms::machine);
  f.may("mode", a.mode, json::text);
  f.need("at", a.at, json::instant);
  f.need("staffed", a.staffed, json::truth);
  f.need("present", a.present, json::list_of(forms::person));
  f.may("busy", a.busy, json::list_of(forms::person));
}

void read(json::Fields& f, AskWho& a, AskContext) {
  f.need("target", a.target, ask_target);
  f.need("at", a.at, json::instant);
  f.need("at_least", a.at_least, forms::rung);
}

void read(json::Fields& f, AskAssessors& a, AskContext) {
  f.need("target", a.target, ask_target);
  f.need("at", a.at, json::instant);
}

void read(json::Fields& f, AskDrops& a, AskContext) { from_and_to(f, a.from, a.to); }

void read(json::Fields& f, AskRestsOn& a, AskContext) {
  f.need("record", a.record, forms::record);
  f.need("at", a.at, json::instant);
}

void read(json::Fields& f, AskWhatIf& a, AskContext context) {
  const auto rules = [&](json::Reading& reading, json::Value value) {
    RulebookRead read = read_rules(reading, value);
    context.names_known = context.names_known && read.names_known;
    return std::optional(std::move(read.rulebook));
  };
  const bool given = f.need("rulebook", a.rulebook, rules);
  f.need("at", a.at, json::instant);
  a.rulebook.version = 0;
  a.rulebook.effective_from = a.rulebook.recorded = a.at;
  if (given) context.proposed.push_back(a.rulebook);
}

void read(json::Fields& f, AskRoute& a, AskContext) {
  f.need("person", a.person, forms::person);
  f.need("target", a.target, ask_target);
  f.need("to", a.to, forms::rung);
  f.need("at", a.at, json::instant);
}

}  // namespace

Ask read_ask(json::Reading& reading, json::Value value, AskContext context) {
  Ask ask;
  json::Fields fields(reading, value);
  const auto kind = [](json::Reading& r, json::Value v) { return json::kind_of<What>(r, v, ask_word); };
  fields.may("known", ask.known, json::instant);
  if (fields.need("ask", ask.what, kind)) {
    std::visit([&](auto& what) { read(fields, what, context); }, ask.what);
  } else {
    fields.give_up();
  }
  fields.finish();
  return ask;
}

}  // namespace wm
