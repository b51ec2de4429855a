#pragma once
// A store's file in the hands of somebody who can write it, and knows how the program writes it.
#include <QTemporaryDir>
#include <functional>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "core/ledger/root.h"

namespace wm::db {

class Tampered {
 public:
  /// A copy of a shop's closed file.
  explicit Tampered(const std::string& path);

  const std::string& path() const { return path_; }
  /// Runs SQL with all guards taken away and put back afterwards, so that nothing else is to be seen.
  void run(const std::string& sql);
  /// Runs SQL as it is.
  void run_plain(const std::string& sql);
  std::vector<std::vector<std::string>> rows(const std::string& sql);

  /// Rewrites every record as the program would have written it: `change` gets the leaves and may do anything
  /// with them. Orders and commits are counted anew, and every column, every hash and the tree's edge follow.
  void rebuild(const std::function<void(std::vector<nlohmann::json>&)>& change);
  /// The root over what lies in the file now.
  ledger::Head head();

 private:
  std::vector<ledger::Hash> hashes();
  QTemporaryDir folder_;
  std::string path_;
};

}  // namespace wm::db
