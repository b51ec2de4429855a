#!/usr/bin/env python3
"""A second verifier of a shop's file, written from RFC 9162, RFC 8032, RFC 8785 and db/verify/README.md alone.

usage: ledger.py STORE [--against SHORT-ROOT|SIGNED-LINE]... [--verified SHORT-ROOT|SIGNED-LINE] [--all]

Prints one JSON object: the tree's size and root, what was found as "kind: place", and what became of each root. Shares no
line with the program: hashes are hashlib's, the file is read by Python's own sqlite3, signatures are worked out here.
"""
import datetime
import hashlib
import json
import pathlib
import re
import sqlite3
import sys


# --- RFC 9162, 2.1.1: the tree, by its recursive definition; inner nodes are remembered ---
def sha256(data):
    return hashlib.sha256(data).digest()


def leaf_hash(data):
    return sha256(b"\0" + data)


class Tree:
    def __init__(self, leaves):
        self.leaves, self.known = leaves, {}

    def root(self, start=0, end=None):
        end = len(self.leaves) if end is None else end
        n = end - start
        if n == 0:
            return sha256(b"")
        if n == 1:
            return self.leaves[start]
        if (start, end) not in self.known:
            k = 1
            while k * 2 < n:
                k *= 2
            self.known[start, end] = sha256(b"\1" + self.root(start, start + k) + self.root(start + k, end))
        return self.known[start, end]

    def edge(self):
        """The roots of the whole subtrees, largest first: one for each one of the size in binary."""
        out, start = b"", 0
        for bit in reversed(range(len(self.leaves).bit_length())):
            if len(self.leaves) >> bit & 1:
                out += self.root(start, start + (1 << bit))
                start += 1 << bit
        return out


# --- RFC 8032, 5.1: Ed25519 ---
P = 2**255 - 19
L = 2**252 + 27742317777372353535851937790883648493
D = -121665 * pow(121666, P - 2, P) % P


