#pragma once
// A JSON text (RFC 8259) as a tree that can say where in the file each of its values stands.
//
// Why not a ready-made tree: those keep one of two equal keys, forget the order of members, turn "1.0" and
// "1e3" into numbers like any other, and cannot tell a value's place. The text itself is read by
// nlohmann-json; only the tree is ours.
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem.h"

namespace wm::json {

/// `whole` is a number written as an integer that fits 64 bits; `other_number` every other one.
enum class Kind : std::uint8_t { null, truth, whole, other_number, text, list, object };

class Tree;

/// A value inside a tree that must outlive it. Cheap to copy.
class Value {
 public:
  Kind kind() const;
  bool truth() const;                     // of Kind::truth
  std::int64_t whole() const;             // of Kind::whole
  std::string_view text() const;          // of Kind::text, UTF-8
  std::size_t size() const;               // how many members or items; 0 where it is neither list nor object
  Value operator[](std::size_t i) const;  // the i-th member's value or item, in order of the file
  /// The key under which it stands in an object; empty elsewhere.
  std::string_view key() const;
  /// Whether an earlier member of the same object has the same key.
  bool repeated() const;
  /// The first member with that key.
  std::optional<Value> find(std::string_view key) const;
  /// The value that a JSON pointer names, counted from this one.
  std::optional<Value> at(std::string_view pointer) const;
  /// RFC 6901; empty for the whole text.
  std::string pointer() const;
  /// Values in order of where they begin in the file have rising places.
  std::size_t place() const { return index_; }

 private:
  friend class Tree;
  Value(const Tree* tree, std::size_t index) : tree_(tree), index_(index) {}
  const Tree* tree_;
  std::size_t index_;
};

/// All values of one text, kept in one array: however deep the text nests, no call does.
class Tree {
 public:
  /// Refuses what isn't JSON with "line L, column C" (columns counted in code points): wrong syntax, UTF-8
  /// that isn't, anything after the one value. A byte order mark at the start is passed over. Refuses what is
  /// larger than 512 MiB or has more than 30 million values.
  static Expected<Tree> parse(std::string_view text);

  Value root() const { return {this, 0}; }
  /// Every value whose key stood in its object before, in order of the file.
  std::vector<Value> repeated() const;

 private:
  friend class Value;
  friend class TreeBuilder;
  struct Node {
    Kind kind = Kind::null;
    bool in_object = false, repeated = false;
    std::size_t parent = 0, position = 0;  // the position among its parent's members or items
    std::size_t key_at = 0, key_size = 0;  // in texts_
    std::size_t from = 0, size = 0;        // in texts_, or in children_
    std::int64_t number = 0;               // also 0 or 1 for a truth
  };
  std::vector<Node> nodes_;  // in order of where they begin
  std::vector<std::size_t> children_;
  std::string texts_;
};

}  // namespace wm::json
