#include "core/ledger/tree.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

using namespace wm;
using namespace wm::ledger;

namespace {

Hash hash(const char* hex) { return bytes_from_hex<32>(hex).value(); }

std::vector<Hash> leaves_of(std::uint64_t count) {
  std::vector<Hash> out;
  for (std::uint64_t i = 0; i < count; ++i) out.push_back(leaf_hash(std::to_string(i)));
  return out;
}

/// The leaves and the nodes that the published trees and proofs below are made of:
/// github.com/transparency-dev/merkle, testonly/constants.go.
std::vector<Hash> published_leaves() {
  std::vector<Hash> out;
  for (const char* leaf :
       {"", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f"})
    out.push_back(leaf_hash(from_hex(leaf).value()));
  return out;
}
const std::vector<Hash> published_roots = {
    hash("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"),
    hash("6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d"),
    hash("fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125"),
    hash("aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77"),
    hash("d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7"),
    hash("4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4"),
    hash("76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef"),
    hash("ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c"),
    hash("5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328")};
const Hash five = hash("bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b"),
           six_seven = hash("ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0"),
           two_three = hash("5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e"),
           one = hash("96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7"),
           four_to_eight = hash("6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4"),
           four_five = hash("0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a");

void flip(Hash& hash, unsigned bit) { hash[bit / 8] ^= static_cast<std::uint8_t>(1u << bit % 8); }

}  // namespace

TEST_CASE("SHA-256 gives the standard's own examples", "[ledger]") {
  // FIPS 180-4, the examples that NIST publishes with it.
  CHECK(to_hex(sha256("abc")) == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  CHECK(to_hex(sha256("")) == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  CHECK(to_hex(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")) ==
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  CHECK(to_hex(sha256(std::string(1'000'000, 'a'))) ==
        "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST_CASE("trees of the published leaves have the published roots", "[ledger]") {
  const auto leaves = published_leaves();
  for (std::size_t size = 0; size <= leaves.size(); ++size)
    CHECK(root_of(std::span(leaves).first(size)) == published_roots[size]);
}

TEST_CASE("a leaf's proof is the published one", "[ledger]") {
  // RFC 9162, 2.1.3, over the published leaves.
  const auto leaves = published_leaves();
  const auto proof = [&](std::uint64_t index, std::size_t size) {
    const Proof out = inclusion_proof(std::span(leaves).first(size), index);
    CHECK(verify_inclusion(leaves[index], index, size, out, published_roots[size]));
    return out;
  };
  CHECK(proof(5, 8) == Proof{five, six_seven, published_roots[4]});
  CHECK(proof(2, 3) == Proof{published_roots[2]});
  CHECK(proof(1, 5) == Proof{published_roots[1], two_three, five});
  CHECK(proof(0, 8) == Proof{one, two_three, four_to_eight});
}

TEST_CASE("a tree's growth is proved as published", "[ledger]") {
  // RFC 9162, 2.1.4, over the published leaves.
  const auto leaves = published_leaves();
  const auto proof = [&](std::uint64_t before, std::size_t size) {
    const Proof out = consistency_proof(std::span(leaves).first(size), before);
    CHECK(verify_consistency(before, published_roots[before], size, published_roots[size], out));
    return out;
  };
  CHECK(proof(6, 8) == Proof{four_five, six_seven, published_roots[4]});
  CHECK(proof(2, 5) == Proof{two_three, five});
  CHECK(proof(1, 8) == Proof{one, two_three, four_to_eight});
  CHECK(proof(8, 8).empty());
  CHECK(proof(0, 8).empty());
}

TEST_CASE("an edge has at each size the root of all its leaves, and comes back from its bytes", "[ledger]") {
  const auto leaves = leaves_of(200);
  Edge edge;
  for (std::size_t size = 0; size <= leaves.size(); ++size) {
    INFO(size);
    // Put together from halves, as the definition has it, rather than leaf by leaf.
    std::vector<Hash> level(leaves.begin(), leaves.begin() + size);
    while (level.size() > 1) {
      std::vector<Hash> above;
      for (std::size_t i = 0; i + 1 < level.size(); i += 2)
        above.push_back(node_hash(level[i], level[i + 1]));
      if (level.size() % 2 == 1) above.push_back(level.back());
      level = above;
    }
    CHECK(edge.root() == (level.empty() ? sha256("") : level[0]));
    CHECK(edge.size() == size);
    CHECK(Edge::from(size, edge.bytes()) == edge);
    CHECK_FALSE(Edge::from(size, edge.bytes() + "x"));
    CHECK_FALSE(Edge::from(size, edge.bytes() + std::string(32, 'x')));
    if (size > 0) CHECK_FALSE(Edge::from(size, edge.bytes().substr(32)));
    if (size < leaves.size()) edge.append(leaves[size]);
  }
}

TEST_CASE("every leaf of every small tree is proved, and every earlier tree", "[ledger]") {
  const auto leaves = leaves_of(64);
  for (std::size_t size = 0; size <= leaves.size(); ++size) {
    const auto all = std::span(leaves).first(size);
    const Hash root = root_of(all);
    for (std::size_t i = 0; i < size; ++i) {
      const Proof proof = inclusion_proof(all, i);
      REQUIRE(verify_inclusion(leaves[i], i, size, proof, root));
      for (std::size_t j = 0; j <= size; ++j)
        REQUIRE(verify_inclusion(leaves[i], j, size, proof, root) == (i == j));
    }
    for (std::size_t before = 0; before <= size; ++before) {
      const Hash old_root = root_of(all.first(before));
      const Proof proof = consistency_proof(all, before);
      REQUIRE(verify_consistency(before, old_root, size, root, proof));
      REQUIRE_FALSE(verify_consistency(before, leaf_hash("else"), size, root, proof));
      REQUIRE_FALSE(verify_consistency(before, old_root, size, leaf_hash("else"), proof) & (before > 0));
      REQUIRE_FALSE(verify_consistency(size + 1, old_root, size, root, proof));
    }
  }
}

TEST_CASE("any bit changed in a proof, a leaf or a root makes it fail", "[ledger]") {
  const bool holds = rc::check("flipped bits", [] {
    const auto leaves = leaves_of(*rc::gen::inRange(2, 200));
    const auto index = *rc::gen::inRange<std::uint64_t>(0, leaves.size());
    const auto before = *rc::gen::inRange<std::uint64_t>(1, leaves.size());
    const auto bit = *rc::gen::inRange(0u, 256u);
    const Hash root = root_of(leaves), old_root = root_of(std::span(leaves).first(before));
    const auto flipped = [&](Hash hash) { return flip(hash, bit), hash; };

    Proof proof = inclusion_proof(leaves, index);
    RC_ASSERT(verify_inclusion(leaves[index], index, leaves.size(), proof, root));
    RC_ASSERT(!verify_inclusion(flipped(leaves[index]), index, leaves.size(), proof, root));
    RC_ASSERT(!verify_inclusion(leaves[index], index, leaves.size(), proof, flipped(root)));
    const auto step = *rc::gen::inRange<std::size_t>(0, proof.size());
    flip(proof[step], bit);
    RC_ASSERT(!verify_inclusion(leaves[index], index, leaves.size(), proof, root));
    proof.erase(proof.begin() + step);
    RC_ASSERT(!verify_inclusion(leaves[index], index, leaves.size(), proof, root));

    Proof growth = consistency_proof(leaves, before);
    RC_ASSERT(verify_consistency(before, old_root, leaves.size(), root, growth));
    RC_ASSERT(!verify_consistency(before, flipped(old_root), leaves.size(), root, growth));
    RC_ASSERT(!verify_consistency(before, old_root, leaves.size(), flipped(root), growth));
    const auto part = *rc::gen::inRange<std::size_t>(0, growth.size());
    flip(growth[part], bit);
    RC_ASSERT(!verify_consistency(before, old_root, leaves.size(), root, growth));
  });
  REQUIRE(holds);
}

TEST_CASE("hexadecimal is lower-case, of whole bytes and nothing else", "[ledger]") {
  CHECK(to_hex(std::string("\x00\x1f\xff", 3)) == "001fff");
  CHECK(from_hex("001fff") == std::string("\x00\x1f\xff", 3));
  for (const char* text : {"0", "0g", "AB", " 00", "0x00"}) CHECK_FALSE(from_hex(text));
  CHECK_FALSE(bytes_from_hex<32>("00"));
}
