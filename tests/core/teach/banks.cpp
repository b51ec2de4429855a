#include "banks.h"

#include <algorithm>
#include <numeric>

namespace wm::teach::made {
namespace {

/// Words that a reader could take for something else, and letters of many scripts.
std::string words(Dice& dice) {
  static const std::vector<std::string> all = {
      "saw", "board", "*", "-",    ">",      "1.",    "12.",       "[en]",       "[x",    "y]", "#",  "\\",
      "\\*", ":",     "é", "木工", "станок", "kind:", "question:", "question:a", "1/8\"", "…",  "of", "a b]"};
  std::string text;
  for (int n = whole(dice, 1, 5); n > 0; --n)
    text += (text.empty() ? "" : " ") +
            all[static_cast<std::size_t>(whole(dice, 0, static_cast<int>(all.size()) - 1))];
  return text;
}

Measure measure(Dice& dice, Unit unit, int least) {
  const long over[] = {1, 2, 8, 64, 10, 1000, 3, 1'000'000, 999'983};
  return {fraction(whole(dice, least, 100'000), over[whole(dice, 0, 8)]), unit};
}

Region region(Dice& dice) {
  const int left = whole(dice, 0, 900), top = whole(dice, 0, 900);
  const int right = whole(dice, left + 1, 1000), bottom = whole(dice, top + 1, 1000);
  if (chance(dice, 50)) return Rectangle{left, top, right, bottom};
  return Polygon{{{left, top}, {right, top}, {whole(dice, left, right), bottom}}};
}

Kind kind(Dice& dice, std::size_t choices) {
  switch (whole(dice, 0, 4)) {
    case 0:
      return OneRight{static_cast<std::size_t>(whole(dice, 0, static_cast<int>(choices) - 1))};
    case 1: {
      SeveralRight several;
      for (std::size_t i = 0; i < choices; ++i) several.right.push_back(chance(dice, 50));
      several.right[0] =
          several.right[0] || std::count(several.right.begin(), several.right.end(), true) == 0;
      return several;
    }
    case 2:
      return InOrder{};
    case 3: {
      const auto unit = static_cast<Unit>(whole(dice, 0, 10));
      const bool length = same_dimension(unit, Unit::inch);
      return ANumber{measure(dice, unit, length ? 0 : -100'000), measure(dice, unit, 0)};
    }
    default: {
      APlace place;
      for (int n = whole(dice, 1, 3); n > 0; --n) place.regions.push_back(region(dice));
      return place;
    }
  }
}

Question question(Dice& dice, int number, const std::vector<std::string>& languages) {
  const auto choices = static_cast<std::size_t>(whole(dice, 3, 12));
  Question q;
  q.id = "q" + std::to_string(number);
  q.revision = whole(dice, 1, 9);
  q.critical = chance(dice, 20);
  q.kind = kind(dice, choices);
  q.partial = (std::holds_alternative<SeveralRight>(q.kind) || std::holds_alternative<InOrder>(q.kind)) &&
              chance(dice, 50);
  if (std::holds_alternative<APlace>(q.kind) || chance(dice, 10))
    q.picture = "picture " + std::to_string(number) + ".png";
  for (const std::string& language : languages) {
    Wording wording{language, words(dice), {}, words(dice)};
    if (q.kind.index() < 3)
      for (std::size_t i = 0; i < choices; ++i)
        wording.choices.push_back(words(dice) + " " + std::to_string(i));
    q.wordings.push_back(std::move(wording));
  }
  return q;
}

Given right_or_near(Dice& dice, const Question& q) {
  const std::size_t choices = choice_count(q);
  const auto any = [&] { return static_cast<std::size_t>(whole(dice, 0, static_cast<int>(choices) - 1)); };
  if (const auto* one = std::get_if<OneRight>(&q.kind)) return Chosen{chance(dice, 50) ? one->right : any()};
  if (const auto* several = std::get_if<SeveralRight>(&q.kind)) {
    Ticked ticked;
    const int wrong = chance(dice, 50) ? 0 : 30;
    for (std::size_t i = 0; i < choices; ++i)
      if (several->right[i] != chance(dice, wrong)) ticked.choices.push_back(i);
    return ticked;
  }
  if (std::holds_alternative<InOrder>(q.kind)) {
    Ordered ordered;
    ordered.steps.resize(choices);
    std::iota(ordered.steps.begin(), ordered.steps.end(), std::size_t{0});
    for (int swaps = chance(dice, 50) ? 0 : whole(dice, 1, 4); swaps > 0; --swaps)
      std::swap(ordered.steps[any()], ordered.steps[any()]);
    return ordered;
  }
  if (const auto* number = std::get_if<ANumber>(&q.kind)) {
    // On the edge, a little inside, a little outside, or somewhere.
    Fraction value = number->answer.value;
    const Fraction away = number->tolerance.value * (chance(dice, 50) ? 1 : -1);
    if (const int where = whole(dice, 0, 3); where > 0) value += away + fraction(where - 2, 7);
    const std::string unit = chance(dice, 50) ? to_text(Measure{0, number->answer.unit}).substr(1) : "";
    return Typed{value.get_num().get_str() + "/" + value.get_den().get_str() + unit};
  }
  return Pointed{{whole(dice, 0, 1000), whole(dice, 0, 1000)}};
}

}  // namespace

Bank bank(Dice& dice) {
  static const std::vector<std::string> tags = {"en", "es", "pt-BR", "zh-Hant"};
  Bank bank;
  bank.name = words(dice);
  bank.revision = whole(dice, 1, 1'000'000);
  bank.languages.assign(tags.begin(), tags.begin() + whole(dice, 1, 4));
  bank.pass_percent = whole(dice, 1, 100);
  if (chance(dice, 50)) bank.minutes = whole(dice, 1, 600);
  int number = 0;
  for (int topic = whole(dice, 1, 4); topic > 0; --topic) {
    Draw draw{"topic " + std::to_string(topic) + " of " + words(dice), 0};
    const int questions = whole(dice, 2, 7);
    int critical = 0;
    for (int i = 0; i < questions; ++i) {
      bank.questions.push_back(question(dice, ++number, bank.languages));
      bank.questions.back().topic = draw.topic;
      critical += bank.questions.back().critical ? 1 : 0;
    }
    draw.count = whole(dice, std::max(critical, 2), questions);
    bank.draws.push_back(draw);
  }
  // Topics need not stand together.
  for (std::size_t i = bank.questions.size(); i > 1; --i)
    std::swap(bank.questions[i - 1],
              bank.questions[static_cast<std::size_t>(whole(dice, 0, static_cast<int>(i) - 1))]);
  return bank;
}

Given given(Dice& dice, const Question& question) {
  switch (whole(dice, 0, 19)) {
    case 0:
      return Unanswered{};
    case 1:
      return Chosen{static_cast<std::size_t>(whole(dice, 0, 11))};
    case 2:
      return Ticked{
          {static_cast<std::size_t>(whole(dice, 0, 5)), static_cast<std::size_t>(whole(dice, 6, 11))}};
    case 3:
      return Ordered{{0, 1, 2}};
    case 4:
      return Typed{"about " + words(dice)};
    case 5:
      return Pointed{{whole(dice, 0, 1000), whole(dice, 0, 1000)}};
    default:
      return right_or_near(dice, question);
  }
}

}  // namespace wm::teach::made
