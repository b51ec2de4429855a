// The text is read by nlohmann-json, event by event; here the events become a Tree.
#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/json/tree.h"

namespace wm::json {

namespace {
// A million records are 200 MB and ten million values; a value takes 80 bytes here.
constexpr std::size_t largest_text = 512u << 20, most_values = 30'000'000;
}  // namespace

class TreeBuilder {
 public:
  Tree tree;
  /// What stopped the reading: how many bytes had been read, the last token, the library's message.
  std::size_t stopped_at = 0;
  std::string last_token, message;
  /// The last token is a number too big for any floating-point type, which is JSON all the same.
  bool overflow = false;
  bool too_many = false;

  bool null() { return add(Kind::null); }
  bool boolean(bool value) { return add(Kind::truth, value); }
  bool number_integer(std::int64_t value) { return add(Kind::whole, value); }
  bool number_unsigned(std::uint64_t value) {
    if (value > static_cast<std::uint64_t>(INT64_MAX)) return add(Kind::other_number);
    return add(Kind::whole, static_cast<std::int64_t>(value));
  }
  bool number_float(double, const std::string&) { return add(Kind::other_number); }
  bool string(std::string& value) {
    const bool added = add(Kind::text);
    tree.nodes_.back().from = append(value);
    tree.nodes_.back().size = value.size();
    return added;
  }
  bool binary(std::vector<std::uint8_t>&) { return false; }  // JSON texts hold none
  bool start_object(std::size_t) { return open(Kind::object); }
  bool start_array(std::size_t) { return open(Kind::list); }
  bool key(std::string& value) {
    key_at_ = append(value);
    key_size_ = value.size();
    return true;
  }
  bool end_object() {
    mark_repeated(open_.back().children);
    return close();
  }
  bool end_array() { return close(); }
  bool parse_error(std::size_t position, const std::string& token, const nlohmann::detail::exception& e) {
    constexpr int number_overflow = 406;
    stopped_at = position;
    last_token = token;
    message = e.what();
    overflow = e.id == number_overflow;
    return false;
  }

 private:
  struct Open {
    std::size_t node;
    std::vector<std::size_t> children;
  };
  std::vector<Open> open_;
  std::size_t key_at_ = 0, key_size_ = 0;

  std::size_t append(const std::string& text) {
    const std::size_t at = tree.texts_.size();
    tree.texts_ += text;
    return at;
  }

  bool add(Kind kind, std::int64_t number = 0) {
    Tree::Node node{.kind = kind, .number = number};
    if (!open_.empty()) {
      Open& parent = open_.back();
      node.parent = parent.node;
      node.position = parent.children.size();
      node.in_object = tree.nodes_[parent.node].kind == Kind::object;
      if (node.in_object) node.key_at = key_at_, node.key_size = key_size_;
      parent.children.push_back(tree.nodes_.size());
    }
    tree.nodes_.push_back(node);
    too_many = tree.nodes_.size() > most_values;
    return !too_many;
  }

  bool open(Kind kind) {
    const bool added = add(kind);
    open_.push_back({tree.nodes_.size() - 1, {}});
    return added;
  }

  bool close() {
    const Open& done = open_.back();
    tree.nodes_[done.node].from = tree.children_.size();
    tree.nodes_[done.node].size = done.children.size();
    tree.children_.insert(tree.children_.end(), done.children.begin(), done.children.end());
    open_.pop_back();
    return true;
  }

  /// By sorting, because an object may have a great many members.
  void mark_repeated(std::vector<std::size_t> members) {
    const auto key = [&](std::size_t i) {
      return std::string_view(tree.texts_).substr(tree.nodes_[i].key_at, tree.nodes_[i].key_size);
    };
    std::stable_sort(members.begin(), members.end(), [&](auto a, auto b) { return key(a) < key(b); });
    for (std::size_t i = 1; i < members.size(); ++i)
      tree.nodes_[members[i]].repeated = key(members[i]) == key(members[i - 1]);
  }
};

namespace {

std::string line_and_column(std::string_view text, std::size_t at) {
  const std::string_view before = text.substr(0, at);
  const std::size_t line_start = before.rfind('\n') + 1;  // 0 where there is no line end before
  const auto starts_a_code_point = [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; };
  const auto line = std::count(before.begin(), before.end(), '\n') + 1;
  const auto column = std::count_if(before.begin() + static_cast<std::ptrdiff_t>(line_start), before.end(),
                                    starts_a_code_point) +
                      1;
  return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

/// The library's message without its own place, name and the token that it quotes (which may be no UTF-8).
std::string reason(const std::string& message, const std::string& token) {
  const std::size_t place = message.find(", column ");
  const std::size_t from = place == std::string::npos ? place : message.find(": ", place);
  if (from == std::string::npos) return "it breaks off";
  std::string said = message.substr(from + 2);
  const std::string quoted = "; last read: '" + token + "'";
  if (const std::size_t quote = said.find(quoted); quote != std::string::npos)
    said.erase(quote, quoted.size());
  return said;
}

Problem not_json(std::string_view text, std::size_t at, const std::string& why) {
  return {line_and_column(text, at), "This is not JSON: " + why + ".",
          "Write one JSON value (RFC 8259) in UTF-8, with nothing after it."};
}

}  // namespace

Expected<Tree> Tree::parse(std::string_view given) {
  if (given.size() > largest_text)
    return tl::unexpected(Problem{"", "The text is larger than 512 MiB.", "Divide it into smaller files."});
  std::string text(given);
  // A number that overflows stops the library although it is JSON. Another number in its place, one that is
  // refused as well, lets the rest of the text be read. Each costs another reading, so not without end.
  constexpr std::size_t most_read_again = 64u << 20;
  const std::size_t most_readings = std::min<std::size_t>(100, most_read_again / (given.size() + 1));
  for (std::size_t readings = 0;; ++readings) {
    TreeBuilder builder;
    if (nlohmann::json::sax_parse(text, &builder)) {
      // The library takes a zero byte for the end of the text.
      if (const std::size_t zero = given.find('\0'); zero != std::string_view::npos)
        return tl::unexpected(not_json(given, zero, "a zero byte stands here"));
      return std::move(builder.tree);
    }
    if (builder.too_many)
      return tl::unexpected(
          Problem{"", "There are more than 30 million values in it.", "Divide it into smaller files."});
    const std::size_t at = std::min(std::max<std::size_t>(builder.stopped_at, 1) - 1, given.size());
    const std::size_t token = builder.last_token.size();
    if (!builder.overflow || readings == most_readings || token > builder.stopped_at)
      return tl::unexpected(not_json(
          given, at, builder.overflow ? "a number is too big" : reason(builder.message, builder.last_token)));
    text.replace(builder.stopped_at - token, token, "0.5" + std::string(token - 3, ' '));
  }
}

}  // namespace wm::json
