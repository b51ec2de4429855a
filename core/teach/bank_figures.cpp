#include "core/teach/bank_figures.h"

#include <algorithm>

#include "core/teach/attempt.h"
#include "core/teach/bank_text.h"

namespace wm::teach {
namespace {

/// A bank's revisions and what was made of the attempts at it.
struct SatBank {
  std::map<int, Bank> revisions;
  std::vector<SeenAttempt> attempts;
  std::size_t unread = 0;
};

/// False where the attempt can't be marked by this bank.
bool see(SatBank& sat, const Attempt& attempt) {
  const auto bank = sat.revisions.find(attempt.revision);
  if (bank == sat.revisions.end()) return false;
  const auto marking = mark_attempt(bank->second, attempt);
  if (marking) sat.attempts.push_back(seen(bank->second, attempt, *marking));
  return marking.has_value();
}

std::vector<std::size_t> spread_of(const std::vector<SeenAttempt>& attempts) {
  std::vector<std::size_t> spread;
  for (const SeenAttempt& attempt : attempts) {
    if (spread.empty()) spread.resize(attempt.answers.size() + 1);
    if (spread.size() != attempt.answers.size() + 1) return {};
    ++spread[static_cast<std::size_t>(std::count_if(attempt.answers.begin(), attempt.answers.end(),
                                                    [](const SeenAnswer& a) { return a.mark.right; }))];
  }
  return spread;
}

std::map<std::string, PaperFigures> figures_by(const std::vector<SeenAttempt>& attempts, By by) {
  std::map<std::string, PaperFigures> figures;
  for (const auto& [group, some] : grouped(attempts, by)) figures[group] = paper_figures(some);
  return figures;
}

BankFigures figures_of(const std::string& name, SatBank sat) {
  BankFigures figures;
  figures.bank = name;
  figures.unread = sat.unread;
  for (auto& [revision, bank] : sat.revisions) figures.revisions.push_back(std::move(bank));
  figures.all = paper_figures(sat.attempts);
  figures.by_topic = figures_by(sat.attempts, By::topic);
  figures.by_language = figures_by(sat.attempts, By::language);
  for (auto& [revision, some] : figures_by(sat.attempts, By::revision))
    figures.by_revision[std::stoi(revision)] = some;
  figures.spread = spread_of(sat.attempts);
  figures.questions = question_figures(sat.attempts);
  figures.look_first = look_first(figures.questions);
  return figures;
}

}  // namespace

std::vector<BankFigures> bank_figures(std::span<const std::string> banks,
                                      std::span<const std::string> attempts) {
  std::map<std::string, SatBank> sat;
  for (const std::string& text : banks)
    if (auto bank = read_bank(text)) sat[bank->name].revisions[bank->revision] = std::move(*bank);
  for (const std::string& json : attempts) {
    const auto attempt = read_attempt(json);
    const auto at = attempt ? sat.find(attempt->bank) : sat.end();
    if (at != sat.end() && !see(at->second, *attempt)) ++at->second.unread;
  }
  std::vector<BankFigures> all;
  for (auto& [name, one] : sat) all.push_back(figures_of(name, std::move(one)));
  return all;
}

const Question* question_of(const BankFigures& figures, std::string_view id, int revision) {
  for (auto bank = figures.revisions.rbegin(); bank != figures.revisions.rend(); ++bank)
    if (const Question* question = question_of(*bank, id); question && question->revision == revision)
      return question;
  return nullptr;
}

std::vector<LookIn> look_first(std::span<const BankFigures> banks) {
  std::vector<LookIn> all;
  for (const BankFigures& bank : banks)
    for (const LookAt& look : bank.look_first) all.push_back({&bank, &look});
  std::stable_sort(all.begin(), all.end(),
                   [](const LookIn& a, const LookIn& b) { return worse(*a.look, *b.look); });
  return all;
}

}  // namespace wm::teach
