#pragma once
// The shop on a server that this computer works at: asked once, at the first start, and kept.
#include <QString>
#include <optional>
#include <string>

#include "core/problem.h"

namespace wm::app {

/// What is asked of whoever sets a computer up: see db/SERVER.md.
struct ServerAnswers {
  QString host, database, login, password;
  QString root_certificate;  // a file, by which the server proves to be the one
};

/// The shop's address without the password. Refuses what is missing, and another computer without a
/// certificate: whoever is in the same network could pass for it.
Expected<std::string> address_of(const ServerAnswers& answers);
/// The same as the store is opened by it.
std::string with_password(const std::string& address, const QString& password);

/// Keeps it in that folder for the starts to come, the password in the system's keyring.
Expected<void> keep_server_shop(const QString& folder, const std::string& address, const QString& password);
/// What is kept there, with its password; nothing where this computer works at no server. Refuses what cannot
/// be read.
Expected<std::optional<std::string>> kept_server_shop(const QString& folder);

}  // namespace wm::app
