// The text form of a run sheet: what is written reads back equal, and every mistake is named by its line.
#include "core/sheet/sheet_text.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>

#include "core/json/writing.h"

namespace {

using namespace wm;

const std::string top =
    "sheet: saw\nrevision: 2\nclass: table saw\ncheckout: rip\ntitle: The saw\n";  // 1 to 5
const std::string opening =
    "[before]\n* Sleeves\nopens: dress\n* Eyes\nopens: eyes and ears\n* Stance\nopens: stance\n"
    "* Stop\nopens: isolation\n* Power\nopens: power\n";  // lines 6 to 16
const std::string cut = "[cut]\n";                        // line 17

std::vector<std::string> places(const std::string& text) {
  const auto sheet = read_sheet(text);
  std::vector<std::string> out;
  if (sheet) return out;
  for (const Problem& problem : sheet.error()) {
    INFO(problem.where << ": " << problem.what << " " << problem.remedy);
    CHECK(problem.what.ends_with('.'));
    CHECK(problem.remedy.ends_with('.'));
    CHECK_NOTHROW(json::in_quotes(problem.where + problem.what + problem.remedy));
    out.push_back(problem.where);
  }
  return out;
}
/// Of the lines from 18 on, in the section "cut".
std::vector<std::string> with(const std::string& lines) { return places(top + opening + cut + lines); }
using Places = std::vector<std::string>;

SheetLine only(const std::string& lines) {
  const auto sheet = read_sheet(top + opening + cut + lines);
  if (!sheet)
    for (const Problem& problem : sheet.error()) UNSCOPED_INFO(problem.where << ": " << problem.what);
  REQUIRE(sheet);
  REQUIRE(line_count(*sheet) == 6);
  return *lines_of(*sheet).back();
}

namespace made {

std::string words(std::size_t most = 40) {
  const auto some = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
      "Guard", "down", "-", "*", "[x]", "opens: dress", "> a", "#", "\\", "1/8", "\u00e9", ":", "measure:"));
  std::string all;
  for (std::size_t i = 0; i < std::min(some.size(), most); ++i) all += (all.empty() ? "" : " ") + some[i];
  return all.empty() ? "x" : all;
}

Length length(bool zero) {
  return {
      fraction(*rc::gen::inRange(zero ? 0 : 1, 400), *rc::gen::element(1, 8, 64, 1000, 7)),
      *rc::gen::element(LengthUnit::inch, LengthUnit::millimetre, LengthUnit::centimetre, LengthUnit::foot)};
}
Degrees degrees(bool zero) {
  return {fraction(*rc::gen::inRange(zero ? 0 : 1, 90), *rc::gen::element(1, 2, 10))};
}

Measure measure() {
  Measure out = of_kind(*rc::gen::elementOf(std::vector(measure_kinds.begin(), measure_kinds.end())));
  if (auto* size = std::get_if<SizeToMeasure>(&out.what))
    *size = {length(false), length(true), length(true), length(false)};
  else if (auto* angle = std::get_if<AngleToMeasure>(&out.what))
    *angle = {degrees(false), degrees(true), degrees(true), degrees(false)};
  else
    out.what = GapToMeasure{length(false), length(false), length(false)};
  return out;
}

Sheet sheet() {
  Sheet out{words(9), *rc::gen::inRange(1, 1'000'000), words(9), words(9), "", {}};
  if (*rc::gen::arbitrary<bool>()) out.title = "A title";
  out.sections.push_back({"before", {}});
  for (const SheetOpening each : sheet_openings)
    out.sections[0].lines.push_back({words(), "", true, {}, each});
  const int sections = *rc::gen::inRange(0, 4);
  for (int s = 0; s < sections; ++s) {
    out.sections.push_back({"part " + std::to_string(s) + "]", {}});
    for (int l = *rc::gen::inRange(1, 4); l > 0; --l) {
      SheetLine line{
          words(), *rc::gen::arbitrary<bool>() ? words() : "", *rc::gen::arbitrary<bool>(), {}, {}};
      if (*rc::gen::arbitrary<bool>()) {
        line.measure = measure();
        if (too_coarse(instrument_of(*line.measure), tolerance_of(*line.measure))) line.measure.reset();
      }
      out.sections.back().lines.push_back(line);
    }
  }
  return out;
}

}  // namespace made
}  // namespace

