#include <set>
#include <utility>

#include "core/measure/read.h"
#include "core/sheet/form.h"
#include "core/sheet/json.h"

namespace wm {
namespace forms {
namespace {

/// A list that must not be empty.
template <class Read>
auto some_of(Read read) {
  return [=](json::Reading& reading, json::Value value) {
    auto items = json::list_of(read)(reading, value);
    if (items && value.size() == 0)
      reading.mistake(value, "This list is empty.", "Write one or more: [{…}, …].");
    return items;
  };
}

template <class T>
std::optional<T> formed(json::Reading& reading, json::Value value) {
  T thing;
  json::Fields fields(reading, value);
  form(fields, thing);
  fields.finish();
  return thing;
}

/// A text that `parse` reads; what it finds wrong becomes a mistake of the value.
template <class Parse>
auto parsed(json::Reading& reading, json::Value value, const Parse& parse) {
  using T = typename decltype(parse(std::string_view()))::value_type;
  std::optional<T> out;
  const auto words = json::text(reading, value);
  if (!words) return out;
  auto read = parse(std::string_view(*words));
  if (read) {
    out = *std::move(read);
  } else {
    reading.mistake(value, read.error().what, read.error().remedy);
  }
  return out;
}

/// Finds fault with nothing at all.
template <class T>
std::optional<T> above_zero(json::Reading& reading, json::Value value, std::optional<T> read,
                            const Fraction& count) {
  if (!read || count > 0) return read;
  reading.mistake(value, "This is zero.", "Write something above zero.");
  return std::nullopt;
}

}  // namespace

std::optional<std::string> one_line(json::Reading& reading, json::Value value) {
  auto words = json::text(reading, value);
  if (words && words->empty())
    reading.mistake(value, "This is empty.", "Write what it is, or leave the field out where it may be.");
  if (words && words->find_first_of("\r\n") != std::string::npos)
    reading.mistake(value, "This has a line break.", "Write it as one line.");
  return words;
}

std::optional<Length> length(json::Reading& reading, json::Value value) {
  return parsed(reading, value, read_length_with_unit);
}

std::optional<Length> some_length(json::Reading& reading, json::Value value) {
  const auto read = length(reading, value);
  return above_zero(reading, value, read, read ? read->amount : Fraction());
}

std::optional<Degrees> degrees(json::Reading& reading, json::Value value) {
  return parsed(reading, value, [](std::string_view words) { return read_degrees(words); });
}

std::optional<Degrees> some_degrees(json::Reading& reading, json::Value value) {
  const auto read = degrees(reading, value);
  return above_zero(reading, value, read, read ? read->count : Fraction());
}

std::optional<Measure> measure(json::Reading& reading, json::Value value) {
  return formed<Measure>(reading, value);
}

std::optional<std::vector<SheetLine>> sheet_lines(json::Reading& reading, json::Value value) {
  return some_of(formed<SheetLine>)(reading, value);
}

std::optional<std::vector<SheetSection>> sheet_sections(json::Reading& reading, json::Value value) {
  std::set<std::string> names;
  const auto named = [&](json::Reading& r, json::Value v) {
    auto one = formed<SheetSection>(r, v);
    if (!one->name.empty() && !names.insert(one->name).second)
      r.mistake(v.find("section").value_or(v), "Another section has this name.",
                "Give each section its own.");
    return one;
  };
  return some_of(named)(reading, value);
}

}  // namespace forms

tl::expected<Sheet, std::vector<Problem>> read_sheet(std::string_view json) {
  const auto tree = json::Tree::parse(json);
  if (!tree) return tl::unexpected(std::vector{tree.error()});
  json::Reading reading;
  reading.repeated_keys(*tree);
  auto read = forms::formed<Sheet>(reading, tree->root());
  if (reading.mistakes() > 0) return tl::unexpected(std::move(reading).in_order());
  return *std::move(read);
}

}  // namespace wm
