#include "core/ledger/signing.h"

#include <sodium.h>

#include <charconv>
#include <optional>
#include <vector>

#include "core/ledger/raw.h"

namespace wm::ledger {
namespace {

using Salt = std::array<std::uint8_t, crypto_pwhash_SALTBYTES>;
using Nonce = std::array<std::uint8_t, crypto_secretbox_NONCEBYTES>;
using Box = std::array<std::uint8_t, 32 + crypto_secretbox_MACBYTES>;

/// More than this no lock of ours asks for: a forged text must not hold up the station.
constexpr LockCost most{16, 1ull << 30};

struct Sealed {
  LockCost cost;
  Salt salt;
  Nonce nonce;
  Box box;
};

std::string check_of(std::string_view text) { return to_hex(sha256(text)).substr(0, 8); }

std::string written(const Sealed& sealed) {
  std::string text = "1$" + std::to_string(sealed.cost.operations) + "$" +
                     std::to_string(sealed.cost.memory) + "$" + to_hex(sealed.salt) + "$" +
                     to_hex(sealed.nonce) + "$" + to_hex(sealed.box);
  return text + "$" + check_of(text);
}

std::vector<std::string_view> parts(std::string_view text) {
  std::vector<std::string_view> out;
  for (std::size_t end; (end = text.find('$')) != std::string_view::npos; text.remove_prefix(end + 1))
    out.push_back(text.substr(0, end));
  out.push_back(text);
  return out;
}

std::optional<std::uint64_t> number(std::string_view text) {
  std::uint64_t out = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), out);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return out;
}

std::optional<Sealed> read(std::string_view text) {
  const auto part = parts(text);
  if (part.size() != 7 || part[0] != "1") return std::nullopt;
  if (part[6] != check_of(text.substr(0, text.size() - part[6].size() - 1))) return std::nullopt;
  const auto operations = number(part[1]), memory = number(part[2]);
  const auto salt = bytes_from_hex<std::tuple_size_v<Salt>>(part[3]);
  const auto nonce = bytes_from_hex<std::tuple_size_v<Nonce>>(part[4]);
  const auto box = bytes_from_hex<std::tuple_size_v<Box>>(part[5]);
  if (!operations || !memory || !salt || !nonce || !box) return std::nullopt;
  if (*operations > most.operations || *memory > most.memory) return std::nullopt;
  if (*operations < crypto_pwhash_OPSLIMIT_MIN || *memory < crypto_pwhash_MEMLIMIT_MIN) return std::nullopt;
  return Sealed{{*operations, *memory}, *salt, *nonce, *box};
}

/// The key that the box is locked with; nothing where there is not the memory for it.
std::optional<Secret> lock_of(std::string_view pin, const Secret& outside, const Salt& salt, LockCost cost) {
  Secret mixed, lock;
  crypto_generichash(mixed.data(), mixed.bytes().size(), raw(pin), pin.size(), outside.bytes().data(),
                     outside.bytes().size());
  const int done = crypto_pwhash(lock.data(), lock.bytes().size(),
                                 reinterpret_cast<const char*>(mixed.bytes().data()), mixed.bytes().size(),
                                 salt.data(), cost.operations, cost.memory, crypto_pwhash_ALG_ARGON2ID13);
  if (done != 0) return std::nullopt;
  return lock;
}

}  // namespace

Secret::~Secret() { sodium_memzero(bytes_.data(), bytes_.size()); }

Secret Secret::random() {
  Secret out;
  randombytes_buf(out.data(), out.bytes_.size());
  return out;
}

bool operator==(const Secret& a, const Secret& b) {
  return sodium_memcmp(a.bytes_.data(), b.bytes_.data(), a.bytes_.size()) == 0;
}

namespace {

/// libsodium signs with the seed and the public key, one after the other.
struct Expanded {
  std::array<unsigned char, crypto_sign_SECRETKEYBYTES> bytes;
  PublicKey public_key;
  explicit Expanded(const Secret& seed) {
    crypto_sign_seed_keypair(public_key.data(), bytes.data(), seed.bytes().data());
  }
  ~Expanded() { sodium_memzero(bytes.data(), bytes.size()); }
  Expanded(const Expanded&) = delete;
  Expanded& operator=(const Expanded&) = delete;
};

}  // namespace

SigningKey::SigningKey(const Secret& seed) : seed_(seed), public_key_(Expanded(seed).public_key) {}

Signature SigningKey::sign(std::string_view message) const {
  Signature out;
  crypto_sign_detached(out.data(), nullptr, raw(message), message.size(), Expanded(seed_).bytes.data());
  return out;
}

bool verify(const PublicKey& key, std::string_view message, const Signature& signature) {
  return crypto_sign_verify_detached(signature.data(), raw(message), message.size(), key.data()) == 0;
}

std::string checkout_message(std::span<const Hash> records) {
  std::string out = "witnessmark check-out 1\n";
  for (const Hash& record : records) out.append(as_text(record));
  return out;
}

LockCost usual_cost() { return {crypto_pwhash_OPSLIMIT_INTERACTIVE, crypto_pwhash_MEMLIMIT_INTERACTIVE}; }
LockCost least_cost() { return {crypto_pwhash_OPSLIMIT_MIN, crypto_pwhash_MEMLIMIT_MIN}; }

Expected<std::string> seal(const Secret& seed, std::string_view pin, const Secret& outside, LockCost cost) {
  Sealed sealed{cost, {}, {}, {}};
  randombytes_buf(sealed.salt.data(), sealed.salt.size());
  randombytes_buf(sealed.nonce.data(), sealed.nonce.size());
  const auto lock = lock_of(pin, outside, sealed.salt, cost);
  if (!lock)
    return tl::unexpected(Problem{"pin", "There is not enough memory to lock a signing key.",
                                  "Close other programs and try again."});
  crypto_secretbox_easy(sealed.box.data(), seed.bytes().data(), seed.bytes().size(), sealed.nonce.data(),
                        lock->bytes().data());
  return written(sealed);
}

tl::expected<SigningKey, NotOpened> open(std::string_view text, std::string_view pin, const Secret& outside) {
  const auto sealed = read(text);
  if (!sealed) return tl::unexpected(NotOpened::damaged);
  const auto lock = lock_of(pin, outside, sealed->salt, sealed->cost);
  if (!lock) return tl::unexpected(NotOpened::no_memory);
  Secret seed;
  if (crypto_secretbox_open_easy(seed.data(), sealed->box.data(), sealed->box.size(), sealed->nonce.data(),
                                 lock->bytes().data()) != 0)
    return tl::unexpected(NotOpened::wrong_pin);
  return SigningKey(seed);
}

}  // namespace wm::ledger
