#include "app/frame/pages.h"

#include <QCoreApplication>

#include "app/checkouts/checkouts_page.h"
#include "app/desk/desk_page.h"
#include "app/diary/diary_page.h"

namespace wm::app {

namespace {
template <class P>
Page* make(Session& session, QWidget* parent) {
  return new P(session, parent);
}
}  // namespace

const std::vector<PageEntry>& pages() {
  static const std::vector<PageEntry> table = {
      {"desk", QT_TRANSLATE_NOOP("Pages", "Desk"), Qt::Key_F2, make<DeskPage>},
      {"diary", QT_TRANSLATE_NOOP("Pages", "Diary"), Qt::Key_F3, make<DiaryPage>},
      {"checkouts", QT_TRANSLATE_NOOP("Pages", "Check-outs"), Qt::Key_F4, make<CheckoutsPage>},
  };
  return table;
}

QString page_title(const PageEntry& entry) { return QCoreApplication::translate("Pages", entry.title); }

}  // namespace wm::app
