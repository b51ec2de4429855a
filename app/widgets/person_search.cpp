#include "app/widgets/person_search.h"

#include <QStringList>
#include <algorithm>
#include <optional>

namespace wm::app {

namespace {

QString from(const std::string& text) { return folded(QString::fromStdString(text)); }

// Smaller is better; nothing where the word begins none of the person's names.
std::optional<int> place_of(const db::Person& person, const QString& word) {
  const QString number = from(person.number);
  if (number == word) return 0;
  const std::pair<QString, int> names[] = {
      {from(person.nickname), 1}, {from(person.given), 1}, {from(person.family), 2}, {number, 3}};
  for (const auto& [name, place] : names)
    for (const QString& part : name.split(QChar(' '), Qt::SkipEmptyParts))
      for (const QString& piece : part.split(QChar('-'), Qt::SkipEmptyParts))
        if (piece.startsWith(word) || part.startsWith(word)) return place;
  return std::nullopt;
}

}  // namespace

bool TypedWords::in_folded(const QString& text) const {
  return std::all_of(words_.begin(), words_.end(),
                     [&text](const QString& word) { return text.contains(word); });
}

std::vector<db::Person> find_people(const std::vector<db::Person>& people, const QString& typed,
                                    std::size_t limit) {
  const QStringList words = folded(typed).split(QChar(' '), Qt::SkipEmptyParts);
  if (words.isEmpty()) return {};
  struct Found {
    int place;
    QString name;
    const db::Person* person;
  };
  std::vector<Found> found;
  for (const db::Person& person : people) {
    int sum = 0;
    bool all = true;
    for (const QString& word : words) {
      const auto place = place_of(person, word);
      all = all && place.has_value();
      sum += place.value_or(0);
    }
    if (all) found.push_back({sum, from(person.given + " " + person.family), &person});
  }
  std::sort(found.begin(), found.end(), [](const Found& a, const Found& b) {
    return std::tie(a.place, a.name, a.person->id) < std::tie(b.place, b.name, b.person->id);
  });
  std::vector<db::Person> best;
  for (std::size_t i = 0; i < found.size() && i < limit; ++i) best.push_back(*found[i].person);
  return best;
}

}  // namespace wm::app