def recover_x(y, sign):
    if y >= P:
        return None
    x2 = (y * y - 1) * pow(D * y * y + 1, P - 2, P) % P
    if x2 == 0:
        return None if sign else 0
    x = pow(x2, (P + 3) // 8, P)
    if (x * x - x2) % P:
        x = x * pow(2, (P - 1) // 4, P) % P
    if (x * x - x2) % P:
        return None
    return P - x if x & 1 != sign else x


def point(data):
    y = int.from_bytes(data, "little")
    sign, y = y >> 255, y & (1 << 255) - 1
    x = recover_x(y, sign)
    return None if x is None else (x, y, 1, x * y % P)


def plus(p, q):
    a, b = (p[1] - p[0]) * (q[1] - q[0]) % P, (p[1] + p[0]) * (q[1] + q[0]) % P
    c, d = 2 * p[3] * q[3] * D % P, 2 * p[2] * q[2] % P
    e, f, g, h = b - a, d - c, d + c, b + a
    return e * f % P, g * h % P, f * g % P, e * h % P


def times(s, p):
    out = (0, 1, 1, 0)
    while s:
        if s & 1:
            out = plus(out, p)
        p, s = plus(p, p), s >> 1
    return out


def same(p, q):
    return (p[0] * q[2] - q[0] * p[2]) % P == 0 and (p[1] * q[2] - q[1] * p[2]) % P == 0


BASE_Y = 4 * pow(5, P - 2, P) % P
BASE = point(BASE_Y.to_bytes(32, "little"))


def signed(key, message, signature):
    if len(key) != 32 or len(signature) != 64:
        return False
    a, r, s = point(key), point(signature[:32]), int.from_bytes(signature[32:], "little")
    if a is None or r is None or s >= L:
        return False
    h = int.from_bytes(hashlib.sha512(signature[:32] + key + message).digest(), "little") % L
    return same(times(s, BASE), plus(r, times(h, a)))


# --- RFC 8785, for text, whole numbers, truths, lists and objects ---
def canonical(data):
    """What the bytes say, or None where they are not in canonical form."""
    def whole(text):
        n = int(text)
        if abs(n) > 2**53 - 1:
            raise ValueError
        return n

    def refuse(_):
        raise ValueError

    try:
        said = json.loads(data.decode("utf-8"), parse_int=whole, parse_float=refuse, parse_constant=refuse)
        again = json.dumps(said, sort_keys=True, separators=(",", ":"), ensure_ascii=False).encode("utf-8")
    except (ValueError, RecursionError):
        return None
    return said if again == data else None


def instant(text):
    if not isinstance(text, str) or not re.fullmatch(r"[12]\d{3}-\d\d-\d\dT\d\d:\d\d:\d\dZ", text, re.ASCII) or text < "19":
        return None
    try:
        t = datetime.datetime.strptime(text, "%Y-%m-%dT%H:%M:%SZ").replace(tzinfo=datetime.timezone.utc)
    except ValueError:
        return None
    return int((t - datetime.datetime(1970, 1, 1, tzinfo=datetime.timezone.utc)).total_seconds())


# --- roots from outside ---
LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"


def first_letters(root):
    bits = int.from_bytes(root, "big") >> 256 - 130
    return "".join(LETTERS[bits >> 5 * (25 - i) & 31] for i in range(26))


def short(size, root):
    letters = first_letters(root)
    n = 0
    for c in str(size) + letters:
        n = n * 32 + LETTERS.index(c)
    letters += LETTERS[n % 1021 // 32] + LETTERS[n % 1021 % 32]
    return "-".join([str(size)] + [letters[i:i + 4] for i in range(0, 28, 4)])


def known_root(text):
    """(size, whether a root is the one)"""
    if text.startswith("witnessmark head 1 "):
        _, _, _, size, root, at, key, signature = text.split(" ")
        message = f"witnessmark head 1\n{size} {root} {at}".encode()
        if not signed(bytes.fromhex(key), message, bytes.fromhex(signature)):
            sys.exit("the signature of a root does not hold")
        return int(size), lambda r: r.hex() == root
    size = int(text.split("-")[0])
    return size, lambda r: short(size, r) == text


# --- what a leaf says ---
PERSONAL = {"birth": "born", "details": "details", "pin": "pin"}
REFERS = ["record", "suspension", "appointment", "lockout", "booking", "instead_of", "begun", "started",
          "opened", "change", "visit"]


class Leaf:
    def __init__(self, data):
        said = canonical(data)
        self.good = isinstance(said, dict) and isinstance(said.get("body"), dict) and self.read(said)

    def read(self, said):
        body = self.body = said["body"]
        if set(said) - {"action", "body", "by", "commit", "note", "order", "paper", "second", "station"}:
            return False
        numbers = all(isinstance(said.get(k), int) and not isinstance(said.get(k), bool) for k in ("order", "commit"))
        if not numbers or not isinstance(body.get("id"), str) or not isinstance(body.get("kind"), str):
            return False
        self.order, self.commit, self.id, self.kind = said["order"], said["commit"], body["id"], body["kind"]
        self.recorded = instant(body.get("recorded"))
        if self.recorded is None or instant(body.get("at")) is None:
            return False
        self.paper, self.station = "paper" in said, said.get("station", "whole")
        if said.get("action") == self.kind or said.get("by") == "" or said.get("second") == "" or said.get("paper", True) is not True:
            return False
        if "station" in said and said["station"] not in ("quiz", "import", "front", "machine", "office"):
            return False
        self.person = self.text("other" if self.kind == "join" else "person")
        self.refers_to = self.referred()
        self.hashes = {}
        if self.kind in PERSONAL:
            self.hashes[PERSONAL[self.kind]] = body.get(PERSONAL[self.kind])
        if "hashed" in body:
            if not isinstance(body["hashed"], dict):
                return False
            self.hashes.update(body["hashed"])
        if "note" in said:
            self.hashes["note"] = said["note"]
        return all(isinstance(h, str) and re.fullmatch("[0-9a-f]{64}", h) for h in self.hashes.values())

    def text(self, key):
        value = self.body.get(key, "")
        return value if isinstance(value, str) else ""

    def referred(self):
        if self.kind in ("restriction", "marks", "signature", "scored_apart", "countersigned", "witnessed"):
            return self.text("checkout")
        for key in REFERS:
            if key in self.body:
                return self.text(key)
        return self.text("waiting") if self.kind == "waiting_end" else ""


class Look:
    def __init__(self, path, against, verified, every_signature):
        self.db = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
        self.db.text_factory = bytes
        self.found = []
        # The signatures under a root that was verified before are not verified again.
        self.against = sorted((known_root(a) + (a in verified,) for a in against + verified), key=lambda k: k[0])
        self.every_signature = every_signature

    def add(self, kind, place):
        self.found.append(f"{kind}: {place}")

    def rows(self, table, columns, order):
        """Each column as (its type, its value)."""
        asked = ", ".join(f"typeof({c}), {c}" for c in columns)
        for row in self.db.execute(f"SELECT {asked} FROM {table} ORDER BY {order}"):
            yield {c: (row[2 * i].decode(), row[2 * i + 1]) for i, c in enumerate(columns)}

    def schema(self):
        query = "SELECT type, name, sql FROM sqlite_master WHERE sql IS NOT NULL"
        fresh = sqlite3.connect(":memory:")
        all_files = sorted((pathlib.Path(__file__).parents[2] / "db" / "migrations").glob("*.sql"))
        files = [f for f in all_files if not f.name.endswith(".postgres.sql")]
        for file in files:
            fresh.executescript(file.read_text())
        should = {f"{t} {n}": s for t, n, s in fresh.execute(query)}
        have = {f"{t.decode()} {n.decode()}": s.decode() for t, n, s in self.db.execute(query)}
        for name in sorted(set(should) | set(have)):
            if should.get(name) != have.get(name):
                self.add("schema", name)
        if self.db.execute("PRAGMA user_version").fetchone()[0] != int(files[-1].name[:3]):
            self.add("schema", "the file's version")

    def shop(self):
        rows = self.db.execute("SELECT demo_clock, name, zone, one FROM shop").fetchall()
        if len(rows) != 1:
            self.add("shop", "the shop")
        if not rows:
            return
        clock, name, zone, one = rows[0]
        if one != 1:
            self.add("shop", "the shop, one")
        said = {"demo_clock": clock, "kind": "shop", "name": name.decode(), "zone": zone.decode()}
        self.leaves.append(leaf_hash(json.dumps(said, sort_keys=True, separators=(",", ":"), ensure_ascii=False).encode()))

    def records(self):
        columns = ["ord", "commit_no", "id", "kind", "recorded_at", "person", "refers_to", "leaf", "hash"]
        before = commit = 0
        recorded = -10**12
        for row in self.rows("records", columns, "ord"):
            now = row["ord"][1]
            for missing in range(before + 1, now):
                self.add("order", f"record {missing}")
            before = now
            data = row["leaf"][1] if isinstance(row["leaf"][1], bytes) else str(row["leaf"][1]).encode()
            hashed = leaf_hash(data)
            self.leaves.append(hashed)
            if row["leaf"][0] != "text":
                self.add("leaf", f"record {now}")
            if row["hash"] != ("blob", hashed):
                self.add("hash", f"record {now}, hash")
            leaf = Leaf(data)
            if not leaf.good:
                self.add("leaf", f"record {now}")
                continue
            self.columns(now, row, leaf)
            if leaf.commit - commit not in (0, 1) or leaf.commit == 0:
                self.add("order", f"record {now}, commit")
            if leaf.recorded < recorded:
                self.add("order", f"record {now}, recorded")
            commit, recorded = leaf.commit, max(recorded, leaf.recorded)
            self.said[now] = leaf, hashed, len(self.leaves)
            self.by_id[leaf.id] = leaf

    def columns(self, now, row, leaf):
        def text(value):
            return ("text", value.encode()) if value else ("null", None)

        should = {"ord": ("integer", leaf.order), "commit_no": ("integer", leaf.commit), "id": ("text", leaf.id.encode()),
                  "kind": ("text", leaf.kind.encode()), "recorded_at": ("integer", leaf.recorded),
                  "person": text(leaf.person), "refers_to": text(leaf.refers_to)}
        for column, value in should.items():
            if row[column] != value:
                self.add("column", f"record {now}, {column}")

    def private_values(self):
        kept = {}
        for row in self.rows("private_values", ["ord", "field", "salt", "value"], "ord, field"):
            kept[row["ord"][1], row["field"][1].decode()] = row["salt"], row["value"]
        erased = {leaf.person: now for now, (leaf, _, _) in self.said.items() if leaf.kind == "erased"}
        last_pin = {leaf.person: now for now, (leaf, _, _) in self.said.items() if leaf.kind == "pin"}
        blanked = {leaf.refers_to: now for now, (leaf, _, _) in self.said.items() if leaf.kind == "blanked"}
        for now, (leaf, _, _) in self.said.items():
            for field, hashed in leaf.hashes.items():
                place = f"record {now}, {field}"
                salt, value = kept.pop((now, field), (None, None))
                if salt is None:
                    self.add("private_value", place)
                elif salt[0] == value[0] == "null":
                    later = max(erased.get(self.owner(leaf), 0), last_pin.get(leaf.person, 0) if field == "pin" else 0)
                    if field not in ("born", "pin"):
                        later = max(later, blanked.get(leaf.id, 0))
                    if later <= now:
                        self.add("blanked", place)
                elif salt[0] != "text" or value[0] != "text" or not re.fullmatch(b"[0-9a-f]{32}", salt[1]):
                    self.add("private_value", place)
                elif sha256(bytes.fromhex(salt[1].decode()) + field.encode() + b"\0" + value[1]).hex() != hashed:
                    self.add("private_value", place)
        for now, field in kept:
            self.add("private_value", f"record {now}, {field}")

    def owner(self, leaf):
        """Whom a record is about, or whom that is about which it refers to; None where it is about nobody."""
        seen = set()
        while leaf is not None and not leaf.person and leaf.id not in seen:
            seen.add(leaf.id)
            leaf = self.by_id.get(leaf.refers_to)
        return leaf.person if leaf is not None and leaf.person else None

    def signatures(self, covered):
        keys, commit, hashes, open_ones, members, seconds = {}, 0, [], {}, {}, {}

        joined = {}

        def same(a, b):
            # A PIN chosen under one entry of a person signs for the other too.
            def first(one):
                for _ in range(len(joined) + 1):
                    one = joined.get(one, one)
                return one

            return first(a) == first(b)

        def without_signature():
            for order, _ in [*members.values(), *seconds.values()]:
                self.add("signature", f"record {order}")

        for now, (leaf, hashed, size) in self.said.items():
            if leaf.commit != commit:
                without_signature()
                commit, hashes, open_ones, members, seconds = leaf.commit, [], {}, {}, {}
            if leaf.kind == "join":
                joined[leaf.text("other")] = leaf.text("keep")
            if leaf.kind == "pin":
                keys[leaf.person] = leaf.text("key")
            if leaf.kind in ("checkout", "scored_apart"):
                open_ones[leaf.id] = leaf.text("assessor")
            if leaf.kind == "countersigned" and leaf.text("hand") == "pin":
                # One who countersigns later signs that, and not the check-out.
                with_it = leaf.text("checkout") in open_ones
                members[leaf.text("checkout") if with_it else leaf.id] = (now, leaf.person)
            if leaf.kind == "witnessed" and not leaf.paper and leaf.station != "import":
                seconds[leaf.text("checkout")] = (now, leaf.text("assessor"))
            if leaf.kind == "signature":
                # A member who countersigns with their PIN signs first, then a second assessor, then the assessor.
                before = members.pop(leaf.text("checkout"), None) or seconds.pop(leaf.text("checkout"), None)
                assessor = before[1] if before else open_ones.pop(leaf.text("checkout"), None)
                message = b"witnessmark check-out 1\n" + b"".join(hashes)
                holds = assessor is not None and (
                    size <= covered or same(assessor, leaf.person) and keys.get(leaf.person) == leaf.text("key")
                    and self.holds(leaf, message))
                if not holds:
                    self.add("signature", f"record {now}")
            hashes.append(hashed)
        without_signature()

    @staticmethod
    def holds(leaf, message):
        lower = all(re.fullmatch("[0-9a-f]*", leaf.text(k)) for k in ("key", "signature"))
        return lower and signed(bytes.fromhex(leaf.text("key")), message, bytes.fromhex(leaf.text("signature")))

    def standing(self):
        """(order, what) of each booking that stands, with its times; whatever the time is now."""
        struck = {leaf.refers_to for leaf, _, _ in self.said.values() if leaf.kind == "strike_out"}
        about = {}
        for leaf, _, _ in self.said.values():
            if leaf.kind in ("attendance", "booking", "cancel", "confirmed") and leaf.id not in struck:
                about.setdefault(leaf.refers_to, []).append(leaf)
        for now, (leaf, _, _) in self.said.items():
            said = about.get(leaf.id, [])
            came = [one.text("turnout") for one in said if one.kind == "attendance"]
            ended = leaf.id in struck or any(one.kind in ("booking", "cancel") for one in said) or came[-1:] == ["not_come"]
            start, end = instant(leaf.text("from")), instant(leaf.text("to"))
            if leaf.kind != "booking" or ended or start is None or end is None:
                continue
            held = None if any(one.kind == "confirmed" for one in said) else instant(leaf.text("held_through"))
            people = {leaf.text(key) for key in ("person", "assessor", "second_assessor") if key in leaf.body}
            for what in {"person " + one for one in people} | {"machine " + leaf.text("machine")}:
                yield (now, what), (start, end, held)

    def taken(self):
        should = dict(self.standing())
        last = max([leaf.recorded for leaf, _, _ in self.said.values()], default=-10**12)
        for row in self.rows("taken", ["ord", "what", "from_at", "until_at", "held_through"], "ord, what"):
            what = row["what"][1]
            place = row["ord"][1], what.decode() if isinstance(what, bytes) else str(what)
            times = should.pop(place, None)
            types = [row[c][0] for c in ("ord", "what", "from_at", "until_at")] == ["integer", "text", "integer", "integer"]
            have = tuple(row[c][1] for c in ("from_at", "until_at", "held_through"))
            if times is None or not types or have != times:
                self.add("taken", f"record {place[0]}, {place[1]}")
        for place, (_, end, held) in should.items():
            if end > last and (held is None or held > last):
                self.add("taken", f"record {place[0]}, {place[1]}")

    def edge(self, tree):
        rows = list(self.rows("tree_edge", ["size", "hashes", "one"], "one"))
        if len(rows) != 1:
            self.add("edge", "the tree's edge")
        if rows and rows[0]["one"] != ("integer", 1):
            self.add("edge", "the tree's edge, one")
        if rows and rows[0]["size"] != ("integer", len(tree.leaves)):
            self.add("edge", "the tree's edge, size")
        if rows and rows[0]["hashes"] != ("blob", tree.edge()):
            self.add("edge", "the tree's edge, hashes")

    def all(self):
        self.leaves, self.said, self.by_id = [], {}, {}
        self.schema()
        self.shop()
        self.records()
        tree = Tree(self.leaves)
        roots, covered = [], 0
        for size, is_it, verified in self.against:
            if size > len(tree.leaves):
                roots.append("cut_off")
            else:
                roots.append("holds" if is_it(tree.root(0, size)) else "altered")
            if roots[-1] == "holds" and verified and not self.every_signature:
                covered = size
        self.private_values()
        self.signatures(covered)
        self.taken()
        self.edge(tree)
        return {"size": len(tree.leaves), "root": tree.root().hex(), "short": short(len(tree.leaves), tree.root()),
                "found": sorted(self.found), "roots": roots}


def main(words):
    every = "--all" in words
    words = [w for w in words if w != "--all"]
    def after(option):
        return [words[i + 1] for i, w in enumerate(words) if w == option]

    print(json.dumps(Look(words[0], after("--against"), after("--verified"), every).all()))


if __name__ == "__main__":
    main(sys.argv[1:])
