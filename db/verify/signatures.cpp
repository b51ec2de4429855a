#include "db/verify/signatures.h"

#include <algorithm>

namespace wm::verify {

void Signatures::check(const LeafContent& leaf, const ledger::Hash& hash) {
  if (leaf.commit != commit_) end_commit();
  commit_ = leaf.commit;
  if (leaf.kind == "join")
    joined_[std::string(leaf.body.text("other").value_or(""))] = leaf.body.text("keep").value_or("");
  if (leaf.kind == "pin") keys_[leaf.person] = leaf.body.text("key").value_or("");
  if (leaf.kind == "checkout" || leaf.kind == "scored_apart")
    unsigned_.push_back({leaf.order, leaf.id, std::string(leaf.body.text("assessor").value_or("")),
                         leaf.paper, leaf.station == "import"});
  if (leaf.kind == "countersigned" && leaf.body.text("hand") == "pin")
    expect({leaf.order, signed_with(leaf), leaf.person, As::member});
  if (leaf.kind == "witnessed" && !leaf.paper && leaf.station != "import")
    expect({leaf.order, std::string(leaf.body.text("checkout").value_or("")),
            std::string(leaf.body.text("assessor").value_or("")), As::second});
  if (leaf.kind == "signature") take_signature(leaf);
  hashes_.push_back(hash);
}

void Signatures::wrong(std::int64_t order, std::string says, std::string should) {
  findings_.add(FindingKind::signature, "record " + std::to_string(order), std::move(says),
                std::move(should));
}

/// The record that a countersigning member's signature names: the check-out where it is entered with it, else
/// the countersigning itself.
std::string Signatures::signed_with(const LeafContent& leaf) const {
  const std::string checkout(leaf.body.text("checkout").value_or(""));
  const bool with_it =
      std::any_of(unsigned_.begin(), unsigned_.end(), [&](const Open& one) { return one.id == checkout; });
  return with_it ? checkout : leaf.id;
}

/// A member who countersigns with their PIN signs first, then a second assessor; last the assessor.
void Signatures::expect(Before one) {
  const auto after =
      std::find_if(before_.begin(), before_.end(), [&](const Before& other) { return one.as < other.as; });
  before_.insert(after, std::move(one));
}

void Signatures::take_signature(const LeafContent& leaf) {
  const auto before = std::find_if(before_.begin(), before_.end(), [&](const Before& one) {
    return one.checkout == leaf.body.text("checkout");
  });
  if (before != before_.end()) {
    keep(leaf, before->person, before->as);
    before_.erase(before);
    return;
  }
  const auto checkout = std::find_if(unsigned_.begin(), unsigned_.end(),
                                     [&](const Open& one) { return one.id == leaf.body.text("checkout"); });
  if (checkout == unsigned_.end())
    return wrong(leaf.order, "a signature of no check-out entered with it",
                 "one of a check-out just before it");
  keep(leaf, checkout->assessor, As::assessor);
  unsigned_.erase(checkout);
}

void Signatures::keep(const LeafContent& leaf, const std::string& wanted, As as) {
  signed_.push_back({leaf.order, leaf.person, wanted, as, std::string(leaf.body.text("key").value_or("")),
                     keys_[leaf.person], std::string(leaf.body.text("signature").value_or("")),
                     ledger::checkout_message(hashes_)});
}

void Signatures::verify(const Signed& one) {
  if (!same(one.signer, one.wanted))
    return wrong(one.order, "signed by " + one.signer,
                 "signed by " + one.wanted +
                     (one.as == As::assessor ? ", who assessed"
                      : one.as == As::second ? ", who assessed it too"
                                             : ", who countersigned"));
  if (one.latest_key.empty())
    return wrong(one.order, "signed with the key " + one.key, "a key of " + one.signer + ", who had none");
  if (one.key != one.latest_key)
    return wrong(one.order, "signed with the key " + one.key,
                 "the key of " + one.signer + " then, " + one.latest_key);
  const auto key = ledger::bytes_from_hex<32>(one.key);
  const auto signature = ledger::bytes_from_hex<64>(one.signature);
  if (!key || !signature || !ledger::verify(*key, one.message, *signature))
    return wrong(one.order, "a signature that does not hold", "one over the records of its commit before it");
  if (one.as == As::assessor) ++count_.held;
}

/// Two entries of one person: a PIN chosen under the one signs for the other.
bool Signatures::same(const std::string& a, const std::string& b) const {
  const auto first = [&](std::string id) {
    // As many steps as there are joins, since a damaged file may join in a ring.
    for (std::size_t i = 0; i <= joined_.size(); ++i) {
      const auto found = joined_.find(id);
      if (found == joined_.end()) break;
      id = found->second;
    }
    return id;
  };
  return a == b || first(a) == first(b);
}

void Signatures::end_commit() {
  for (const Open& one : unsigned_)
    ++(one.paper ? count_.paper : one.imported ? count_.imported : count_.unsigned_here);
  for (const Before& one : before_)
    wrong(one.order,
          (one.as == As::member ? "countersigned with a PIN" : "assessed by a second too") +
              std::string(", and no signature of ") + one.person,
          "their signature in the same commit");
  unsigned_.clear();
  before_.clear();
  hashes_.clear();
}

CheckoutCount Signatures::finish(std::int64_t covered) {
  end_commit();
  for (const Signed& one : signed_)
    if (one.order > covered)
      verify(one);
    else if (one.as == As::assessor)
      ++count_.verified_before;
  return count_;
}

}  // namespace wm::verify
