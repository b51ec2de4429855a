#pragma once
// The table of pages: what stands in the list at the left, on which key, and how each is made.
#include <QKeySequence>
#include <functional>
#include <vector>

#include "app/page/page.h"

namespace wm::app {

/// At which computers a page is in the list: at all of them; not at the tablet at the machines; where all is
/// entered that the shop goes by; there, where the shop has several.
enum class ShownAt { all, desks, office, one_of_several };

struct PageEntry {
  const char* id;
  const char* title;  // to be translated in the context "Pages"
  QKeySequence key;   // may be empty
  std::function<Page*(Session&, QWidget*)> make;
  ShownAt shown_at;
};

/// In the order of the list.
const std::vector<PageEntry>& pages();
/// Whether it is in the list at this computer.
bool is_shown(const PageEntry& entry, const db::Store& store);
QString page_title(const PageEntry& entry);

}  // namespace wm::app
