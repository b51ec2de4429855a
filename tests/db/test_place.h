#pragma once
// Where a test keeps a store: a file in a temporary folder, or a database of its own on the server in
// WM_SERVER.
#include <QString>
#include <QTemporaryDir>
#include <string>

namespace wm::db {

/// Whether the tests run on a server.
bool on_test_server();

/// Gone with everything in it at the end of its life.
class TestPlace {
 public:
  TestPlace();
  /// With what another has in it; nobody may have that one open.
  explicit TestPlace(const TestPlace& other);
  ~TestPlace();
  TestPlace& operator=(const TestPlace&) = delete;

  /// How the store is named; as another login on the server.
  const std::string& name() const { return name_; }
  std::string name_for(const QString& login) const;
  /// What whoever owns the server says to it, in this database; what went wrong, or nothing.
  QString as_owner(const QString& sql) const;

 private:
  QTemporaryDir folder_;
  QString database_;
  std::string name_;
};

}  // namespace wm::db
