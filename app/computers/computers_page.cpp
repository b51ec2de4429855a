#include "app/computers/computers_page.h"

#include <algorithm>
#include <array>

#include "app/widgets/key_button.h"
#include "app/widgets/person_search.h"
#include "app/words/station_words.h"

namespace wm::app {
namespace {

constexpr std::array stations = {db::Station::whole, db::Station::front, db::Station::machine,
                                 db::Station::quiz, db::Station::office};

}  // namespace

ComputersPage::ComputersPage(Session& session, QWidget* parent)
    : ListPage(session, tr("login"), {{tr("Login"), 0}, {tr("What it is for"), 380}}, parent) {}

void ComputersPage::open(const Place&) {
  panel_->close_form();
  list_->choose(QString::fromStdString(session().store().login()));
  put_cursor_back();
}

/// This one too where nothing was said of it yet.
std::vector<db::StationTold> ComputersPage::computers() const {
  const db::Store& store = session().store();
  auto all = store.stations();
  if (!store.login().empty() && std::ranges::find(all, store.login(), &db::StationTold::login) == all.end())
    all.insert(all.begin(), {store.login(), store.station()});
  return all;
}

std::vector<ListRow> ComputersPage::rows(const QString& typed) {
  const TypedWords wanted(typed);
  std::vector<ListRow> rows;
  for (const db::StationTold& each : computers()) {
    const QString login = QString::fromStdString(each.login);
    const QString shown =
        each.login == session().store().login() ? tr("%1, this computer").arg(login) : login;
    if (wanted.in(shown + ' ' + station_words(each.station)))
      rows.push_back({login, {{shown, {}}, {station_words(each.station), {}}}, false});
  }
  count_->setText(tr("Computers: %1.").arg(rows.size()));
  return rows;
}

void ComputersPage::describe(const QString& login) {
  panel_->start();
  const auto all = computers();
  const auto chosen = std::ranges::find(all, login.toStdString(), &db::StationTold::login);
  if (chosen != all.end()) {
    panel_->heading(login);
    panel_->line(tr("What it is for"), station_words(chosen->station));
    panel_->paragraph(station_takes(chosen->station));
  } else {
    panel_->heading(tr("Computers"));
  }
  panel_->quiet(
      tr("The server knows a computer by the login that it comes in by. What it is for decides what can be "
         "entered there, whoever sits at it."));
  const auto may = session().permitted(db::EnterShopFact{db::StationTold{}});
  if (!may) return panel_->quiet(tr("A manager says what it is for, in the office."));
  panel_->section(tr("What can be done"));
  if (chosen != all.end())
    panel_->button(tr("Say what it is for"), QKeySequence("Ctrl+T"), [this, login] { say_what_for(login); })
        ->setObjectName("say_what_for");
  panel_->button(tr("Another computer"), QKeySequence("Ctrl+N"), [this] { say_what_for({}); })
      ->setObjectName("another");
}

void ComputersPage::say_what_for(const QString& login) {
  auto* form = new Form(login.isEmpty() ? tr("Another computer") : login, tr("Say so"));
  QLineEdit* field = login.isEmpty() ? form->line(tr("Its login at the server"), "login") : nullptr;
  std::vector<std::pair<QString, QString>> choices;
  for (const db::Station each : stations)
    choices.emplace_back(QString::number(static_cast<int>(each)), station_words(each));
  auto* what = form->choice(tr("What it is for"), "station", choices);
  QLabel* takes = form->say({});
  const auto station = [what] { return static_cast<db::Station>(what->currentData().toString().toInt()); };
  const auto show = [takes, station] { takes->setText(station_takes(station())); };
  connect(what, &QComboBox::currentIndexChanged, form, show);
  for (const db::StationTold& each : computers())
    if (each.login == login.toStdString())
      what->setCurrentIndex(what->findData(QString::number(static_cast<int>(each.station))));
  show();
  run_form(form, tr("It is said what this computer is for."), [this, login, field, station] {
    const QString of = field ? field->text().trimmed() : login;
    return session().commit(db::EnterShopFact{db::StationTold{of.toStdString(), station()}});
  });
}

}  // namespace wm::app
