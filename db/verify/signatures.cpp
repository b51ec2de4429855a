#include "db/verify/signatures.h"

#include <algorithm>

namespace wm::verify {

void Signatures::check(const LeafContent& leaf, const ledger::Hash& hash) {
  if (leaf.commit != commit_) end_commit();
  commit_ = leaf.commit;
  if (leaf.kind == "pin") keys_[leaf.person] = leaf.body.text("key").value_or("");
  if (leaf.kind == "checkout" || leaf.kind == "scored_apart")
    unsigned_.push_back({leaf.order, leaf.id, std::string(leaf.body.text("assessor").value_or("")),
                         leaf.paper, leaf.station == "import"});
  if (leaf.kind == "signature") take_signature(leaf);
  hashes_.push_back(hash);
}

void Signatures::wrong(std::int64_t order, std::string says, std::string should) {
  findings_.add(FindingKind::signature, "record " + std::to_string(order), std::move(says),
                std::move(should));
}

void Signatures::take_signature(const LeafContent& leaf) {
  const auto checkout = std::find_if(unsigned_.begin(), unsigned_.end(),
                                     [&](const Open& one) { return one.id == leaf.body.text("checkout"); });
  if (checkout == unsigned_.end())
    return wrong(leaf.order, "a signature of no check-out entered with it",
                 "one of a check-out just before it");
  signed_.push_back({leaf.order, leaf.person, checkout->assessor,
                     std::string(leaf.body.text("key").value_or("")), keys_[leaf.person],
                     std::string(leaf.body.text("signature").value_or("")),
                     ledger::checkout_message(hashes_)});
  unsigned_.erase(checkout);
}

void Signatures::verify(const Signed& one) {
  if (one.signer != one.assessor)
    return wrong(one.order, "signed by " + one.signer, "signed by " + one.assessor + ", who assessed");
  if (one.latest_key.empty())
    return wrong(one.order, "signed with the key " + one.key, "a key of " + one.signer + ", who had none");
  if (one.key != one.latest_key)
    return wrong(one.order, "signed with the key " + one.key,
                 "the key of " + one.signer + " then, " + one.latest_key);
  const auto key = ledger::bytes_from_hex<32>(one.key);
  const auto signature = ledger::bytes_from_hex<64>(one.signature);
  if (!key || !signature || !ledger::verify(*key, one.message, *signature))
    return wrong(one.order, "a signature that does not hold", "one over the records of its commit before it");
  ++count_.held;
}

void Signatures::end_commit() {
  for (const Open& one : unsigned_)
    ++(one.paper ? count_.paper : one.imported ? count_.imported : count_.unsigned_here);
  unsigned_.clear();
  hashes_.clear();
}

CheckoutCount Signatures::finish(std::int64_t covered) {
  end_commit();
  for (const Signed& one : signed_)
    if (one.order <= covered)
      ++count_.verified_before;
    else
      verify(one);
  return count_;
}

}  // namespace wm::verify
