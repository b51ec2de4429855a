// One question: its settings, then what it says in each language.
#include <algorithm>

#include "core/teach/reading.h"
#include "core/teach/words.h"

namespace wm::teach {
namespace {

void identify(const Line& line, Question& question, Mistakes& mistakes) {
  question.id = plain_words(line.text.substr(question_key.size()));
  const bool plain = std::all_of(question.id.begin(), question.id.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_';
  });
  if (!plain || question.id.empty() || question.id.size() > 64)
    mistakes.add(line.number, quoted(question.id) + " is no id of a question.",
                 "Write up to 64 letters a to z, digits, - and _, which stay the same in every revision.");
}

Kind kind(const Settings& settings) {
  const auto setting = settings.need("kind");
  if (!setting) return OneRight{};
  const auto kind = kind_called(setting->value);
  if (!kind) {
    settings.wrong(*setting, "There is no kind " + quoted(setting->value) + ".",
                   "Write one, several, order, number or place.");
    return OneRight{};
  }
  if (std::holds_alternative<ANumber>(*kind)) return number_answer(settings);
  if (std::holds_alternative<APlace>(*kind)) return place_answer(settings);
  return *kind;
}

/// Settings that stand where they mean nothing.
void check_stray(const Settings& settings, const Kind& kind) {
  const auto refuse = [&](std::string_view key, bool fits, const char* of) {
    if (const auto setting = settings.may(key); setting && !fits)
      settings.wrong(*setting, quoted(key) + " means nothing for this kind of question.",
                     std::string("Take it out, or make the question of the kind ") + of + ".");
  };
  const bool number = std::holds_alternative<ANumber>(kind);
  refuse("answer", number, "number");
  refuse("within", number, "number");
  refuse("place", std::holds_alternative<APlace>(kind), "place");
  const bool parts = std::holds_alternative<SeveralRight>(kind) || std::holds_alternative<InOrder>(kind);
  refuse("partial", parts, "several or order");
}

/// A name without a folder, so that a bank reaches nothing but the pictures beside it.
std::string picture(const Settings& settings, const Kind& kind) {
  const auto setting = settings.may("picture");
  if (!setting) {
    if (std::holds_alternative<APlace>(kind)) settings.need("picture");
    return "";
  }
  if (setting->value.find_first_of("/\\:") != std::string::npos || setting->value.front() == '.')
    settings.wrong(*setting, "This is no plain file name.",
                   "Put the picture beside the bank and write its name.");
  return name(settings, *setting);
}

}  // namespace

Question read_question(std::span<const Line> lines, const std::vector<std::string>& languages,
                       Mistakes& mistakes) {
  Question question;
  identify(lines.front(), question, mistakes);
  const auto tag = std::find_if(lines.begin() + 1, lines.end(), is_tag);
  const Settings settings(lines.front().number, {lines.begin() + 1, tag},
                          {"revision", "kind", "topic", "critical", "partial", "picture", "answer", "within"},
                          {"place"}, mistakes);
  if (const auto setting = settings.may("revision"))
    question.revision = whole(settings, *setting, setting->value, 1, highest_revision, 1);
  if (const auto setting = settings.need("topic")) question.topic = name(settings, *setting);
  question.critical = yes(settings, "critical");
  question.partial = yes(settings, "partial");
  question.kind = kind(settings);
  // An unknown kind is one mistake, not one for each setting.
  if (const auto setting = settings.may("kind"); setting && kind_called(setting->value))
    check_stray(settings, question.kind);
  question.picture = picture(settings, question.kind);
  settle(question, settings.title(), read_wordings({tag, lines.end()}, mistakes), languages, mistakes);
  return question;
}

}  // namespace wm::teach
