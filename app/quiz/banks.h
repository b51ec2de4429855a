#pragma once
// Question banks out of the store: the one that is sat now, and the one that an old attempt was sat with.
#include <QByteArray>
#include <optional>
#include <string>

#include "app/session.h"
#include "core/teach/bank.h"

namespace wm::app {

struct IssuedBank {
  db::Issued issued;  // its pictures lie here
  teach::Bank bank;
};

/// That revision of it, as it was issued; nothing where it was not.
std::optional<IssuedBank> issued_bank(const Session& session, const std::string& name, int revision);
/// The one to be sat now: of what has been issued, the latest revision that is published; nothing where there
/// is none.
std::optional<IssuedBank> bank_in_force(const Session& session, const std::string& name);
/// A picture's file; empty where there is none of that name.
QByteArray picture_of(const db::Issued& issued, const std::string& name);

}  // namespace wm::app
