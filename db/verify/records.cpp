#include "db/verify/records.h"

#include <algorithm>
#include <deque>
#include <future>
#include <memory>
#include <thread>

#include "db/verify/file.h"

namespace wm::verify {
namespace {

/// The columns of a record as they are read.
enum Column { ord, commit_no, id, kind, recorded_at, person, refers_to, leaf, hash };
constexpr const char* read_stretch =
    "SELECT ord, commit_no, id, kind, recorded_at, person, refers_to, leaf, hash FROM records "
    "WHERE ord BETWEEN ?1 AND ?2 ORDER BY ord";

/// One row, and what is found in it.
class RowLook {
 public:
  RowLook(const Rows& row, RecordLook& look) : row_(row), look_(look) {}

  void all() {
    look_.order = row_.whole(ord);
    look_.found.clear();
    look_.is_leaf = false;
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

  const Rows& row_;
  RecordLook& look_;
};

/// Reads one stretch of the records after another, and keeps the looks at it until the next: their memory is
/// used again.
class Reader {
 public:
  explicit Reader(File file) : file_(std::move(file)) {}

  void look_at(std::int64_t first, std::int64_t last) {
    Rows rows = file_.rows(read_stretch, {first, last});
    for (size_ = 0; rows.next(); ++size_) {
      if (size_ == looks_.size()) looks_.emplace_back();
      RowLook(rows, looks_[size_]).all();
    }
    failed_ = rows.failed() ? file_.said() : "";
  }
  std::span<RecordLook> looks() { return std::span(looks_).first(size_); }
  const std::string& failed() const { return failed_; }

 private:
  File file_;
  std::vector<RecordLook> looks_;
  std::size_t size_ = 0;
  std::string failed_;
};

/// The first order from there on, and the last of all.
std::optional<std::int64_t> whole(const File& file, const char* sql,
                                  std::initializer_list<std::int64_t> numbers = {}) {
  Rows rows = file.rows(sql, numbers);
  if (!rows.next() || !rows.is_whole(0)) return std::nullopt;
  return rows.whole(0);
}

class Looking {
 public:
  Looking(const File& file, const std::function<void(RecordLook&)>& take) : file_(file), take_(take) {}

  std::string all() {
    const auto last = whole(file_, "SELECT coalesce(max(ord), 0) FROM records");
    if (!last) return file_.said();
    stretches(*last);
    while (!behind_.empty()) take_first();
    if (there_ < 0) count();
    if (!failed_.empty()) return failed_;
    // In a table whose pages were put together by hand no order leads to some rows.
    return taken_ == there_ ? ""
                            : std::to_string(there_) + " rows lie there, and " + std::to_string(taken_) +
                                  " are found by their order";
  }

 private:
  struct Behind {
    std::unique_ptr<Reader> reader;
    std::future<void> done;
  };

  void stretches(std::int64_t last) {
    constexpr std::uint64_t length = 8192;  // of some megabytes
    const std::size_t ahead = std::max(2u, std::thread::hardware_concurrency());
    auto first = whole(file_, "SELECT min(ord) FROM records");
    while (first && failed_.empty()) {
      const auto left = static_cast<std::uint64_t>(last) - static_cast<std::uint64_t>(*first);
      const std::int64_t end = left < length ? last : *first + static_cast<std::int64_t>(length) - 1;
      begin(*first, end);
      if (there_ < 0) count();  // while others work
      if (behind_.size() > ahead) take_first();
      first = end == last ? std::nullopt : whole(file_, "SELECT min(ord) FROM records WHERE ord > ?1", {end});
    }
  }
  void count() {
    const auto rows = whole(file_, "SELECT count(*) FROM records NOT INDEXED");
    there_ = rows.value_or(0);
    if (!rows) failed_ = file_.said();
  }
  void begin(std::int64_t first, std::int64_t last) {
    std::unique_ptr<Reader> reader = free_reader();
    if (!reader) return;
    auto done = std::async(std::launch::async, &Reader::look_at, reader.get(), first, last);
    behind_.push_back({std::move(reader), std::move(done)});
  }
  std::unique_ptr<Reader> free_reader() {
    if (!free_.empty()) {
      auto reader = std::move(free_.back());
      free_.pop_back();
      return reader;
    }
    auto file = file_.again();
    if (file) return std::make_unique<Reader>(std::move(*file));
    failed_ = file.error().what;
    return nullptr;
  }
  void take_first() {
    Behind first = std::move(behind_.front());
    behind_.pop_front();
    first.done.get();
    if (!failed_.empty()) return;  // nothing is given beyond what could not be read
    for (RecordLook& look : first.reader->looks()) take_(look);
    taken_ += static_cast<std::int64_t>(first.reader->looks().size());
    failed_ = first.reader->failed();
    free_.push_back(std::move(first.reader));
  }

  const File& file_;
  const std::function<void(RecordLook&)>& take_;
  std::deque<Behind> behind_;
  std::vector<std::unique_ptr<Reader>> free_;
  std::int64_t taken_ = 0, there_ = -1;
  std::string failed_;
};

}  // namespace

std::string look_at_records(const File& file, const std::function<void(RecordLook&)>& take) {
  return Looking(file, take).all();
}

}  // namespace wm::verify
