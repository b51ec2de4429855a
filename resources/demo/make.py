#!/usr/bin/env python3
"""Writes the demo shop's people.csv, history.csv, machines.csv, hours.csv and bookings.csv beside itself.

Nothing here is anybody real. Everybody in names.csv comes in now and then, from the first day of the shop to
the demo day, does the next thing that the rulebook asks of them, and uses what they may. A few have their
story written out in told.py. The same run always writes the same files.

What the rulebook asks is worked out here roughly, only so that people do sensible things: what anybody may do
is decided by the program, from the records alone.
"""
import calendar
import csv
import json
import random
import sys
from datetime import date, datetime, time, timedelta
from pathlib import Path

sys.dont_write_bytecode = True
HERE = Path(__file__).parent
FOUNDED, FIRST, LAST = date(2023, 11, 1), date(2023, 11, 4), date(2026, 11, 24)
COLUMNS = ("date kind number what revision result critical minutes severity part by until ref ends restriction "
           "struck_out reason note").split()

# Who can assess what, from when to when; the first six by a founding appointment at the start as well.
FOUNDERS_UNTIL = date(2024, 12, 31)
ASSESSORS = {
    "0007": ["tier 1", "tier 2", "tier 3"], "0011": ["tier 1", "tier 2", "jointer-planer"],
    "0003": ["tier 4", "metal lathe", "milling machine"], "0019": ["tier 4", "metal lathe", "milling machine"],
    "0001": ["tier 1", "shaper"], "0015": ["tier 2", "tier 3"], "0023": ["tier 1", "tier 2"],
    "0031": ["tier 1", "wood lathe", "laser cutter"],
}
DISMISSED = ("0015", date(2025, 9, 15))
HOURS = {  # weekday (0 is Monday): who is in, from, to
    1: [("0007", "16:30", "20:30"), ("0023", "16:00", "20:00"), ("0019", "17:00", "21:00")],
    2: [("0007", "16:00", "20:30"), ("0031", "16:00", "20:00"), ("0001", "15:00", "19:00")],
    3: [("0007", "16:30", "20:30"), ("0019", "17:00", "21:00")],
    4: [("0011", "16:00", "20:00"), ("0003", "16:00", "21:00"), ("0015", "16:00", "20:00")],
    5: [("0007", "10:00", "15:00"), ("0023", "10:00", "16:00"), ("0003", "12:00", "18:00"), ("0015", "10:00", "14:00")],
    6: [("0011", "12:00", "17:00"), ("0031", "11:00", "16:00"), ("0001", "10:00", "14:00")],
}
PUBLISHED = [
    ("2023-11-01", ["working safely", "saws and cutters", "guards", "hot work", "laser light", "turning metal",
                    "shaper cutters", "stock for the planer", "tier 1", "tier 2", "tier 3", "tier 4"], 1),
    ("2025-03-01", ["working safely"], 2), ("2025-06-02", ["guards"], 2), ("2025-12-10", ["kickback"], 1),
    ("2026-09-01", ["guards"], 3), ("2026-10-15", ["tier 2"], 2),
]
CHECKOUT_REVISIONS = {"jointer-planer": [("2023-11-01", 1), ("2024-10-04", 2), ("2025-06-02", 3), ("2026-09-01", 4),
                                        ("2026-11-23", 5)]}


def add_months(day, months):
    n = day.year * 12 + day.month - 1 + months
    year, month = divmod(n, 12)
    return date(year, month + 1, min(day.day, calendar.monthrange(year, month + 1)[1]))


def end_of(day, period):
    if "days" in period:
        return day + timedelta(days=period["days"])
    if "months" in period:
        return add_months(day, period["months"])
    last = add_months(day.replace(day=1), period["calendar_months"])
    return last.replace(day=calendar.monthrange(last.year, last.month)[1])


