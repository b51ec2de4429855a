#pragma once
// What this computer alone knows: signing keys are sealed with it beside a PIN.
#include <QString>

#include "core/ledger/signing.h"
#include "core/problem.h"

namespace wm::app {

/// The secret of the computer whose own folder that is, made at the first call. It lies in the system's
/// keyring, which the folder's file "secret" then says; where there is no keyring, in that file, which only
/// its owner may read, and is moved as soon as there is one. It is no part of a shop's file or its backups:
/// whoever takes those away finds sealed keys and nothing to try PINs with. Lost, or on another computer,
/// each assessor gets a new key at their next signature. Refuses a file that is something else, and a keyring
/// that does not open.
Expected<ledger::Secret> computer_secret(const QString& folder);
/// In the folder where this computer's own things lie; asked for once, first by the main thread, which alone
/// can wait for a keyring.
Expected<ledger::Secret> computer_secret();

/// The key that this computer signs the ledger's heads with, made of its secret.
ledger::SigningKey station_key(const ledger::Secret& secret);

}  // namespace wm::app
