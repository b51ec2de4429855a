#include "app/frame/pages.h"

#include <QCoreApplication>

#include "app/desk/desk_page.h"

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
  };
  return table;
}

QString page_title(const PageEntry& entry) { return QCoreApplication::translate("Pages", entry.title); }

}  // namespace wm::app
