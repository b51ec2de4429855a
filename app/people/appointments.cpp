// What the page People says of whom somebody may assess, and a manager's appointments and pauses.
#include "app/lists/record_reader.h"
#include "app/people/people_page.h"
#include "app/people/running.h"
#include "app/widgets/date_field.h"
#include "app/widgets/key_button.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

Problem say_what(const QString& where, const QString& what, const QString& remedy) {
  return {where.toStdString(), what.toStdString(), remedy.toStdString()};
}

/// Everything, a tier, a machine; nothing chosen at first, so that no hasty key appoints or pauses.
QComboBox* scope_choice(Form& form, Session& session, const QString& words) {
  std::vector<std::pair<QString, QString>> choices{{"", PeoplePage::tr("choose")},
                                                   {"everything", PeoplePage::tr("everything")}};
  if (const Rulebook* rulebook = session.decider().in_force(session.now())) {
    for (const Tier& tier : rulebook->tiers)
      choices.emplace_back(QString("tier %1").arg(tier.tier), PeoplePage::tr("Tier %1").arg(tier.tier));
    for (const TargetName& target : targets_of(*rulebook))
      choices.emplace_back("target " + QString::fromStdString(target), target_label(target));
  }
  return form.choice(words, "scope", choices);
}

std::optional<Scope> chosen_scope(const QComboBox& box) {
  const QString value = box.currentData().toString();
  if (value == "everything") return Everything{};
  if (value.startsWith("tier ")) return TierScope{value.mid(5).toInt()};
  if (value.startsWith("target ")) return TargetScope{value.mid(7).toStdString()};
  return std::nullopt;
}

DateField* through_day(Form& form, const Session& session) {
  auto* through = new DateField(PeoplePage::tr("no end"));
  through->setObjectName("through");
  through->set_today(session.zone().day(session.now()));
  form.add_field(PeoplePage::tr("Through"), through);
  return through;
}

/// What both forms ask: of what, and through which day.
struct Extent {
  Scope scope;
  std::optional<Day> until;
};
Expected<Extent> extent_of(const QComboBox& scope, const DateField& through) {
  const auto chosen = chosen_scope(scope);
  if (!chosen)
    return tl::unexpected(say_what(PeoplePage::tr("of what"), PeoplePage::tr("Nothing is chosen yet"),
                                   PeoplePage::tr("Choose everything, a tier or a machine")));
  if (!through.is_good())
    return tl::unexpected(say_what(PeoplePage::tr("through"), PeoplePage::tr("That is no date"),
                                   PeoplePage::tr("Type it as 25 Nov 2026, or leave it empty")));
  return Extent{*chosen, through.typed()};
}

}  // namespace

void PeoplePage::appointments(const db::Person& person) {
  const RecordReader reader = record_reader(session());
  bool first = true;
  for (const db::Entry& entry : session().store().entries()) {
    const auto* appointed = running<Appoint, Dismiss>(session(), entry, &Dismiss::appointment);
    if (!appointed || session().joined(appointed->person) != person.id) continue;
    if (first) panel_->section(tr("Assesses"));
    first = false;
    panel_->paragraph(record_sentence(entry, reader));
    if (session().role() != db::Role::manager) continue;
    panel_->button(tr("End this appointment"), {}, [this, id = entry.id] { end_appointment(id); })
        ->setObjectName("end_appointment");
  }
}

void PeoplePage::end_appointment(const RecordId& id) {
  const db::Entry* entry = session().entry(id);
  if (entry == nullptr) return;
  auto* form = new Form(tr("End this appointment"), tr("End it"));
  form->say(record_sentence(*entry, record_reader(session())));
  auto* why = form->line(tr("Why"), "why");
  form->say(tr("From now on they assess nobody by it. What they have signed before goes on counting."));
  run_form(form, tr("The appointment has ended."), [this, why, id] {
    return session().commit(db::EnterFact{Dismiss{id}}, std::nullopt, why->text().simplified().toStdString());
  });
}

void PeoplePage::appoint(const db::Person& person) {
  auto* form = new Form(tr("Appoint %1 to assess").arg(person_name(person)), tr("Appoint them"));
  QComboBox* scope = scope_choice(*form, session(), tr("Of what"));
  QComboBox* by =
      form->choice(tr("They assess"), "founding",
                   {{"own", tr("by their own standing")}, {"founding", tr("from the start, for a time")}});
  DateField* through = through_day(*form, session());
  form->say(
      tr("By their own standing: what they may use without a supervisor themselves. From the start: whatever "
         "they "
         "may use, since somebody must check out the first assessors. An appointment says who may sign a "
         "check-out; it is no permission at a machine."));
  run_form(form, tr("%1 is appointed.").arg(person_name(person)),
           [this, scope, by, through, id = person.id]() -> Expected<db::Committed> {
             const auto extent = extent_of(*scope, *through);
             if (!extent) return tl::unexpected(extent.error());
             const bool founding = by->currentData().toString() == "founding";
             return session().commit(db::EnterFact{Appoint{id, extent->scope, founding, extent->until}});
           });
}

void PeoplePage::pause(const db::Person& person) {
  auto* form = new Form(tr("Pause %1").arg(person_name(person)), tr("Pause them"));
  QComboBox* scope = scope_choice(*form, session(), tr("On what"));
  DateField* through = through_day(*form, session());
  auto* why = form->line(tr("Why; for instructors and managers only"), "why");
  form->say(tr(
      "They use nothing of it, with a supervisor or without, through that day or as long as nobody ends it. "
      "The desk reads only that they are asked to speak to the manager."));
  run_form(form, tr("%1 is paused.").arg(person_name(person)),
           [this, scope, through, why, id = person.id]() -> Expected<db::Committed> {
             const auto extent = extent_of(*scope, *through);
             if (!extent) return tl::unexpected(extent.error());
             const QString reason = why->text().simplified();
             if (reason.isEmpty())
               return tl::unexpected(
                   say_what(tr("why"), tr("There is no reason yet"), tr("Write why they are paused")));
             return session().commit(db::EnterFact{Suspend{id, extent->scope, extent->until}}, std::nullopt,
                                     reason.toStdString());
           });
}

}  // namespace wm::app
