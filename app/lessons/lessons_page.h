#pragma once
// Lessons: what is taught, asked and checked by name, which revision counts, and publishing the next.
#include <map>

#include "app/desk/items.h"
#include "app/lists/list_page.h"

namespace wm::app {

class LessonsPage : public ListPage {
  Q_OBJECT
 public:
  explicit LessonsPage(Session& session, QWidget* parent = nullptr);

  QString id() const override { return QStringLiteral("lessons"); }
  QString title() const override { return tr("Lessons"); }
  void refresh() override;
  void open(const Place& place) override;

 protected:
  std::vector<ListRow> rows(const QString& typed) override;
  void describe(const QString& id) override;

 private:
  struct Publication {
    int revision = 0;
    Instant at;
    QString note;
  };
  /// One name: lessons, quizzes and check-outs share them.
  struct Item {
    QStringList kinds;
    std::vector<Publication> published;  // the latest last
  };

  void read_items();
  const Publication* now(const Item& item) const;
  /// How many have this item in an earlier revision only.
  int with_earlier_only(const std::string& name, int revision) const;
  void publish(const std::string& name);

  std::map<std::string, Item> items_;
};

}  // namespace wm::app
