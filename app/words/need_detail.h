#pragma once
// The quiet line under a requirement: the record that carries it and how long, or what came nearest.
#include <QString>

#include "app/words/reader.h"
#include "core/decide/answers.h"

namespace wm::app {

struct NeedDetail {
  const AnswerReader& reader;

  /// "90 % on 25 October, counts through 23 January 2027"; empty where there is nothing to say.
  QString of(const Reason& reason) const;
  /// Without how long it counts: what says that otherwise adds it.
  QString without_end(const Reason& reason) const;

 private:
  const db::Entry* newest(const Reason& reason) const;
  QString end(const Reason& reason) const;
  QString carried(const db::Entry& entry) const;
  QString missed(const Reason& reason, const db::Entry& entry) const;
  QString lost(const Reason& reason, const db::Entry& entry) const;
  QString reached(const Reason& reason) const;
};

}  // namespace wm::app
