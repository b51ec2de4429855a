#include "core/measure/form.h"

#include "core/json/writing.h"
#include "core/measure/read.h"
#include "core/measure/show.h"

namespace wm {

std::string written(const Inches& length) { return json::in_quotes(to_text(length)); }

namespace forms {

std::optional<Inches> in_inches(json::Reading& reading, json::Value value) {
  const auto words = json::text(reading, value);
  if (!words) return std::nullopt;
  const auto read = read_length_with_unit(*words);
  if (read) return wm::in_inches(*read);
  reading.mistake(value, read.error().what, read.error().remedy);
  return std::nullopt;
}

std::optional<Inches> some_inches(json::Reading& reading, json::Value value) {
  const auto read = in_inches(reading, value);
  if (!read || read->count > 0) return read;
  reading.mistake(value, "This is zero.", "Write something above zero.");
  return std::nullopt;
}

}  // namespace forms
}  // namespace wm
