#include <QDir>
#include <QFileInfo>

#include "app/start/start_page.h"

namespace wm::app {

namespace {

db::Command command(const char* id, db::Action action) {
  db::Command c;
  c.id = id;
  c.action = std::move(action);
  return c;
}

}  // namespace

Expected<db::Store> make_shop(const std::string& path, const FirstAnswers& answers, db::Store::Clock clock,
                              const db::StoreOptions& options) {
  QDir().mkpath(QFileInfo(QString::fromStdString(path)).absolutePath());
  auto store = db::Store::create(path, answers.shop, std::move(clock), options);
  if (!store) return store;
  db::Person manager = answers.manager;
  manager.id = "first-manager";
  manager.number = "0001";
  const auto founded =
      store->found({command("found-person", db::EnterPerson{manager, std::nullopt}),
                    command("found-role", db::EnterShopFact{db::RoleGiven{manager.id, db::Role::manager}}),
                    command("found-pin", db::ChoosePin{manager.id, answers.pin})});
  if (founded) return store;
  // A shop without a manager would be of use to nobody: nothing half-made is left behind.
  *store = std::move(*store);
  QFile::remove(QString::fromStdString(path));
  return tl::unexpected(founded.error());
}

}  // namespace wm::app
