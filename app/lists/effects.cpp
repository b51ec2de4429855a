#include "app/lists/effects.h"

#include <QCoreApplication>
#include <QStringList>
#include <map>

#include "app/words/words.h"

namespace wm::app {

namespace {

struct Effects {
  Q_DECLARE_TR_FUNCTIONS(Effects)
};

constexpr std::size_t most_named = 3;

}  // namespace

QString affected_words(const std::vector<Shift>& shifts, const db::Store& store) {
  std::map<PersonId, std::vector<TargetName>> targets;  // shifts come in order of people
  for (const Shift& shift : shifts) targets[shift.person].push_back(shift.target);
  QStringList named;
  for (const auto& [person, of_person] : targets) {
    if (static_cast<std::size_t>(named.size()) == most_named) break;
    const QString what = of_person.size() == 1 ? target_label(of_person.front())
                                               : Effects::tr("%1 machines").arg(of_person.size());
    named << Effects::tr("%1 (%2)", "a person, a machine").arg(person_name(store.person(person)), what);
  }
  const QString list = named.join(Effects::tr(", "));
  return targets.size() <= most_named
             ? list
             : Effects::tr("%1 and %2 more", "people").arg(list).arg(targets.size() - most_named);
}

QString changed_sentence(const std::vector<Shift>& shifts, const db::Store& store) {
  return shifts.empty() ? QString()
                        : Effects::tr("Standings that changed: %1.").arg(affected_words(shifts, store));
}

}  // namespace wm::app
