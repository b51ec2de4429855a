#include "app/words/needs.h"

#include "app/words/grace_words.h"
#include "app/words/need_detail.h"
#include "app/words/need_words.h"

namespace wm::app {

namespace {

void add_lines(std::vector<NeedLine>& lines, const Reason& reason, int depth, const NeedDetail& detail) {
  lines.push_back({reason.holds, need_label(reason), detail.of(reason), depth});
  // Of what must be given for a check-out only what is missing is worth a line.
  const bool checkout = std::holds_alternative<NeedCheckout>(reason.need.need);
  for (const Reason& part : reason.of)
    if (!checkout || !part.holds) add_lines(lines, part, depth + 1, detail);
}

}  // namespace

std::vector<NeedLine> need_lines(const GateAnswer& gate, const AnswerReader& reader) {
  std::vector<NeedLine> lines;
  add_lines(lines, gate.reason, 0, NeedDetail{reader});
  if (grace_words(gate, reader).isEmpty()) return lines;
  lines.front().detail = gate_detail(gate, reader);
  lines.front().holds = true;
  return lines;
}

}  // namespace wm::app
