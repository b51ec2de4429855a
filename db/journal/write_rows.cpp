#include <nlohmann/json.hpp>

#include "db/journal/personal.h"
#include "db/journal/rows.h"
#include "db/refuse.h"

namespace wm::db {
namespace {

QVariant or_null(const std::string& s) { return s.empty() ? QVariant() : QVariant(text(s)); }
qlonglong number(std::int64_t n) { return n; }
QByteArray bytes(std::string_view b) { return {b.data(), static_cast<qsizetype>(b.size())}; }

QByteArray bytes(const ledger::Hash& hash) { return bytes(ledger::as_text(hash)); }

}  // namespace

Apart keep_apart(const ByField& values) {
  Apart apart;
  for (const auto& [field, value] : values) {
    const Commitment commitment = commit_to(field, value);
    apart.kept.push_back({field, commitment.salt, value});
    apart.hashes[field] = commitment.hash;
  }
  return apart;
}

Expected<ledger::Hash> write_leaf(Connection& connection, const std::string& leaf, const Entry& entry,
                                  const std::vector<KeptApart>& kept) {
  const Subject subject = subject_of(entry.fact);
  const ledger::Hash hash = ledger::leaf_hash(leaf);
  auto done = connection.run(
      "INSERT INTO records (ord, commit_no, id, kind, recorded_at, person, refers_to, leaf, hash) "
      "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
      {number(entry.order), number(entry.commit), text(entry.id),
       text(std::string(any_kind_word(entry.fact))), number(entry.recorded.seconds), or_null(subject.person),
       or_null(subject.refers_to), text(leaf), bytes(hash)});
  for (const KeptApart& one : kept) {
    if (!done) break;
    done = connection.run("INSERT INTO private_values (ord, field, salt, value) VALUES (?, ?, ?, ?)",
                          {number(entry.order), text(one.field), or_null(one.salt),
                           one.salt.empty() ? QVariant() : QVariant(text(one.value))});
  }
  return done.map([&](QSqlQuery*) { return hash; });
}

Expected<ledger::Hash> write_entry(Connection& connection, const Entry& entry, const Origin& origin,
                                   const Rulebook* rulebook) {
  const ByField values = personal_in(entry);
  const auto& [kept, hashes] = keep_apart(values);
  std::string leaf;
  try {
    const auto note = hashes.find("note");
    leaf = to_leaf(entry.commit, entry.order, body_of(entry, hashes, rulebook), origin,
                   note == hashes.end() ? "" : note->second);
  } catch (const nlohmann::json::exception&) {
    return refuse("text", "Some of the text is not valid UTF-8.", "Type it again.");
  }
  if (const auto read = read_leaf(leaf, values, std::nullopt); !read)
    return tl::make_unexpected(read.error());
  return write_leaf(connection, leaf, entry, kept);
}

Expected<void> blank_by(Connection& connection, const Entry& entry) {
  Expected<QSqlQuery*> done = nullptr;
  if (const auto* erased = as<Erased>(entry.fact))
    done = connection.run(
        // With what ends, adds to or strikes out one of theirs, and is about nobody by itself.
        "WITH RECURSIVE theirs (ord, id) AS ("
        "SELECT ord, id FROM records WHERE person = ? UNION "
        "SELECT r.ord, r.id FROM theirs JOIN records r ON r.refers_to = theirs.id WHERE r.person IS NULL) "
        "UPDATE private_values SET salt = NULL, value = NULL WHERE value IS NOT NULL AND "
        "ord IN (SELECT ord FROM theirs)",
        {text(erased->person)});
  if (const auto* blanked = as<Blanked>(entry.fact))
    done = connection.run(
        "UPDATE private_values SET salt = NULL, value = NULL WHERE value IS NOT NULL AND "
        "field NOT IN ('born', 'pin') AND ord IN (SELECT ord FROM records WHERE id = ?)",
        {text(blanked->record)});
  if (const auto* pin = as<PinChosen>(entry.fact))
    done = connection.run(
        "UPDATE private_values SET salt = NULL, value = NULL WHERE value IS NOT NULL AND field = 'pin' AND "
        "ord IN (SELECT ord FROM records WHERE person = ? AND kind = 'pin' AND ord < ?)",
        {text(pin->person), number(entry.order)});
  return done.map([](QSqlQuery*) {});
}

Expected<void> begin_tree(Connection& connection, const ShopDetails& details) {
  ledger::Edge edge;
  edge.append(ledger::leaf_hash(shop_leaf(details)));
  return connection
      .run("INSERT INTO tree_edge (one, size, hashes) VALUES (1, ?, ?)",
           {number(static_cast<std::int64_t>(edge.size())), bytes(edge.bytes())})
      .map([](QSqlQuery*) {});
}

Expected<ledger::Edge> read_edge(Connection& connection) {
  auto q = connection.run("SELECT size, hashes FROM tree_edge WHERE one = 1", {});
  if (!q) return tl::make_unexpected(q.error());
  const auto row = connection.next(**q);
  if (!row) return tl::make_unexpected(row.error());
  const QByteArray hashes = *row ? (*q)->value(1).toByteArray() : QByteArray();
  auto edge = ledger::Edge::from(*row ? (*q)->value(0).toULongLong() : 0,
                                 {hashes.constData(), static_cast<std::size_t>(hashes.size())});
  const bool whole = *row && edge;
  (*q)->finish();
  if (whole) return std::move(*edge);
  return refuse(connection.path(), "The file is damaged: the edge of its hash tree is not whole.",
                "Bring back the last backup, and keep this file.");
}

Expected<void> grow_tree(Connection& connection, std::span<const ledger::Hash> leaves) {
  if (leaves.empty()) return {};
  auto edge = read_edge(connection);
  if (!edge) return tl::make_unexpected(edge.error());
  for (const ledger::Hash& leaf : leaves) edge->append(leaf);
  return connection
      .run("UPDATE tree_edge SET size = ?, hashes = ? WHERE one = 1",
           {number(static_cast<std::int64_t>(edge->size())), bytes(edge->bytes())})
      .map([](QSqlQuery*) {});
}

}  // namespace wm::db
