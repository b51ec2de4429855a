#include "app/desk/shop_lines.h"

#include "app/desk/answer.h"
#include "app/desk/tr.h"
#include "app/words/record_words.h"
#include "app/words/words.h"

namespace wm::app {

QStringList visitor_lines(const std::vector<db::VisitorIn>& visitors, const NameOf& name_of,
                          const Zone& zone) {
  QStringList lines;
  for (const db::VisitorIn& each : visitors) {
    QString line = DeskWords::tr("%1, visitor, with %2, since %3; uses nothing", "name, host, time")
                       .arg(said_words(each.name), name_of(each.host), clock_time(each.since, zone));
    if (!each.host_in) line += DeskWords::tr(". %1 has left: nobody stays with them").arg(name_of(each.host));
    lines << line;
  }
  return lines;
}

QStringList out_lines(const ShopNow& shop, const NameOf& name_of, const Zone& zone) {
  QStringList lines;
  for (const db::LockOn& lock : shop.out)
    lines << DeskWords::tr("%1: %2", "machine and unit, what is said of its lock")
                 .arg(unit_words(shop, lock.machine), lock_words(lock, name_of, zone));
  return lines;
}

}  // namespace wm::app
