// Published rules of re-certification and calendar figures, each as a rulebook and records, answered by the
// engine. Beside each check stands where the figure comes from, and whether the text was read or is cited
// from memory. The period arithmetic alone is checked in tests/core/time/period_tests.cpp; here the whole way
// is: rule, records, standing.
#include <catch2/catch.hpp>

#include "core/decide/decider.h"
#include "core/scenario/scenario.h"
#include "core/time/text.h"

using namespace wm;

namespace {

/// A shop in New York with one machine class, which asks `need` for independence; `chief` may assess and
/// supervise.
class Lab {
 public:
  explicit Lab(const std::string& need) : need_(need) {}

  Lab& add(const std::string& day, const std::string& fields, const std::string& time = "15:00:00") {
    records_ += R"(, {"id": "r)" + std::to_string(++count_) + R"(", "at": ")" + day + "T" + time +
                R"(Z", "recorded": ")" + day + "T" + time + R"(Z", )" + fields + "}";
    return *this;
  }
  Lab& document(const std::string& day, const std::string& name = "card") {
    return add(day, R"("kind": "document", "person": "ana", "document": ")" + name + '"');
  }
  Lab& checkout(const std::string& day, const std::string& outcome = "passed",
                const std::string& by = "chief") {
    return add(
        day, R"("kind": "checkout", "person": "ana", "checkout": "evaluation", "revision": 1, "outcome": ")" +
                 outcome + R"(", "assessor": ")" + by + '"');
  }
  Lab& session(const std::string& day) {
    return add(
        day,
        R"("kind": "supervised", "person": "ana", "target": "machine", "minutes": 10, "supervisor": "chief")");
  }
  Lab& born(const std::string& day) {
    return add("2010-01-01", R"("kind": "birth", "person": "ana", "born": ")" + day + '"');
  }

  bool current(const std::string& instant) const {
    const Shop shop = made();
    return Decider(shop).rung("ana", "machine", *parse_instant(instant)) == Rung::independent;
  }
  /// The last day on which ana is current, or "never", or "for good".
  std::string through() const {
    const Shop shop = made();
    std::string last = "never";
    Rung before = Rung::barred;
    for (const TimelineStep& s : Decider(shop).timeline("ana", "machine", first_instant, last_instant)) {
      if (s.standing == Rung::independent) last = "for good";
      // The day that a standing ends with is the one before midnight, by the shop's clock.
      if (s.standing < before && before == Rung::independent) last = to_text(shop.zone.day(s.at - 1));
      before = s.standing;
    }
    return last;
  }

 private:
  Shop made() const {
    const std::string text =
        R"({"zone": "America/New_York", "people": [{"id": "ana"}, {"id": "chief"}], "asks": [],
      "rulebooks": [{"version": 1, "effective_from": "1900-01-01T05:00:00Z", "recorded": "1900-01-01T05:00:00Z",
        "tiers": [{"tier": 1}], "classes": [{"class": "machine", "tier": 1,
          "gates": [{"id": "gate", "for": "independent", "need": )" +
        need_ + R"(}]}]}],
      "records": [{"id": "chief", "kind": "appoint", "at": "1900-01-02T00:00:00Z", "recorded": "1900-01-02T00:00:00Z",
        "person": "chief", "scope": "all", "founding": true, "until": "2999-12-30"})" +
        records_ + "]}";
    const auto scenario = read_scenario(text);
    INFO((scenario ? "" : scenario.error().front().where + ": " + scenario.error().front().what));
    REQUIRE(scenario);
    return scenario->shop;
  }

  std::string need_, records_;
  int count_ = 0;
};

std::string document_through(const std::string& day, const std::string& period) {
  return Lab(R"({"kind": "document", "document": "card", "valid": {)" + period + "}}")
      .document(day)
      .through();
}
std::string evaluation_through(const std::string& day, const std::string& period) {
  return Lab(R"({"kind": "checkout", "checkout": "evaluation", "valid": {)" + period + "}}")
      .checkout(day)
      .through();
}

}  // namespace

TEST_CASE("Three landings within the preceding 90 days", "[published]") {
  // 14 CFR 61.57(a)(1), read in a copy of the rule: "at least three takeoffs and three landings within the
  // preceding 90 days". The third newest event E decides; the day after E is day 1, so E + 90 days is the
  // last.
  const std::string need = R"({"kind": "recent_use", "count": 3, "within": {"days": 90}})";
  const auto three = [](Lab lab, const std::string& day) {
    return lab.session(day).session(day).session(day);
  };
  CHECK(three(Lab(need), "2026-01-01").through() == "2026-04-01");
  CHECK(three(Lab(need), "2024-01-01").through() == "2024-03-31");
  CHECK(Lab(need).session("2026-01-01").session("2026-01-01").through() == "never");
  // One, one and two events: the third newest is that of 1 February. Worked out by counting.
  Lab counted(need);
  counted.session("2026-01-10").session("2026-02-01").session("2026-03-15").session("2026-03-15");
  CHECK(counted.through() == "2026-05-02");
  // The other reading, in which today is day 1 (pilots' forums are divided, no ruling was found): a shop that
  // holds to it writes 89 days.
  CHECK(three(Lab(R"({"kind": "recent_use", "count": 3, "within": {"days": 89}})"), "2026-01-01").through() ==
        "2026-03-31");
}

TEST_CASE("A review within 24 calendar months", "[published]") {
  // 14 CFR 61.56(c), read in the eCFR: "since the beginning of the 24th calendar month before the month in
  // which that pilot acts". Done on any day of a month it is good through the last day of the 24th month
  // after.
  CHECK(evaluation_through("2010-07-01", R"("calendar_months": 24)") ==
        "2012-07-31");  // read in a pilots' forum
  CHECK(evaluation_through("2024-02-29", R"("calendar_months": 24)") == "2026-02-28");  // counted by the rule
  CHECK(evaluation_through("2023-01-31", R"("calendar_months": 24)") == "2025-01-31");  // counted by the rule
  // The example of "24 calendar months" for the older 14 CFR 61.19(b), read in a flying magazine.
  CHECK(evaluation_through("2003-03-01", R"("calendar_months": 24)") == "2005-03-31");
}

TEST_CASE("An evaluation at least once every three years", "[published]") {
  // 29 CFR 1910.178(l)(4)(iii), read in an OSHA interpretation of 1 August 2005. The dates: counted by the
  // rule.
  CHECK(evaluation_through("2023-05-10", R"("months": 36)") == "2026-05-10");
  CHECK(evaluation_through("2024-02-29", R"("months": 36)") == "2027-02-28");
  // The same letter, read: a written exam alone is no evaluation; watching the work and asking questions is.
  const std::string both = R"({"kind": "all_of", "of": [{"kind": "checkout", "checkout": "evaluation"},
    {"kind": "quiz", "quiz": "questions", "pass_percent": 80}]})";
  const std::string passed =
      R"("kind": "quiz", "person": "ana", "quiz": "questions", "revision": 1, "correct": 8,
    "total": 10, "critical_missed": 0)";
  CHECK(Lab(both).add("2026-01-05", passed).through() == "never");
  CHECK(Lab(both).checkout("2026-01-05").through() == "never");
  CHECK(Lab(both).add("2026-01-05", passed).checkout("2026-01-05").through() == "for good");
}

