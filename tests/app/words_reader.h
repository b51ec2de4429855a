#pragma once
// What the tests of words know beside an answer: a shop in Chicago on Wednesday 25 November 2026, 17:20.
#include <vector>

#include "app/words/reader.h"
#include "core/decide/answers.h"

namespace wm::app {

struct WordsShop {
  Zone zone = Zone::named("America/Chicago").value();
  Instant now = zone.instant({day_of({2026, 11, 25}), 17, 20, 0});
  std::vector<db::Entry> entries;

  Instant start(int year, int month, int day) const { return zone.start(day_of({year, month, day})); }

  void add(const char* id, Instant at, Fact fact, const char* note = "") {
    db::Entry entry;
    entry.id = id;
    entry.at = at;
    entry.fact = std::move(fact);
    entry.note = note;
    entries.push_back(std::move(entry));
  }

  /// About "kim", who was born on 3 February 2009; "mara" is Mara Devlin.
  AnswerReader reader() const {
    AnswerReader reader;
    reader.name_of = [](const PersonId& id) {
      return id == "kim" ? QString("Kim Aoki") : id == "tom" ? QString("Tom Ryde") : QString("Mara Devlin");
    };
    reader.record_of = [this](const RecordId& id) -> const db::Entry* {
      for (const db::Entry& entry : entries)
        if (entry.id == id) return &entry;
      return nullptr;
    };
    reader.person = "kim";
    reader.called = "Kim";
    reader.zone = zone;
    reader.now = now;
    reader.birthdays.add("kim", day_of({2009, 2, 3}));
    return reader;
  }
};

inline Reason reason(Requirement need, bool holds, std::optional<Instant> until = std::nullopt) {
  Reason r;
  r.need = std::move(need);
  r.holds = holds;
  r.until = until;
  return r;
}

}  // namespace wm::app
