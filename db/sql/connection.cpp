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
  const std::string said = error.databaseText().toStdString();
  const int code = error.nativeErrorCode().toInt();
  switch (code & 0xff) {
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
    case dialect::io_error:
      return {path_,
              code == dialect::io_error_read || code == dialect::io_error_short_read
                  ? "The disk failed while the file was being read."
                  : "The disk failed while the file was in use; nothing was entered.",
              "Check the disk and how it is connected, then try again."};
    case dialect::cannot_open:
      return {path_, "The file, or the log beside it, cannot be opened.",
              "Check the disk and the right to its folder, then try again."};
    default:
      return {path_, "The file could not be used: " + said + ".",
              "Check the disk and its folder, then try again."};
  }
}

Expected<void> Connection::run(const QString& sql) {
  QSqlError error;
  return run(sql, error);
}

Expected<void> Connection::run(const QString& sql, QSqlError& error) {
  if (!database_.isOpen()) return tl::make_unexpected(problem(database_.lastError()));
  QSqlQuery query(database_);
  if (query.exec(sql)) return {};
  error = query.lastError();
  return tl::make_unexpected(problem(error));
}

Expected<void> Connection::run(const char* sql, const QVariantList& values, QSqlError& error) {
  return run_kept(sql, values, error).map([](QSqlQuery*) {});
}

Expected<QSqlQuery*> Connection::run(const char* sql, const QVariantList& values) {
  QSqlError error;
  return run_kept(sql, values, error);
}

Expected<QSqlQuery*> Connection::run_kept(const char* sql, const QVariantList& values, QSqlError& error) {
  auto found = kept_.find(sql);
  if (found == kept_.end()) {
    QSqlQuery query(database_);
    query.setForwardOnly(true);
    if (!query.prepare(sql)) return tl::make_unexpected(problem(error = query.lastError()));
    found = kept_.emplace(sql, std::move(query)).first;
  }
  QSqlQuery& query = found->second;
  for (qsizetype i = 0; i < values.size(); ++i) query.bindValue(static_cast<int>(i), values[i]);
  if (query.exec()) return &query;
  return tl::make_unexpected(problem(error = query.lastError()));
}

Expected<bool> Connection::next(QSqlQuery& query) {
  if (query.next()) return true;
  if (!query.lastError().isValid()) return false;
  return tl::make_unexpected(problem(query.lastError()));
}

Expected<void> Connection::each(const QString& sql, const std::function<void(const QSqlQuery&)>& row) {
  if (!database_.isOpen()) return tl::make_unexpected(problem(database_.lastError()));
  QSqlQuery query(database_);
  query.setForwardOnly(true);
  if (!query.exec(sql)) return tl::make_unexpected(problem(query.lastError()));
  auto there = next(query);
  for (; there && *there; there = next(query)) row(query);
  return there.map([](bool) {});
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
  QSqlError error;
  auto done = connection_->run("COMMIT", error);
  if (done) connection_ = nullptr;
  if ((error.nativeErrorCode().toInt() & 0xff) != dialect::io_error) return done;
  // The log may have taken all of it before the disk failed.
  return tl::make_unexpected(
      Problem{connection_->path(), "The disk failed while this was being kept: it may be there, or not.",
              "Check the disk, open the shop again, and look whether it is there before you enter it anew."});
}

}  // namespace wm::db
