#pragma once
// Hours and times of day as people type them.
#include <QString>
#include <optional>

#include "core/problem.h"
#include "db/facts.h"

namespace wm::app {

/// What is wrong in a field.
tl::unexpected<Problem> mistyped(const QString& where, const QString& what, const QString& remedy);
/// "12-14, 17:30–20" in order of time; nothing typed: no hours. Hours that overlap, or are no times, are
/// refused.
Expected<std::vector<db::DayPart>> read_parts(const QString& text);
/// A whole number, or nothing where nothing is typed.
Expected<std::optional<int>> read_number(const QString& text, const QString& where);
/// "90", "90 min", "1:30", "2 h" as minutes; nothing where nothing is typed.
Expected<std::optional<int>> read_minutes(const QString& text, const QString& where);

}  // namespace wm::app
