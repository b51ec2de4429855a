#!/usr/bin/env python3
"""Holds the engine against clingo: random shops, every kind of ask but routes, each decided by decisions.lp.

usage: clingo_judge.py ORACLE_WORLDS [--seed N] [--worlds N] [--most RECORDS] [--keep FOLDER] [--file SCENARIO]
"""
import json
import random
import sys

import civil
import judging
from roads import Road
from scenario_facts import ALWAYS, RUNGS, Shop, View, class_of, quoted

MOST_KEPT = 3  # counter-examples of one run: making them small takes time


def targets_of(book):
    return {f"{c['class']}/{m}" if m else c["class"] for c in book["classes"] for m in c.get("modes") or [None]}


class Answerer:
    """Answers one ask by a view: first `need` says what has to be known, then `answer` reads the model."""

    def __init__(self, shop, view, ask):
        self.shop, self.view, self.ask = shop, view, ask
        self.at = civil.instant(ask["at"]) if "at" in ask else None
        self.edges = sorted(shop.edges)
        self.first = shop.zero + ALWAYS
        self.line = [self.first] + self.edges  # one instant of each stretch in which nothing changes

    def need(self):
        getattr(self, "need_" + self.ask["ask"])()

    def answer(self):
        return getattr(self, "answer_" + self.ask["ask"])()

    @property
    def people(self):
        return sorted(p["id"] for p in self.shop.scenario["people"])

    def named(self, x):
        self.view.ask("ask_names", self.view.name(x), at=self.at)

    def steps(self, person, x, instants):
        return [(t, self.view.rung(person, x, t)) for t in instants]

    # -- standing
    def all_gates(self):
        for b, book in self.shop.books.items():
            if not b.startswith("book"):
                continue
            for part in book["tiers"] + book["classes"]:
                lists = [part.get("gates", [])] + list(part.get("mode_gates", {}).values())
                for gate in (g for gates in lists for g in gates):
                    yield b, f"gate({b},{quoted(gate['id'])})", gate, part

    def on(self, part, z):
        """Whether a tier's or class's gates may be on z, so that only those are followed."""
        return "class" not in part or part["class"] == class_of(z)

    def possible(self, x):
        """The targets that x may stand for."""
        modes = {t for book in self.shop.books.values() for t in targets_of(book) if class_of(t) == x}
        return {x, class_of(x)} | modes

    def need_standing(self):
        p, x = self.ask["person"], self.ask["target"]
        self.named(x)
        for t in self.line + [self.at]:
            self.view.ask_rung(p, x, t)
        for _, g, _, part in self.all_gates():
            for z in self.possible(x):
                if self.on(part, z):
                    for t in self.line + [self.at]:
                        self.view.ask("follow", g, quoted(p), quoted(z), at=t)

    def gate_state(self, g, p, z, t):
        holds, strictly = (self.view.says("gate", g, quoted(p), quoted(z), style, at=t)
                           for style in ("lenient", "strict"))
        return "met" if strictly else "in_grace" if holds else "unmet"

    def answer_standing(self):
        p, x, t = self.ask["person"], self.ask["target"], self.at
        now = self.view.rung(p, x, t)
        since, until, following = self.around(lambda u: self.view.rung(p, x, u), t)
        stands = [z for z in self.possible(x) if self.view.says("for", quoted(x), quoted(z), at=t)]
        gates = []
        for b, g, gate, part in self.all_gates() if len(stands) == 1 else []:
            if self.view.says("book", b, at=t) and self.is_gate_of(gate, part, b, stands[0]):
                gates.append(self.gate(g, gate, p, stands[0], t))
        return {"standing": now, "since": since, "until": until, "next": following,
                "gates": sorted(gates, key=lambda g: g["id"])}

    def is_gate_of(self, gate, part, b, z):
        book = self.shop.books[b]
        tier = [c["tier"] for c in book["classes"] if c["class"] == class_of(z)][0]
        if "class" not in part:
            return part["tier"] == tier
        if part["class"] != class_of(z):
            return False
        return gate in part.get("gates", []) or gate in part.get("mode_gates", {}).get(z.split("/")[-1], [])

    def gate(self, g, gate, p, z, t):
        state = lambda u: self.gate_state(g, p, z, u)
        now, due, lapses = state(t), None, None
        if now != "unmet":
            lapses = self.around(lambda u: state(u) == "unmet", t)[1]
            since, changes, _ = self.around(state, t)
            due = changes if now == "met" else since
        return {"id": gate["id"], "for": gate["for"], "state": now, "due": due, "lapses": lapses}

    def around(self, value, t):
        """Since when, until when the value has been that at t, and what it is then."""
        now = value(t)
        since = None
        for u in reversed([u for u in self.line if u <= t]):
            if value(u) != now:
                break
            since = u
        until = next((u for u in self.line if u > t and value(u) != now), None)
        text = lambda u: None if u in (None, self.first) else civil.instant_text(u)
        return text(since), text(until), None if until is None else value(until)

    # -- over time
    def between(self):
        low, high = civil.instant(self.ask["from"]), civil.instant(self.ask["to"])
        return low, [t for t in self.edges if low < t <= high]

    def need_timeline(self):
        low, later = self.between()
        for t in [low] + later:
            self.view.ask_rung(self.ask["person"], self.ask["target"], t)

    def answer_timeline(self):
        low, later = self.between()
        steps = []
        for t, rung in self.steps(self.ask["person"], self.ask["target"], [low] + later):
            if not steps or steps[-1]["standing"] != rung:
                steps.append({"at": civil.instant_text(t), "standing": rung})
        return {"steps": steps}

    def all_targets(self, books):
        return sorted({t for b in books for t in targets_of(self.shop.books[b])})

    def need_drops(self):
        low, later = self.between()
        for t in [low] + later:
            for p in self.people:
                for x in self.all_targets(b for b in self.shop.books if b.startswith("book")):
                    self.view.ask_rung(p, x, t)

    def answer_drops(self):
        low, later = self.between()
        known = [b for b in self.shop.books if f"known_book({b})" in self.view.said]
        drops = []
        for p in self.people:
            for x in self.all_targets(known):
                steps = self.steps(p, x, [low] + later)
                for (_, before), (t, after) in zip(steps, steps[1:]):
                    if RUNGS.index(after) < RUNGS.index(before):
                        drops.append({"at": civil.instant_text(t), "person": p, "target": x, "before": before,
                                      "after": after})
        return {"drops": sorted(drops, key=lambda d: (d["at"], d["person"], d["target"]))}

    # -- at an instant
    def need_who(self):
        for p in self.people:
            self.view.ask_rung(p, self.ask["target"], self.at)

    def answer_who(self):
        least = RUNGS.index(self.ask["at_least"])
        return {"people": [p for p in self.people
                           if RUNGS.index(self.view.rung(p, self.ask["target"], self.at)) >= least]}

    def need_assessors(self):
        for p in self.people:
            self.view.ask("ask_assess", quoted(p), self.view.name(self.ask["target"]), at=self.at)

    def answer_assessors(self):
        return {"people": [p for p in self.people
                           if self.view.says("assesses", quoted(p), quoted(self.ask["target"]), at=self.at)]}

    def machine(self):
        c = next(m["class"] for m in self.shop.scenario["machines"] if m["id"] == self.ask["machine"])
        return c, c + "/" + self.ask["mode"] if "mode" in self.ask else c

    def need_may_start(self):
        c, x = self.machine()
        self.view.ask("ask_condition", self.view.name(c), at=self.at)
        self.view.ask("ask_lock", quoted(self.ask["machine"]), at=self.at)
        for p in self.people:
            self.view.ask_rung(p, x, self.at)
            self.view.ask("ask_supervise", quoted(p), self.view.name(x), at=self.at)

    def answer_may_start(self):
        c, x = self.machine()
        says, at = self.view.says, self.at
        others = set(self.ask["present"]) - {self.ask["person"]}
        rung = lambda p: RUNGS.index(self.view.rung(p, x, at))
        because = set()
        if says("locked", quoted(self.ask["machine"]), at=at):
            because.add("locked_out")
        if says("condition", quoted(c), "staffed", at=at) and not self.ask["staffed"]:
            because.add("staffed")
        for count in range(1, 5):
            for least in range(3):
                if says("condition", quoted(c), f"buddy({count},{least})", at=at):
                    if sum(rung(p) >= least for p in others) < count:
                        because.add("buddy")
        if rung(self.ask["person"]) == 0:
            because.add("barred")
        if rung(self.ask["person"]) == 1:
            free = others - set(self.ask.get("busy", []))
            if not any(says("supervises", quoted(p), quoted(x), at=at) for p in sorted(free)):
                because.add("no_supervisor")
        return {"may": not because, "because": sorted(because)}

    # -- what would differ: `view` is how it is, `other` how it would be
    other = None

    def need_rests_on(self):
        for view in (self.view, self.other):
            for x in self.all_targets(self.shop.books):
                view.ask("ask_names", view.name(x), at=self.at)
                for p in self.people:
                    view.ask_rung(p, x, self.at)

    need_what_if = need_rests_on

    def answer_rests_on(self):
        books = {b for view in (self.view, self.other) for b in self.shop.books if view.says("book", b, at=self.at)}
        changes = []
        for p in self.people:
            for x in self.all_targets(books):
                before, after = (v.rung(p, x, self.at) for v in (self.view, self.other))
                if before != after:
                    changes.append({"person": p, "target": x, "before": before, "after": after})
        return {"changes": changes}

    answer_what_if = answer_rests_on


