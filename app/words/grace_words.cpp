#include "app/words/grace_words.h"

#include "app/words/need_detail.h"
#include "app/words/need_words.h"
#include "app/words/tr.h"

namespace wm::app {

namespace {

QString spared_words(const GateAnswer& gate, const AnswerReader& reader) {
  if (!gate.lapses) return Words::tr("counts for people who were here before");
  return Words::tr("counts through %1 for people who were here before").arg(reader.last(*gate.lapses));
}

/// It may be due since a birthday, when something else began to hold.
QString due_since(const GateAnswer& gate, const AnswerReader& reader) {
  if (!gate.due || reader.hides(*gate.due)) return Words::tr("due now");
  return Words::tr("due since %1").arg(reader.day(*gate.due));
}

bool due_before_it_ends(const GateAnswer& gate) {
  return gate.due && (!gate.lapses || *gate.due < *gate.lapses);
}

}  // namespace

QString grace_words(const GateAnswer& gate, const AnswerReader& reader) {
  switch (gate.state) {
    case GateState::unmet:
      return {};
    case GateState::in_grace: {
      if (gate.spared) return spared_words(gate, reader);
      QString due = due_since(gate, reader);
      if (!gate.lapses) return due;
      return Words::tr("%1, still counts through %2", "due since when, a day")
          .arg(due, reader.last(*gate.lapses));
    }
    case GateState::met:
      if (!due_before_it_ends(gate)) return {};
      QString due = Words::tr("due by %1").arg(reader.last(*gate.due));
      if (!gate.lapses) return due;
      return Words::tr("%1, counts through %2", "due by when, a day").arg(due, reader.last(*gate.lapses));
  }
  return {};
}

QString gate_detail(const GateAnswer& gate, const AnswerReader& reader) {
  const NeedDetail detail{reader};
  QString grace = grace_words(gate, reader);
  if (grace.isEmpty()) return detail.of(gate.reason);
  // That says how long it counts already.
  const QString there = detail.without_end(gate.reason);
  if (there.isEmpty()) return grace;
  return Words::tr("%1; %2", "what there is, when it is due").arg(there, grace);
}

QStringList due_sentences(const StandingAnswer& answer, const AnswerReader& reader) {
  QStringList sentences;
  for (const GateAnswer& gate : answer.gates)
    if (gate.guards <= answer.standing && gate.state == GateState::in_grace)
      sentences << Words::tr("To be renewed: %1, %2.", "a requirement, due since when")
                       .arg(need_phrase(gate.reason), grace_words(gate, reader));
  return sentences;
}

QString next_due_sentence(const StandingAnswer& answer, const AnswerReader& reader) {
  const GateAnswer* next = nullptr;
  for (const GateAnswer& gate : answer.gates)
    if (gate.guards <= answer.standing && gate.state == GateState::met && gate.due &&
        (!next || *gate.due < *next->due))
      next = &gate;
  if (!next) return {};
  const QString words = grace_words(*next, reader);
  return Words::tr("Next to be renewed: %1, %2.", "a requirement, due by when")
      .arg(need_phrase(next->reason),
           words.isEmpty() ? Words::tr("due by %1").arg(reader.last(*next->due)) : words);
}

}  // namespace wm::app
