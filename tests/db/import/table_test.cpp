#include <rapidcheck.h>

#include <QProcess>
#include <QTemporaryDir>
#include <catch2/catch.hpp>
#include <fstream>
#include <nlohmann/json.hpp>

#include "db/import/table.h"

using namespace wm::db::import;

namespace {

using Cells = std::vector<std::string>;

/// Header and rows alike.
std::vector<Cells> all_rows(const Table& table) {
  std::vector<Cells> rows{table.header};
  for (const Row& row : table.rows) rows.push_back(row.cells);
  return rows;
}

Table read(std::string_view bytes, const ReadOptions& options = {}) {
  auto table = read_table(bytes, options);
  REQUIRE(table);
  return *table;
}

}  // namespace

// The examples of RFC 4180, "Common Format and MIME Type for CSV Files", section 2, rules 1 to 7 (from
// memory).
TEST_CASE("RFC 4180 rule 1: each record is on a line of its own, ended by CR LF") {
  CHECK(all_rows(read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")) ==
        std::vector<Cells>{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
}

TEST_CASE("RFC 4180 rule 2: the last record may lack its line end") {
  CHECK(all_rows(read("aaa,bbb,ccc\r\nzzz,yyy,xxx")) ==
        std::vector<Cells>{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
}

TEST_CASE("RFC 4180 rule 3: the first line names the fields") {
  const Table table = read("field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n");
  CHECK(table.header == Cells{"field_name", "field_name", "field_name"});
  CHECK(table.rows == std::vector<Row>{{2, {"aaa", "bbb", "ccc"}}, {3, {"zzz", "yyy", "xxx"}}});
}

TEST_CASE("RFC 4180 rule 4: spaces are part of a field, and every line has the same number of fields") {
  const Table table = read("a,b,c\r\n aaa , bbb,ccc \r\none,two\r\n1,2,3,4\r\n");
  REQUIRE(table.rows == std::vector<Row>{{2, {" aaa ", " bbb", "ccc "}}});
  REQUIRE(table.problems.size() == 2);
  CHECK(table.problems[0].problem.where == "line 3");
  CHECK(table.problems[1].problem.where == "line 4");
}

TEST_CASE("RFC 4180 rule 5: a field may be enclosed in double quotes, and only then have them") {
  CHECK(all_rows(read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx")) ==
        std::vector<Cells>{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
  const Table table = read("a,b\r\n1,x\"y\r\n2,z\r\n");
  REQUIRE(table.problems.size() == 1);
  CHECK(table.problems[0].line == 2);
  CHECK(table.rows == std::vector<Row>{{3, {"2", "z"}}});
}

TEST_CASE("RFC 4180 rule 6: line breaks, quotes and commas stand inside double quotes") {
  const Table table = read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx");
  CHECK(all_rows(table) == std::vector<Cells>{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}});
  CHECK(table.rows[0].line == 3);
}

TEST_CASE("RFC 4180 rule 7: a double quote inside a field is written twice") {
  CHECK(all_rows(read("\"aaa\",\"b\"\"bb\",\"ccc\"")) == std::vector<Cells>{{"aaa", "b\"bb", "ccc"}});
}

TEST_CASE("A quotation mark that is never closed is told with the line that opened it") {
  const Table table = read("a,b\r\n1,2\r\n3,\"4\r\n5,6\r\n");
  REQUIRE(table.problems.size() == 1);
  CHECK(table.problems[0].line == 3);
  CHECK(table.rows.size() == 1);
}

TEST_CASE("Blank rows are left out and later rows keep their lines") {
  CHECK(read("a,b\n\n1,2\n,\n\n3,4\n").rows == std::vector<Row>{{3, {"1", "2"}}, {6, {"3", "4"}}});
}

TEST_CASE("The encoding is guessed: valid UTF-8, with or without a mark, else Windows-1252") {
  CHECK(read("name\nBj\xC3\xB6rk\n").encoding == Encoding::utf8);
  const Table marked = read("\xEF\xBB\xBFname,x\nBj\xC3\xB6rk,1\n");
  CHECK(marked.header[0] == "name");
  const Table western = read("name,x\nBj\xF6rk \x80 \x93hi\x94,1\n");
  CHECK(western.encoding == Encoding::windows_1252);
  CHECK(western.encoding_guessed);
  // The code points are those of the WHATWG Encoding Standard's index for windows-1252 (from memory).
  CHECK(western.rows[0].cells[0] == "Björk € “hi”");
}

TEST_CASE("A chosen encoding overrides the guess, and lines that it cannot read are told") {
  CHECK(read("n,x\nBj\xC3\xB6rk,1\n", {Encoding::windows_1252, {}}).rows[0].cells[0] == "BjÃ¶rk");
  const Table table = read("n,x\nok,1\nBj\xF6rk,1\n", {Encoding::utf8, {}});
  REQUIRE(table.problems.size() == 1);
  CHECK(table.problems[0].line == 3);
  CHECK(read("n,x\nq\x81\xF6,1\n").problems.size() == 1);
}

TEST_CASE("Comma, semicolon and tab are told apart, whatever else stands in the cells") {
  CHECK(read("Name, first;No\nLind, Jo;1\nRyde;2\n").separator == ';');
  CHECK(read("Name\tNo\nLind, Jo\t1\n").separator == '\t');
  CHECK(read("Name,No\nLind;Jo,1\n").separator == ',');
  CHECK(read("a;b,c\n1;2,3\n", {{}, ';'}).header == Cells{"a", "b,c"});
}

TEST_CASE("What is no table of text is refused in a sentence") {
  CHECK(!read_table(""));
  CHECK(
      !read_table("\xFF\xFE"
                  "a"));
  CHECK(!read_table(std::string_view("a\0b", 3)));
}

TEST_CASE("A file of too many lines, columns or cells is refused before it fills the memory") {
  std::string lines = "a,b\n", cells = "a,b\n";
  for (int i = 0; i < 1'000'000; ++i) lines += "a\n";
  for (int i = 0; i < 11'000; ++i) cells += std::string(999, ',') + "\n";
  const std::string columns = std::string(16'384, ',') + "a\n";
  for (const auto& [bytes, says] :
       {std::pair(lines, "a million lines"), std::pair(cells, "ten million cells"),
        std::pair(columns, "16384 columns")}) {
    const auto refused = read_table(bytes);
    REQUIRE_FALSE(refused);
    CHECK_THAT(refused.error().what, Catch::Contains(says));
    CHECK_FALSE(refused.error().remedy.empty());
  }
  CHECK(read(std::string(16'383, ',') + "a\n").header.size() == 16'384);
  // What stands beyond the last column is seen, however far out.
  const std::string far = "a,b\n1,2" + std::string(50'000, ',');
  CHECK_THAT(read(far + "x,\n").problems.at(0).problem.what, Catch::Contains("more than 16384 cells"));
  CHECK(read(far + "\n").rows.size() == 1);
}

TEST_CASE("Tables that Python's csv module writes are read as Python reads them") {
  QTemporaryDir dir;
  const std::string folder = dir.path().toStdString();
  const char* script = R"(
import csv, json, random, sys
r = random.Random(4180)
bits = ['a', 'Zoë', '"', ',', ';', '\t', '\n', '\r\n', ' ', '""', 'x y', '蓮', "'"]
for n in range(200):
    sep = r.choice(',;\t')
    width = r.randint(2, 5)
    rows = [[''.join(r.choices(bits, k=r.randint(0, 4))) + 'k' for _ in range(width)] for _ in range(r.randint(1, 8))]
    path = f'{sys.argv[1]}/{n}'
    with open(path + '.csv', 'w', newline='', encoding='utf-8') as f:
        csv.writer(f, delimiter=sep, lineterminator=r.choice(['\n', '\r\n'])).writerows(rows)
    with open(path + '.csv', newline='', encoding='utf-8') as f:
        json.dump([sep, list(csv.reader(f, delimiter=sep))], open(path + '.json', 'w'))
)";
  REQUIRE(QProcess::execute("python3", {"-c", script, dir.path()}) == 0);
  for (int n = 0; n < 200; ++n) {
    const std::string path = folder + "/" + std::to_string(n);
    std::ifstream csv(path + ".csv", std::ios::binary), json(path + ".json");
    const std::string bytes{std::istreambuf_iterator<char>(csv), {}};
    const auto expected = nlohmann::json::parse(json);
    const auto separator = expected[0].get<std::string>()[0];
    INFO("table " << n);
    const Table table = read(bytes, {{}, separator});
    CHECK(table.problems.empty());
    CHECK(all_rows(table) == expected[1].get<std::vector<Cells>>());
  }
}

TEST_CASE("No bytes whatever stop the reader") {
  CHECK(rc::check([](const std::string& bytes) { (void)read_table(bytes); }));
}
