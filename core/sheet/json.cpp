#include "core/sheet/json.h"

#include <algorithm>
#include <limits>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>

namespace wm {
namespace {

using Json = nlohmann::ordered_json;
using Problems = std::vector<Problem>;

std::string escaped(const std::string& key) {
  std::string out;
  for (char c : key) out += c == '~' ? "~0" : c == '/' ? "~1" : std::string(1, c);
  return out;
}

/// Which keys of an object have been seen: the parser itself would keep the last of two without a word.
class Repeats {
 public:
  explicit Repeats(Problems& problems) : problems_(problems) {}

  using Event = Json::parse_event_t;

  bool operator()(int, Event event, Json& parsed) {
    if (event == Event::object_end || event == Event::array_end) {
      open_.pop_back();
      return true;
    }
    if (event == Event::key) {
      enter(parsed.get<std::string>());
      return true;
    }
    if (!open_.empty() && open_.back().list) open_.back().step = std::to_string(open_.back().count++);
    if (event != Event::value) open_.push_back({event == Event::array_start, 0, {}, {}});
    return true;
  }

 private:
  struct Level {
    bool list;
    std::size_t count;
    std::string step;  // the key or the number of what is being read
    std::set<std::string> keys;
  };

  void enter(const std::string& name) {
    open_.back().step = name;
    if (open_.back().keys.insert(name).second) return;
    std::string place;
    for (const Level& level : open_) place += "/" + escaped(level.step);
    problems_.push_back({place, "This field is given twice", "Keep one of the two"});
  }

  Problems& problems_;
  std::vector<Level> open_;
};

/// Reads the fields of one object and reports what is missing, wrong or unknown.
class Fields {
 public:
  Fields(const Json& object, std::string at, Problems& problems)
      : object_(object), at_(std::move(at)), problems_(problems) {
    if (!object_.is_object()) wrong("", "This is not an object", "Write {…} with the fields of a run sheet");
  }

  std::string text(const char* name, bool needed) {
    const Json* value = find(name, needed);
    if (value == nullptr) return {};
    if (!value->is_string()) {
      wrong(name, "This is not text", "Put it in quotation marks");
      return {};
    }
    std::string words = value->get<std::string>();
    if (words.empty()) wrong(name, "This is empty", needed ? "Write what it is" : "Leave the field out");
    if (words.find_first_of("\r\n") != std::string::npos)
      wrong(name, "This has a line break", "Write it as one line");
    return words;
  }

  int revision(const char* name) {
    const Json* value = find(name, true);
    if (value == nullptr) return 1;
    const bool whole = value->is_number_integer();
    const auto number = whole ? value->get<std::int64_t>() : 0;
    if (number < 1 || number > std::numeric_limits<int>::max()) {
      wrong(name, "This is no revision", "Write a whole number from 1 on");
      return 1;
    }
    return static_cast<int>(number);
  }

  bool flag(const char* name) {
    const Json* value = find(name, false);
    if (value == nullptr) return false;
    if (value->is_boolean()) return value->get<bool>();
    wrong(name, "This is neither true nor false", "Write true, or leave the field out");
    return false;
  }

  /// Reads each of a list that must not be empty.
  template <class Read>
  void list(const char* name, Read read) {
    const Json* value = find(name, true);
    if (value == nullptr) return;
    if (!value->is_array() || value->empty()) {
      wrong(name, "This is not a list of one or more", "Write [{…}, …]");
      return;
    }
    for (std::size_t i = 0; i < value->size(); ++i)
      read((*value)[i], at_ + "/" + name + "/" + std::to_string(i));
  }

  /// Everything that was never asked for.
  void refuse_the_rest() {
    if (!object_.is_object()) return;
    for (const auto& [key, value] : object_.items())
      if (!known_.contains(key))
        wrong(key, "A run sheet knows no field of this name", "Take it out, or mend its spelling");
  }

 private:
  const Json* find(const char* name, bool needed) {
    known_.insert(name);
    if (!object_.is_object()) return nullptr;
    const auto found = object_.find(name);
    if (found != object_.end()) return &*found;
    if (needed) wrong("", "\"" + std::string(name) + "\" is missing", "Add the field");
    return nullptr;
  }

  void wrong(const std::string& name, const std::string& what, const std::string& remedy) {
    problems_.push_back({name.empty() ? at_ : at_ + "/" + escaped(name), what, remedy});
  }

  const Json& object_;
  std::string at_;
  Problems& problems_;
  std::set<std::string> known_;
};

SheetLine read_line(const Json& json, const std::string& at, Problems& problems) {
  Fields fields(json, at, problems);
  SheetLine line{fields.text("text", true), fields.text("says", false), fields.flag("critical")};
  fields.refuse_the_rest();
  return line;
}

SheetSection read_section(const Json& json, const std::string& at, Problems& problems) {
  Fields fields(json, at, problems);
  SheetSection section{fields.text("section", true), {}};
  fields.list("lines", [&](const Json& line, const std::string& place) {
    section.lines.push_back(read_line(line, place, problems));
  });
  fields.refuse_the_rest();
  return section;
}

Sheet read_fields(const Json& json, Problems& problems) {
  Fields fields(json, "", problems);
  Sheet sheet;
  sheet.name = fields.text("sheet", true);
  sheet.revision = fields.revision("revision");
  sheet.machine_class = fields.text("class", true);
  sheet.checkout = fields.text("checkout", true);
  sheet.title = fields.text("title", false);
  std::set<std::string> names;
  fields.list("sections", [&](const Json& section, const std::string& place) {
    sheet.sections.push_back(read_section(section, place, problems));
    const std::string& name = sheet.sections.back().name;
    if (!name.empty() && !names.insert(name).second)
      problems.push_back({place + "/section", "Another section has this name", "Give each section its own"});
  });
  fields.refuse_the_rest();
  return sheet;
}

std::string line_and_column(std::string_view text, std::size_t byte) {
  const std::string_view before = text.substr(0, std::min(text.size(), byte == 0 ? 0 : byte - 1));
  const auto line = std::count(before.begin(), before.end(), '\n') + 1;
  const std::size_t start = before.rfind('\n') + 1;  // npos + 1 is the beginning
  return "line " + std::to_string(line) + ", column " + std::to_string(before.size() - start + 1);
}

}  // namespace

tl::expected<Sheet, std::vector<Problem>> read_sheet(std::string_view json) {
  Problems problems;
  Json parsed;
  try {
    parsed = Json::parse(json, Repeats(problems));
  } catch (const Json::parse_error& error) {
    return tl::unexpected(
        Problems{{line_and_column(json, error.byte), "This is not JSON", "Mend it at this place"}});
  }
  Sheet sheet = read_fields(parsed, problems);
  if (!problems.empty()) return tl::unexpected(std::move(problems));
  return sheet;
}

}  // namespace wm
