#include "app/cli/move_shop.h"

#include <iostream>

#include "app/cli/application.h"
#include "app/cli/refusal.h"
#include "db/move.h"
#include "db/sql/server.h"

namespace wm::app {

int move_shop(const std::string& from, const std::string& to) {
  const Application application;
  const auto head = db::move_store(from, to);
  if (!head) return refuse(head.error());
  std::cout << head->size - 1 << " records are in " << db::shown_name(to)
            << ", read back and equal to those of " << db::shown_name(from)
            << ".\nThe root is the same on both sides: " << ledger::to_text(ledger::shortened(*head)) << ".\n"
            << "The shop that was copied stays as it was. Go on in the new place, and nowhere else: what is "
               "entered in the old one from "
               "now on is not in the new one.\n";
  return 0;
}

}  // namespace wm::app
