#include "core/teach/bank_text.h"
#include "core/teach/reading.h"
#include "core/teach/words.h"

namespace wm::teach {
namespace {

void setting(std::string& out, std::string_view key, std::string_view value) {
  out.append(key).append(": ").append(plain_words(value)).append("\n");
}

std::string listed(const std::vector<std::string>& items) {
  std::string all;
  for (const std::string& item : items) all.append(all.empty() ? "" : ", ").append(item);
  return all;
}

std::string written(const Rectangle& r) {
  return "rectangle " + std::to_string(r.left) + " " + std::to_string(r.top) + " " + std::to_string(r.right) +
         " " + std::to_string(r.bottom);
}

std::string written(const Polygon& polygon) {
  std::string all = "polygon";
  for (const Point& p : polygon.corners)
    all.append(all.back() == 'n' ? " " : ", ")
        .append(std::to_string(p.x))
        .append(" ")
        .append(std::to_string(p.y));
  return all;
}

void top(std::string& out, const Bank& bank) {
  setting(out, "bank", bank.name);
  setting(out, "revision", std::to_string(bank.revision));
  setting(out, "languages", listed(bank.languages));
  setting(out, "pass", std::to_string(bank.pass_percent) + " %");
  setting(out, "time", bank.minutes ? std::to_string(*bank.minutes) + " min" : "none");
  for (const Draw& draw : bank.draws) setting(out, "draw", std::to_string(draw.count) + " of " + draw.topic);
}

void answer(std::string& out, const Kind& kind) {
  if (const auto* number = std::get_if<ANumber>(&kind)) {
    setting(out, "answer", to_text(number->answer));
    setting(out, "within", to_text(number->tolerance));
  } else if (const auto* place = std::get_if<APlace>(&kind)) {
    for (const Region& region : place->regions)
      setting(out, "place", std::visit([](const auto& shape) { return written(shape); }, region));
  }
}

std::string mark(const Kind& kind, std::size_t choice) {
  if (const auto* one = std::get_if<OneRight>(&kind)) return choice == one->right ? "*" : "-";
  if (const auto* several = std::get_if<SeveralRight>(&kind))
    return choice < several->right.size() && several->right[choice] ? "*" : "-";
  return std::to_string(choice + 1) + ".";
}

void wording(std::string& out, const Question& question, const Wording& wording) {
  out.append("[").append(plain_words(wording.language)).append("]\n");
  const std::string text = plain_words(wording.text);
  out.append(looks_marked(text) ? "\\" : "").append(text).append("\n");
  for (std::size_t i = 0; i < wording.choices.size(); ++i)
    out.append(mark(question.kind, i)).append(" ").append(plain_words(wording.choices[i])).append("\n");
  out.append("> ").append(plain_words(wording.reason)).append("\n");
}

void write(std::string& out, const Question& question) {
  out.append("\n");
  setting(out, "question", question.id);
  setting(out, "revision", std::to_string(question.revision));
  setting(out, "kind", kind_word(question.kind));
  setting(out, "topic", question.topic);
  if (question.critical) setting(out, "critical", "yes");
  if (question.partial) setting(out, "partial", "yes");
  if (!question.picture.empty()) setting(out, "picture", question.picture);
  answer(out, question.kind);
  for (const Wording& each : question.wordings) wording(out, question, each);
}

}  // namespace

std::string to_text(const Bank& bank) {
  std::string out;
  top(out, bank);
  for (const Question& question : bank.questions) write(out, question);
  return out;
}

}  // namespace wm::teach
