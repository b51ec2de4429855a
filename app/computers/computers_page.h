#pragma once
// What each computer of a shop on a server is for. A manager says it once, and can say otherwise later.
#include "app/lists/list_page.h"

namespace wm::app {

class ComputersPage : public ListPage {
  Q_OBJECT
 public:
  explicit ComputersPage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("computers"); }
  QString title() const override { return tr("Computers"); }
  void open(const Place& place) override;

 protected:
  std::vector<ListRow> rows(const QString& typed) override;
  void describe(const QString& login) override;

 private:
  std::vector<db::StationTold> computers() const;
  /// `login` empty: of one that is not in the list yet.
  void say_what_for(const QString& login);
};

}  // namespace wm::app
