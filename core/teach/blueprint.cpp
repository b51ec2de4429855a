#include "core/teach/blueprint.h"

#include <map>
#include <set>

#include "core/text/lines.h"

namespace wm::teach {
namespace {

using text::quoted;

struct Topic {
  int questions = 0, critical = 0;
  bool drawn = false;
};
using Topics = std::map<std::string_view, Topic>;

Topics topics_of(const Bank& bank) {
  Topics topics;
  for (const Question& question : bank.questions) {
    Topic& topic = topics[question.topic];
    ++topic.questions;
    topic.critical += question.critical ? 1 : 0;
  }
  return topics;
}

void check(const Draw& draw, std::size_t at, const Topic& topic, std::vector<Shortfall>& all) {
  const std::string name = quoted(draw.topic), drawn = std::to_string(draw.count);
  if (draw.count > topic.questions)
    all.push_back({Shortfall::Of::draw, at,
                   "A paper draws " + drawn + " of " + name + ", and the bank has " +
                       std::to_string(topic.questions) + ".",
                   "Draw fewer, or add questions of this topic."});
  else if (draw.count < topic.critical)
    all.push_back({Shortfall::Of::draw, at,
                   "A paper draws " + drawn + " of " + name + ", and " + std::to_string(topic.critical) +
                       " are critical and on every paper.",
                   "Draw at least " + std::to_string(topic.critical) + "."});
}

}  // namespace

std::vector<Shortfall> repeated_ids(const Bank& bank) {
  std::vector<Shortfall> all;
  std::set<std::string_view> ids;
  for (std::size_t i = 0; i < bank.questions.size(); ++i)
    if (!ids.insert(bank.questions[i].id).second)
      all.push_back({Shortfall::Of::question, i,
                     "Another question before it has the id " + quoted(bank.questions[i].id) + ".",
                     "Give each its own."});
  return all;
}

std::vector<Shortfall> shortfalls(const Bank& bank) {
  std::vector<Shortfall> all;
  Topics topics = topics_of(bank);
  for (std::size_t i = 0; i < bank.draws.size(); ++i) {
    Topic& topic = topics[bank.draws[i].topic];
    topic.drawn = true;
    check(bank.draws[i], i, topic, all);
  }
  for (std::size_t i = 0; i < bank.questions.size(); ++i)
    if (Topic& topic = topics[bank.questions[i].topic]; !topic.drawn) {
      topic.drawn = true;  // told once for each topic
      all.push_back({Shortfall::Of::question, i,
                     "No paper draws the topic " + quoted(bank.questions[i].topic) + ".",
                     "Add a line \"draw: … of " + bank.questions[i].topic + "\" at the top."});
    }
  const std::size_t total = questions_a_paper(bank);
  if (total < 2 || total > most_questions)
    all.push_back({Shortfall::Of::bank, 0, "A paper would have " + std::to_string(total) + " questions.",
                   "Draw 2 to 10,000 questions in all: with fewer than 2 every paper would be the same."});
  return all;
}

}  // namespace wm::teach
