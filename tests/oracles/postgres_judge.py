#!/usr/bin/env python3
"""Holds the engine against PostgreSQL: timelines as unions and intersections of ranges, and the civil calendar.

usage: postgres_judge.py ORACLE_WORLDS [--seed N] [--worlds N] [--ends N] [--keep FOLDER]
"""
import argparse
import datetime
import json
import pathlib
import random
import subprocess
import sys

import civil
import cluster
import judging

# Clocks of every habit: midnight skipped or twice, half hours, a day left out, a quarter of an hour off, none at all.
ZONES = ["UTC", "America/Chicago", "America/Sao_Paulo", "America/Asuncion", "America/Havana", "America/Santiago",
         "America/St_Johns", "Africa/Cairo", "Africa/Casablanca", "Asia/Amman", "Asia/Beirut", "Asia/Gaza", "Asia/Tehran",
         "Asia/Kathmandu", "Atlantic/Azores", "Australia/Lord_Howe", "Europe/Dublin", "Europe/Lisbon", "Pacific/Apia",
         "Pacific/Chatham", "Pacific/Kiritimati", "Pacific/Kwajalein", "America/Scoresbysund", "Antarctica/Troll"]
ZONES += 3 * ["America/Havana", "Atlantic/Azores", "America/Sao_Paulo"]  # midnight twice, or not at all
FIRST = datetime.date(1990, 1, 1)
MOST_KEPT = 3  # counter-examples of one run: making them small takes time


