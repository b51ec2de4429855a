#pragma once
// The parts of a bank's text, each read by itself.
#include <span>

#include "core/teach/bank.h"
#include "core/text/settings.h"

namespace wm::teach {

using text::Line;
using text::lines_of;
using text::Mistakes;
using text::plain_words;
using text::quoted;
using text::Setting;
using text::Settings;
using text::whole;
using text::yes;

constexpr std::string_view question_key = "question:";
constexpr int highest_revision = 1'000'000;

/// A name that people read: at most 200 bytes.
std::string name(const Settings& settings, const Setting& setting);

/// What stands above the first question. The lines of `draws` go by the bank's draws.
struct Top {
  Bank bank;
  std::size_t first_line = 1;
  std::vector<std::size_t> draws;
};
Top read_top(std::span<const Line> lines, Mistakes& mistakes);

/// A question's lines from its own "question:" on.
Question read_question(std::span<const Line> lines, const std::vector<std::string>& languages,
                       Mistakes& mistakes);

/// What the settings say of a number or a place.
ANumber number_answer(const Settings& settings);
APlace place_answer(const Settings& settings);

/// One language of a question as it stands: the mark of each choice is kept, since a kind asks for some.
struct RawChoice {
  std::size_t line = 0;
  std::string mark, text;  // "*", "-" or the number of a step
};
struct RawWording {
  std::size_t line = 0;
  std::string language, text, reason;
  std::vector<RawChoice> choices;
};
std::vector<RawWording> read_wordings(std::span<const Line> lines, Mistakes& mistakes);
/// Whether a line begins a language: "[en]".
bool is_tag(const Line& line);
/// Whether the text, as the first words of a line, would be taken for something else.
bool looks_marked(std::string_view text);

/// Fills in wordings, and for the kinds that have choices which are right.
void settle(Question& question, std::size_t title, const std::vector<RawWording>& raw,
            const std::vector<std::string>& languages, Mistakes& mistakes);

}  // namespace wm::teach
