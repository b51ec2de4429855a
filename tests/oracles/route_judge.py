#!/usr/bin/env python3
"""Holds the engine's routes against clingo: how soon a rung can be reached, and by how few records.

usage: route_judge.py ORACLE_WORLDS [--seed N] [--worlds N] [--most RECORDS] [--keep FOLDER] [--file SCENARIO]
"""
import json
import random
import subprocess
import sys

import civil
import judging
from clingo_judge import targets_of
from roads import Road
from scenario_facts import RUNGS, Shop, View, quoted

MOST_KEPT = 3
MOST_INSTANTS = 60  # more candidate instants than these are left alone: clingo would take too long
SECONDS = 10        # the same for the search itself
EARLY = "1990-01-01T00:00:00Z"  # recorded before anything else: a step is known, whatever `known` says
UNPROVED = "no more than 12 steps, and yet not said to be the fewest"
KINDS = ["document", "lesson", "quiz", "checkout", "supervised", "use"]


class TooBig(Exception):
    """What clingo would have to search is more than a test should wait for."""


def needs_in(scenario):
    """Every requirement in every rulebook, parts and what is given included."""
    def walk(need):
        yield need
        for part in need.get("of", []) + need.get("given", []):
            yield from walk(part)
    for book in scenario["rulebooks"]:
        for part in book["tiers"] + book["classes"]:
            for gates in [part.get("gates", [])] + list(part.get("mode_gates", {}).values()):
                for gate in gates:
                    yield from walk(gate["need"])


class Candidates:
    """The records that a route may be made of."""

    def __init__(self, scenario, ask, until):
        self.scenario, self.ask = scenario, ask
        self.at = civil.instant(ask["at"])
        self.known = civil.instant(ask["known"]) if "known" in ask else None
        self.needs = list(needs_in(scenario))
        self.instants = self.find_instants(until)

    def find_instants(self, until):
        """Those at which something may begin to be possible, or be possible for the last time."""
        edges = set(Shop(self.scenario).edges)
        for r in self.scenario["records"]:
            for need in self.needs:
                if r["kind"] == "quiz" and need.get("quiz") == r["quiz"]:
                    for hours in (need.get("retry", {}).get(key) for key in ("wait_hours", "in_hours")):
                        if hours:
                            edges.add(civil.instant(r["at"]) + hours * civil.HOUR)
        last = max(edges | {self.at}) if until is None else until
        edges = {e for e in edges if self.at <= e <= last + 1}
        near = {e + d for e in edges for d in (-1, 0, 1)} | {self.at, self.at + 1, self.at + 2, last, last - 1}
        instants = sorted(t for t in near if self.at <= t <= last + 2)
        if len(instants) > MOST_INSTANTS:
            raise TooBig
        return instants

    def published(self, item, t):
        """The greatest revision of the item that was published by t."""
        def counts(r):
            if self.known is None:
                exists = "voided" not in r
            else:
                exists = civil.instant(r["recorded"]) <= self.known and not (
                    "voided" in r and civil.instant(r["voided"]) <= self.known)
            return r["kind"] == "publish" and r["item"] == item and exists and civil.instant(r["at"]) <= t
        return max([r["revision"] for r in self.scenario["records"] if counts(r)], default=0)

    def names(self, kind):
        return sorted({n[kind] for n in self.needs if n["kind"] == kind})

    def copies(self):
        """How often one and the same session or use may be needed."""
        return max([n.get("sessions", 1) for n in self.needs if n["kind"] == "practice"]
                   + [n["count"] for n in self.needs if n["kind"] == "recent_use"] + [1])

    def at_instant(self, t):
        p = self.ask["person"]
        others = sorted(q["id"] for q in self.scenario["people"] if q["id"] != p)
        for name in self.names("document"):
            yield {"kind": "document", "document": name}
        for name in self.names("lesson"):
            yield {"kind": "lesson", "lesson": name, "revision": self.published(name, t)}
        for name in self.names("quiz"):
            yield {"kind": "quiz", "quiz": name, "revision": self.published(name, t), "correct": 1, "total": 1,
                   "critical_missed": 0}
        for name in self.names("checkout"):
            for other in others:
                yield {"kind": "checkout", "checkout": name, "revision": self.published(name, t), "outcome": "passed",
                       "assessor": other}
        places = sorted({x for b in self.scenario["rulebooks"] for x in targets_of(b)}
                        | {c["class"] for b in self.scenario["rulebooks"] for c in b["classes"]})
        kinds = {n["kind"] for n in self.needs}
        for _ in range(self.copies()):
            for x in places:
                if kinds & {"practice", "recent_use"}:
                    for other in others:
                        yield {"kind": "supervised", "target": x, "minutes": 1440, "supervisor": other}
                if "recent_use" in kinds:
                    yield {"kind": "use", "target": x}

    def records(self):
        """(record, the record that it repeats or None)."""
        found, before = [], {}
        for t in self.instants:
            for one in self.at_instant(t):
                record = {"id": f"step-{len(found):04}", "at": civil.instant_text(t), "recorded": EARLY,
                          "person": self.ask["person"]} | one
                like = json.dumps({k: v for k, v in record.items() if k != "id"}, sort_keys=True)
                found.append((record, before.get(like)))
                before[like] = record["id"]
        return found