class Maker:
    """Small shops of what timelines.sql covers."""

    def __init__(self, rng):
        self.rng = rng
        self.zone = rng.choice(ZONES)
        self.first = FIRST + datetime.timedelta(days=rng.randrange(40000))
        self.changes = self.clock_changes()
        self.used = []

    def clock_changes(self):
        """Days on which the clock was changed, within the years looked at."""
        days = [self.first + datetime.timedelta(days=i) for i in range(700)]
        noon = lambda d: (d - civil.EPOCH).days * civil.DAY + civil.DAY // 2
        return [b for a, b in zip(days, days[1:])
                if civil.offset(self.zone, noon(a)) != civil.offset(self.zone, noon(b))]

    def one_in(self, n):
        return self.rng.randrange(n) == 0

    def day(self):
        if self.changes and self.one_in(3):
            return self.rng.choice(self.changes) + datetime.timedelta(days=self.rng.choice([-1, 0, 1]))
        return self.first + datetime.timedelta(days=self.rng.randrange(600))

    def instant(self):
        if self.used and self.one_in(4):  # at the second of another record, or next to it: what comes first matters
            return self.rng.choice(self.used) + self.rng.choice([-1, 0, 0, 1])
        d = self.day()
        if self.one_in(3):
            return civil.start(self.zone, d) + self.rng.choice([-1, 0, 0, 1])
        return (d - civil.EPOCH).days * civil.DAY + self.rng.randrange(civil.DAY)

    def period(self):
        unit = self.rng.choice(["days", "months", "calendar_months"])
        most = {"days": 250, "months": 9, "calendar_months": 5}[unit]
        if self.one_in(25):
            most = {"days": 36525, "months": 1200, "calendar_months": 1200}[unit]
        return {unit: 1 + self.rng.randrange(most)}

    def until(self):
        return {"until": self.day().isoformat()} if self.one_in(2) else {}

    def need(self, depth=0):
        kinds = ["document", "lesson", "quiz", "checkout", "checkout", "all_of", "any_of", "some_of"]
        kind = self.rng.choice(kinds if depth < 2 else kinds[:5])
        if kind.endswith("_of"):
            of = [self.need(depth + 1) for _ in range(1 + self.rng.randrange(3))]
            return {"kind": kind, "of": of} | ({"count": 1 + self.rng.randrange(len(of))} if kind == "some_of" else {})
        need = {"kind": kind, kind: self.item()}
        if kind == "quiz":
            need["pass_percent"] = self.rng.choice([70, 80, 90])
        if kind != "document":
            if self.one_in(2):
                need["revision"] = self.rng.choice(["current", "any"])
            if self.one_in(2):
                need["changeover"] = self.period()
        if kind == "checkout":
            if self.one_in(2):
                need["renew_after_severity"] = 1 + self.rng.randrange(3)
            if self.one_in(3):
                need["renew_after_change"] = True
        if not self.one_in(4):
            need["valid"] = self.period()
            if self.one_in(2):
                need["grace"] = self.period()
        return need

    def item(self):
        return "item" + str(self.rng.randrange(2))

    def gates(self, most):
        self.gate = getattr(self, "gate", 0)
        gates = []
        for _ in range(self.rng.randrange(most + 1)):
            self.gate += 1
            gates.append({"id": f"g{self.gate}", "for": self.rng.choice(["supervised", "independent"]), "need": self.need()})
        return gates

    def book(self, version):
        starts = civil.instant_text(self.instant() if version > 1 else civil.start(self.zone, self.first))
        classes = [{"class": c, "tier": 1 + self.rng.randrange(2), "gates": self.gates(1)} for c in ("lathe", "press")]
        if version > 1 and self.one_in(5):
            classes.pop()
        return {"version": version, "effective_from": starts, "recorded": starts,
                "tiers": [{"tier": t, "gates": self.gates(1)} for t in (1, 2)], "classes": classes}

    def scope(self):
        return self.rng.choice(["all", {"target": "lathe"}, {"target": "press"}])

    def record(self, i, earlier):
        rng = self.rng
        at = self.instant()
        kind = rng.choice(["document", "document", "lesson", "lesson", "quiz", "quiz", "checkout", "checkout", "checkout",
                           "checkout", "publish", "incident", "change", "suspend", "appoint", "end"])
        r = {"id": f"r{i}", "kind": kind, "person": rng.choice(["p1", "p2"])}
        if kind == "document":
            r |= {"document": self.item()} | self.until()
        elif kind == "lesson":
            r |= {"lesson": self.item(), "revision": rng.randrange(3)}
        elif kind == "quiz":
            r |= {"quiz": self.item(), "revision": rng.randrange(3), "correct": rng.randrange(6, 10), "total": 10,
                  "critical_missed": rng.choice([0, 0, 0, 1])}
        elif kind == "checkout":
            r |= {"checkout": self.item(), "revision": rng.randrange(3), "assessor": rng.choice(["p1", "p2", "p3", "p3", "p3", "p3"]),
                  "outcome": rng.choice(["passed"] * 5 + ["failed", "stopped"])}
        elif kind == "publish":
            del r["person"]
            r |= {"item": self.item(), "revision": rng.randrange(3)}
        elif kind == "incident":
            r |= {"target": rng.choice(["lathe", "press"]), "severity": 1 + rng.randrange(4),
                  "part": rng.choice(["operating", "operating", "hurt"])}
        elif kind == "change":
            del r["person"]
            r |= {"target": rng.choice(["lathe", "press"])}
        elif kind == "suspend":
            r |= {"scope": self.scope()} | self.until()
        elif kind == "appoint":
            r |= {"person": rng.choice(["p2", "p3"]), "scope": self.scope(), "founding": True, "until": self.day().isoformat()}
        else:
            ended = [e for e in earlier if e["kind"] in ("suspend", "appoint")]
            if not ended:
                return None
            one = rng.choice(ended)
            at = max(at, civil.instant(one["at"]))
            r = {"id": f"r{i}"} | ({"kind": "reinstate", "suspension": one["id"]} if one["kind"] == "suspend" else
                                   {"kind": "dismiss", "appointment": one["id"]})
        self.used.append(at)
        r |= {"at": civil.instant_text(at), "recorded": civil.instant_text(at)}
        if self.one_in(12):
            r["voided"] = civil.instant_text(at + civil.DAY)
        return r

    def scenario(self):
        records = [{"id": "founder", "kind": "appoint", "person": "p3", "scope": "all", "founding": True,
                    "until": (self.first + datetime.timedelta(days=500)).isoformat(),
                    "at": civil.instant_text(civil.start(self.zone, self.first)),
                    "recorded": civil.instant_text(civil.start(self.zone, self.first))}]
        for i in range(self.rng.randrange(20, 140)):
            made = self.record(i, records)
            records += [made] if made else []
        whole = {"from": civil.instant_text(civil.start(self.zone, self.first) - civil.DAY), "to": "2320-01-01T00:00:00Z"}
        asks = [{"ask": "timeline", "person": p, "target": c} | whole for p in ("p1", "p2") for c in ("lathe", "press")]
        return {"zone": self.zone, "people": [{"id": p} for p in ("p1", "p2", "p3")],
                "rulebooks": [self.book(1 + i) for i in range(1 + self.rng.randrange(3))], "records": records, "asks": asks}


