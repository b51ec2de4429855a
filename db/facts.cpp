#include "db/facts.h"

namespace wm::db {

WM_COMPILED_HERE(ShopFact);

}  // namespace wm::db
