// What the page People says of pauses, and of whom somebody has named as close.
#include "app/lists/record_reader.h"
#include "app/lists/second_fields.h"
#include "app/people/people_page.h"
#include "app/people/running.h"
#include "app/widgets/key_button.h"
#include "app/widgets/person_box.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

bool signs(const Session& session, const PersonId& person) {
  const auto role = session.role_of(person);
  return role == db::Role::instructor || role == db::Role::manager;
}

}  // namespace

void PeoplePage::pauses(const db::Person& person) {
  const db::Store& store = session().store();
  const RecordReader reader = record_reader(session());
  bool first = true;
  for (const db::Entry& entry : store.entries()) {
    const auto* paused = running<Suspend, Reinstate>(session(), entry, &Reinstate::suspension);
    if (!paused || session().joined(paused->person) != person.id) continue;
    if (first) panel_->section(tr("Paused"));
    first = false;
    panel_->paragraph(record_sentence(entry, reader));
    if (session().role() == db::Role::manager)
      panel_->button(tr("End this pause"), {}, [this, id = entry.id] { end_pause(id); })
          ->setObjectName("end_pause");
  }
}

void PeoplePage::end_pause(const RecordId& id) {
  const db::Entry* entry = session().entry(id);
  if (entry == nullptr) return;
  auto* form = new Form(tr("End this pause"), tr("End it"));
  form->say(record_sentence(*entry, record_reader(session())));
  auto* why = form->line(tr("Why"), "why");
  const SecondFields second(session(), *form, db::EnterFact{Reinstate{id}});
  form->say(tr("From now on they stand as their papers, lessons and check-outs say."));
  run_form(form, tr("The pause has ended."), [this, why, second, id]() -> Expected<db::Committed> {
    const auto vouched = second.second();
    if (!vouched) return tl::unexpected(vouched.error());
    return session().commit(db::EnterFact{Reinstate{id}}, std::nullopt,
                            why->text().simplified().toStdString(), false, *vouched);
  });
}

void PeoplePage::close_ones(const db::Person& person) {
  const db::Store& store = session().store();
  const RecordReader reader = record_reader(session());
  const bool own = session().seated() && session().joined(session().seated()->id) == person.id;
  const bool may = session().role() == db::Role::manager || (own && session().role() == db::Role::instructor);
  if (!signs(session(), person.id)) return;
  bool first = true;
  for (const db::Entry& entry : store.entries()) {
    const auto* fact = std::get_if<db::ShopFact>(&entry.fact);
    const auto* close = fact && session().counts(entry) ? std::get_if<db::Close>(fact) : nullptr;
    if (!close || session().joined(close->person) != person.id) continue;
    if (first) panel_->section(tr("Close to them"));
    first = false;
    panel_->paragraph(reader.name_of(close->other));
    if (may)
      panel_
          ->button(tr("No longer close"), {},
                   [this, id = entry.id] {
                     report(session().commit(db::StrikeOutRecord{id, tr("no longer close").toStdString()}),
                            tr("Struck out."));
                   })
          ->setObjectName("end_close");
  }
  if (may)
    panel_->button(tr("Name somebody close"), {}, [this, person] { name_close(person); })
        ->setObjectName("close");
}

void PeoplePage::name_close(const db::Person& person) {
  auto* form = new Form(tr("Who is close to %1?").arg(person_name(person)), tr("Name them"));
  auto* other = new PersonBox(session(), [id = person.id](const db::Person& p) { return p.id != id; });
  other->setObjectName("close_to");
  form->add_field(tr("Family, a partner, a close friend"), other);
  form->say(
      tr("Where the rulebook says so, neither signs a check-out for the other. Everybody at the desk can see "
         "it."));
  run_form(form, tr("Named as close."), [this, other, id = person.id]() -> Expected<db::Committed> {
    if (!other->person())
      return tl::unexpected(Problem{tr("close").toStdString(), tr("Nobody is chosen yet").toStdString(),
                                    tr("Type part of a name and choose with Enter").toStdString()});
    return session().commit(db::EnterShopFact{db::Close{id, *other->person()}});
  });
}

}  // namespace wm::app
