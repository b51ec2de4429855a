#include "app/cli/retention_file.h"

#include <QDateTime>
#include <iostream>

#include "app/cli/application.h"
#include "app/cli/refusal.h"
#include "core/time/text.h"
#include "db/retention.h"

namespace wm::app {
namespace {

std::string counted(std::size_t people) {
  if (people == 0) return "Nobody's details may be erased now";
  return people == 1 ? "One person's details may be erased"
                     : std::to_string(people) + " people's details may be erased";
}

void say(const db::Store& store, const Zone& zone, const db::MayGo& gone) {
  const auto person = store.person(gone.person);
  std::cout << gone.person << (person && !person->number.empty() ? ", number " + person->number : "")
            << ": last named " << to_text(zone.day(gone.last)) << ", may go since "
            << to_text(zone.day(gone.since)) << "\n";
}

}  // namespace

int retention_file(const std::string& path) {
  const Application application;
  auto store = db::Store::open(path, [] { return Instant{QDateTime::currentSecsSinceEpoch()}; });
  if (!store) return refuse(store.error());
  const Rulebook* rulebook = store->current().decider().in_force(store->now());
  if (rulebook == nullptr || !rulebook->keep_details) {
    std::cout << "The rulebook in force says nothing of how long details are kept: all are.\n";
    return 0;
  }
  const auto may_go = db::details_that_may_go(*store);
  const Zone zone = Zone::named(store->details().zone).value_or(Zone::utc());
  for (const db::MayGo& gone : may_go) say(*store, zone, gone);
  for (const db::VisitMayGo& gone : db::visits_that_may_go(*store))
    std::cout << "visit " << gone.visit << " of " << to_text(zone.day(gone.at)) << ": may go since "
              << to_text(zone.day(gone.since)) << "\n";
  std::cout << counted(may_go.size())
            << ". A manager erases them, and visitors' names, on the page People; the records stay.\n";
  return 0;
}

}  // namespace wm::app
