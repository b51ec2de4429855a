#pragma once
// Marks and blueprints worked out a second time, as plainly as can be, from the documentation alone: no call
// into what is tested but for the bank's own fields.
#include <algorithm>
#include <cmath>
#include <set>
#include <string>

#include "core/teach/attempt.h"
#include "core/teach/bank.h"
#include "core/teach/paper.h"

namespace wm::teach::plain {

/// A number as a count of 1/(5 * 999983 * 2^6 * 7 * 3 * 10^6) of a fifth of a millimetre, second, degree …:
/// all that the generator of tests makes is whole in it.
__extension__ using Huge = __int128;

inline Huge grains(long top, long over, Unit unit) {
  const long fifths = unit == Unit::inch         ? 127
                      : unit == Unit::foot       ? 127 * 12
                      : unit == Unit::centimetre ? 50
                      : unit == Unit::minute     ? 300
                      : unit == Unit::hour       ? 18000
                                                 : 5;
  return Huge{999'983} * 5 * 64 * 7 * 3 * 1'000'000 / over * top * fifths;
}

/// "-12/64", "3/1 in": the only numbers that the generator makes on purpose. Nothing for others.
inline bool read(const std::string& text, long& top, long& over) {
  const std::size_t slash = text.find('/');
  if (slash == std::string::npos || slash == 0 || text.find(' ') < slash) return false;
  char* end = nullptr;
  top = std::strtol(text.c_str(), &end, 10);
  if (end != text.c_str() + slash) return false;
  over = std::strtol(text.c_str() + slash + 1, &end, 10);
  return over > 0 && top > -1'000'000'000 && top < 1'000'000'000 && over < 1'000'000'000;
}

inline bool number_right(const ANumber& kind, const std::string& text) {
  long top = 0, over = 1;
  if (!read(text, top, over)) return false;
  const Unit unit = kind.answer.unit;
  const bool other_length = unit == Unit::foot || unit == Unit::millimetre || unit == Unit::centimetre;
  if ((other_length || unit == Unit::inch) && top < 0) return false;
  // A bare fraction may have been meant as inches.
  if (other_length && text.find(' ') == std::string::npos) return false;
  const auto of = [](const Fraction& f, Unit u) {
    return grains(f.get_num().get_si(), f.get_den().get_si(), u);
  };
  const Huge given = grains(top, over, unit), wanted = of(kind.answer.value, unit);
  const Huge room = of(kind.tolerance.value, kind.tolerance.unit);
  return wanted - room <= given && given <= wanted + room;
}

/// The generator's polygons are triangles with a flat top: a slice at each height.
inline bool place_right(const APlace& kind, Point p) {
  for (const Region& region : kind.regions) {
    if (const auto* r = std::get_if<Rectangle>(&region)) {
      if (p.x >= r->left && p.x <= r->right && p.y >= r->top && p.y <= r->bottom) return true;
      continue;
    }
    const auto& c = std::get<Polygon>(region).corners;
    const std::int64_t high = c[2].y - c[0].y, down = p.y - c[0].y;
    if (down < 0 || down > high) continue;
    const std::int64_t left = c[0].x * high + (c[2].x - c[0].x) * down,
                       right = c[1].x * high + (c[2].x - c[1].x) * down;
    if (left <= p.x * high && p.x * high <= right) return true;
  }
  return false;
}

/// Whole questions only.
inline bool right(const Question& q, const Given& given) {
  const auto* chosen = std::get_if<Chosen>(&given);
  const auto* ticked = std::get_if<Ticked>(&given);
  const auto* ordered = std::get_if<Ordered>(&given);
  const auto* typed = std::get_if<Typed>(&given);
  const auto* pointed = std::get_if<Pointed>(&given);
  if (const auto* one = std::get_if<OneRight>(&q.kind)) return chosen && chosen->choice == one->right;
  if (const auto* several = std::get_if<SeveralRight>(&q.kind)) {
    if (!ticked) return false;
    std::set<std::size_t> want;
    for (std::size_t i = 0; i < several->right.size(); ++i)
      if (several->right[i]) want.insert(i);
    return want == std::set<std::size_t>(ticked->choices.begin(), ticked->choices.end());
  }
  if (std::holds_alternative<InOrder>(q.kind)) {
    if (!ordered || ordered->steps.size() != q.wordings.front().choices.size()) return false;
    for (std::size_t i = 0; i < ordered->steps.size(); ++i)
      if (ordered->steps[i] != i) return false;
    return true;
  }
  if (const auto* number = std::get_if<ANumber>(&q.kind)) return typed && number_right(*number, typed->text);
  return pointed && place_right(std::get<APlace>(q.kind), pointed->point);
}

/// Credit for a part, in binary floating point: near enough to tell one mark from another.
inline double score(const Question& q, const Given& given) {
  if (right(q, given)) return 1;
  if (!q.partial) return 0;
  if (const auto* several = std::get_if<SeveralRight>(&q.kind)) {
    const auto* ticked = std::get_if<Ticked>(&given);
    if (!ticked) return 0;
    double sum = 0, all = 0;
    for (const bool r : several->right) all += r ? 1 : 0;
    for (const std::size_t i : ticked->choices) {
      if (i >= several->right.size()) return 0;
      sum += several->right[i] ? 1 : -1;
    }
    return std::max(0.0, sum / all);
  }
  const auto* ordered = std::get_if<Ordered>(&given);
  const double n = static_cast<double>(q.wordings.front().choices.size());
  if (!ordered) return 0;
  const std::set<std::size_t> all(ordered->steps.begin(), ordered->steps.end());
  if (ordered->steps.size() != n || all.size() != n || *all.rbegin() != n - 1) return 0;
  double good = 0;
  for (std::size_t step = 1; step < n; ++step)
    for (std::size_t earlier = 0; earlier < step; ++earlier)
      good += std::find(ordered->steps.begin(), ordered->steps.end(), earlier) <
                      std::find(ordered->steps.begin(), ordered->steps.end(), step)
                  ? 1
                  : 0;
  return good / (n * (n - 1) / 2);
}

/// What is wrong with a paper; empty where nothing is.
inline std::string broken(const Bank& bank, const Paper& paper) {
  std::set<std::size_t> seen;
  for (const Asked& asked : paper) {
    if (asked.question >= bank.questions.size()) return "a question that isn't there";
    if (!seen.insert(asked.question).second) return "a question twice";
    const Question& q = bank.questions[asked.question];
    std::set<std::size_t> order(asked.order.begin(), asked.order.end());
    const std::size_t choices = q.wordings.front().choices.size();
    if (asked.order.size() != choices || order.size() != choices ||
        (choices > 0 && *order.rbegin() != choices - 1))
      return "choices that are not the question's";
    if (std::holds_alternative<InOrder>(q.kind) && std::is_sorted(asked.order.begin(), asked.order.end()))
      return "steps in their right order";
  }
  for (std::size_t i = 0; i < bank.questions.size(); ++i)
    if (bank.questions[i].critical && !seen.count(i)) return "a critical question left out";
  std::size_t total = 0;
  for (const Draw& draw : bank.draws) {
    int count = 0;
    for (const std::size_t i : seen) count += bank.questions[i].topic == draw.topic ? 1 : 0;
    if (count != draw.count) return "not as many of a topic as are drawn";
    total += static_cast<std::size_t>(draw.count);
  }
  return total == paper.size() ? "" : "another length";
}

}  // namespace wm::teach::plain
