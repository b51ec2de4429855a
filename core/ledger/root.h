#pragma once
// Tree heads: what the tree was at a moment, kept outside the store. On paper in a short form, in files as a
// line that a station's key has signed.
#include <cstdint>
#include <string>
#include <string_view>

#include "core/ledger/signing.h"
#include "core/ledger/tree.h"
#include "core/problem.h"
#include "core/time/instant.h"

namespace wm::ledger {

struct Head {
  std::uint64_t size = 0;
  Hash root{};
  Instant at;
  friend bool operator==(const Head&, const Head&) = default;
};

/// A head as a paper has it: the size and the first 130 bits of the root, as 26 letters and figures.
struct ShortHead {
  std::uint64_t size = 0;
  std::string letters;
  friend bool operator==(const ShortHead&, const ShortHead&) = default;
};
ShortHead shortened(const Head& head);
/// Of a size that is the same already: whether the root begins as the short form says.
bool matches(const ShortHead& head, const Hash& root);

/// "1204-7K3M-0QX2-…": the size, then seven groups of four. The letters are those of Crockford's base 32 (no
/// I, L, O, U); the last two are a check.
std::string to_text(const ShortHead& head);
/// Reads it back as somebody types it: spaces and hyphens anywhere or nowhere, small letters, O for 0, I or L
/// for 1. One mistyped character, or two neighbours swapped, are always refused; anything else wrong but once
/// in a thousand.
Expected<ShortHead> read_short(std::string_view text);

/// A head with a station's signature.
struct SignedHead {
  Head head;
  PublicKey key{};
  Signature signature{};
  friend bool operator==(const SignedHead&, const SignedHead&) = default;
};
SignedHead sign(const Head& head, const SigningKey& key);
/// "witnessmark head 1 SIZE ROOT TIME KEY SIGNATURE" without a line break. What is signed: "witnessmark head
/// 1", a line break, "SIZE ROOT TIME".
std::string to_line(const SignedHead& head);
/// Reads exactly that form, and refuses a signature that does not hold. Whose key it is, is for the caller to
/// know.
Expected<SignedHead> read_line(std::string_view line);

}  // namespace wm::ledger
