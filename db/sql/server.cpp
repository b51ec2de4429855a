#include "db/sql/server.h"

#include <QUrl>
#include <QUrlQuery>

#include "db/refuse.h"
#include "db/sql/connection.h"

namespace wm::db {
namespace {

/// In libpq's own quotes. The driver would take a semicolon for the end of an option, even a quoted one.
QString option(const QString& name, QString value) {
  value.replace('\\', "\\\\").replace('\'', "\\'");
  return name + "='" + value + "'";
}

tl::unexpected<Problem> not_an_address(const std::string& uri) {
  return refuse(shown_name(uri), "This is not the address of a shop on a server.",
                "Write it like postgresql://desk1@server.example/shop.");
}

bool is_word(const QString& name) {
  return !name.isEmpty() &&
         std::all_of(name.begin(), name.end(), [](QChar c) { return c == '_' || (c >= 'a' && c <= 'z'); });
}

/// A parameter that says again what stands before the question mark takes its place, as in libpq.
Expected<void> add(ServerAddress& address, const QString& name, const QString& value,
                   const std::string& uri) {
  if (!is_word(name) || value.contains(';') || value.contains(QChar::Null)) return not_an_address(uri);
  if (name == "host") return address.host = value, Expected<void>{};
  if (name == "user") return address.user = value, Expected<void>{};
  if (name == "password") return address.password = value, Expected<void>{};
  if (name == "dbname") return address.database = value, Expected<void>{};
  if (!address.options.isEmpty()) address.options += ';';
  address.options += option(name, value);
  return {};
}

}  // namespace

bool is_on_server(const std::string& name) {
  return name.rfind("postgresql://", 0) == 0 || name.rfind("postgres://", 0) == 0;
}

Expected<ServerAddress> read_address(const std::string& uri) {
  const QUrl url(text(uri), QUrl::StrictMode);
  if (!is_on_server(uri) || !url.isValid() || url.hasFragment()) return not_an_address(uri);
  ServerAddress address{url.host(QUrl::FullyDecoded),
                        url.path(QUrl::FullyDecoded).mid(1),
                        url.userName(QUrl::FullyDecoded),
                        url.password(QUrl::FullyDecoded),
                        url.port(),
                        {}};
  for (const auto& [name, value] : QUrlQuery(url).queryItems(QUrl::FullyDecoded))
    if (auto done = add(address, name, value, uri); !done) return tl::make_unexpected(done.error());
  if (address.database.isEmpty())
    return refuse(shown_name(uri), "The address does not say which database the shop is in.",
                  "End it with the database's name, like postgresql://desk1@server.example/shop.");
  return address;
}

std::string shown_name(const std::string& name) {
  if (!is_on_server(name)) return name;
  QUrl url(text(name));
  url.setPassword({});
  QUrlQuery query(url);
  query.removeAllQueryItems("password");
  url.setQuery(query.isEmpty() ? QString() : query.query());
  return url.isValid() ? url.toString().toStdString() : name.substr(0, name.find("://") + 3) + "…";
}

}  // namespace wm::db
