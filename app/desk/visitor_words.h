#pragma once
// Visitors for a day who are in, a line each.
#include <QStringList>
#include <vector>

#include "app/words/lock_words.h"

namespace wm::app {

/// "Ada Quill, visitor, with Mara Devlin, since 17:10; uses nothing", and where the host has left, that.
QStringList visitor_lines(const std::vector<db::VisitorIn>& visitors, const NameOf& name_of,
                          const Zone& zone);

}  // namespace wm::app
