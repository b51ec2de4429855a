#include "db/pin.h"

#include <sodium.h>

#include <array>

#include "db/refuse.h"

namespace wm::db {

Expected<std::string> hash_pin(const std::string& pin, const StoreOptions& options) {
  const bool digits = std::all_of(pin.begin(), pin.end(), [](char c) { return c >= '0' && c <= '9'; });
  if (!digits || pin.size() < 4 || pin.size() > 12)
    return refuse("pin", "A PIN is 4 to 12 digits.", "Choose one of digits alone, that is no date of yours.");
  const auto work = options.pin_operations ? options.pin_operations : crypto_pwhash_OPSLIMIT_INTERACTIVE;
  const auto memory = options.pin_memory ? options.pin_memory : crypto_pwhash_MEMLIMIT_INTERACTIVE;
  std::array<char, crypto_pwhash_STRBYTES> hash;
  if (crypto_pwhash_str_alg(hash.data(), pin.data(), pin.size(), work, memory,
                            crypto_pwhash_ALG_ARGON2ID13) != 0)
    return refuse("pin", "There is not enough memory to keep a PIN safely.",
                  "Close other programs and try again.");
  return std::string(hash.data());
}

bool pin_fits(const std::string& pin, const std::string& hash) {
  return crypto_pwhash_str_verify(hash.c_str(), pin.data(), pin.size()) == 0;
}

Expected<void> PinDelay::check(Instant now) const {
  // A clock set back must not lock the station for longer than the wait itself.
  if (now >= until_ || now < from_) return {};
  return refuse("pin", "Too many wrong PINs here.",
                "Wait " + std::to_string(until_.seconds - now.seconds) + " seconds, then try again.");
}

void PinDelay::wrong(Instant now) {
  ++wrong_;
  if (wrong_ < 3) return;
  const std::int64_t wait = std::min<std::int64_t>(900, 5ll << std::min(wrong_ - 3, 8));
  from_ = now;
  until_ = now + wait;
}

}  // namespace wm::db
