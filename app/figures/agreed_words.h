#pragma once
// How far assessors agree, in words: the number where there is one, what it can't say, or why there is none.
#include <QString>
#include <vector>

#include "core/sheet/agreed.h"

namespace wm::app {

/// "Marked alike: 15 of 20. They agree moderately beyond chance (kappa 0.58; 0.27 to 0.90)."
QString agreed_sentence(const Agreed& agreed);
/// Why there is no number to give; empty where there is one.
QString no_number_words(const Agreed& agreed);
/// "Lathe, revision 2, two assessors each. Performances: 20."
QString agreed_title(const SheetAgreed& sheet);
/// The line's number and its words, where the sheet is known here in that revision.
QString agreed_line(const LineAgreed& line);
/// What the numbers are and what they can't say; of no sheet, that there is nothing to compare yet.
QStringList agreed_explanations(const std::vector<SheetAgreed>& sheets);

}  // namespace wm::app
