"""The demo shop's people whose story is written out, its paperwork, and what the evening of the demo day holds."""
from datetime import date, datetime, timedelta

# Whose rows are all written here; everybody else lives by chance.
TOLD = {"0412", "0366", "0374", "0388", "0455", "0359", "0280", "0397", "0468"}


def t(text):
    return datetime.fromisoformat(text)


def correct(people):
    """Dates that the stories need, and the holes that real lists have."""
    by = {p["number"]: p for p in people}
    by["0412"] |= {"born": "1988-05-17", "joined": "2024-03-09", "email": "jonas.lindqvist@example.org",
                   "emergency_contact": "Karin Lindqvist, 555-0142"}
    by["0366"] |= {"born": "2008-12-19", "joined": "2025-10-04"}
    by["0374"] |= {"born": "2008-02-29", "joined": "2025-01-11"}
    by["0388"] |= {"born": "1979-08-03", "joined": "2026-01-10", "card": "0388001122"}
    by["0455"] |= {"born": "1979-08-03", "joined": "2026-08-08", "card": "", "email": "", "phone": by["0388"]["phone"]}
    by["0359"] |= {"born": "1991-01-30", "joined": "2025-08-16"}
    by["0280"] |= {"born": "1995-06-11", "joined": "2024-06-01"}
    by["0397"] |= {"born": "1983-10-22", "joined": "2026-04-11"}
    by["0468"] |= {"born": "2002-02-02", "joined": "2026-11-24"}
    for number in ("0130", "0249", "0318"):
        by[number]["card"] = ""
    by["0301"] |= {"born": "2010-04-08"}
    by["0325"] |= {"born": "2009-07-21"}
    by["0434"] |= {"born": "2009-01-14"}


def paperwork(shop):
    """Appointments, roles, published revisions, changes and machines out of service."""
    from make import ASSESSORS, CHECKOUT_REVISIONS, DISMISSED, FOUNDERS_UNTIL, PUBLISHED
    start = t("2023-11-01 09:00")
    for day, items, revision in PUBLISHED:
        for item in items:
            shop.add(t(day + " 08:00"), "publish", what=item, revision=revision)
    checkouts = {g["need"]["checkout"] for c in shop.books[-1][1]["classes"] for g in c.get("gates", [])
                 if g["need"]["kind"] == "checkout"}
    for name in sorted(checkouts):
        for day, revision in CHECKOUT_REVISIONS.get(name, [("2023-11-01", 1)]):
            shop.add(t(day + " 08:00"), "publish", what=name, revision=revision)
    for n, (who, scopes) in enumerate(ASSESSORS.items()):
        if n < 6:
            shop.add(start, "appoint", who, what="all", result="founding", until=FOUNDERS_UNTIL, ref=f"A{n + 1}")
        for m, scope in enumerate(scopes):
            shop.add(t("2024-12-02 10:00") + timedelta(minutes=5 * n), "appoint", who, what=scope, until="2027-06-19",
                     ref=f"A{n + 11}{'abc'[m]}")
    for m in range(len(ASSESSORS[DISMISSED[0]])):
        shop.add(datetime.combine(DISMISSED[1], t("2025-09-15 12:00").time()), "dismiss", ends=f"A16{'abc'[m]}",
                 note="signed check-outs without watching them")
    for who, role in ROLES:
        shop.add(start, "role", who, what=role)
    shop.add(t("2025-09-15 12:00"), "role", "0015", what="none")
    shop.add(t("2024-10-05 11:00"), "change", what="jointer-planer", note="new cutterhead on both units")
    shop.changes.append((t("2024-10-05 11:00"), "jointer-planer"))
    shop.add(t("2026-02-17 17:40"), "change", what="bandsaw", note="new guides")
    shop.add(t("2025-02-08 13:20"), "lockout", "0007", what="table-saw-1", by="0007", ref="T-14", result="padlock 2",
             note="brake slow to stop it")
    shop.add(t("2025-02-15 10:30"), "release", ends="T-14", note="brake mended, run and stopped ten times")
    shop.add(t("2026-11-21 14:10"), "lockout", "0011", what="jointer-planer-1", by="0011", ref="T-31", result="padlock 5",
             note="guard does not return by itself")
    shop.add(t("2026-11-24 19:05"), "lockout", "0023", what="wood-lathe-2", by="0023", ref="T-32", result="padlock 1",
             note="belt slips")


