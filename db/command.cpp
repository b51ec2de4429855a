#include "db/command.h"

namespace wm::db {

WM_COMPILED_HERE(Action);

}  // namespace wm::db
