#include "db/sql/connection.h"

#include <QSqlDriver>
#include <QSqlError>
#include <QUuid>
#include <algorithm>
#include <cassert>

#include "db/refuse.h"
#include "db/sql/server.h"

namespace wm::db {
namespace {

/// What the trigger on the ledger's edge calls out on.
const QString channel = "witnessmark";

void aim(QSqlDatabase& database, const ServerAddress& address, int busy_ms) {
  database.setHostName(address.host);
  database.setPort(address.port);
  database.setDatabaseName(address.database);
  database.setUserName(address.user);
  database.setPassword(address.password);
  const QString patience = QString(
                               "connect_timeout=5;application_name=witnessmark;"
                               "options='-c lock_timeout=%1'")
                               .arg(busy_ms);
  database.setConnectOptions(address.options.isEmpty() ? patience : patience + ";" + address.options);
}

/// Whether the server, or the way to it, was gone: libpq's own errors have no code, the server's last words
/// are of class 57P (postgresql.org/docs/15/errcodes-appendix.html).
bool went_away(const QString& code) {
  return code.isEmpty() || code.startsWith("08") || code.startsWith("57P") || code == "25P03";
}

/// Two desks at the same thing in the same moment: of two, the one that was later is to look again.
bool is_crossed(const QString& code) { return code.startsWith("40") || code == "23505" || code == "23P01"; }

/// PostgreSQL's text has every character but the one with the code 0.
bool values_can_be_kept(const QVariantList& values) {
  return std::none_of(values.begin(), values.end(), [](const QVariant& value) {
    return value.typeId() == QMetaType::QString && value.toString().contains(QChar::Null);
  });
}

}  // namespace

Connection::Connection(const std::string& path, int busy_ms)
    : path_(path),
      dialect_(is_on_server(path) ? &dialect::postgres : &dialect::sqlite),
      name_("wm-" + QUuid::createUuid().toString(QUuid::WithoutBraces)) {
  database_ = QSqlDatabase::addDatabase(dialect_->driver, name_);
  if (on_server()) {
    // What is no address stays closed; whoever opens a store has read it before.
    const auto address = read_address(path);
    if (!address) return;
    aim(database_, *address, busy_ms);
  } else {
    database_.setDatabaseName(text(path));
    database_.setConnectOptions(QString("QSQLITE_BUSY_TIMEOUT=%1").arg(busy_ms));
  }
  lost_ = !database_.open() && on_server();
}

Connection::~Connection() {
  kept_.clear();
  database_.close();
  database_ = {};
  QSqlDatabase::removeDatabase(name_);
}

std::string Connection::shown() const { return shown_name(path_); }

Expected<void> Connection::settle() {
  for (const char* setting : dialect_->settings)
    if (auto done = run(QString(setting)); !done) return done;
  return {};
}

bool Connection::listen(std::function<void()> told) {
  if (!on_server()) return false;
  told_ = std::move(told);
  hear();
  return true;
}

void Connection::hear() {
  QSqlDriver* driver = database_.driver();
  driver->subscribeToNotification(channel);
  // The desk's own commits are called out too; it knows of them.
  QObject::connect(driver, &QSqlDriver::notification, driver,
                   [this](const QString&, QSqlDriver::NotificationSource source, const QVariant&) {
                     if (source == QSqlDriver::OtherSource) told_();
                   });
}

Expected<void> Connection::forget() {
  const bool was_lost = std::exchange(lost_, false);
  crossed_ = false;
  return was_lost ? open_again() : Expected<void>{};
}

Expected<void> Connection::open_again() {
  kept_.clear();
  QObject::disconnect(database_.driver(), &QSqlDriver::notification, nullptr, nullptr);
  database_.close();
  if (!database_.open()) return tl::make_unexpected(problem(database_.lastError()));
  if (auto done = settle(); !done) return done;
  if (told_) hear();
  return {};
}

Problem Connection::problem(const QSqlError& error) const {
  return on_server() ? server_problem(error) : file_problem(error);
}

Problem Connection::server_problem(const QSqlError& error) const {
  const std::string where = shown(), said = error.databaseText().trimmed().toStdString();
  const QString code = error.nativeErrorCode();
  if (went_away(code)) {
    lost_ = true;
    return {where, "The server cannot be reached, or does not let this desk in: " + said + ".",
            "See whether the server runs and the network is there, then try again."};
  }
  if (is_crossed(code)) {
    crossed_ = true;
    return {where, "Another desk entered something in the same moment: " + said + ".", "Try again."};
  }
  if (code == "55P03" || code == "57014")
    return {where, "The shop is busy: another desk is entering something.", "Try again in a moment."};
  if (code == "42501")
    return {where, "This desk's login may not do that: " + said + ".",
            "Ask whoever looks after the server for the right to it."};
  if (code.startsWith("53"))
    return {where, "The server has no room left; nothing was entered.",
            "Make room on the server, and enter it again."};
  if (code.startsWith("XX"))
    return {where, "The shop's data on the server is damaged: " + said + ".",
            "Bring back the last backup, and keep what is there."};
  return {where, "The shop could not be used: " + said + ".",
          "Try again; if it stays, ask whoever looks after the server."};
}

Problem Connection::file_problem(const QSqlError& error) const {
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
  if (on_server() && !values_can_be_kept(values))
    return refuse(shown(), "There is a character with the code 0 in the text, which a server cannot keep.",
                  "Take it out.");
  auto found = kept_.find(sql);
  if (found == kept_.end()) {
    QSqlQuery query(database_);
    // On a server two queries are read in step, which its driver can't do row by row.
    query.setForwardOnly(!on_server());
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
  query.setForwardOnly(!on_server());
  if (!query.exec(sql)) return tl::make_unexpected(problem(query.lastError()));
  auto there = next(query);
  for (; there && *there; there = next(query)) row(query);
  return there.map([](bool) {});
}

Expected<QVariant> Connection::value(const QString& sql) {
  if (!database_.isOpen()) return tl::make_unexpected(problem(database_.lastError()));
  QSqlQuery query(database_);
  query.setForwardOnly(!on_server());
  if (!query.exec(sql)) return tl::make_unexpected(problem(query.lastError()));
  if (query.next()) return query.value(0);
  if (query.lastError().isValid()) return tl::make_unexpected(problem(query.lastError()));
  return QVariant();
}

Expected<Transaction> Transaction::begin(Connection& connection, const char* how) {
  if (auto done = connection.forget(); !done) return tl::make_unexpected(done.error());
  auto begun = connection.run(QString(how));
  // A connection that was cut while nobody used it is noticed only now.
  if (!begun && connection.lost())
    begun = connection.forget().and_then([&] { return connection.run(QString(how)); });
  return begun.map([&] { return Transaction(connection); });
}

Expected<Transaction> Transaction::begin(Connection& connection) {
  auto begun = begin(connection, connection.dialect().begin);
  if (const QString turn = connection.dialect().take_turn; begun && !turn.isEmpty())
    if (auto taken = connection.run(turn); !taken) return tl::make_unexpected(taken.error());
  return begun;
}

Expected<Transaction> Transaction::begin_new(Connection& connection) {
  return begin(connection, connection.dialect().begin);
}

Expected<Transaction> Transaction::begin_reading(Connection& connection) {
  return begin(connection, connection.dialect().begin_reading);
}

Transaction::~Transaction() {
  if (connection_ != nullptr && !connection_->lost()) (void)connection_->run("ROLLBACK");
}

Expected<void> Transaction::commit() {
  assert(connection_ != nullptr);
  QSqlError error;
  auto done = connection_->run("COMMIT", error);
  if (done) connection_ = nullptr;
  if (connection_ != nullptr && connection_->lost())
    return refuse(connection_->shown(),
                  "The server went away while this was being kept: it may be there, or not.",
                  "See whether the server runs; look whether it is there before you enter it anew.");
  if (done || connection_->on_server() || (error.nativeErrorCode().toInt() & 0xff) != dialect::io_error)
    return done;
  // The log may have taken all of it before the disk failed.
  return tl::make_unexpected(
      Problem{connection_->path(), "The disk failed while this was being kept: it may be there, or not.",
              "Check the disk, open the shop again, and look whether it is there before you enter it anew."});
}

}  // namespace wm::db
