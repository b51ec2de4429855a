#include "db/verify/records.h"

#include <deque>
#include <future>
#include <thread>

#include "db/verify/rows_kept.h"

namespace wm::verify {
namespace {

/// The columns of a record as they are read.
enum Column { ord, commit_no, id, kind, recorded_at, person, refers_to, leaf, hash };
constexpr const char* read_records =
    "SELECT ord, commit_no, id, kind, recorded_at, person, refers_to, leaf, hash FROM records ORDER BY ord";

/// One row, and what is found in it.
class RowLook {
 public:
  RowLook(const KeptRow& row, RecordLook& look) : row_(row), look_(look) {}

  void all() {
    look_.order = row_.whole(ord);
    look_.leaf = row_.bytes(leaf);
    look_.hash = ledger::leaf_hash(look_.leaf);
    if (!row_.is_text(leaf)) found(FindingKind::leaf, "", "no text", "text");
    if (!row_.is_blob(hash) || row_.bytes(hash) != ledger::as_text(look_.hash))
      found(FindingKind::hash, ", hash", row_.shown(hash), ledger::to_hex(look_.hash));
    if (auto wrong = read_leaf(look_.leaf, look_.content))
      return found(FindingKind::leaf, "", std::move(*wrong), "a leaf as the program writes it");
    look_.is_leaf = true;
    columns();
  }

 private:
  void found(FindingKind kind, const std::string& column, std::string says, std::string should) {
    look_.found.push_back(
        {kind, "record " + std::to_string(look_.order) + column, std::move(says), std::move(should)});
  }
  void whole(Column column, const char* name, std::int64_t should) {
    if (!row_.is_whole(column) || row_.whole(column) != should)
      found(FindingKind::column, name, row_.shown(column), std::to_string(should));
  }
  void text(Column column, const char* name, const std::string& should, bool may_be_none) {
    const bool fits = may_be_none && should.empty() ? row_.is_null(column)
                                                    : row_.is_text(column) && row_.bytes(column) == should;
    if (!fits) found(FindingKind::column, name, row_.shown(column), should.empty() ? "nothing" : should);
  }
  void columns() {
    const LeafContent& says = look_.content;
    whole(ord, ", ord", says.order);
    whole(commit_no, ", commit_no", says.commit);
    text(id, ", id", says.id, false);
    text(kind, ", kind", says.kind, false);
    whole(recorded_at, ", recorded_at", says.recorded.seconds);
    text(person, ", person", says.person, true);
    text(refers_to, ", refers_to", says.refers_to, true);
  }

  const KeptRow& row_;
  RecordLook& look_;
};

struct Stretch {
  RowsKept rows;
  std::vector<RecordLook> looks;
};

Stretch look_at(RowsKept rows) {
  Stretch out{std::move(rows), {}};
  out.looks.resize(out.rows.size());
  for (std::size_t i = 0; i < out.looks.size(); ++i) RowLook(out.rows[i], out.looks[i]).all();
  return out;
}

}  // namespace

std::string look_at_records(const File& file, const std::function<void(RecordLook&)>& take) {
  const std::size_t ahead = std::max(2u, std::thread::hardware_concurrency());
  std::deque<std::future<Stretch>> behind;
  const auto take_first = [&] {
    Stretch stretch = behind.front().get();
    behind.pop_front();
    for (RecordLook& look : stretch.looks) take(look);
  };
  Rows rows = file.rows(read_records);
  for (RowsKept kept(rows); kept.size() > 0; kept = RowsKept(rows)) {
    behind.push_back(std::async(std::launch::async, look_at, std::move(kept)));
    if (behind.size() > ahead) take_first();
  }
  while (!behind.empty()) take_first();
  return rows.failed() ? file.said() : "";
}

}  // namespace wm::verify