def judge(scenario, keep_facts=None):
    """The answers to a scenario's asks by clingo, and how many single decisions they took."""
    supposed = [(a["rulebook"], a["at"]) for a in scenario["asks"] if a["ask"] == "what_if"]
    shop = Shop(scenario, supposed)
    views, answerers, proposals = {}, [], 0

    def view(known, without=None, book=None):
        key = (known, without, book)
        if key not in views:
            views[key] = View(shop, known, without, book)
        return views[key]

    for ask in scenario["asks"]:
        known = civil.instant(ask["known"]) if "known" in ask else None
        answerer = Answerer(shop, view(known), ask)
        if ask["ask"] == "rests_on":
            answerer.other = view(known, without=ask["record"])
        if ask["ask"] == "what_if":
            answerer.other = view(known, book=f"supposed({proposals})")
            proposals += 1
        answerer.need()
        answerers.append(answerer)
    for i, one in enumerate(views.values()):
        one.solve(judging.HERE, None if keep_facts is None else keep_facts.with_suffix(f".{i}.lp"))
    answers = [a.answer() for a in answerers]
    return answers, sum(v.count for v in views.values())


def crowd(scenario, rng):
    """Moves some records to the second of another of the same person, or next to it: what comes first matters there."""
    moved = ("document", "lesson", "quiz", "checkout", "supervised", "use", "incident", "change", "publish")
    for r in scenario["records"]:
        same = [o for o in scenario["records"] if o is not r and o.get("person") == r.get("person", o.get("person"))]
        if r["kind"] in moved and same and rng.random() < 0.3:
            r["at"] = civil.instant_text(civil.instant(rng.choice(same)["at"]) + rng.choice([-1, 0, 0, 1]))


