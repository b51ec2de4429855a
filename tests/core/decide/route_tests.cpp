// Routes, judged by the plain evaluator: it follows each one, leaves out each step, tries to get there sooner
// with every record that could be entered at all, and tries to get there with fewer.
#include <catch2/catch.hpp>

#include <random>

#include "core/decide/decider.h"
#include "core/records/json.h"
#include "plain_evaluator.h"
#include "worlds.h"

using namespace wm;

namespace {

constexpr std::int64_t day_seconds = 86400;

struct Judge {
  const Shop& shop;
  std::optional<Instant> known;
  std::string person, target;
  Rung to;
  Instant from;

  /// Whether those records give the standing at t.
  bool reached(const std::vector<Record>& steps, Instant t, bool counting_on_others = false) const {
    Shop with = shop;
    for (Record step : steps) {
      step.recorded = Instant{-1'000'000'000'000};  // known whatever `known` says
      with.records.push_back(std::move(step));
    }
    const plain::Evaluator others(shop, known);
    return counting_on_others
               ? plain::Evaluator(with, known).standing(person, target, t) >= to
               : plain::Evaluator(with, known, person, others).standing(person, target, t) >= to;
  }

  int published(const std::string& item, Instant t) const {
    int revision = 0;
    for (const Record& r : shop.records) {
      const auto* publish = std::get_if<Publish>(&r.fact);
      const bool exists = known ? r.recorded <= *known && !(r.voided && *r.voided <= *known) : !r.voided;
      if (publish != nullptr && exists && publish->item == item && r.at <= t)
        revision = std::max(revision, publish->revision);
    }
    return revision;
  }

