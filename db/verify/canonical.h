#pragma once
// JSON in its one canonical form (RFC 8785, for text, whole numbers, truths, lists and objects): read without
// building anything, since a store has a million of them.
#include <forward_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace wm::verify {

/// The members of one object, each value as it stands in the text.
class Members {
 public:
  /// Nothing where the text is not one object in canonical form: a space, keys that are out of order (by
  /// their bytes) or twice, an escape that need not be, a number that is not whole, text that is not UTF-8.
  /// `keep` is emptied and used again.
  static bool read(std::string_view text, Members& keep);
  /// The same, and the members of the object that stands under a key of it, read at one go; none where there
  /// is no object.
  static bool read(std::string_view text, Members& keep, std::string_view key, Members& inner);

  /// The raw value; empty where there is none.
  std::string_view raw(std::string_view key) const;
  bool has(std::string_view key) const { return !raw(key).empty(); }
  /// The text that the value is, good until the members are read anew; nothing where it is no text.
  std::optional<std::string_view> text(std::string_view key) const;
  std::optional<std::int64_t> whole(std::string_view key) const;
  /// In order, each key with its raw value.
  const std::vector<std::pair<std::string_view, std::string_view>>& all() const { return members_; }
  /// The first key that is none of these; empty where all are.
  std::string_view unknown(std::initializer_list<std::string_view> keys) const;

 private:
  std::vector<std::pair<std::string_view, std::string_view>> members_;
  mutable std::forward_list<std::string> unescaped_;  // what text() gave that stands otherwise in the text
};

}  // namespace wm::verify