class Asker:
    """Thinks of asks: near the edges of things, or anywhere."""

    def __init__(self, scenario, other, rng):
        self.scenario, self.rng = scenario, rng
        shop = Shop(scenario)
        self.edges = sorted(shop.edges)
        self.targets = sorted({t for b in scenario["rulebooks"] for t in targets_of(b)})
        self.people = [p["id"] for p in scenario["people"]]
        self.proposal = {k: other["rulebooks"][0][k] for k in ("tiers", "classes")}

    def instant(self):
        if self.rng.random() < 0.7:
            return self.rng.choice(self.edges) + self.rng.choice([-1, 0, 0, 1])
        return self.edges[0] + self.rng.randrange(800 * civil.DAY)

    def at(self):
        return civil.instant_text(self.instant())

    def window(self, most):
        """From one instant to another, with about `most` edges between."""
        i = self.rng.randrange(len(self.edges))
        j = min(len(self.edges) - 1, i + self.rng.randrange(most))
        return {"from": civil.instant_text(self.edges[i] - self.rng.choice([0, 1])),
                "to": civil.instant_text(self.edges[j])}

    def about(self):
        return {"person": self.rng.choice(self.people), "target": self.rng.choice(self.targets)}

    def asks(self):
        rng, kinds = self.rng, []
        kinds += [dict(ask="standing", **self.about(), at=self.at()) for _ in range(2)]
        whole = {"from": civil.instant_text(self.edges[0] - 1), "to": civil.instant_text(self.edges[-1])}
        kinds += [dict(ask="timeline", person=p, target=x, **whole) for p in self.people for x in self.targets]
        kinds += [dict(ask="who", target=rng.choice(self.targets), at=self.at(),
                       at_least=rng.choice(RUNGS[1:])) for _ in range(40)]
        kinds += [dict(ask="assessors", target=rng.choice(self.targets), at=self.at()) for _ in range(5)]
        kinds += [dict(ask="drops", **self.window(30))]
        kinds += [self.may_start() for _ in range(4 if self.scenario["machines"] else 0)]
        if self.scenario["records"]:
            kinds += [dict(ask="rests_on", record=rng.choice(self.scenario["records"])["id"], at=self.at())]
        if rng.random() < 0.5:
            kinds += [dict(ask="what_if", rulebook=self.proposal, at=self.at())]
        if rng.random() < 0.3:
            known = self.at()
            kinds = [dict(a, known=known) for a in kinds]
        return kinds

    def may_start(self):
        machine = self.rng.choice(self.scenario["machines"])
        modes = [t.split("/")[1] for t in self.targets if t.startswith(machine["class"] + "/")]
        ask = {"ask": "may_start", "person": self.rng.choice(self.people), "machine": machine["id"], "at": self.at(),
               "staffed": self.rng.random() < 0.5, "present": self.rng.choices(self.people, k=2),
               "busy": self.rng.choices(self.people, k=1)}
        return dict(ask, mode=self.rng.choice(modes)) if modes and self.rng.random() < 0.7 else ask