TEST_CASE("A refresher when something happened, whatever the three years say", "[published]") {
  // 29 CFR 1910.178(l)(4)(ii): (A) unsafe operation seen, (B) an accident or near miss, (C) an evaluation
  // that shows unsafe operation, (D) another type of truck, (E) a change of the workplace. The list was read
  // in the Federal Register of 1 December 1998 (63 FR 66238), its letters are from memory.
  const std::string need = R"({"kind": "checkout", "checkout": "evaluation", "valid": {"months": 36},
    "renew_after_severity": 3, "renew_after_change": true})";
  const auto incident = [](int severity) {
    return R"("kind": "incident", "person": "ana", "target": "machine", "part": "operating", "severity": )" +
           std::to_string(severity);
  };
  CHECK(Lab(need).checkout("2025-01-10").through() == "2028-01-10");
  for (const int severity : {1, 2, 3})  // A and B
    CHECK(Lab(need).checkout("2025-01-10").add("2025-06-02", incident(severity)).through() == "2025-06-02");
  CHECK(Lab(need).checkout("2025-01-10").checkout("2025-06-02", "failed").through() == "2025-06-02");  // C
  CHECK(Lab(need)
            .checkout("2025-01-10")
            .add("2025-06-02", R"("kind": "change", "target": "machine")")
            .through() == "2025-06-02");  // E; D is another class, with an evaluation of its own
  // Where we differ: a near miss (severity 4) never takes anything away here, so that people report it. A
  // shop bound by (B) enters one of severity 3, or a change.
  CHECK(Lab(need).checkout("2025-01-10").add("2025-06-02", incident(4)).through() == "2028-01-10");
  // And the refresher puts it right again.
  CHECK(Lab(need).checkout("2025-01-10").checkout("2025-06-02", "failed").checkout("2025-06-09").through() ==
        "2028-06-09");
}

