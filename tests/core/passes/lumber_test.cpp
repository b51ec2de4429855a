// Nominal and dressed sizes as PS 20 has them; 1/32 is written as the table of the standard writes it.
#include "core/passes/lumber.h"

#include <catch2/catch.hpp>

#include "core/measure/read.h"

namespace {

using namespace wm;

Inches size(const char* text) { return in_inches(*read_length(text)); }

struct Row {
  const char *nominal, *dry, *unseasoned;
};

}  // namespace

TEST_CASE("Boards, dimension and timbers are as thick as PS 20 says", "[passes]") {
  const Row rows[] = {// PS 20, boards.
                      {"3/8", "5/16", "11/32"},
                      {"1/2", "7/16", "15/32"},
                      {"5/8", "9/16", "19/32"},
                      {"3/4", "5/8", "11/16"},
                      {"1", "3/4", "25/32"},
                      {"1-1/4", "1", "1-1/32"},
                      {"1-1/2", "1-1/4", "1-9/32"},
                      // PS 20, dimension.
                      {"2", "1-1/2", "1-9/16"},
                      {"2-1/2", "2", "2-1/16"},
                      {"3", "2-1/2", "2-9/16"},
                      {"3-1/2", "3", "3-1/16"},
                      {"4", "3-1/2", "3-9/16"},
                      {"4-1/2", "4", "4-1/16"},
                      // PS 20, timbers: 1/2, 3/4 and 1 off dry, 1/2 off unseasoned.
                      {"5", "4-1/2", "4-1/2"},
                      {"6", "5-1/2", "5-1/2"},
                      {"7", "6-1/4", "6-1/2"},
                      {"15", "14-1/4", "14-1/2"},
                      {"16", "15", "15-1/2"},
                      {"20", "19", "19-1/2"}};
  for (const Row& row : rows) {
    INFO(row.nominal);
    CHECK(dressed_thickness(size(row.nominal), Seasoning::dry) == size(row.dry));
    CHECK(dressed_thickness(size(row.nominal), Seasoning::unseasoned) == size(row.unseasoned));
  }
  for (const char* none : {"1/4", "1-1/8", "2-1/4", "4-3/4", "5-1/2"})
    CHECK_FALSE(dressed_thickness(size(none), Seasoning::dry));
}

TEST_CASE("Boards and dimension are as wide as PS 20 says", "[passes]") {
  const Row rows[] = {{"2", "1-1/2", "1-9/16"},   {"3", "2-1/2", "2-9/16"},   {"4", "3-1/2", "3-9/16"},
                      {"5", "4-1/2", "4-5/8"},    {"6", "5-1/2", "5-5/8"},    {"7", "6-1/2", "6-5/8"},
                      {"8", "7-1/4", "7-1/2"},    {"9", "8-1/4", "8-1/2"},    {"10", "9-1/4", "9-1/2"},
                      {"11", "10-1/4", "10-1/2"}, {"12", "11-1/4", "11-1/2"}, {"14", "13-1/4", "13-1/2"},
                      {"16", "15-1/4", "15-1/2"}};
  for (const Row& row : rows) {
    INFO(row.nominal);
    CHECK(dressed_width(size(row.nominal), Seasoning::dry) == size(row.dry));
    CHECK(dressed_width(size(row.nominal), Seasoning::unseasoned) == size(row.unseasoned));
  }
  CHECK_FALSE(dressed_width(size("13"), Seasoning::dry));
}

TEST_CASE("Nominal 2x6 is an inch and a half thick", "[passes]") {
  // PS 20, and common practice.
  CHECK(dressed_thickness(inches(2), Seasoning::dry) == inches(3, 2));
  CHECK(dressed_width(inches(6), Seasoning::dry) == inches(11, 2));
}
