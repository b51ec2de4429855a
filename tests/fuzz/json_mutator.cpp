// Changes JSON as JSON, so that the readers get beyond its syntax: a value takes the place of another, is
// left out, stands twice, or goes to an edge. Every fourth change is one of bytes.
#include <algorithm>
#include <cstring>
#include <nlohmann/json.hpp>
#include <random>

extern "C" std::size_t LLVMFuzzerMutate(unsigned char* data, std::size_t size, std::size_t most);

namespace {

using Json = nlohmann::ordered_json;

class Mutation {
 public:
  Mutation(Json& root, unsigned seed) : root_(root), random_(seed) {}

  void once() {
    collect(root_);
    Json& at = any();
    switch (below(7)) {
      case 0:
      case 1:
        at = Json(any());
        break;
      case 2:
        leave_out(at);
        break;
      case 3:
        stand_twice(at);
        break;
      case 4:
        move_key(at);
        break;
      default:
        to_an_edge(at);
    }
  }

 private:
  std::size_t below(std::size_t n) { return n == 0 ? 0 : random_() % n; }
  Json& any() { return *all_[below(all_.size())]; }

  void collect(Json& value) {
    all_.push_back(&value);
    if (value.is_structured())
      for (Json& child : value) collect(child);
  }

  void leave_out(Json& at) {
    if (!at.is_structured() || at.empty()) return;
    at.erase(std::next(at.begin(), static_cast<std::ptrdiff_t>(below(at.size()))));
  }

  void stand_twice(Json& at) {
    if (!at.is_array() || at.empty()) return;
    Json copy = at[below(at.size())];
    at.insert(std::next(at.begin(), static_cast<std::ptrdiff_t>(below(at.size()))), std::move(copy));
  }

  /// A field under the key of another object's field.
  void move_key(Json& at) {
    const Json& from = any();
    if (!at.is_object() || !from.is_object() || from.empty()) return;
    const auto field = std::next(from.begin(), static_cast<std::ptrdiff_t>(below(from.size())));
    const std::string key = field.key();
    Json value = field.value();
    at[key] = std::move(value);
  }

  void to_an_edge(Json& at) {
    static constexpr std::int64_t numbers[] = {
        0, 1, -1, 2, 99, 100, 101, 1440, 10'000, 100'000, 1'000'000, INT32_MAX, INT64_MAX, INT64_MIN};
    static constexpr const char* texts[] = {"",
                                            "/",
                                            "step-1",
                                            "a/b",
                                            "~",
                                            "é\u0301",
                                            "1900-01-01",
                                            "2999-12-31",
                                            "2024-02-29",
                                            "1900-01-01T00:00:00Z",
                                            "2999-12-31T23:59:59Z",
                                            "2026-11-01T06:30:00Z"};
    if (at.is_number()) {
      at = below(2) == 0
               ? numbers[below(std::size(numbers))]
               : static_cast<std::int64_t>(
                     static_cast<std::uint64_t>(at.is_number_integer() ? at.get<std::int64_t>() : 0) +
                     below(5) - 2);
    } else if (at.is_boolean()) {
      at = !at.get<bool>();
    } else if (at.is_string()) {
      at = below(2) == 0 ? std::string(texts[below(std::size(texts))]) : one_digit_on(at.get<std::string>());
    } else {
      at = Json::array();
    }
  }

  /// Another day, hour or number in a text.
  std::string one_digit_on(std::string text) {
    const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
    const auto digits = std::count_if(text.begin(), text.end(), is_digit);
    if (digits == 0) return text + "x";
    auto which = below(static_cast<std::size_t>(digits));
    for (char& c : text)
      if (is_digit(c) && which-- == 0) c = static_cast<char>('0' + below(10));
    return text;
  }

  Json& root_;
  std::minstd_rand random_;
  std::vector<Json*> all_;
};

/// Writing a tree out calls itself for each depth.
bool is_deep(const unsigned char* data, std::size_t size) {
  int depth = 0, deepest = 0;
  for (std::size_t i = 0; i < size; ++i) {
    depth += data[i] == '[' || data[i] == '{' ? 1 : data[i] == ']' || data[i] == '}' ? -1 : 0;
    deepest = std::max(deepest, depth);
  }
  return deepest > 200;
}

}  // namespace

extern "C" std::size_t LLVMFuzzerCustomMutator(unsigned char* data, std::size_t size, std::size_t most,
                                               unsigned seed) {
  if (seed % 4 == 0 || is_deep(data, size)) return LLVMFuzzerMutate(data, size, most);
  Json root = Json::parse(data, data + size, nullptr, false);
  if (root.is_discarded()) return LLVMFuzzerMutate(data, size, most);
  Mutation(root, seed).once();
  const std::string text = root.dump(-1, ' ', false, Json::error_handler_t::replace);
  if (text.size() > most) return LLVMFuzzerMutate(data, size, most);
  std::memcpy(data, text.data(), text.size());
  return text.size();
}
