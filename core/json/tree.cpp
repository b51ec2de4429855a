#include "core/json/tree.h"

#include <algorithm>
#include <charconv>

namespace wm::json {

Kind Value::kind() const { return tree_->nodes_[index_].kind; }
bool Value::truth() const { return tree_->nodes_[index_].number != 0; }
std::int64_t Value::whole() const { return tree_->nodes_[index_].number; }

std::string_view Value::text() const {
  const auto& node = tree_->nodes_[index_];
  return std::string_view(tree_->texts_).substr(node.from, node.size);
}

std::size_t Value::size() const {
  const auto& node = tree_->nodes_[index_];
  return node.kind == Kind::list || node.kind == Kind::object ? node.size : 0;
}

Value Value::operator[](std::size_t i) const {
  return {tree_, tree_->children_[tree_->nodes_[index_].from + i]};
}

std::string_view Value::key() const {
  const auto& node = tree_->nodes_[index_];
  return std::string_view(tree_->texts_).substr(node.key_at, node.key_size);
}

bool Value::repeated() const { return tree_->nodes_[index_].repeated; }

std::optional<Value> Value::find(std::string_view key) const {
  if (kind() != Kind::object) return std::nullopt;
  for (std::size_t i = 0; i < size(); ++i)
    if (const Value member = (*this)[i]; member.key() == key) return member;
  return std::nullopt;
}

namespace {

std::string escaped(std::string_view key) {
  std::string out;
  for (const char c : key) {
    if (c == '~') {
      out += "~0";
    } else if (c == '/') {
      out += "~1";
    } else {
      out += c;
    }
  }
  return out;
}

std::string unescaped(std::string_view token) {
  std::string out;
  for (std::size_t i = 0; i < token.size(); ++i) {
    if (token[i] == '~' && i + 1 < token.size()) {
      out += token[++i] == '1' ? '/' : '~';
    } else {
      out += token[i];
    }
  }
  return out;
}

std::optional<Value> step(Value from, std::string_view token) {
  if (from.kind() == Kind::object) return from.find(unescaped(token));
  std::size_t i = 0;
  const auto [rest, error] = std::from_chars(token.data(), token.data() + token.size(), i);
  if (error != std::errc() || rest != token.data() + token.size() || i >= from.size()) return std::nullopt;
  return from[i];
}

}  // namespace

std::string Value::pointer() const {
  std::vector<std::string> tokens;
  for (std::size_t i = index_; i != 0; i = tree_->nodes_[i].parent) {
    const auto& node = tree_->nodes_[i];
    tokens.push_back(node.in_object ? escaped(Value(tree_, i).key()) : std::to_string(node.position));
  }
  std::string out;
  for (auto token = tokens.rbegin(); token != tokens.rend(); ++token) out += "/" + *token;
  return out;
}

std::vector<Value> Tree::repeated() const {
  std::vector<Value> out;
  for (std::size_t i = 0; i < nodes_.size(); ++i)
    if (nodes_[i].repeated) out.push_back(Value(this, i));
  return out;
}

std::optional<Value> Value::at(std::string_view pointer) const {
  std::optional<Value> value = *this;
  while (value && !pointer.empty()) {
    const std::size_t end = std::min(pointer.find('/', 1), pointer.size());
    value = step(*value, pointer.substr(1, end - 1));
    pointer.remove_prefix(end);
  }
  return value;
}

}  // namespace wm::json