ROLES = [("0001", "manager"), ("0002", "manager"), ("0003", "manager"), ("0007", "instructor"), ("0011", "instructor"),
         ("0019", "instructor"), ("0023", "instructor"), ("0031", "instructor"), ("0015", "instructor"),
         ("0044", "desk"), ("0052", "desk"), ("0060", "desk"), ("0068", "desk"), ("0077", "desk"), ("0085", "desk")]


def tell(shop, number, *rows):
    for when, kind, what, *rest in rows:
        cells = dict(zip(rest[::2], rest[1::2]))
        if kind in ("lesson", "quiz") and "revision" not in cells:
            cells["revision"] = shop.revision(what, t(when))
        if kind == "checkout" and "revision" not in cells:
            cells["revision"] = 1
        shop.add(t(when), kind, number, what=what, **cells)


def basics(shop, number, day, quiz="9 of 10"):
    """Induction, first lesson and first quiz on one day."""
    tell(shop, number, (day + " 16:10", "document", "induction"), (day + " 16:30", "lesson", "working safely"),
         (day + " 17:20", "quiz", "tier 1", "result", quiz))


TIER1 = ["drill press", "disc sander"]
TIER2 = ["bandsaw", "table saw", "router table", "mitre saw", "wood lathe", "laser cutter"]
JOINTER = ["jointer-planer/jointing", "jointer-planer/planing"]
METAL = ["metal lathe", "milling machine", "forge", "welding bench", "foundry"]
PRACTISED = ["table saw", "router table", "shaper"] + JOINTER + METAL
# What each assessor keeps up, and who checks them out on it, first choice first.
KEPT = {"0007": (TIER1 + TIER2 + JOINTER + ["shaper"], ("0011", "0001", "0031")),
        "0011": (TIER1 + TIER2[:5] + JOINTER, ("0007",)),
        "0003": (TIER1 + METAL, ("0019", "0007")), "0019": (TIER1 + METAL, ("0003", "0007")),
        "0001": (TIER1 + ["bandsaw", "mitre saw", "shaper"], ("0007",)),
        "0015": (TIER1 + TIER2[:5] + JOINTER + ["shaper"], ("0007",)),
        "0023": (TIER1 + TIER2, ("0007",)), "0031": (TIER1 + ["wood lathe", "laser cutter"], ("0007",))}
# The rounds in which the staff check each other out: before any check-out of theirs is a year old.
ROUNDS = ["2023-12-02", "2024-10-12", "2025-08-02", "2026-05-30"]


def staff(shop):
    """The assessors keep everything up, in the mornings before the doors open."""
    for who, (targets, checkers) in KEPT.items():
        leaves = t("2025-09-15 00:00") if who == "0015" else t("2026-11-24 00:00")
        hot = "forge" in targets
        keep_papers(shop, who, targets, hot, leaves)
        for n, day in enumerate(ROUNDS):
            for target in targets:
                if t(day) < leaves and (n == 0 or target not in TIER1):
                    check_out_staff(shop, who, target, checkers, t(day), sessions=3 if n == 0 and target in PRACTISED else 0)
        for m, target in enumerate(targets):
            day = t("2024-01-09 09:00") + timedelta(days=3 * m)
            while day < leaves:
                morning(shop, day, 10, [who], "use", who, what=target)
                day += timedelta(days=53 if "-" in target or target in METAL else 118)


def morning(shop, day, length, people, kind, number, **cells):
    """At nine, or as soon after as all of them are free; the next day where that one is full."""
    when = None
    while when is None or when.hour > 14:
        when = shop.slot(day.date(), length, people, day.replace(hour=9, minute=0))
        day += timedelta(days=1)
    shop.add(when, kind, number, **cells)


