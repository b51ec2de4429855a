#pragma once
// The table of pages: what stands in the list at the left, on which key, and how each is made.
#include <QKeySequence>
#include <functional>
#include <vector>

#include "app/page/page.h"

namespace wm::app {

struct PageEntry {
  const char* id;
  const char* title;  // to be translated in the context "Pages"
  QKeySequence key;   // may be empty
  std::function<Page*(Session&, QWidget*)> make;
};

/// In the order of the list.
const std::vector<PageEntry>& pages();
QString page_title(const PageEntry& entry);

}  // namespace wm::app
