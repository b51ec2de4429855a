#pragma once
// What this computer alone knows: signing keys are sealed with it beside a PIN.
#include <QString>

#include "core/ledger/signing.h"
#include "core/problem.h"

namespace wm::app {

/// The secret kept in the folder's file "secret", made at the first call; only its owner may read it. It is
/// no part of a shop's file or its backups: whoever takes those away finds sealed keys and nothing to try
/// PINs with. Lost, or on another computer, each assessor gets a new key at their next signature. Refuses a
/// file that is something else.
Expected<ledger::Secret> computer_secret(const QString& folder);
/// In the folder where this computer's own things lie.
Expected<ledger::Secret> computer_secret();

/// The key that this computer signs the ledger's heads with, made of its secret.
ledger::SigningKey station_key(const ledger::Secret& secret);

}  // namespace wm::app
