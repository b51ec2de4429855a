// The text form of a bank: what is written reads back equal, and every mistake is named by its line.
#include "core/teach/bank_text.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>

#include "banks.h"
#include "core/json/writing.h"

namespace {

using namespace wm;
using namespace wm::teach;

/// A bank of one language, less the question that a test adds.
const std::string top =
    "bank: saws\nrevision: 2\nlanguages: en\npass: 80 %\ntime: none\ndraw: 2 of dress\n\n"
    "question: a\nkind: one\ntopic: dress\n[en]\nWhat?\n* this\n- that\n> Because.\n\n";  // lines 1 to 16
const std::string head = "question: b\ntopic: dress\n";                                   // lines 17 and 18

std::vector<std::string> places(const std::string& text) {
  const auto bank = read_bank(text);
  std::vector<std::string> out;
  if (bank) return out;
  for (const Problem& problem : bank.error()) {
    INFO(problem.where << ": " << problem.what << " " << problem.remedy);
    CHECK(problem.what.ends_with('.'));
    CHECK(problem.remedy.ends_with('.'));
    CHECK_NOTHROW(json::in_quotes(problem.where + problem.what + problem.remedy));
    out.push_back(problem.where);
  }
  return out;
}
std::vector<std::string> with(const std::string& question) { return places(top + head + question); }
using Places = std::vector<std::string>;

Question second(const std::string& question) {
  const auto bank = read_bank(top + head + question);
  if (!bank)
    for (const Problem& problem : bank.error()) UNSCOPED_INFO(problem.where << ": " << problem.what);
  REQUIRE(bank);
  return bank->questions.at(1);
}

}  // namespace

TEST_CASE("A bank that was read is written so that it reads back equal", "[teach]") {
  CHECK(rc::check([](std::uint64_t seed) {
    made::Dice dice(seed);
    const Bank bank = made::bank(dice);
    const auto read = read_bank(to_text(bank));
    if (!read)
      for (const Problem& problem : read.error())
        RC_LOG() << problem.where << ": " << problem.what << "\n" << to_text(bank);
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == bank);
  }));
}

TEST_CASE("The example of the documentation is read as it explains it", "[teach]") {
  std::ostringstream text;
  text << std::ifstream(std::string(WM_TESTS) + "/../core/teach/README.md").rdbuf();
  const std::string page = text.str();
  const auto begin = page.find("```text\n"), end = page.find("\n```", begin);
  REQUIRE(begin != std::string::npos);
  const auto bank = read_bank(page.substr(begin + 8, end - begin - 8));
  if (!bank)
    for (const Problem& problem : bank.error()) FAIL_CHECK(problem.where << ": " << problem.what);
  REQUIRE(bank);
  CHECK(bank->languages == std::vector<std::string>{"en", "es"});
  std::vector<bool> kinds(5);
  for (const Question& question : bank->questions) kinds[question.kind.index()] = true;
  CHECK(kinds == std::vector<bool>(5, true));
}

TEST_CASE("A question of each kind is read", "[teach]") {
  const Question one = second(
      "kind: one\nrevision: 3\ncritical: yes\n[en]\nWhich\n  one?\n- a\n* b\n  and more\n- c\n> So.\n> "
      "Yes.\n");
  CHECK(one == Question{"b",
                        3,
                        "dress",
                        true,
                        false,
                        "",
                        OneRight{1},
                        {{"en", "Which one?", {"a", "b and more", "c"}, "So. Yes."}}});
  const Question several = second("kind: several\npartial: yes\n[en]\nQ\n* a\n- b\n* c\n> r\n");
  CHECK(several.kind == Kind(SeveralRight{{true, false, true}}));
  CHECK(several.partial);
  const Question order = second("kind: order\n[en]\nQ\n1. a\n2. b\n3. c\n> r\n");
  CHECK(order.kind == Kind(InOrder{}));
  CHECK(order.wordings[0].choices == std::vector<std::string>{"a", "b", "c"});
  const Question number = second("kind: number\nanswer: 1/8 in\nwithin: 0,4 mm\n[en]\nHow deep?\n> r\n");
  CHECK(number.kind == Kind(ANumber{{fraction(1, 8), Unit::inch}, {fraction(2, 5), Unit::millimetre}}));
  CHECK(second("kind: number\nanswer: 4\n[en]\nQ\n> r\n").kind ==
        Kind(ANumber{{fraction(4, 1), Unit::none}, {fraction(0, 1), Unit::none}}));
  CHECK(second("kind: number\nanswer: 90 deg\nwithin: 1/2\n[en]\nQ\n> r\n").kind ==
        Kind(ANumber{{fraction(90, 1), Unit::degree}, {fraction(1, 2), Unit::degree}}));
  const Question place = second(
      "kind: place\npicture: saw.png\nplace: rectangle 1 2 3 4\nplace: polygon 0 0, 9 0, 0 1000\n[en]\nQ\n> "
      "r\n");
  CHECK(place.kind == Kind(APlace{{Rectangle{1, 2, 3, 4}, Polygon{{{0, 0}, {9, 0}, {0, 1000}}}}}));
  CHECK(place.picture == "saw.png");
}

