#include "core/json/tree.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <functional>

#include "../generators.h"

using namespace wm;
using json::Kind;
using json::Tree;
using json::Value;

namespace {

/// Small texts that use all of JSON's forms.
const std::vector<std::string> seeds = {
    R"({"a": [1, -2, 0, -0, 3.5, 1e3, 1E-2, true, false, null], "b": {"c": "d\"\\\/\b\f\n\r\t\u00e9\ud83d\ude00"}})",
    R"([[], {}, "", [[[]]], {"": {"": ""}}, "Živa 鋸 🪚"])",
    "9223372036854775807",
    "-9223372036854775808",
    "\xEF\xBB\xBF{}",
};

/// A seed with a few bytes changed, taken out or put in; no zero bytes, which the other parser ends at.
std::string mutated() {
  std::string text = *rc::gen::elementOf(seeds);
  for (int left = *rc::gen::inRange(0, 4); left > 0; --left) {
    const auto at = *rc::gen::inRange<std::size_t>(0, text.size() + 1);
    const char byte =
        *rc::gen::oneOf(rc::gen::elementOf(std::string("{}[]\",:0123456789.eE+-\\utrfn \n/")),
                        rc::gen::map(rc::gen::inRange(1, 256), [](int b) { return static_cast<char>(b); }));
    switch (*rc::gen::inRange(0, 3)) {
      case 0:
        text.insert(at, 1, byte);
        break;
      case 1:
        text = text.substr(0, at) + text.substr(std::min(at + 1, text.size()));
        break;
      default:
        if (at < text.size()) text[at] = byte;
    }
  }
  return text;
}

/// The same JSON as the other library has it; where a key is repeated it keeps the last, and so does this.
nlohmann::json as_other(Value v) {
  switch (v.kind()) {
    case Kind::null:
      return nullptr;
    case Kind::truth:
      return v.truth();
    case Kind::whole:
      return v.whole();
    case Kind::other_number:
      return "a number";
    case Kind::text:
      return std::string(v.text());
    case Kind::list: {
      auto list = nlohmann::json::array();
      for (std::size_t i = 0; i < v.size(); ++i) list.push_back(as_other(v[i]));
      return list;
    }
    case Kind::object: {
      auto object = nlohmann::json::object();
      for (std::size_t i = 0; i < v.size(); ++i) object[std::string(v[i].key())] = as_other(v[i]);
      return object;
    }
  }
  return nullptr;
}

void blank_other_numbers(nlohmann::json& j) {
  if (j.is_number_float() || (j.is_number_unsigned() && j.get<std::uint64_t>() > INT64_MAX)) j = "a number";
  if (j.is_structured())
    for (auto& part : j) blank_other_numbers(part);
}

void each(Value v, const std::function<void(Value)>& visit) {
  visit(v);
  for (std::size_t i = 0; i < v.size(); ++i) each(v[i], visit);
}

/// Whether the other library takes it for JSON; a number that overflows is JSON, though it can't hold it.
bool other_reads(const std::string& text) {
  constexpr int number_overflow = 406;
  try {
    return !nlohmann::json::parse(text).is_discarded();
  } catch (const nlohmann::json::exception& e) {
    RC_PRE(e.id != number_overflow);  // what follows it has not been looked at
    return false;
  }
}

std::string place_of_mistake(std::string_view text) {
  const auto tree = Tree::parse(text);
  return tree ? "none" : tree.error().where;
}

}  // namespace

TEST_CASE("A text is read exactly where nlohmann-json reads it, and to the same values") {
  int read = 0, refused = 0;
  CHECK(rc::check([&] {
    const std::string text = mutated();
    const auto tree = Tree::parse(text);
    RC_ASSERT(tree.has_value() == other_reads(text));
    ++(tree ? read : refused);
    if (!tree) return;
    auto other = nlohmann::json::parse(text);
    blank_other_numbers(other);
    RC_ASSERT(as_other(tree->root()) == other);
  }));
  CHECK(read > 0);
  CHECK(refused > 0);
}

TEST_CASE("Each value's pointer leads back to it, by our way and by nlohmann-json's") {
  CHECK(rc::check([] {
    nlohmann::json other = nlohmann::json::object();
    for (int left = *rc::gen::inRange(0, 5); left > 0; --left)
      other[*gen::text()] = {{*gen::text(), *gen::text()}, {"list", {*gen::text(), nlohmann::json::array()}}};
    const auto tree = Tree::parse(other.dump());
    RC_ASSERT(tree.has_value());
    each(tree->root(), [&](Value v) {
      const auto back = tree->root().at(v.pointer());
      RC_ASSERT(back.has_value());
      RC_ASSERT(back->place() == v.place());
      RC_ASSERT(other.at(nlohmann::json::json_pointer(v.pointer())) == as_other(v));
    });
  }));
}

