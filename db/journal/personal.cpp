#include "db/journal/personal.h"

#include <sodium.h>

#include <array>

namespace wm::db {
namespace {

std::string hex(const unsigned char* bytes, std::size_t count) {
  std::string out(count * 2 + 1, '\0');
  sodium_bin2hex(out.data(), out.size(), bytes, count);
  out.pop_back();
  return out;
}

}  // namespace

Commitment commit_to(const std::string& field, const std::string& value) {
  std::array<unsigned char, 16> bytes;
  randombytes_buf(bytes.data(), bytes.size());
  const std::string salt = hex(bytes.data(), bytes.size());
  return {salt, salted_hash(salt, field, value)};
}

std::string salted_hash(const std::string& salt, const std::string& field, const std::string& value) {
  std::string message(salt.size() / 2, '\0');
  std::size_t length = 0;
  sodium_hex2bin(reinterpret_cast<unsigned char*>(message.data()), message.size(), salt.data(), salt.size(),
                 nullptr, &length, nullptr);
  message += field + '\0' + value;
  std::array<unsigned char, crypto_hash_sha256_BYTES> hash;
  crypto_hash_sha256(hash.data(), reinterpret_cast<const unsigned char*>(message.data()), message.size());
  return hex(hash.data(), hash.size());
}

}  // namespace wm::db
