#include <set>
#include <utility>

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

}  // namespace

std::optional<std::string> one_line(json::Reading& reading, json::Value value) {
  auto words = json::text(reading, value);
  if (words && words->empty())
    reading.mistake(value, "This is empty.", "Write what it is, or leave the field out where it may be.");
  if (words && words->find_first_of("\r\n") != std::string::npos)
    reading.mistake(value, "This has a line break.", "Write it as one line.");
  return words;
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
