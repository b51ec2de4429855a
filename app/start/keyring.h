#pragma once
// The system's keyring (Secret Service, KWallet), through QtKeychain.
#include <QByteArray>
#include <QString>
#include <optional>

namespace wm::app {

enum class KeyringState { found, not_there, out_of_reach };

struct KeyringAnswer {
  KeyringState state = KeyringState::out_of_reach;
  QByteArray bytes;  // where found
};

/// Waits for the answer, a minute at most: the system may ask somebody to unlock it. Out of reach of every
/// thread but the main one.
KeyringAnswer read_keyring(const QString& name);
/// Whether it is kept there now, read back. As above.
bool keep_in_keyring(const QString& name, const QByteArray& bytes);

}  // namespace wm::app