  /// Every record that the person could enter at t, whether it would count or not.
  std::vector<Record> everything(Instant t) const {
    std::vector<Record> all;
    const auto add = [&](Fact fact) {
      all.push_back({"step-" + std::to_string(t.seconds) + "-" + std::to_string(all.size()),
                     t,
                     t,
                     {},
                     std::move(fact)});
    };
    for (const char* paper : {"paper0", "paper1"}) add(Document{person, paper, {}});
    for (const char* item : {"item0", "item1"}) {
      add(Lesson{person, item, published(item, t)});
      add(Quiz{person, item, published(item, t), 1, 1, 0});
      for (const PersonId& other : shop.people) {
        if (other != person) add(Checkout{person, item, published(item, t), Outcome::passed, other});
      }
    }
    for (const char* x : {"saw", "jp", "jp/over", "jp/under", "mill", "jp/side"}) {
      for (int i = 0; i < 3; ++i) {
        for (const PersonId& other : shop.people)
          if (other != person) add(Supervised{person, x, 1440, other});
        add(Use{person, x});
      }
    }
    return all;
  }
};

std::string kind_order(const Record& r) {
  static const std::map<std::string_view, std::string> order{{"document", "0"}, {"lesson", "1"},
                                                             {"quiz", "2"},     {"supervised", "3"},
                                                             {"use", "4"},      {"checkout", "5"}};
  const auto name = [](const auto& fact) -> std::string {
    using T = std::decay_t<decltype(fact)>;
    if constexpr (std::is_same_v<T, Document>) return fact.document;
    if constexpr (std::is_same_v<T, Lesson>) return fact.lesson;
    if constexpr (std::is_same_v<T, Quiz>) return fact.quiz;
    if constexpr (std::is_same_v<T, Checkout>) return fact.checkout;
    if constexpr (std::is_same_v<T, Supervised> || std::is_same_v<T, Use>) return fact.target;
    return {};
  };
  return order.at(kind_word(r.fact)) + std::visit(name, r.fact);
}

void check_form(const Judge& judge, const Route& route) {
  for (std::size_t i = 0; i < route.steps.size(); ++i) {
    const Record& step = route.steps[i];
    CHECK(step.id == std::string(i < 9 ? "step-0" : "step-").append(std::to_string(i + 1)));
    CHECK(step.at >= judge.from);
    CHECK(step.at <= *route.reaches);
    CHECK(step.recorded == step.at);
    if (i > 0)
      CHECK(std::pair(route.steps[i - 1].at, kind_order(route.steps[i - 1])) <=
            std::pair(step.at, kind_order(step)));
    if (const auto* lesson = std::get_if<Lesson>(&step.fact))
      CHECK(lesson->revision == judge.published(lesson->lesson, step.at));
    if (const auto* quiz = std::get_if<Quiz>(&step.fact))
      CHECK(*quiz == Quiz{judge.person, quiz->quiz, judge.published(quiz->quiz, step.at), 1, 1, 0});
    if (const auto* session = std::get_if<Supervised>(&step.fact)) {
      CHECK(session->minutes >= 1);
      CHECK(session->minutes <= 1440);
    }
  }
}

/// Instants at which something might be done, before `to`, thinned out to a few.
std::vector<Instant> some_instants(const Judge& judge, Instant to, worlds::Tape& tape, int count) {
  std::vector<Instant> instants{judge.from, judge.from + 1, to - 2, to - 1};
  for (int i = 0; i < count; ++i) instants.push_back(worlds::instant_from(tape, judge.shop));
  std::erase_if(instants, [&](Instant t) { return t < judge.from || t >= to; });
  std::sort(instants.begin(), instants.end());
  instants.erase(std::unique(instants.begin(), instants.end()), instants.end());
  return instants;
}

/// Whether some `count` of the candidates are enough at t.
bool enough_of(const Judge& judge, const std::vector<Record>& candidates, std::size_t count, Instant t,
               std::vector<Record>& chosen, std::size_t from = 0) {
  if (chosen.size() == count) return judge.reached(chosen, t);
  for (std::size_t i = from; i < candidates.size(); ++i) {
    chosen.push_back(candidates[i]);
    const bool enough = enough_of(judge, candidates, count, t, chosen, i + 1);
    chosen.pop_back();
    if (enough) return true;
  }
  return false;
}

struct Seen {
  std::size_t routes = 0, none = 0, later = 0, steps = 0, longest = 0, sooner_tried = 0, fewer_tried = 0,
              unproved = 0;
};

void judge_one(worlds::Tape& tape, const Shop& shop, Seen& seen) {
  std::optional<Instant> known;
  if (tape.one_in(4)) known = worlds::instant_from(tape, shop);
  const Instant from = worlds::instant_from(tape, shop);
  const Judge judge{shop,
                    known,
                    shop.people[static_cast<std::size_t>(tape.roll(static_cast<int>(shop.people.size())))],
                    worlds::target_from(tape, shop),
                    tape.roll(3) == 0 ? Rung::supervised : Rung::independent,
                    from};
  Decider decider(shop, known);
  const Route route = decider.route(judge.person, judge.target, judge.to, from);
  INFO("route of " << judge.person << " on " << judge.target << " to " << word(judge.to) << " from "
                   << from.seconds << ", reaches " << (route.reaches ? route.reaches->seconds : 0) << ", "
                   << route.steps.size() << " steps");
  ++seen.routes;
  if (!route.shortest) ++seen.unproved;
  const Instant end = route.reaches ? *route.reaches : from + 900 * day_seconds;
  if (route.reaches) {
    seen.steps += route.steps.size();
    seen.longest = std::max(seen.longest, route.steps.size());
    if (end > from) ++seen.later;
    check_form(judge, route);
    CHECK(judge.reached(route.steps, end));
    CHECK(judge.reached(route.steps, end, true));
    for (std::size_t i = 0; i < route.steps.size(); ++i) {
      std::vector<Record> fewer = route.steps;
      fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
      CHECK_FALSE(judge.reached(fewer, end));
    }
  } else {
    ++seen.none;
    CHECK(route.shortest);
    CHECK(route.steps.empty());
  }
  // Sooner, with everything there is.
  const std::vector<Instant> instants = some_instants(judge, end, tape, 4);
  for (const Instant t : {instants.empty() ? from : instants[instants.size() / 2], end - 1}) {
    if (t < from || t >= end) continue;
    std::vector<Record> everything;
    for (const Instant u : instants)
      if (u <= t)
        for (Record& record : judge.everything(u)) everything.push_back(std::move(record));
    for (Record& record : judge.everything(t)) everything.push_back(std::move(record));
    ++seen.sooner_tried;
    const bool sooner = judge.reached(everything, t);
    CHECK_FALSE(sooner);
    if (sooner) {  // say by which of them
      for (std::size_t i = everything.size(); i-- > 0;) {
        std::vector<Record> fewer = everything;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
        if (judge.reached(fewer, t)) everything = std::move(fewer);
      }
      for (const Record& r : everything) UNSCOPED_INFO(to_json(r));
      FAIL("at " << t.seconds);
    }
  }
  // With fewer.
  if (!route.reaches || !route.shortest || route.steps.empty() || route.steps.size() > 3) return;
  std::vector<Record> candidates = judge.everything(end);
  if (end > from && route.steps.size() < 3)
    for (Record& record : judge.everything(from)) candidates.push_back(std::move(record));
  for (const Record& step : route.steps) candidates.push_back(step);
  std::vector<Record> chosen;
  ++seen.fewer_tried;
  CHECK_FALSE(enough_of(judge, candidates, route.steps.size() - 1, end, chosen));
}

}  // namespace