TEST_CASE("A run sheet is read with its sections and lines in order") {
  const auto sheet = read_sheet(top + opening +
                                "- Looks at the blade\n  once more\n> says why\n  and when\n[cut]\n* "
                                "Stick\n# for us only\n- - a dash\n");
  REQUIRE(sheet);
  CHECK(sheet->name == "saw");
  CHECK(sheet->revision == 2);
  CHECK(sheet->machine_class == "table saw");
  CHECK(sheet->checkout == "rip");
  CHECK(sheet->title == "The saw");
  REQUIRE(sheet->sections.size() == 2);
  CHECK(sheet->sections[0].name == "before");
  CHECK(sheet->sections[0].lines[1] == SheetLine{"Eyes", "", true, {}, SheetOpening::eyes_and_ears});
  CHECK(sheet->sections[0].lines[5] == SheetLine{"Looks at the blade once more", "says why and when", false});
  CHECK(sheet->sections[1] == SheetSection{"cut", {{"Stick", "", true}, {"- a dash", "", false}}});
  CHECK(line_count(*sheet) == 8);
  CHECK(lines_of(*sheet)[6]->text == "Stick");
}

TEST_CASE("A run sheet that was read is written so that it reads back equal") {
  CHECK(rc::check([] {
    const Sheet sheet = made::sheet();
    const auto read = read_sheet(to_text(sheet));
    if (!read)
      for (const Problem& problem : read.error())
        RC_LOG() << problem.where << ": " << problem.what << "\n" << to_text(sheet);
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == sheet);
  }));
}

TEST_CASE("The example of a run sheet's documentation is read as it explains it") {
  std::ostringstream text;
  text << std::ifstream(std::string(WM_TESTS) + "/../core/sheet/README.md").rdbuf();
  const std::string page = text.str();
  const auto begin = page.find("```text\n"), end = page.find("\n```", begin);
  REQUIRE(begin != std::string::npos);
  const auto sheet = read_sheet(page.substr(begin + 8, end - begin - 8));
  if (!sheet)
    for (const Problem& problem : sheet.error()) FAIL_CHECK(problem.where << ": " << problem.what);
  REQUIRE(sheet);
  CHECK(lines_of(*sheet).back()->measure);
}

TEST_CASE(
    "Line ends of any system, a byte order mark, comments and empty lines change nothing in a run sheet") {
  const std::string text = top + opening + cut + "* Stick\n> why";
  const auto plain = read_sheet(text);
  REQUIRE(plain);
  std::string other = "\xEF\xBB\xBF# first\n\n";
  for (const char c : text) other += c == '\n' ? "  \r\n#\r\n\r\n" : std::string(1, c);
  const auto read = read_sheet(other);
  REQUIRE(read);
  CHECK(*read == *plain);
}

TEST_CASE("Each mistake at the top of a run sheet is told with its line") {
  const auto changed = [](const std::string& from, const std::string& to) {
    std::string text = top + opening;
    text.replace(text.find(from), from.size(), to);
    return places(text);
  };
  CHECK(changed("sheet: saw", "sheet: saw").empty());
  CHECK(changed("title: The saw\n", "").empty());
  for (const char* needed : {"sheet: saw\n", "revision: 2\n", "class: table saw\n", "checkout: rip\n"})
    CHECK(changed(needed, "") == Places{"line 1"});
  for (const char* bad : {"0", "-1", "1.5", "two", "99999999999", "1000001"})
    CHECK(changed("revision: 2", "revision: " + std::string(bad)) == Places{"line 2"});
  CHECK(changed("title: The saw", "title:") == Places{"line 5"});
  CHECK(changed("title: The saw", "sheet: another") == Places{"line 5"});
  CHECK(changed("title: The saw", "colour: red") == Places{"line 5"});
  CHECK(changed("title: The saw", "* Stick") == Places{"line 5"});
  CHECK(changed("class: table saw", "class: " + std::string(201, 'x')) == Places{"line 3"});
  CHECK(places("") == Places{"line 1", "line 1", "line 1", "line 1", "line 1"});
  CHECK(places(top) == Places{"line 5"});
  CHECK(places("{\"sheet\": \"saw\"}").front() == "line 1");
  CHECK(places(std::string((1u << 20) + 1, 'x')) == Places{""});
}

