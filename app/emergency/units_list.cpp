#include "app/emergency/units_list.h"

#include "app/words/listed_name.h"

namespace wm::app {

void list_units(QComboBox& box, const ShopNow& shop) {
  const MachineId chosen = unit_in(box);
  box.clear();
  for (const auto& [id, unit] : shop.units)
    box.addItem(unit_name(unit.machine_class, unit.label), QString::fromStdString(id));
  choose_unit(box, chosen);
}

MachineId unit_in(const QComboBox& box) { return box.currentData().toString().toStdString(); }

void choose_unit(QComboBox& box, const MachineId& unit) {
  box.setCurrentIndex(unit.empty() ? -1 : box.findData(QString::fromStdString(unit)));
}

}  // namespace wm::app
