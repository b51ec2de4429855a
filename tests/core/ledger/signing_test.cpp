#include "core/ledger/signing.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

using namespace wm;
using namespace wm::ledger;

namespace {

SigningKey key_of(const char* seed) { return SigningKey(Secret(bytes_from_hex<32>(seed).value())); }

}  // namespace

TEST_CASE("Ed25519 signs as published", "[ledger]") {
  struct Case {
    const char *seed, *message, *key, *signature;
  };
  // RFC 8032, 7.1, TEST 1 to TEST 3.
  const Case cases[] = {
      {"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60", "",
       "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
       "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46b"
       "d25bf5f0595bbe24655141438e7a100b"},
      {"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb", "72",
       "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
       "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c"
       "387b2eaeb4302aeeb00d291612bb0c00"},
      {"c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7", "af82",
       "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025",
       "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc659"
       "4a7c15e9716ed28dc027beceea1ec40a"}};
  for (const Case& c : cases) {
    const SigningKey key = key_of(c.seed);
    const std::string message = from_hex(c.message).value();
    CHECK(to_hex(key.public_key()) == c.key);
    CHECK(to_hex(key.sign(message)) == c.signature);
    CHECK(verify(key.public_key(), message, key.sign(message)));
  }
}

TEST_CASE("a signature holds for its own key and bytes alone", "[ledger]") {
  const bool holds = rc::check("signatures", [] {
    const SigningKey key = SigningKey::random();
    std::string message = *rc::gen::nonEmpty(rc::gen::string<std::string>());
    Signature signature = key.sign(message);
    RC_ASSERT(verify(key.public_key(), message, signature));
    RC_ASSERT(!verify(SigningKey::random().public_key(), message, signature));
    const auto at = *rc::gen::inRange<std::size_t>(0, message.size());
    const auto bit = static_cast<unsigned char>(1 << *rc::gen::inRange(0, 8));
    signature[*rc::gen::inRange<std::size_t>(0, signature.size())] ^= bit;
    RC_ASSERT(!verify(key.public_key(), message, signature));
    signature = key.sign(message);
    message[at] = static_cast<char>(message[at] ^ bit);
    RC_ASSERT(!verify(key.public_key(), message, signature));
  });
  REQUIRE(holds);
}

TEST_CASE("what is signed of a check-out says so, then the records' hashes in order", "[ledger]") {
  const std::vector<Hash> records = {leaf_hash("a"), leaf_hash("b")};
  CHECK(checkout_message(records) ==
        "witnessmark check-out 1\n" + std::string(as_text(records[0])) + std::string(as_text(records[1])));
}

TEST_CASE("a sealed key opens with its PIN and the secret outside", "[ledger]") {
  const SigningKey key = SigningKey::random();
  const Secret outside = Secret::random();
  const std::string sealed = seal(key.seed(), "2468", outside, least_cost()).value();
  CHECK(sealed != seal(key.seed(), "2468", outside, least_cost()).value());
  CHECK(open(sealed, "2468", outside).value().public_key() == key.public_key());
  CHECK(open(sealed, "2469", outside).error() == NotOpened::wrong_pin);
  CHECK(open(sealed, "2468", Secret()).error() == NotOpened::wrong_pin);
}

TEST_CASE("a damaged key is told apart from a wrong PIN, whichever character it is", "[ledger]") {
  const std::string sealed = seal(Secret::random(), "2468", Secret(), least_cost()).value();
  for (std::size_t i = 0; i < sealed.size(); ++i) {
    std::string other = sealed;
    other[i] = other[i] == '1' ? '2' : '1';
    INFO(other);
    CHECK(open(other, "2468", Secret()).error() == NotOpened::damaged);
    CHECK(open(sealed.substr(0, i), "2468", Secret()).error() == NotOpened::damaged);
  }
}

TEST_CASE("a lock that asks for more than any of ours is not tried", "[ledger]") {
  const std::string sealed = seal(Secret::random(), "2468", Secret(), {1, 8192}).value();
  for (const char* cost : {"17$8192", "1$1073741825", "0$8192", "1$8191", "1$99999999999999999999"}) {
    std::string other = "1$" + std::string(cost) + sealed.substr(sizeof("1$1$8192") - 1);
    other.resize(other.size() - 8);
    other += to_hex(sha256(std::string_view(other).substr(0, other.size() - 1))).substr(0, 8);
    INFO(other);
    CHECK(open(other, "2468", Secret()).error() == NotOpened::damaged);
  }
}
