#pragma once
// The shop's units in a list to choose from. Nothing is chosen beforehand: whoever is in haste would take the
// first.
#include <QComboBox>

#include "app/desk/shop_now.h"

namespace wm::app {

/// Its data is the unit's id; what was chosen stays chosen.
void list_units(QComboBox& box, const ShopNow& shop);
MachineId unit_in(const QComboBox& box);
void choose_unit(QComboBox& box, const MachineId& unit);

}  // namespace wm::app
