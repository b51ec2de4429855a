#pragma once
// Numbers with what they count. One thing has its own sentence, so that English reads right without a
// translation file; for other languages "%n" gives every plural form they have.
#include <QString>

#include "core/time/period.h"

namespace wm::app {

QString minutes_words(int n);
QString sessions_words(int n);
QString times_words(int n);
QString period_words(const Period& period);

}  // namespace wm::app
