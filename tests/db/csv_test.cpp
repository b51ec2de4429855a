// Lines that are written are read back by the import's own reader.
#include "db/export/csv.h"

#include <catch2/catch.hpp>

#include "db/import/table.h"

using namespace wm::db;

TEST_CASE("Whatever stands in cells is read back as it was") {
  const std::vector<std::string> titles{"one", "two", "three"};
  const std::vector<std::vector<std::string>> rows{
      {"a, b", "she said \"no\"", "x\r\ny"}, {"  spaces ", "\"", "ñ; 1\tz"}, {"'quoted'", "", "last"}};
  std::string text = csv_line(titles);
  for (const auto& row : rows) text += csv_line(row);
  const auto table = import::read_table(text);
  REQUIRE(table);
  REQUIRE(table->rows.size() == rows.size());
  for (std::size_t i = 0; i < rows.size(); ++i) CHECK(table->rows[i].cells == rows[i]);
}

TEST_CASE("Words that a spreadsheet would work out are marked as text") {
  for (const char* formula : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1"})
    CHECK(as_text(formula) == "'" + std::string(formula));
  for (const char* words : {"", "a board", "1/8 in", "'quoted"}) CHECK(as_text(words) == words);
}
