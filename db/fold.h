#pragma once
// Names compared as people hear them.
#include <QString>

namespace wm::db {

/// Case and accents taken away: compatibility decomposition (NFKD, Unicode Standard Annex #15) without its
/// marks, then case folding; letters that have no decomposition (ø, ł, đ …) by their plain ones, and without
/// apostrophes.
QString folded(const QString& text);

}  // namespace wm::db
