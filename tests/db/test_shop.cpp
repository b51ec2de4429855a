#include "test_shop.h"

#include <QProcess>
#include <catch2/catch.hpp>

namespace wm::db {

QString by_sqlite3(const std::string& path, const QString& sql) {
  QProcess program;
  program.setProcessChannelMode(QProcess::MergedChannels);
  program.start("sqlite3", {QString::fromStdString(path), sql});
  REQUIRE(program.waitForFinished());
  return QString::fromUtf8(program.readAll()).trimmed();
}

TestShop::TestShop(Empty) {
  make_application();
  place_ = std::make_shared<TestPlace>();
  auto made = Store::create(path(), {"Hollow Oak Workshop", "America/Chicago", 0}, clock(), cheap_pins());
  if (!made) FAIL(made.error().what);
  store_.emplace(std::move(*made));
}

TestShop TestShop::empty() { return TestShop(Empty{}); }

TestShop TestShop::copy() const {
  TestShop made(Closed{}, *place_);
  *made.now_ = *now_;
  made.reopen();
  return made;
}

TestShop::TestShop() : TestShop(Empty{}) {
  const auto done = store_->found(small_history());
  if (!done) FAIL(done.error().where + ": " + done.error().what);
}

void TestShop::reopen(const std::string& login) {
  store_.reset();
  StoreOptions options = cheap_pins();
  options.login = login;
  auto opened = Store::open(path(), clock(), options);
  if (!opened) FAIL(opened.error().what);
  store_.emplace(std::move(*opened));
}

Command TestShop::command(const PersonId& by, Action action, std::optional<Instant> at) {
  Command command;
  command.id = "c" + std::to_string(++next_);
  command.by = by;
  command.at = at;
  command.action = std::move(action);
  return command;
}

Expected<Committed> TestShop::commit(const PersonId& by, Action action, std::optional<Instant> at) {
  return store_->commit(command(by, std::move(action), at));
}

Expected<Committed> TestShop::from_paper(const PersonId& by, Action action, Instant at) {
  Command made = command(by, std::move(action), at);
  made.from_paper = true;
  return store_->commit(made);
}

RecordId TestShop::enter(const PersonId& by, Action action, std::optional<Instant> at) {
  const auto done = commit(by, std::move(action), at);
  if (!done) FAIL(done.error().where + ": " + done.error().what);
  return done->entries.empty() ? RecordId() : done->entries.front().id;
}

void refused(const Expected<Committed>& done, const std::string& part) {
  if (done) FAIL("was entered, though it should not: " << part);
  CHECK_THAT(done.error().what, Catch::Contains(part));
  CHECK_FALSE(done.error().where.empty());
  CHECK_FALSE(done.error().remedy.empty());
}

}  // namespace wm::db
