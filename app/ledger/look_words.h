#pragma once
// What looking a shop's file through came to, in sentences.
#include <QCoreApplication>
#include <QStringList>

#include "db/verify/verify.h"

namespace wm::app {

class LookWords {
  Q_DECLARE_TR_FUNCTIONS(LookWords)
 public:
  explicit LookWords(const verify::Report& report) : report_(report) {}

  /// Whether all is as it must be.
  bool fine() const { return report_.findings.empty(); }
  /// The verdict, in one sentence.
  QString verdict() const;
  /// How many records, when the last came, and the root.
  QString tree() const;
  QString checkouts() const;
  /// A sentence for each root that holds; of this computer's own only the last.
  QStringList roots() const;
  /// A sentence for each finding.
  QStringList findings() const;
  /// What nobody can know from the file and these roots; empty where all is covered.
  QString unknown() const;

 private:
  QString finding(const verify::Finding& one) const;
  QString root(const verify::RootAnswer& answer) const;
  const verify::Report& report_;
};

}  // namespace wm::app
