#include "core/passes/json.h"

#include <utility>

#include "core/json/writer.h"
#include "core/measure/form.h"

namespace wm {

static std::string written(const DepthForWidth& step);
static std::string written(const Wheel& wheel);

namespace forms {
namespace {

constexpr int most_divisions = 10'000;

std::optional<std::vector<DepthForWidth>> depths(json::Reading& reading, json::Value value);
std::optional<Wheel> wheel(json::Reading& reading, json::Value value);

template <class A>
void form(A& a, DepthForWidth& step) {
  a.need("width", step.width, some_inches);
  a.need("deepest", step.deepest, some_inches);
}
template <class A>
void form(A& a, Wheel& w) {
  a.need("turn", w.turn, some_inches);
  a.need("divisions", w.divisions, json::whole(1, most_divisions));
}
template <class A>
void form(A& a, LimitsCard& l) {
  a.need("depths", l.depths, depths);
  a.may("shortest", l.shortest, some_inches);
  a.need("thinnest", l.thinnest, some_inches);
  a.need("light", l.light, some_inches);
  a.need("scale_marks", l.scale_marks, some_inches);
  a.need("scale_error", l.scale_error, in_inches);
}
template <class A>
void form(A& a, PlanerCard& c) {
  form(a, c.limits);
  a.need("wheel", c.wheel, wheel);
}
template <class A>
void form(A& a, JointerCard& c) {
  form(a, c.limits);
  a.may("narrowest", c.narrowest, some_inches);
}

/// What could not be read keeps its default.
template <class T>
std::optional<T> whole_of(json::Reading& reading, json::Value value) {
  T thing;
  json::Fields fields(reading, value);
  form(fields, thing);
  fields.finish();
  return thing;
}

std::optional<std::vector<DepthForWidth>> depths(json::Reading& reading, json::Value value) {
  const std::size_t before = reading.mistakes();
  auto steps = json::list_of(whole_of<DepthForWidth>)(reading, value);
  if (!steps || reading.mistakes() > before) return std::nullopt;
  for (Problem& problem : mistakes_in(*steps))
    reading.mistake(value, std::move(problem.what), std::move(problem.remedy));
  return steps;
}

std::optional<Wheel> wheel(json::Reading& reading, json::Value value) {
  return whole_of<Wheel>(reading, value);
}

template <class Card>
tl::expected<Card, std::vector<Problem>> read_card(std::string_view json) {
  const auto tree = json::Tree::parse(json);
  if (!tree) return tl::unexpected(std::vector{tree.error()});
  json::Reading reading;
  reading.repeated_keys(*tree);
  auto card = whole_of<Card>(reading, tree->root());
  if (reading.mistakes() > 0) return tl::unexpected(std::move(reading).in_order());
  return *std::move(card);
}

/// By value: a form fills in as well as reads out, so it takes what it describes by reference.
template <class T>
std::string as_object(T thing) {
  json::Writer writer;
  form(writer, thing);
  return json::compact(writer.members());
}

}  // namespace
}  // namespace forms

static std::string written(const DepthForWidth& step) { return forms::as_object(step); }
static std::string written(const Wheel& wheel) { return forms::as_object(wheel); }

tl::expected<PlanerCard, std::vector<Problem>> read_planer_card(std::string_view json) {
  return forms::read_card<PlanerCard>(json);
}
tl::expected<JointerCard, std::vector<Problem>> read_jointer_card(std::string_view json) {
  return forms::read_card<JointerCard>(json);
}
std::string to_json(const PlanerCard& card) { return forms::as_object(card); }
std::string to_json(const JointerCard& card) { return forms::as_object(card); }

}  // namespace wm
