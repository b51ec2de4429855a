// What a designated initialiser does not name keeps its default, on purpose.
#pragma GCC diagnostic ignored "-Wmissing-field-initializers"

#include "core/rulebook/json.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "../generators.h"
#include "core/rulebook/circles.h"

using namespace wm;

namespace {

Rulebook with(std::vector<MachineClass> classes) {
  Rulebook book;
  book.tiers = {{.tier = 1}, {.tier = 2}};
  book.classes = std::move(classes);
  return book;
}

Gate asks(std::string id, Rung guards, Requirement need) {
  return {std::move(id), guards, std::move(need), {}};
}
Requirement standing(std::string target, Rung at_least) {
  return {NeedStanding{std::move(target), at_least}};
}

/// Whether the rungs of a small rulebook depend on one another in a circle, by following every path.
class PlainCircles {
 public:
  explicit PlainCircles(const Rulebook& book) : book_(book) {}
  bool any() {
    for (const auto& target : targets_of(book_))
      for (const Rung rung : {Rung::supervised, Rung::independent})
        if (reaches(target, rung, target, rung, 0)) return true;
    return false;
  }

 private:
  using Node = std::pair<TargetName, Rung>;
  void collect(const Requirement& r, std::vector<Node>& out) {
    if (const auto* s = std::get_if<NeedStanding>(&r.need)) {
      for (const auto& t : targets_of(book_))
        if (t == s->target || class_of(t) == s->target) out.emplace_back(t, s->at_least);
    } else if (const auto* tier = std::get_if<NeedTierStanding>(&r.need)) {
      for (const auto& t : targets_of(book_))
        if (find_class(book_, class_of(t))->tier == tier->tier) out.emplace_back(t, tier->at_least);
    } else if (const auto* checkout = std::get_if<NeedCheckout>(&r.need)) {
      for (const auto& one : checkout->given) collect(one, out);
    } else if (const auto* any_of = std::get_if<NeedAnyOf>(&r.need)) {
      for (const auto& one : any_of->of) collect(one, out);
    }
  }
  bool reaches(const TargetName& from, Rung rung, const TargetName& to, Rung to_rung, std::size_t steps) {
    if (steps > 2 * targets_of(book_).size()) return false;
    std::vector<Node> next;
    for (const Gate* gate : gates_of(book_, from))
      if (gate->guards <= rung) collect(gate->need, next);
    for (const auto& [target, r] : next)
      if ((target == to && r == to_rung) || reaches(target, r, to, to_rung, steps + 1)) return true;
    return false;
  }
  const Rulebook& book_;
};

/// Few targets, and gates that ask for standings only.
Rulebook tangle() {
  const auto rung = rc::gen::element(Rung::supervised, Rung::independent);
  const auto name = rc::gen::element<std::string>("a", "b", "c", "c/x", "c/y");
  int id = 0;
  const auto gates = [&] {
    std::vector<Gate> list;
    for (int left = *rc::gen::inRange(0, 2); left > 0; --left) {
      const auto need = *rc::gen::inRange(0, 5) == 0
                            ? Requirement{NeedTierStanding{*rc::gen::inRange(1, 3), *rung, {}}}
                            : standing(*name, *rung);
      const Requirement in_a_list = *rc::gen::arbitrary<bool>()
                                        ? Requirement{NeedAnyOf{{need}}}
                                        : Requirement{NeedCheckout{.checkout = "", .given = {need}}};
      list.push_back(asks(std::to_string(id++), *rung, in_a_list));
    }
    return list;
  };
  Rulebook book =
      with({{.name = "a", .tier = 1, .gates = gates()},
            {.name = "b", .tier = 2, .gates = gates()},
            {.name = "c", .tier = 2, .modes = {"x", "y"}, .gates = gates(), .mode_gates = {{"x", gates()}}}});
  if (*rc::gen::inRange(0, 4) == 0) book.tiers[1].gates = gates();
  return book;
}

}  // namespace

TEST_CASE("A rulebook written and read again is the same rulebook") {
  CHECK(rc::check([] {
    const Rulebook book = *gen::rulebook();
    const auto read = read_rulebook(to_json(book));
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == book);
    RC_ASSERT(mistakes_in(book).empty());
  }));
}

TEST_CASE("What has its default is left out when written") {
  const std::string text = to_json(with({{.name = "saw", .tier = 1}}));
  CHECK(text == R"({"version":1,"effective_from":"1970-01-01T00:00:00Z","recorded":"1970-01-01T00:00:00Z",)"
                R"("tiers":[{"tier":1},{"tier":2}],"classes":[{"class":"saw","tier":1}]})");
}

TEST_CASE("A rulebook made in the program is held to the same rules as one that is read") {
  const auto twice = mistakes_in(with({{.name = "saw", .tier = 1}, {.name = "saw", .tier = 7}}));
  REQUIRE(twice.size() == 2);
  CHECK(twice[0].where == "/classes/1/class");
  CHECK(twice[1].where == "/classes/1/tier");
}