def keep_papers(shop, who, targets, hot, leaves):
    lessons = ["working safely", "saws and cutters", "guards", "stock for the planer", "shaper cutters", "laser light",
               "turning metal"] + ["hot work"] * hot
    for day, items, revision in [("2023-11-04", lessons, 1), ("2025-03-08", ["working safely"], 2),
                                 ("2025-06-07", ["guards"], 2), ("2025-12-13", ["kickback"], 1), ("2026-09-05", ["guards"], 3)] + \
            [(d, ["hot work"], 1) for d in ("2025-08-09", "2026-10-03") if hot]:
        for item in items:
            if t(day) < leaves:
                morning(shop, t(day), 5, [who], "lesson", who, what=item, revision=revision)
    quizzes = [("tier 1", 10), ("tier 2", 20), ("tier 3", 10)] + [("tier 4", 20)] * hot
    for day in ("2023-11-05", "2024-10-06", "2025-07-26", "2026-05-23", "2026-10-24"):
        for quiz, total in quizzes:
            if t(day) < leaves and (quiz != "tier 1" or day < "2024"):
                right = total - shop.random.choice((0, 0, 0, 1))
                morning(shop, t(day), 20, [who], "quiz", who, what=quiz, result=f"{right} of {total}",
                        revision=shop.revision(quiz, t(day)))
    for day in ("2023-11-04", "2025-07-12"):
        morning(shop, t(day), 5, [who], "document", who, what="induction")
    for day in ("2023-11-11", "2024-10-19", "2025-09-13", "2026-08-15"):
        if hot:
            morning(shop, t(day), 5, [who], "document", who, what="fire watch")


def check_out_staff(shop, who, target, checkers, day, sessions):
    """With the sessions before it that a first check-out asks for."""
    from make import CHECKOUT_REVISIONS
    name = target.split("/")[0]
    keeps = lambda other: target in KEPT[other][0] or day < t("2024-01-01 00:00")
    by = next(other for other in checkers if other != who and keeps(other))
    for n in range(sessions):
        morning(shop, day - timedelta(days=24 - 5 * n), 45, [who, by], "supervised", who, what=target, minutes=45, by=by)
    if target == JOINTER[1]:
        return  # one check-out for both modes
    revision = max(n for d, n in CHECKOUT_REVISIONS.get(name, [("2023-11-01", 1)]) if t(d) <= day)
    morning(shop, day, 30, [who, by], "checkout", who, what=name, result="passed", by=by, revision=revision)


def jonas(shop):
    """One step short of the jointer/planer: everything but the check-out."""
    n = "0412"
    basics(shop, n, "2024-03-09")
    tell(shop, n,
         ("2024-03-17 11:15", "checkout", "disc sander", "result", "passed", "by", "0001"),
         ("2024-03-17 12:00", "checkout", "drill press", "result", "passed", "by", "0001"),
         ("2024-04-06 10:30", "lesson", "saws and cutters"),
         ("2024-04-18 17:30", "quiz", "tier 2", "result", "15 of 20"),
         ("2024-04-20 11:30", "quiz", "tier 2", "result", "17 of 20"),
         ("2024-04-27 11:00", "supervised", "table saw", "minutes", "45", "by", "0007"),
         ("2024-05-11 11:00", "supervised", "table saw", "minutes", "40", "by", "0023"),
         ("2024-05-25 11:30", "checkout", "table saw", "result", "failed", "by", "0007", "note", "stood in line with the stock"),
         ("2024-06-02 12:30", "checkout", "table saw", "result", "passed", "by", "0011"),
         ("2025-02-22 11:00", "supervised", "router table", "minutes", "40", "by", "0023"),
         ("2025-03-13 18:10", "checkout", "bandsaw", "result", "passed", "by", "0007"),
         ("2025-03-15 11:00", "checkout", "router table", "result", "passed", "by", "0023"),
         ("2025-05-10 11:00", "checkout", "mitre saw", "result", "passed", "by", "0007"),
         ("2025-05-17 10:30", "lesson", "working safely"),
         ("2025-09-20 11:00", "checkout", "wood lathe", "result", "passed", "by", "0007", "restriction", "spindles only"),
         ("2026-01-17 11:00", "lesson", "guards"),
         ("2026-01-21 17:30", "quiz", "tier 3", "result", "6 of 10", "critical", "1"),
         ("2026-01-23 17:40", "quiz", "tier 3", "result", "9 of 10"),
         ("2026-03-07 10:30", "document", "induction"),
         ("2026-04-25 10:30", "lesson", "kickback"), ("2026-04-25 11:30", "quiz", "tier 2", "result", "19 of 20"),
         ("2026-05-01 18:00", "checkout", "table saw", "result", "passed", "by", "0011"),
         ("2026-08-15 11:30", "checkout", "router table", "result", "failed", "by", "0007", "note", "fed with the cutter"),
         ("2026-10-02 17:30", "lesson", "guards"), ("2026-10-10 10:30", "lesson", "stock for the planer"),
         ("2026-10-17 11:00", "supervised", "jointer-planer/jointing", "minutes", "40", "by", "0007"),
         ("2026-10-31 12:00", "supervised", "jointer-planer", "minutes", "45", "by", "0007"),
         ("2026-11-07 10:30", "quiz", "tier 2", "result", "18 of 20"),
         ("2026-11-14 11:00", "supervised", "jointer-planer/planing", "minutes", "35", "by", "0007"))
    for target, first, last, step in (("drill press", "2024-03-23 11:00", "2026-11-20 12:00", 61),
                                      ("disc sander", "2024-04-14 13:00", "2026-11-20 12:00", 77),
                                      ("table saw", "2024-06-15 14:00", "2025-06-20 12:00", 33),
                                      ("bandsaw", "2025-03-22 13:30", "2026-11-20 12:00", 29),
                                      ("table saw", "2026-05-09 14:30", "2026-11-20 12:00", 23),
                                      ("wood lathe", "2025-09-27 15:00", "2026-11-20 12:00", 71)):
        when = t(first)
        while when < t(last):
            shop.add(when, "use", n, what=target)
            when += timedelta(days=step)


