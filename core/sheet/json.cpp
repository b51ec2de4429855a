#include "core/sheet/json.h"

#include <limits>
#include <optional>
#include <set>
#include <utility>

#include "core/json/reading.h"

namespace wm {
namespace {

/// Text that fits on one line of the sheet.
std::optional<std::string> one_line(json::Reading& reading, json::Value value) {
  auto words = json::text(reading, value);
  if (words && words->empty())
    reading.mistake(value, "This is empty.", "Write what it is, or leave the field out where it may be.");
  if (words && words->find_first_of("\r\n") != std::string::npos)
    reading.mistake(value, "This has a line break.", "Write it as one line.");
  return words;
}

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

std::optional<SheetLine> line(json::Reading& reading, json::Value value) {
  SheetLine line;
  json::Fields fields(reading, value);
  fields.need("text", line.text, one_line);
  fields.may("says", line.says, one_line);
  fields.may("critical", line.critical, json::truth);
  fields.finish();
  return line;
}

std::optional<SheetSection> section(json::Reading& reading, json::Value value) {
  SheetSection section;
  json::Fields fields(reading, value);
  fields.need("section", section.name, one_line);
  fields.need("lines", section.lines, some_of(line));
  fields.finish();
  return section;
}

std::optional<std::vector<SheetSection>> sections(json::Reading& reading, json::Value value) {
  std::set<std::string> names;
  const auto named = [&](json::Reading& r, json::Value v) {
    auto one = section(r, v);
    if (!one->name.empty() && !names.insert(one->name).second)
      r.mistake(v.find("section").value_or(v), "Another section has this name.",
                "Give each section its own.");
    return one;
  };
  return some_of(named)(reading, value);
}

Sheet sheet(json::Reading& reading, json::Value value) {
  Sheet sheet;
  json::Fields fields(reading, value);
  fields.need("sheet", sheet.name, one_line);
  fields.need("revision", sheet.revision, json::whole(1, std::numeric_limits<int>::max()));
  fields.need("class", sheet.machine_class, one_line);
  fields.need("checkout", sheet.checkout, one_line);
  fields.may("title", sheet.title, one_line);
  fields.need("sections", sheet.sections, sections);
  fields.finish();
  return sheet;
}

}  // namespace

tl::expected<Sheet, std::vector<Problem>> read_sheet(std::string_view json) {
  const auto tree = json::Tree::parse(json);
  if (!tree) return tl::unexpected(std::vector{tree.error()});
  json::Reading reading;
  reading.repeated_keys(*tree);
  Sheet read = sheet(reading, tree->root());
  if (reading.mistakes() > 0) return tl::unexpected(std::move(reading).in_order());
  return read;
}

}  // namespace wm