TEST_CASE("The pointers of RFC 6901, section 5, name the values that they name there") {
  const auto tree = Tree::parse(R"({"foo": ["bar", "baz"], "": 0, "a/b": 1, "c%d": 2, "e^f": 3, "g|h": 4,
                                    "i\\j": 5, "k\"l": 6, " ": 7, "m~n": 8})");
  REQUIRE(tree);
  const char* pointers[] = {"/", "/a~1b", "/c%d", "/e^f", "/g|h", "/i\\j", "/k\"l", "/ ", "/m~0n"};
  for (int i = 0; i < 9; ++i) {
    const auto value = tree->root().at(pointers[i]);
    REQUIRE(value);
    CHECK(value->whole() == i);
    CHECK(value->pointer() == pointers[i]);
  }
  CHECK(tree->root().at("/foo/0")->text() == "bar");
  CHECK(tree->root().at("")->pointer() == "");
  CHECK_FALSE(tree->root().at("/foo/2"));
  CHECK_FALSE(tree->root().at("/foo/-"));
  CHECK_FALSE(tree->root().at("/bar"));
}

TEST_CASE("What isn't JSON is refused with its line and column") {
  CHECK(place_of_mistake("") == "line 1, column 1");
  CHECK(place_of_mistake("{\n  \"a\": tru\n}") == "line 2, column 11");
  CHECK(place_of_mistake("{\"ä\": x}") == "line 1, column 7");
  CHECK(place_of_mistake("[1,]") == "line 1, column 4");
  CHECK(place_of_mistake("{} {}") == "line 1, column 4");
  CHECK(place_of_mistake(std::string("{}\0{}", 5)) == "line 1, column 3");
  CHECK(place_of_mistake("{}\n\n") == "none");
  CHECK(place_of_mistake("[\n\"\xC3\x28\"]") == "line 2, column 3");
  CHECK(place_of_mistake("[01]") != "none");
  CHECK(place_of_mistake("[NaN]") != "none");
  CHECK(place_of_mistake("[\"\\ud800\"]") != "none");
  CHECK(place_of_mistake("// why\n{}") != "none");
}

TEST_CASE("UTF-8 that isn't is refused: too long forms, surrogates, beyond Unicode, cut off (RFC 3629)") {
  for (const char* bytes : {"\x80", "\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80",
                            "\xF5\x80\x80\x80", "\xE2\x82", "\xFE", "\xF0\x80\x80\xAF"})
    CHECK(place_of_mistake("[\"" + std::string(bytes) + "\"]") != "none");
  for (const char* text : {"\xC2\x80", "\xED\x9F\xBF", "\xEE\x80\x80", "\xF4\x8F\xBF\xBF"})
    CHECK(place_of_mistake("[\"" + std::string(text) + "\"]") == "none");
}

TEST_CASE("The reason given for what isn't JSON is itself UTF-8 without the bytes that weren't") {
  // The second has in it what the library says after the bytes that it quotes.
  for (const char* text : {"[\"\xFF\"]", "[\"; expected \xFF\"]", "[\"; last read: '\xFF'; expected \xC3"}) {
    const auto tree = Tree::parse(text);
    REQUIRE_FALSE(tree);
    CHECK(nlohmann::json(tree.error().what).dump() == "\"" + tree.error().what + "\"");
  }
}

TEST_CASE("Repeated keys are found wherever they stand, written alike or not") {
  const auto tree = Tree::parse(R"([{"a": 1, "b": 2, "\u0061": 3}, {"a": {"x": 1, "x": 2, "x": 3}}])");
  REQUIRE(tree);
  std::vector<std::string> found;
  for (const Value v : tree->repeated()) found.push_back(v.pointer() + "=" + std::to_string(v.whole()));
  CHECK(found == std::vector<std::string>{"/0/a=3", "/1/a/x=2", "/1/a/x=3"});
}

TEST_CASE("Numbers too big for any type are JSON all the same, and many of them too") {
  const std::string digits(400, '7');
  const auto tree = Tree::parse("[1e999, -1e999, " + digits + ", 5, 1.0, 9223372036854775808, 1e-999]");
  REQUIRE(tree);
  for (const std::size_t i : {0u, 1u, 2u, 4u, 5u, 6u}) CHECK(tree->root()[i].kind() == Kind::other_number);
  CHECK(tree->root()[3].whole() == 5);
  CHECK(place_of_mistake("[1e999, x]") == "line 1, column 9");

  std::string many = "[";
  for (int i = 0; i < 1000; ++i) many += "1e999,";
  CHECK(place_of_mistake(many + "0]").starts_with("line 1, "));
}

TEST_CASE("A text that nests two hundred thousand deep is read without a call for each depth") {
  constexpr int deep = 200'000;
  const auto tree = Tree::parse(std::string(deep, '[') + std::string(deep, ']'));
  REQUIRE(tree);
  CHECK(tree->root()[0][0].pointer() == "/0/0");
  CHECK(place_of_mistake(std::string(deep, '[')) == "line 1, column 200001");
}

TEST_CASE("An object of a hundred thousand members is searched for repeated keys") {
  std::string text = "{";
  for (int i = 0; i < 100'000; ++i) text += "\"" + std::to_string(i) + "\": 0, ";
  const auto tree = Tree::parse(text + "\"77\": 0}");
  REQUIRE(tree);
  REQUIRE(tree->repeated().size() == 1);
  CHECK(tree->repeated()[0].pointer() == "/77");
}
