// Attempts as JSON: what is written reads back equal, and every mistake has its place.
#include "core/teach/attempt.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "../generators.h"
#include "banks.h"

namespace {

using namespace wm;
using namespace wm::teach;
using Places = std::vector<std::string>;

Places attempt_places(std::string_view json) {
  Places out;
  const auto attempt = read_attempt(json);
  if (attempt) return out;
  for (const Problem& problem : attempt.error()) {
    CHECK_FALSE(problem.what.empty());
    CHECK_FALSE(problem.remedy.empty());
    out.push_back(problem.where);
  }
  return out;
}

Places with_answer(const std::string& answer) {
  return attempt_places(R"({"bank":"b","revision":1,"seed":"0123456789abcdef","language":"en","answers":[)" +
                        answer + "]}");
}

}  // namespace

TEST_CASE("An attempt that is written reads back equal", "[teach]") {
  CHECK(rc::check([](std::uint64_t dice_seed) {
    made::Dice dice(dice_seed);
    const Bank bank = made::bank(dice);
    Attempt attempt{*wm::gen::text(), bank.revision, dice(), bank.languages.front(), {}};
    for (const Question& question : bank.questions)
      attempt.answers.push_back({question.id, made::given(dice, question), made::whole(dice, 0, 1'000'000)});
    const auto read = read_attempt(to_json(attempt));
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == attempt);
    RC_ASSERT(nlohmann::json::accept(to_json(attempt)));
  }));
}

TEST_CASE("The attempt of the documentation reads as it is explained", "[teach]") {
  std::ostringstream text;
  text << std::ifstream(std::string(WM_TESTS) + "/../core/teach/README.md").rdbuf();
  const std::string page = text.str();
  const auto begin = page.find("```json\n") + 8;
  const auto attempt = read_attempt(page.substr(begin, page.find("\n```", begin) - begin));
  REQUIRE(attempt);
  CHECK(attempt->seed == 0x00c0ffee00000007u);
  REQUIRE(attempt->answers.size() == 5);
  CHECK(attempt->answers[0] == Answer{"chip-limit", Typed{"3.2 mm"}, 14});
  CHECK(attempt->answers[1].given == Given(Chosen{0}));
  CHECK(attempt->answers[2].given == Given(Ordered{{0, 2, 1, 3}}));
  CHECK(attempt->answers[3].given == Given(Ticked{{0, 1}}));
  CHECK(attempt->answers[4].given == Given(Pointed{{120, 655}}));
}

TEST_CASE("Each mistake of an attempt is named by its JSON pointer", "[teach]") {
  CHECK(with_answer(R"({"question":"q","seconds":3})").empty());
  CHECK(attempt_places("{}").size() == 5);
  CHECK(attempt_places("[]") == Places{""});
  CHECK(attempt_places("{").size() == 1);
  for (const char* seed : {"7", "\"7\"", "\"0123456789ABCDEF\"", "\"0123456789abcdeg\"",
                           "\"00123456789abcdef\"", "\"-123456789abcdef\""})
    CHECK(attempt_places(R"({"bank":"b","revision":1,"seed":)" + std::string(seed) +
                         R"(,"language":"en","answers":[]})") == Places{"/seed"});
  CHECK(with_answer(R"({"question":"q"})") == Places{"/answers/0"});
  CHECK(with_answer(R"({"question":"q","seconds":-1})") == Places{"/answers/0/seconds"});
  CHECK(with_answer(R"({"question":"q","seconds":1,"chosen":12})") == Places{"/answers/0/chosen"});
  CHECK(with_answer(R"({"question":"q","seconds":1,"chosen":-1})") == Places{"/answers/0/chosen"});
  CHECK(with_answer(R"({"question":"q","seconds":1,"ticked":[1,1]})") == Places{"/answers/0/ticked"});
  CHECK(with_answer(R"({"question":"q","seconds":1,"order":[1,1.5]})") == Places{"/answers/0/order/1"});
  CHECK(with_answer(R"({"question":"q","seconds":1,"typed":3})") == Places{"/answers/0/typed"});
  CHECK(with_answer(R"({"question":"q","seconds":1,"typed":")" + std::string(201, '1') + "\"}") ==
        Places{"/answers/0/typed"});
  CHECK(with_answer(R"({"question":"q","seconds":1,"pointed":[1]})") == Places{"/answers/0/pointed"});
  CHECK(with_answer(R"({"question":"q","seconds":1,"pointed":[1,2,3]})") == Places{"/answers/0/pointed"});
  CHECK(with_answer(R"({"question":"q","seconds":1,"pointed":[1,1001]})").front() == "/answers/0/pointed/1");
  CHECK(with_answer(R"({"question":"q","seconds":1,"chosen":1,"typed":"1"})") == Places{"/answers/0"});
  CHECK(with_answer(R"({"question":"q","seconds":1,"colour":1})") == Places{"/answers/0/colour"});
  CHECK(with_answer(R"({"question":"q","seconds":1},{"question":"q","seconds":1})") ==
        Places{"/answers/1/question"});
}