def copied(table, columns, rows):
    """COPY from the script's own text."""
    escape = lambda value: str(value).replace("\\", "\\\\").replace("\t", "\\t").replace("\n", "\\n")
    lines = "".join("\t".join(map(escape, row)) + "\n" for row in rows)
    return f"COPY {table} ({columns}) FROM STDIN;\n{lines}\\.\n"


def timelines(script, scenarios):
    """The answers to every scenario's asks, by the server."""
    said = script("TRUNCATE world, entry, book, gate, answer;\n"
                  + copied("world", "w, body", ((i, json.dumps(s)) for i, s in enumerate(scenarios)))
                  + (judging.HERE / "timelines_run.sql").read_text()
                  + "SELECT w, ask, body FROM answer ORDER BY w, ask;\n")
    answers = [[] for _ in scenarios]
    for line in said.splitlines():
        w, _, body = line.split("|", 2)
        answers[int(w)].append(json.loads(body))
    return answers


def starts(script):
    """How often the server's short way to a day's start is not the first instant of that day."""
    return script("SELECT count(*), count(*) FILTER (WHERE t <> d::timestamp AT TIME ZONE zone), "
                  "min(zone || ' ' || d) FILTER (WHERE t <> d::timestamp AT TIME ZONE zone) FROM started;\n").strip().split("|")


def ends(script, program, seed, count):
    """How many ends of periods were compared, and those that differ."""
    lines = subprocess.run([program, "ends", str(seed), str(count)], capture_output=True, text=True, check=True).stdout
    said = script("CREATE TABLE period (d date, unit text, n int, last date);\n"
                  + copied("period", "d, unit, n, last", (line.split() for line in lines.splitlines()))
                  + "SELECT count(*) FROM period;\n"
                    "SELECT d, unit, n, last, right_one FROM period,"
                    " LATERAL (SELECT last_day(d, jsonb_build_object(unit, n)) right_one) r"
                    " WHERE last <> right_one ORDER BY n, d LIMIT 5;\n").splitlines()
    return int(said[0]), said[1:]


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("program")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--worlds", type=int, default=400)
    parser.add_argument("--ends", type=int, default=200_000)
    parser.add_argument("--keep", type=pathlib.Path, default=pathlib.Path("oracle-found"))
    words = parser.parse_args()

    rng = random.Random(words.seed)
    scenarios = [Maker(rng).scenario() for _ in range(words.worlds)]
    ours = judging.engine(words.program, scenarios)
    with cluster.server() as script:
        script((judging.HERE / "timelines.sql").read_text())
        theirs = timelines(script, scenarios)
        days, other, example = starts(script)
        compared, wrong = ends(script, words.program, words.seed, words.ends)
        differing = steps = asks = 0
        for i, scenario in enumerate(scenarios):
            for ask, a, b in zip(scenario["asks"], ours[i], theirs[i], strict=True):
                asks += 1
                steps += len(b["steps"])
                if a == b:
                    continue
                differing += 1
                print(f"world {i} of seed {words.seed}: {json.dumps(ask)}\n  engine   {json.dumps(a)}\n"
                      f"  postgres {json.dumps(b)}", file=sys.stderr)
                if differing <= MOST_KEPT:
                    judging.keep(words.keep, f"postgres-{words.seed}-{asks}", words.program, scenario, ask,
                                 lambda changed: timelines(script, [changed])[0][0])
    for line in wrong:
        print(f"period, engine's end, postgres's end: {line}", file=sys.stderr)
    print(f"postgres: {len(scenarios)} worlds, {asks} timelines of {steps} steps compared; {differing} differ\n"
          f"postgres: {compared} ends of periods compared; {len(wrong)} (of the first 5) differ\n"
          f"postgres: of {days} days' starts the server's own reading of midnight is another instant at {other}"
          f"{' (' + example + ')' if example else ''}; judged by first principles")
    sys.exit(1 if differing or wrong else 0)


if __name__ == "__main__":
    main()
