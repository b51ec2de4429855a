#include "db/heads.h"

#include <QDir>
#include <QFile>

#include "db/journal/rows.h"
#include "db/refuse.h"
#include "db/sql/file.h"
#include "db/sql/place.h"

namespace wm::db {
namespace {

/// From the hashes of the records by then.
Expected<ledger::Head> head_known(Connection& connection, Instant known) {
  const auto details = read_details(connection);
  if (!details) return tl::make_unexpected(details.error());
  ledger::Edge edge;
  edge.append(ledger::leaf_hash(shop_leaf(*details)));
  ledger::Head head{0, {}, first_instant};
  auto q = connection.run("SELECT hash, recorded_at FROM records WHERE recorded_at <= ? ORDER BY ord",
                          {static_cast<qlonglong>(known.seconds)});
  if (!q) return tl::make_unexpected(q.error());
  auto row = connection.next(**q);
  for (; row && *row; row = connection.next(**q)) {
    const QByteArray bytes = (*q)->value(0).toByteArray();
    ledger::Hash hash{};
    std::copy_n(bytes.begin(), std::min<qsizetype>(bytes.size(), 32), hash.begin());
    edge.append(hash);
    head.at = {(*q)->value(1).toLongLong()};
  }
  (*q)->finish();
  if (!row) return tl::make_unexpected(row.error());
  head.size = edge.size();
  head.root = edge.root();
  return head;
}

tl::unexpected<Problem> not_kept(const std::string& path) {
  return refuse(path, "The head of the ledger could not be written down here.",
                "Make room, or ask for the right to write to the folder.");
}

}  // namespace

Expected<ledger::Head> head_of(Connection& connection, std::optional<Instant> known) {
  if (known) return head_known(connection, *known);
  const auto edge = read_edge(connection);
  if (!edge) return tl::make_unexpected(edge.error());
  const auto at = connection.value("SELECT recorded_at FROM records ORDER BY ord DESC LIMIT 1");
  if (!at) return tl::make_unexpected(at.error());
  return ledger::Head{edge->size(), edge->root(), at->isNull() ? first_instant : Instant{at->toLongLong()}};
}

Expected<ledger::Head> head_of(const std::string& store) {
  const auto connection = open_to_read(store);
  if (!connection) return tl::make_unexpected(connection.error());
  const auto reading = Transaction::begin_reading(**connection);
  if (!reading) return tl::make_unexpected(reading.error());
  return head_of(**connection);
}

std::string heads_file(const std::string& folder) {
  return QDir(text(folder)).filePath("heads").toStdString();
}

Expected<std::optional<ledger::SignedHead>> last_head(const std::string& folder) {
  const std::string path = heads_file(folder);
  QFile file(text(path));
  if (!file.exists()) return std::optional<ledger::SignedHead>();
  if (!file.open(QIODevice::ReadOnly))
    return refuse(path, "The heads of the ledger cannot be read.", "Ask for the right to read the file.");
  const QList<QByteArray> lines = file.readAll().trimmed().split('\n');
  if (lines.last().isEmpty()) return std::optional<ledger::SignedHead>();
  auto head = ledger::read_line(lines.last().toStdString());
  if (head) return std::optional(*head);
  return refuse(path, "The last line is not a head of a ledger.", "Keep the file aside; another is begun.");
}

Expected<void> keep_head(const std::string& folder, const ledger::Head& head, const ledger::SigningKey& key) {
  const std::string path = heads_file(folder);
  const auto last = last_head(folder);
  if (!last) return tl::make_unexpected(last.error());
  if (*last && (*last)->head.size == head.size && (*last)->head.root == head.root) return {};
  QFile file(text(path));
  const QByteArray line = QByteArray::fromStdString(ledger::to_line(ledger::sign(head, key))) + "\n";
  const bool kept =
      file.open(QIODevice::WriteOnly | QIODevice::Append) && file.write(line) == line.size() && file.flush();
  file.close();
  return kept && sync_file(path) && sync_folder(folder) ? Expected<void>{} : not_kept(path);
}

}  // namespace wm::db
