#include "app/rosters/roster_table.h"

#include <QCollator>
#include <QCoreApplication>
#include <algorithm>

#include "app/lists/answer_reader.h"
#include "app/print/printed.h"
#include "app/words/answer_parts.h"
#include "app/words/condition_words.h"
#include "app/words/listed_name.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct Tr {
  Q_DECLARE_TR_FUNCTIONS(wm::app::Roster)
};

bool wanted(const RosterChoice& choice, int tier) {
  return !choice.tiers || std::ranges::find(*choice.tiers, tier) != choice.tiers->end();
}

std::vector<RosterColumn> columns_of(const Rulebook& rulebook, const RosterChoice& choice,
                                     const QCollator& order) {
  std::vector<RosterColumn> columns;
  for (const MachineClass& machine : rulebook.classes) {
    if (!wanted(choice, machine.tier)) continue;
    const QString label = class_label(machine.name);
    QStringList conditions;
    for (const Condition& each : conditions_of(&rulebook, machine.name)) conditions << condition_words(each);
    conditions.removeDuplicates();  // a class may say once more what its tier says
    if (machine.modes.empty()) columns.push_back({machine.name, machine.tier, label, {}, conditions});
    for (const std::string& mode : machine.modes)
      columns.push_back(
          {machine.name + "/" + mode, machine.tier, label, class_label(mode).toLower(), conditions});
  }
  std::ranges::sort(columns, [&order](const RosterColumn& a, const RosterColumn& b) {
    if (a.tier != b.tier) return a.tier < b.tier;
    const int by_machine = order.compare(a.machine, b.machine);
    return by_machine != 0 ? by_machine < 0 : a.target < b.target;
  });
  return columns;
}

bool by_grace_alone(const StandingAnswer& answer) {
  return std::ranges::any_of(answer.gates, [&answer](const GateAnswer& gate) {
    return gate.guards <= answer.standing && gate.state == GateState::in_grace && !gate.spared;
  });
}

std::optional<Instant> next_fall(const Steps<Rung>& steps, Instant at) {
  const Rung now = steps.at(at);
  for (const auto& change : steps.changes())
    if (change.at > at && change.value < now) return change.at;
  return std::nullopt;
}

RosterCell cell_of(Decider& decider, const Restrictions& left_open, const PersonId& person,
                   const TargetName& target, Instant at) {
  const Steps<Rung>& steps = decider.standing_steps(person, target);
  RosterCell cell{steps.at(at), next_fall(steps, at)};
  cell.restricted = left_open.on(decider, person, target, at);
  if (cell.rung != Rung::barred) cell.overdue = by_grace_alone(decider.standing(person, target, at));
  return cell;
}

/// Marks who assesses, column by column: one question for all people.
void mark_assessors(RosterTable& table, Decider& decider) {
  for (std::size_t column = 0; column < table.columns.size(); ++column) {
    const std::vector<PersonId> able = decider.assessors(table.columns[column].target, table.at);
    for (RosterRow& row : table.rows)
      row.cells[column].assesses = std::ranges::binary_search(able, row.person);
  }
}

std::optional<Instant> first_fall_of(const RosterTable& table) {
  std::optional<Instant> first;
  for (const RosterRow& row : table.rows)
    for (const RosterCell& cell : row.cells)
      if (cell.rung != Rung::barred && cell.until && (!first || *cell.until < *first)) first = cell.until;
  return first;
}

}  // namespace

RosterTable roster_table(Session& session, const RosterChoice& choice) {
  Decider& decider = session.decider();
  RosterTable table{QString::fromStdString(session.store().details().name),
                    session.zone(),
                    session.at(),
                    session.known().value_or(session.now()),
                    std::nullopt,
                    {},
                    {},
                    std::nullopt};
  QCollator order;
  order.setNumericMode(true);
  if (const Rulebook* rulebook = decider.in_force(table.at)) {
    table.rulebook = rulebook->version;
    table.columns = columns_of(*rulebook, choice, order);
  }
  const Restrictions left_open = restrictions(session);
  for (const db::Person& person : session.people()) {
    if (session.store().joined(person.id, session.known()) != person.id) continue;
    RosterRow row{person.id, listed_name(person), {}};
    for (const RosterColumn& column : table.columns)
      row.cells.push_back(cell_of(decider, left_open, person.id, column.target, table.at));
    table.rows.push_back(std::move(row));
  }
  mark_assessors(table, decider);
  if (!choice.everybody)
    std::erase_if(table.rows,
                  [](const RosterRow& row) { return std::ranges::all_of(row.cells, &RosterCell::empty); });
  std::ranges::sort(table.rows, [&order](const RosterRow& a, const RosterRow& b) {
    const int by_name = order.compare(a.name, b.name);
    return by_name != 0 ? by_name < 0 : a.person < b.person;
  });
  table.first_fall = first_fall_of(table);
  table.ledger = ledger_code(session);
  table.emergency = session.store().emergency_call();
  return table;
}

std::vector<int> roster_tiers(Session& session) {
  std::vector<int> tiers;
  if (const Rulebook* rulebook = session.decider().in_force(session.at()))
    for (const Tier& tier : rulebook->tiers) tiers.push_back(tier.tier);
  std::ranges::sort(tiers);
  return tiers;
}

QString cell_words(const RosterCell& cell) { return standing_cell(cell.rung); }

QString cell_detail(const RosterCell& cell, const Zone& zone, Instant at) {
  if (cell.rung == Rung::barred) return cell.assesses ? Tr::tr("assesses") : QString();
  if (!cell.until) return cell.assesses ? Tr::tr("assesses") : Tr::tr("no end");
  const Day covered = zone.day(*cell.until) + -1;
  if (covered < zone.day(at)) return Tr::tr("through today, %1").arg(clock_time(*cell.until, zone));
  const QString day = short_day(zone.start(covered), zone);
  if (cell.overdue) return Tr::tr("overdue, %1").arg(day);
  return cell.assesses ? Tr::tr("assesses, %1").arg(day) : Tr::tr("through %1").arg(day);
}

}  // namespace wm::app
