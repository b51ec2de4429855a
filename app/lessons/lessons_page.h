#pragma once
// Lessons: what is taught, asked and checked by name, which revision counts, its text to go through, and
// issuing the next.
#include <map>

#include "app/desk/items.h"
#include "app/lists/issued.h"
#include "app/lists/list_page.h"

namespace wm::app {

class LessonReader;

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
  /// Who would have to do it again, by when, were that revision published.
  QString effect_words(const std::string& name, int revision, Instant at) const;
  int next_revision(const std::string& name) const;

  void describe_text(const std::string& name, const Item& item);
  void text_actions(const std::string& name);
  void issue(const std::string& name);
  Expected<db::Committed> issue_and_publish(db::Issued issued, bool again, std::optional<Instant> at);

  void attest(const std::string& name);
  void choose_reader(const std::string& name);
  /// Nobody: only to read.
  void show_reader(const std::string& name, const PersonId& person);
  void leave_reader();
  void record_gone_through();
  Expected<db::Committed> record(const PersonId& person, const std::string& name, const QString& note);

  std::map<std::string, Item> items_;
  LessonReader* reader_;
  std::string reading_;   // the lesson that is open
  PersonId reading_for_;  // who goes through it; empty: nobody
};

}  // namespace wm::app
