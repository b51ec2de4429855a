#include "core/measure/show.h"
#include "core/sheet/sheet_text.h"
#include "core/text/lines.h"

namespace wm {
namespace {

void setting(std::string& out, std::string_view key, std::string_view value) {
  out.append(key).append(": ").append(text::plain_words(value)).append("\n");
}

template <class About>
void fields(std::string& out, const About& about) {
  setting(out, "nominal", to_text(about.nominal));
  setting(out, "below", to_text(about.below));
  setting(out, "above", to_text(about.above));
  setting(out, "instrument", to_text(about.marks));
}
void fields(std::string& out, const GapToMeasure& gap) {
  setting(out, "at most", to_text(gap.at_most));
  setting(out, "over", to_text(gap.over));
  setting(out, "instrument", to_text(gap.marks));
}

void write(std::string& out, const SheetLine& line) {
  out.append(line.critical ? "* " : "- ").append(text::plain_words(line.text)).append("\n");
  if (!line.says.empty()) out.append("> ").append(text::plain_words(line.says)).append("\n");
  if (line.opens) setting(out, "opens", word(*line.opens));
  if (!line.measure) return;
  setting(out, "measure", word(line.measure->kind));
  std::visit([&](const auto& what) { fields(out, what); }, line.measure->what);
}

}  // namespace

std::string to_text(const Sheet& sheet) {
  std::string out;
  setting(out, "sheet", sheet.name);
  setting(out, "revision", std::to_string(sheet.revision));
  setting(out, "class", sheet.machine_class);
  setting(out, "checkout", sheet.checkout);
  if (!sheet.title.empty()) setting(out, "title", sheet.title);
  for (const SheetSection& section : sheet.sections) {
    out.append("\n[").append(text::plain_words(section.name)).append("]\n");
    for (const SheetLine& line : section.lines) write(out, line);
  }
  return out;
}

}  // namespace wm