def wren(shop):
    """Seventeen, with everything that tier 3 asks but the age: eighteen on 19 December 2026."""
    n = "0366"
    basics(shop, n, "2025-10-04", "10 of 10")
    tell(shop, n, ("2025-10-04 16:00", "document", "guardian's consent", "until", "2026-12-18"),
         ("2025-10-11 11:10", "checkout", "drill press", "result", "passed", "by", "0007"),
         ("2025-10-18 10:30", "lesson", "saws and cutters"), ("2025-10-25 11:30", "quiz", "tier 2", "result", "18 of 20"),
         ("2025-11-15 11:20", "checkout", "bandsaw", "result", "passed", "by", "0023"),
         ("2026-01-24 11:20", "checkout", "mitre saw", "result", "passed", "by", "0023"),
         ("2026-09-12 10:30", "lesson", "guards"), ("2026-09-19 11:30", "quiz", "tier 3", "result", "10 of 10"),
         ("2026-10-24 10:40", "quiz", "tier 2", "result", "19 of 20"))
    for day in ("2026-01-31", "2026-03-07", "2026-05-16", "2026-08-22", "2026-11-07"):
        tell(shop, n, (day + " 15:00", "use", "bandsaw"))


def leap(shop):
    """Born on 29 February 2008: eighteen on 1 March 2026."""
    n = "0374"
    basics(shop, n, "2025-01-11")
    tell(shop, n, ("2025-01-11 16:00", "document", "guardian's consent", "until", "2026-02-28"),
         ("2025-02-01 10:30", "lesson", "saws and cutters"), ("2025-02-08 11:30", "quiz", "tier 2", "result", "17 of 20"),
         ("2025-02-22 12:30", "checkout", "bandsaw", "result", "passed", "by", "0007"),
         ("2025-03-08 12:30", "checkout", "mitre saw", "result", "passed", "by", "0007"),
         ("2025-05-24 10:30", "lesson", "working safely"),
         ("2025-12-13 10:30", "lesson", "guards"), ("2026-02-07 11:30", "quiz", "tier 3", "result", "8 of 10"),
         ("2026-09-26 10:30", "lesson", "guards"), ("2026-10-24 12:10", "quiz", "tier 2", "result", "20 of 20"))
    for day in ("2025-04-12", "2025-07-19", "2025-11-08", "2026-03-14", "2026-08-29"):
        tell(shop, n, (day + " 16:00", "use", "bandsaw"))


