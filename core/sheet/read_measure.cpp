// What a line of a run sheet's text asks to be measured.
#include <algorithm>

#include "core/measure/read.h"
#include "core/sheet/reading.h"

namespace wm::sheet_text {
namespace {

const std::vector<std::string_view> about_keys = {"nominal", "below", "above", "instrument"},
                                    gap_keys = {"at most", "over", "instrument"};

const std::vector<std::string_view>& keys_of(MeasureKind kind) {
  return std::holds_alternative<GapToMeasure>(of_kind(kind).what) ? gap_keys : about_keys;
}

Expected<Length> read(std::string_view words, const Length&) { return read_length_with_unit(words); }
Expected<Degrees> read(std::string_view words, const Degrees&) { return read_degrees(words); }
const Fraction& count(const Length& length) { return length.amount; }
const Fraction& count(const Degrees& angle) { return angle.count; }

/// Whether it could be read; `zero` says whether it may be none.
template <class T>
bool fill(const Settings& settings, std::string_view key, T& into, bool zero = false) {
  const auto setting = settings.need(key);
  if (!setting) return false;
  auto got = read(setting->value, into);
  if (!got) {
    settings.wrong(*setting, got.error().what, got.error().remedy);
    return false;
  }
  if (!zero && count(*got) <= 0) {
    settings.wrong(*setting, "This is zero.", "Write something above zero.");
    return false;
  }
  into = *std::move(got);
  return true;
}

// Each says whether all of it could be read, and tells of all that could not.
template <class About>
bool fill(const Settings& settings, About& about) {
  const bool nominal = fill(settings, "nominal", about.nominal);
  const bool below = fill(settings, "below", about.below, true),
             above = fill(settings, "above", about.above, true);
  return fill(settings, "instrument", about.marks) && nominal && below && above;
}
bool fill(const Settings& settings, GapToMeasure& gap) {
  const bool at_most = fill(settings, "at most", gap.at_most), over = fill(settings, "over", gap.over);
  return fill(settings, "instrument", gap.marks) && at_most && over;
}

std::optional<MeasureKind> kind_called(std::string_view called) {
  for (const MeasureKind kind : measure_kinds)
    if (word(kind) == called) return kind;
  return std::nullopt;
}

/// What stands there and does not belong to what is measured, if anything is.
void refuse_others(const Settings& settings, std::optional<MeasureKind> kind) {
  for (const auto* keys : {&about_keys, &gap_keys})
    for (const std::string_view key : *keys) {
      const auto setting = settings.may(key);
      if (!setting || (kind && std::ranges::find(keys_of(*kind), key) != keys_of(*kind).end())) continue;
      if (keys == &gap_keys && key == "instrument") continue;  // told of once
      settings.wrong(*setting,
                     kind ? quoted(key) + " says nothing about a " + std::string(word(*kind)) + "."
                          : "Nothing is measured on this line.",
                     kind ? "Take it out." : "Write what is measured too, such as \"measure: thickness\".");
    }
}

}  // namespace

const std::vector<std::string_view>& line_keys() {
  static const std::vector<std::string_view> keys = {"opens", "measure", "nominal", "below",
                                                     "above", "at most", "over",    "instrument"};
  return keys;
}

std::optional<Measure> read_measure(const Settings& settings) {
  const auto what = settings.may("measure");
  if (!what) {
    refuse_others(settings, std::nullopt);
    return std::nullopt;
  }
  const auto kind = kind_called(what->value);
  if (!kind) {
    settings.wrong(*what, quoted(what->value) + " is nothing that can be measured here.",
                   "Write thickness, width, length, depth, angle, squareness or flatness.");
    return std::nullopt;
  }
  refuse_others(settings, kind);
  Measure measure = of_kind(*kind);
  const bool whole = std::visit([&](auto& of) { return fill(settings, of); }, measure.what);
  if (!whole) return std::nullopt;
  if (too_coarse(instrument_of(measure), tolerance_of(measure)))
    settings.wrong(*settings.may("instrument"),
                   "The marks of this instrument are further apart than the tolerance is wide.",
                   "Name a finer instrument, or allow more.");
  return measure;
}

}  // namespace wm::sheet_text
