#include "app/start/computer_secret.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

#include "app/start/kept_secret.h"

namespace wm::app {

namespace {

tl::unexpected<Problem> unusable(const QString& path, const char* what, const char* remedy) {
  return tl::unexpected(Problem{path.toStdString(), what, remedy});
}

Expected<ledger::Secret> from_hex(const QString& path, const QByteArray& text) {
  if (const auto bytes = ledger::bytes_from_hex<32>(text.toStdString())) return ledger::Secret(*bytes);
  return unusable(path, "This is not the secret that the program keeps here.",
                  "Bring the file back from a backup of this computer, or move it away: another is made.");
}

}  // namespace

ledger::SigningKey station_key(const ledger::Secret& secret) {
  std::string made = "witnessmark station key\n";
  made.append(reinterpret_cast<const char*>(secret.bytes().data()), secret.bytes().size());
  return ledger::SigningKey(ledger::Secret(ledger::sha256(made)));
}

Expected<ledger::Secret> computer_secret(const QString& folder) {
  const SecretFile file{
      QDir(folder).filePath("secret"), "This computer's secret",
      "Bring the keyring back from a backup of this computer, or move this file away: another "
      "secret is made.",
      [](const QByteArray& text) { return ledger::bytes_from_hex<32>(text.toStdString()).has_value(); }};
  if (!QFile::exists(file.path)) {
    QDir().mkpath(folder);
    const auto made = QByteArray::fromStdString(ledger::to_hex(ledger::Secret::random().bytes()));
    if (!keep_secret(file, made))
      return unusable(file.path, "This computer's secret cannot be kept here.",
                      "Make room, or ask for the right to write to the folder.");
  }
  // Another program may have been faster: what lies there counts.
  return read_secret(file).and_then([&](const QByteArray& text) { return from_hex(file.path, text); });
}

Expected<ledger::Secret> computer_secret() {
  static const Expected<ledger::Secret> kept =
      computer_secret(QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation));
  return kept;
}

}  // namespace wm::app