def replayed(folder):
    """Holds clingo to the answers written down beside the scenarios of a folder: (asks, those that differ)."""
    asks, differing = 0, []
    for path in sorted(folder.glob("*.json")):
        answers = path.with_suffix("").with_suffix(".answers.jsonl")
        if not answers.exists():
            continue
        scenario = json.loads(path.read_text())
        both = [(a, json.loads(line)) for a, line in zip(scenario["asks"], answers.read_text().splitlines(), strict=True)]
        both = [(ask, right) for ask, right in both if ask["ask"] != "route"]
        said = judge(dict(scenario, asks=[ask for ask, _ in both]))[0] if both else []
        asks += len(both)
        differing += [f"{path}: {json.dumps(ask)}" for (ask, right), one in zip(both, said) if one != right]
    return asks, differing


def main():
    words = judging.words_for_clingo(__doc__, most=30)

    if words.file:
        for answer in judge(json.loads(words.file.read_text()))[0]:
            print(json.dumps(answer))
        return

    replays = [replayed(folder) for folder in (judging.HERE / "found", judging.HERE.parent / "core/scenario/examples")]
    wrong = [line for _, lines in replays for line in lines]
    print(f"clingo: {sum(n for n, _ in replays)} answers written down replayed; {len(wrong)} differ", *wrong, sep="\n  ")

    rng = random.Random(words.seed)
    # Half of the shops have everything in them, half have people who get somewhere.
    scenarios = judging.shops(words.program, words.seed, words.worlds // 2, words.most)
    scenarios += [Road(rng).scenario(2 * words.most) for _ in range(words.worlds - len(scenarios))]
    for i, scenario in enumerate(scenarios):
        crowd(scenario, rng)
        scenario["asks"] = Asker(scenario, scenarios[i - 1], rng).asks()
    asks = instants = differing = 0
    kinds = {}
    for i, (scenario, engine) in enumerate(zip(scenarios, judging.engine(words.program, scenarios))):
        answers, count = judge(scenario)
        instants += count
        for ask, ours, theirs in zip(scenario["asks"], engine, answers):
            asks += 1
            kinds[ask["ask"]] = kinds.get(ask["ask"], 0) + 1
            if ours != theirs:
                differing += 1
                print(f"world {i} of seed {words.seed}: {json.dumps(ask)}\n  engine {json.dumps(ours)}\n"
                      f"  clingo {json.dumps(theirs)}", file=sys.stderr)
                if differing <= MOST_KEPT:
                    judging.keep(words.keep, f"clingo-{words.seed}-{asks}", words.program, scenario, ask,
                                 lambda changed: judge(changed)[0][0])
    print(f"clingo: {len(scenarios)} worlds, {asks} asks ({', '.join(f'{n} {k}' for k, n in sorted(kinds.items()))}), "
          f"{instants} single decisions at an instant compared; {differing} asks differ")
    sys.exit(1 if differing or wrong else 0)


if __name__ == "__main__":
    main()
