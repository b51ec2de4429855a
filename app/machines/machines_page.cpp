#include "app/machines/machines_page.h"

#include <algorithm>

#include "app/calendars/forms.h"
#include "app/hours/moment.h"
#include "app/lists/effects.h"
#include "app/passes/card_form.h"
#include "app/passes/card_words.h"
#include "app/widgets/date_field.h"
#include "app/widgets/key_button.h"
#include "app/widgets/person_box.h"
#include "app/widgets/person_search.h"
#include "app/words/listed_name.h"
#include "app/words/listing.h"
#include "app/words/lock_words.h"
#include "app/words/words.h"
#include "core/decide/change_effect.h"
#include "db/journal/subject.h"

namespace wm::app {
namespace {

constexpr int most_history = 12;
constexpr int most_changes = 3;  // of which it is said what rests on them

QString words(const std::string& text) { return QString::fromStdString(text); }

}  // namespace

MachinesPage::MachinesPage(Session& session, QWidget* parent)
    : ListPage(session, tr("unit, machine or tag"),
               {{tr("Tier"), 56}, {tr("Machine"), 180}, {tr("Unit"), 190}, {tr("State"), 0}}, parent),
      reader_(record_reader(session)) {}

void MachinesPage::refresh() {
  units_ = unit_states(session());
  reader_ = record_reader(session());
  ListPage::refresh();
}

void MachinesPage::open(const Place& place) {
  panel_->close_form();
  if (!place.machine.empty()) {
    search_->clear();
    list_->choose(words(place.machine));
  }
  search_->setFocus(Qt::OtherFocusReason);
  search_->selectAll();
}

QString MachinesPage::lock_summary(const db::LockOn& lock) const {
  return tr("%1, put on by %2", "tag and padlock, name")
      .arg(tag_words(lock, reader_.name_of), whose_lock_words(lock, reader_.name_of));
}

ListRow MachinesPage::row(const UnitState& unit) const {
  QStringList locks;
  for (const db::LockOn& lock : unit.locks) locks << lock_summary(lock);
  const QString state = unit.locks.empty() ? tr("in service") : tr("out of service");
  return {words(unit.id),
          {{unit.tier ? QString::number(*unit.tier) : QString(), {}},
           {class_label(unit.machine_class), {}},
           {words(unit.label), {}},
           {state, locks.join("; "), !unit.locks.empty()}},
          false};
}

std::vector<ListRow> MachinesPage::rows(const QString& typed) {
  const TypedWords wanted(typed);
  std::vector<ListRow> rows;
  std::size_t out = 0;
  for (const UnitState& unit : units_) {
    ListRow candidate = row(unit);
    QString all;
    for (const ListCell& cell : candidate.cells) all += cell.text + ' ' + cell.quiet + ' ';
    if (!wanted.in(all)) continue;
    out += !unit.locks.empty();
    rows.push_back(std::move(candidate));
  }
  count_->setText(tr("Units: %1. Out of service: %2.").arg(rows.size()).arg(out));
  return rows;
}

const UnitState* MachinesPage::unit(const QString& id) const {
  const auto found = std::ranges::find(units_, id.toStdString(), &UnitState::id);
  return found == units_.end() ? nullptr : &*found;
}

void MachinesPage::describe(const QString& id) {
  panel_->start();
  if (const UnitState* chosen = unit(id)) {
    panel_->heading(unit_name(chosen->machine_class, chosen->label));
    panel_->quiet(chosen->tier ? tr("Tier %1").arg(*chosen->tier)
                               : tr("The rulebook in force does not have this machine."));
    if (chosen->locks.empty())
      panel_->paragraph(tr("In service. Its limits card and the maker's manual come first."));
    bool first = true;
    for (const db::LockOn& lock : chosen->locks) {
      describe_lock(lock, first);
      first = false;
    }
    actions(*chosen);
    cards(*chosen);
    history(*chosen);
  } else {
    panel_->heading(units_.empty() ? tr("No unit here yet") : tr("No such unit"));
  }
  if (!session().permitted(db::EnterShopFact{db::MachineAdded{}})) return;
  panel_->section(tr("Another unit"));
  panel_->button(tr("New unit"), QKeySequence::New, [this] { add_unit(); })->setObjectName("new");
}

void MachinesPage::describe_lock(const db::LockOn& lock, bool first) {
  panel_->section(tr("Out of service"));
  panel_->line(tr("Since"),
               tr("%1, %2", "a day and a time")
                   .arg(short_day(lock.since, session().zone()), clock_time(lock.since, session().zone())));
  panel_->line(tr("Why"), said_words(lock.tag.reason));
  panel_->line(tr("Tag"), tag_number_words(lock.tag.tag));
  panel_->line(tr("Padlock"), padlock_words(lock.tag.padlock));
  panel_->line(tr("Put on by"), whose_lock_words(lock, reader_.name_of));
  if (has_padlock(lock.tag)) panel_->line(tr("Key with"), key_words(lock, reader_.name_of));
  for (const db::Attempt& attempt : lock.attempts)
    panel_->line(tr("Tried to reach"), tr("%1, %2: %3", "day, who, how")
                                           .arg(short_day(attempt.at, session().zone()),
                                                reader_.entered_by(attempt.by), said_words(attempt.how)));
  lock_actions(lock, first);
}

/// Keys are the first lock's; those of more locks have buttons only. What nobody who sits here may do is not
/// offered: who may is said.
void MachinesPage::lock_actions(const db::LockOn& lock, bool first) {
  const auto key = [first](const char* keys) { return first ? QKeySequence(keys) : QKeySequence(); };
  const auto may = session().permitted(db::EnterFact{Release{lock.lockout}});
  const bool own =
      session().seated() && session().joined(session().seated()->id) == session().joined(lock.whose);
  if (!own && session().permitted(db::EnterShopFact{db::Reached{lock.lockout, {}}}))
    panel_
        ->button(tr("Record an attempt to reach them"), key("Ctrl+R"), [this, lock] { record_attempt(lock); })
        ->setObjectName("attempt");
  if (may)
    panel_
        ->button(own ? tr("Take my padlock off") : tr("Take this padlock off"), key("Ctrl+Shift+L"),
                 [this, lock] { take_off(lock); })
        ->setObjectName("take_off");
  else
    panel_->quiet(problem_sentence(may.error()));
}

void MachinesPage::actions(const UnitState& unit) {
  panel_->section(tr("What can be done"));
  panel_
      ->button(unit.locks.empty() ? tr("Put out of service") : tr("Put another padlock on"),
               QKeySequence("Ctrl+L"), [this, unit] { put_out_of_service(unit); })
      ->setObjectName("put_out");
  panel_
      ->button(
          tr("Save one-on-ones as a calendar"), QKeySequence("Ctrl+Shift+K"),
          [this, id = unit.id] {
            show_own_form([&](const Tell& done) { return save_calendar_form(session(), OfUnit{id}, done); });
          })
      ->setObjectName("calendar");
  if (session().permitted(db::RecordChange{}))
    panel_->button(tr("Record a change"), QKeySequence("Ctrl+G"), [this, unit] { record_change(unit); })
        ->setObjectName("change");
}

/// The class's own target, or that of each mode; keys are the first's.
void MachinesPage::cards(const UnitState& unit) {
  bool first = true;
  for (const TargetName& target : targets_of_class(unit.machine_class)) {
    const auto card = card_of(session(), target);
    const bool issues = session().permitted(db::EnterShopFact{db::Issued{}}).has_value();
    if (!card && !issues) continue;
    panel_->section(tr("Limits card: %1", "a machine").arg(target_label(target)));
    if (card) {
      for (const auto& [name, value] : card_lines(card->card)) panel_->line(name, value);
      panel_->quiet(tr("Revision %1, issued %2 by %3. %4")
                        .arg(QString::number(card->revision), short_day(card->at, session().zone()),
                             reader_.entered_by(card->by), card->changed)
                        .trimmed());
      panel_->quiet(card_caution());
    }
    if (issues)
      panel_
          ->button(card ? tr("Change this card") : tr("Write its card"),
                   first ? QKeySequence("Ctrl+K") : QKeySequence(), [this, target] { write_card(target); })
          ->setObjectName("card");
    first = false;
  }
}

std::vector<TargetName> MachinesPage::targets_of_class(const std::string& machine_class) const {
  const Rulebook* rulebook = session().decider().in_force(session().present());
  const MachineClass* machine = rulebook ? find_class(*rulebook, machine_class) : nullptr;
  if (!machine) return {};
  if (machine->modes.empty()) return {machine_class};
  std::vector<TargetName> out;
  for (const std::string& mode : machine->modes) out.push_back(machine_class + "/" + mode);
  return out;
}

void MachinesPage::write_card(const TargetName& target) {
  const auto before = card_of(session(), target);
  auto* form = new Form(tr("Limits card: %1", "a machine").arg(target_label(target)),
                        tr("Issue revision %1").arg(before ? before->revision + 1 : 1));
  const CardFields fields = add_card_fields(*form, before ? std::optional(before->card) : std::nullopt);
  run_form(form, tr("Card issued: %1.").arg(target_label(target)),
           [this, fields, target, before]() -> Expected<db::Committed> {
             const auto card = read_card_fields(fields);
             if (!card) return tl::make_unexpected(card.error());
             db::Issued issued{db::Work::card,
                               target,
                               before ? before->revision + 1 : 1,
                               fields.changed->text().simplified().toStdString(),
                               to_json(*card),
                               {}};
             return session().commit(db::EnterShopFact{std::move(issued)});
           });
}

void MachinesPage::history(const UnitState& unit) {
  const auto& entries = session().store().entries();
  int shown = 0, changes = 0;
  for (auto entry = entries.rbegin(); entry != entries.rend() && shown < most_history; ++entry) {
    if (!session().counts(*entry) || !is_about(*entry, unit, session())) continue;
    if (shown++ == 0) panel_->section(tr("History"));
    QString told = record_sentence(*entry, reader_);
    if (!entry->note.empty()) told += ' ' + words(entry->note);
    if (db::as<Change>(entry->fact) && changes++ < most_changes) told += ' ' + since_words(*entry);
    panel_->line(short_day(entry->at, session().zone()), told.trimmed());
  }
}

/// What a change still takes away today.
QString MachinesPage::since_words(const db::Entry& change) const {
  if (session().known()) return {};
  std::vector<Shift> resting;
  for (const StandingChange& each : session().current().rests_on(change.id, session().now()))
    if (each.before < each.after) resting.push_back({each.person, each.target, session().now(), {}});
  return resting.empty()
             ? QString()
             : tr("Not checked out again since: %1.").arg(affected_words(resting, session().store()));
}

void MachinesPage::put_out_of_service(const UnitState& unit) {
  auto* form = new Form(tr("Put %1 out of service").arg(unit_name(unit.machine_class, unit.label)),
                        tr("Put out of service"));
  auto* reason = form->line(tr("Why"), "reason");
  const auto [tag, padlock] = form->two_lines(tr("Tag"), "tag", tr("Padlock"), "padlock");
  auto* key = new PersonBox(session());
  key->setObjectName("key_holder");
  if (session().seated()) key->set_person(session().seated()->id);
  form->add_field(tr("Who holds the key"), key);
  auto* by = new PersonBox(session());
  by->setObjectName("put_on_by");
  if (session().seated()) by->set_person(session().seated()->id);
  form->add_field(tr("Who put it on, and takes it off"), by);
  form->say(tr("Isolate it, put the padlock on, hang the tag, and try to start it before you go."));
  run_form(form, tr("%1 is out of service.").arg(unit_name(unit.machine_class, unit.label)),
           [this, id = unit.id, reason, tag = tag, padlock = padlock, key, by] {
             const auto text = [](QLineEdit* field) { return field->text().simplified().toStdString(); };
             // Whoever sits here is who enters it.
             const auto put_on_by = [this](PersonBox* box) {
               const PersonId who = box->person().value_or(PersonId());
               return session().seated() && session().seated()->id == who ? PersonId() : who;
             };
             return session().commit(db::PutOutOfService{id, text(tag), text(padlock), text(reason),
                                                         key->person().value_or(PersonId()), put_on_by(by)});
           });
}

void MachinesPage::record_attempt(const db::LockOn& lock) {
  auto* form =
      new Form(tr("An attempt to reach %1").arg(whose_lock_words(lock, reader_.name_of)), tr("Record it"));
  auto* how = form->line(tr("How, and what came of it"), "how");
  how->setPlaceholderText(tr("telephoned, no answer"));
  run_form(form, tr("Attempt recorded."), [this, how, id = lock.lockout]() -> Expected<db::Committed> {
    const std::string said = how->text().simplified().toStdString();
    if (said.empty())
      return tl::unexpected(Problem{tr("how").toStdString(), tr("It does not say how").toStdString(),
                                    tr("Write how they were tried, and what came of it").toStdString()});
    return session().commit(db::EnterShopFact{db::Reached{id, said}});
  });
}

void MachinesPage::take_off(const db::LockOn& lock) {
  auto* form = new Form(tr("Take the padlock off"), tr("Take the padlock off"));
  auto* note = form->line(tr("What was done"), "done");
  form->say(
      tr("Look the machine over first: guards on, tools away, nobody near. Taking a padlock off says nothing "
         "about "
         "the machine's state."));
  run_form(form, tr("Padlock taken off."), [this, note, id = lock.lockout] {
    return session().commit(db::EnterFact{Release{id}}, std::nullopt,
                            note->text().simplified().toStdString());
  });
}

void MachinesPage::record_change(const UnitState& unit) {
  auto* form = new Form(tr("A change to %1").arg(class_label(unit.machine_class)), tr("Record the change"));
  std::vector<std::pair<QString, QString>> kinds;
  for (int kind = 0; kind <= static_cast<int>(db::Alteration::other); ++kind)
    kinds.emplace_back(QString::number(kind), alteration_words(static_cast<db::Alteration>(kind)));
  auto* what = form->line(tr("What was changed"), "what");
  what->setPlaceholderText(tr("new cutterhead, another guard"));
  QComboBox* kind = form->choice(tr("Of what kind"), "kind", kinds);
  std::vector<std::pair<QString, QString>> targets;
  const auto modes = targets_of_class(unit.machine_class);
  if (modes.size() != 1 || modes.front() != unit.machine_class)
    targets.emplace_back(words(unit.machine_class), class_label(unit.machine_class));
  for (const TargetName& target : modes) targets.emplace_back(words(target), target_label(target));
  QComboBox* on = form->choice(tr("On"), "on", targets);
  QComboBox* which = form->choice(tr("Which unit"), "which",
                                  {{words(unit.id), unit_name(unit.machine_class, unit.label)},
                                   {QString(), tr("every unit of this machine")}});
  auto* time = form->line(tr("At what time it was changed"), "changed_time");
  time->setPlaceholderText(tr("now"));
  auto* day = new DateField(tr("today"));
  day->setObjectName("changed_day");
  day->set_today(session().zone().day(session().now()));
  form->add_field(tr("On which day"), day);
  connect(day, &DateField::refused, form, qOverload<const Problem&>(&Form::show_problem));
  QComboBox* use = nullptr;
  if (session().permitted(db::RecordChange{{}, {}, db::Alteration::repair, {}, true}))
    use = form->choice(tr("Using it, by your word"), "use",
                       {{QString(), tr("has changed: the rules count")},
                        {QStringLiteral("as_before"), tr("is as before: kept on record only")}});
  QLabel* effect = form->say({});
  effect->setObjectName("effect");
  const auto change = [what, kind, on, which, use] {
    return db::RecordChange{
        on->currentData().toString().toStdString(), which->currentData().toString().toStdString(),
        static_cast<db::Alteration>(kind->currentData().toInt()), what->text().simplified().toStdString(),
        use && use->isEnabled() && use->currentIndex() == 1};
  };
  const auto say_effect = [this, change, kind, use, day, time, effect] {
    const auto kind_now = static_cast<db::Alteration>(kind->currentData().toInt());
    if (use) use->setEnabled(kind_now == db::Alteration::repair || kind_now == db::Alteration::other);
    const Instant when = moment_so_far(session(), *day, *time);
    effect->setText(change().as_before
                        ? tr("No check-out is asked for again: it stands in the history, and that "
                             "using the machine is as before is your word.")
                        : effect_words(change().target, when));
  };
  for (QComboBox* box : {kind, on, use})
    if (box) connect(box, &QComboBox::currentIndexChanged, form, say_effect);
  for (QLineEdit* line : {time, static_cast<QLineEdit*>(day)})
    connect(line, &QLineEdit::textChanged, form, say_effect);
  say_effect();
  run_form(form, tr("Change recorded."), [this, change, day, time]() -> Expected<db::Committed> {
    const auto at = read_moment(session(), *day, *time);
    if (!at) return tl::make_unexpected(at.error());
    return session().commit(change(), *at);
  });
}

/// What a change at that moment would take away, before it is entered.
QString MachinesPage::effect_words(const TargetName& target, Instant at) const {
  const ChangeEffect effect = effect_of_change(session().current(), target, at, session().now());
  if (effect.checkouts.empty())
    return tr(
        "The rules ask nobody for a new check-out after it. Check-outs are for the machine, not for one "
        "unit.");
  QStringList again;
  for (const std::string& checkout : effect.checkouts) again << item_label(checkout);
  const QString rule =
      tr("From then on these check-outs are asked for again, on every unit: %1.").arg(and_list(again));
  if (effect.people == 0) return rule + ' ' + tr("Nobody's standing changes by it now.");
  return rule + ' ' +
         tr("%n people's standings change: %1.", nullptr, static_cast<int>(effect.people))
             .arg(affected_words(effect.shifts, session().store()));
}

void MachinesPage::add_unit() {
  auto* form = new Form(tr("New unit"), tr("Enter the unit"));
  auto* label = form->line(tr("What it is called"), "label");
  std::vector<std::pair<QString, QString>> classes;
  if (const Rulebook* rulebook = session().decider().in_force(session().present()))
    for (const MachineClass& machine : rulebook->classes)
      classes.emplace_back(words(machine.name), class_label(machine.name));
  std::ranges::sort(classes, {}, &std::pair<QString, QString>::second);
  QComboBox* machine = form->choice(tr("Machine"), "class", classes);
  auto* id = form->line(tr("Its number, as on the machine"), "number");
  run_form(form, tr("Unit entered."), [this, label, machine, id]() -> Expected<db::Committed> {
    const auto text = [](QLineEdit* field) { return field->text().simplified().toStdString(); };
    if (text(label).empty() || text(id).empty())
      return tl::unexpected(Problem{tr("unit").toStdString(),
                                    tr("A unit needs what it is called and its number").toStdString(),
                                    tr("Type both").toStdString()});
    if (std::ranges::find(units_, text(id), &UnitState::id) != units_.end())
      return tl::unexpected(Problem{tr("number").toStdString(),
                                    tr("Another unit has this number").toStdString(),
                                    tr("Type the number that is on this one").toStdString()});
    return session().commit(db::EnterShopFact{
        db::MachineAdded{text(id), machine->currentData().toString().toStdString(), text(label)}});
  });
}

}  // namespace wm::app
