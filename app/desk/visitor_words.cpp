#include "app/desk/visitor_words.h"

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

}  // namespace wm::app
