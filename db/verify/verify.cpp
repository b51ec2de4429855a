#include "db/verify/verify.h"

#include <algorithm>

#include "core/json/writing.h"
#include "core/time/text.h"
#include "db/verify/file.h"
#include "db/verify/private_values.h"
#include "db/verify/records.h"
#include "db/verify/schema.h"
#include "db/verify/taken.h"

namespace wm::verify {
namespace {

std::string record(std::int64_t order) { return "record " + std::to_string(order); }

class Look {
 public:
  Look(const File& file, const Ask& ask)
      : file_(file),
        ask_(ask),
        privates_(file, report_.findings),
        signatures_(report_.findings),
        taken_(report_.findings) {
    std::vector<KnownRoot> known = ask.against;
    if (ask.verified) known.push_back(*ask.verified);
    std::stable_sort(known.begin(), known.end(),
                     [](const auto& a, const auto& b) { return a.head.size < b.head.size; });
    for (KnownRoot& one : known) report_.roots.push_back({std::move(one), Outcome::cut_off});
  }

  Report all() && {
    report_.head.at = first_instant;
    check_schema(file_, report_.findings);
    shop();
    records();
    privates_.finish();
    report_.checkouts = signatures_.finish(covered());
    taken_.finish(file_, report_.head.at);
    edge();
    roots();
    proofs();
    report_.head.size = edge_.size();
    report_.head.root = edge_.root();
    return std::move(report_);
  }

 private:
  template <class... Said>
  void found(FindingKind kind, std::string place, Said... said) {
    report_.findings.add(kind, std::move(place), std::move(said)...);
  }

  void add(const ledger::Hash& leaf_hash) {
    hashes_.push_back(leaf_hash);
    edge_.append(leaf_hash);
    answer_roots();
  }

  void answer_roots() {
    for (; next_root_ < report_.roots.size() && report_.roots[next_root_].known.head.size <= edge_.size();
         ++next_root_) {
      RootAnswer& answer = report_.roots[next_root_];
      const bool now = answer.known.head.size == edge_.size();
      answer.outcome = now && agrees(answer.known) ? Outcome::holds : Outcome::altered;
    }
  }
  bool agrees(const KnownRoot& known) const {
    const ledger::Hash root = edge_.root();
    return known.full ? known.full->head.root == root : ledger::matches(known.head, root);
  }

  void shop() {
    Rows rows = file_.rows("SELECT demo_clock, name, zone, one FROM shop ORDER BY one");
    if (!rows.next()) return found(FindingKind::shop, "the shop", "missing", "one row");
    try {
      add(ledger::leaf_hash(
          json::compact(std::vector<json::Member>{{"demo_clock", std::to_string(rows.whole(0))},
                                                  {"kind", json::in_quotes("shop")},
                                                  {"name", json::in_quotes(rows.bytes(1))},
                                                  {"zone", json::in_quotes(rows.bytes(2))}})));
    } catch (const std::exception&) {  // of text that is not UTF-8
      found(FindingKind::shop, "the shop", "a name or a zone that is no text",
            "what the first leaf of the tree says");
      add(ledger::leaf_hash(""));
    }
    only_one(rows, 3, FindingKind::shop, "the shop");
  }
  /// Both tables that have one row number it 1, and are looked up by that.
  void only_one(Rows& rows, int column, FindingKind kind, const char* place) {
    if (rows.shown(column) != "1") found(kind, std::string(place) + ", one", rows.shown(column), "1");
    if (rows.next()) found(kind, place, "more than one row", "one row");
  }

  /// The last record under the root that was verified before, where it holds and not all is asked for.
  std::int64_t covered() const {
    if (ask_.all || !ask_.verified) return 0;
    for (const RootAnswer& answer : report_.roots)
      if (answer.outcome == Outcome::holds && answer.known.head == ask_.verified->head)
        return static_cast<std::int64_t>(answer.known.head.size) - 1;
    return 0;
  }

  void records() {
    const std::string failed = look_at_records(file_, [this](RecordLook& look) { one_record(look); });
    if (!failed.empty())
      found(FindingKind::unreadable, record(order_ + 1),
            "the records could not be read from here on: " + failed);
  }

  void one_record(RecordLook& look) {
    for (std::int64_t missing = order_ + 1; missing < look.order && missing < order_ + 20; ++missing)
      found(FindingKind::order, record(missing), "missing", "there: orders have no gap");
    order_ = look.order;
    add(look.hash);
    for (Finding& one : look.found)
      found(one.kind, std::move(one.place), std::move(one.says), std::move(one.should));
    if (!look.is_leaf) return;
    LeafContent& content = look.content;
    content.order = order_;  // what goes with it is found by the column
    sequence(content);
    privates_.check(content);
    signatures_.check(content, look.hash);
    taken_.check(content);
    if (!ask_.record.empty() && content.id == ask_.record)
      report_.record = Inclusion{edge_.size() - 1, look.leaf, {}};
  }

