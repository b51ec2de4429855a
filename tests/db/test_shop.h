#pragma once
// A small shop for tests, in a file or on the server in WM_SERVER: a clock that stands still until told, one
// manager, one instructor, one at the desk.
#include <QString>
#include <string>

#include "small_shop.h"
#include "test_place.h"

namespace wm::db {

/// What the sqlite3 program says to that statement on that file, errors too.
QString by_sqlite3(const std::string& path, const QString& sql);

/// That it was not entered, since `part` of a sentence, with where and what to do.
void refused(const Expected<Committed>& done, const std::string& part);

class TestShop {
 public:
  /// With people and machines, founded a week before `evening`: mia (manager), ivo (instructor), dee (desk),
  /// kim and lou (members); mia and ivo are founding assessors of everything. PINs: 1111, 2222, 3333.
  /// Machines b1, b2 (bandsaw), s1 (sander), c1 (combi). "guards" is published at revision 1.
  TestShop();
  /// Nothing in it at all.
  static TestShop empty();

  /// The same shop in a place of its own. This one's store must be closed.
  TestShop copy() const;

  Store& store() { return *store_; }
  const std::string& path() const { return place_->name(); }
  const TestPlace& place() const { return *place_; }
  Instant now() const { return *now_; }
  void set_now(Instant t) { *now_ = t; }
  void wait(std::int64_t seconds) { now_->seconds += seconds; }
  Store::Clock clock() const {
    return [now = now_] { return *now; };
  }
  /// Closes the store and opens its file again, as the computer that comes in by that login.
  void reopen(const std::string& login = {});
  void close() { store_.reset(); }

  /// Commits with the next id.
  Expected<Committed> commit(const PersonId& by, Action action, std::optional<Instant> at = std::nullopt);
  Expected<Committed> from_paper(const PersonId& by, Action action, Instant at);
  /// As commit, failing the test where it is refused; the id of the first record.
  RecordId enter(const PersonId& by, Action action, std::optional<Instant> at = std::nullopt);
  Command command(const PersonId& by, Action action, std::optional<Instant> at = std::nullopt);

 private:
  struct Empty {};
  struct Closed {};
  TestShop(Closed, const TestPlace& other) : place_(std::make_shared<TestPlace>(other)) {}
  explicit TestShop(Empty);

  std::shared_ptr<TestPlace> place_;
  std::shared_ptr<Instant> now_ = std::make_shared<Instant>(evening);
  std::optional<Store> store_;
  int next_ = 0;
};

}  // namespace wm::db
