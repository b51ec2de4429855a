#include "app/words/listed_name.h"

#include "app/words/tr.h"
#include "app/words/words.h"

namespace wm::app {

QString listed_name(const db::Person& person) {
  const QString given = QString::fromStdString(person.given), family = QString::fromStdString(person.family);
  if (given.isEmpty() || family.isEmpty()) return person_name(person);
  return Words::tr("%1, %2", "family name, given name").arg(family, given);
}

QString unit_name(std::string_view machine_class, const std::string& label) {
  const QString machine = class_label(machine_class);
  QString unit = QString::fromStdString(label);
  if (unit.contains(machine, Qt::CaseInsensitive)) return unit;
  return Words::tr("%1, %2", "a machine and its unit").arg(machine, unit);
}

}  // namespace wm::app
