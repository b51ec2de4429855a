#include "app/words/why_words.h"

#include "app/words/grace_words.h"
#include "app/words/labels.h"
#include "app/words/listing.h"
#include "app/words/need_detail.h"
#include "app/words/need_words.h"
#include "app/words/pause_words.h"
#include "app/words/standing_words.h"
#include "app/words/tr.h"

namespace wm::app {

namespace {

QString in_brackets(const QString& phrase, const QString& detail) {
  if (detail.isEmpty()) return phrase;
  return Words::tr("%1 (%2)", "a requirement, what there is of it").arg(phrase, detail);
}

/// A requirement with what there is of it, its parts included.
QString told(const Reason& reason, const AnswerReader& reader, const QString& detail) {
  const bool checkout = std::holds_alternative<NeedCheckout>(reason.need.need);
  QStringList parts;
  for (const Reason& part : reason.of) {
    if (checkout && part.holds) continue;
    const QString words = told(part, reader, NeedDetail{reader}.of(part));
    parts << (part.holds && !checkout ? Words::tr("%1, which holds", "a requirement").arg(words) : words);
  }
  QString phrase = in_brackets(need_phrase(reason), detail);
  if (parts.isEmpty()) return phrase;
  return (checkout ? Words::tr("%1, for which are needed: %2", "a check-out, requirements")
                   : Words::tr("%1: %2", "all of these, requirements"))
      .arg(phrase, parts.join(Words::tr("; ", "between requirements")));
}

/// Where no gates are told: why that is.
QString no_gates(const TargetName& target, const StandingAnswer& answer) {
  if (!answer.rulebook) return Words::tr("No rulebook is in force, so nobody may use a machine.");
  if (answer.stands_for.empty())
    return Words::tr("The rulebook in force does not have %1.").arg(target_phrase(target));
  if (answer.stands_for.size() == 1) return Words::tr("Nothing is asked for it.");
  QStringList modes;
  for (const TargetName& mode : answer.stands_for) modes << target_phrase(mode);
  return Words::tr("The lowest of these counts: %1.").arg(and_list(modes));
}

}  // namespace

QString gate_sentence(const GateAnswer& gate, const AnswerReader& reader) {
  const QString words = told(gate.reason, reader, gate_detail(gate, reader));
  switch (gate.state) {
    case GateState::met:
      return Words::tr("There: %1.", "a requirement").arg(words);
    case GateState::in_grace:
      return Words::tr("To be renewed: %1.", "a requirement").arg(words);
    case GateState::unmet:
      return Words::tr("Still needed: %1.", "a requirement").arg(words);
  }
  return {};
}

QStringList why_sentences(const TargetName& target, const StandingAnswer& answer, bool with_reasons,
                          const AnswerReader& reader) {
  QStringList sentences = pause_sentences(answer, with_reasons, reader);
  if (answer.gates.empty()) return sentences << no_gates(target, answer);
  const auto add = [&](bool missing) {
    const Rung most = missing ? rung_above(answer.standing) : answer.standing;
    for (const GateAnswer& gate : answer.gates)
      if ((gate.state == GateState::unmet) == missing && gate.guards <= most)
        sentences << gate_sentence(gate, reader);
  };
  add(true);
  add(false);
  return sentences;
}

}  // namespace wm::app
