#pragma once
// Texts of banks that were edited and not issued, kept by this station: in memory, and in files where there
// is a folder for them, so that neither Escape nor a power cut nor a hand-over costs anybody what they typed.
// A draft is no record.
#include <map>
#include <optional>

#include "app/banks/bank_files.h"

namespace wm::app {

class BankDrafts {
 public:
  /// `folder` empty: in memory only.
  explicit BankDrafts(QString folder) : folder_(std::move(folder)) {}
  /// `of`: the name of the bank, or the path of the file, that was opened.
  std::optional<BankFile> find(const QString& of);
  /// Where that can't be written it is kept in memory, and said.
  std::optional<Problem> keep(const QString& of, const BankFile& draft);
  void drop(const QString& of);

 private:
  QString path(const QString& of) const;

  QString folder_;
  std::map<QString, BankFile> all_;
};

}  // namespace wm::app
