#pragma once
// The private values of a store against the hashes that stand for them in the leaves.
#include <map>
#include <string>
#include <vector>

#include "db/verify/file.h"
#include "db/verify/findings.h"
#include "db/verify/leaf_content.h"

namespace wm::verify {

/// Walks along the records, in their order.
class PrivateValues {
 public:
  PrivateValues(const File& file, Findings& findings);
  /// The values of the next record.
  void check(const LeafContent& leaf);
  /// After the last record: what lies beyond them, and whether all that is blank may be.
  void finish();

 private:
  struct Blank {
    std::int64_t order;
    std::string field, person, id, refers_to;
  };
  /// Where in order and field the row read last stands, against a place: before it, there, or behind.
  int against(std::int64_t order, std::string_view field) const;
  void step();
  void check_row(const LeafContent& leaf, const Commitment& commitment);
  void no_such(const std::string& why);
  bool may_be_blank(const Blank& blank) const;

  /// Whose a record is: who it is about, or who that is which it refers to; empty where it is nobody's.
  std::string owner(const Blank& blank) const;

  const File& file_;
  Rows rows_;
  Findings& findings_;
  bool there_ = false;
  std::vector<Blank> blanks_;
  std::map<std::string, std::int64_t> erased_, last_pin_;  // by person
  std::map<std::string, std::int64_t> blanked_;            // by record
};

}  // namespace wm::verify
