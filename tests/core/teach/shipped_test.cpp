// The quizzes and lessons that come with the program: read without a mistake, in words that the program uses,
// and the ones that the demo's rulebook asks for.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <sstream>

#include "core/rulebook/json.h"
#include "core/teach/bank_text.h"
#include "core/teach/marking.h"

namespace {

using namespace wm;
using namespace wm::teach;

const std::filesystem::path resources = std::string(WM_TESTS) + "/../resources";

std::string contents(const std::filesystem::path& file) {
  std::ostringstream text;
  text << std::ifstream(file).rdbuf();
  return text.str();
}

std::map<std::string, Bank> banks() {
  std::map<std::string, Bank> all;
  for (const auto& file : std::filesystem::directory_iterator(resources / "quizzes")) {
    if (file.path().extension() != ".txt") continue;
    INFO(file.path().filename().string());
    const auto bank = read_bank(contents(file.path()));
    if (!bank)
      for (const Problem& problem : bank.error()) FAIL_CHECK(problem.where << ": " << problem.what);
    else
      all[bank->name] = *bank;
  }
  return all;
}

/// As tests/app/word_list.h has them: words that people never read here, and pronouns that guess.
bool well_worded(const std::string& text) {
  static const std::regex never(
      R"(\b(alone|certified|certificate|green|trainee|denied|banned|locked|until|sign off|signed off|head|he|she|him|her|his|hers|himself|herself)\b)",
      std::regex::icase);
  std::smatch found;
  if (!std::regex_search(text, found, never)) return true;
  UNSCOPED_INFO("\"" << found.str() << "\" in: " << text);
  return false;
}

void collect(const Requirement& requirement, std::map<std::string, int>& quizzes,
             std::set<std::string>& lessons) {
  const auto parts = [&](const std::vector<Requirement>& of) {
    for (const Requirement& part : of) collect(part, quizzes, lessons);
  };
  if (const auto* quiz = std::get_if<NeedQuiz>(&requirement.need)) quizzes[quiz->quiz] = quiz->pass_percent;
  if (const auto* lesson = std::get_if<NeedLesson>(&requirement.need)) lessons.insert(lesson->lesson);
  if (const auto* checkout = std::get_if<NeedCheckout>(&requirement.need)) parts(checkout->given);
  if (const auto* any = std::get_if<NeedAnyOf>(&requirement.need)) parts(any->of);
}

/// What the demo's rulebook asks for: quizzes with their pass marks, and lessons.
void asked_for(std::map<std::string, int>& quizzes, std::set<std::string>& lessons) {
  const auto rulebook = read_rulebook(contents(resources / "demo/rulebook-2.json"));
  REQUIRE(rulebook);
  std::vector<Gate> gates;
  const auto add = [&](const std::vector<Gate>& some) {
    gates.insert(gates.end(), some.begin(), some.end());
  };
  for (const Tier& tier : rulebook->tiers) add(tier.gates);
  for (const MachineClass& c : rulebook->classes) {
    add(c.gates);
    for (const auto& [mode, some] : c.mode_gates) add(some);
  }
  for (const Gate& gate : gates) collect(gate.need, quizzes, lessons);
}

}  // namespace

TEST_CASE("Every quiz that the demo's rulebook asks for has its bank, with its pass mark", "[teach]") {
  const auto all = banks();
  std::map<std::string, int> quizzes;
  std::set<std::string> lessons;
  asked_for(quizzes, lessons);
  CHECK(quizzes.size() == 4);
  CHECK(all.size() == quizzes.size());
  for (const auto& [quiz, percent] : quizzes) {
    REQUIRE(all.count(quiz) == 1);
    CHECK(all.at(quiz).pass_percent == percent);
  }
  // As long as the demo's history says that they were.
  for (const auto& [quiz, length] :
       std::map<std::string, std::size_t>{{"tier 1", 10}, {"tier 2", 20}, {"tier 3", 10}, {"tier 4", 20}})
    CHECK(questions_a_paper(all.at(quiz)) == length);
}

TEST_CASE("The shipped questions are many, of every kind, and in words that the program uses", "[teach]") {
  std::size_t count = 0, critical = 0;
  std::map<std::size_t, int> kinds;
  std::set<std::string> ids, pictures;
  for (const auto& [name, bank] : banks())
    for (const Question& question : bank.questions) {
      ++count;
      ++kinds[question.kind.index()];
      critical += question.critical ? 1 : 0;
      CHECK(
          (ids.insert(question.id).second || (UNSCOPED_INFO(question.id << " stands in two banks"), false)));
      if (!question.picture.empty()) pictures.insert(question.picture);
      const Wording& english = *wording_of(question, "en");
      CHECK(well_worded(english.text));
      CHECK(well_worded(english.reason));
      CHECK(english.reason.find_first_of(".!?", english.reason.size() - 1) != std::string::npos);
      for (const std::string& choice : english.choices) CHECK(well_worded(choice));
    }
  CHECK(count >= 60);
  CHECK(critical >= 12);
  REQUIRE(kinds.size() == 5);
  for (const auto& [kind, of] : kinds) CHECK(of >= 4);
  for (const std::string& picture : pictures) CHECK(std::filesystem::exists(resources / "quizzes" / picture));
  for (const auto& file : std::filesystem::directory_iterator(resources / "quizzes"))
    if (file.path().extension() == ".svg") CHECK(pictures.count(file.path().filename().string()) == 1);
}