TEST_CASE("A line that would be taken for a mark is text behind a backslash", "[teach]") {
  const Question question =
      second("kind: one\n[en]\n\\- 5 degrees,\n\\# is no comment\n  \\* here\n- -5 degrees\n* [en]\n> r\n");
  CHECK(question.wordings[0].text == "- 5 degrees, # is no comment * here");
  CHECK(question.wordings[0].choices == std::vector<std::string>{"-5 degrees", "[en]"});
}

TEST_CASE("Line ends of any system, a byte order mark, comments and empty lines change nothing", "[teach]") {
  const std::string text = top + head + "kind: one\n[en]\nQ\n* a\n- b\n> r";
  const auto plain = read_bank(text);
  REQUIRE(plain);
  std::string other = "\xEF\xBB\xBF# first\n\n";
  for (const char c : text) other += c == '\n' ? "  \r\n#\r\n\r\n" : std::string(1, c);
  const auto read = read_bank(other);
  REQUIRE(read);
  CHECK(*read == *plain);
}

TEST_CASE("Each mistake of a question is told with its line", "[teach]") {
  const std::string good = "[en]\nQ\n* a\n- b\n> r\n";
  CHECK(with("kind: one\n" + good).empty());
  CHECK(with(good) == Places{"line 17"});  // no kind
  CHECK(with("kind: choose\n" + good) == Places{"line 19"});
  CHECK(with("kind: one\nkind: one\n" + good) == Places{"line 20"});
  CHECK(with("kind: one\ncolour: red\n" + good) == Places{"line 20"});
  CHECK(with("kind: one\nno colon\n" + good) == Places{"line 20"});
  CHECK(with("kind: one\nrevision:\n" + good) == Places{"line 20"});
  for (const char* bad :
       {"revision: 0", "revision: 1.5", "revision: 99999999999999999999", "revision: 1000001",
        "critical: perhaps", "partial: yes", "answer: 3", "within: 1", "place: rectangle 0 0 1 1",
        "picture: ../saw.png", "picture: .saw", "picture: c:saw.png"})
    CHECK((with("kind: one\n" + std::string(bad) + "\n" + good) == Places{"line 20"} ||
           (UNSCOPED_INFO(bad), false)));
  CHECK(with("kind: one\n[en]\nQ\n- a\n- b\n> r\n") == Places{"line 20"});  // none right
  CHECK(with("kind: one\n[en]\nQ\n* a\n* b\n> r\n") == Places{"line 20"});  // two right
  CHECK(with("kind: several\n[en]\nQ\n- a\n- b\n> r\n") == Places{"line 20"});
  CHECK(with("kind: one\n[en]\nQ\n* a\n> r\n") == Places{"line 20"});  // one choice
  CHECK(with("kind: one\n[en]\nQ\n* a\n- a\n> r\n") == Places{"line 23"});
  CHECK(with("kind: one\n[en]\nQ\n* a\n-\n> r\n") == Places{"line 23"});
  CHECK(with("kind: one\n[en]\nQ\n1. a\n- b\n> r\n").front() == "line 20");
  CHECK(with("kind: one\n[en]\n* a\n- b\n> r\n") == Places{"line 20"});  // no text
  CHECK(with("kind: one\n[en]\nQ\n* a\n- b\n") == Places{"line 20"});    // no reason
  CHECK(with("kind: one\n[en]\nQ\n* a\n- b\nc\n> r\n") == Places{"line 24"});
  CHECK(with("kind: one\n[en]\nQ\n* a\n  - b\n- c\n> r\n") == Places{"line 23"});
  CHECK(with("kind: order\n[en]\nQ\n1. a\n3. b\n2. c\n> r\n") == Places{"line 23"});
  CHECK(with("kind: order\n[en]\nQ\n1. a\n2. b\n> r\n") == Places{"line 20"});
  CHECK(with("kind: number\nanswer: 3\n[en]\nQ\n* a\n> r\n") == Places{"line 23"});
  CHECK(with("kind: number\n[en]\nQ\n> r\n") == Places{"line 17"});
  for (const char* bad : {"answer: 1,250", "answer: 1 furlong", "answer: much"})
    CHECK(with("kind: number\n" + std::string(bad) + "\n[en]\nQ\n> r\n") == Places{"line 20"});
  for (const char* bad : {"within: 1 degree", "within: -1 mm", "within: x"})
    CHECK(with("kind: number\nanswer: 3 in\n" + std::string(bad) + "\n[en]\nQ\n> r\n") == Places{"line 21"});
  CHECK(with("kind: place\npicture: a.png\n[en]\nQ\n> r\n") == Places{"line 17"});
  CHECK(with("kind: place\nplace: rectangle 0 0 1 1\n[en]\nQ\n> r\n") == Places{"line 17"});
  for (const char* bad : {"rectangle 5 0 5 9", "rectangle 0 9 5 9", "rectangle 0 0 5", "rectangle 0 0 5 1001",
                          "rectangle -1 0 5 5", "polygon 0 0, 1 1", "polygon 0 0, 1 1, 2 2",
                          "polygon 0 0, 1 1, 2", "circle 1 2 3", "rectangle 0 0 a b",
                          "polygon 0 0, 5 5, 0 0, 9 9", "rectangle 0 0 1 1.5", "rectangle"})
    CHECK((with("kind: place\npicture: a.png\nplace: " + std::string(bad) + "\n[en]\nQ\n> r\n") ==
               Places{"line 21"} ||
           (UNSCOPED_INFO(bad), false)));
  CHECK(with("kind: one\n") == Places{"line 17"});
  CHECK(with("kind: one\n" + good + "[es]\nQ\n* a\n- b\n> r\n") == Places{"line 25"});
  CHECK(with("kind: one\n" + good + good) == Places{"line 25"});
  CHECK(places(top + "question: a\ntopic: dress\nkind: one\n" + good) == Places{"line 17"});
  CHECK(places(top + "question: a b\ntopic: dress\nkind: one\n" + good) == Places{"line 17"});
  CHECK(places(top + "question: b\nkind: one\n" + good) == Places{"line 17"});  // no topic
  CHECK(places(top + "question: b\ntopic: glue\nkind: one\n" + good).size() ==
        2);  // not drawn, and dress is short
}

