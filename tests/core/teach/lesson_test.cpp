// A lesson's page in parts, and what it shows.
#include "core/teach/lesson.h"

#include <catch2/catch.hpp>

using namespace wm::teach;

namespace {

const char* const page =
    "# Guards\n"
    "\n"
    "For everybody.\n"
    "\n"
    "## What a guard is for\n"
    "It stands [where](https://example.org/where) your hand would be.\n"
    "![from above](saw.svg)\n"
    "```\n"
    "## no heading, and ![no picture](no.png)\n"
    "```\n"
    "### A point of its own\n"
    "## Kickback\n"
    "Watch [the board](kick.WEBM \"thirty seconds\") and [the manual's page](page-9.pdf). "
    "`[not](this.pdf)`\n";

}  // namespace

TEST_CASE("A lesson's parts begin at its headings of the second level", "[teach]") {
  const auto parts = parts_of(page);
  REQUIRE(parts.size() == 3);
  CHECK(parts[0] == LessonPart{"Guards", "# Guards\n\nFor everybody.\n\n"});
  CHECK(parts[1].heading == "What a guard is for");
  CHECK(parts[1].text.find("### A point of its own") != std::string::npos);
  CHECK(parts[2].heading == "Kickback");
  std::string whole;
  for (const LessonPart& part : parts) whole += part.text;
  CHECK(whole == page);
}

TEST_CASE("A page without headings is one part, and an empty one none", "[teach]") {
  CHECK(parts_of("Look before you reach in.") == std::vector<LessonPart>{{"", "Look before you reach in."}});
  CHECK(parts_of("").empty());
  CHECK(parts_of(" \n\n").empty());
  CHECK(parts_of("\n## Stop\nNow.\n") == std::vector<LessonPart>{{"Stop", "## Stop\nNow.\n"}});
}

TEST_CASE("What a page shows is named with its line and its kind", "[teach]") {
  CHECK(shown_in(page) == std::vector<Shown>{{ShownKind::web, "https://example.org/where", 6},
                                             {ShownKind::picture, "saw.svg", 7},
                                             {ShownKind::video, "kick.WEBM", 13},
                                             {ShownKind::pdf, "page-9.pdf", 13}});
  CHECK(shown_in("[half a link](").empty());
  CHECK(shown_in("[nothing]()").empty());
}

TEST_CASE("A name with a folder or another program in it is nothing that a lesson shows", "[teach]") {
  for (const char* name :
       {"../saw.pdf", "videos/kick.mp4", "file:///etc/passwd", "c:\\saw.pdf", "notes.docx", ""})
    CHECK(kind_of(name) == ShownKind::other);
  CHECK(kind_of("http://example.org/saw.pdf") == ShownKind::web);
  CHECK(kind_of("SAW.PDF") == ShownKind::pdf);
}
