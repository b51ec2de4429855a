#include "app/cli/verify_file.h"

#include <QFileInfo>
#include <fstream>
#include <iostream>

#include "app/cli/application.h"
#include "app/cli/refusal.h"
#include "app/ledger/look_words.h"
#include "app/ledger/own_roots.h"
#include "app/words/words.h"
#include "db/verify/verify.h"

namespace wm::app {
namespace {

using verify::KnownRoot;
using verify::Report;

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

void say(const QString& line) {
  if (!line.isEmpty()) std::cout << line.toStdString() << "\n";
}
void say(const QStringList& lines) {
  for (const QString& line : lines) say(line);
}

}  // namespace

int verify_file(const VerifyWords& words) {
  const Application application;
  verify::Ask ask;
  ask.all = words.all;
  ask.record = words.record;
  for (const std::string& against : words.against) {
    auto roots = roots_of(against);
    if (!roots) return refuse(roots.error());
    ask.against.insert(ask.against.end(), roots->begin(), roots->end());
  }
  // Without them, what stood in the way is said.
  if (QFileInfo::exists(QString::fromStdString(words.store)))
    if (const auto own = add_own_roots(words.store, ask); !own) say(problem_sentence(own.error()));
  const auto report = verify::look_through(words.store, ask);
  if (!report) return refuse(report.error());
  const LookWords look(*report);
  say(look.tree());
  say(look.checkouts());
  say(look.roots());
  if (!words.record.empty()) say_record(words.record, *report);
  say(look.findings());
  say(look.unknown());
  say(look.verdict());
  if (look.fine())
    if (const auto kept = keep_verified(words.store, report->head); !kept)
      say(problem_sentence(kept.error()));
  return look.fine() && (words.record.empty() || report->record) ? 0 : 1;
}

}  // namespace wm::app
