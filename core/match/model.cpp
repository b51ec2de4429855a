#include "core/match/model.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

namespace wm::match {

Model::Model(const Indexed& indexed) : indexed_(indexed), ways_(ways(indexed)) {
  ways_of_.resize(indexed.booked.size());
  ways_of_kind_.resize(ways_.kinds.size());
  for (std::size_t i = 0; i < ways_.all.size(); ++i) {
    const Way& way = ways_.all[i];
    way_columns_.push_back(program.column(0, 1, true));
    ways_of_kind_[way.kind].push_back(i);
    ways_of_[way.assessor].push_back(i);
    if (way.second >= 0) ways_of_[way.second].push_back(i);
    const int person = ways_.kinds[way.kind].person;
    if (person >= 0) ways_of_[person].push_back(i);
  }
  add_served();
  add_cliques();
  add_longest_days();
  add_rests();
}

/// As many of a kind are served as ways of it are taken. Broken numbers will do: the sum is whole, and the
/// first of a kind weigh most.
void Model::add_served() {
  for (std::size_t k = 0; k < ways_.kinds.size(); ++k) {
    const Kind& kind = ways_.kinds[k];
    std::vector<Term> terms;
    served_.emplace_back();
    for (std::size_t i = 0; i < kind.waiters.size(); ++i) {
      kind_of_[kind.waiters[i]] = {k, i};
      served_.back().push_back(program.column(0, 1, false));
      terms.push_back({served_.back().back(), -1});
    }
    for (const std::size_t way : ways_of_kind_[k]) terms.push_back({way_columns_[way], 1});
    program.row_at_least(terms, 0);
    program.row_at_most(terms, 0);
  }
}

/// At most `most` of them at once: a row for each set that overlaps and is part of no greater one.
void Model::cliques(std::vector<Part> parts, double most) {
  std::sort(parts.begin(), parts.end(),
            [](const Part& a, const Part& b) { return std::tie(a.from, a.to) < std::tie(b.from, b.to); });
  std::multimap<std::int64_t, int> open;  // by end
  bool grew = false;
  const auto emit = [&] {
    std::vector<Term> terms;
    for (const auto& [end, column] : open) terms.push_back({column, 1});
    if (grew && static_cast<double>(terms.size()) > most) program.row_at_most(terms, most);
    grew = false;
  };
  for (const Part& part : parts) {
    if (!open.empty() && open.begin()->first <= part.from) emit();
    open.erase(open.begin(), open.upper_bound(part.from));
    open.emplace(part.to, part.column);
    grew = true;
  }
  emit();
}

std::vector<Model::Part> Model::parts_of(int person) const {
  std::vector<Part> parts;
  for (const std::size_t i : ways_of_[person])
    parts.push_back({ways_.all[i].from, ways_.all[i].to, way_columns_[i]});
  return parts;
}

void Model::add_cliques() {
  std::vector<std::vector<Part>> by_group(ways_.group_sizes.size());
  for (std::size_t i = 0; i < ways_.all.size(); ++i)
    by_group[ways_.all[i].group].push_back({ways_.all[i].from, ways_.all[i].to, way_columns_[i]});
  for (std::size_t group = 0; group < by_group.size(); ++group)
    cliques(by_group[group], static_cast<double>(ways_.group_sizes[group]));
  for (std::size_t person = 0; person < ways_of_.size(); ++person)
    cliques(parts_of(static_cast<int>(person)), 1);
}

void Model::add_longest_days() {
  for (std::size_t person = 0; person < ways_of_.size(); ++person) {
    const AssessorLimits* limits = indexed_.limits[person];
    if (!limits || !limits->longest_day) continue;
    std::map<int, std::int64_t> left;
    std::map<int, std::vector<Term>> terms;
    for (const Engagement& each : indexed_.booked[person])
      if (each.gives) left[indexed_.question.zone.day({each.from}).number] -= (each.to - each.from);
    for (const std::size_t i : ways_of_[person]) {
      const Way& way = ways_.all[i];
      if (way.assessed_by(static_cast<int>(person)))
        terms[way.day].push_back({way_columns_[i], static_cast<double>(way.to - way.from) / 60});
    }
    for (const auto& [day, row] : terms)
      program.row_at_most(row, std::max(0.0, *limits->longest_day + static_cast<double>(left[day]) / 60));
  }
}

void Model::add_rests() {
  for (std::size_t person = 0; person < ways_of_.size(); ++person)
    if (const AssessorLimits* limits = indexed_.limits[person]; limits && limits->stretch)
      add_rests_of(static_cast<int>(person), *limits->stretch);
}

/// A rest may begin where something ends, and nothing is on while it lasts. Whatever is proposed has one that
/// begins so soon after its beginning that the stretch is not too long; and where it lies between things
/// booked that are further apart than a stretch may last, one on either side.
void Model::add_rests_of(int person, const Stretch& stretch) {
  const std::int64_t most = std::int64_t{60} * stretch.minutes, rest = std::int64_t{60} * stretch.rest;
  const std::vector<Engagement>& booked = indexed_.booked[person];
  std::vector<Part> parts = parts_of(person);
  std::set<std::int64_t> ends;
  for (const Part& each : parts) ends.insert(each.to);
  for (const Engagement& each : booked) ends.insert(each.to);
  std::map<std::int64_t, int> columns;
  const std::vector<Part> ways = parts;
  for (const std::int64_t end : ends) {
    const bool taken = std::any_of(booked.begin(), booked.end(), [&](const Engagement& each) {
      return each.from < end + rest && end < each.to;
    });
    if (taken) continue;
    columns[end] = program.column(0, 1, true);
    rests_.push_back({person, end, columns[end]});
    parts.push_back({end, end + rest, columns[end]});
  }
  cliques(parts, 1);
  const auto between = [&](std::vector<Term>& terms, std::int64_t first, std::int64_t last) {
    for (auto each = columns.lower_bound(first); each != columns.end() && each->first <= last; ++each)
      terms.push_back({each->second, 1});
  };
  for (const Part& way : ways) {
    std::vector<Term> after{{way.column, -1}};
    between(after, way.to, way.from + most);
    program.row_at_least(after, 0);
    for (std::size_t i = 0; i < booked.size() && booked[i].from < way.from; ++i) {
      const Engagement& before = booked[i];
      std::vector<Term> split{{way.column, -1}};
      between(split, before.to, way.from - rest);
      if (way.to - before.from > most) program.row_at_least(split, 0);
      for (const Engagement& later : booked) {
        if (later.from < way.to || later.to - before.from <= most) continue;
        std::vector<Term> either = split;
        between(either, way.to, later.from - rest);
        program.row_at_least(either, 0);
      }
    }
  }
}

void Model::add_days() {
  for (std::size_t person = 0; person < ways_of_.size(); ++person) {
    if (person >= indexed_.assesses.size() || !indexed_.assesses[person]) continue;
    std::map<int, std::vector<std::size_t>> by_day;
    for (const std::size_t i : ways_of_[person]) by_day[ways_.all[i].day].push_back(i);
    for (const auto& [day, ways] : by_day) add_day(static_cast<int>(person), day, ways);
  }
}

/// From the first that is on to the last one is there: an arrival is paid for once, and so is every minute.
void Model::add_day(int person, int day, const std::vector<std::size_t>& ways) {
  OneDay made;
  made.person = person;
  made.day = day;
  std::vector<Part> booked;
  std::set<std::int64_t> points;
  for (const Engagement& each : indexed_.booked[person]) {
    if (indexed_.question.zone.day({each.from}).number != day) continue;
    booked.push_back({each.from, each.to, 0});
    points.insert({each.from, each.to});
  }
  for (const std::size_t i : ways) points.insert({ways_.all[i].from, ways_.all[i].to});
  made.points.assign(points.begin(), points.end());
  made.comes_anyway = !booked.empty();
  made.comes = program.column(made.comes_anyway ? 1 : 0, 1, true);
  std::vector<Term> arrivals{{made.comes, -1}};
  for (std::size_t cell = 0; cell + 1 < made.points.size(); ++cell) {
    const std::int64_t at = made.points[cell];
    const auto on = [&](std::int64_t from, std::int64_t to) { return from <= at && at < to; };
    const bool taken =
        std::any_of(booked.begin(), booked.end(), [&](const Part& each) { return on(each.from, each.to); });
    if (taken) made.booked_seconds += made.points[cell + 1] - at;
    made.there.push_back(program.column(taken ? 1 : 0, 1, false));
    made.arrives.push_back(program.column(0, 1, false));
    arrivals.push_back({made.arrives[cell], 1});
    std::vector<Term> is_on{{made.there[cell], -1}};
    for (const std::size_t i : ways)
      if (on(ways_.all[i].from, ways_.all[i].to)) is_on.push_back({way_columns_[i], 1});
    if (is_on.size() > 1) program.row_at_most(is_on, 0);
    std::vector<Term> arrives{{made.there[cell], 1}, {made.arrives[cell], -1}};
    if (cell > 0) arrives.push_back({made.there[cell - 1], -1});
    program.row_at_most(arrives, 0);
  }
  program.row_at_most(arrivals, 0);
  if (!booked.empty()) {
    std::int64_t over = 0;
    for (const Part& each : booked) over = std::max(over, each.to);
    made.booked_gaps = over - booked.front().from - made.booked_seconds;
  }
  days_.push_back(std::move(made));
}

std::vector<Term> Model::sum(Aim aim) const {
  std::vector<Term> out;
  for (std::size_t k = 0; k < ways_.kinds.size(); ++k)
    for (std::size_t i = 0; i < served_[k].size(); ++i) {
      const std::size_t waiter = ways_.kinds[k].waiters[i];
      const int days = indexed_.question.waiters[waiter].days;
      const double weight = aim == Aim::first    ? indexed_.first[waiter]
                            : aim == Aim::served ? 1
                            : aim == Aim::waited ? days
                                                 : 0;
      if (weight != 0) out.push_back({served_[k][i], weight});
    }
  for (const OneDay& day : days_) {
    if (aim == Aim::trips && !day.comes_anyway) out.push_back({day.comes, -1});
    if (aim != Aim::gaps) continue;
    for (std::size_t cell = 0; cell < day.there.size(); ++cell)
      out.push_back({day.there[cell], -static_cast<double>(day.points[cell + 1] - day.points[cell]) / 60});
  }
  if (aim != Aim::gaps) return out;
  for (std::size_t i = 0; i < ways_.all.size(); ++i) {
    const Way& way = ways_.all[i];
    const int person = ways_.kinds[way.kind].person;
    const double minutes = static_cast<double>(way.to - way.from) / 60;
    const double takers = 1 + (way.second >= 0 ? 1 : 0) + (person >= 0 && indexed_.assesses[person] ? 1 : 0);
    out.push_back({way_columns_[i], minutes * takers});
  }
  return out;
}

std::int64_t Model::beside(Aim aim) const {
  if (aim != Aim::gaps) return 0;
  std::int64_t seconds = 0;
  for (const OneDay& day : days_) seconds += day.booked_seconds + day.booked_gaps;
  return seconds / 60 - measure(indexed_.question, {}).gaps;
}

void Model::keep(Aim aim, std::int64_t at) {
  const std::vector<Term> terms = sum(aim);
  program.row_at_least(terms, static_cast<double>(at));
}

}  // namespace wm::match