  void sequence(const LeafContent& content) {
    const std::int64_t step = content.commit - commit_;
    if (step != 1 && (step != 0 || commit_ == 0))
      found(FindingKind::order, record(order_) + ", commit", std::to_string(content.commit),
            commit_ == 0 ? "1" : std::to_string(commit_) + " or " + std::to_string(commit_ + 1));
    if (content.recorded < report_.head.at)
      found(FindingKind::order, record(order_) + ", recorded", to_text(content.recorded),
            "not before " + to_text(report_.head.at) + ", when the one before was entered");
    commit_ = content.commit;
    report_.head.at = std::max(report_.head.at, content.recorded);
  }

  void edge() {
    Rows rows = file_.rows("SELECT size, hashes, one FROM tree_edge ORDER BY one");
    if (!rows.next())
      return found(FindingKind::edge, "the tree's edge", "missing",
                   "of " + std::to_string(edge_.size()) + " leaves");
    if (!rows.is_whole(0) || rows.whole(0) != static_cast<std::int64_t>(edge_.size()))
      found(FindingKind::edge, "the tree's edge, size", rows.shown(0), std::to_string(edge_.size()));
    if (!rows.is_blob(1) || rows.bytes(1) != edge_.bytes())
      found(FindingKind::edge, "the tree's edge, hashes", rows.shown(1), ledger::to_hex(edge_.bytes()));
    only_one(rows, 2, FindingKind::edge, "the tree's edge");
  }

  void roots() {
    std::uint64_t holds = 0;
    for (const RootAnswer& answer : report_.roots)
      if (answer.outcome == Outcome::holds) holds = answer.known.head.size;
    for (const RootAnswer& answer : report_.roots) {
      const std::uint64_t size = answer.known.head.size;
      if (answer.outcome == Outcome::cut_off)
        return found(FindingKind::cut_off, answer.known.name,
                     std::to_string(edge_.size() - (edge_.size() > 0)) + " records",
                     std::to_string(size - 1) + " records at least");
      if (answer.outcome == Outcome::altered && size > holds)
        return found(FindingKind::altered, answer.known.name, between(holds, size),
                     "as they were when this root was written down");
      if (answer.outcome == Outcome::altered)
        found(FindingKind::altered, answer.known.name,
              "another root than the tree had at that size, though a later root holds",
              "a root of this shop");
    }
  }
  /// Leaf 0 is the shop's own, so a tree of size n has records 1 to n - 1.
  static std::string between(std::uint64_t holds, std::uint64_t fails) {
    if (fails <= 1) return "the shop's own row was altered";
    const std::uint64_t first = std::max<std::uint64_t>(holds, 1), last = fails - 1;
    const std::string records =
        first == last ? "record " + std::to_string(last)
                      : "one or more of the records " + std::to_string(first) + " to " + std::to_string(last);
    return records + (holds == 0 ? ", or the shop's own row," : "") + " altered, added, removed or rebuilt";
  }

  void proofs() {
    if (report_.record) report_.record->proof = ledger::inclusion_proof(hashes_, report_.record->order);
    if (!ask_.growth) return;
    std::uint64_t before = 0;
    const auto grew_to = [&](std::uint64_t size) {
      if (before > 0 && size > before)
        report_.growth.push_back(
            {before, size, ledger::consistency_proof(std::span(hashes_).first(size), before)});
      before = size;
    };
    for (const RootAnswer& answer : report_.roots)
      if (answer.outcome == Outcome::holds) grew_to(answer.known.head.size);
    grew_to(hashes_.size());
  }

  const File& file_;
  const Ask& ask_;
  Report report_;
  PrivateValues privates_;
  Signatures signatures_;
  Taken taken_;
  ledger::Edge edge_;
  std::vector<ledger::Hash> hashes_;
  std::int64_t order_ = 0, commit_ = 0;
  std::size_t next_root_ = 0;
};

}  // namespace

Expected<KnownRoot> read_known_root(const std::string& name, std::string_view text) {
  if (text.starts_with("witnessmark head ")) {
    return ledger::read_line(text).map([&](const ledger::SignedHead& head) {
      return KnownRoot{name, ledger::shortened(head.head), head};
    });
  }
  return ledger::read_short(text).map([&](const ledger::ShortHead& head) {
    return KnownRoot{name, head, {}};
  });
}

Expected<Report> look_through(const std::string& path, const Ask& ask) {
  const auto file = File::open(path);
  if (!file) return tl::make_unexpected(file.error());
  return Look(*file, ask).all();
}

}  // namespace wm::verify
