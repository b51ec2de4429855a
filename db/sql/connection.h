#pragma once
// One connection to the store, on either engine: statements, transactions and what went wrong, as values.
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QString>
#include <QVariantList>
#include <functional>
#include <map>
#include <string>

#include "core/problem.h"
#include "db/sql/dialect.h"

namespace wm::db {

inline QString text(const std::string& s) {
  return QString::fromUtf8(s.data(), static_cast<qsizetype>(s.size()));
}
inline std::string text(const QVariant& v) { return v.toString().toStdString(); }

/// Closed at the end of its life. A statement is prepared once and kept.
class Connection {
 public:
  /// Opens, without touching the store yet. `path`: a file, or a server's URI; it stands in the sentences,
  /// without its password.
  Connection(const std::string& path, int busy_ms);
  ~Connection();
  Connection(const Connection&) = delete;
  Connection& operator=(const Connection&) = delete;

  const std::string& path() const { return path_; }
  std::string shown() const;
  const Dialect& dialect() const { return *dialect_; }
  bool on_server() const { return dialect_->engine == Engine::postgres; }

  /// Runs a statement that is not run again.
  Expected<void> run(const QString& sql);
  /// The same, with what the engine itself said.
  Expected<void> run(const QString& sql, QSqlError& error);
  /// Runs a kept statement with values for its "?"s; what it gives is read from the query returned, which is
  /// valid until the same statement runs again.
  Expected<QSqlQuery*> run(const char* sql, const QVariantList& values);
  Expected<void> run(const char* sql, const QVariantList& values, QSqlError& error);
  /// Steps to the next row of what `run` gave; false after the last. A disk that fails midway is an error,
  /// not the end.
  Expected<bool> next(QSqlQuery& query);
  /// Gives each row of a query that is not run again.
  Expected<void> each(const QString& sql, const std::function<void(const QSqlQuery&)>& row);
  /// The first column of the first row; invalid where there is none.
  Expected<QVariant> value(const QString& sql);

  /// Asks for what every connection of its engine does.
  Expected<void> settle();
  /// Calls back whenever another desk has committed, as soon as the owning thread's event loop sees it; false
  /// where the engine does not tell.
  bool listen(std::function<void()> told);

  /// What stood in the way since `forget`: another desk was at the same thing in the same moment, or the
  /// server went away.
  bool crossed() const { return crossed_; }
  bool lost() const { return lost_; }
  /// Before a transaction: a connection that was lost is opened anew.
  Expected<void> forget();

 private:
  Problem problem(const QSqlError& error) const;
  Problem file_problem(const QSqlError& error) const;
  Problem server_problem(const QSqlError& error) const;
  Expected<void> open_again();
  void hear();
  Expected<QSqlQuery*> run_kept(const char* sql, const QVariantList& values, QSqlError& error);

  std::string path_;
  const Dialect* dialect_;
  QString name_;
  QSqlDatabase database_;
  std::map<const char*, QSqlQuery> kept_;
  std::function<void()> told_;
  mutable bool crossed_ = false, lost_ = false;
};

/// A transaction that is a scope: rolled back unless `commit` was called and went well.
class Transaction {
 public:
  /// To write: waits until nobody else does.
  static Expected<Transaction> begin(Connection& connection);
  /// To write where nothing is yet.
  static Expected<Transaction> begin_new(Connection& connection);
  /// For several reads that must see one state; hinders nobody.
  static Expected<Transaction> begin_reading(Connection& connection);
  Transaction(Transaction&& other) noexcept : connection_(std::exchange(other.connection_, nullptr)) {}
  Transaction& operator=(Transaction&&) = delete;
  ~Transaction();
  /// Where the disk fails or the server goes away at this, what was written may be kept or not: the Problem
  /// says so.
  Expected<void> commit();

 private:
  explicit Transaction(Connection& connection) : connection_(&connection) {}
  static Expected<Transaction> begin(Connection& connection, const char* how);
  Connection* connection_;
};

}  // namespace wm::db
