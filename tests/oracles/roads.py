"""Small shops in which there is a road to go: somebody may assess, much is asked, and little has been done yet."""
import datetime

import civil

ZONES = ["UTC", "America/Chicago", "America/Havana", "Europe/Lisbon", "Pacific/Chatham"]
START = datetime.date(2025, 1, 1)
RUNGS = ["supervised", "independent"]
HOURS = [24, 240]  # that retries wait


class Road:
    """Makes one scenario with a route asked for. `rng` decides all."""

    def __init__(self, rng):
        self.rng = rng
        self.zone = rng.choice(ZONES)
        self.made = 0
        self.records = []
        self.at = self.instant(150, 200)

    def one_in(self, n):
        return self.rng.randrange(n) == 0

    def day(self, low, high):
        return START + datetime.timedelta(days=self.rng.randrange(low, high))

    def instant(self, low, high):
        t = civil.start(self.zone, self.day(low, high))
        return t if self.one_in(3) else t + self.rng.randrange(civil.DAY)

    def period(self):
        unit = self.rng.choice(["days", "months", "calendar_months"])
        return {unit: 1 + self.rng.randrange(60 if unit == "days" else 3)}

    def maybe(self, n, **fields):
        return {key: value() for key, value in fields.items() if self.one_in(n)}

    # -- rules
    def need(self, others, depth=0):
        """A requirement; `others` are targets that may be asked about without a circle."""
        kinds = ["document", "lesson", "lesson", "quiz", "quiz", "checkout", "checkout", "checkout", "practice", "practice",
                 "recent_use", "age"]
        kinds += ["standing", "standing"] if others else []
        kinds += ["all_of", "any_of", "some_of"] if depth < 2 else []
        kind = self.rng.choice(kinds)
        return {"kind": kind} | getattr(self, "need_" + kind)(others, depth)

    def item(self):
        return "item" + str(self.rng.randrange(2))

    def validity(self):
        valid = self.maybe(2, valid=self.period)
        return valid | (self.maybe(3, grace=self.period) if valid else {})

    def revision(self):
        return self.maybe(2, revision=lambda: self.rng.choice(["any", "current"])) | self.maybe(3, changeover=self.period)

    def need_document(self, *_):
        return {"document": self.item()} | self.validity()

    def need_age(self, *_):
        return {"years": 17}

    def need_lesson(self, *_):
        return {"lesson": self.item()} | self.revision() | self.validity()

    def need_quiz(self, *_):
        hours = lambda: self.rng.choice(HOURS)
        retry = {"wait_hours": hours()} if self.one_in(2) else {"most": 1 + self.rng.randrange(2), "in_hours": hours()}
        return ({"quiz": self.item(), "pass_percent": 80} | self.revision() | self.validity()
                | self.maybe(2, retry=lambda: retry))

    def need_checkout(self, others, depth):
        given = lambda: [self.need(others, 2) for _ in range(1 + self.rng.randrange(2))]
        return ({"checkout": self.item()} | self.revision() | self.validity()
                | (self.maybe(2, given=given) if depth < 2 else {})
                | self.maybe(2, renew_after_severity=lambda: 2) | self.maybe(3, renew_after_change=lambda: True))

    def need_practice(self, others, _):
        amount = {"sessions": 1 + self.rng.randrange(2)} if self.one_in(2) else {"minutes": 1 + self.rng.randrange(300)}
        return amount | self.maybe(2, within=self.period) | self.target(others)

    def need_recent_use(self, others, _):
        return {"count": 1 + self.rng.randrange(2), "within": self.period()} | self.target(others)

    def target(self, others):
        return {"target": self.rng.choice(others)} if others and self.one_in(2) else {}

    def need_standing(self, others, _):
        return {"target": self.rng.choice(others), "at_least": self.rng.choice(RUNGS)}

    def of(self, others, depth):
        return [self.need(others, depth + 1) for _ in range(1 + self.rng.randrange(3))]

    def need_all_of(self, others, depth):
        return {"of": self.of(others, depth)}

    need_any_of = need_all_of

    def need_some_of(self, others, depth):
        of = self.of(others, depth)
        return {"of": of, "count": 1 + self.rng.randrange(len(of))}

    def gates(self, most, others=(), spare=20):
        gates = []
        for _ in range(self.rng.randrange(most + 1)):
            self.made += 1
            gates.append({"id": f"g{self.made}", "for": self.rng.choice(RUNGS), "need": self.need(others)}
                         | self.maybe(spare, existing_until=lambda: self.day(100, 300).isoformat()))
        return gates

    def book(self, version, starts):
        starts = civil.instant_text(starts)
        modes = ["cut", "bend"] if self.one_in(3) else []
        spare = 20 if version == 1 else 2  # a first rulebook has nobody to spare
        gates = lambda most, *others: self.gates(most, others, spare)
        lathe = {"class": "lathe", "tier": 1, "gates": gates(2)}
        press = {"class": "press", "tier": 2, "modes": modes, "gates": gates(2, "lathe")}
        if modes:
            press["mode_gates"] = {"cut": gates(1, "lathe")}
        tiers = [{"tier": 1, "gates": gates(1)},
                 {"tier": 2, "gates": gates(1, "lathe"), "supervision": self.rng.choice(["assessor", "independent"])}]
        return {"version": version, "effective_from": starts, "recorded": starts, "tiers": tiers, "classes": [lathe, press]}

    # -- what happened
    def add(self, at, kind, **fields):
        when = civil.instant_text(at)
        self.records.append({"id": f"r{len(self.records)}", "kind": kind, "at": when, "recorded": when} | fields)

    def moment(self, low, high):
        """Often the second of another record, or next to it, or as much later as retries wait: what comes first matters."""
        if self.records and self.one_in(3):
            hours = self.rng.choice([0, 0, *HOURS])
            return civil.instant(self.rng.choice(self.records)["at"]) + hours * civil.HOUR + self.rng.choice([-1, 0, 0, 1])
        return self.instant(low, high)

    def happen(self):
        before = self.moment(20, 200)
        person = self.rng.choice(["ana", "ana", "ben"])
        kind = self.rng.choice(["document", "lesson", "quiz", "quiz", "quiz", "checkout", "publish", "publish", "suspend", "incident",
                                "supervised", "use", "change", "appoint"])
        revision = self.rng.randrange(3)
        if kind == "document":
            self.add(before, kind, person=person, document=self.item())
        elif kind == "lesson":
            self.add(before, kind, person=person, lesson=self.item(), revision=revision)
        elif kind == "quiz":
            self.add(before, kind, person=person, quiz=self.item(), revision=revision, correct=self.rng.choice([7, 7, 8]),
                     total=10, critical_missed=0)
        elif kind == "checkout":
            self.add(before, kind, person=person, checkout=self.item(), revision=revision,
                     assessor=self.rng.choice(["chief", "chief", "chief", "ben"]),
                     outcome=self.rng.choice(["passed", "passed", "passed", "failed"]))
        elif kind == "publish":
            self.add(before, kind, item=self.item(), revision=revision)
        elif kind == "suspend":
            self.add(before, kind, person=person, scope=self.rng.choice(["all", {"target": "lathe"}, {"tier": 2}]),
                     until=self.day(160, 260).isoformat())
        elif kind == "incident":
            self.add(before, kind, person=person, target=self.rng.choice(["lathe", "press"]),
                     severity=self.rng.choice([1, 2, 2, 3]), part=self.rng.choice(["operating", "operating", "saw"]))
        elif kind == "supervised":
            self.add(before, kind, person=person, target=self.rng.choice(["lathe", "press"]), minutes=60,
                     supervisor=self.rng.choice(["chief", "ben"]))
        elif kind == "use":
            self.add(before, kind, person=person, target=self.rng.choice(["lathe", "press"]))
        elif kind == "change":
            self.add(before, kind, target=self.rng.choice(["lathe", "press"]))
        else:
            self.add(self.instant(100, 260), kind, person="ben", scope="all")

    def scenario(self, most=12):
        """With up to `most` records beside those that open the road."""
        books = [self.book(1, civil.start(self.zone, START))]
        if self.one_in(2):
            books.append(self.book(2, self.instant(100, 260)))
        founded = civil.start(self.zone, START) if not self.one_in(4) else self.instant(150, 260)
        self.add(founded, "appoint", person="chief", scope=self.rng.choice(["all", "all", "all", {"target": "lathe"}]),
                 founding=True, until=self.day(170, 400).isoformat())
        born = datetime.date(2008, 1, 1) + datetime.timedelta(days=self.rng.randrange(100, 260))
        self.add(civil.start(self.zone, START), "birth", person="ana", born=born.isoformat())
        for _ in range(self.rng.randrange(most)):
            self.happen()
        modes = [f"press/{m}" for m in books[0]["classes"][1]["modes"]] or ["press"]
        ask = {"ask": "route", "person": "ana", "target": self.rng.choice(["lathe", *modes, *modes]),
               "to": self.rng.choice(RUNGS), "at": civil.instant_text(self.at)}
        if self.one_in(8):
            ask["known"] = civil.instant_text(self.at)
        machines = [{"id": "m0", "class": "lathe"}, {"id": "m1", "class": "press"}]
        return {"zone": self.zone, "machines": machines, "people": [{"id": p} for p in ("ana", "ben", "chief")], "rulebooks": books,
                "records": self.records, "asks": [ask]}