TEST_CASE("routes reach what they say, as early and with as few steps as any", "[decide][route]") {
  const char* wanted = std::getenv("WM_ROUTES");
  const std::size_t routes = wanted != nullptr ? std::stoull(wanted) : 1500;
  std::mt19937 random(20261126);
  Seen seen;
  while (seen.routes < routes) {
    std::vector<std::uint32_t> numbers(9000);
    for (auto& n : numbers) n = static_cast<std::uint32_t>(random()) >> 4;
    worlds::Tape tape(numbers);
    const Shop shop = worlds::shop_from(tape);
    for (int i = 0; i < 12; ++i) judge_one(tape, shop, seen);
  }
  WARN(seen.routes << " routes (" << seen.none << " to nowhere, " << seen.later << " with a wait, "
                   << seen.steps << " steps, at most " << seen.longest << ", " << seen.unproved
                   << " not proved), " << seen.sooner_tried << " tries to be sooner, " << seen.fewer_tried
                   << " to do with fewer");
  CHECK(seen.later > 0);
}

TEST_CASE("as few papers as brute force over all sets of them, a dozen included", "[decide][route]") {
  // Each gate is met by any of a few papers: the least set cover, small enough to try all 2^16 sets.
  constexpr int papers = 16;
  std::mt19937 random(7);
  std::size_t longest = 0;
  for (int round = 0; round < 25; ++round) {
    Rulebook book;
    book.effective_from = book.recorded = Instant{1'700'000'000};
    Tier tier;
    std::vector<std::uint32_t> gates;
    const int wide = 1 + round % 4;
    for (int g = 0; g < 12 + round; ++g) {
      std::uint32_t mask = 0;
      for (int i = 0; i < wide; ++i) mask |= 1u << random() % papers;
      NeedAnyOf any;
      for (int paper = 0; paper < papers; ++paper)
        if (mask >> paper & 1u) any.of.push_back({NeedDocument{"paper" + std::to_string(paper), {}, {}}});
      tier.gates.push_back({"g" + std::to_string(g), Rung::supervised, {any}, {}});
      gates.push_back(mask);
    }
    book.tiers = {tier};
    book.classes = {{"saw", 1, {}, {}, {}, {}, Supervision::independent}};
    Shop shop;
    shop.people = {"p"};
    shop.rulebooks = {book};

    int fewest = papers;
    for (std::uint32_t set = 0; set < 1u << papers; ++set) {
      const bool covers =
          std::all_of(gates.begin(), gates.end(), [&](std::uint32_t gate) { return (gate & set) != 0; });
      if (covers) fewest = std::min(fewest, __builtin_popcount(set));
    }
    Decider decider(shop);
    const Route route = decider.route("p", "saw", Rung::supervised, Instant{1'700'000'000});
    CHECK(route.shortest);
    CHECK(static_cast<int>(route.steps.size()) == fewest);
    longest = std::max(longest, route.steps.size());
  }
  CHECK(longest >= 12);
}

namespace {

/// A shop of one person and of classes that all stand in one tier, without gates yet.
Shop shop_of_classes(int count) {
  Rulebook book;
  book.effective_from = book.recorded = Instant{1'700'000'000};
  book.tiers = {{1, {}, {}, Supervision::independent}};
  for (int i = 0; i < count; ++i)
    book.classes.push_back({"c" + std::to_string(i), 1, {}, {}, {}, {}, Supervision::independent});
  Shop shop;
  shop.people = {"p"};
  shop.rulebooks = {book};
  return shop;
}

}  // namespace

TEST_CASE("a route goes through a chain of five thousand machines, and through shared ones once",
          "[decide][route]") {
  const auto needs = [](int target) {
    return Requirement{NeedStanding{"c" + std::to_string(target), Rung::independent}};
  };
  const Gate paper{"paper", Rung::independent, {NeedDocument{"paper", {}, {}}}, {}};
  SECTION("a chain") {
    Shop shop = shop_of_classes(5000);
    auto& classes = shop.rulebooks[0].classes;
    classes[0].gates = {paper};
    for (int i = 1; i < 5000; ++i)
      classes[static_cast<std::size_t>(i)].gates = {{"g", Rung::independent, needs(i - 1), {}}};
    Decider decider(shop);
    const Route route = decider.route("p", "c4999", Rung::independent, Instant{1'700'000'000});
    CHECK(route.shortest);
    CHECK(route.steps.size() == 1);
  }
  SECTION("layers of two, each resting on both below: two to the sixtieth ways down") {
    Shop shop = shop_of_classes(120);
    auto& classes = shop.rulebooks[0].classes;
    classes[0].gates = classes[1].gates = {paper};
    for (int i = 2; i < 120; ++i) {
      const int below = i - 2 - i % 2;
      classes[static_cast<std::size_t>(i)].gates = {
          {"g", Rung::independent, {NeedAllOf{{needs(below), needs(below + 1)}}}, {}}};
    }
    Decider decider(shop);
    const Route route = decider.route("p", "c119", Rung::independent, Instant{1'700'000'000});
    CHECK(route.shortest);
    CHECK(route.steps.size() == 1);
  }
}
