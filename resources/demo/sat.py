#!/usr/bin/env python3
"""Writes attempts.jsonl beside itself: what was answered at each quiz of history.csv.

Every line is one attempt, as core/teach/README.md shows it, with the day and the member's number of the row
that it came to. Papers are drawn as that README says, so that the program draws the same ones. Who had how
many right, and whether a critical one was missed, stays as history.csv has it: the paper's seed and the
answers are found for it. The same run always writes the same file.

Two questions of tier 2 have something wrong with them, so that the page Figures has something to show.
Whoever knows much about wood answers `fine-dust` with the dust of tropical wood, which can make you ill for
good: its key is too narrow. And what a gullet is hardly anybody knows, so that `blade-height` is guessed.
"""
import csv
import json
import math
import random
import re
from pathlib import Path

HERE = Path(__file__).parent
MASK = 2**64 - 1
BANKS = {("tier 1", 1): "../quizzes/tier-1.txt", ("tier 2", 1): "tier-2-1.txt", ("tier 2", 2): "../quizzes/tier-2.txt",
         ("tier 3", 1): "../quizzes/tier-3.txt", ("tier 4", 1): "../quizzes/tier-4.txt"}
TOO_NARROW, GUESSED = "fine-dust", "blade-height"
# How often each choice of the two is taken, from the first; of the first by those who know little and much.
NARROW_WEAK, NARROW_STRONG = (0.16, 0.68, 0.09, 0.07), (0.03, 0.12, 0.84, 0.01)
GUESSES = (0.21, 0.30, 0.07, 0.42)
TYPED = {  # right, wrong
    "sander-gap": (["1/16", "1/16 in", "0.0625 in", "1.6 mm"], ["1/8", "1/8 in", "2 mm", "1/4"]),
    "push-stick-from": (["6", "6 in", "6 inches", "150 mm"], ["4", "4 in", "3 in", "8", "100 mm"]),
    "bandsaw-guide": (["1/4", "1/4 in", "0.25", "6 mm"], ["1/2", "1 in", "3/4", "15 mm"]),
    "mitre-hands": (["6", "6 in", "15 cm"], ["4", "3 in", "12", "4 in"]),
    "chip-limit": (["1/8", "1/8 in", "0.125", "3.2 mm"], ["1/4", "3/16", "1/16 in", "5 mm"]),
    "shortest-stock": (["6", "6 in", "15 cm"], ["4", "12 in", "12", "8 in"]),
    "one-turn": (["5/32", "5/32 in", "0.156"], ["1/8", "1/16 in", "3/16", "1/4"]),
    "fence-angle": (["90", "90 degrees", "90°"], ["45", "89", "91"]),
    "fire-watch": (["60 min", "60", "1 h"], ["30 min", "30", "15 min", "2 h"]),
    "clear-around": (["35", "35 ft"], ["20 ft", "10 ft", "50", "15 ft"]),
}


class Seeded:
    """SplitMix64, with what core/teach/random.h makes of it."""

    def __init__(self, seed):
        self.state = seed

    def next(self):
        self.state = (self.state + 0x9E3779B97F4A7C15) & MASK
        z = self.state
        z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
        z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
        return z ^ (z >> 31)

    def below(self, count):
        drawn = self.next()
        while drawn < 2**64 % count:
            drawn = self.next()
        return drawn % count

    def shuffle(self, items):
        for left in range(len(items), 1, -1):
            other = self.below(left)
            items[left - 1], items[other] = items[other], items[left - 1]


class Bank:
    """As much of a bank's text as it takes to sit it."""

    def __init__(self, path):
        self.languages, self.draws, self.questions = [], [], []
        for line in (HERE / path).read_text(encoding="utf-8").splitlines():
            self.take(line)

    def take(self, line):
        key, _, value = line.partition(": ")
        if key == "languages":
            self.languages = value.split(", ")
        elif key == "draw":
            count, topic = value.split(" of ", 1)
            self.draws.append((int(count), topic))
        elif key == "question":
            self.questions.append({"id": value, "critical": False, "right": [], "language": 0})
        elif key in ("kind", "topic", "place"):
            self.questions[-1][key] = value
        elif line == "critical: yes":
            self.questions[-1]["critical"] = True
        elif self.questions and re.fullmatch(r"\[[a-zA-Z-]+\]", line):
            self.questions[-1]["language"] += 1
        elif self.questions and self.questions[-1]["language"] == 1 and re.match(r"\* |- |\d+\. ", line):
            self.questions[-1]["right"].append(not line.startswith("-"))

    def paper(self, seed):
        rng, paper = Seeded(seed), []
        for count, topic in self.draws:
            of = [q for q in self.questions if q["topic"] == topic]
            others = [q for q in of if not q["critical"]]
            rng.shuffle(others)
            paper += ([q for q in of if q["critical"]] + others)[:count]
        rng.shuffle(paper)
        return paper


def logistic(x):
    return 1 / (1 + math.exp(-x))