TEST_CASE("Each mistake at the top is told with its line", "[teach]") {
  const auto changed = [](const std::string& from, const std::string& to) {
    std::string text = top + head + "kind: one\n[en]\nQ\n* a\n- b\n> r\n";
    text.replace(text.find(from), from.size(), to);
    return places(text);
  };
  CHECK(changed("bank: saws", "bank: saws").empty());
  CHECK(changed("bank: saws\n", "") == Places{"line 1"});
  CHECK(changed("revision: 2", "revision: two") == Places{"line 2"});
  for (const char* bad :
       {"", " e", " en, en", " en,", " english language", " en-", " en--us", " 1n", " abcdefghi"})
    CHECK(changed("languages: en", "languages:" + std::string(bad)).front() ==
          "line " + std::string(*bad ? "3" : "1"));
  for (const char* bad : {"0 %", "101 %", "80.5 %", "80 mm", "all", "-80 %", "999999999999 %"})
    CHECK(changed("pass: 80 %", "pass: " + std::string(bad)) == Places{"line 4"});
  for (const char* bad : {"0", "601 min", "1 mm", "soon", "90 s"})
    CHECK(changed("time: none", "time: " + std::string(bad)) == Places{"line 5"});
  CHECK(changed("time: none", "time: 1 h").empty());
  for (const char* bad : {"dress", "0 of dress", "-1 of dress", "x of dress", "3 of dress", "2 of glue",
                          "99999999999 of dress"})
    CHECK(changed("draw: 2 of dress", "draw: " + std::string(bad)).front() == "line 6");
  CHECK(changed("draw: 2 of dress", "draw: 1 of dress") ==
        Places{"line 1"});  // every paper would be the same
  CHECK(changed("draw: 2 of dress\n", "draw: 1 of dress\ndraw: 1 of dress\n") == Places{"line 7"});
  CHECK(changed("draw: 2 of dress\n", "") == Places{"line 1"});
  CHECK(changed("kind: one", "kind: one\ncritical: yes").empty());
  CHECK(places("").size() == 6);
}

