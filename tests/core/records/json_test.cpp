#include "core/records/json.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "../generators.h"

using namespace wm;

TEST_CASE("A record written and read again is the same record") {
  CHECK(rc::check([] {
    const Record record = *gen::record();
    const auto read = read_record(to_json(record));
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == record);
  }));
}

TEST_CASE("A record's bytes are those that another writer gives for sorted keys without spaces") {
  CHECK(rc::check([] {
    const std::string text = to_json(*gen::record());
    RC_ASSERT(nlohmann::json::parse(text).dump() == text);
  }));
}

TEST_CASE("A record reads as the documentation shows it") {
  const auto read = read_record(
      R"({"id": "r10", "kind": "appoint", "at": "2026-03-14T15:20:00Z", "recorded": "2026-03-14T15:21:00Z",
          "person": "p2", "scope": {"target": "bandsaw"}, "founding": true, "until": "2027-12-31"})");
  REQUIRE(read);
  CHECK(
      *read ==
      Record{"r10", {1773501600}, {1773501660}, {}, Appoint{"p2", TargetScope{"bandsaw"}, true, Day{21183}}});
  CHECK(to_json(*read) ==
        R"({"at":"2026-03-14T15:20:00Z","founding":true,"id":"r10","kind":"appoint","person":"p2",)"
        R"("recorded":"2026-03-14T15:21:00Z","scope":{"target":"bandsaw"},"until":"2027-12-31"})");
}

TEST_CASE("A record is judged by its own form alone") {
  CHECK(read_record(
      R"({"id":"a","kind":"reinstate","at":"2026-03-14T15:20:00Z","recorded":"2026-03-14T15:20:00Z",)"
      R"("suspension":"nowhere"})"));
  const auto wrong = read_record(R"({"id":"a","kind":"lockout","at":"2026-03-14","machine":"m"})");
  REQUIRE_FALSE(wrong);
  REQUIRE(wrong.error().size() == 2);
  CHECK(wrong.error()[0].where == "");
  CHECK(wrong.error()[1].where == "/at");
}