def anneke(shop):
    """Entered twice: what she did under the second number counts once the two are joined."""
    basics(shop, "0388", "2026-01-10")
    tell(shop, "0388", ("2026-01-17 12:30", "checkout", "drill press", "result", "passed", "by", "0023"))
    tell(shop, "0455", ("2026-08-08 10:30", "lesson", "saws and cutters"), ("2026-10-17 13:30", "quiz", "tier 2", "result", "19 of 20"),
         ("2026-10-24 14:20", "checkout", "bandsaw", "result", "passed", "by", "0023"))
    shop.add(t("2026-10-27 17:00"), "join", "0388", by="0455", note="one person, two cards")


def rasheed(shop):
    """Paused on tier 2 to the end of the year."""
    n = "0359"
    basics(shop, n, "2025-08-16")
    tell(shop, n, ("2025-08-23 10:30", "lesson", "saws and cutters"), ("2025-08-30 11:30", "quiz", "tier 2", "result", "18 of 20"),
         ("2025-09-06 11:40", "checkout", "bandsaw", "result", "passed", "by", "0007"),
         ("2025-09-27 12:40", "checkout", "mitre saw", "result", "passed", "by", "0023"),
         ("2026-11-14 14:30", "incident", "bandsaw", "severity", "3", "part", "operating", "note", "guard raised, small cut"))
    shop.add(t("2026-11-14 15:10"), "suspend", n, what="tier 2", until="2026-12-31", ref="S-9",
             note="worked with the guard raised, twice")


def nadia(shop):
    """Paused once and let back; a check-out by an assessor who had been dismissed a week before counts for nothing."""
    n = "0280"
    basics(shop, n, "2024-06-01")
    tell(shop, n, ("2024-06-08 10:30", "lesson", "saws and cutters"), ("2024-06-15 11:30", "quiz", "tier 2", "result", "17 of 20"),
         ("2025-03-08 12:00", "checkout", "bandsaw", "result", "passed", "by", "0015"),
         ("2025-05-10 13:00", "lesson", "working safely"), ("2026-05-30 10:30", "document", "induction"),
         ("2025-09-20 13:00", "checkout", "mitre saw", "result", "passed", "by", "0015"),
         ("2026-06-13 11:30", "quiz", "tier 2", "result", "18 of 20"), ("2026-10-31 14:30", "quiz", "tier 2", "result", "17 of 20"))
    shop.add(t("2025-01-18 13:00"), "suspend", n, what="all", ref="S-4", note="guests at the machines")
    shop.add(t("2025-02-01 12:00"), "reinstate", ends="S-4", note="talked it over")


def solveig(shop):
    """Five tries at a quiz, and a check-out that a fire alarm stopped."""
    n = "0397"
    basics(shop, n, "2026-04-11")
    tell(shop, n, ("2026-04-18 10:30", "lesson", "saws and cutters"), ("2026-04-25 14:30", "quiz", "tier 2", "result", "12 of 20"),
         ("2026-05-02 14:30", "quiz", "tier 2", "result", "14 of 20"), ("2026-05-09 14:30", "quiz", "tier 2", "result", "16 of 20"),
         ("2026-06-20 14:30", "quiz", "tier 2", "result", "18 of 20", "critical", "1"),
         ("2026-07-11 14:30", "quiz", "tier 2", "result", "18 of 20"),
         ("2026-07-18 11:30", "supervised", "router table", "minutes", "30", "by", "0007"),
         ("2026-08-01 11:30", "checkout", "router table", "result", "stopped", "by", "0007", "note", "fire alarm"),
         ("2026-08-08 11:30", "checkout", "router table", "result", "passed", "by", "0007"))


def marigold(shop):
    """New: came in yesterday."""
    tell(shop, "0468", ("2026-11-24 17:05", "document", "induction"))


STORIES = [jonas, wren, leap, anneke, rasheed, nadia, solveig, marigold]

STRUCK_OUT = [("checkout", "entered for the wrong member"), ("quiz", "marked with the wrong key"),
              ("use", "entered twice"), ("supervised", "the session did not take place"),
              ("lesson", "left before the end")]


