#include "app/cli/verify_file.h"

#include <fstream>
#include <iostream>

#include "app/cli/refusal.h"
#include "core/time/text.h"
#include "db/verify/verify.h"

namespace wm::app {
namespace {

using verify::Finding;
using verify::FindingKind;
using verify::KnownRoot;
using verify::Outcome;
using verify::Report;

std::string counted(std::size_t number, const char* one, const char* more) {
  return std::to_string(number) + " " + (number == 1 ? one : more);
}

/// The signed lines of a file; its other lines are passed over.
Expected<std::vector<KnownRoot>> roots_in(const std::string& path, std::ifstream& file) {
  std::vector<KnownRoot> roots;
  int number = 0;
  for (std::string line; std::getline(file, line);) {
    ++number;
    if (!line.starts_with("witnessmark head ")) continue;
    auto root = verify::read_known_root(path + ", line " + std::to_string(number), line);
    if (!root)
      return tl::make_unexpected(
          Problem{path + ", line " + std::to_string(number), root.error().what, root.error().remedy});
    roots.push_back(std::move(*root));
  }
  if (roots.empty())
    return tl::make_unexpected(Problem{path, "The file has no signed root.",
                                       "Name a file with lines that begin with \"witnessmark head\"."});
  return roots;
}

Expected<std::vector<KnownRoot>> roots_of(const std::string& words) {
  std::ifstream file(words);
  if (file) return roots_in(words, file);
  return verify::read_known_root("the root " + words, words)
      .map([](KnownRoot root) { return std::vector{std::move(root)}; })
      .map_error([&](Problem problem) {
        problem.where = words;
        problem.what = "No file, and no root either: " + problem.what;
        return problem;
      });
}

void say(const Finding& finding) {
  std::cout << finding.place;
  switch (finding.kind) {
    case FindingKind::altered:
      std::cout << " does not hold: " << finding.says;
      break;
    case FindingKind::cut_off:
      std::cout << ": the end was cut off: there are " << finding.says;
      break;
    default:
      std::cout << ": " << finding.says;
  }
  if (!finding.should.empty()) std::cout << "; should be: " << finding.should;
  std::cout << ".\n";
}

void say_tree(const Report& report) {
  const std::uint64_t records = report.head.size - (report.head.size > 0);
  std::cout << counted(records, "record", "records");
  if (records > 0) std::cout << ", the last entered " << to_text(report.head.at);
  std::cout << ". The root now: " << ledger::to_text(ledger::shortened(report.head)) << "\n";
}

void say_checkouts(const verify::CheckoutCount& count) {
  const std::size_t unsigned_all = count.paper + count.imported + count.unsigned_here;
  std::cout << counted(count.held, "check-out", "check-outs") << " with a signature that holds";
  if (count.verified_before > 0)
    std::cout << ", " << count.verified_before
              << " more under a root that holds, not verified again (--all does)";
  std::cout << ". Without a signature: " << unsigned_all << " (" << count.paper << " from paper, "
            << count.imported << " imported, " << count.unsigned_here << " entered here).\n";
}

void say_root(const verify::RootAnswer& answer) {
  if (answer.outcome != Outcome::holds) return;
  std::cout << answer.known.name << " holds: ";
  const std::uint64_t records = answer.known.head.size - 1;
  std::cout << (records == 1 ? "record 1 is" : "records 1 to " + std::to_string(records) + " are")
            << " as when it was written down";
  if (answer.known.full)
    std::cout << ", " << to_text(answer.known.full->head.at) << ", signed by the key "
              << ledger::to_hex(answer.known.full->key);
  std::cout << ".\n";
}

void say_record(const std::string& id, const Report& report) {
  if (!report.record) {
    std::cout << "There is no record " << id << ".\n";
    return;
  }
  std::cout << "Record " << id << " is leaf " << report.record->order << " of " << report.head.size << ":\n  "
            << report.record->leaf << "\n  its hash and these, from the leaf up, give the root "
            << ledger::to_hex(report.head.root) << ":\n";
  for (const ledger::Hash& hash : report.record->proof) std::cout << "  " << ledger::to_hex(hash) << "\n";
}

/// What nobody can know from the file and these roots.
void say_unknown(const Report& report) {
  std::uint64_t holds = 0;
  for (const verify::RootAnswer& answer : report.roots)
    if (answer.outcome == Outcome::holds) holds = answer.known.head.size;
  if (report.roots.empty())
    std::cout << "Not known without a root from outside the file: whether all of it was made anew by "
                 "somebody who can write the "
                 "file, or its end cut off. Name one with --against: it stands at the foot of every printed "
                 "paper.\n";
  else if (holds < report.head.size)
    std::cout << "Not known without a later root: whether what came after record "
              << (holds > 0 ? holds - 1 : 0) << " was made anew or cut off.\n";
}

}  // namespace

int verify_file(const VerifyWords& words) {
  verify::Ask ask{{}, words.all, false, words.record};
  for (const std::string& against : words.against) {
    auto roots = roots_of(against);
    if (!roots) return refuse(roots.error());
    ask.against.insert(ask.against.end(), roots->begin(), roots->end());
  }
  const auto report = verify::look_through(words.store, ask);
  if (!report) return refuse(report.error());
  say_tree(*report);
  say_checkouts(report->checkouts);
  for (const verify::RootAnswer& answer : report->roots) say_root(answer);
  if (!words.record.empty()) say_record(words.record, *report);
  for (const Finding& finding : report->findings.kept()) say(finding);
  if (report->findings.more() > 0) std::cout << "And " << report->findings.more() << " more of them.\n";
  say_unknown(*report);
  const bool fine = report->findings.empty() && (words.record.empty() || report->record);
  std::cout << (fine ? "Fine: nothing was found that should not be there.\n" : "NOT FINE: see above.\n");
  return fine ? 0 : 1;
}

}  // namespace wm::app
