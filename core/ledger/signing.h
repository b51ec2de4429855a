#pragma once
// Signatures (Ed25519, RFC 8032), and a signing key locked by a PIN.
#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "core/ledger/tree.h"
#include "core/problem.h"

namespace wm::ledger {

using PublicKey = std::array<std::uint8_t, 32>;
using Signature = std::array<std::uint8_t, 64>;

/// 32 bytes that nobody else may know; wiped when it goes.
class Secret {
 public:
  Secret() = default;
  explicit Secret(const std::array<std::uint8_t, 32>& bytes) : bytes_(bytes) {}
  Secret(const Secret&) = default;
  Secret& operator=(const Secret&) = default;
  ~Secret();
  static Secret random();
  const std::array<std::uint8_t, 32>& bytes() const { return bytes_; }
  std::uint8_t* data() { return bytes_.data(); }
  friend bool operator==(const Secret& a, const Secret& b);

 private:
  std::array<std::uint8_t, 32> bytes_{};
};

/// A key to sign with; wiped when it goes.
class SigningKey {
 public:
  explicit SigningKey(const Secret& seed);
  static SigningKey random() { return SigningKey(Secret::random()); }
  const PublicKey& public_key() const { return public_key_; }
  const Secret& seed() const { return seed_; }
  Signature sign(std::string_view message) const;

 private:
  Secret seed_;
  PublicKey public_key_{};
};

bool verify(const PublicKey& key, std::string_view message, const Signature& signature);

/// What an assessor signs at the end of a check-out: a line that says so, then the hashes of the records of
/// that commit in their order. The line keeps a signature for one purpose from serving another.
std::string checkout_message(std::span<const Hash> records);

/// How long one try of a PIN takes, and how much memory: libsodium's measures for argon2id.
struct LockCost {
  std::uint64_t operations;
  std::uint64_t memory;  // bytes
};
/// Half a second or so, and 64 MiB.
LockCost usual_cost();
/// For tests alone.
LockCost least_cost();

/// The seed of a key as text, encrypted under argon2id of the PIN and of a secret kept outside the store,
/// without which a PIN of few digits would be tried through within minutes. `outside` is Secret{} where a
/// long passphrase stands alone. The text: "1$operations$memory$salt$nonce$box$check", the last four in
/// hexadecimal; `check` is the first 4 bytes of SHA-256 of all before its "$".
Expected<std::string> seal(const Secret& seed, std::string_view pin, const Secret& outside, LockCost cost);

enum class NotOpened {
  wrong_pin,  // or another secret outside: nobody can tell which
  damaged,    // the text is not one that `seal` wrote
  no_memory,
};
tl::expected<SigningKey, NotOpened> open(std::string_view sealed, std::string_view pin,
                                         const Secret& outside);

}  // namespace wm::ledger