TEST_CASE("Each mistake in the lines of a run sheet is told with its line") {
  CHECK(with("* Stick\n").empty());
  CHECK(with("") == Places{"line 17"});
  CHECK(with("* Stick\n[cut]\n- x\n") == Places{"line 19"});
  CHECK(with("* Stick\n[before\n- x\n") == Places{"line 19"});
  CHECK(with("* Stick\n[ ]\n- x\n") == Places{"line 19"});
  CHECK(with("* Stick\n[" + std::string(201, 'x') + "]\n- x\n") == Places{"line 19"});
  CHECK(with("*\n") == Places{"line 18"});
  CHECK(with("* Stick\n>\n") == Places{"line 19"});
  CHECK(with("> why\n* Stick\n") == Places{"line 18"});
  CHECK(with("* Stick\n> why\n> and when\n") == Places{"line 20"});
  CHECK(with("Stick\n* x\n") == Places{"line 18"});
  CHECK(with("*Stick\n* x\n") == Places{"line 18"});
  CHECK(with("  goes on\n* x\n") == Places{"line 18"});
  CHECK(with("* x\nmeasure: thickness\n  goes on\n").size() == 5);
  CHECK(with("* x\n  * y\n") == Places{"line 19"});
  CHECK(with("* x\n  opens: dress\n") == Places{"line 19"});
  CHECK(with("* x\n  \\opens: dress\n").empty());
  CHECK(with("opens: dress\n* x\n") == Places{"line 18"});
  CHECK(with("* " + std::string(1001, 'x') + "\n") == Places{"line 18"});
  CHECK(with("* " + std::string(1000, 'x') + "\n").empty());
  CHECK(with("* x\n> a\n  " + std::string(999, 'x') + "\n") == Places{"line 20"});
  CHECK(with("* " + std::string(8001, 'x') + "\n* y\n") == Places{"line 18"});
  CHECK(with(std::string("* x\n* zero\0\n", 12)) == Places{"line 19"});
  CHECK(with("* x\n* \xff\n") == Places{"line 19"});
  std::string many;
  for (int i = 0; i < 994; ++i) many += "- x\n";
  CHECK(with(many).empty());
  CHECK(with(many + "- x\n") == Places{"line 1012"});
}

TEST_CASE("A run sheet opens with dress, eyes and ears, stance, isolation and power, all of them critical") {
  const auto opened = [](const std::string& lines) { return places(top + lines); };
  CHECK(opened(opening).empty());
  CHECK(opened(opening + "- The room is swept\n").empty());
  for (const SheetOpening each : sheet_openings) {
    std::string without = opening;
    const std::string line = "opens: " + std::string(word(each)) + "\n";
    without.erase(without.find(line), line.size());
    CHECK(opened(without) != Places{});  // what follows it no longer stands at the beginning
    std::string other = opening;
    other.replace(other.find(line), line.size(), "opens: glue\n");
    CHECK(opened(other).size() == 1);
  }
  // The last one left out is missing, and nothing else.
  CHECK(opened(opening.substr(0, opening.find("* Power"))) == Places{"line 6"});
  // Whatever their order, in two sections or two lines.
  CHECK(opened("[a]\n* P\nopens: power\n* S\nopens: stance\n[b]\n* E\nopens: eyes and ears\n* F\nopens: eyes "
               "and ears\n"
               "* I\nopens: isolation\n* D\nopens: dress\n- x\n")
            .empty());
  std::string eased = opening;
  eased.replace(eased.find("* Stance"), 1, "-");
  CHECK(opened(eased) == Places{"line 11"});
  CHECK(with("- y\n* x\nopens: power\n") == Places{"line 19"});
  CHECK(with("* x\n* y\nopens: dress\nopens: dress\n") == Places{"line 21"});
}