class Shop:
    """The rows written so far, who is busy when, and a rough idea of who may do what."""

    def __init__(self):
        self.random = random.Random(412)
        self.books = [(datetime.fromisoformat(b["effective_from"][:10]), b) for b in
                      (json.loads((HERE / f"rulebook-{n}.json").read_text()) for n in (1, 2))]
        self.rows, self.busy, self.of, self.worked_out = [], {}, {}, {}
        self.revisions = [(datetime.fromisoformat(d), i, r) for d, items, r in PUBLISHED for i in items]
        self.changes = []

    # Rows -----------------------------------------------------------------------------------------------
    def add(self, when, kind, number="", **cells):
        row = dict.fromkeys(COLUMNS, "") | {"date": when.strftime("%Y-%m-%d %H:%M"), "kind": kind, "number": number}
        row |= {key: str(value) for key, value in cells.items()}
        self.rows.append((when, row))
        if not row["struck_out"]:
            self.of.setdefault(number, {}).setdefault(kind, []).append((when, row))
            self.worked_out.pop(number, None)
        for who, length in ((number, 10), (row["by"], 10)):
            if who and kind in ("supervised", "checkout", "use", "quiz"):
                self.block(who, when, int(row["minutes"] or length))
        return row

    def block(self, who, when, minutes):
        span = timedelta(minutes=minutes)
        self.busy.setdefault((who, when.date()), []).append((when - span, when + span))

    def free(self, when, minutes, people):
        start, end = when - timedelta(minutes=minutes), when + timedelta(minutes=minutes)
        return all(end <= a or start >= b for who in people for a, b in self.busy.get((who, when.date()), []))

    def slot(self, day, minutes, people, after):
        """The first time on that day, five minutes by five, at which all of them are free."""
        when = after
        while when < datetime.combine(day, time(21, 30)):
            if self.free(when, minutes, people):
                return when
            when += timedelta(minutes=5)
        return None

    # The rulebook, roughly --------------------------------------------------------------------------------
    def book(self, when):
        return next((b for since, b in reversed(self.books) if since <= when), self.books[0][1])

    def machine_class(self, target, when):
        name = target.split("/")[0]
        return next(c for c in self.book(when)["classes"] if c["class"] == name)

    def gates(self, target, when):
        book, machine = self.book(when), self.machine_class(target, when)
        tier = next(t for t in book["tiers"] if t["tier"] == machine["tier"])
        mode = target.split("/")[1] if "/" in target else ""
        return tier.get("gates", []) + machine.get("gates", []) + machine.get("mode_gates", {}).get(mode, [])

    def revision(self, item, when, changeover=None):
        needed = 0
        for at, name, revision in self.revisions:
            start = datetime.combine(end_of(at.date(), changeover) + timedelta(1), time()) if changeover else at
            if name == item and start <= when:
                needed = max(needed, revision)
        return needed

    def did(self, number, *kinds):
        return [pair for kind in kinds for pair in self.of.get(number, {}).get(kind, [])]

    def rows_of(self, number, kind, what, when):
        return [(at, r) for at, r in self.did(number, kind) if r["what"] == what and at <= when]

    def covers(self, at, row, need, when, grace=True):
        if row["until"] and when.date() > date.fromisoformat(row["until"]):
            return False
        if "valid" not in need:
            return True
        last = end_of(at.date(), need["valid"])
        if grace and "grace" in need:
            last = end_of(last, need["grace"])
        return when.date() <= last

    def holds(self, need, number, target, when, grace=True):
        kind = need["kind"]
        if kind in ("all_of", "any_of", "some_of"):
            count = sum(self.holds(n, number, target, when, grace) for n in need["of"])
            return count >= {"all_of": len(need["of"]), "any_of": 1}.get(kind, need.get("count"))
        if kind == "age":
            born = self.born[number]
            return (when.year, when.month, when.day) >= (born.year + need["years"], born.month, born.day)
        if kind == "standing":
            return self.rung(number, need["target"], when) >= RUNGS[need["at_least"]]
        if kind == "tier_standing":
            names = [t for t in self.targets(when) if self.machine_class(t, when)["tier"] == need["tier"]]
            return sum(self.rung(number, t, when) >= RUNGS[need["at_least"]] for t in names) >= need["count"]
        if kind in ("practice", "recent_use"):
            return self.worked(need, number, target, when)
        what = need[kind]
        rows = self.rows_of(number, kind, what, when)
        if kind in ("lesson", "quiz") and need.get("revision") != "any":
            rows = [(a, r) for a, r in rows if int(r["revision"] or 0) >= self.revision(what, when, need.get("changeover"))]
        if kind == "quiz":
            rows = [(a, r) for a, r in rows if self.percent(r) >= need["pass_percent"] and r["critical"] in ("", "0")]
        if kind == "checkout":
            rows = self.unbroken(need, number, target, when, rows)
        return any(self.covers(a, r, need, when, grace) for a, r in rows)

    @staticmethod
    def percent(row):
        right, total = row["result"].split(" of ")
        return 100 * int(right) / int(total)

    def unbroken(self, need, number, target, when, rows):
        """Passed check-outs that nothing since has taken away."""
        name = target.split("/")[0]
        ends = [a for a, r in rows if r["result"] == "failed"]
        ends += [a for a, r in self.did(number, "incident") if r["part"] == "operating" and
                 r["what"].split("/")[0] == name and int(r["severity"]) <= need.get("renew_after_severity", 0) and a <= when]
        if need.get("renew_after_change"):
            ends += [a for a, changed in self.changes if changed == name and a <= when]
        return [(a, r) for a, r in rows if r["result"] == "passed" and not any(end > a for end in ends)]

    def worked(self, need, number, target, when):
        on = {target, target.split("/")[0]}
        kinds = ("supervised",) if need["kind"] == "practice" else ("supervised", "use")
        rows = [(a, r) for a, r in self.did(number, *kinds) if r["what"] in on and a <= when and
                ("within" not in need or when.date() <= end_of(a.date(), need["within"]))]
        minutes = sum(int(r["minutes"] or 0) for _, r in rows)
        return len(rows) >= need.get("sessions", need.get("count", 0)) and minutes >= need.get("minutes", 0)

    def targets(self, when):
        return [f"{c['class']}/{m}" if m else c["class"] for c in self.book(when)["classes"] for m in c.get("modes") or [""]]

    def rung(self, number, target, when, grace=True):
        unmet = [g["for"] for g in self.unmet(number, target, when, grace)]
        return 0 if "supervised" in unmet else 1 if unmet else 2

    def unmet(self, number, target, when, grace=True):
        known = self.worked_out.setdefault(number, {})
        key = (target, when.date(), grace)
        if key not in known:
            known[key] = self.work_out(number, target, when, grace)
        return known[key]

    def work_out(self, number, target, when, grace):
        return [g for g in self.gates(target, when) if not self.holds(g["need"], number, target, when, grace)]

    # Staff --------------------------------------------------------------------------------------------------
    def scope_takes(self, scope, target, when):
        return scope == target.split("/")[0] or scope == f"tier {self.machine_class(target, when)['tier']}"

    def can_assess(self, who, target, when):
        if who == DISMISSED[0] and when.date() >= DISMISSED[1]:
            return False
        if who not in ASSESSORS:
            return False
        if when.date() <= FOUNDERS_UNTIL and who in list(ASSESSORS)[:6]:
            return True
        return any(self.scope_takes(s, target, when) for s in ASSESSORS[who]) and self.rung(who, target, when) == 2

    def on_duty(self, day):
        return [(who, datetime.combine(day, time.fromisoformat(a)), datetime.combine(day, time.fromisoformat(b)))
                for who, a, b in HOURS.get(day.weekday(), []) if not (who == DISMISSED[0] and day >= DISMISSED[1])]

    def witness(self, number, target, day, minutes, after):
        """An assessor on duty and a time at which both are free."""
        for who, start, end in self.random.sample(self.on_duty(day), len(self.on_duty(day))):
            when = self.slot(day, minutes, [number, who], max(after, start + timedelta(minutes=minutes)))
            if who != number and when and when <= end and self.can_assess(who, target, when):
                return who, when
        return None, None


