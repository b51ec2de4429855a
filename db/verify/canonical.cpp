#include "db/verify/canonical.h"

#include <algorithm>
#include <charconv>
#include <cstdint>

namespace wm::verify {
namespace {

constexpr int deepest = 64;
constexpr std::int64_t largest = 9007199254740991;  // what every reader of JSON keeps whole: 2^53 - 1

/// How many bytes the UTF-8 sequence at the start takes; 0 where there is none.
std::size_t sequence(std::string_view text) {
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u; };
  const auto more = [&](std::size_t i) { return (byte(i) & 0xc0) == 0x80; };
  const unsigned first = byte(0), second = byte(1);
  if (first < 0x80) return 1;
  if (first < 0xc2 || first > 0xf4 || !more(1)) return 0;
  if (first < 0xe0) return 2;
  if (!more(2)) return 0;
  if (first < 0xf0) return (first == 0xe0 && second < 0xa0) || (first == 0xed && second > 0x9f) ? 0 : 3;
  if ((first == 0xf0 && second < 0x90) || (first == 0xf4 && second > 0x8f)) return 0;
  return more(3) ? 4 : 0;
}

int hex_value(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

/// The byte that an escape stands for, and how long the escape is: 0 where it is not one of those that must
/// be.
std::pair<char, std::size_t> escaped(std::string_view text) {
  static constexpr std::string_view names = "\"\\bfnrt", meanings = "\"\\\b\f\n\r\t";
  if (text.size() < 2) return {};
  if (const auto at = names.find(text[1]); at != std::string_view::npos) return {meanings[at], 2};
  if (text.size() < 6 || text.substr(1, 3) != "u00") return {};
  const int high = hex_value(text[4]), low = hex_value(text[5]);
  if (high < 0 || high > 1 || low < 0) return {};
  const char meant = static_cast<char>(high << 4 | low);
  return meanings.find(meant) == std::string_view::npos ? std::pair(meant, std::size_t{6})
                                                        : std::pair('\0', std::size_t{});
}

std::string plain(std::string_view raw) {
  std::string out;
  for (std::string_view rest = raw.substr(1, raw.size() - 2); !rest.empty();) {
    const auto [meant, length] = rest[0] == '\\' ? escaped(rest) : std::pair(rest[0], std::size_t{1});
    out.push_back(meant);
    rest.remove_prefix(length);
  }
  return out;
}

/// Reads onwards from the start of a text; each says whether what it read is canonical.
class Scanner {
 public:
  explicit Scanner(std::string_view text) : text_(text) {}
  bool at_end() const { return at_ == text_.size(); }

  bool value(int depth) {
    if (at_end() || depth > deepest) return false;
    switch (text_[at_]) {
      case '{':
        return object(depth, [](std::string_view, std::string_view) {});
      case '[':
        return list(depth);
      case '"':
        return string();
      case 't':
        return word("true");
      case 'f':
        return word("false");
      case 'n':
        return word("null");
      default:
        return number();
    }
  }

  template <class Each>
  bool object(int depth, const Each& each) {
    if (!take('{')) return false;
    if (take('}')) return true;
    std::string_view before;
    do {
      const std::size_t key_at = at_;
      if (!string()) return false;
      const std::string_view key = text_.substr(key_at, at_ - key_at);
      if (!before.empty() && !comes_before(before, key)) return false;
      before = key;
      if (!take(':')) return false;
      const std::size_t value_at = at_;
      if (!value(depth + 1)) return false;
      each(key.substr(1, key.size() - 2), text_.substr(value_at, at_ - value_at));
    } while (take(','));
    return take('}');
  }

 private:
  static bool comes_before(std::string_view a, std::string_view b) {
    if (a.find('\\') == std::string_view::npos && b.find('\\') == std::string_view::npos)
      return a.substr(0, a.size() - 1) < b.substr(0, b.size() - 1);
    return plain(a) < plain(b);
  }

  bool take(char c) {
    if (at_end() || text_[at_] != c) return false;
    ++at_;
    return true;
  }
  bool word(std::string_view expected) {
    if (text_.substr(at_, expected.size()) != expected) return false;
    at_ += expected.size();
    return true;
  }
  bool list(int depth) {
    if (!take('[')) return false;
    if (take(']')) return true;
    do {
      if (!value(depth + 1)) return false;
    } while (take(','));
    return take(']');
  }
  bool string() {
    if (!take('"')) return false;
    while (!at_end()) {
      const char c = text_[at_];
      std::size_t length = 1;
      if (c == '"') return ++at_, true;
      if (c == '\\') length = escaped(text_.substr(at_)).second;
      if (static_cast<unsigned char>(c) < 0x20) return false;
      if (static_cast<unsigned char>(c) >= 0x80) length = sequence(text_.substr(at_));
      if (length == 0) return false;
      at_ += length;
    }
    return false;
  }
  bool number() {
    const std::size_t from = at_;
    std::int64_t read = 0;
    const auto [end, error] = std::from_chars(text_.data() + at_, text_.data() + text_.size(), read);
    at_ = static_cast<std::size_t>(end - text_.data());
    const std::string_view digits = text_.substr(from, at_ - from);
    if (error != std::errc() || read > largest || read < -largest) return false;
    const std::string_view figures = digits.substr(digits[0] == '-');
    return read == 0 ? digits == "0" : figures[0] != '0';
  }

  std::string_view text_;
  std::size_t at_ = 0;
};

}  // namespace

bool Members::read(std::string_view text, Members& keep) {
  keep.members_.clear();
  Scanner scanner(text);
  return scanner.object(0, [&](std::string_view key, std::string_view value) {
    keep.members_.emplace_back(key, value);
  }) && scanner.at_end();
}

std::string_view Members::raw(std::string_view key) const {
  for (const auto& [name, value] : members_)
    if (name == key) return value;
  return {};
}

std::optional<std::string> Members::text(std::string_view key) const {
  const std::string_view value = raw(key);
  if (value.empty() || value[0] != '"') return std::nullopt;
  if (value.find('\\') == std::string_view::npos) return std::string(value.substr(1, value.size() - 2));
  return plain(value);
}

std::optional<std::int64_t> Members::whole(std::string_view key) const {
  const std::string_view value = raw(key);
  std::int64_t out = 0;
  const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), out);
  if (value.empty() || error != std::errc() || end != value.data() + value.size()) return std::nullopt;
  return out;
}

std::string_view Members::unknown(std::initializer_list<std::string_view> keys) const {
  for (const auto& [name, value] : members_)
    if (std::find(keys.begin(), keys.end(), name) == keys.end()) return name;
  return {};
}

}  // namespace wm::verify