def quickest(scenario, ask, until):
    """(reaches or None, the fewest steps) by clingo; `until` is as far as has to be looked, or None."""
    candidates = Candidates(scenario, ask, until)
    records = candidates.records()
    whole = dict(scenario, records=scenario["records"] + [r for r, _ in records])
    shop = Shop(whole)
    view = View(shop, candidates.known)
    facts = [f"candidate({quoted(r['id'])})." for r, _ in records]
    facts += [f"repeats({quoted(r['id'])},{quoted(like)})." for r, like in records if like]
    facts += [f"route({quoted(ask['person'])},{view.name(ask['target'])},{RUNGS.index(ask['to'])})."]
    facts += [f"goal_at({shop.number(t)})." for t in candidates.instants]
    moments = shop.moments | shop.edges | set(candidates.instants)
    text = "\n".join(shop.facts + sorted(view.facts) + facts + [f"moment({shop.number(t)})." for t in sorted(moments)])
    files = [str(judging.HERE / name) for name in ("decisions.lp", "route.lp")]
    run = subprocess.run(["clingo", "--outf=2", f"--time-limit={SECONDS}", *files, "-"], input=text, text=True,
                         capture_output=True)
    found = json.loads(run.stdout)
    if "error" in run.stderr or found["Result"] == "UNKNOWN":
        raise TooBig if "error" not in run.stderr else RuntimeError(run.stderr[:2000])
    if found["Result"] == "UNSATISFIABLE":
        return None, 0
    if found["Result"] != "OPTIMUM FOUND":
        raise TooBig
    said = found["Call"][0]["Witnesses"][-1]["Value"]
    goal = next(int(s[5:-1]) for s in said if s.startswith("goal("))
    return goal + shop.zero, sum(s.startswith("taken(") for s in said)


def stands(scenario, ask, steps, at):
    """Whether with these steps the person would be at least on the rung, by clingo."""
    whole = dict(scenario, records=scenario["records"] + [dict(s, recorded=EARLY) for s in steps])
    view = View(Shop(whole), civil.instant(ask["known"]) if "known" in ask else None)
    view.ask_rung(ask["person"], ask["target"], at)
    return RUNGS.index(view.solve(judging.HERE).rung(ask["person"], ask["target"], at)) >= RUNGS.index(ask["to"])


def mistakes(scenario, ask, answer):
    """What is wrong with the engine's answer, by clingo: a list of sentences."""
    until = None if answer["reaches"] is None else civil.instant(answer["reaches"])
    steps, wrong = answer["steps"], []
    best, fewest = quickest(scenario, ask, until)
    if best != until:
        return [f"reaches {answer['reaches']}, clingo {None if best is None else civil.instant_text(best)} "
                f"in {fewest} steps"]
    if until is None:
        return ["no way, but steps"] if steps or not answer["shortest"] else []
    if answer["shortest"] and len(steps) != fewest or len(steps) < fewest:
        wrong.append(f"{len(steps)} steps called {'the fewest' if answer['shortest'] else 'some'}, clingo {fewest}")
    if len(steps) <= 12 and not answer["shortest"]:
        wrong.append(UNPROVED)
    order = [(s["at"], (KINDS[:3] + KINDS[4:] + ["checkout"]).index(s["kind"])) for s in steps]
    if order != sorted(order) or [s["id"] for s in steps] != [f"step-{i:02}" for i in range(1, len(steps) + 1)]:
        wrong.append("steps out of order or wrongly numbered")
    for s in steps:
        if s["person"] != ask["person"] or not ask["at"] <= s["at"] <= answer["reaches"] or s["recorded"] != s["at"]:
            wrong.append(f"{s['id']} is somebody else's or at another time")
    if not stands(scenario, ask, steps, until):
        wrong.append("the steps do not reach it")
    if not answer["shortest"]:
        for s in steps:
            if stands(scenario, ask, [other for other in steps if other is not s], until):
                wrong.append(f"{s['id']} can be left out")
    return wrong


