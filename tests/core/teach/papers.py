#!/usr/bin/env python3
"""Draws the papers that paper_test.cpp has written down, from core/teach/README.md alone."""

MASK = (1 << 64) - 1


class Random:
    def __init__(self, seed):
        self.state = seed

    def next(self):
        self.state = (self.state + 0x9E3779B97F4A7C15) & MASK
        z = self.state
        z = (z ^ z >> 30) * 0xBF58476D1CE4E5B9 & MASK
        z = (z ^ z >> 27) * 0x94D049BB133111EB & MASK
        return z ^ z >> 31

    def below(self, n):
        while True:
            drawn = self.next()
            if drawn >= (1 << 64) % n:
                return drawn % n

    def shuffle(self, items):
        for left in range(len(items), 1, -1):
            other = self.below(left)
            items[left - 1], items[other] = items[other], items[left - 1]


def paper(seed):
    # Two topics: a with 4 questions, the first critical, 3 drawn; b with 2, 1 drawn. Three choices each.
    random = Random(seed)
    drawn = []
    for critical, others, count in (([0], [1, 2, 3], 3), ([], [4, 5], 1)):
        random.shuffle(others)
        drawn += (critical + others)[:count]
    random.shuffle(drawn)
    asked = []
    for question in drawn:
        order = [0, 1, 2]
        random.shuffle(order)
        asked.append((question, order))
    return asked


for seed in (7, MASK):
    print(", ".join("{%d, {%s}}" % (q, ", ".join(map(str, order))) for q, order in paper(seed)))