TEST_CASE("A topic with more critical questions than are drawn of it is refused", "[teach]") {
  const std::string question = "kind: one\ntopic: dress\ncritical: yes\n[en]\nQ\n* a\n- b\n> r\n";
  CHECK(places(top + "question: b\n" + question + "question: c\n" + question).empty());
  CHECK(places(top + "question: b\n" + question + "question: c\n" + question + "question: d\n" + question) ==
        Places{"line 6"});
}

TEST_CASE("All languages have the same choices, marked the same", "[teach]") {
  std::string text = top + head + "kind: several\n[en]\nQ\n* a\n- b\n> r\n";
  text.replace(text.find("languages: en"), 13, "languages: en, es");
  text.replace(text.find("> Because.\n"), 11, "> Because.\n[es]\nP\n* x\n- y\n> z\n");
  CHECK(places(text) == Places{"line 22"});  // not worded in es
  CHECK(places(text + "[es]\nP\n* a\n- b\n> r\n").empty());
  CHECK(places(text + "[es]\nP\n- a\n* b\n> r\n") == Places{"line 30"});
  CHECK(places(text + "[es]\nP\n* a\n- b\n- c\n> r\n") == Places{"line 30"});
}

TEST_CASE("Broken UTF-8, zero bytes and control characters are told with their line", "[teach]") {
  for (const std::string& bad :
       {std::string("\xFF"), std::string("\xC0\xAF"), std::string("\xE0\x9F\xBF"),
        std::string("\xF0\x8F\xBF\xBF"), std::string("\xED\xA0\x80"), std::string("\xE2\x82"),
        std::string("\xF4\x90\x80\x80"), std::string(1, '\0'), std::string("\x1B[2J"), std::string("\x7F"),
        std::string("\xC2\x85"), std::string("\xE2\x80\xA8"), std::string("a\rb"), std::string("\x80")})
    CHECK(with("kind: one\n[en]\nQ" + bad + "Q\nand\n* a\n- b\n> r\n") == Places{"line 21"});
  CHECK(with("kind: one\n[en]\nQ " + std::string(9000, 'x') + "\nmore\n* a\n- b\n> r\n") ==
        Places{"line 21"});
  CHECK(second("kind: one\n[en]\nQ \xF4\x8F\xBF\xBF \xC2\xA0\n* a\n- b\n> r\n").wordings[0].text ==
        "Q \xF4\x8F\xBF\xBF \xC2\xA0");
}

TEST_CASE("A million lines of whatever kind are read once through", "[teach]") {
  const auto many = [](const std::string& line, int count = 1'000'000) {
    std::string text;
    for (int i = 0; i < count; ++i) text += line + "\n";
    return text;
  };
  CHECK(places(many("x")).size() >= 1000);
  CHECK(places(top + head + "kind: one\n" + many("[en]")).size() >= 1000);
  CHECK(places(top + head + "kind: one\n[en]\nQ\n" + many("- a")).size() >= 1000);
  CHECK(places(top + head + "kind: one\n[en]\nQ\n" + many("word")).size() >= 1000);
  CHECK(places(many("draw: 1 of x")).size() >= 1000);
  CHECK(places(top + many("question: a")).size() >= 1000);
  CHECK(places(many("\xFF")).size() >= 1000);
  CHECK(places(std::string(17u << 20, '\n')) == Places{""});
}

TEST_CASE("Whatever bytes there are, they are read or refused in UTF-8", "[teach]") {
  CHECK(rc::check([](std::uint64_t seed, std::uint16_t at, std::uint8_t byte) {
    made::Dice dice(seed);
    std::string text = to_text(made::bank(dice));
    for (int edits = made::whole(dice, 1, 4); edits > 0; --edits) {
      const std::size_t place = static_cast<std::size_t>(at * 31u + dice() % 64) % text.size();
      if (edits % 2 == 0)
        text.erase(place, dice() % 40);
      else
        text[place] = static_cast<char>(byte);
      if (text.empty()) return;
    }
    if (const auto read = read_bank(text)) {
      RC_ASSERT(read_bank(to_text(*read)).value() == *read);
    } else {
      for (const Problem& problem : read.error())
        json::in_quotes(problem.where + problem.what + problem.remedy);
    }
  }));
}
