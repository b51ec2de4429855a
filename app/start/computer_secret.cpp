#include "app/start/computer_secret.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QStandardPaths>

#include "app/start/keyring.h"

namespace wm::app {

namespace {

tl::unexpected<Problem> unusable(const QString& path, const char* what, const char* remedy) {
  return tl::unexpected(Problem{path.toStdString(), what, remedy});
}

/// What the file says where the secret itself lies in the keyring.
constexpr const char* in_keyring = "in the system's keyring";

QByteArray hex(const ledger::Secret& secret) {
  return QByteArray::fromStdString(ledger::to_hex(secret.bytes()));
}

/// Each folder's secret has a name of its own there.
QString name_in_keyring(const QString& path) {
  const QByteArray place = QFileInfo(path).absoluteFilePath().toUtf8();
  return "station secret " + QCryptographicHash::hash(place, QCryptographicHash::Sha256).left(8).toHex();
}

bool write(const QString& path, const QByteArray& text) {
  QSaveFile file(path);
  return file.open(QIODevice::WriteOnly) &&
         file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) &&
         file.write(text + "\n") == text.size() + 1 && file.commit();
}

Expected<ledger::Secret> from_hex(const QString& path, const QByteArray& text) {
  if (const auto bytes = ledger::bytes_from_hex<32>(text.toStdString())) return ledger::Secret(*bytes);
  return unusable(path, "This is not the secret that the program keeps here.",
                  "Bring the file back from a backup of this computer, or move it away: another is made.");
}

Expected<ledger::Secret> from_keyring(const QString& path) {
  const KeyringAnswer kept = read_keyring(name_in_keyring(path));
  switch (kept.state) {
    case KeyringState::found:
      return from_hex(path, kept.bytes);
    case KeyringState::not_there:
      return unusable(
          path, "This computer's secret is no longer in the system's keyring.",
          "Bring the keyring back from a backup of this computer, or move this file away: another "
          "secret is made.");
    case KeyringState::out_of_reach:
      break;
  }
  return unusable(path, "This computer's secret lies in the system's keyring, which does not open.",
                  "Unlock the keyring, as by signing in to the desktop, then start the program again.");
}

/// Out of the file as soon as there is a keyring. Not moved, it stays where it is.
Expected<ledger::Secret> moved(const QString& path, ledger::Secret secret) {
  if (keep_in_keyring(name_in_keyring(path), hex(secret))) write(path, in_keyring);
  return secret;
}

Expected<ledger::Secret> read(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly))
    return unusable(path, "This computer's secret cannot be read.", "Ask for the right to read the file.");
  const QByteArray said = file.readAll().trimmed();
  if (said == in_keyring) return from_keyring(path);
  return from_hex(path, said).and_then([&](const ledger::Secret& secret) { return moved(path, secret); });
}

}  // namespace

ledger::SigningKey station_key(const ledger::Secret& secret) {
  std::string made = "witnessmark station key\n";
  made.append(reinterpret_cast<const char*>(secret.bytes().data()), secret.bytes().size());
  return ledger::SigningKey(ledger::Secret(ledger::sha256(made)));
}

Expected<ledger::Secret> computer_secret(const QString& folder) {
  const QString path = QDir(folder).filePath("secret");
  if (QFile::exists(path)) return read(path);
  QDir().mkpath(folder);
  // Into the file first: nothing may be sealed under a secret that is then lost.
  if (!write(path, hex(ledger::Secret::random())))
    return unusable(path, "This computer's secret cannot be kept here.",
                    "Make room, or ask for the right to write to the folder.");
  // Another program may have been faster: what lies there counts.
  return read(path);
}

Expected<ledger::Secret> computer_secret() {
  static const Expected<ledger::Secret> kept =
      computer_secret(QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation));
  return kept;
}

}  // namespace wm::app
