#pragma once
// Looks a whole store through: whether anything in it was altered, added, removed or cut off.
//
// Everything is derived again from the leaves. Against roots known from outside the file nothing that they
// cover can have been changed unseen; without one, a file that was rebuilt as a whole can't be told from an
// honest one.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/ledger/root.h"
#include "core/problem.h"
#include "db/verify/findings.h"
#include "db/verify/signatures.h"

namespace wm::verify {

/// A root from outside the file.
struct KnownRoot {
  std::string name;  // where it comes from, in the words of the one who asks
  ledger::ShortHead head;
  std::optional<ledger::SignedHead> full;  // where it was a signed line
  bool own = false;                        // one of many that the same computer kept, named together
};
/// A signed line, or the short form on a paper.
Expected<KnownRoot> read_known_root(const std::string& name, std::string_view text);

struct Ask {
  std::vector<KnownRoot> against;
  /// The root up to which all was found fine before, signatures too, by whoever kept it outside the file.
  /// Where it holds, the signatures under it are not verified again.
  std::optional<KnownRoot> verified;
  bool all = false;     // verify those too
  bool growth = false;  // prove that each root that holds grew into the next
  std::string record;   // prove that the record of this id is there
};

enum class Outcome { holds, altered, cut_off };
struct RootAnswer {
  KnownRoot known;
  Outcome outcome;
};

/// That one record is in the tree: its leaf's hash with those of the proof gives the root (RFC
/// 9162, 2.1.3.2).
struct Inclusion {
  std::uint64_t order = 0;  // the leaf's place in the tree too, since the shop's is 0
  std::string leaf;
  ledger::Proof proof;
};

/// That the tree of one root only grew into that of another (RFC 9162, 2.1.4.2).
struct Growth {
  std::uint64_t from = 0, to = 0;
  ledger::Proof proof;
};

struct Report {
  Findings findings;
  ledger::Head head;  // of the tree as it is; `at` when its last record was entered, the earliest instant
                      // where there is none
  CheckoutCount checkouts;
  std::vector<RootAnswer> roots;  // smallest first
  std::vector<Growth> growth;     // between each two that hold, one after the other, and up to the whole tree
  std::optional<Inclusion> record;
};

/// Refuses what can't be opened or is no store. Never writes.
Expected<Report> look_through(const std::string& path, const Ask& ask);

}  // namespace wm::verify