RUNGS = {"barred": 0, "supervised": 1, "independent": 2}


class Member:
    """Somebody who comes in now and then."""

    def __init__(self, shop, number, joined, left, often, skill, goals, diligent):
        self.shop, self.number, self.joined, self.left = shop, number, joined, left
        self.often, self.skill, self.goals, self.diligent = often, skill, goals, diligent

    def visit(self, day):
        r = self.shop.random
        self.day, self.now = day, datetime.combine(day, time(10 if day.weekday() > 4 else 16, 0)) + \
            timedelta(minutes=5 * r.randrange(36))
        for _ in range(2 if r.random() < 0.35 else 1):
            self.next_step()
        self.use_something()

    def later(self, minutes):
        self.now += timedelta(minutes=minutes)

    def next_step(self):
        """What is missing for the first thing that they want; then, for the careful, what will soon be."""
        for target in self.goals:
            missing = self.shop.unmet(self.number, target, self.now)
            if missing and self.take_first(missing, target):
                return
            if missing and self.shop.random.random() < 0.6:
                return
        ahead = self.now + timedelta(days=35)
        for target in self.goals:
            if self.shop.random.random() < self.diligent:
                if self.take_first(self.shop.unmet(self.number, target, ahead, grace=False), target):
                    return

    def take_first(self, missing, target):
        order = {"document": 0, "any_of": 1, "age": 9, "lesson": 2, "standing": 3, "tier_standing": 3, "quiz": 4,
                 "practice": 5, "recent_use": 6, "checkout": 7}
        for gate in sorted(missing, key=lambda g: order[g["need"]["kind"]]):
            if self.step(gate["need"], target):
                return True
        return False

    def step(self, need, target):
        kind = need["kind"]
        if kind in ("document", "lesson"):
            return self.paper(kind, need[kind])
        if kind == "any_of":
            return self.paper("document", "guardian's consent")
        if kind == "quiz":
            return self.quiz(need)
        if kind == "checkout":
            return self.checkout(need, target)
        if kind == "recent_use" and self.shop.rung(self.number, target, self.now) == 2:
            return self.use(target)
        if kind in ("practice", "recent_use"):
            return self.practice(target)
        return False

    def paper(self, kind, what):
        if kind == "lesson":
            self.shop.add(self.now, kind, self.number, what=what, revision=self.shop.revision(what, self.now))
        elif what == "guardian's consent":
            born = self.shop.born[self.number]
            self.shop.add(self.now, kind, self.number, what=what,
                          until=date(born.year + 18, 3 if (born.month, born.day) == (2, 29) else born.month, 1).isoformat())
        else:
            self.shop.add(self.now, kind, self.number, what=what)
        self.later(45)
        return True

    def quiz(self, need):
        total = 20 if need["quiz"] in ("tier 2", "tier 4") else 10
        r = self.shop.random
        right = min(total, max(total // 3, round(r.gauss(total * self.skill, total * 0.09))))
        critical = 1 if right < total and r.random() < 0.05 else 0
        self.shop.add(self.now, "quiz", self.number, what=need["quiz"], revision=self.shop.revision(need["quiz"], self.now),
                      result=f"{right} of {total}", critical=critical or "")
        self.later(40)
        return True

    def practice(self, target):
        minutes = self.shop.random.choice((25, 30, 35, 40, 45, 60))
        if self.shop.rung(self.number, target, self.now) < 1:
            return False
        who, when = self.shop.witness(self.number, target, self.day, minutes, self.now)
        if not who:
            return False
        both = "/" in target and self.shop.random.random() < 0.5
        self.shop.add(when, "supervised", self.number, what=target.split("/")[0] if both else target, minutes=minutes, by=who)
        self.now = when + timedelta(minutes=minutes + 5)
        return True

    def checkout(self, need, target):
        if not all(self.shop.holds(n, self.number, target, self.now) for n in need.get("given", [])):
            return False
        who, when = self.shop.witness(self.number, target, self.day, 30, self.now)
        if not who:
            return False
        r = self.shop.random
        failed, stopped = 0.14, 0.20
        draw = r.random()
        result = "failed" if draw < failed else "stopped" if draw < stopped else "passed"
        cells = {"what": need["checkout"], "result": result, "by": who,
                 "revision": max(n for d, n in CHECKOUT_REVISIONS.get(need["checkout"], [("2023-11-01", 1)])
                                 if d <= when.date().isoformat())}
        if result == "failed":
            cells["note"] = r.choice(("guard not set", "reached over the cutter", "did not wait for it to stop",
                                      "sleeves open", "stood in line with the stock"))
        elif result == "passed" and need["checkout"] in RESTRICTIONS and r.random() < 0.15:
            cells["restriction"] = r.choice(RESTRICTIONS[need["checkout"]])
        self.shop.add(when, "checkout", self.number, **cells)
        self.now = when + timedelta(minutes=35)
        return True

    def use_something(self):
        r = self.shop.random
        may = [t for t in self.goals if self.shop.rung(self.number, t, self.now) == 2]
        if may and r.random() < 0.42:
            self.use(r.choice(may))

    def use(self, target):
        when = self.shop.slot(self.day, 10, [self.number], self.now)
        if not when:
            return False
        self.shop.add(when, "use", self.number, what=target)
        self.now = when + timedelta(minutes=self.shop.random.choice((30, 45, 60, 75)))
        self.accident(target, when)
        return True

    def accident(self, target, when):
        r = self.shop.random
        if r.random() > 0.012:
            return
        severity = r.choice((4, 4, 4, 4, 3, 3, 2))
        note = {4: "near miss: stock moved, nobody touched", 3: "small cut, plaster", 2: "cut, seen by a doctor"}[severity]
        self.shop.add(when + timedelta(minutes=12), "incident", self.number, what=target, severity=severity,
                      part="operating", note=note)


RESTRICTIONS = {"table saw": ["no dado", "no full sheets"], "bandsaw": ["no resawing"], "wood lathe": ["spindles only"],
                "jointer-planer": ["no stock shorter than the bed"], "laser cutter": ["no cloth"]}
TIER1 = ["hand tools", "drill press", "disc sander"]
EXTRA1 = ["3D printer", "scroll saw", "sewing machine", "soldering station"]
SAWS = ["bandsaw", "table saw", "router table", "mitre saw", "wood lathe", "laser cutter"]
TIER3 = ["jointer-planer/jointing", "jointer-planer/planing", "shaper", "metal lathe", "milling machine"]
TIER4 = ["forge", "welding bench", "foundry"]


def goals_of(rng, reach):
    goals = ["hand tools"] + rng.sample(TIER1[1:] + EXTRA1, rng.randrange(2, 6))
    if reach >= 2:
        goals += rng.sample(SAWS, rng.randrange(2, 5))
    if reach == 3:
        goals += ["bandsaw", "table saw"] + rng.choice((TIER3[:2], TIER3[:2], TIER3[:3], TIER3[:1], TIER3[3:]))
    if reach == 4:
        goals += rng.sample(TIER4, rng.randrange(1, 3)) + rng.choice(([], [TIER3[3]], [TIER3[4]]))
    return list(dict.fromkeys(goals))


def make_members(shop, people):
    members = []
    for person in people:
        number, rng = person["number"], shop.random
        joined = date.fromisoformat(person["joined"])
        reach = rng.choices((1, 2, 3, 4), (44, 35, 14, 7))[0]
        left = joined + timedelta(days=rng.randrange(150, 800)) if rng.random() < 0.2 else None
        members.append(Member(shop, number, joined, left, rng.choice((0.04, 0.06, 0.09, 0.13)) + 0.02 * reach,
                              rng.uniform(0.8, 0.96), goals_of(rng, reach), rng.choice((0.1, 0.3, 0.6))))
    return members


def make_people(shop):
    """Details for everybody in names.csv. All mail goes to example.org, all telephones are 555-01xx."""
    rng, people = random.Random(7), []
    with open(HERE / "names.csv", encoding="utf-8", newline="") as file:
        names = list(csv.DictReader(file))
    for n, name in enumerate(names):
        number = int(name["number"])
        joined = FOUNDED if number < 100 else FIRST + timedelta(days=int((number - 100) / 370 * (LAST - FIRST).days))
        born = date(rng.randrange(1948, 2007), rng.randrange(1, 13), rng.randrange(1, 29))
        other = names[(n * 7 + 3) % len(names)]
        people.append({"number": name["number"], "given": name["given"], "family": name["family"],
                       "nickname": name["nickname"], "card": f"{rng.randrange(10**9):010d}",
                       "email": f"member{name['number']}@example.org" if rng.random() < 0.9 else "",
                       "phone": f"555-01{n % 100:02d}",
                       "emergency_contact": f"{other['given']} {rng.choice(('', name['family']))}".strip() +
                                            f", 555-01{(n * 3 + 17) % 100:02d}" if rng.random() < 0.85 else "",
                       "born": born.isoformat(), "joined": joined.isoformat()})
    return people


def write(name, columns, rows):
    with open(HERE / name, "w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, columns, lineterminator="\r\n")
        writer.writeheader()
        writer.writerows(rows)


def main():
    import told
    shop = Shop()
    people = make_people(shop)
    told.correct(people)
    shop.born = {p["number"]: date.fromisoformat(p["born"]) for p in people}
    told.paperwork(shop)
    told.staff(shop)
    for story in told.STORIES:
        story(shop)
    members = make_members(shop, [p for p in people if p["number"] not in told.TOLD | set(ASSESSORS)])
    day = FIRST
    while day <= LAST:
        if day.weekday() != 0:
            for member in members:
                if member.joined <= day and (member.left is None or day < member.left):
                    if day == member.joined or shop.random.random() < member.often:
                        member.visit(day)
        day += timedelta(1)
    told.mess(shop)
    told.tonight(shop)
    write("people.csv", list(people[0]), people)
    write("history.csv", COLUMNS, [row for _, row in sorted(shop.rows, key=lambda pair: pair[0])])
    write("machines.csv", ["machine", "class", "label", "since"], told.machines())
    write("hours.csv", ["number", "weekday", "from", "to", "since"],
          [{"number": who, "weekday": calendar.day_name[d], "from": a, "to": b, "since": "2025-09-16"}
           for d, staff in HOURS.items() for who, a, b in staff if who != DISMISSED[0]])
    write("bookings.csv", ["date", "from", "to", "number", "by", "machine", "what", "purpose", "booked"], told.BOOKINGS)


if __name__ == "__main__":
    main()
