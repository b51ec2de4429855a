// Visitors for a day on the page People: entered, gone again, their names erased when the rulebook says so.
#include <QLabel>
#include <algorithm>

#include "app/desk/items.h"
#include "app/desk/shop_lines.h"
#include "app/people/group_entry.h"
#include "app/people/people_page.h"
#include "app/words/words.h"

namespace wm::app {

void PeoplePage::visitors() {
  panel_->button(tr("A visitor for the day"), QKeySequence("Ctrl+Shift+D"), [this] { enter_visitor(); })
      ->setObjectName("visitor");
  panel_->button(tr("A group that had a lesson"), QKeySequence("Ctrl+Shift+L"), [this] { enter_group(); })
      ->setObjectName("group");
  const auto in = session().store().floor(session().present(), session().known()).visitors;
  if (!in.empty()) panel_->section(tr("Visitors here now"));
  const auto name = [this](const PersonId& id) { return person_name(session().person(id)); };
  const QStringList lines = visitor_lines(in, name, session().zone());
  for (std::size_t i = 0; i < in.size(); ++i) {
    panel_->paragraph(lines[static_cast<qsizetype>(i)]);
    if (session().known()) continue;
    panel_
        ->button(tr("%1 has left")
                     .arg(in[i].name.empty() ? tr("The visitor") : QString::fromStdString(in[i].name)),
                 {},
                 [this, visit = in[i].visit] {
                   report(session().commit(db::EnterShopFact{db::VisitEnd{visit}}),
                          tr("The visitor has left."));
                 })
        ->setObjectName("visitor_left");
  }
}

void PeoplePage::enter_visitor() {
  auto* form = new Form(tr("A visitor for the day"), tr("Let them in"));
  auto* name = form->line(tr("Name"), "visitor_name");
  const Rulebook* book = session().decider().in_force(session().now());
  const Items items = book ? items_of(*book) : Items();
  std::vector<std::pair<QString, QString>> papers, hosts;
  for (const std::string& each : items.documents)
    papers.emplace_back(QString::fromStdString(each), item_label(each));
  papers.emplace_back(QString("visitor-rules"), tr("the rules for visitors"));
  QComboBox* paper = form->choice(tr("Paper that they have signed"), "visitor_paper", papers);
  paper->setPlaceholderText(tr("choose"));
  paper->setCurrentIndex(-1);
  for (const PersonId& id : session().store().floor(session().now()).present)
    hosts.emplace_back(QString::fromStdString(id), person_name(session().person(id)));
  QComboBox* host = form->choice(tr("Who stays with them"), "visitor_host", hosts);
  host->setPlaceholderText(hosts.empty() ? tr("nobody has been noted as here") : tr("choose"));
  host->setCurrentIndex(-1);
  form->say(
      tr("A visitor uses nothing, and is gone from here when the day is over. Show them the way out, and "
         "what to stay away from."));
  run_form(form, tr("The visitor is noted as here."), [this, name, paper, host]() -> Expected<db::Committed> {
    if (host->currentIndex() < 0)
      return tl::unexpected(Problem{"host", tr("Nobody is named who stays with them").toStdString(),
                                    tr("Choose somebody who is here").toStdString()});
    return session().commit(db::EnterShopFact{db::Visit{name->text().simplified().toStdString(),
                                                        paper->currentData().toString().toStdString(),
                                                        host->currentData().toString().toStdString()}});
  });
}

void PeoplePage::enter_group() {
  auto* form = new GroupEntry(session());
  connect(form, &Form::saved, this, [this, form] {
    const auto done = form->enter();
    if (!done) return form->show_problem(done.error());
    const QString said = form->done_words();
    panel_->close_form();
    report(done, said);
  });
  panel_->show_form(form);
}

/// Beside the people whose details may go: names that stand in visits alone.
void PeoplePage::visitors_names() {
  constexpr std::size_t most_listed = 8;
  const auto gone = session().visits_may_go();
  if (gone.empty()) return;
  panel_->section(tr("Visitors' names that may go: %1").arg(gone.size()));
  for (std::size_t i = 0; i < std::min(gone.size(), most_listed); ++i)
    panel_->line(short_day(gone[i].at, session().zone()), QString::fromStdString(gone[i].name));
  if (gone.size() > most_listed) panel_->quiet(tr("And %1 more.").arg(gone.size() - most_listed));
  panel_
      ->button(tr("Erase these names for good"), {},
               [this, gone] {
                 std::vector<db::Action> actions;
                 for (const db::VisitMayGo& each : gone) actions.push_back(db::BlankRecord{each.visit});
                 report(session().commit_all(std::move(actions)),
                        tr("The names are erased; the visits stay."));
               })
      ->setObjectName("erase_visitors");
}

}  // namespace wm::app
