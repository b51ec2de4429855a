#pragma once
// What a computer of the shop is for, in words.
#include <QString>

#include "db/facts.h"

namespace wm::app {

/// "tablet at the machines"
QString station_words(db::Station station);
/// What can be entered there, in a sentence.
QString station_takes(db::Station station);

}  // namespace wm::app