class Sitting:
    """How people answer: each question has its difficulty, each wrong choice its pull."""

    def __init__(self):
        self.random = random.Random(46)
        self.hard, self.pulls = {}, {}

    def difficulty(self, question):
        of = self.random_of(question)
        return self.hard.setdefault(question["id"], of.gauss(-2.8, 0.7) if question["critical"] else min(1.0, of.gauss(-0.1, 1.3)))

    @staticmethod
    def random_of(question):
        return random.Random("how hard is " + question["id"])

    def chance(self, question, ability):
        """That somebody has it right."""
        if question["id"] == GUESSED:
            return GUESSES[question["right"].index(True)]
        if question["id"] == TOO_NARROW:
            return self.narrow(ability)[question["right"].index(True)]
        return logistic(3.6 * (ability - self.difficulty(question)))

    @staticmethod
    def narrow(ability):
        strong = logistic(3.0 * (ability - 1.35))
        return [w + (s - w) * strong for w, s in zip(NARROW_WEAK, NARROW_STRONG)]

    def ability_for(self, bank, share):
        """At which about that share of the bank is answered right."""
        low, high = -4.0, 4.0
        plain = [q for q in bank.questions if q["id"] not in (TOO_NARROW, GUESSED)]
        for _ in range(40):
            middle = (low + high) / 2
            mean = sum(self.chance(q, middle) for q in plain) / len(plain)
            low, high = (middle, high) if mean < share else (low, middle)
        return low

    def outcome(self, bank, correct, total, critical_missed, before):
        """A seed, its paper, and which of its questions come out right: those that are wrong are drawn by their odds."""
        skill = self.ability_for(bank, min(0.985, correct / total + 0.01)) + self.random.gauss(0, 0.1)
        chances = {q["id"]: self.chance(q, skill) for q in bank.questions}
        while True:
            seed = self.random.getrandbits(64)
            paper = bank.paper(seed)
            luck = math.prod(chances[q["id"]] for q in paper if q["id"] in (TOO_NARROW, GUESSED)) if correct == total else 1
            if {q["id"] for q in paper} != before and self.random.random() < luck:
                break
        wrong = set(self.random.sample([q["id"] for q in paper if q["critical"]], critical_missed))
        others = [q["id"] for q in paper if not q["critical"]]
        turn = {q: self.random.random() ** (chances[q] / (1 - chances[q])) for q in others}  # Efraimidis and Spirakis, 2006
        wrong |= set(sorted(others, key=turn.get, reverse=True)[:total - correct - critical_missed])
        return skill, seed, paper, [q["id"] not in wrong for q in paper]

    # One answer ---------------------------------------------------------------------------------------------
    def answer(self, question, right, ability):
        r = self.random
        given = {"question": question["id"]}
        kind = question["kind"]
        if not right and r.random() < 0.03:
            pass  # left open
        elif kind == "one":
            given["chosen"] = question["right"].index(True) if right else self.wrong_choice(question, ability)
        elif kind == "several":
            given["ticked"] = self.ticks(question, right)
        elif kind == "order":
            given["order"] = self.order(len(question["right"]), right)
        elif kind == "number":
            good, bad = TYPED[question["id"]]
            given["typed"] = r.choice(good if right else bad)
        else:
            given["pointed"] = self.point(question["place"], right)
        slow = {"one": 11, "several": 17, "order": 32, "number": 13, "place": 9}[kind]
        given["seconds"] = max(3, round(slow * math.exp(r.gauss(0, 0.4)) * (1 if right else 1.3)))
        return given

    def wrong_choice(self, question, ability):
        wrong = [i for i, right in enumerate(question["right"]) if not right]
        if question["id"] == TOO_NARROW:
            pulls = self.narrow(ability)
        elif question["id"] == GUESSED:
            pulls = GUESSES
        else:
            pulls = self.pulls.setdefault(question["id"], [self.random_of(question).choice((1, 3, 6)) for _ in question["right"]])
        return self.random.choices(wrong, [pulls[i] for i in wrong])[0]

    def ticks(self, question, right):
        ticked = {i for i, r in enumerate(question["right"]) if r}
        if not right:
            ticked ^= {self.random.randrange(len(question["right"]))}
            if self.random.random() < 0.3:
                ticked ^= {self.random.randrange(len(question["right"]))}
            if ticked == {i for i, r in enumerate(question["right"]) if r}:
                ticked.discard(min(ticked))
        return sorted(ticked)

    def order(self, count, right):
        order = list(range(count))
        if not right:
            at = self.random.randrange(count - 1)
            order[at], order[at + 1] = order[at + 1], order[at]
        return order

    def point(self, place, right):
        numbers = [int(n) for n in re.findall(r"\d+", place)]
        left, right_edge = min(numbers[::2]), max(numbers[::2])
        top, bottom = min(numbers[1::2]), max(numbers[1::2])
        while True:
            x, y = self.random.randrange(20, 981), self.random.randrange(20, 981)
            if right == (left < x < right_edge and top < y < bottom):
                return [x, y]


def language_of(number, bank):
    return "es" if "es" in bank.languages and random.Random("language " + number).random() < 0.18 else bank.languages[0]


def main():
    banks = {key: Bank(path) for key, path in BANKS.items()}
    sitting, before = Sitting(), {}
    with open(HERE / "history.csv", encoding="utf-8", newline="") as file:
        rows = [row for row in csv.DictReader(file) if row["kind"] == "quiz"]
    with open(HERE / "attempts.jsonl", "w", encoding="utf-8", newline="\n") as file:
        for row in rows:
            bank = banks[row["what"], int(row["revision"])]
            correct, total = map(int, row["result"].split(" of "))
            key = (row["number"], row["what"])
            skill, seed, paper, right = sitting.outcome(bank, correct, total, int(row["critical"] or 0), before.get(key))
            before[key] = {q["id"] for q in paper}
            attempt = {"bank": row["what"], "revision": int(row["revision"]), "seed": f"{seed:016x}",
                       "language": language_of(row["number"], bank),
                       "answers": [sitting.answer(q, r, skill) for q, r in zip(paper, right)]}
            line = {"date": row["date"], "number": row["number"], "attempt": attempt}
            file.write(json.dumps(line, ensure_ascii=False, separators=(",", ":")) + "\n")


if __name__ == "__main__":
    main()