TEST_CASE("An inspection at least annually, by somebody else", "[published]") {
  // 29 CFR 1910.147(c)(6)(i), read: "at least annually", and by an authorized employee other than the one who
  // uses the procedure. The date: counted by the rule.
  const std::string need = R"({"kind": "checkout", "checkout": "evaluation", "valid": {"months": 12}})";
  CHECK(Lab(need).checkout("2025-03-10").through() == "2026-03-10");
  CHECK(Lab(need).checkout("2025-03-10", "passed", "ana").through() == "never");
}

TEST_CASE("A fit test annually, and at once for another facepiece", "[published]") {
  // 29 CFR 1910.134(f)(2), from memory. The dates: counted by the rule.
  const std::string need = R"({"kind": "checkout", "checkout": "evaluation", "valid": {"months": 12},
    "renew_after_change": true})";
  CHECK(Lab(need).checkout("2025-06-30").through() == "2026-06-30");
  CHECK(Lab(need)
            .checkout("2025-06-30")
            .add("2025-09-01", R"("kind": "change", "target": "machine")")
            .through() == "2025-09-01");
}

TEST_CASE("Power-driven woodworking machines from the eighteenth birthday", "[published]") {
  // 29 CFR 570.55(a), hazardous occupations order 5; read in the predecessor 29 CFR 1500.55 and in a copy of
  // 570.55.
  const std::string need = R"({"kind": "age", "years": 18})";
  CHECK_FALSE(
      Lab(need).born("2008-05-10").current("2026-05-10T03:59:59Z"));  // 17 years and 364 days, at night
  CHECK(Lab(need).born("2008-05-10").current("2026-05-10T04:00:00Z"));
  // Born on 29 February: some law says 28 February, some 1 March; here it is 1 March.
  CHECK_FALSE(Lab(need).born("2008-02-29").current("2026-03-01T04:59:59Z"));
  CHECK(Lab(need).born("2008-02-29").current("2026-03-01T05:00:00Z"));
}

TEST_CASE("An apprentice of sixteen with all four conditions", "[published]") {
  // 29 CFR 570.50(b), read in a web archive of dol.gov: a recognised trade, incidental to the training,
  // intermittent and under close supervision, registered.
  const std::string need =
      R"({"kind": "any_of", "of": [{"kind": "age", "years": 18}, {"kind": "all_of", "of": [
    {"kind": "age", "years": 16}, {"kind": "document", "document": "trade"}, {"kind": "document", "document": "incidental"},
    {"kind": "document", "document": "intermittent"}, {"kind": "document", "document": "registered"}]}]})";
  const std::vector<std::string> conditions{"trade", "incidental", "intermittent", "registered"};
  const std::string at = "2026-06-15T15:00:00Z";
  for (std::size_t missing = 0; missing <= conditions.size(); ++missing) {
    Lab lab(need);
    lab.born("2010-01-15");
    for (std::size_t i = 0; i < conditions.size(); ++i)
      if (i != missing) lab.document("2026-02-01", conditions[i]);
    CHECK(lab.current(at) == (missing == conditions.size()));
  }
  Lab young(need);
  young.born("2010-07-01");
  for (const auto& condition : conditions) young.document("2026-02-01", condition);
  CHECK_FALSE(young.current(at));  // fifteen
}