TEST_CASE("A circle is found exactly where following every path finds one") {
  int circles = 0, all = 0;
  CHECK(rc::check([&] {
    const Rulebook book = tangle();
    const bool circle = PlainCircles(book).any();
    ++all;
    circles += circle;
    RC_ASSERT(find_circle(book).has_value() == circle);
  }));
  CHECK(circles > 0);
  CHECK(circles < all);
}

TEST_CASE("A circle is told rung by rung") {
  const auto circle = mistakes_in(with(
      {{.name = "A", .tier = 1, .gates = {asks("a", Rung::independent, standing("B", Rung::independent))}},
       {.name = "B", .tier = 1, .gates = {asks("b", Rung::independent, standing("A", Rung::independent))}}}));
  REQUIRE(circle.size() == 1);
  CHECK(circle[0].where == "/classes/0/gates/0");
  CHECK_THAT(circle[0].what,
             Catch::Contains("independent on A needs independent on B needs independent on A"));
}

TEST_CASE("Having to be supervised before becoming independent is no circle") {
  CHECK(mistakes_in(with({{.name = "A",
                           .tier = 1,
                           .gates = {asks("a", Rung::independent, standing("A", Rung::supervised))}}}))
            .empty());
}

TEST_CASE("A tier that asks for itself is a circle only where it has machines") {
  Rulebook book = with({});
  book.tiers[0].gates = {asks("a", Rung::supervised, {NeedTierStanding{1, Rung::supervised, 1}})};
  CHECK(mistakes_in(book).empty());
  book.classes = {{.name = "A", .tier = 1}};
  REQUIRE(mistakes_in(book).size() == 1);
  CHECK(mistakes_in(book)[0].where == "/tiers/0/gates/0");
}

namespace {

/// Each target asks for a standing on the next one.
Rulebook chain(int length) {
  Rulebook book = with({});
  for (int i = 0; i < length; ++i) {
    MachineClass c{.name = std::to_string(i), .tier = 1};
    if (i + 1 < length)
      c.gates = {asks("g" + c.name, Rung::supervised, standing(std::to_string(i + 1), Rung::supervised))};
    book.classes.push_back(std::move(c));
  }
  return book;
}

}  // namespace

TEST_CASE("A chain of a hundred thousand targets is followed to its end") {
  Rulebook book = chain(100'000);
  CHECK_FALSE(find_circle(book));
  book.classes.back().gates = {asks("last", Rung::supervised, standing("0", Rung::supervised))};
  const auto circle = find_circle(book);
  REQUIRE(circle);
  CHECK(circle->gate == "/classes/0/gates/0");
  CHECK(circle->rungs.size() == 100'001);
}

TEST_CASE("A long circle is told in short") {
  Rulebook book = chain(1000);
  book.classes.back().gates = {asks("last", Rung::supervised, standing("0", Rung::supervised))};
  const auto mistakes = mistakes_in(book);
  REQUIRE(mistakes.size() == 1);
  CHECK(mistakes[0].where == "/classes/0/gates/0");
  CHECK(mistakes[0].what.size() < 1000);
  CHECK_THAT(mistakes[0].what, Catch::EndsWith("needs supervised on 999 needs supervised on 0."));
}

TEST_CASE("A tier of many machines that all ask for the whole of it is judged without pairing them") {
  Rulebook book = with({});
  for (int i = 0; i < 20'000; ++i) book.classes.push_back({.name = std::to_string(i), .tier = 1});
  for (int i = 0; i < 20'000; ++i)
    book.classes.push_back(
        {.name = "x" + std::to_string(i),
         .tier = 2,
         .gates = {asks(std::to_string(i), Rung::supervised, {NeedTierStanding{1, Rung::supervised, {}}})}});
  CHECK_FALSE(find_circle(book));
}

TEST_CASE("A target's gates are its tier's, its class's and its mode's, in order of id") {
  Rulebook book = with({{.name = "c",
                         .tier = 2,
                         .modes = {"x", "y"},
                         .gates = {asks("m", Rung::supervised, {NeedAge{1}})},
                         .mode_gates = {{"x", {asks("a", Rung::supervised, {NeedAge{1}})}}}},
                        {.name = "plain", .tier = 1}});
  book.tiers[1].gates = {asks("z", Rung::supervised, {NeedAge{1}})};
  const auto ids = [&](std::string_view target) {
    std::string all;
    for (const Gate* gate : gates_of(book, target)) all += gate->id;
    return all;
  };
  CHECK(ids("c/x") == "amz");
  CHECK(ids("c/y") == "mz");
  for (const char* none : {"c", "c/", "c/z", "plain", "plain/x", "other", ""}) CHECK(ids(none) == "");
  CHECK(targets_of(book) == std::vector<TargetName>{"c/x", "c/y", "plain"});
}
