#pragma once
// What of the shop now is said in the same lines on the Desk and on the page for emergencies.
#include <QStringList>
#include <vector>

#include "app/desk/shop_now.h"
#include "app/words/lock_words.h"

namespace wm::app {

/// "Ada Quill, visitor, with Mara Devlin, since 17:10; uses nothing", and where the host has left, that.
QStringList visitor_lines(const std::vector<db::VisitorIn>& visitors, const NameOf& name_of,
                          const Zone& zone);
/// Units out of service: "Bandsaw, unit 2: out of service since Sat 21 Nov, …"
QStringList out_lines(const ShopNow& shop, const NameOf& name_of, const Zone& zone);

}  // namespace wm::app
