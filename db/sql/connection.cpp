#include "db/sql/connection.h"

#include <QSqlError>
#include <QUuid>
#include <cassert>

#include "db/sql/dialect.h"

namespace wm::db {

Connection::Connection(const std::string& path, int busy_ms)
    : path_(path), name_("wm-" + QUuid::createUuid().toString(QUuid::WithoutBraces)) {
  database_ = QSqlDatabase::addDatabase(dialect::driver, name_);
  database_.setDatabaseName(text(path));
  database_.setConnectOptions(QString("QSQLITE_BUSY_TIMEOUT=%1").arg(busy_ms));
  database_.open();
}

Connection::~Connection() {
  kept_.clear();
  database_.close();
  database_ = {};
  QSqlDatabase::removeDatabase(name_);
}

Problem Connection::problem(const QSqlError& error) const {
  const std::string said = error.text().toStdString();
  switch (error.nativeErrorCode().toInt() & 0xff) {
    case dialect::busy:
    case dialect::locked:
      return {path_, "The file is locked by another program that is writing to it.",
              "Close the other program, or wait until it is done, and try again."};
    case dialect::readonly:
      return {path_, "The file cannot be written to.",
              "Ask for the right to write to the file and its folder."};
    case dialect::corrupt:
      return {path_, "The file is damaged: " + said + ".", "Bring back the last backup, and keep this file."};
    case dialect::full:
      return {path_, "The disk is full; nothing was entered.", "Make room on the disk and enter it again."};
    case dialect::not_a_database:
      return {path_, "The file is not a shop's file of this program.", "Choose the shop's own file."};
    default:
      return {path_, "The file could not be used: " + said + ".",
              "Check the disk and its folder, then try again."};
  }
}

Expected<void> Connection::run(const QString& sql) {
  if (!database_.isOpen()) return tl::make_unexpected(problem(database_.lastError()));
  QSqlQuery query(database_);
  if (query.exec(sql)) return {};
  return tl::make_unexpected(problem(query.lastError()));
}

Expected<QSqlQuery*> Connection::run(const char* sql, const QVariantList& values) {
  auto found = kept_.find(sql);
  if (found == kept_.end()) {
    QSqlQuery query(database_);
    query.setForwardOnly(true);
    if (!query.prepare(sql)) return tl::make_unexpected(problem(query.lastError()));
    found = kept_.emplace(sql, std::move(query)).first;
  }
  QSqlQuery& query = found->second;
  for (qsizetype i = 0; i < values.size(); ++i) query.bindValue(static_cast<int>(i), values[i]);
  if (query.exec()) return &query;
  return tl::make_unexpected(problem(query.lastError()));
}

Expected<QVariant> Connection::value(const QString& sql) {
  if (!database_.isOpen()) return tl::make_unexpected(problem(database_.lastError()));
  QSqlQuery query(database_);
  query.setForwardOnly(true);
  if (!query.exec(sql)) return tl::make_unexpected(problem(query.lastError()));
  if (query.next()) return query.value(0);
  if (query.lastError().isValid()) return tl::make_unexpected(problem(query.lastError()));
  return QVariant();
}

Expected<Transaction> Transaction::begin(Connection& connection) {
  return connection.run(dialect::begin).map([&] { return Transaction(connection); });
}

Expected<Transaction> Transaction::begin_reading(Connection& connection) {
  return connection.run("BEGIN").map([&] { return Transaction(connection); });
}

Transaction::~Transaction() {
  if (connection_ != nullptr) (void)connection_->run("ROLLBACK");
}

Expected<void> Transaction::commit() {
  assert(connection_ != nullptr);
  auto done = connection_->run("COMMIT");
  if (done) connection_ = nullptr;
  return done;
}

}  // namespace wm::db
