#include "db/verify/canonical.h"

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <cstring>

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

/// Most names differ in length or in the first letter, and this is asked some fifty times a record.
bool is(std::string_view name, std::string_view key) {
  return name.size() == key.size() && (key.empty() || name[0] == key[0]) && name == key;
}

/// What a text means that stands so between its quotes.
std::string plain(std::string_view raw) {
  std::string out;
  for (std::string_view rest = raw; !rest.empty();) {
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
    return value(depth, [](std::string_view, std::string_view) {});
  }
  /// `each` is given an object's members, where the value is one.
  template <class Each>
  bool value(int depth, const Each& each) {
    if (at_end() || depth > deepest) return false;
    switch (text_[at_]) {
      case '{':
        return object(depth, each);
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
    return object(depth, each, {}, each);
  }
  /// `within` is given the members of the object under `inner`.
  template <class Each, class Within>
  bool object(int depth, const Each& each, std::string_view inner, const Within& within) {
    if (!take('{')) return false;
    if (take('}')) return true;
    std::optional<Text> before;
    do {
      const std::optional<Text> key = name();
      if (!key || (before && !comes_before(*before, *key)) || !take(':')) return false;
      before = key;
      const std::size_t value_at = at_;
      if (!(!inner.empty() && is(key->raw, inner) ? value(depth + 1, within) : value(depth + 1)))
        return false;
      each(key->raw, text_.substr(value_at, at_ - value_at));
    } while (take(','));
    return take('}');
  }

 private:
  struct Text {
    std::string_view raw;  // between the quotes
    bool escapes = false;
  };

  std::optional<Text> name() {
    const std::size_t from = at_ + 1;
    const std::size_t before = escapes_;
    if (!string()) return std::nullopt;
    return Text{text_.substr(from, at_ - 1 - from), before != escapes_};
  }
  static bool comes_before(const Text& a, const Text& b) {
    return a.escapes || b.escapes ? plain(a.raw) < plain(b.raw) : a.raw < b.raw;
  }
  /// Over what stands for itself in a text: most of it, so eight bytes at a time.
  void pass_plain() {
    constexpr std::uint64_t ones = 0x0101010101010101, tops = ones << 7;
    // The top bit of the lowest byte that is 0 comes out set; those above it may be.
    const auto zeros = [](std::uint64_t bytes) { return (bytes - ones) & ~bytes & tops; };
    for (std::uint64_t bytes = 0; text_.size() - at_ >= sizeof bytes; at_ += sizeof bytes) {
      std::memcpy(&bytes, text_.data() + at_, sizeof bytes);
      const std::uint64_t below = (bytes - ones * 0x20) & ~bytes & tops;
      if ((below | (bytes & tops) | zeros(bytes ^ ones * '"') | zeros(bytes ^ ones * '\\')) != 0) break;
    }
    while (!at_end() && is_plain(text_[at_])) ++at_;
  }
  /// Stands for itself in a text.
  static bool is_plain(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x20 && byte < 0x80 && c != '"' && c != '\\';
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
      pass_plain();
      if (at_end()) return false;
      const char c = text_[at_];
      std::size_t length = 1;
      if (c == '"') return ++at_, true;
      if (c == '\\') {
        length = escaped(text_.substr(at_)).second;
        ++escapes_;
      }
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
  std::size_t escapes_ = 0;
};

}  // namespace

bool Members::read(std::string_view text, Members& keep) {
  Members none;
  return read(text, keep, {}, none);
}

bool Members::read(std::string_view text, Members& keep, std::string_view key, Members& inner) {
  for (Members* one : {&keep, &inner}) {
    one->members_.clear();
    one->unescaped_.clear();
  }
  const auto into = [](Members& members) {
    return [&members](std::string_view name, std::string_view value) {
      members.members_.emplace_back(name, value);
    };
  };
  Scanner scanner(text);
  return scanner.object(0, into(keep), key, into(inner)) && scanner.at_end();
}

std::string_view Members::raw(std::string_view key) const {
  for (const auto& [name, value] : members_)
    if (is(name, key)) return value;
  return {};
}

std::optional<std::string_view> Members::text(std::string_view key) const {
  const std::string_view value = raw(key);
  if (value.empty() || value[0] != '"') return std::nullopt;
  const std::string_view between = value.substr(1, value.size() - 2);
  if (between.find('\\') == std::string_view::npos) return between;
  return unescaped_.emplace_front(plain(between));
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
    if (std::none_of(keys.begin(), keys.end(),
                     [&name = name](std::string_view key) { return is(name, key); }))
      return name;
  return {};
}

}  // namespace wm::verify
