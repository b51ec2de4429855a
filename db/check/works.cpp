// What the shop teaches and tests by, and what is answered to it.
#include <algorithm>

#include "core/passes/json.h"
#include "core/sheet/sheet_text.h"
#include "core/teach/bank_text.h"
#include "core/teach/marking.h"
#include "db/check/checks.h"

namespace wm::db {
namespace {

/// The first of the mistakes in a text, or one that says that it is of another name or revision.
template <class Read>
Expected<void> fits(const Read& read, const Issued& issued, std::string_view name, int revision) {
  if (!read) return tl::make_unexpected(read.error().front());
  if (name == issued.name && revision == issued.revision) return {};
  return refuse("text",
                "The text says that it is revision " + std::to_string(revision) + " of '" +
                    std::string(name) + "', not revision " + std::to_string(issued.revision) + " of '" +
                    issued.name + "'.",
                "Write the same name and revision in both places.");
}

Expected<void> check_bank(const Issued& issued) {
  const auto bank = teach::read_bank(issued.text);
  if (auto fine = fits(bank, issued, bank ? bank->name : "", bank ? bank->revision : 0); !fine) return fine;
  for (const teach::Question& question : bank->questions) {
    const auto has = [&](const Enclosure& e) { return e.name == question.picture; };
    if (question.picture.empty() || std::any_of(issued.enclosures.begin(), issued.enclosures.end(), has))
      continue;
    return refuse("enclosures",
                  "The picture '" + question.picture + "' of question '" + question.id + "' is missing.",
                  "Put the picture beside the bank.");
  }
  return {};
}

Expected<void> check_sheet(const Issued& issued) {
  const auto sheet = read_sheet(issued.text);
  return fits(sheet, issued, sheet ? sheet->name : "", sheet ? sheet->revision : 0);
}

/// A card is a planer's or a jointer's; the planer's has a wheel.
Expected<void> check_card(const Case& c, const Issued& issued) {
  if (!c.memory.target_known(issued.name))
    return refuse("name", "No rulebook has '" + issued.name + "'.",
                  "Choose a machine class or mode of the rulebook.");
  const auto planer = read_planer_card(issued.text);
  if (planer || read_jointer_card(issued.text)) return {};
  return tl::make_unexpected(planer.error().front());
}

Expected<void> check_text(const Case& c, const Issued& issued) {
  switch (issued.work) {
    case Work::bank:
      return check_bank(issued);
    case Work::sheet:
      return check_sheet(issued);
    case Work::card:
      return check_card(c, issued);
    case Work::lesson:
      return {};
  }
  return {};
}

}  // namespace

Expected<void> check_issued(const Case& c, const Issued& f) {
  if (f.name.find_first_not_of(" \t\r\n") == std::string::npos)
    return refuse("name", "It has no name.", "Give it the name that the rulebook has for it.");
  if (f.revision < 1) return refuse("revision", "Revisions are counted from 1.", "Give it the next number.");
  if (f.text.find_first_not_of(" \t\r\n") == std::string::npos)
    return refuse("text", "The text is empty.", "Write it first.");
  for (const std::size_t i : c.memory.of_kind("issued")) {
    const auto* earlier = as<Issued>(c.memory.entries()[i].fact);
    if (earlier->work != f.work || earlier->name != f.name || earlier->revision < f.revision) continue;
    return refuse(
        "revision",
        "Revision " + std::to_string(earlier->revision) + " of '" + f.name + "' has been issued already.",
        "Give it the next number.");
  }
  return check_text(c, f);
}

Expected<void> check_attempt_begun(const Case& c, const AttemptBegun& f) {
  const auto bank = c.memory.bank(f.bank, f.revision);
  if (!bank) return tl::make_unexpected(bank.error());
  const auto& languages = (*bank)->languages;
  if (std::find(languages.begin(), languages.end(), f.language) == languages.end())
    return refuse("language", "The bank '" + f.bank + "' is not worded in '" + f.language + "'.",
                  "Choose one of its languages.");
  return teach::draw_paper(**bank, f.seed).map([](const teach::Paper&) {});
}

Expected<Quiz> marked(const Case& c, const HandIn& a) {
  const auto* begun = c.memory.live<AttemptBegun>(a.begun);
  if (begun == nullptr)
    return refuse("begun", "There is no attempt '" + a.begun + "' that was begun.", "Begin the quiz first.");
  if (c.memory.about<AttemptSat>(a.begun) != nullptr)
    return refuse("begun", "This attempt has been handed in already.", "Nothing is left to do.");
  const auto attempt = teach::read_attempt(a.attempt);
  if (!attempt) return tl::make_unexpected(attempt.error().front());
  if (attempt->bank != begun->bank || attempt->revision != begun->revision || attempt->seed != begun->seed ||
      attempt->language != begun->language)
    return refuse("attempt", "These answers are to another paper than the one that was begun.",
                  "Hand in the answers to that paper.");
  const auto bank = c.memory.bank(begun->bank, begun->revision);
  if (!bank) return tl::make_unexpected(bank.error());
  return teach::mark_attempt(**bank, *attempt).map([&](const teach::Marking& m) {
    return Quiz{begun->person, begun->bank, begun->revision, m.correct, m.total, m.critical_missed};
  });
}

}  // namespace wm::db
