#include "app/people/match.h"

#include <QStringList>
#include <algorithm>
#include <functional>

#include "app/widgets/person_search.h"

namespace wm::app {
namespace {

QString digits(const std::string& text) {
  QString digits;
  for (const QChar c : QString::fromStdString(text))
    if (c.isDigit()) digits += c;
  return digits;
}

QString fold(const std::string& text) {
  return folded(QString::fromStdString(text)).replace('-', ' ').simplified();
}

/// How many letters must be put in, taken out, changed or swapped with their neighbour to get from one to the
/// other (restricted Damerau-Levenshtein distance: Damerau 1964, Levenshtein 1966).
int edits(const QString& a, const QString& b) {
  std::vector<std::vector<int>> d(static_cast<std::size_t>(a.size()) + 1,
                                  std::vector<int>(static_cast<std::size_t>(b.size()) + 1));
  for (std::size_t i = 0; i < d.size(); ++i) d[i][0] = static_cast<int>(i);
  for (std::size_t j = 0; j < d[0].size(); ++j) d[0][j] = static_cast<int>(j);
  for (std::size_t i = 1; i < d.size(); ++i) {
    for (std::size_t j = 1; j < d[0].size(); ++j) {
      const auto at = [](std::size_t n) { return static_cast<qsizetype>(n); };
      const int change = a[at(i - 1)] == b[at(j - 1)] ? 0 : 1;
      d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + change});
      if (i > 1 && j > 1 && a[at(i - 1)] == b[at(j - 2)] && a[at(i - 2)] == b[at(j - 1)])
        d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
    }
  }
  return d.back().back();
}

/// One slip in a short name, two in one of eight letters or more; none in what is too short to tell.
bool similar(const QString& a, const QString& b) {
  const qsizetype shorter = std::min(a.size(), b.size());
  if (a == b) return true;
  if (shorter < 4) return false;
  return edits(a, b) <= (shorter >= 8 ? 2 : 1);
}

/// The ways one person's first name may have been written down.
QStringList first_names(const db::Person& person) {
  QStringList names{fold(person.given)};
  if (!person.nickname.empty()) names << fold(person.nickname);
  names.removeAll(QString());
  return names;
}

bool any_first_name(const db::Person& a, const db::Person& b, bool (*alike)(const QString&, const QString&)) {
  for (const QString& one : first_names(a))
    for (const QString& other : first_names(b))
      if (alike(one, other)) return true;
  return false;
}

bool equal(const QString& a, const QString& b) { return a == b; }

bool same_name(const db::Person& a, const db::Person& b) {
  const QString family = fold(a.family), other = fold(b.family);
  if (family.isEmpty() || other.isEmpty()) return false;
  if (family == other && any_first_name(a, b, equal)) return true;
  return family == fold(b.given) && fold(a.given) == other;  // written the wrong way round
}

bool similar_name(const db::Person& a, const db::Person& b) {
  const QString family = fold(a.family), other = fold(b.family);
  return !family.isEmpty() && !other.isEmpty() && similar(family, other) && any_first_name(a, b, similar);
}

/// With one birth date, half a name is enough: people marry, and are called by another name.
bool half_a_name(const db::Person& a, const db::Person& b) {
  const QString family = fold(a.family), other = fold(b.family);
  return (!family.isEmpty() && similar(family, other)) || any_first_name(a, b, similar);
}

bool same_text(const std::string& a, const std::string& b) { return !a.empty() && fold(a) == fold(b); }

/// The last seven digits: with or without a country's or a city's prefix.
bool same_phone(const std::string& a, const std::string& b) {
  const QString one = digits(a), other = digits(b);
  return one.size() >= 7 && other.size() >= 7 && one.right(7) == other.right(7);
}

LikelyDouble compare(const db::Person& entered, std::optional<Day> born, const KnownPerson& known) {
  LikelyDouble found{known.person.id, {}, 0};
  const auto add = [&found](Alike alike, int weight) {
    found.alike.push_back(alike);
    found.weight += weight;
  };
  const db::Person& other = known.person;
  const bool one_birth_date = born && known.born && *born == *known.born;
  if (same_name(entered, other))
    add(Alike::same_name, 8);
  else if (similar_name(entered, other) || (one_birth_date && half_a_name(entered, other)))
    add(Alike::similar_name, 4);
  if (same_text(entered.number, other.number)) add(Alike::same_number, 16);
  if (same_text(entered.card, other.card)) add(Alike::same_card, 16);
  if (same_phone(entered.phone, other.phone)) add(Alike::same_phone, 6);
  if (same_text(entered.email, other.email)) add(Alike::same_email, 8);
  if (one_birth_date && !found.alike.empty()) found.weight += 8;
  return found;
}

}  // namespace

std::vector<LikelyDouble> likely_doubles(const db::Person& entered, std::optional<Day> born,
                                         std::span<const KnownPerson> known) {
  std::vector<LikelyDouble> doubles;
  for (const KnownPerson& other : known) {
    if (!entered.id.empty() && other.person.id == entered.id) continue;
    LikelyDouble found = compare(entered, born, other);
    if (!found.alike.empty()) doubles.push_back(std::move(found));
  }
  std::ranges::stable_sort(doubles, std::greater<>{}, &LikelyDouble::weight);
  return doubles;
}

}  // namespace wm::app
