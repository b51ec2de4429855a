#include "core/rulebook/circles.h"

#include <algorithm>
#include <unordered_map>

namespace wm {

namespace {

/// Rungs of targets, and between them what keeps the edges few: the gates that a tier's or a class's targets
/// share, and the targets that a tier or a class stands for. A circle always runs through a target's rung.
class Graph {
 public:
  struct Edge {
    std::size_t to;
    std::size_t gate;  // an index into gates; no_gate where the edge is no requirement
  };
  static constexpr std::size_t no_gate = static_cast<std::size_t>(-1);

  std::vector<std::vector<Edge>> edges;
  std::vector<std::string> names;  // of a target's rungs; empty for what stands between
  std::vector<std::string> gates;  // as JSON pointers

  explicit Graph(const Rulebook& rulebook) {
    for (const Tier& tier : rulebook.tiers) {
      tier_gates_.emplace(tier.tier, pair());
      tier_targets_.emplace(tier.tier, pair());
    }
    for (const MachineClass& c : rulebook.classes) add_targets(c);
    for (std::size_t i = 0; i < rulebook.tiers.size(); ++i)
      add_gates(rulebook.tiers[i].gates, tier_gates_.at(rulebook.tiers[i].tier),
                "/tiers/" + std::to_string(i) + "/gates/");
    for (std::size_t i = 0; i < rulebook.classes.size(); ++i)
      add_class(rulebook.classes[i], "/classes/" + std::to_string(i));
  }

 private:
  /// The nodes of `supervised` and, next to it, of `independent`.
  std::size_t pair(const std::string& target = "") {
    for (const Rung rung : {Rung::supervised, Rung::independent}) {
      edges.emplace_back();
      names.push_back(target.empty() ? "" : std::string(word(rung)) + " on " + target);
    }
    return edges.size() - 2;
  }
  static std::size_t of(std::size_t pair, Rung rung) { return pair + (rung == Rung::independent ? 1 : 0); }
  void link(std::size_t from, std::size_t to) {
    for (const std::size_t rung : {0u, 1u}) edges[from + rung].push_back({to + rung, no_gate});
  }

  void add_targets(const MachineClass& c) {
    const std::size_t all = pair(c.modes.empty() ? c.name : "");
    stands_for_.emplace(c.name, all);
    const auto tier = tier_targets_.find(c.tier);
    if (tier != tier_targets_.end()) link(tier->second, all);
    for (const std::string& mode : c.modes) {
      const std::size_t one = pair(c.name + "/" + mode);
      stands_for_.emplace(c.name + "/" + mode, one);
      link(all, one);
    }
  }

  void add_class(const MachineClass& c, const std::string& pointer) {
    const std::size_t shared = pair();
    if (const auto tier = tier_gates_.find(c.tier); tier != tier_gates_.end()) link(shared, tier->second);
    add_gates(c.gates, shared, pointer + "/gates/");
    if (c.modes.empty()) return link(stands_for_.at(c.name), shared);
    for (const std::string& mode : c.modes) {
      const std::size_t target = stands_for_.at(c.name + "/" + mode);
      link(target, shared);
      if (const auto own = c.mode_gates.find(mode); own != c.mode_gates.end())
        add_gates(own->second, target, pointer + "/mode_gates/" + escaped(mode) + "/");
    }
  }

  void add_gates(const std::vector<Gate>& list, std::size_t from, const std::string& pointer) {
    for (std::size_t i = 0; i < list.size(); ++i) {
      gates.push_back(pointer + std::to_string(i));
      add_need(list[i].need, list[i].guards, from);
    }
  }

  void add_need(const Requirement& requirement, Rung guards, std::size_t from) {
    std::visit([&](const auto& need) { add(need, guards, from); }, requirement.need);
  }
  void add(const NeedStanding& need, Rung guards, std::size_t from) {
    if (const auto to = stands_for_.find(need.target); to != stands_for_.end())
      depend(from, guards, of(to->second, need.at_least));
  }
  void add(const NeedTierStanding& need, Rung guards, std::size_t from) {
    if (const auto to = tier_targets_.find(need.tier); to != tier_targets_.end())
      depend(from, guards, of(to->second, need.at_least));
  }
  void add(const NeedCheckout& need, Rung guards, std::size_t from) {
    for (const Requirement& one : need.given) add_need(one, guards, from);
  }
  void add(const auto& need, Rung guards, std::size_t from) {
    if constexpr (requires { need.of; })
      for (const Requirement& one : need.of) add_need(one, guards, from);
  }
  /// A gate of `supervised` is one of `independent` too.
  void depend(std::size_t from, Rung guards, std::size_t to) {
    const std::size_t gate = gates.size() - 1;
    if (guards != Rung::independent) edges[from].push_back({to, gate});
    edges[from + 1].push_back({to, gate});
  }

  static std::string escaped(const std::string& mode) {
    std::string out;
    for (const char c : mode) out += c == '~' ? "~0" : c == '/' ? "~1" : std::string(1, c);
    return out;
  }

  std::unordered_map<int, std::size_t> tier_gates_, tier_targets_;
  std::unordered_map<std::string, std::size_t> stands_for_;  // of a target, or of a class's modes
};

/// A walk in depth, without recursion: a chain may be as long as the rulebook.
class Search {
 public:
  explicit Search(const Graph& graph) : graph_(graph), state_(graph.edges.size(), State::fresh) {}

  std::optional<Circle> run() {
    for (std::size_t start = 0; start < state_.size(); ++start)
      if (state_[start] == State::fresh)
        if (auto circle = from(start)) return circle;
    return std::nullopt;
  }

 private:
  enum class State : char { fresh, on_path, done };
  struct Step {
    std::size_t node, next_edge;
  };

  std::optional<Circle> from(std::size_t start) {
    enter(start);
    while (!path_.empty()) {
      Step& last = path_.back();
      const auto& out = graph_.edges[last.node];
      if (last.next_edge == out.size()) {
        state_[last.node] = State::done;
        path_.pop_back();
        continue;
      }
      const std::size_t to = out[last.next_edge++].to;
      if (state_[to] == State::on_path) return circle_at(to);
      if (state_[to] == State::fresh) enter(to);
    }
    return std::nullopt;
  }

  void enter(std::size_t node) {
    state_[node] = State::on_path;
    path_.push_back({node, 0});
  }

  Circle circle_at(std::size_t node) const {
    Circle circle;
    auto step = std::find_if(path_.begin(), path_.end(), [&](const Step& s) { return s.node == node; });
    for (; step != path_.end(); ++step) {
      const std::size_t gate = graph_.edges[step->node][step->next_edge - 1].gate;
      if (circle.gate.empty() && gate != Graph::no_gate) circle.gate = graph_.gates[gate];
      if (!graph_.names[step->node].empty()) circle.rungs.push_back(graph_.names[step->node]);
    }
    circle.rungs.push_back(circle.rungs.front());
    return circle;
  }

  const Graph& graph_;
  std::vector<State> state_;
  std::vector<Step> path_;
};

}  // namespace

std::optional<Circle> find_circle(const Rulebook& rulebook) {
  const Graph graph(rulebook);
  return Search(graph).run();
}

}  // namespace wm
