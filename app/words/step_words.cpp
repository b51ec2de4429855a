#include "app/words/step_words.h"

#include "app/words/counted.h"
#include "app/words/labels.h"
#include "app/words/tr.h"

namespace wm::app {

namespace {

struct StepWords {
  const AnswerReader& reader;

  QString operator()(const Document& s) const {
    return Words::tr("the paper “%1”").arg(item_label(s.document));
  }
  QString operator()(const Lesson& s) const {
    return Words::tr("the lesson “%1”%2", "name, revision")
        .arg(item_label(s.lesson), revision_words(s.revision));
  }
  QString operator()(const Quiz& s) const {
    return Words::tr("the quiz “%1”%2", "name, revision").arg(item_label(s.quiz), revision_words(s.revision));
  }
  QString operator()(const Supervised& s) const {
    return Words::tr("%1 of practice on %2, for instance with %3", "minutes, a machine, a supervisor")
        .arg(minutes_words(s.minutes), target_phrase(s.target), reader.name_of(s.supervisor));
  }
  QString operator()(const Use& s) const {
    return Words::tr("use of %1 without a supervisor").arg(target_phrase(s.target));
  }
  QString operator()(const Checkout& s) const {
    return Words::tr("the check-out “%1”%2, for instance with %3", "name, revision, assessor")
        .arg(item_label(s.checkout), revision_words(s.revision), reader.name_of(s.assessor));
  }
  // No route takes any other.
  template <class T>
  QString operator()(const T&) const {
    return {};
  }
};

struct Witness {
  PersonId operator()(const Supervised& s) const { return s.supervisor; }
  PersonId operator()(const Checkout& s) const { return s.assessor; }
  template <class T>
  PersonId operator()(const T&) const {
    return {};
  }
};

}  // namespace

QString step_words(const Fact& step, const AnswerReader& reader) {
  return std::visit(StepWords{reader}, step);
}

PersonId witness_of(const Fact& step) { return std::visit(Witness{}, step); }

}  // namespace wm::app
