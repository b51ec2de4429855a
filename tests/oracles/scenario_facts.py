"""A scenario as the facts that decisions.lp reads, and what the model found says.

A Shop is one scenario; a View is how one question looks at it: as known when, with which record struck out, with which
rulebook supposed.
"""
import json
import subprocess

import civil

RUNGS = ["barred", "supervised", "independent"]
PROGRAM = "decisions.lp"
ALWAYS = -1_500_000_000  # earlier than anything in a file that is small enough for clingo's 32-bit numbers


def quoted(text):
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'


def class_of(name):
    return name.split("/")[0]


def scope(value):
    if value == "all":
        return "all"
    return f"tier({value['tier']})" if "tier" in value else f"target({quoted(value['target'])})"


class Shop:
    """Holds the facts of a scenario and every instant at which something may change (`edges`)."""

    def __init__(self, scenario, supposed=()):
        self.scenario = scenario
        self.zone = scenario["zone"]
        self.zero = civil.instant("2025-01-01T00:00:00Z")
        self.facts = []
        self.edges = set()
        self.moments = set()
        self.names = set()
        self.books = {}
        self.needs = []  # (node, requirement)
        self.by_kind = {}
        for record in scenario["records"]:
            self.by_kind.setdefault(record["kind"], []).append(record)
        for book in scenario["rulebooks"]:
            self.add_book(f"book({book['version']})", book)
        for i, (book, at) in enumerate(supposed):
            self.add_book(f"supposed({i})", dict(book, effective_from=at))
        self.add_records()
        for node, need in self.needs:
            self.add_covers(node, need)
        for name in self.names:
            self.fact(f"name({quoted(name)},{quoted(class_of(name))})")

    # -- helpers
    def fact(self, text):
        self.facts.append(text + ".")

    def number(self, t):
        """An absolute instant in clingo's numbers."""
        return t - self.zero

    def edge(self, t):
        if t is None:
            return "#sup"
        self.edges.add(t)
        return self.number(t)

    def past(self, day):
        return civil.past(self.zone, day)

    def day(self, t):
        return civil.day(self.zone, t)

    def named(self, name):
        self.names.add(name)
        return quoted(name)

    # -- rulebooks
    def add_book(self, b, book):
        starts = civil.instant(book["effective_from"])
        self.books[b] = book
        self.fact(f"book({b})")
        self.fact(f"effective({b},{self.edge(starts)})")
        self.moments.add(starts - 1)
        if "recorded" in book:
            self.fact(f"entered({b},{self.number(civil.instant(book['recorded']))})")
            self.fact(f"version({b},{book['version']})")
        for tier in book["tiers"]:
            self.add_place(b, f"tier({tier['tier']})", tier)
        for c in book["classes"]:
            name = self.named(c["class"])
            self.fact(f"tier_of({b},{name},{c['tier']})")
            if not c.get("modes"):
                self.fact(f"plain({b},{name})")
            for mode in c.get("modes", []):
                self.fact(f"mode({b},{name},{self.named(c['class'] + '/' + mode)})")
            self.add_place(b, f"class({name})", c)
            for mode, gates in c.get("mode_gates", {}).items():
                self.add_gates(b, f"target({quoted(c['class'] + '/' + mode)})", gates)

    def add_place(self, b, place, rules):
        if rules.get("supervision", "independent") == "assessor":
            self.fact(f"assessors_only({b},{place})")
        for condition in rules.get("conditions", []):
            word = "staffed"
            if condition["kind"] == "buddy":
                word = f"buddy({condition['count']},{RUNGS.index(condition.get('at_least', 'supervised'))})"
            self.fact(f"condition({b},{place},{word})")
        self.add_gates(b, place, rules.get("gates", []))

    def add_gates(self, b, place, gates):
        for gate in gates:
            g = f"gate({b},{quoted(gate['id'])})"
            self.fact(f"gate_at({b},{place},{g})")
            self.fact(f"guards({g},{RUNGS.index(gate['for'])})")
            self.fact(f"needs({g},{self.add_need(gate['need'])})")
            if "existing_until" in gate:
                self.fact(f"spared_before({g},{self.edge(self.past(civil.date(gate['existing_until'])))})")

    def add_need(self, need):
        node, kind = f"n{len(self.needs)}", need["kind"]
        self.needs.append((node, need))
        self.fact(f"need({node},{'group' if 'of' in need else kind})")
        for key in ("document", "lesson", "quiz", "checkout"):
            if kind == key:
                self.fact(f"item({node},{quoted(need[key])})")
        if kind in ("lesson", "quiz", "checkout"):
            if need.get("revision", "any" if kind == "checkout" else "current") == "current":
                self.fact(f"current({node})")
        if kind == "quiz":
            self.fact(f"pass_percent({node},{need['pass_percent']})")
            retry = need.get("retry", {})
            if "wait_hours" in retry:
                self.fact(f"wait({node},{retry['wait_hours'] * civil.HOUR})")
            if "most" in retry:
                self.fact(f"most({node},{retry['most']},{retry['in_hours'] * civil.HOUR})")
        if kind == "checkout":
            if "renew_after_severity" in need:
                self.fact(f"renew_after_severity({node},{need['renew_after_severity']})")
            if need.get("renew_after_change"):
                self.fact(f"renew_after_change({node})")
        if kind in ("practice", "recent_use"):
            self.fact(f"object_of({node},{self.named(need['target']) if 'target' in need else 'own'})")
        if kind == "practice":
            self.fact(f"minutes({node},{need.get('minutes', 0)})")
            self.fact(f"sessions({node},{need.get('sessions', 0)})")
        if kind == "recent_use":
            self.fact(f"uses({node},{need['count']})")
        if kind == "standing":
            self.fact(f"asks_target({node},{self.named(need['target'])})")
            self.fact(f"asks_rung({node},{RUNGS.index(need['at_least'])})")
        if kind == "tier_standing":
            self.fact(f"asks_tier({node},{need['tier']},{need['count']})")
            self.fact(f"asks_rung({node},{RUNGS.index(need['at_least'])})")
        for part in need.get("of", []):
            self.fact(f"part({node},{self.add_need(part)})")
        for part in need.get("given", []):
            self.fact(f"given({node},{self.add_need(part)})")
        if "of" in need:
            count = {"all_of": len(need["of"]), "any_of": 1}.get(kind, need.get("count"))
            self.fact(f"at_least_parts({node},{count})")
        return node

    # -- records
    def add_records(self):
        for place, r in enumerate(sorted(self.scenario["records"], key=lambda r: r["id"])):
            self.add_record(place, r)

    def add_record(self, place, r):
        i, at = quoted(r["id"]), civil.instant(r["at"])
        self.moments.add(at - 1)
        self.fact(f"record({i})")
        self.fact(f"place({i},{place})")
        self.fact(f"happened({i},{self.edge(at)})")
        self.fact(f"recorded({i},{self.number(civil.instant(r['recorded']))})")
        if "voided" in r:
            self.fact(f"struck_out({i},{self.number(civil.instant(r['voided']))})")
        ends = self.past(civil.date(r["until"])) if "until" in r else None
        self.fact(f"until_end({i},{self.edge(ends)})")
        person = quoted(r.get("person", ""))
        on = self.named(r["target"]) if "target" in r else ""
        self.fact({
            "birth": lambda: f"birth({i},{person})",
            "document": lambda: f"document({i},{person},{quoted(r['document'])})",
            "lesson": lambda: f"lesson({i},{person},{quoted(r['lesson'])},{r['revision']})",
            "quiz": lambda: f"attempt({i},{person},{quoted(r['quiz'])},{r['revision']},{r['correct']},{r['total']},"
                            f"{r['critical_missed']})",
            "checkout": lambda: f"checkout({i},{person},{quoted(r['checkout'])},{r['revision']},{r['outcome']},"
                                f"{quoted(r['assessor'])})",
            "supervised": lambda: f"session({i},{person},{on},{r['minutes']},{quoted(r['supervisor'])})",
            "use": lambda: f"use({i},{person},{on})",
            "incident": lambda: f"incident({i},{person},{on},{r['severity']},{r['part']})",
            "suspend": lambda: f"suspension({i},{person},{scope(r['scope'])})",
            "reinstate": lambda: f"reinstatement({i},{quoted(r['suspension'])})",
            "appoint": lambda: f"appointment({i},{person},{scope(r['scope'])},"
                               f"{'founding' if r.get('founding') else 'ordinary'})",
            "dismiss": lambda: f"dismissal({i},{quoted(r['appointment'])})",
            "publish": lambda: f"publication({i},{quoted(r['item'])},{r['revision']})",
            "lockout": lambda: f"lockout({i},{quoted(r['machine'])})",
            "release": lambda: f"release({i},{quoted(r['lockout'])})",
            "change": lambda: f"change({i},{on})",
        }[r["kind"]]())
        if r["kind"] in ("suspend", "appoint") and "target" in r["scope"]:
            self.named(r["scope"]["target"])

    # -- what needs the calendar
    def add_covers(self, node, need):
        kind = need["kind"]
        carriers = {"practice": ["supervised"], "recent_use": ["supervised", "use"]}.get(kind, [kind])
        if kind == "age":
            for r in self.by_kind.get("birth", []):
                turns = civil.start(self.zone, civil.birthday(civil.date(r["born"]), need["years"]))
                self.fact(f"birthday({quoted(r['id'])},{node},{self.edge(turns)})")
            return
        for r in (r for c in carriers for r in self.by_kind.get(c, [])):
            if kind in ("document", "lesson", "quiz", "checkout") and r[kind] != need[kind]:
                continue
            valid, ends = need.get("valid", need.get("within")), {"lenient": None, "strict": None}
            if valid is not None:
                due = civil.end(self.day(civil.instant(r["at"])), valid)
                ends["strict"] = self.past(due)
                ends["lenient"] = self.past(civil.end(due, need["grace"])) if "grace" in need else ends["strict"]
            for style, end in ends.items():
                self.fact(f"good_until({quoted(r['id'])},{node},{style},{self.edge(end)})")
        for r in self.by_kind.get("publish", []) if kind in ("lesson", "quiz", "checkout") else []:
            if r["item"] == need[kind]:
                at = civil.instant(r["at"])
                if "changeover" in need:
                    at = self.past(civil.end(self.day(at), need["changeover"]))
                self.fact(f"in_force_from({quoted(r['id'])},{node},{self.edge(at)})")


