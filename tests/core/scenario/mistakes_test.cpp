// Every mistake that a scenario can have, as a row: a change to good.json, and the one place it must be
// found.
#include <catch2/catch.hpp>

#include <array>
#include <fstream>
#include <sstream>

#include "core/scenario/scenario.h"

namespace {

struct Mistake {
  const char* find;  // stands in good.json once
  const char* by;
  const char* where;
  const char* says;
};

std::string scenario_file(const std::string& name) {
  std::ifstream in(WM_TESTS "/core/scenario/" + name, std::ios::binary);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

std::string changed(std::string text, const std::string& find, const std::string& by) {
  const auto at = text.find(find);
  INFO("to be changed: " << find);
  REQUIRE(at != std::string::npos);
  REQUIRE(text.find(find, at + 1) == std::string::npos);
  return text.replace(at, find.size(), by);
}

const std::vector<Mistake> mistakes = {
    // Unknown, missing and repeated fields.
    {R"("zone": "Europe/Vienna",)", R"("zone": "Europe/Vienna", "note": 1,)", "/note", "unknown"},
    {R"({"id": "ana"})", R"({"id": "ana", "name": "Ana"})", "/people/0/name", "unknown"},
    {R"("born": "2001-02-28")", R"("born": "2001-02-28", "until": "2027-01-01")", "/records/0/until",
     "unknown"},
    {R"({"kind": "staffed"})", R"({"kind": "staffed", "count": 1})",
     "/rulebooks/0/tiers/0/conditions/0/count", "unknown"},
    {R"("to": "independent", "at")", R"("to": "independent", "when": 1, "at")", "/asks/9/when", "unknown"},
    {R"("rulebook": {"tiers")", R"("rulebook": {"version": 3, "tiers")", "/asks/8/rulebook/version",
     "unknown"},
    {R"("rulebook": {"tiers")", R"("rulebook": {"recorded": "2026-01-02T09:00:00Z", "tiers")",
     "/asks/8/rulebook/recorded", "unknown"},
    {R"("valid": {"months": 12})", R"("valid": {"weeks": 12})",
     "/rulebooks/0/tiers/0/gates/0/need/valid/weeks", "no field"},
    {R"("valid": {"months": 12})", R"("valid": {"months": 12, "days": 1})",
     "/rulebooks/0/tiers/0/gates/0/need/valid/days", "one more"},
    {R"("scope": {"tier": 3})", R"("scope": {"tier": 3, "until": 1})", "/records/8/scope/until", "unknown"},
    {R"("scope": {"tier": 3})", R"("scope": {"tier": 3, "target": "saw"})", "/records/8/scope/target",
     "one more"},
    {R"( "zone": "Europe/Vienna",)", "", "", "\"zone\" is missing"},
    {R"(, "born": "2001-02-28")", "", "/records/0", "\"born\" is missing"},
    {R"(, "years": 16)", "", "/rulebooks/0/tiers/0/gates/1/need", "\"years\" is missing"},
    {R"(, "at_least": "supervised"})"
     ","
     "\n  {\"ask\": \"assessors\"",
     "},\n  {\"ask\": \"assessors\"", "/asks/4", "missing"},
    {R"("staffed": false, )", "", "/asks/3", "\"staffed\" is missing"},
    {R"(, "present": [])", "", "/asks/3", "\"present\" is missing"},
    {R"("valid": {"months": 12})", R"("valid": {})", "/rulebooks/0/tiers/0/gates/0/need/valid",
     "without a length"},
    {R"("scope": {"tier": 3})", R"("scope": {})", "/records/8/scope", "scope"},
    {R"("kind": "birth", )", "", "/records/0", "\"kind\" is missing"},
    {R"("ask": "route", )", "", "/asks/9", "\"ask\" is missing"},
    {R"(, "within": {"days": 200})", "", "/rulebooks/0/classes/0/gates/2/need", "\"within\" is missing"},
    {R"("born": "2001-02-28")", R"("born": "2001-02-28", "born": "2001-02-28")", "/records/0/born",
     "second time"},
    {R"("mode_gates": {"over": [)", R"("mode_gates": {"over": [], "over": [)",
     "/rulebooks/0/classes/1/mode_gates/over", "second time"},
    {R"("zone": "Europe/Vienna",)", R"("zone": "Europe/Vienna", "a/b~c": {"x": {}, "x": {}},)", "/a~1b~0c",
     "unknown"},
    // Wrong types, and numbers that are not written as integers.
    {R"({"id": "bo"})", R"({"id": 5})", "/people/1/id", "a number"},
    {R"({"id": "bo"})", R"("bo")", "/people/1", "text"},
    {R"("born": "2001-02-28")", R"("born": 2001)", "/records/0/born", "no day"},
    {R"("born": "2001-02-28")", R"("born": "2001-02-29")", "/records/0/born", "no day"},
    {R"("born": "2001-02-28")", R"("born": "1899-12-31")", "/records/0/born", "no day"},
    {R"("born": "2001-02-28")", R"("born": null)", "/records/0/born", "null"},
    {R"("effective_from": "2026-01-01T00:00:00Z")", R"("effective_from": "2026-01-01T00:00:00+00:00")",
     "/rulebooks/0/effective_from", "no instant"},
    {R"("effective_from": "2026-01-01T00:00:00Z")", R"("effective_from": "2026-01-01T00:00:60Z")",
     "/rulebooks/0/effective_from", "no instant"},
    {R"("severity": 4)", R"("severity": 4.0)", "/records/7/severity", "not written as an integer"},
    {R"("severity": 4)", R"("severity": 4e0)", "/records/7/severity", "not written as an integer"},
    {R"("severity": 4)", R"("severity": "4")", "/records/7/severity", "4"},
    {R"("severity": 4)", R"("severity": 18446744073709551616)", "/records/7/severity", "too big"},
    {R"("severity": 4)", R"("severity": 9223372036854775808)", "/records/7/severity", "too big"},
    {R"("severity": 4)", R"("severity": 1e999)", "/records/7/severity", "too big"},
    {R"("founding": false)", R"("founding": "no")", "/records/16/founding", "text"},
    {R"("staffed": false)", R"("staffed": 0)", "/asks/3/staffed", "a number"},
    {R"("present": [])", R"("present": {})", "/asks/3/present", "an object"},
    {R"("modes": ["long"])", R"("modes": "long")", "/rulebooks/1/classes/0/modes", "text"},
    {R"("grace": {"days": 14})", R"("grace": 14)", "/rulebooks/0/tiers/0/gates/0/need/grace", "no period"},
    {R"("retry": {"wait_hours": 24, "most": 3, "in_hours": 720})", R"("retry": 24)",
     "/rulebooks/0/classes/0/gates/0/need/retry", "a number"},
    // Unknown kinds, zones, rungs and words.
    {R"("kind": "birth")", R"("kind": "Birth")", "/records/0/kind", "unknown"},
    {R"("kind": "age", "years": 16)", R"("kind": "ages", "years": 16)",
     "/rulebooks/0/tiers/0/gates/1/need/kind", "unknown"},
    {R"("kind": "staffed")", R"("kind": "open")", "/rulebooks/0/tiers/0/conditions/0/kind", "unknown"},
    {R"("ask": "route")", R"("ask": "rout")", "/asks/9/ask", "unknown"},
    {"Europe/Vienna", "Europe/Wien", "/zone", ""},
    {R"("at_least": "barred")", R"("at_least": "nobody")", "/rulebooks/0/classes/0/conditions/0/at_least",
     "unknown"},
    {R"("outcome": "passed")", R"("outcome": "ok")", "/records/4/outcome", "unknown"},
    {R"("part": "hurt")", R"("part": "harmed")", "/records/7/part", "unknown"},
    {R"("revision": "any")", R"("revision": "latest")", "/rulebooks/0/tiers/0/gates/2/need/revision",
     "unknown"},
    {R"("supervision": "assessor")", R"("supervision": "anyone")", "/rulebooks/0/tiers/0/supervision",
     "unknown"},
    {R"("scope": "all")", R"("scope": "everything")", "/records/10/scope", "scope"},
    {R"("count": "all")", R"("count": "every")", "/rulebooks/0/classes/2/gates/0/need/count", "unknown"},
    // `for` and `to`.
    {R"("id": "t-age", "for": "supervised")", R"("id": "t-age", "for": "barred")",
     "/rulebooks/0/tiers/0/gates/1/for", "unknown"},
    {R"("to": "independent")", R"("to": "barred")", "/asks/9/to", "unknown"},
    // Named, but nowhere defined.
    {R"("kind": "birth", "at": "2026-01-02T09:00:00Z", "recorded": "2026-01-02T09:00:00Z", "person": "ana")",
     R"("kind": "birth", "at": "2026-01-02T09:00:00Z", "recorded": "2026-01-02T09:00:00Z", "person": "Ana")",
     "/records/0/person", "no person"},
    {R"("assessor": "bo")", R"("assessor": "boo")", "/records/4/assessor", "no person"},
    {R"("supervisor": "bo")", R"("supervisor": "boo")", "/records/5/supervisor", "no person"},
    {R"("present": ["bo", "bo", "ana"])", R"("present": ["bo", "zoe", "ana"])", "/asks/2/present/1",
     "no person"},
    {R"("busy": ["Živa"])", R"("busy": ["Ziva"])", "/asks/2/busy/0", "no person"},
    {R"("machine": "combi-1")", R"("machine": "combi-2")", "/asks/2/machine", "no machine"},
    {R"(09:13:00Z", "machine": "saw-1")", R"(09:13:00Z", "machine": "saw-9")", "/records/13/machine",
     "no machine"},
    {R"("suspension": "r8")", R"("suspension": "r88")", "/records/9/suspension", "no record"},
    {R"("appointment": "r10")", R"("appointment": "r110")", "/records/11/appointment", "no record"},
    {R"("lockout": "r13")", R"("lockout": "r113")", "/records/14/lockout", "no record"},
    {R"("record": "r10")", R"("record": "r110")", "/asks/7/record", "no record"},
    {R"("target": "combi/over", "minutes")", R"("target": "combi/side", "minutes")", "/records/5/target",
     "target or class"},
    {R"("target": "combi"})"
     ","
     "\n  {\"id\": \"r7\"",
     "\"target\": \"comb\"},\n  {\"id\": \"r7\"", "/records/6/target", "target or class"},
    {R"("target": "lathe/long"}, "founding")", R"("target": "lathe/short"}, "founding")",
     "/records/16/scope/target", "target or class"},
    {R"("scope": {"tier": 3})", R"("scope": {"tier": 4})", "/records/8/scope/tier", "tier 4"},
    {R"("class": "combi"}])", R"("class": "combo"}])", "/machines/1/class", "class"},
    {R"("target": "combi/under", "from")", R"("target": "combi/side", "from")", "/asks/1/target", "target"},
    {R"("mode": "over")", R"("mode": "side")", "/asks/2/mode", "no mode"},
    {R"("class": "saw", "tier": 2)", R"("class": "saw", "tier": 3)", "/rulebooks/0/classes/0/tier",
     "no tier 3"},
    {R"("target": "combi", "at_least")", R"("target": "lathe", "at_least")",
     "/rulebooks/0/classes/2/gates/1/need/of/0/target", "no target or class"},
    {R"("target": "combi/under", "minutes")", R"("target": "lathe/long", "minutes")",
     "/rulebooks/0/classes/1/mode_gates/over/0/need/target", "no target or class"},
    {R"("kind": "tier_standing", "tier": 2)", R"("kind": "tier_standing", "tier": 3)",
     "/rulebooks/0/classes/2/gates/0/need/tier", "no tier 3"},
    {R"("mode_gates": {"over")", R"("mode_gates": {"side")", "/rulebooks/0/classes/1/mode_gates/side",
     "no mode"},
    {R"({"class": "press", "tier": 9})", R"({"class": "press", "tier": 2})",
     "/asks/8/rulebook/classes/0/tier", "no tier 2"},
    // Two with one name.
    {R"({"id": "bo"})", R"({"id": "bo"}, {"id": "bo"})", "/people/2/id", "another"},
    {R"("machines": [)", R"("machines": [{"id": "combi-1", "class": "combi"}, )", "/machines/2/id",
     "another"},
    {R"({"id": "r16")", R"({"id": "r0")", "/records/16/id", "another"},
    {R"("version": 2)", R"("version": 1)", "/rulebooks/1/version", "another"},
    {R"({"tier": 1, "gates": []})", R"({"tier": 1, "gates": []}, {"tier": 2})", "/rulebooks/0/tiers/2/tier",
     "another"},
    {R"("classes": [{"class": "lathe")", R"("classes": [{"class": "lathe", "tier": 3}, {"class": "lathe")",
     "/rulebooks/1/classes/1/class", "another"},
    {R"("modes": ["over", "under"])", R"("modes": ["over", "under", "over"])",
     "/rulebooks/0/classes/1/modes/2", "another"},
    {R"({"id": "s-use")", R"({"id": "s-quiz")", "/rulebooks/0/classes/0/gates/2/id", "another"},
    {R"({"id": "o-practice")", R"({"id": "t-age")", "/rulebooks/0/classes/1/mode_gates/over/0/id", "another"},
    // Names that would be taken for something else.
    {R"("modes": ["long"])", R"("modes": ["long", "a/b"])", "/rulebooks/1/classes/0/modes/1", "\"/\""},
    {R"({"class": "press", "tier": 9})", R"({"class": "a/b", "tier": 9})", "/asks/8/rulebook/classes/0/class",
     "\"/\""},
    {R"({"id": "r16")", R"({"id": "step-1")", "/records/16/id", "step"},
    {R"("target": "combi/under", "from")", R"("target": "combi", "from")", "/asks/1/target", "has modes"},
    // A circle.
    {R"([{"kind": "standing", "target": "saw", "at_least": "supervised"}])",
     R"([{"kind": "standing", "target": "sander", "at_least": "independent"}])",
     "/rulebooks/0/classes/0/gates/1", "circle"},
    {R"([{"kind": "standing", "target": "saw", "at_least": "supervised"}])",
     R"([{"kind": "standing", "target": "saw", "at_least": "independent"}])",
     "/rulebooks/0/classes/0/gates/1", "independent on saw needs independent on saw"},
    // Order in time.
    {R"("voided": "2026-01-02T09:14:00Z")", R"("voided": "2026-01-02T09:13:59Z")", "/records/14/voided",
     "struck out"},
    {R"("suspension": "r8")", R"("suspension": "r10")", "/records/9/suspension", "kind"},
    {R"("appointment": "r10")", R"("appointment": "r8")", "/records/11/appointment", "kind"},
    {R"("lockout": "r13")", R"("lockout": "r12")", "/records/14/lockout", "kind"},
    {R"("reinstate", "at": "2026-01-02T09:08:00Z")", R"("reinstate", "at": "2026-01-02T09:07:59Z")",
     "/records/9/at", "before"},
    {R"("dismiss", "at": "2026-01-02T09:11:00Z")", R"("dismiss", "at": "2026-01-02T09:09:59Z")",
     "/records/11/at", "before"},
    {R"("release", "at": "2026-01-02T09:14:00Z")", R"("release", "at": "2026-01-02T09:12:59Z")",
     "/records/14/at", "before"},
    {R"("to": "2026-02-01T00:00:00Z")", R"("to": "2026-01-31T23:59:59Z")", "/asks/1/to", "before"},
    {R"("to": "2026-03-01T00:00:00Z")", R"("to": "2026-01-31T23:59:59Z")", "/asks/6/to", "before"},
    // What goes together.
    {R"("valid": {"months": 12}, )", "", "/rulebooks/0/tiers/0/gates/0/need/grace", "grace"},
    {R"("minutes": 90, )", "", "/rulebooks/0/classes/1/mode_gates/over/0/need", "amount"},
    {R"("retry": {"wait_hours": 24, "most": 3, "in_hours": 720})", R"("retry": {})",
     "/rulebooks/0/classes/0/gates/0/need/retry", "asks for nothing"},
    {R"(, "in_hours": 720)", "", "/rulebooks/0/classes/0/gates/0/need/retry", "without the other"},
    {R"("most": 3, )", "", "/rulebooks/0/classes/0/gates/0/need/retry", "without the other"},
    {R"("wait_hours": 24, "most": 3, )", "", "/rulebooks/0/classes/0/gates/0/need/retry",
     "without the other"},
    {R"("of": [{"kind": "age", "years": 40}])", R"("of": [])",
     "/rulebooks/0/classes/2/gates/1/need/of/1/of/0/of", "empty"},
    {R"("kind": "some_of", "count": 1)", R"("kind": "some_of", "count": 2)",
     "/rulebooks/0/classes/2/gates/1/need/of/1/count", "than there are"},
    {R"("tier": 2, "at_least": "independent")", R"("tier": 2, "at_least": "barred")",
     "/rulebooks/0/classes/2/gates/0/need/at_least", "unknown"},
    {R"("target": "saw", "at_least": "supervised"}])", R"("target": "saw", "at_least": "barred"}])",
     "/rulebooks/0/classes/0/gates/1/need/given/0/at_least", "unknown"},
    {R"("at_least": "supervised"})"
     ",\n  {\"ask\": \"assessors\"",
     "\"at_least\": \"barred\"},\n  {\"ask\": \"assessors\"", "/asks/4/at_least", "unknown"},
    {R"(, "until": "2027-12-31")", "", "/records/10", "no end"},
    // Ranges: one below and one above each.
    {R"("pass_percent": 80)", R"("pass_percent": 0)", "/rulebooks/0/classes/0/gates/0/need/pass_percent",
     "1 to 100"},
    {R"("pass_percent": 80)", R"("pass_percent": 101)", "/rulebooks/0/classes/0/gates/0/need/pass_percent",
     "1 to 100"},
    {R"("severity": 4)", R"("severity": 0)", "/records/7/severity", "1 to 4"},
    {R"("severity": 4)", R"("severity": 5)", "/records/7/severity", "1 to 4"},
    {R"("renew_after_severity": 2)", R"("renew_after_severity": 0)",
     "/rulebooks/0/classes/0/gates/1/need/renew_after_severity", "1 to 3"},
    {R"("renew_after_severity": 2)", R"("renew_after_severity": 4)",
     "/rulebooks/0/classes/0/gates/1/need/renew_after_severity", "1 to 3"},
    {R"("revision": 1000000)", R"("revision": 1000001)", "/records/12/revision", "0 to 1000000"},
    {R"("revision": 1000000)", R"("revision": -1)", "/records/12/revision", "0 to 1000000"},
    {R"("version": 2)", R"("version": 0)", "/rulebooks/1/version", "1 to 1000000"},
    {R"("version": 2)", R"("version": 1000001)", "/rulebooks/1/version", "1 to 1000000"},
    {R"("tiers": [{"tier": 3}], "classes": [{"class": "lathe", "tier": 3)",
     R"("tiers": [{"tier": 3}, {"tier": 0}], "classes": [{"class": "lathe", "tier": 3)",
     "/rulebooks/1/tiers/1/tier", "1 to 99"},
    {R"("scope": {"tier": 3})", R"("scope": {"tier": 100})", "/records/8/scope/tier", "1 to 99"},
    {R"("years": 16)", R"("years": 0)", "/rulebooks/0/tiers/0/gates/1/need/years", "1 to 120"},
    {R"("years": 16)", R"("years": 121)", "/rulebooks/0/tiers/0/gates/1/need/years", "1 to 120"},
    {R"("minutes": 45)", R"("minutes": 0)", "/records/5/minutes", "1 to 1440"},
    {R"("minutes": 45)", R"("minutes": 1441)", "/records/5/minutes", "1 to 1440"},
    {R"("minutes": 90)", R"("minutes": 0)", "/rulebooks/0/classes/1/mode_gates/over/0/need/minutes",
     "1 to 1000000"},
    {R"("minutes": 90)", R"("minutes": 1000001)", "/rulebooks/0/classes/1/mode_gates/over/0/need/minutes",
     "1 to 1000000"},
    {R"("minutes": 90)", R"("sessions": 100001)", "/rulebooks/0/classes/1/mode_gates/over/0/need/sessions",
     "1 to 100000"},
    {R"("wait_hours": 24)", R"("wait_hours": 0)", "/rulebooks/0/classes/0/gates/0/need/retry/wait_hours",
     "1 to 100000"},
    {R"("in_hours": 720)", R"("in_hours": 100001)", "/rulebooks/0/classes/0/gates/0/need/retry/in_hours",
     "1 to 100000"},
    {R"("most": 3)", R"("most": 0)", "/rulebooks/0/classes/0/gates/0/need/retry/most", "1 to 100000"},
    {R"("kind": "buddy", "count": 1)", R"("kind": "buddy", "count": 0)",
     "/rulebooks/0/classes/0/conditions/0/count", "1 to 100000"},
    {R"("count": 2, "within")", R"("count": 100001, "within")", "/rulebooks/0/classes/0/gates/2/need/count",
     "1 to 100000"},
    {R"("count": "all")", R"("count": 0)", "/rulebooks/0/classes/2/gates/0/need/count", "1 to 100000"},
    {R"("correct": 9)", R"("correct": 11)", "/records/3/correct", "questions"},
    {R"("correct": 9)", R"("correct": -1)", "/records/3/correct", "0 to 10000"},
    {R"("correct": 9, "total": 10)", R"("correct": 0, "total": 0)", "/records/3/total", "1 to 10000"},
    {R"("total": 10)", R"("total": 10001)", "/records/3/total", "1 to 10000"},
    {R"("critical_missed": 0)", R"("critical_missed": 2)", "/records/3/critical_missed", "wrong"},
    {R"("critical_missed": 0)", R"("critical_missed": -1)", "/records/3/critical_missed", "0 to 10000"},
    {R"("valid": {"months": 12})", R"("valid": {"months": 1201})",
     "/rulebooks/0/tiers/0/gates/0/need/valid/months", "1 to 1200"},
    {R"("grace": {"days": 14})", R"("grace": {"days": 0})", "/rulebooks/0/tiers/0/gates/0/need/grace/days",
     "1 to 36525"},
    {R"("grace": {"days": 14})", R"("grace": {"days": 36526})",
     "/rulebooks/0/tiers/0/gates/0/need/grace/days", "1 to 36525"},
    {R"("changeover": {"calendar_months": 2})", R"("changeover": {"calendar_months": 1201})",
     "/rulebooks/0/tiers/0/gates/2/need/changeover/calendar_months", "1 to 1200"},
};

/// `deep` lists of requirements, one inside another.
std::string nested(int deep) {
  std::string open, close;
  for (int i = 0; i < deep; ++i) open += R"({"kind": "all_of", "of": [)", close += "]}";
  return open + R"({"kind": "age", "years": 40})" + close;
}

std::string all(const std::vector<wm::Problem>& problems) {
  std::string text;
  for (const auto& p : problems) text += p.where + ": " + p.what + " " + p.remedy + "\n";
  return text;
}

}  // namespace

TEST_CASE("The good scenario has no mistake") {
  const auto read = wm::read_scenario(scenario_file("good.json"));
  INFO((read ? "" : all(read.error())));
  REQUIRE(read);
  CHECK(read->shop.records.size() == 17);
  CHECK(read->asks.size() == 10);
}

TEST_CASE("Every mistake is found where it is, and nothing else is") {
  const std::string good = scenario_file("good.json");
  for (const Mistake& mistake : mistakes) {
    INFO(mistake.find << " becomes " << mistake.by);
    const auto read = wm::read_scenario(changed(good, mistake.find, mistake.by));
    REQUIRE_FALSE(read);
    INFO(all(read.error()));
    REQUIRE(read.error().size() >= 1);
    CHECK(read.error().front().where == mistake.where);
    CHECK_THAT(read.error().front().what + read.error().front().remedy, Catch::Contains(mistake.says));
    CHECK_FALSE(read.error().front().what.empty());
    CHECK_FALSE(read.error().front().remedy.empty());
    // A mistake inside a part that is refused as a whole is told as well.
    if (mistake.where != std::string("/a~1b~0c")) CHECK(read.error().size() == 1);
  }
}

TEST_CASE(
    "Sixteen lists of requirements may stand one inside another, a seventeenth is refused where it begins") {
  const std::string good = scenario_file("good.json"), age = R"({"kind": "age", "years": 40})";
  CHECK(wm::read_scenario(changed(good, age, nested(13))));
  for (const int deep : {14, 15, 200, 100'000}) {
    const auto read = wm::read_scenario(changed(good, age, nested(deep)));
    REQUIRE_FALSE(read);
    REQUIRE(read.error().size() == 1);
    std::string where = "/rulebooks/0/classes/2/gates/1/need/of/1/of/0/of/0";
    for (int i = 1; i < 14; ++i) where += "/of/0";  // three lists are there already
    CHECK(read.error().front().where == where + "/of");
  }
}

TEST_CASE("All mistakes come out, in order of the file") {
  const std::string good = scenario_file("good.json");
  std::string text = changed(good, R"("to": "independent")", R"("to": "barred")");
  text = changed(text, R"("severity": 4)", R"("severity": 9)");
  text = changed(text, R"("pass_percent": 80)", R"("pass_percent": 0)");
  text = changed(text, R"({"id": "bo"})", R"({"id": "bo"}, {"id": "bo"})");
  text = changed(text, R"("assessor": "bo")", R"("assessor": "boo")");
  const auto read = wm::read_scenario(text);
  REQUIRE_FALSE(read);
  std::vector<std::string> places;
  for (const auto& problem : read.error()) places.push_back(problem.where);
  CHECK(places == std::vector<std::string>{"/people/2/id", "/rulebooks/0/classes/0/gates/0/need/pass_percent",
                                           "/records/4/assessor", "/records/7/severity", "/asks/9/to"});
}

TEST_CASE("Of very many mistakes the first ten thousand are told, and how many more there are") {
  std::string people = "1";
  for (int i = 1; i < 12'000; ++i) people += ",1";
  const auto read = wm::read_scenario(
      R"({"zone": "UTC", "rulebooks": [], "records": [], "asks": [], "people": [)" + people + "]}");
  REQUIRE_FALSE(read);
  REQUIRE(read.error().size() == 10'001);
  CHECK(read.error()[9'999].where == "/people/9999");
  CHECK(read.error().back().what == "There are 2000 more mistakes.");
}

TEST_CASE(
    "Mistakes whose places are long do not fill the memory: each level stands in the place of all below it") {
  std::string deep, end;
  for (int i = 0; i < 20'000; ++i) deep += R"({"a": 1, "a": )", end += "}";
  const auto read = wm::read_scenario(deep + "1" + end);
  REQUIRE_FALSE(read);
  std::size_t size = 0;
  for (const auto& problem : read.error()) size += problem.where.size();
  CHECK(size < 8'100'000);
  CHECK_THAT(read.error().back().what, Catch::Contains("more mistakes"));
}

TEST_CASE("One mistake brings up no others: what could not be read is not called undefined") {
  const std::string good = scenario_file("good.json");
  const std::vector<std::array<std::string, 3>> rows = {
      {R"("people": [{"id": "ana"}, {"id": "bo"}, {"id": "Živa"}])", R"("people": 3)", "/people"},
      {R"({"class": "saw", "tier": 2,)", R"({"class": 7, "tier": 2,)", "/rulebooks/0/classes/0/class"},
      {R"({"tier": 1, "gates": []})", R"({"tier": true, "gates": []})", "/rulebooks/0/tiers/1/tier"},
      {R"("id": "r8")", R"("id": 8)", "/records/8/id"},
      {R"("modes": ["long"])", R"("modes": {})", "/rulebooks/1/classes/0/modes"},
      {R"("machines": [{"id": "saw-1", "class": "saw"}, {"id": "combi-1", "class": "combi"}])",
       R"("machines": 0)", "/machines"},
  };
  for (const auto& [find, by, where] : rows) {
    const auto read = wm::read_scenario(changed(good, find, by));
    REQUIRE_FALSE(read);
    INFO(all(read.error()));
    CHECK(read.error().front().where == where);
    CHECK(read.error().size() == 1);
  }
}
