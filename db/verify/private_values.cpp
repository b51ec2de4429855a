#include "db/verify/private_values.h"

#include "core/ledger/tree.h"

namespace wm::verify {
namespace {

std::string place(std::int64_t order, std::string_view field) {
  return "record " + std::to_string(order) + ", " + std::string(field);
}

std::string salted_hash(std::string_view salt, std::string_view field, std::string_view value) {
  std::string all(salt);
  all.append(field).append(1, '\0').append(value);
  return ledger::to_hex(ledger::sha256(all));
}

}  // namespace

PrivateValues::PrivateValues(const File& file, Findings& findings)
    : file_(file),
      rows_(file.rows("SELECT ord, field, salt, value FROM private_values ORDER BY ord, field")),
      findings_(findings) {
  step();
}

void PrivateValues::step() { there_ = rows_.next(); }

int PrivateValues::against(std::int64_t order, std::string_view field) const {
  if (rows_.whole(0) != order) return rows_.whole(0) < order ? -1 : 1;
  return rows_.bytes(1).compare(field);
}

void PrivateValues::no_such(const std::string& why) {
  findings_.add(FindingKind::private_value, place(rows_.whole(0), rows_.shown(1)), "a value", why);
  step();
}

void PrivateValues::check_row(const LeafContent& leaf, const Commitment& commitment) {
  const std::string where = place(leaf.order, commitment.field);
  if (rows_.is_null(2) && rows_.is_null(3)) {
    blanks_.push_back({leaf.order, commitment.field, leaf.person, leaf.id, leaf.refers_to});
    return;
  }
  const auto salt = ledger::from_hex(rows_.bytes(2));
  if (!rows_.is_text(2) || !rows_.is_text(3) || !salt || salt->size() != 16)
    return findings_.add(FindingKind::private_value, where, "a value without a whole salt",
                         "both as they were entered");
  if (salted_hash(*salt, commitment.field, rows_.bytes(3)) != commitment.hash)
    findings_.add(FindingKind::private_value, where, rows_.shown(3),
                  "what was entered, which the record's hash does not tell");
}

void PrivateValues::check(const LeafContent& leaf) {
  if (leaf.kind == "erased") erased_[leaf.person] = leaf.order;
  if (leaf.kind == "blanked") blanked_[leaf.refers_to] = leaf.order;
  if (leaf.kind == "pin") last_pin_[leaf.person] = leaf.order;
  for (const Commitment& commitment : leaf.commitments) {
    while (there_ && against(leaf.order, commitment.field) < 0) no_such("the record has no such value");
    if (there_ && against(leaf.order, commitment.field) == 0) {
      check_row(leaf, commitment);
      step();
    } else {
      findings_.add(FindingKind::private_value, place(leaf.order, commitment.field), "missing",
                    "there, or blanked");
    }
  }
  while (there_ && rows_.whole(0) <= leaf.order) no_such("the record has no such value");
}

std::string PrivateValues::owner(const Blank& blank) const {
  if (!blank.person.empty()) return blank.person;
  // Up to the nearest that is about somebody. A record refers to an earlier one: in a file where two refer to
  // each other, UNION ends the walk.
  const char* up =
      "WITH RECURSIVE up (id, person, refers_to) AS ("
      "SELECT id, person, refers_to FROM records WHERE id = ?1 UNION "
      "SELECT r.id, r.person, r.refers_to FROM up JOIN records r ON r.id = up.refers_to WHERE up.person IS "
      "NULL) "
      "SELECT person FROM up WHERE person IS NOT NULL";
  Rows rows = file_.rows(up, blank.refers_to);
  return rows.next() ? std::string(rows.bytes(0)) : std::string();
}

bool PrivateValues::may_be_blank(const Blank& blank) const {
  const auto later = [&](const std::map<std::string, std::int64_t>& last, const std::string& key) {
    const auto found = last.find(key);
    return found != last.end() && found->second > blank.order;
  };
  if (blank.field == "pin" && later(last_pin_, blank.person)) return true;
  if (blank.field != "born" && blank.field != "pin" && later(blanked_, blank.id)) return true;
  const std::string person = owner(blank);
  return !person.empty() && later(erased_, person);
}

void PrivateValues::finish() {
  while (there_) no_such("there is no such record");
  if (rows_.failed())
    findings_.add(FindingKind::unreadable, "the private values", "they could not be read to the end");
  for (const Blank& blank : blanks_)
    if (!may_be_blank(blank))
      findings_.add(FindingKind::blanked, place(blank.order, blank.field), "blank",
                    "what was entered: no later record erases it");
}

}  // namespace wm::verify
