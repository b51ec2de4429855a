#pragma once
// The tree over all records: a hash tree as RFC 6962 and RFC 9162, section 2.1, define it, with SHA-256.
// Leaves are counted from 0, sizes are numbers of leaves.
#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wm::ledger {

using Hash = std::array<std::uint8_t, 32>;
/// Hashes from the leaf's neighbour up to the root, or as consistency asks for them.
using Proof = std::vector<Hash>;

Hash sha256(std::string_view bytes);
/// SHA-256 of 0x00 and the bytes.
Hash leaf_hash(std::string_view leaf);
/// SHA-256 of 0x01 and both hashes.
Hash node_hash(const Hash& left, const Hash& right);
/// The root over all of them; SHA-256 of nothing where there are none.
Hash root_of(std::span<const Hash> leaves);

/// The right edge of a growing tree: the roots of the perfect subtrees that it is made of, largest first. All
/// that is needed to append and to say the root, in as many hashes as the size has ones in binary.
class Edge {
 public:
  void append(const Hash& leaf);
  std::uint64_t size() const { return size_; }
  Hash root() const;

  /// The hashes one after the other.
  std::string bytes() const;
  /// Nothing where the length is not that of a tree of this size.
  static std::optional<Edge> from(std::uint64_t size, std::string_view bytes);
  friend bool operator==(const Edge&, const Edge&) = default;

 private:
  std::uint64_t size_ = 0;
  std::vector<Hash> roots_;
};

/// That the leaf at `index` is in the tree over `leaves`; `index` is less than their number.
Proof inclusion_proof(std::span<const Hash> leaves, std::uint64_t index);
bool verify_inclusion(const Hash& leaf, std::uint64_t index, std::uint64_t size, const Proof& proof,
                      const Hash& root);

/// That the tree over the first `before` leaves only grew into the one over all; `before` is from 0 to their
/// number. Empty where `before` is 0 or all of them.
Proof consistency_proof(std::span<const Hash> leaves, std::uint64_t before);
/// A tree of size 0 goes before every other.
bool verify_consistency(std::uint64_t before, const Hash& root_before, std::uint64_t size, const Hash& root,
                        const Proof& proof);

/// Lower-case hexadecimal.
std::string to_hex(std::string_view bytes);
template <std::size_t N>
std::string to_hex(const std::array<std::uint8_t, N>& bytes) {
  return to_hex(std::string_view(reinterpret_cast<const char*>(bytes.data()), N));
}
/// The bytes that lower-case hexadecimal says; nothing where it is anything else.
std::optional<std::string> from_hex(std::string_view hex);
/// Exactly N bytes.
template <std::size_t N>
std::optional<std::array<std::uint8_t, N>> bytes_from_hex(std::string_view hex) {
  const auto bytes = from_hex(hex);
  if (!bytes || bytes->size() != N) return std::nullopt;
  std::array<std::uint8_t, N> out;
  std::copy(bytes->begin(), bytes->end(), out.begin());
  return out;
}

inline std::string_view as_text(const Hash& hash) {
  return {reinterpret_cast<const char*>(hash.data()), hash.size()};
}

}  // namespace wm::ledger