TEST_CASE("A shipped number is right in the round numbers of either unit, and wrong where it would be unsafe",
          "[teach]") {
  struct Case {
    const char *bank, *question;
    std::vector<const char*> right, wrong;
  };
  const Case cases[] = {
      {"tier 1", "sander-gap", {"1/16", "1.5 mm", "1.6 mm", "0.0625 in"}, {"5/64", "1/8", "2 mm"}},
      {"tier 2", "push-stick-from", {"6", "6 in", "150 mm", "15 cm"}, {"4 in", "6 mm", "100 mm"}},
      {"tier 2", "bandsaw-guide", {"1/4", "3/8", "6 mm", "3/16 in"}, {"1/2", "1", "15 mm"}},
      {"tier 2", "mitre-hands", {"6", "150 mm"}, {"4", "5 in"}},
      {"tier 3",
       "chip-limit",
       {"1/8", "0.125", "3.2 mm", "3,2 mm", "3 mm"},
       {"9/64", "3/16", "1/4", "4 mm", "1/8 mm"}},
      {"tier 3", "shortest-stock", {"6", "15 cm"}, {"4", "5", "12"}},
      {"tier 3", "one-turn", {"5/32", "0.156", "4 mm", "0.15625 in"}, {"1/8", "3/16", "5/16", "5 mm"}},
      {"tier 3", "fence-angle", {"90", "90°", "90 degrees"}, {"89", "45", "90 %"}},
      {"tier 4", "fire-watch", {"60", "1 h", "60 minutes", "3600 s"}, {"30 min", "1", "60 h"}},
      {"tier 4", "clear-around", {"35", "35 feet", "420 in"}, {"10 ft", "3.5 ft"}},
  };
  const auto all = banks();
  std::size_t numbers = 0;
  for (const auto& [name, bank] : all)
    for (const Question& question : bank.questions)
      numbers += std::holds_alternative<ANumber>(question.kind) ? 1 : 0;
  CHECK(numbers == std::size(cases));
  for (const Case& each : cases) {
    const Question* question = question_of(all.at(each.bank), each.question);
    REQUIRE(question != nullptr);
    for (const char* typed : each.right)
      CHECK((mark(*question, Typed{typed}).right || (UNSCOPED_INFO(each.question << ": " << typed), false)));
    for (const char* typed : each.wrong)
      CHECK((!mark(*question, Typed{typed}).right || (UNSCOPED_INFO(each.question << ": " << typed), false)));
  }
}

TEST_CASE("Where one choice of a shipped question is right, it is not told by being the longest", "[teach]") {
  std::size_t longest = 0, all = 0;
  for (const auto& [name, bank] : banks())
    for (const Question& question : bank.questions) {
      const auto* one = std::get_if<OneRight>(&question.kind);
      if (one == nullptr) continue;
      const auto& choices = wording_of(question, "en")->choices;
      const bool is_longest = std::all_of(choices.begin(), choices.end(), [&](const std::string& choice) {
        return choice.size() <= choices[one->right].size();
      });
      ++all;
      longest += is_longest ? 1 : 0;
    }
  CHECK(longest * 2 < all);
}

TEST_CASE("Every lesson that the demo's rulebook asks for has its page, in words that the program uses",
          "[teach]") {
  std::map<std::string, int> quizzes;
  std::set<std::string> lessons, pages;
  asked_for(quizzes, lessons);
  for (const auto& file : std::filesystem::directory_iterator(resources / "lessons")) {
    const std::string text = contents(file.path()), title = text.substr(0, text.find('\n'));
    INFO(file.path().filename().string());
    CHECK(well_worded(text));
    if (file.path().filename() == "README.md") continue;
    std::string name = file.path().stem().string();
    std::replace(name.begin(), name.end(), '-', ' ');
    pages.insert(name);
    CHECK(title.starts_with("# "));
    // Where work can hurt somebody the page defers to who knows better.
    CHECK(text.find("manual") != std::string::npos);
    CHECK(text.find("instructor") != std::string::npos);
  }
  CHECK(pages == lessons);
}
