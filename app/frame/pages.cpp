#include "app/frame/pages.h"

#include <QCoreApplication>

#include "app/backups/backups_page.h"
#include "app/banks/banks_page.h"
#include "app/checkouts/checkouts_page.h"
#include "app/computers/computers_page.h"
#include "app/desk/desk_page.h"
#include "app/diary/diary_page.h"
#include "app/figures/figures_page.h"
#include "app/hours/hours_page.h"
#include "app/journal/journal_page.h"
#include "app/lessons/lessons_page.h"
#include "app/machines/machines_page.h"
#include "app/people/people_page.h"
#include "app/rosters/rosters_page.h"
#include "app/sheets/sheets_page.h"

namespace wm::app {

namespace {
template <class P>
Page* make(Session& session, QWidget* parent) {
  return new P(session, parent);
}
}  // namespace

const std::vector<PageEntry>& pages() {
  static const std::vector<PageEntry> table = {
      {"desk", QT_TRANSLATE_NOOP("Pages", "Desk"), Qt::Key_F2, make<DeskPage>, ShownAt::all},
      {"diary", QT_TRANSLATE_NOOP("Pages", "Diary"), Qt::Key_F3, make<DiaryPage>, ShownAt::all},
      {"hours", QT_TRANSLATE_NOOP("Pages", "Hours"), Qt::SHIFT | Qt::Key_F3, make<HoursPage>, ShownAt::desks},
      {"checkouts", QT_TRANSLATE_NOOP("Pages", "Check-outs"), Qt::Key_F4, make<CheckoutsPage>, ShownAt::all},
      {"sheets", QT_TRANSLATE_NOOP("Pages", "Sheets"), Qt::SHIFT | Qt::Key_F4, make<SheetsPage>,
       ShownAt::office},
      {"people", QT_TRANSLATE_NOOP("Pages", "People"), Qt::Key_F6, make<PeoplePage>, ShownAt::desks},
      {"machines", QT_TRANSLATE_NOOP("Pages", "Machines"), Qt::Key_F7, make<MachinesPage>, ShownAt::all},
      {"lessons", QT_TRANSLATE_NOOP("Pages", "Lessons"), Qt::Key_F9, make<LessonsPage>, ShownAt::desks},
      {"banks", QT_TRANSLATE_NOOP("Pages", "Questions"), Qt::Key_F11, make<BanksPage>, ShownAt::office},
      {"figures", QT_TRANSLATE_NOOP("Pages", "Figures"), Qt::SHIFT | Qt::Key_F9, make<FiguresPage>,
       ShownAt::desks},
      {"rosters", QT_TRANSLATE_NOOP("Pages", "Rosters"), Qt::Key_F8, make<RostersPage>, ShownAt::desks},
      {"journal", QT_TRANSLATE_NOOP("Pages", "Journal"), Qt::Key_F12, make<JournalPage>, ShownAt::desks},
      {"computers", QT_TRANSLATE_NOOP("Pages", "Computers"), Qt::Key_F5, make<ComputersPage>,
       ShownAt::one_of_several},
      {"backups", QT_TRANSLATE_NOOP("Pages", "Backups"), Qt::SHIFT | Qt::Key_F12, make<BackupsPage>,
       ShownAt::desks},
  };
  return table;
}

bool is_shown(const PageEntry& entry, const db::Store& store) {
  const db::Station here = store.station();
  switch (entry.shown_at) {
    case ShownAt::all:
      return true;
    case ShownAt::desks:
      return here != db::Station::machine;
    case ShownAt::office:
      return here == db::Station::whole || here == db::Station::office;
    case ShownAt::one_of_several:
      return !store.login().empty() && (here == db::Station::whole || here == db::Station::office);
  }
  return false;
}

QString page_title(const PageEntry& entry) { return QCoreApplication::translate("Pages", entry.title); }

}  // namespace wm::app
