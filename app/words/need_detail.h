#pragma once
// The quiet line under a requirement: the record that carries it, or what came nearest.
#include <QString>
#include <functional>

#include "core/decide/answers.h"
#include "core/time/zone.h"
#include "db/facts.h"

namespace wm::app {

struct NeedDetail {
  const std::function<const db::Entry*(const RecordId&)>& record_of;
  const std::function<QString(const PersonId&)>& name_of;
  const Zone& zone;
  Instant now;

  QString of(const Reason& reason) const;

 private:
  const db::Entry* newest(const Reason& reason) const;
  QString day(Instant t) const;
  QString counts(const Reason& reason) const;
  QString carried(const Reason& reason, const db::Entry& entry) const;
  QString missed(const Reason& reason, const db::Entry& entry) const;
  QString reached(const Reason& reason) const;
};

}  // namespace wm::app