def mess(shop):
    """Strike out some rows in ways that happen, a day or a month later."""
    rng = shop.random
    for kind, reason in STRUCK_OUT:
        rows = [(when, row) for when, row in shop.rows if row["kind"] == kind and row["number"] not in TOLD and
                int(row["number"]) > 100 and not row["struck_out"]]
        for when, row in rng.sample(rows, 4 if kind != "use" else 8):
            later = min(when + timedelta(days=rng.choice((0, 1, 3, 27)), minutes=25), t("2026-11-25 15:30"))
            row |= {"struck_out": later.strftime("%Y-%m-%d %H:%M"), "reason": reason}
    shop.add(t("2026-06-06 12:15"), "incident", "0007", what="table saw", severity=4, part="saw",
             note="saw an offcut fly, nobody near")
    shop.add(t("2026-03-21 12:20"), "incident", "0011", what="bandsaw", severity=4, part="supervising",
             note="blade came off the wheel, guard held it")


def tonight(shop):
    """Wednesday 25 November 2026, up to twenty to five in the afternoon."""
    for number, clock, staff in (("0044", "15:40", True), ("0001", "15:45", True), ("0007", "15:50", True),
                                 ("0031", "15:55", True), ("0143", "16:05", False), ("0412", "16:20", False),
                                 ("0126", "16:12", False), ("0374", "16:25", False), ("0101", "16:31", False)):
        shop.add(t("2026-11-25 " + clock), "in", number, what="staff" if staff else "")
    shop.add(t("2026-11-25 16:15"), "lesson", "0468", what="working safely", revision=2)
    for number, what, when in (("0301", "laser cutter", "2026-11-12 17:00"), ("0177", "bandsaw", "2026-11-15 13:00"),
                               ("0374", "jointer-planer/jointing", "2026-11-19 18:30"), ("0193", "table saw", "2026-11-22 12:30")):
        shop.add(t(when), "waiting", number, what=what)


BOOKINGS = [dict(zip(("date", "from", "to", "number", "by", "machine", "what", "purpose", "booked"), row)) for row in (
    ("2026-11-25", "17:00", "17:45", "0101", "0007", "table-saw-1", "table saw", "practise", "2026-11-20 16:20"),
    ("2026-11-25", "17:30", "18:00", "0126", "0031", "drill-press-2", "drill press", "check-out", "2026-11-21 13:05"),
    ("2026-11-25", "18:15", "19:00", "0374", "0007", "jointer-planer-2", "jointer-planer/jointing", "practise", "2026-11-22 12:40"),
    ("2026-11-25", "19:00", "19:30", "0143", "0007", "bandsaw-1", "bandsaw", "check-out", "2026-11-24 18:10"),
    ("2026-11-26", "18:30", "19:15", "0397", "0007", "router-table-1", "router table", "practise", "2026-11-24 17:45"),
    ("2026-11-27", "16:30", "17:15", "0388", "0011", "table-saw-2", "table saw", "practise", "2026-11-21 15:00"),
    ("2026-11-28", "10:30", "11:15", "0104", "0007", "jointer-planer-2", "jointer-planer/jointing", "practise", "2026-11-18 19:30"),
    ("2026-11-28", "13:00", "14:00", "0156", "0003", "forge-1", "forge", "practise", "2026-11-19 17:15"),
)]

UNITS = {"hand tools": ("bench by the door", "bench by the window"), "drill press": ("unit 1", "unit 2", "unit 3"),
         "disc sander": ("unit 1",), "scroll saw": ("unit 1", "unit 2"), "sewing machine": ("unit 1", "unit 2", "overlock"),
         "3D printer": ("unit 1", "unit 2", "unit 3", "unit 4"), "soldering station": ("unit 1", "unit 2", "unit 3"),
         "bandsaw": ("unit 1, 14 in", "unit 2, 18 in"), "table saw": ("unit 1", "unit 2"), "router table": ("unit 1",),
         "mitre saw": ("unit 1",), "wood lathe": ("unit 1", "unit 2"), "laser cutter": ("unit 1",),
         "jointer-planer": ("unit 1", "unit 2"), "shaper": ("unit 1",), "metal lathe": ("unit 1",),
         "milling machine": ("unit 1",), "forge": ("unit 1", "unit 2"), "welding bench": ("bay 1", "bay 2"),
         "foundry": ("unit 1",)}


def machines():
    return [{"machine": f"{name.replace(' ', '-')}-{n}", "class": name, "label": label,
             "since": "2023-11-01" if n < 3 else "2024-09-14"}
            for name, labels in UNITS.items() for n, label in enumerate(labels, 1)]
