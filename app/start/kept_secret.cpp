#include "app/start/kept_secret.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include "app/start/keyring.h"

namespace wm::app {

namespace {

/// What the file says where the secret itself lies in the keyring.
constexpr const char* in_keyring = "in the system's keyring";

/// Each file's secret has a name of its own there.
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

/// Out of the file as soon as there is a keyring. Not moved, it stays where it is.
void move_into_keyring(const QString& path, const QByteArray& secret) {
  if (keep_in_keyring(name_in_keyring(path), secret)) write(path, in_keyring);
}

tl::unexpected<Problem> unusable(const SecretFile& file, const char* what, const std::string& remedy) {
  return tl::unexpected(Problem{file.path.toStdString(), file.called + std::string(what), remedy});
}

}  // namespace

Expected<QByteArray> read_secret(const SecretFile& file) {
  QFile kept(file.path);
  if (!kept.open(QIODevice::ReadOnly))
    return unusable(file, " cannot be read.", "Ask for the right to read the file.");
  const QByteArray said = kept.readAll().trimmed();
  kept.close();
  if (said != in_keyring) {
    if (file.can_be(said)) move_into_keyring(file.path, said);
    return said;
  }
  const KeyringAnswer answer = read_keyring(name_in_keyring(file.path));
  switch (answer.state) {
    case KeyringState::found:
      return answer.bytes;
    case KeyringState::not_there:
      return unusable(file, " is no longer in the system's keyring.", file.lost);
    case KeyringState::out_of_reach:
      break;
  }
  return unusable(file, " lies in the system's keyring, which does not open.",
                  "Unlock the keyring, as by signing in to the desktop, then start the program again.");
}

bool keep_secret(const SecretFile& file, const QByteArray& secret) {
  if (!write(file.path, secret)) return false;
  move_into_keyring(file.path, secret);
  return true;
}

}  // namespace wm::app