def right(scenario):
    """What clingo holds right, as files in found/ say it."""
    try:
        reaches, fewest = quickest(scenario, scenario["asks"][0], None)
    except TooBig:
        return {}
    found = {"reaches": None if reaches is None else civil.instant_text(reaches), "fewest": fewest}
    return found | ({"shortest": True} if fewest <= 12 else {})


def wrong_about(scenario, ours):
    try:
        return bool(mistakes(scenario, scenario["asks"][0], ours))
    except TooBig:
        return False


def possible_asks(scenario, rng, count):
    """Routes to ask for: early, while founders are there, as late as halfway."""
    edges = sorted(Shop(scenario).edges)
    targets = sorted({x for b in scenario["rulebooks"] for x in targets_of(b)})
    for _ in range(count):
        at = rng.choice(edges[:len(edges) // 2 + 1]) + rng.choice([-1, 0, 1])
        ask = {"ask": "route", "person": rng.choice(scenario["people"])["id"], "target": rng.choice(targets),
               "to": rng.choice(RUNGS[1:]), "at": civil.instant_text(at)}
        if rng.random() < 0.15:
            ask["known"] = civil.instant_text(rng.choice(edges))
        yield ask


def alone(scenario, ask):
    """The scenario without later records that the person witnesses: a route counts on no effect that it has on others,
    which clingo would see."""
    witness = lambda r: ask["person"] in (r.get("assessor"), r.get("supervisor"))
    return dict(scenario, asks=[ask],
                records=[r for r in scenario["records"] if r["at"] < ask["at"] or not witness(r)])


def with_routes(program, scenarios, rng):
    """Of each scenario the first route thought of that is not at its end already, or else the last one."""
    tried = [[alone(s, ask) for ask in possible_asks(s, rng, 8)] for s in scenarios]
    now = [dict(s, asks=[{k: v for k, v in s["asks"][0].items() if k != "to"} | {"ask": "standing"}])
           for several in tried for s in several]
    rungs = iter(RUNGS.index(answer[0]["standing"]) for answer in judging.engine(program, now))
    for several in tried:
        open_ones = [s for s in several if next(rungs) < RUNGS.index(s["asks"][0]["to"])]
        yield (open_ones + several[-1:])[0]


def main():
    words = judging.words_for_clingo(__doc__, most=12)
    if words.file:
        scenario = json.loads(words.file.read_text())
        print(quickest(scenario, scenario["asks"][0], None))
        return

    rng = random.Random(words.seed)
    # A third of the shops have everything in them, in the others there is a road to go.
    shops = judging.shops(words.program, words.seed, words.worlds // 3, words.most)
    scenarios = list(with_routes(words.program, shops, rng))
    scenarios += [Road(rng).scenario() for _ in range(words.worlds - len(scenarios))]
    differing = compared = unproved = too_big = steps = later = never = 0
    for i, (scenario, (answer,)) in enumerate(zip(scenarios, judging.engine(words.program, scenarios))):
        ask = scenario["asks"][0]
        try:
            wrong = mistakes(scenario, ask, answer)
        except TooBig:
            too_big += 1
            continue
        compared += 1
        steps += len(answer["steps"])
        never += answer["reaches"] is None
        later += answer["reaches"] not in (None, ask["at"])
        if wrong == [UNPROVED]:  # the engine's time for that runs by the clock, so a busy machine gets two more chances
            again = [judging.engine(words.program, [scenario])[0][0] for _ in range(2)]
            if any(a["shortest"] for a in again):
                unproved += 1
                continue
        if wrong:
            differing += 1
            print(f"world {i} of seed {words.seed}: {json.dumps(ask)}\n  engine {json.dumps(answer)}\n  "
                  + "\n  ".join(wrong), file=sys.stderr)
            if differing <= MOST_KEPT:
                judging.keep(words.keep, f"route-{words.seed}-{i}", words.program, scenario, ask, right, wrong_about)
    print(f"clingo: {compared} routes of {steps} steps compared, {later} that have to wait and {never} that do not exist; "
          f"{differing} differ; {unproved} were proved the shortest only when asked again; {too_big} were too big to search")
    sys.exit(1 if differing else 0)


if __name__ == "__main__":
    main()
