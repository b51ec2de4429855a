#include "core/sheet/form.h"
#include "core/sheet/json.h"

namespace wm {
namespace {

/// By value: a form fills in as well as reads out, so it takes what it describes by reference.
template <class T>
std::string as_object(T thing) {
  json::Writer writer;
  forms::form(writer, thing);
  return json::compact(writer.members());
}

}  // namespace

std::string written(const Measure& measure) { return as_object(measure); }
std::string written(const SheetLine& line) { return as_object(line); }
std::string written(const SheetSection& section) { return as_object(section); }

std::string to_json(const Sheet& sheet) { return as_object(sheet); }

}  // namespace wm
