#pragma once
// PINs: what one must look like, its hash, and how wrong ones slow a station down.
#include <algorithm>
#include <string>

#include "core/problem.h"
#include "core/time/instant.h"
#include "db/store.h"

namespace wm::db {

/// Argon2id with its own salt, as libsodium writes it. Refuses what is not 4 to 12 digits.
Expected<std::string> hash_pin(const std::string& pin, const StoreOptions& options);
bool pin_fits(const std::string& pin, const std::string& hash);

/// After three wrong PINs in a row each further one doubles the wait: 5 s, 10 s … up to 15 minutes.
class PinDelay {
 public:
  /// Refuses while there is still a wait, saying how long.
  Expected<void> check(Instant now) const;
  void wrong(Instant now);
  void right() { *this = {}; }

 private:
  int wrong_ = 0;
  Instant from_, until_;
};

}  // namespace wm::db