TEST_CASE("Months and days of the calendar, as papers that are good for them", "[published]") {
  // The example of java.time.LocalDate.plusMonths, read in its documentation.
  CHECK(document_through("2007-03-31", R"("months": 1)") == "2007-04-30");
  // plusYears and plusDays of the same class, from memory, recomputed with java.time.
  CHECK(document_through("2008-02-29", R"("months": 12)") == "2009-02-28");
  CHECK(document_through("2008-12-31", R"("days": 1)") == "2009-01-01");
  // The author of java.time on month ends, read in a copy of his answer; recomputed with java.time and
  // PostgreSQL.
  CHECK(document_through("2011-01-31", R"("months": 1)") == "2011-02-28");
  CHECK(document_through("2012-01-31", R"("months": 1)") == "2012-02-29");
  CHECK(document_through("2013-03-31", R"("months": 1)") == "2013-04-30");
  CHECK(document_through("2013-10-31", R"("months": 4)") == "2014-02-28");
  CHECK(document_through("2012-02-29", R"("months": 12)") == "2013-02-28");
  // Recomputed with java.time.
  CHECK(document_through("2023-02-28", R"("months": 36)") == "2026-02-28");
  CHECK(document_through("2024-02-29", R"("months": 36)") == "2027-02-28");
  CHECK(document_through("2024-02-29", R"("months": 48)") == "2028-02-29");
  // Recomputed with Python's datetime.
  CHECK(document_through("2026-01-01", R"("days": 90)") == "2026-04-01");
  CHECK(document_through("2024-01-01", R"("days": 90)") == "2024-03-31");
  CHECK(document_through("2026-12-05", R"("days": 90)") == "2027-03-05");
  // The example of date + integer in PostgreSQL's documentation (9.9), read in a copy.
  CHECK(document_through("2001-09-28", R"("days": 7)") == "2001-10-05");
}

TEST_CASE("Leap years: 2000, but neither 1900 nor 2100", "[published]") {
  // The Gregorian rule; RFC 3339, appendix C, from memory.
  CHECK(document_through("1900-02-28", R"("days": 1)") == "1900-03-01");
  CHECK(document_through("2000-02-28", R"("days": 1)") == "2000-02-29");
  CHECK(document_through("2100-02-28", R"("days": 1)") == "2100-03-01");
}

TEST_CASE("Renewed on its last day each month, a paper drifts; counted from the first it does not",
          "[published]") {
  // What follows from month ends being clamped; the series recomputed with java.time.
  std::string chained = "2026-01-31";
  for (const char* next :
       {"2026-02-28", "2026-03-28", "2026-04-28", "2026-05-28", "2026-06-28", "2026-07-28"}) {
    chained = document_through(chained, R"("months": 1)");
    CHECK(chained == next);
  }
  int months = 0;
  for (const char* next :
       {"2026-02-28", "2026-03-31", "2026-04-30", "2026-05-31", "2026-06-30", "2026-07-31"})
    CHECK(document_through("2026-01-31", R"("months": )" + std::to_string(++months)) == next);
}

TEST_CASE("A day is as long as the shop's clock makes it", "[published]") {
  // America/New_York by tzdata 2025b, recomputed with java.time and Python: 8 March 2026 has 23 hours, 1
  // November 25.
  const std::string need = R"({"kind": "document", "document": "card", "valid": {"days": 1}})";
  CHECK(Lab(need).document("2026-03-07").current("2026-03-09T03:59:59Z"));
  CHECK_FALSE(Lab(need).document("2026-03-07").current("2026-03-09T04:00:00Z"));
  CHECK(Lab(need).document("2026-10-31").current("2026-11-02T04:59:59Z"));
  CHECK_FALSE(Lab(need).document("2026-10-31").current("2026-11-02T05:00:00Z"));
}
