#pragma once
// What Qt's own controls look like, from the palette. Pages name a role by the property "role":
// "quiet", "large", "heading", "paper" (a framed sheet), "primary" (the button that does what comes next),
// "plain". The bar at the foot says by its property "problem" whether something stands in the way.
#include <QString>

#include "app/theme/theme.h"

namespace wm::app {

QString style_sheet(const Palette& palette);

}  // namespace wm::app
