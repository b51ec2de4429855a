#pragma once
// What is personal inside a record: kept beside it, while the record holds a hash that it cannot be guessed
// from.
#include <map>
#include <string>

namespace wm::db {

/// What is personal in a record by field ("born", "details", "note", "pin", "reason" …): the values, or their
/// hashes.
using ByField = std::map<std::string, std::string, std::less<>>;

struct Commitment {
  std::string salt;  // 16 random bytes, in hexadecimal
  std::string hash;  // of the salt's bytes, the field's name, a zero byte and the value; in hexadecimal
};

/// SHA-256 (FIPS 180-4) with a fresh salt.
Commitment commit_to(const std::string& field, const std::string& value);
std::string salted_hash(const std::string& salt, const std::string& field, const std::string& value);

}  // namespace wm::db
