#pragma once
// A moment typed in two fields: a day and a time of day.
#include <QLineEdit>

#include "app/session.h"
#include "app/widgets/date_field.h"

namespace wm::app {

/// Nothing where both are empty; today where only the day is. What can't be read is refused, and its field
/// gets the cursor.
Expected<std::optional<Instant>> read_moment(const Session& session, DateField& day, QLineEdit& time);
/// The moment as far as it is typed: now where it can't be read yet, and no field gets the cursor.
Instant moment_so_far(const Session& session, const DateField& day, const QLineEdit& time);

}  // namespace wm::app
