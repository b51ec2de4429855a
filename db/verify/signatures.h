#pragma once
// The signatures of check-outs: the assessor's, the second's where there are two, and the member's who
// countersigns.
#include <map>
#include <string>
#include <vector>

#include "core/ledger/signing.h"
#include "db/verify/findings.h"
#include "db/verify/leaf_content.h"

namespace wm::verify {

/// Check-outs by how they came in.
struct CheckoutCount {
  std::size_t held = 0;  // signed, and the signature holds
  std::size_t verified_before =
      0;  // signed, and not looked at again: a root that was verified before covers them
  std::size_t paper = 0, imported = 0, unsigned_here = 0;  // without a signature
};

/// Walks along the records, in their order.
class Signatures {
 public:
  explicit Signatures(Findings& findings) : findings_(findings) {}
  void check(const LeafContent& leaf, const ledger::Hash& hash);
  /// Verifies those of records after `covered`.
  CheckoutCount finish(std::int64_t covered);

 private:
  struct Open {
    std::int64_t order;
    std::string id, assessor;
    bool paper, imported;
  };
  enum class As { member, second, assessor };
  /// Who countersigned with a PIN, or assessed it as the second: their signature is to come.
  struct Before {
    std::int64_t order;
    std::string checkout, person;  // what their signature names, and they
    As as;
  };
  struct Signed {
    std::int64_t order;
    std::string signer, wanted;
    As as;
    std::string key, latest_key, signature;  // in hexadecimal
    std::string message;
  };
  void end_commit();
  std::string signed_with(const LeafContent& leaf) const;
  void expect(Before one);
  void take_signature(const LeafContent& leaf);
  /// A signature that is to be `wanted`'s.
  void keep(const LeafContent& leaf, const std::string& wanted, As as);
  bool same(const std::string& a, const std::string& b) const;
  void verify(const Signed& one);
  void wrong(std::int64_t order, std::string says, std::string should);

  Findings& findings_;
  std::int64_t commit_ = 0;
  std::vector<ledger::Hash> hashes_;           // of this commit so far
  std::vector<Open> unsigned_;                 // its check-outs without a signature so far
  std::vector<Before> before_;                 // in the order in which they sign
  std::map<std::string, std::string> keys_;    // by person, in hexadecimal
  std::map<std::string, std::string> joined_;  // into which entry of the same person
  std::vector<Signed> signed_;
  CheckoutCount count_;
};

}  // namespace wm::verify