TEST_CASE("Lines that measure are read with the units in which they are written") {
  CHECK(only("* x\n> y\nmeasure: thickness\nnominal: 1 3/8 in\nbelow: 0 in\nabove: 0.3 mm\ninstrument: 0.001 "
             "in\n") ==
        SheetLine{"x", "y", true,
                  Measure{MeasureKind::thickness, SizeToMeasure{{fraction(11, 8), LengthUnit::inch},
                                                                {fraction(0), LengthUnit::inch},
                                                                {fraction(3, 10), LengthUnit::millimetre},
                                                                {fraction(1, 1000), LengthUnit::inch}}}});
  CHECK(only("- x\ninstrument: 0.1 deg\nabove: 1/3 deg\nbelow: 0.2 deg\nnominal: 90 deg\nmeasure: angle\n")
            .measure ==
        Measure{MeasureKind::angle,
                AngleToMeasure{{fraction(90)}, {fraction(1, 5)}, {fraction(1, 3)}, {fraction(1, 10)}}});
  CHECK(
      only("- x\nmeasure: squareness\nat most: 0.004 in\nover: 4 in\ninstrument: 0.001 in\n").measure->kind ==
      MeasureKind::squareness);
  const auto flat =
      only("- x\nmeasure: flatness\nat  most: 0.2 mm\nover: 60 cm\ninstrument: 0.05 mm\n").measure;
  REQUIRE(flat);
  CHECK(std::get<GapToMeasure>(flat->what).over == Length{fraction(60), LengthUnit::centimetre});
}

TEST_CASE("A mistake in what a line measures is told with its line") {
  const auto of = [](const std::string& settings) { return with("* x\n" + settings); };  // from line 19 on
  const auto thickness = [&](const std::string& nominal, const std::string& above,
                             const std::string& instrument) {
    return of("measure: thickness\nnominal: " + nominal + "\nbelow: 0 in\nabove: " + above +
              "\ninstrument: " + instrument + "\n");
  };
  CHECK(thickness("1 in", "1/64 in", "1/64 in").empty());
  CHECK(thickness("1 in", "1/64 in", "1/63 in") == Places{"line 23"});
  CHECK(thickness("1 in", "0 in", "0.001 in") == Places{"line 23"});
  CHECK(thickness("1 in", "1/64 in", "0 in") == Places{"line 23"});
  CHECK(thickness("0 in", "1/64 in", "1/64 in") == Places{"line 20"});
  CHECK(thickness("1", "1/64 in", "1/64 in") == Places{"line 20"});
  CHECK(thickness("1 in", "-1/64 in", "1/64 in") == Places{"line 22"});
  CHECK(thickness("1 in", "a bit", "1/64 in") == Places{"line 22"});
  CHECK(thickness("one", "a bit", "none") == Places{"line 20", "line 22", "line 23"});
  CHECK(of("measure: thickness\n") == Places{"line 18", "line 18", "line 18", "line 18"});
  CHECK(of("measure: colour\nnominal: 5 in\n") == Places{"line 19"});
  CHECK(of("nominal: 5 in\ninstrument: 1 in\n") == Places{"line 19", "line 20"});
  CHECK(of("measure: angle\nnominal: 90 in\nbelow: 1 deg\nabove: 1 deg\ninstrument: 1 deg\n") ==
        Places{"line 20"});
  CHECK(of("measure: flatness\nat most: 0.01 in\nover: 0 in\ninstrument: 0.001 in\n") == Places{"line 21"});
  CHECK(of("measure: flatness\nat most: 0.01 in\nover: 1 ft\ninstrument: 0.001 in\nnominal: 1 in\n") ==
        Places{"line 23"});
  CHECK(of("measure: squareness\nat most: 0.01 in\ninstrument: 0.001 in\n") == Places{"line 18"});
  CHECK(of("measure: squareness\nmeasure: flatness\n").front() == "line 18");
}

TEST_CASE("A run sheet of very many mistakes is read once through, not once for each") {
  std::string many;
  for (int i = 0; i < 100'000; ++i) many += "x\n";
  CHECK(with(many).size() == 1001);
}
