#include "db/verify/signatures.h"

#include <algorithm>

namespace wm::verify {

void Signatures::check(const LeafContent& leaf, const ledger::Hash& hash, bool known) {
  if (leaf.commit != commit_) end_commit();
  commit_ = leaf.commit;
  if (leaf.kind == "pin") keys_[leaf.person] = leaf.body.text("key").value_or("");
  if (leaf.kind == "checkout")
    unsigned_.push_back({leaf.order, leaf.id, leaf.body.text("assessor").value_or(""), leaf.paper, leaf.station == "import"});
  if (leaf.kind == "signature") check_signature(leaf, known);
  hashes_.push_back(hash);
}

void Signatures::check_signature(const LeafContent& leaf, bool known) {
  const auto wrong = [&](std::string says, std::string should) {
    findings_.add(FindingKind::signature, "record " + std::to_string(leaf.order), std::move(says), std::move(should));
  };
  const auto checkout = std::find_if(unsigned_.begin(), unsigned_.end(),
                                     [&](const Open& one) { return one.id == leaf.body.text("checkout"); });
  if (checkout == unsigned_.end()) return wrong("a signature of no check-out entered with it", "one of a check-out just before it");
  const Open open = *checkout;
  unsigned_.erase(checkout);
  if (known) {
    ++count_.verified_before;
    return;
  }
  if (leaf.person != open.assessor) return wrong("signed by " + leaf.person, "signed by " + open.assessor + ", who assessed");
  const std::string key_text = leaf.body.text("key").value_or("");
  const auto key = ledger::bytes_from_hex<32>(key_text);
  const auto signature = ledger::bytes_from_hex<64>(leaf.body.text("signature").value_or(""));
  const auto latest = keys_.find(leaf.person);
  if (latest == keys_.end() || latest->second != key_text)
    return wrong("signed with the key " + key_text, latest == keys_.end() ? "a key of " + leaf.person + ", who had none"
                                                                         : "the key of " + leaf.person + " then, " + latest->second);
  if (!key || !signature || !ledger::verify(*key, ledger::checkout_message(hashes_), *signature))
    return wrong("a signature that does not hold", "one over the records of its commit before it");
  ++count_.held;
}

void Signatures::end_commit() {
  for (const Open& one : unsigned_) ++(one.paper ? count_.paper : one.imported ? count_.imported : count_.unsigned_here);
  unsigned_.clear();
  hashes_.clear();
}

CheckoutCount Signatures::finish() {
  end_commit();
  return count_;
}

}  // namespace wm::verify
