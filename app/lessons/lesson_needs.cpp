#include "app/lessons/lesson_needs.h"

#include <QCoreApplication>
#include <map>

#include "app/desk/items.h"
#include "app/lists/effects.h"
#include "app/words/days.h"
#include "app/words/labels.h"

namespace wm::app {
namespace {

struct LessonNeeds {
  Q_DECLARE_TR_FUNCTIONS(LessonNeeds)
};

void add(QStringList& out, const QString& what, const std::vector<Gate>& gates, const std::string& lesson) {
  const Gate* lowest = nullptr;
  for (const Gate& gate : gates)
    if (items_of(gate).lessons.contains(lesson) && (!lowest || gate.guards < lowest->guards)) lowest = &gate;
  if (!lowest) return;
  out << (lowest->guards == Rung::supervised ? LessonNeeds::tr("%1, before working with a supervisor")
                                             : LessonNeeds::tr("%1, before working without a supervisor"))
             .arg(what);
}

}  // namespace

QStringList needed_for(const Rulebook& rulebook, const std::string& lesson) {
  QStringList out;
  for (const Tier& tier : rulebook.tiers)
    add(out, LessonNeeds::tr("Tier %1").arg(tier.tier), tier.gates, lesson);
  for (const MachineClass& machine : rulebook.classes) {
    add(out, class_label(machine.name), machine.gates, lesson);
    for (const auto& [mode, gates] : machine.mode_gates)
      add(out, target_label(machine.name + "/" + mode), gates, lesson);
  }
  return out;
}

QStringList again_words(const std::vector<Shift>& shifts, const Session& session) {
  std::map<Instant, std::vector<Shift>> by_day;
  for (const Shift& shift : shifts) by_day[shift.from].push_back(shift);
  QStringList out;
  for (const auto& [from, those] : by_day) {
    const QString who = affected_words(those, session.store());
    out << (from <= session.now() ? LessonNeeds::tr("At once: %1.").arg(who)
                                  : LessonNeeds::tr("Through %1: %2.", "a last day, people")
                                        .arg(last_day(from, session.zone(), session.now()), who));
  }
  return out;
}

}  // namespace wm::app
