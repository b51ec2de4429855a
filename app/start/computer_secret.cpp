#include "app/start/computer_secret.h"

#include <QDir>
#include <QFile>
#include <QSaveFile>
#include <QStandardPaths>

namespace wm::app {

namespace {

tl::unexpected<Problem> unusable(const QString& path, const char* what, const char* remedy) {
  return tl::unexpected(Problem{path.toStdString(), what, remedy});
}

Expected<ledger::Secret> read(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly))
    return unusable(path, "This computer's secret cannot be read.", "Ask for the right to read the file.");
  const auto bytes = ledger::bytes_from_hex<32>(file.readAll().trimmed().toStdString());
  if (!bytes)
    return unusable(path, "This is not the secret that the program keeps here.",
                    "Bring the file back from a backup of this computer, or move it away: another is made.");
  return ledger::Secret(*bytes);
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
  const ledger::Secret secret = ledger::Secret::random();
  QSaveFile file(path);
  const QByteArray text = QByteArray::fromStdString(ledger::to_hex(secret.bytes())) + "\n";
  const bool kept = file.open(QIODevice::WriteOnly) &&
                    file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) &&
                    file.write(text) == text.size() && file.commit();
  if (!kept)
    return unusable(path, "This computer's secret cannot be kept here.",
                    "Make room, or ask for the right to write to the folder.");
  // Another program may have been faster: what lies there counts.
  return read(path);
}

Expected<ledger::Secret> computer_secret() {
  return computer_secret(QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation));
}

}  // namespace wm::app
