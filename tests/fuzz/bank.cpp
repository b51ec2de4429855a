// A bank that is taken is written out and read again as the same, and papers can be drawn from it; one that
// is not is told why.
#include "core/teach/bank_text.h"
#include "core/teach/marking.h"
#include "tests/fuzz/holds.h"

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  using namespace wm;
  const auto bank = teach::read_bank(fuzz::text(data, size));
  if (!bank) {
    fuzz::is_told(bank.error());
    return 0;
  }
  const auto again = teach::read_bank(teach::to_text(*bank));
  fuzz::holds(again.has_value(), "what was written is read again");
  fuzz::holds(*again == *bank, "what is read again is what was read");
  const auto paper = teach::draw_paper(*bank, size);
  fuzz::holds(paper.has_value(), "a bank that is taken can fill its papers");
  fuzz::holds(paper->size() == teach::questions_a_paper(*bank), "a paper is as long as it should be");
  const auto marking =
      teach::mark_attempt(*bank, {bank->name, bank->revision, size, bank->languages.front(), {}});
  fuzz::holds(marking && marking->correct == 0, "what is left open is wrong");
  fuzz::holds(teach::next_seed(*bank, size, teach::ids_of(*bank, *paper)) != size,
              "the next paper is another");
  return 0;
}