class View:
    """Collects what has to be known for the answers, then asks clingo once."""

    def __init__(self, shop, known=None, without=None, supposed=None):
        self.shop = shop
        self.facts = set()
        self.moments = set()
        self.facts.add(f"known_at({'#sup' if known is None else shop.number(known)}).")
        if without is not None:
            self.facts.add(f"without({quoted(without)}).")
        if supposed is not None:
            self.facts.add(f"supposed({supposed}).")
        self.said = None
        self.count = 0

    def ask(self, what, *terms, at=None):
        self.moments.add(at)
        self.facts.add(f"{what}({','.join([*terms, str(self.shop.number(at))])}).")

    def name(self, x):
        self.shop.names.add(x)
        self.facts.add(f"name({quoted(x)},{quoted(class_of(x))}).")
        return quoted(x)

    def solve(self, folder, keep=None):
        shop = self.shop
        moments = self.moments | shop.moments | shop.edges
        text = "\n".join(shop.facts + sorted(self.facts) + [f"moment({shop.number(t)})." for t in sorted(moments)])
        if keep is not None:
            keep.write_text(text)
        # Two models are asked for: the definitions have to leave no choice.
        run = subprocess.run(["clingo", "--outf=2", "-n", "2", str(folder / PROGRAM), "-"], input=text, text=True,
                             capture_output=True)
        found = json.loads(run.stdout)
        models = found["Call"][0]["Witnesses"] if found["Call"] else []
        if found["Result"] != "SATISFIABLE" or len(models) != 1 or "error" in run.stderr:
            raise RuntimeError(f"clingo finds {len(models)} models ({found['Result']})\n{run.stderr[:2000]}")
        self.said = set(models[0]["Value"])
        return self

    def says(self, what, *terms, at):
        self.count += 1
        return f"{what}({','.join([*terms, str(self.shop.number(at))])})" in self.said

    # -- what the model says
    def ask_rung(self, person, x, at):
        self.ask("ask_standing", quoted(person), self.name(x), at=at)

    def rung(self, person, x, at):
        number = self.shop.number(at)
        self.count += 1
        for rung in (2, 1):
            if f"stands({quoted(person)},{quoted(x)},{rung},{number})" in self.said:
                return RUNGS[rung]
        return RUNGS[0]
