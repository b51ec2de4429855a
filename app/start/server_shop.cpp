#include "app/start/server_shop.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QUrl>
#include <QUrlQuery>

#include "app/start/kept_secret.h"
#include "db/sql/server.h"

namespace wm::app {
namespace {

struct ServerShop {
  Q_DECLARE_TR_FUNCTIONS(ServerShop)
};

/// How long a start waits for a server that does not answer, in seconds.
constexpr const char* longest_wait = "10";

tl::unexpected<Problem> problem(const QString& where, const QString& what, const QString& remedy) {
  return tl::unexpected(Problem{where.toStdString(), what.toStdString(), remedy.toStdString()});
}

/// By a folder a server of this computer is reached without a network (a socket of it lies there).
bool is_folder(const QString& host) { return host.startsWith('/'); }
bool is_this_computer(const QString& host) {
  return is_folder(host) || host == "localhost" || host == "127.0.0.1";
}

QString encoded(const QString& path) { return QString::fromLatin1(QUrl::toPercentEncoding(path, "/")); }

QString address_file(const QString& folder) { return QDir(folder).filePath("server"); }
SecretFile password_file(const QString& folder) {
  return {QDir(folder).filePath("server-password"), "The password for the shop's server",
          "Move the file 'server' beside it away, start the program, and set the server up once more.",
          [](const QByteArray& text) { return !text.isEmpty(); }};
}

}  // namespace

Expected<std::string> address_of(const ServerAnswers& answers) {
  const std::pair<QString, QString> needed[] = {{answers.host, ServerShop::tr("the server's name")},
                                                {answers.database, ServerShop::tr("the shop's database")},
                                                {answers.login, ServerShop::tr("this computer's login")}};
  for (const auto& [value, field] : needed)
    if (value.isEmpty())
      return problem(field, ServerShop::tr("It is missing"), ServerShop::tr("Ask whoever set the server up"));
  QUrl url;
  url.setScheme("postgresql");
  const qsizetype colon = answers.host.lastIndexOf(':');
  bool numbered = false;
  const int port = answers.host.mid(colon + 1).toInt(&numbered);
  const bool with_port = colon > 0 && numbered && answers.host.indexOf(':') == colon;
  const QString host = with_port ? answers.host.left(colon) : answers.host;
  if (!is_folder(host)) url.setHost(host);
  if (with_port) url.setPort(port);
  if (!is_folder(host) && (!url.isValid() || url.host().isEmpty()))
    return problem(needed[0].second, ServerShop::tr("This is no name of a computer"),
                   ServerShop::tr("Write it like server.shop.lan"));
  url.setUserName(answers.login);
  url.setPath('/' + answers.database);
  QUrlQuery query;
  if (is_folder(host)) query.addQueryItem("host", encoded(host));
  if (!answers.root_certificate.isEmpty()) {
    const QFileInfo file(answers.root_certificate);
    if (!file.isFile() || !file.isReadable())
      return problem(ServerShop::tr("the file shop-root.crt"), ServerShop::tr("There is no such file"),
                     ServerShop::tr("Bring shop-root.crt from the server on a stick, and choose it"));
    query.addQueryItem("sslmode", "verify-full");
    query.addQueryItem("sslrootcert", encoded(file.absoluteFilePath()));
  } else if (!is_this_computer(host)) {
    return problem(ServerShop::tr("the file shop-root.crt"),
                   ServerShop::tr("Without it anybody in the same network could pass for the server"),
                   ServerShop::tr("Bring shop-root.crt from the server on a stick, and choose it"));
  }
  query.addQueryItem("connect_timeout", longest_wait);
  url.setQuery(query);
  const std::string address = url.toString(QUrl::FullyEncoded).toStdString();
  return db::read_address(address).map([&](const db::ServerAddress&) { return address; });
}

std::string with_password(const std::string& address, const QString& password) {
  QUrl url(QString::fromStdString(address));
  if (!password.isEmpty()) url.setPassword(password, QUrl::DecodedMode);
  return url.toString(QUrl::FullyEncoded).toStdString();
}

/// The password first: an address that is kept is one that can be opened.
Expected<void> keep_server_shop(const QString& folder, const std::string& address, const QString& password) {
  QDir().mkpath(folder);
  const SecretFile secret = password_file(folder);
  QSaveFile file(address_file(folder));
  const QByteArray line = QByteArray::fromStdString(address) + '\n';
  const bool kept = (password.isEmpty() ? !QFile::exists(secret.path) || QFile::remove(secret.path)
                                        : keep_secret(secret, password.toUtf8())) &&
                    file.open(QIODevice::WriteOnly) && file.write(line) == line.size() && file.commit();
  if (kept) return {};
  return problem(folder, ServerShop::tr("The server's address cannot be kept here"),
                 ServerShop::tr("Make room, or ask for the right to write to the folder"));
}

Expected<std::optional<std::string>> kept_server_shop(const QString& folder) {
  QFile file(address_file(folder));
  if (!file.exists()) return std::optional<std::string>();
  if (!file.open(QIODevice::ReadOnly))
    return problem(file.fileName(), ServerShop::tr("The server's address cannot be read"),
                   ServerShop::tr("Ask for the right to read the file"));
  const std::string address = file.readAll().trimmed().toStdString();
  if (auto read = db::read_address(address); !read) return tl::unexpected(read.error());
  const SecretFile secret = password_file(folder);
  if (!QFile::exists(secret.path)) return std::optional(address);
  return read_secret(secret).map([&](const QByteArray& password) {
    return std::optional(with_password(address, QString::fromUtf8(password)));
  });
}

}  // namespace wm::app
