#include "core/ledger/root.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

using namespace wm;
using namespace wm::ledger;

namespace {

Head head_of(std::uint64_t size) { return {size, leaf_hash(std::to_string(size)), Instant{1'700'000'000}}; }

}  // namespace

TEST_CASE("a root's short form is its size and its first bits, in letters that are not mixed up",
          "[ledger]") {
  Head head{1204, {}, {}};
  CHECK(shortened(head).letters == "00000000000000000000000000");
  // 0x08 0x42 0x10 0x84 0x21 is five bits 00001 eight times: Crockford's base 32, crockford.com/base32.html.
  head.root = bytes_from_hex<32>("0842108421ffffffffff00000000000000000000000000000000000000000000").value();
  CHECK(shortened(head).letters == "11111111ZZZZZZZZ0000000000");
  CHECK(to_text(shortened(head)).substr(0, 25) == "1204-1111-1111-ZZZZ-ZZZZ-");
}

TEST_CASE("a short form is read as somebody types it", "[ledger]") {
  const bool holds = rc::check("typed", [] {
    const Head head = head_of(*rc::gen::inRange<std::uint64_t>(0, 10'000'000));
    std::string typed = to_text(shortened(head));
    RC_ASSERT(read_short(typed) == shortened(head));
    RC_ASSERT(matches(read_short(typed).value(), head.root));
    RC_ASSERT(!matches(read_short(typed).value(), leaf_hash("else")));
    for (char& c : typed) {
      if (c == '0' && *rc::gen::arbitrary<bool>()) c = 'o';
      if (c == '1' && *rc::gen::arbitrary<bool>()) c = *rc::gen::element('l', 'I');
      if (c == '-' && *rc::gen::arbitrary<bool>()) c = ' ';
      if (*rc::gen::arbitrary<bool>()) c = static_cast<char>(std::tolower(c));
    }
    RC_ASSERT(read_short(typed) == shortened(head));
    typed.erase(std::remove(typed.begin(), typed.end(), '-'), typed.end());
    RC_ASSERT(read_short(typed) == shortened(head));
  });
  REQUIRE(holds);
}

TEST_CASE("one mistyped character of a short form, or two swapped, are always seen", "[ledger]") {
  const std::string typed = to_text(shortened(head_of(1'000'001)));
  for (std::size_t i = 0; i < typed.size(); ++i) {
    if (typed[i] == '-') continue;
    for (const char c : std::string_view("0123456789ABCDEFGHJKMNPQRSTVWXYZ!*")) {
      std::string other = typed;
      other[i] = c;
      INFO(other);
      CHECK(read_short(other).has_value() == (c == typed[i]));
    }
    const std::size_t next = i + 1 < typed.size() && typed[i + 1] == '-' ? i + 2 : i + 1;
    if (next >= typed.size() || typed[i] == typed[next]) continue;
    std::string swapped = typed;
    std::swap(swapped[i], swapped[next]);
    INFO(swapped);
    CHECK_FALSE(read_short(swapped));
  }
  for (const char* text : {"", "12", "1204-0000-0000-0000-0000-0000-0000-000"}) CHECK_FALSE(read_short(text));
}

TEST_CASE("a signed root is one line, and comes back from it", "[ledger]") {
  const SigningKey key = SigningKey::random();
  const SignedHead head = sign(head_of(41), key);
  const std::string line = to_line(head);
  CHECK(line == "witnessmark head 1 41 " + to_hex(head.head.root) + " 2023-11-14T22:13:20Z " +
                    to_hex(key.public_key()) + " " + to_hex(head.signature));
  CHECK(read_line(line) == head);
}

TEST_CASE("a signed root that was changed anywhere is refused", "[ledger]") {
  const std::string line = to_line(sign(head_of(41), SigningKey::random()));
  for (std::size_t i = 0; i < line.size(); ++i)
    for (const char c : {'0', '1', 'a', 'A', ' ', '-'}) {
      if (line[i] == c) continue;
      std::string other = line;
      other[i] = c;
      INFO(other);
      CHECK_FALSE(read_line(other));
    }
  for (const std::string& other : {line + " ", line + "\n", " " + line, line.substr(0, line.size() - 2),
                                   std::string(line).insert(19, "0"), std::string(line).insert(18, " ")})
    CHECK_FALSE(read_line(other));
}
