#include <nlohmann/json.hpp>

#include "core/records/json.h"
#include "core/rulebook/json.h"
#include "core/time/text.h"
#include "db/journal/personal.h"
#include "db/journal/rows.h"
#include "db/journal/shop_fact_json.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

QVariant or_null(const std::string& s) { return s.empty() ? QVariant() : QVariant(text(s)); }
qlonglong number(std::int64_t n) { return n; }

/// The body with what is personal in it, before that is taken out.
Expected<std::string> body_of(const Entry& entry, const Rulebook* rulebook) {
  try {
    if (rulebook != nullptr) return to_json(*rulebook);
    if (const auto* own = std::get_if<ShopFact>(&entry.fact))
      return to_json(entry.id, entry.at, entry.recorded, *own);
    const std::string body =
        to_json(Record{entry.id, entry.at, entry.recorded, {}, std::get<Fact>(entry.fact)});
    if (const auto read = read_record(body); !read) return tl::make_unexpected(read.error().front());
    return body;
  } catch (const nlohmann::json::exception&) {
    return refuse("text", "Some of the text is not valid UTF-8.", "Type it again.");
  }
}

Expected<void> write_private(Connection& connection, const Entry& entry, const char* field,
                             const std::string& salt, const std::string& value) {
  return connection
      .run("INSERT INTO private_values (ord, field, salt, value) VALUES (?, ?, ?, ?)",
           {number(entry.order), field, text(salt), text(value)})
      .map([](QSqlQuery*) {});
}

/// Puts the hash of the birth date in its place.
std::string without_birth_date(const std::string& body, const std::string& hash) {
  nlohmann::json json = nlohmann::json::parse(body);
  json["born"] = hash;
  return json.dump();
}

}  // namespace

Expected<void> write_commit(Connection& connection, const CommitRow& row) {
  return connection
      .run(
          "INSERT INTO commits (commit_no, command_id, action, person, entered_by, station, recorded_at) "
          "VALUES (?, ?, ?, ?, ?, ?, ?)",
          {number(row.number), text(row.command), text(row.action), text(row.person), text(row.entered_by),
           text(row.station), number(row.recorded.seconds)})
      .map([](QSqlQuery*) {});
}

Expected<void> write_entry(Connection& connection, const Entry& entry, const std::string& station,
                           const Rulebook* rulebook) {
  auto body = body_of(entry, rulebook);
  if (!body) return tl::make_unexpected(body.error());
  const auto* birth = as<Birth>(entry.fact);
  const std::string born = birth == nullptr ? "" : to_text(birth->born);
  const Commitment born_hash = birth == nullptr ? Commitment{} : commit_to("born", born);
  const Commitment note = entry.note.empty() ? Commitment{} : commit_to("note", entry.note);
  if (birth != nullptr) body = without_birth_date(*body, born_hash.hash);
  const Subject subject = subject_of(entry.fact);
  const auto done = connection.run(
      "INSERT INTO records (ord, commit_no, id, kind, happened_at, recorded_at, entered_by, station, "
      "from_paper, "
      "note_hash, person, machine, refers_to, body) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
      {number(entry.order), number(entry.commit), text(entry.id),
       text(std::string(any_kind_word(entry.fact))), number(entry.at.seconds), number(entry.recorded.seconds),
       text(entry.entered_by), text(station), entry.from_paper ? 1 : 0, or_null(note.hash),
       or_null(subject.person), or_null(subject.machine), or_null(subject.refers_to), text(*body)});
  if (!done) return tl::make_unexpected(done.error());
  if (birth != nullptr) {
    if (auto kept = write_private(connection, entry, "born", born_hash.salt, born); !kept) return kept;
  }
  return entry.note.empty() ? Expected<void>{}
                            : write_private(connection, entry, "note", note.salt, entry.note);
}

Expected<void> write_person(Connection& connection, const Person& p,
                            std::optional<std::int64_t> new_in_commit) {
  if (new_in_commit) {
    const auto row = connection.run(
        "INSERT INTO people (id, commit_no, number, given, family, nickname, card, email, phone, "
        "emergency_contact) "
        "VALUES (?, ?, '', '', '', '', '', '', '', '')",
        {text(p.id), number(*new_in_commit)});
    if (!row) return tl::make_unexpected(row.error());
  }
  return connection
      .run(
          "UPDATE people SET number = ?, given = ?, family = ?, nickname = ?, card = ?, email = ?, phone = "
          "?, "
          "emergency_contact = ? WHERE id = ?",
          {text(p.number), text(p.given), text(p.family), text(p.nickname), text(p.card), text(p.email),
           text(p.phone), text(p.emergency_contact), text(p.id)})
      .map([](QSqlQuery*) {});
}

Expected<void> write_pin(Connection& connection, const PersonId& person, const std::string& hash) {
  auto gone = connection.run("DELETE FROM pins WHERE person = ?", {text(person)});
  if (gone)
    gone = connection.run("INSERT INTO pins (person, hash) VALUES (?, ?)", {text(person), text(hash)});
  return gone.map([](QSqlQuery*) {});
}

Expected<void> blank_person(Connection& connection, const PersonId& person) {
  Person nobody;
  nobody.id = person;
  auto done = write_person(connection, nobody, std::nullopt);
  if (!done) return done;
  auto row = connection.run("DELETE FROM pins WHERE person = ?", {text(person)});
  if (row)
    row = connection.run(
        "UPDATE private_values SET salt = NULL, value = NULL WHERE value IS NOT NULL AND "
        "ord IN (SELECT ord FROM records WHERE person = ?)",
        {text(person)});
  return row.map([](QSqlQuery*) {});
}

}  // namespace wm::db
