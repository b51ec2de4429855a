#pragma once
// PINs: what one must look like, what is kept of it, the key that it opens, and how wrong ones slow a station
// down.
#include <algorithm>
#include <optional>
#include <string>

#include "core/ledger/signing.h"
#include "core/problem.h"
#include "core/time/instant.h"
#include "db/store.h"

namespace wm::db {

/// What is kept of a PIN: its argon2id hash with its own salt, as libsodium writes it, and on a line of its
/// own the signing key, sealed under the PIN and the secret outside the store.
///
/// Four digits are tried through within minutes by whoever has the file. They then know the PIN, which is of
/// use only at the shop's own station; the key stays shut to them, since the secret is not in the file.
struct NewPin {
  std::string kept, key;  // the public key in hexadecimal
};
/// Refuses what is not 4 to 12 digits.
Expected<NewPin> new_pin(const std::string& pin, const StoreOptions& options);
bool pin_fits(const std::string& pin, const std::string& kept);
/// The key that a PIN which fits opens. Nothing where there is none, or where it was sealed with another
/// secret: on another computer.
std::optional<ledger::SigningKey> key_of(const std::string& pin, const std::string& kept,
                                         const StoreOptions& options);

/// After three wrong PINs in a row each further one doubles the wait: 5 s, 10 s … up to 15 minutes. It slows
/// a station down, whoever sits there, and nobody anywhere else.
class PinDelay {
 public:
  PinDelay() = default;
  /// Goes on with what the file says, and keeps it there; a file that can't be read or written changes
  /// nothing.
  explicit PinDelay(std::string file);
  /// Refuses while there is still a wait, saying how long.
  Expected<void> check(Instant now) const;
  void wrong(Instant now);
  void right();

 private:
  void keep() const;
  std::string file_;
  int wrong_ = 0;
  Instant from_, until_;
};

}  // namespace wm::db
