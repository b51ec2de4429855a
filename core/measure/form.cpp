#include "core/measure/form.h"

#include <utility>

#include "core/json/writing.h"
#include "core/measure/read.h"
#include "core/measure/show.h"

namespace wm {

std::string written(const Length& length) { return json::in_quotes(to_text(length)); }
std::string written(const Inches& length) { return json::in_quotes(to_text(length)); }
std::string written(const Degrees& angle) { return json::in_quotes(to_text(angle)); }

namespace forms {
namespace {

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

std::optional<Inches> converted(const std::optional<Length>& read) {
  return read ? std::optional(wm::in_inches(*read)) : std::nullopt;
}

}  // namespace

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

std::optional<Inches> in_inches(json::Reading& reading, json::Value value) {
  return converted(length(reading, value));
}
std::optional<Inches> some_inches(json::Reading& reading, json::Value value) {
  return converted(some_length(reading, value));
}

}  // namespace forms
}  // namespace wm
