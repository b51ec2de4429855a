#include "test_place.h"

#include <QCoreApplication>
#include <QFile>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <catch2/catch.hpp>

#include "db/sql/server.h"
#include "small_shop.h"

namespace wm::db {
namespace {

QString server() { return qEnvironmentVariable("WM_SERVER"); }

/// The server's address with another database, and another login.
QString address_of(const QString& database, const QString& login = {}) {
  QString address = server().replace("/postgres?", "/" + database + "?");
  return login.isEmpty() ? address : address.replace("judge@", login + "@");
}

QString said(const QString& address, const QString& sql) {
  make_application();
  QString wrong;
  {
    const auto to = read_address(address.toStdString()).value();
    QSqlDatabase owner = QSqlDatabase::addDatabase("QPSQL", "owner");
    owner.setHostName(to.host);
    owner.setDatabaseName(to.database);
    owner.setUserName(to.user);
    owner.setConnectOptions(to.options);
    if (!owner.open()) wrong = owner.lastError().text();
    QSqlQuery query(owner);
    if (wrong.isEmpty() && !query.exec(sql)) wrong = query.lastError().text();
  }
  QSqlDatabase::removeDatabase("owner");
  return wrong;
}

void on_server(const QString& sql) {
  const QString wrong = said(server(), sql);
  if (!wrong.isEmpty()) FAIL(wrong.toStdString());
}

QString next_database() {
  static int made = 0;
  return QString("shop_%1_%2").arg(QCoreApplication::applicationPid()).arg(++made);
}

}  // namespace

bool on_test_server() { return !server().isEmpty(); }

TestPlace::TestPlace() : name_(folder_.filePath("shop.wm").toStdString()) {
  if (!on_test_server()) return;
  database_ = next_database();
  on_server("CREATE DATABASE " + database_);
  name_ = address_of(database_).toStdString();
}

TestPlace::TestPlace(const TestPlace& other) : name_(folder_.filePath("shop.wm").toStdString()) {
  if (!on_test_server()) {
    REQUIRE(QFile::copy(QString::fromStdString(other.name_), QString::fromStdString(name_)));
    return;
  }
  database_ = next_database();
  on_server("CREATE DATABASE " + database_ + " TEMPLATE " + other.database_);
  name_ = address_of(database_).toStdString();
}

TestPlace::~TestPlace() {
  if (!database_.isEmpty()) (void)said(server(), "DROP DATABASE " + database_ + " WITH (FORCE)");
}

std::string TestPlace::name_for(const QString& login) const {
  return address_of(database_, login).toStdString();
}

QString TestPlace::as_owner(const QString& sql) const { return said(QString::fromStdString(name_), sql); }

}  // namespace wm::db
